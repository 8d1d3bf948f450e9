// Package runs answers: where does it run, how long is it, and what lies over it?
//
// A way is a line along which cables, hoses or ducts are led: straight legs between the corners that the builder gave. Of every way this
// package says how long it is, how it bends, how full it is, how often it is held, what it passes through and what covers it. From the
// ways follows how far each circuit's cable goes from the fuse board to the loads.
//
//   - Length: the sum of the straight legs.
//   - Bends: at a corner where the way turns by θ a bend of radius r uses r·tan(θ/2) of each leg. A leg between two corners gives each of
//     them half, the first and the last leg all. The bend must not be tighter than four times the outer diameter of the thickest cable
//     (fixed cables; from memory). More than four right angles in one conduit are hard to pull cable through (from memory: 360° in
//     NFPA 70, 358.26).
//   - Fill: Σ π d²/4 of the cables over π b²/4 of the bore, at most 40 % (working value for conduit). Every circuit has two
//     conductors, out and back. Outer diameters are of thin-wall vehicle cable, from memory.
//   - Supports: every 450 mm, every 300 mm for conductors of the battery (ISO 10133:2012, read in an excerpt), both ends held.
//   - Fouls: the skin, ribs, wheel arches, openings, solid fittings, the place of a sleeper, the locker of the gas. What is hollow (a
//     cupboard, a bench) may be passed through: the way is then inside it. What stands in front of a way that lies on a side hides it.
//   - Cable to buy: out and back, each the way + 10 % + 0.3 m at both ends: practice, from memory.
//
// # Where no way is written
//
// From a way's end, or from the fuse board, to a load the cable is taken to follow the surfaces by straight legs: along the van, across it
// and up or down; to the other side by the floor or by the roof, whichever is shorter. Several loads are joined each to the nearest place
// that has current already. This is an assumption and is said so wherever it counts. A length measured by the builder wins.
//
// From the engine the cable begins at the front axle, where starter batteries mostly are, with a metre for down and across (practice, no
// source).
//
// # Laying a way
//
// A new way is laid along one of six usual lines (at the foot of a side, half-way up it, along the edge of the roof; practice, no source) from one
// thing to another: over wheel arches, behind the lining as deep as the conduit wants and no deeper than leaves it clear of ribs and skin, across by the
// floor or the roof. A cable without a way is offered written ways that serve it and new ones, those that foul least and are shortest first. Where the floor between
// two sides is walked on the way goes by the roof; to what stands out on the open floor only the floor leads, and that is told. A door in the
// line is not gone round but told; what crosses a door or the floor where one walks is never offered before what does not. Offers are for one cable: whether several would share a way better is the builder's to see.
//
// # Where it stops being true
//
// Ways lie as sharp as a tape finds them: 40 mm off a finished surface still counts as on it. Legs are straight, so on a curved side
// they run a little inside it. A fitting's place is that at rest; what sweeps past a way in use is not looked at. In the cab and under
// the floor nothing is known.
package runs
