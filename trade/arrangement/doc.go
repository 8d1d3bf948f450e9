// Package arrangement answers: where is every fitting, in every mode of the van, and what does it pass through on its way?
//
// A builder says where a thing stands in words: against the right side, 60 behind the battery, upon the bench. This package turns
// those words into solids: at rest, and in each mode with its bed pulled out and its lids open. What is carried goes with what
// carries it. It also turns a drag back into words, keeping the builder's own.
//
// Axes are the document's: x rearwards from the datum, y to the right of the middle, z up from the bare load floor, all in mm.
//
// # What it assumes
//
//   - The room is given as six surfaces, finished: lining and floor covering are on. Sides and roof may curve and have steps
//     (wheel arches); front, rear and floor are flat.
//   - A thing is a box, turned or not about the vertical. Only scribed faces are curved: they are cut into slices of at most 5 mm
//     error, always on the inner side, so a cut thing never stands out of the surface it was cut to.
//   - Inside a host, walls are as thick as the host's board; a bought host's walls are taken as of no thickness. A side that the
//     host has scribed to the lining is open to it: the lining is its inner face.
//   - A hollow made thing (carcass, bench, locker) stays where it is when a lid or drawer of it moves; a slatted bed stretches;
//     anything else moves as a whole. A hinge's pin lies so that a thing folds against the face it hinges at, not through it.
//   - What moves for a mode sets out from where it rests, move by move in the order of their ids; turning things pass through up to
//     5 mm more than they truly do, never less. What is stowed or taken out is lifted by hand and has no path.
//   - What is turned moves and opens along its own faces, named as they would be if it stood at the nearest quarter of a turn. What reaches from face
//     to face is turned by quarters only.
//   - A thing of at most eight prisms tilts prism by prism, each as its box; one of more as the box about it.
//   - A lid leaves a rim of 20 mm at its ends. Doors share a front evenly with the drawers, which stand at the left hand of who is
//     before it, and may be hung at either side.
//   - Where a thing stands against a curved side and a curved roof at once, the roof is taken where the side has been reached at
//     the height asked of the middle: the two would otherwise chase each other round the corner.
//   - Faces of other fittings are taken at rest and unscribed (the greatest size).
//   - Against the outer skin (`where: outside`) a thing stands outside it: behind the rear, on the roof.
//
// What cannot be placed (undecided, or resting on something undecided) has no solid; its mass goes to the middle of the living
// space, and the result says why.
//
// The grammar is the build document's; there is no outside source for it. Geometry is solve/solid's, proven there.
package arrangement
