// Package begin answers: what is the first build of somebody who has only just begun?
//
// The first hour asks seven small questions, each of which may be skipped. Document makes a whole build document from whatever was
// answered; everything else is assumed, and Document lists each assumption with its spread and what hangs on it. Read takes the
// answers back out of a document, and Change is the patch from one set of answers to the next, so that each answer is one edit of an
// ordinary build and may be undone like any other.
//
// # Typical vans
//
// Nine bodies, three lengths by three heights, go with the generic bodies of the shell. Their wheelbases, overhangs, plates, seats and
// tanks are invented typical figures, from memory of vans of the class; they belong to no vehicle that was ever sold. A figure
// that is only typical is named in the note of its section until it is changed.
//
// # Starting arrangements
//
// Three for each length, each adjusted to the height of the body: twenty-seven in all. They stand in arrangements/*.yaml in
// the document's own grammar, mostly as rules from face to face, so that they follow the readings. The measures of the sleepers are
// put in as words:
//
//	$long   length of a bed: the tallest sleeper, 15 for lying, 100 for feet and pillow (catalogue/people)
//	$wide   width of a bed for all who share it
//	$grown  the same, but no shorter than where wheel arches end
//	$pull   how far a bed pulls out to be so wide
//	$drawn  the same, but no farther than a galley on the other side lets it
//	$broad  the same for a bed that is always made, never below 900
//	$bunk   length of a bunk for the third and fourth
//	$half   half the width between the wheel arches, less a little
//	$low    height of a low van's seat beneath slats and cushion, so that the tallest can sit
//	$seat   the same beneath a cushion alone
//	$solo   width of a bed for one
//
// They are drawn for a side door on the right and mirrored where it is on the left. The people one, two, three, four stand for the
// sleepers in their order; places for people who are not there are left out.
//
// # Range
//
// Sleepers of 900 to 2100 mm, one to four of them. What does not fit is not hidden: the reckoning says so like for any other build.
package begin
