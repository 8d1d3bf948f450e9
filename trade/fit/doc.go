// Package fit answers: does it all fit, in each mode, and do the people fit?
//
// It takes the finished room and the solids of every fitting in every mode and says: what stands out of the finished surfaces,
// what fouls what and by which way it is soonest out, whether beds are long and wide enough for who lies in them, whether heads
// clear the roof sitting and standing, how wide the way from the side door is, whether two ways out are left at night, and how high the van is with all that is on its
// roof.
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
//   - The way from the side door is measured across the van at every 50 mm, from 100 to 1400 above the floor, up to each fitting
//     at which somebody lies, sits or cooks; that a way swerves is not seen.
//
// # Sources
//
// Bodies and allowances are those of catalogue/people (public US Army survey of 2012; university tables). Lying adds about 15 mm to
// stature, feet and pillow 100 to 150 (common practice). A way of 450 mm is the escape width that caravan makers quote from EN
// 1645-1 (read at a maker's page); 370 is the depth of a large man's body in clothes (survey).
package fit
