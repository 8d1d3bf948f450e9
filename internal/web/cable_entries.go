package web

import (
	"slices"
	"strings"

	"tumblehome/build"
)

// fuseKinds are how a fuse may be made, as the document names it.
var fuseKinds = []choice{
	{"blade", "blade"}, {"maxi", "large blade"}, {"sf30", "bolted strip, small"}, {"sf51", "bolted strip, large"}, {"block", "block on the battery's post"}, {"class-t", "class T"}, {"breaker", "breaker"},
}

// cableEntries are what the document says of one circuit, source or lead, ready to be changed.
func cableEntries(v view, at string) []entry {
	if strings.HasSuffix(at, "/lead") {
		return []entry{fieldOf(at+"/cable", "copper", ""), fieldOf(at+"/fuse", "its own fuse at the board", "A"), {Path: at + "/fuse-kind", Label: "that fuse is a", Choices: fuseKinds}, fieldOf(at+"/route", "measured, one way", "mm")}
	}
	out := []entry{fieldOf(at+"/cable", "copper", ""), fieldOf(at+"/fuse", "fuse", "A"), {Path: at + "/fuse-kind", Label: "the fuse is a", Choices: fuseKinds},
		fieldOf(at+"/fuse-away", "fuse, from what feeds it", "mm"), {Path: at + "/along", Label: "along the ways", List: true}, fieldOf(at+"/route", "measured, one way", "mm")}
	if strings.HasPrefix(at, "/power/circuits/") {
		return append(out, entry{Path: at + "/loads", Label: "it feeds", List: true}, entry{Path: at + "/from", Label: "from", Choices: bankChoices(v)}, fieldOf(at+"/current", "current when all is on", "A"),
			fieldOf(at+"/drop-wanted", "most voltage to lose", ""))
	}
	return append(out, entry{Path: at + "/is", Label: "it is", List: true}, entry{Path: at + "/to", Label: "charges", Choices: bankChoices(v)}, fieldOf(at+"/most", "current at most", "A"))
}

func bankChoices(v view) []choice {
	if v.Doc.Power == nil {
		return nil
	}
	return wordsAllowed(build.SortedKeys(v.Doc.Power.Batteries)...)
}

// batteryChoices are fittings that hold charge.
func batteryChoices(v view) []choice {
	var ids []string
	for _, id := range build.SortedKeys(v.Doc.Fittings) {
		if row, ok := v.Rows.Row(v.Doc.Fittings[id].Buy); ok && row.AmpHours != nil {
			ids = append(ids, id)
		}
	}
	return wordsAllowed(ids...)
}

// unfedChoices are fittings that draw current and are in no circuit.
func unfedChoices(v view) []choice {
	var ids []string
	for _, f := range v.Findings {
		if id, ok := strings.CutPrefix(f.About[0], "/fittings/"); ok && f.Code == "power.cable.unfed" {
			ids = append(ids, id)
		}
	}
	slices.Sort(ids)
	return wordsAllowed(slices.Compact(ids)...)
}
