// Package fit answers: does it all fit, in each mode, and do the people fit?
//
// It takes the finished room and the solids of every fitting in every mode and says: what stands out of the finished surfaces,
// what fouls what and by which way it is soonest out, which lids, doors and drawers open, in which order a mode is made up from the one before
// it or what bars it, whether beds are long and wide enough for who lies in them, whether heads
// clear the roof sitting and standing, whether seats, tables and worktops are at the right height, how wide a body gets in from the side door,
// whether two ways out are left from every bed and seat, what goes in through no door, what is loose while driving, which holes are marked
// too near a rib, and how high the van is with all that is on its roof. Result.Suits says whom it suits; Result.Floors is the walkable floor.
//
// Axes are the document's: x rearwards, y to the right, z up from the bare load floor; all lengths in mm.
//
// # What it assumes
//
//   - Touching within 1 mm is no foul. What stands out by less than the readings of the body are good for is "close", not a fault.
//   - Soft things give: each says which share of its least dimension.
//   - Under a sitter a cushion gives a quarter of its thickness (common practice, no source).
//   - Who sits puts the head where the seat has most room over it, at least 200 from its front edge and 150 from its back.
//   - Who stands at a fitting has the head 200 before it; who stands nowhere by name stands where the free floor has most room.
//   - The way from the side door is the widest of all over the floor, on a grid of 25 mm, from 100 to 1400 above it (in a low van three
//     quarters of its height), up to each fitting at which somebody lies, sits or cooks. Its narrow places are measured between the things
//     themselves; of two ways that differ by less than 40 mm the narrower may be told.
//   - One gets out on foot or crawling, over the floor, beds and seats, where 500 is free above and a square of 375 about one.
//   - A sleeper is as high as the chest is deep, and widest half way up; there the bed must be long and wide enough.
//   - Made things that stand against the van are screwed; boxes, cushions, drawers, and what is bought or found need a word (held:), or stand in
//     something closed that is held.
//   - What moves meets what it overlaps by more than 6 mm, 5 of them since paths are taken that much too large; a finished surface may be
//     grazed by 15. A lid, a door or a drawer opens well from eight tenths of its way on. From drive the day is made up, from the day all other modes; of
//     at most ten things that move every order is looked at, and one may go and come back to let another pass.
//   - A bed on which cushions lie has them on four fifths of it; one without any has a mattress that nobody planned yet.
//   - Slats of a pull-out bed keep 30 between one another; its far edge stands on a leg of 40 at each end.
//   - Curved surfaces are looked at every 150 along and up, and wherever the room is known to step or bend: bays, bands, arches, doors, and where the
//     body was read. A bulge narrower than that, which nothing tells of, may be missed.
//   - Living space and cab are one space. What is inside meets what is outside only where something sits in an opening and stands out of the skin; what
//     lies less than 30 over an opening covers it.
//   - Wheels are as the tyres, track and wheelbase have them, spring up by 80, and in front steer 120 inwards; a straight axle is taken between the
//     rear ones. Springs, exhaust and tank are not known: look under the van.
//   - One who sits takes up 450 of a bench, a smaller person less; nobody expects to stand under less than 1450.
//   - Who sits in the cab takes up 300 by 400 about the middle of the seat, from 250 to 1300 over the load floor, and the head up to 300 behind it; the
//     driver's seat must be free while driving, the others where there are as many people as seats.
//   - A seat with belts is sat on at 420, or on its cushion, whatever the height of its backrest (common practice, no source).
//   - Seats, tables and worktops are judged for people of 1450 and more, whose proportions are known.
//
// # Sources
//
// Bodies and allowances are those of catalogue/people (public US Army survey of 2012; university tables). Lying adds about 15 mm to
// stature, feet and pillow 100 to 150 (common practice). A way of 450 mm is the escape width that caravan makers quote from EN
// 1645-1 (read at a maker's page); 370 is the depth of a large man's body in clothes (survey).
package fit
