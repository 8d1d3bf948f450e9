// Package tyres answers: what may a tyre carry, and what do the figures on
// its side mean?
//
// The load index is a number on the side wall that stands for a mass. The
// table here (load_index.csv) gives that mass for indices 60 to 126. Each row
// says how it is known: to 119 three or more public tables agree; from 120
// fewer do, and 125 and 126 are from memory. The true steps are rounded by
// hand, so they are looked up and never computed; the smooth curve
// 45 * 10^(index/80) kg stays within 1.8 % of all of them.
//
// Where two indices stand (109/107) the first is for single wheels, the second
// for wheels in pairs. The mass holds at the tyre's full pressure and up to
// about 210 km/h. A tyre at lower pressure carries less.
package tyres
