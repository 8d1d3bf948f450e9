package lining

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

const (
	proudEnough = 1   // mm that insulation may stand proud of the ribs before it is said
	proudMuch   = 10  // mm beyond which boards do not go on
	thinBoard   = 6.5 // mm; thinner boards need battens
	boardSpan   = 450 // mm that a thin board goes without a batten
)

// practice is the source of how linings are laid.
var practice = finding.Source{Text: "common practice, no source", Sure: finding.Practice}

// check collects what is wrong with the layers.
func (l *laid) check() []finding.Finding {
	var found []finding.Finding
	found = append(found, l.unknownBays()...)
	found = append(found, l.unknownMaterials()...)
	for _, surface := range []string{Left, Right, Roof} {
		found = append(found, l.overfull(surface)...)
	}
	return append(found, l.slack()...)
}

// unknownBays finds layers for bays that there are not.
func (l *laid) unknownBays() []finding.Finding {
	var ids []string
	for _, surface := range surfaces {
		for _, f := range l.fields[surface] {
			ids = append(ids, f.bay.ID)
		}
	}
	slices.Sort(ids)
	var found []finding.Finding
	seen := map[string]bool{}
	for _, surface := range surfaces {
		for _, layer := range l.in.Layers[surface] {
			for _, bay := range sorted(layer.Bays) {
				about := layer.Pointer + "/bays/" + bay
				if slices.Contains(ids, bay) || seen[about] {
					continue
				}
				seen[about] = true
				words := "The layer named for it is laid nowhere. Bays lie between neighbouring ribs and are counted from the front."
				if near := quantity.Near(bay, ids); near != "" {
					words += " Was " + near + " meant?"
				}
				found = append(found, finding.Finding{Code: "lining.bay-unknown", Severity: finding.Fault, About: []string{about},
					Title: fmt.Sprintf("There is no bay %s", bay), Words: words,
					Source: finding.Source{Text: "the ribs of the shell", Sure: finding.Computed}})
			}
		}
	}
	return found
}

func sorted(bays map[string]Layer) []string {
	var ids []string
	for id := range bays {
		ids = append(ids, id)
	}
	slices.Sort(ids)
	return ids
}

// unknownMaterials finds layers whose thickness or mass nobody knows.
func (l *laid) unknownMaterials() []finding.Finding {
	var found []finding.Finding
	seen := map[string]bool{}
	note := func(code, about, title, words string) {
		if !seen[code+about] {
			seen[code+about] = true
			found = append(found, finding.Finding{Code: code, Severity: finding.Note, About: []string{about}, Title: title, Words: words, Source: practice})
		}
	}
	for _, surface := range surfaces {
		for _, f := range l.fields[surface] {
			for _, layer := range f.layers {
				if layer.thick() <= 0 {
					note("lining.thickness-unknown", layer.Pointer, "Nobody knows how thick "+layer.Of.name()+" is", "It takes no room in the drawings until its thickness is given.")
				}
				if layer.Of.PerArea <= 0 && layer.Of.PerLength <= 0 && layer.Weighed == nil {
					note("lining.mass-unknown", layer.Pointer, "Nobody knows how heavy "+layer.Of.name()+" is", "It weighs nothing in the sums until its mass is given.")
				}
			}
		}
	}
	return found
}

// overfull finds bays whose insulation stands proud of the ribs, one finding
// for a surface.
func (l *laid) overfull(surface string) []finding.Finding {
	var bays, about []string
	worst := 0.0
	for _, f := range l.fields[surface] {
		most := 0.0
		for i := range f.bands {
			most = math.Max(most, proud(f.bands[i].courses, f.bay.Depth))
		}
		if most > proudEnough && f.bay.Depth > 0 {
			bays, worst = append(bays, f.bay.ID), math.Max(worst, most)
			about = merge(about, f.layers)
		}
	}
	if len(bays) == 0 {
		return nil
	}
	severity := finding.Note
	if worst > proudMuch {
		severity = finding.Close
	}
	return []finding.Finding{{Code: "lining.bay-overfull", Severity: severity, About: about,
		Title:    fmt.Sprintf("Insulation stands up to %.0f mm proud of the ribs in %s", worst, strings.Join(bays, ", ")),
		Words:    "Battens and boards then stand on the insulation, not on the ribs, and the room is that much narrower. Lay it thinner, or pack the battens out on the ribs.",
		Measured: &finding.Measure{Value: worst, Unit: "mm"}, Limit: &finding.Measure{Value: 0, Unit: "mm"}, Source: practice}}
}

// merge adds the pointers of insulation to about.
func merge(about []string, layers []*Layer) []string {
	for _, layer := range layers {
		if layer.Of.Kind == Fill && !slices.Contains(about, layer.Pointer) {
			about = append(about, layer.Pointer)
		}
	}
	return about
}

// Explanations say what each code of the lining means.
func Explanations() []finding.Explanation {
	return []finding.Explanation{
		{Code: "lining.bay-overfull", Meaning: "insulation stands proud of the ribs", Why: "boards lie on it and not on the ribs; the room is narrower", Clear: "lay it thinner or pack out the battens"},
		{Code: "lining.bay-unknown", Meaning: "a layer is named for a bay that there is not", Why: "it is laid nowhere", Clear: "name a bay that is drawn"},
		{Code: "lining.board-slack", Meaning: "a thin board goes too far without a batten", Why: "it drums on the road and bulges", Clear: "battens every 300 to 400 mm, or a thicker board"},
		{Code: "lining.mass-unknown", Meaning: "nobody knows how heavy a layer is", Why: "it is missing in the weight", Clear: "give a mass per m2 in the catalogue, or weigh it"},
		{Code: "lining.thickness-unknown", Meaning: "nobody knows how thick a layer is", Why: "it takes no room in the drawings", Clear: "say thick, or give the material a thickness"},
	}
}
