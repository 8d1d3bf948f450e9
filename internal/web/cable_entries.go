package web

import (
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/reckon"
	"tumblehome/trade/cables"
)

// fuseKinds are how a fuse may be made, as the document names it.
var fuseKinds = []choice{
	{"blade", "blade"}, {"maxi", "large blade"}, {"sf30", "bolted strip, small"}, {"sf51", "bolted strip, large"}, {"block", "block on the battery's post"}, {"class-t", "class T"}, {"breaker", "breaker"},
}

// panelJoints are how several panels are joined; what is left out is side by side.
var panelJoints = []choice{{"", "side by side, plus to plus"}, {"yes", "in a row, plus to minus: their volts add up"}}

// cableEntries are what the document says of one circuit, source or lead, ready to be changed.
func cableEntries(v view, at string) []entry {
	if strings.HasSuffix(at, "/lead") {
		return []entry{fieldOf(at+"/cable", "copper", ""), fieldOf(at+"/fuse", "its own fuse at the board", "A"), {Path: at + "/fuse-kind", Label: "that fuse is a", Choices: fuseKinds}, fieldOf(at+"/route", "measured, one way", "mm"), fieldOf(at+"/number", "number on both ends", "")}
	}
	out := []entry{fieldOf(at+"/cable", "copper", ""), fieldOf(at+"/fuse", "fuse", "A"), {Path: at + "/fuse-kind", Label: "the fuse is a", Choices: fuseKinds},
		fieldOf(at+"/fuse-away", "fuse, from what feeds it", "mm"), fieldOf(at+"/route", "measured, one way", "mm"), fieldOf(at+"/number", "number on both ends", "")}
	if strings.HasPrefix(at, circuitsAt) {
		out = append(out, fieldOf(at+"/called", "called", ""), entry{Path: at + "/from", Label: "from", Choices: feederChoices(v, at)}, fieldOf(at+"/current", "current when all is on", "A"), fieldOf(at+"/drop-wanted", "most voltage to lose", ""),
			entry{Path: at + "/loads", Label: "it feeds", Ticks: true, Choices: unjoinedChoices(v, reckon.IsFed), More: electricChoices(v)})
	} else {
		out = append(out, entry{Path: at + "/to", Label: "charges", Choices: bankChoices(v)}, fieldOf(at+"/most", "current at most", "A"), entry{Path: at + "/by", Label: "controlled by", Choices: unjoinedChoices(v, reckon.Controls)},
			entry{Path: at + "/is", Label: "it is", Ticks: true, Choices: unjoinedChoices(v, reckon.Charges), More: electricChoices(v)})
	}
	if panelsOf(v, at) > 1 {
		out = append(out, entry{Path: at + "/in-row", Label: "its panels are joined", Choices: panelJoints}, fieldOf(at+"/string-fuse", "fuse in each panel's own cable", "A"), fieldOf(at+"/string-most", "largest fuse that the panels' label allows", "A"))
	}
	if len(v.Doc.Runs) > 0 {
		out = append(out, entry{Path: at + "/along", Label: "the ways it takes, in this order", Ticks: true, Choices: wordsAllowed(build.SortedKeys(v.Doc.Runs)...)})
	}
	for i := range out {
		out[i] = withNames(v, out[i])
	}
	return out
}

const circuitsAt = "/power/circuits/"

// panelsOf is how many panels the line of a source leads from.
func panelsOf(v view, at string) int {
	for _, c := range v.Cables.Cables {
		if c.Role == cables.Charge && c.Source == cables.Sun && c.About == at {
			return len(c.Loads)
		}
	}
	return 0
}

// withNames is an entry whose value is fittings, told by their names, those that stand there now among them.
func withNames(v view, e entry) entry {
	for _, item := range listNode(v.text(e.Path)).Items {
		if _, ok := v.Doc.Fittings[item.Text]; ok && !slices.ContainsFunc(e.Choices, func(c choice) bool { return c.Value == item.Text }) && (e.Ticks || len(e.Choices) > 0) {
			e.Choices = append(e.Choices, choice{item.Text, v.name(item.Text)})
		}
	}
	return e
}

func bankChoices(v view) []choice {
	if v.Doc.Power == nil {
		return nil
	}
	return wordsAllowed(build.SortedKeys(v.Doc.Power.Batteries)...)
}

// feederChoices are what a circuit may begin at: a battery bank, or another circuit's far end.
func feederChoices(v view, at string) []choice {
	out := bankChoices(v)
	for _, id := range build.SortedKeys(v.Doc.Power.Circuits) {
		if circuitsAt+id != at {
			out = append(out, choice{id, "the far end of " + unhyphen(id)})
		}
	}
	return out
}

// batteryChoices are fittings that hold charge.
func batteryChoices(v view) []choice {
	return fittingChoices(v, func(id string) bool {
		row, ok := v.Rows.Row(v.Doc.Fittings[id].Buy)
		return ok && row.AmpHours != nil
	})
}

// unjoinedChoices are fittings that no bank, source or circuit names yet: what feeds, charges, controls or is fed.
func unjoinedChoices(v view, kind string) []choice {
	all, _ := v.Unjoined()
	return fittingChoices(v, func(id string) bool {
		return slices.ContainsFunc(all, func(u reckon.Unjoined) bool { return u.ID == id && u.Is == kind })
	})
}

// electricChoices are all fittings that have to do with electricity as far as their rows tell, joined up or not.
func electricChoices(v view) []choice {
	return fittingChoices(v, func(id string) bool { return electrical(v, id) })
}

func fittingChoices(v view, want func(id string) bool) []choice {
	var out []choice
	for _, id := range build.SortedKeys(v.Doc.Fittings) {
		if want(id) {
			out = append(out, choice{id, v.name(id)})
		}
	}
	return out
}
