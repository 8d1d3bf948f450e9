package fit

import "tumblehome/trade/finding"

// Explanations of every code this package may give.
var Explanations = []finding.Explanation{
	{Code: "fit.sticks-out", Meaning: "A fitting stands into the finished floor, a side, the roof, the front or the rear.",
		Why: "It cannot be there as drawn: it will not go in, or it has to be cut.", Clear: "Move it, make it smaller, or scribe that face to the lining."},
	{Code: "fit.out-of-host", Meaning: "A fitting that is said to stand inside another does not go in there.",
		Why: "What holds it cannot be shut, or is drawn too small.", Clear: "Move it inside, or make what holds it larger."},
	{Code: "fit.foul", Meaning: "Two fittings would be in the same place.", Why: "Both cannot be there, or not in that mode.",
		Clear: "Move one by the shortest way out; in a mode, choose another position."},
	{Code: "fit.opens", Meaning: "A lid, a door or a drawer meets something before it is open.", Why: "What is kept behind it is hard to reach, or not at all.",
		Clear: "Move what it meets, hang the door at its other side, or make a smaller lid."},
	{Code: "fit.moves", Meaning: "There is no order of moves by which a mode is made up from the one before it.", Why: "The bed cannot be made, or the table not put up, without lifting furniture about.",
		Clear: "Move what is in the way, or let it fold or lift out."},
	{Code: "fit.pull-out", Meaning: "A slatted bed is pulled out so far that its two rows of slats hardly lie between one another.", Why: "They would sag or come apart under who lies there.",
		Clear: "Pull it out less, or make it deeper at rest."},
	{Code: "fit.pull-out.leg", Meaning: "Something stands where a leg under the far edge of a pull-out bed should.", Why: "The far edge would hang free.",
		Clear: "Move what stands there, or let the bed rest on it."},
	{Code: "fit.through", Meaning: "Something that slides out through an open door meets the edge of the opening.", Why: "It will not go out, or scrapes paint and seals.",
		Clear: "Move it in line with the opening, or make it smaller."},
	{Code: "fit.bed.length", Meaning: "A bed is shorter than its sleeper lying down with feet and pillow.",
		Why: "A fault means the sleeper does not fit at all; close means sleeping bent or on the side.", Clear: "A longer bed, or lying across a corner."},
	{Code: "fit.bed.width", Meaning: "A bed is narrower than those who lie in it need to turn over.", Why: "Shoulders side by side, and one who turns wakes the other.",
		Clear: "A wider bed, or heads at opposite ends."},
	{Code: "fit.headroom.sit", Meaning: "There is not enough room over a seat to sit upright.", Why: "Rainy days are spent sitting.",
		Clear: "A lower seat, a thinner cushion, or another place to sit."},
	{Code: "fit.headroom.stand", Meaning: "Somebody cannot stand upright where they stand.", Why: "Discomfort: cooking and dressing are done stooping.",
		Clear: "A thinner floor or ceiling, a window in the roof, or living with it."},
	{Code: "fit.way-out", Meaning: "Fewer than two ways out are free while somebody sleeps.", Why: "One may be barred by fire or by another car.",
		Clear: "Keep a second door or hatch free at night."},
	{Code: "fit.way-out.blocked", Meaning: "Something stands before a way out while somebody sleeps.", Why: "One way less in the dark.",
		Clear: "Move it, or see that two others stay free."},
	{Code: "fit.walkway", Meaning: "The way from the side door to a bed, a seat or the cooker is narrow.", Why: "It is the way out in the dark.",
		Clear: "Move or narrow what stands beside it."},
}
