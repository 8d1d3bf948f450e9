// Package sheet answers: how does this build look on paper?
//
//   - Arrangement is the van with all that is in it, in one mode: plan above long section, cross-section beside, people to scale,
//     measures, and the open notes as flags. Inside a page, as a sheet of its own, or a single view for a phone.
//   - Section is what lies on the steel at one place, with its rib, half full size.
//   - Weight is what is heavy and where, and how full every load case makes each axle.
//   - WiringPlan is the van with the ways and cables in it and the list of cables; Circuit the circuit diagram between two busbars;
//     Schedule the cables to cut, label and crimp; Tests what is tried before switching on, with room to write.
//   - RibDetail is the way of the heat by a rib, Night one night hour by hour, Winter what gathers behind a lining.
//   - Measuring is the sheet to take into the van with a tape.
//
// All are scenes of package draw; nothing is worked out here that a builder would call a figure. Every drawing carries its text
// equivalent as the scene's description. The same reckoning gives the same bytes.
//
// # How it is drawn
//
// x runs rearwards to the right of the paper, y to the right of the van up the plan (seen from above, the front to the left) and to the right of the cross-section, z up.
// The plan is cut at elbow height (1000 above the finished floor; 500 in a van too low to stand in): what hangs wholly above that is
// drawn dashed, unless somebody lies on it. The long section is cut along the middle and looks to the right: what stands on the left is
// dashed. The cross-section looks forwards, cut where most is to be seen, or where it is asked for. What stands inside something else
// is drawn in hidden lines. What is too small for its name has a letter, and a key says what it is.
//
// Outlines are those of the solids of trade/arrangement, seen together: gaps within one thing, one above another, are closed. Lines
// of body and lining are followed to 1.5 mm. People are drawn after mean proportions, to their stature.
//
// # What a page finds
//
// Groups "view-plan", "view-side", "view-cross" with data-view, data-scale, data-origin-x and data-origin-y: sheet mm = origin + van
// mm × scale, heights counted upwards. In them "plan-galley" and so on, class "fitting" (with "hidden" inside something else and
// "ghost" before the plane of the view), data-fitting, data-view and a digest of what is drawn; a fitting's name is a group of its own,
// "plan-galley-name", class "caption", with the same data-fitting, so that it goes along. Openings are "plan-opening-side", class
// "opening", data-opening; people "plan-person-tall", class "person". Flags are links "flag-3" to "#note-3", numbered as the open
// notes of the mode.
//
// # Sources
//
// Symbols of the circuit diagram are those of IEC 60617 on a module of 2.5 mm, drawn from memory (old numbers such as 07-21-01 stand by
// each); a stroke across a wire for its two conductors, a chained line about what is in one box, marks W and F of IEC 81346: from memory.
// // Line widths, lettering and dimensions are package draw's. Hidden and ghost lines after ISO 128 (from memory); views in first-angle
// order of the drawing office, common practice. Heights at which plans are cut, the silhouette of the cab and the drop of the axles:
// typical, from memory, for the picture only.
package sheet
