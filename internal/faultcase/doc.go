// Package faultcase answers: if a builder gets this wrong, does the program say so, and say nothing else?
//
// A Case starts from a build in which nothing is wrong, does one thing to it by a merge patch, and names what must then be found
// and what must no longer be found. Every finding code that a trade can give has at least one case; a test holds that. The cases
// are also builds of their own: the house tests of package reckon try their rules on each of them.
//
// The sound build is invented: a van of middle length with a kitchen, a bench that becomes a bed, a battery and a box. Its readings are
// typical of the class, from memory. Cases on a demonstration build show that what was planted there is cleared by what clears it in life.
package faultcase
