// Package shell answers: what have we got? How long, wide and high is the bare
// van inside its skin, where are its ribs, wheel arches, doors and windows, and
// do the readings agree with one another?
//
// Positions are those of the tape: x rearwards from the datum, y to the right
// from the middle, z up from the crests of the load floor, all in mm, to the
// inside of the skin between the ribs. Both sides are alike.
//
// # What it assumes
//
//   - With a table of offsets the skin is lofted through the readings (solve/offsets).
//   - With six quick readings it is one of nine typical bodies, scaled to them.
//     These forms are our own invention, drawn to look like vans of their class,
//     and good to about 3 % of the half-breadth: enough to arrange furniture, not to cut it.
//     Ribs, arches and doors that the document does not name are then typical too.
//   - With no readings at all it is the middle one of the nine, and says so.
//   - A wheel arch is a box: from the skin to a plane that stands inward of the
//     skin at the floor, in the middle of the arch.
//   - The sides end where the highest row of half-breadths was read; what is above is roof.
//
// # Words
//
// Gross areas run to the skin. Net areas are less the openings through that
// surface and, on floor and sides, less what the wheel arches cover. A bay lies between
// neighbouring ribs, counted from the front on each surface; the strips before the first and behind the last rib
// are bays too if they are 150 mm or longer, else they belong to the bay beside them.
//
// # Sources
//
// The mathematics and its uncertainty are those of solve/offsets. The limits at
// which readings are called doubtful are common practice, no source.
package shell
