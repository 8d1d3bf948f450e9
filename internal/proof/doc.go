// Package proof answers: against what, outside this project, was each
// calculation checked, and how close did it come?
//
// A Case is one figure that somebody else published (a standard, a handbook
// table, a worked example, a reference program's answer) beside the figure
// this project works out. A test hands its cases to Check, which fails the
// test when the two differ by more than the stated tolerance:
//
//	proof.Check(t, proof.Case{
//		Name:      "sag of a shelf under an even load",
//		Source:    "Euler-Bernoulli, 5wL4/384EI, any structures handbook",
//		Inputs:    "w 184 N/m, L 0.8 m, E 10.7 GPa, I 4.32e-8 m4",
//		Expected:  2.12,
//		Got:       sag,
//		Tolerance: 0.005,
//		Unit:      "mm",
//	})
//
// `make proof` runs every test with TUMBLEHOME_PROOF naming an empty folder.
// Check then also writes each case there, one file for each test process, and
// internal/tools/proof prints all of them as one table.
//
// The tolerance is absolute and in the case's unit. It belongs to the source
// (the digits it prints, the error it states), not to what happens to pass.
package proof
