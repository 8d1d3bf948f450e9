// Package working answers: how was this number worked out?
//
// A Figure is one worked-out number with its unit and its name in plain words. A Working shows how it came about: the formula
// in standard symbols, every input with its unit and where it came from, the steps, and the source of the formula. The last line
// of a working is the figure itself; a house test holds that for every figure of every build. Workings are made on demand from a
// trade's result, so that figures stay cheap.
package working
