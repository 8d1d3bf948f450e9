package shell

import (
	"cmp"
	"slices"

	"tumblehome/trade/finding"
)

// Explanations say what each code of the shell means.
func Explanations() []finding.Explanation {
	all := []finding.Explanation{
		{Code: "shell.table-unusable", Meaning: "no body can be drawn through the half widths that were measured", Why: "everything else rests on the shape of the van", Clear: "put right the reading named"},
		{Code: "shell.reading-doubtful", Meaning: "one reading stands out from those around it", Why: "furniture is cut to these readings", Clear: "measure it again, between the ribs, to the skin"},
		{Code: "shell.quick-contradiction", Meaning: "two of the quick readings can not both be true", Why: "the van can not be scaled to both", Clear: "measure both again"},
		{Code: "shell.quick", Meaning: "the van is an invented body of its kind, stretched to a few readings", Why: "it is good enough to arrange, not to cut", Clear: "measure half widths at several places and heights: the measuring sheet says where"},
		{Code: "shell.not-measured", Meaning: "no readings yet", Why: "an invented van of middle size stands in", Clear: "take the six readings"},
		{Code: "shell.rib-outside", Meaning: "a rib lies outside the load space", Why: "bays are counted between ribs", Clear: "check its x"},
		{Code: "shell.ribs-overlap", Meaning: "two ribs overlap", Why: "one of them was misread", Clear: "check position and flange"},
		{Code: "shell.arch-outside", Meaning: "a wheel arch lies partly outside the load space", Why: "it takes room and floor", Clear: "check its extent"},
		{Code: "shell.arch-too-wide", Meaning: "a wheel arch reaches over the middle", Why: "it was probably measured to something else", Clear: "measure from the skin at the floor inwards"},
		{Code: "shell.arch-too-high", Meaning: "a wheel arch is as high as the side", Why: "it was probably misread", Clear: "measure from the floor up"},
		{Code: "shell.opening-unsized", Meaning: "an opening has no size yet", Why: "its area is left out of linings and warmth", Clear: "give both extents"},
		{Code: "shell.opening-outside", Meaning: "an opening reaches out of its surface", Why: "its readings and those of the body do not agree", Clear: "measure both again"},
		{Code: "shell.opening-over-rib", Meaning: "a hole is marked over, or was cut through, a rib or bow", Why: "ribs carry the roof and the sides", Clear: "move the hole between two ribs"},
		{Code: "shell.openings-overlap", Meaning: "two openings lie over one another", Why: "areas would count twice", Clear: "say that one lies in the other, or measure again"},
	}
	slices.SortFunc(all, func(a, b finding.Explanation) int { return cmp.Compare(a.Code, b.Code) })
	return all
}
