package runs

import "tumblehome/trade/finding"

// Explanations says what each code of this package means.
var Explanations = []finding.Explanation{
	{Code: "runs.arch", Meaning: "A way is drawn straight through a wheel arch.", Why: "There is the wheel.", Clear: "Lead it over the arch or round it."},
	{Code: "runs.bend", Meaning: "A way turns more sharply than its thickest cable may be bent.", Why: "Strands break and insulation is squeezed where a cable is bent closer than about four times its thickness.",
		Clear: "Give the corner longer legs, or take it in two halves."},
	{Code: "runs.fill", Meaning: "A conduit has more cable in it than 40 % of its bore.", Why: "Cable cannot be pulled through, and it gets warm.", Clear: "Take a wider conduit, or lead some of the cables elsewhere."},
	{Code: "runs.gangway", Meaning: "A way lies on floor that is walked on, or on the sill of a side door.", Why: "One stumbles over it, and it is trodden on until its insulation is through.", Clear: "Lead it by the roof or under furniture, or lay it in the floor under the covering."},
	{Code: "runs.gas", Meaning: "A way leads through the locker of a gas bottle.", Why: "Leaking gas gathers there; a spark of a damaged cable lights it.", Clear: "Lead the way round the locker."},
	{Code: "runs.outside", Meaning: "A corner of a way lies more than half a metre outside the van.", Why: "Nothing leads there; its length would be bought and reckoned with.", Clear: "Put the number right that is wrong."},
	{Code: "runs.opening", Meaning: "A way lies across a door, a window or another hole.", Why: "It would hang in the opening, or the hole would cut it.", Clear: "Lead it over, under or beside the opening."},
	{Code: "runs.rib", Meaning: "Behind the lining a way meets the steel of a rib or bow.", Why: "Somebody would have to make a hole in what carries the body.", Clear: "Use a hole that the maker left, with a grommet, or lay the way nearer to the room."},
	{Code: "runs.route", Meaning: "The measured length of a cable and that along its ways differ by more than a fifth.", Why: "One of them is wrong, and the thickness of the cable follows from it.", Clear: "Measure again, or write the way that the cable really takes."},
	{Code: "runs.short", Meaning: "A cable is written shorter than its two ends lie apart.", Why: "What is lost in it, and its fuse, are reckoned from a length that cannot be.", Clear: "Measure it again."},
	{Code: "runs.skin", Meaning: "A way leaves the body where no opening is written.", Why: "Every hole in the skin is a place for rust and water.", Clear: "Write the hole down as an opening and end the way in it, or move the corner inwards."},
	{Code: "runs.sleeper", Meaning: "A way leads through the place where somebody lies.", Why: "It is in the way, and it is pulled at in the dark.", Clear: "Lead it along the side or under the bed."},
	{Code: "runs.through", Meaning: "A way leads through something that is not hollow.", Why: "No cable can lie there.", Clear: "Lead it round, or move the thing."},
	{Code: "runs.turns", Meaning: "A conduit turns by more than four right angles.", Why: "Cable can hardly be pulled through it.", Clear: "Leave a place in between where one gets at the cable."},
	{Code: "runs.unknown", Meaning: "It is not known where a way runs.", Why: "Its length, and that of the cables in it, cannot be told.", Clear: "Say where the fittings stand that it leads to."},
}
