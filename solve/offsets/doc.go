// Package offsets answers: where is the surface of a body that was measured at
// a few places, how big is it, and how far may that answer be off?
//
// The measurements are a table of offsets, as naval architects write it: at
// stations along the length x, and at heights z above the base, the
// half-breadth y from the middle plane to the surface; and at each station the
// height of the crown, the top of the surface in the middle plane. Both sides
// are alike. All lengths are in one unit of the caller's (the tests use mm);
// areas and volumes come out in its square and cube.
//
// # What lies between the readings
//
// Up each station and along each height runs a piecewise cubic whose slopes
// are those of Fritsch and Butland: it never leaves the range of neighbouring
// readings, so a badly read offset makes no waves. Between four readings lies the bicubic
// Hermite patch that meets those curves.
//
// From the highest row of half-breadths b the surface closes over the crown by
// a round of the roof that is one curve for the whole body:
//
//	z(t) = crown - camber * (a t^2 + (1 - a) t^n),   t = |y| / b,   camber = crown - z(top row)
//
// a parabola (the classical round of beam) and a sharper shoulder. Its steepness
// at the edge, m = 2a + n(1 - a), is taken from the slope with which the sides
// arrive there, between 2 (a plain parabola) and 24: for m up to 3, n = 4;
// above it a stays near one half and n = 2m - 2, rounded.
//
// Beyond the first and last station and below the lowest height the surface
// goes on unchanged.
//
// # How far off it may be
//
// A reading said to be good to r lies within r of the truth with equal chance
// everywhere (rectangular, standard deviation r/√3: JCGM 100:2008, 4.3.7).
// Between readings the weights of interpolation carry it on. To that is added
// what the interpolation itself may miss, guessed from how fast the
// curvature changes from reading to reading. Spread gives twice the standard deviation,
// the half-width of an interval that holds the truth about 95 times in 100.
//
// # Range
//
// Surfaces that are single valued: one half-breadth for each x and z, one
// height above each x and y within the top row. Nothing that folds back.
//
// # Sources
//
//   - F. N. Fritsch, J. Butland, A method for constructing local monotone
//     piecewise cubic interpolants, SIAM J. Sci. Stat. Comput. 5 (1984) 300;
//     end slopes as in C. Moler, Numerical Computing with MATLAB, section 3.6.
//   - JCGM 100:2008, Guide to the expression of uncertainty in measurement.
package offsets
