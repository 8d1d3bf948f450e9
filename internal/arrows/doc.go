// Package arrows answers: does every package import only what it may?
//
// The table of allowed imports stands in docs/arrows.txt, for people to read
// first; this package reads it, and its test compares it with what
// `go list` says of the code. A package that is not in the table fails, with
// the line to add. A second test keeps the mathematics under solve/ free of
// the words of the trade, in code and in comments. Tests there may speak of
// what they measure: a locker makes a plainer case name than a prism.
package arrows
