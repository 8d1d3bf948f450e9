// Package oracle answers: what does a program written by somebody else say
// about exactly the same case?
//
// The programs are Debian's: python3 with scipy and shapely, ngspice, getdp,
// minizinc, glpsol. A test keeps the exact input in its testdata folder and asks:
//
//	var want struct{ Area float64 }
//	oracle.Decode(t, oracle.Python, "testdata/overlap.py", &want)
//
// Where the program is installed it runs, in an empty folder holding copies
// of the input and of the further files named. Where it is not, the
// recorded answer is used: testdata/overlap.answer.json, beside its input,
// which also names the program's version and the SHA-256 of every file the
// answer was made from. An answer whose input has changed since is never used.
//
//	go test ./solve/solid/ -oracle.record
//
// runs the programs and rewrites the records. A test that finds neither program nor
// record is skipped at home and fails in CI (environment variable CI set); in
// CI a record must exist even where the program is installed.
//
// The answer is what the program writes to standard output; for glpsol the
// display output of a model (.mod) or the solution file of an LP (.lp). An
// ngspice deck prints and quits within .control. A getdp problem is run with its
// first resolution and first post-operation, on the mesh (.msh) named as a
// further file, and prints to /dev/stdout. minizinc reads further files (.dzn) as
// data and searches with gecode. Inputs must give the same answer on every
// run: fix seeds, print no times.
package oracle
