// Package finding answers: what is true of this build that its builder should know?
//
// A finding is data, not an error: a stable dotted code, how bad it is, what it is about, what was measured, against
// which limit, and where the limit comes from. Trades make findings; pages, the command line and drawings only show them.
// An error, by contrast, is a failure of the program or of its input and never appears here.
package finding
