// Package words answers: how does a figure read to somebody who is not an engineer?
//
// Figures are kept unrounded and shown rounded to what a van is: 5 mm, 5 kg, 5 money. Near a limit, where rounding could turn
// "over" into "just right", they are shown finer, so that what reads as within a limit is within it.
package words
