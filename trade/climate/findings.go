package climate

import (
	"encoding/json"
	"fmt"
	"math"
	"strings"

	places "tumblehome/catalogue/climate"
	"tumblehome/trade/finding"
)

// farUp is how far above or below its place a camp may lie before the standard atmosphere says little about it [m]: a kilometre, common
// practice, no source.
const farUp = 1000

// Findings lists what the builder should know.
func (r Result) Findings() []finding.Finding {
	var out []finding.Finding
	switch {
	case r.StandIn && r.in.Asked != "":
		out = append(out, r.unknown())
	case r.StandIn && len(r.in.Travel) > 0:
		out = append(out, r.unsaid())
	}
	if up := r.Height - r.Place.Height; math.Abs(up) > farUp {
		out = append(out, r.far(up))
	}
	return out
}

var houseRule = finding.Source{Text: "nothing is taken without saying so: the stand-in is a choice of this program", Sure: finding.Practice}

func (r *Result) unknown() finding.Finding {
	f := finding.Finding{
		Code: "climate.unknown", Severity: finding.Close, About: []string{"/use/climate"},
		Title:  fmt.Sprintf("no weather is known of a place called %s", r.in.Asked),
		Words:  fmt.Sprintf("The weather of %s stands in for it. Choose a known place, or write your own months.", r.Place.Name),
		Source: houseRule,
	}
	near := r.near()
	if len(near) > 0 {
		f.Words = fmt.Sprintf("The weather of %s stands in for it. Perhaps you meant %s?", r.Place.Name, strings.Join(near, " or "))
	}
	for _, id := range near {
		f.Proposals = append(f.Proposals, choose(id))
	}
	return f
}

// near are own places and built-in ones with names like what was asked.
func (r *Result) near() []string { return places.Near(r.in.Asked, r.in.Own...) }

func choose(id string) finding.Proposal {
	patch, _ := json.Marshal(map[string]any{"use": map[string]any{"climate": id}}) // two maps and a text always can be written
	return finding.Proposal{Words: "take the weather of " + id, Patch: patch}
}

func (r *Result) unsaid() finding.Finding {
	return finding.Finding{
		Code: "climate.unsaid", Severity: finding.Note, About: []string{"/use/trips"},
		Title:  "nobody said where the trips go",
		Words:  fmt.Sprintf("The weather of %s stands in. Choose a place: cold, damp and sun all follow from it.", r.Place.Name),
		Source: houseRule,
	}
}

func (r *Result) far(up float64) finding.Finding {
	way := "above"
	if up < 0 {
		way = "below"
	}
	about := []string{"/use/altitude"}
	if r.in.Asked != "" {
		about = append(about, "/use/climate")
	}
	return finding.Finding{
		Code: "climate.height", Severity: finding.Note, About: about,
		Title:    fmt.Sprintf("the camp lies %.0f m %s the place whose weather is taken", math.Abs(up), way),
		Words:    "The rule of 6.5 degrees a kilometre holds in open air. So far from the place, cold air in valleys, cloud and snow make it a guess: take a place nearer in height.",
		Measured: &finding.Measure{Value: math.Abs(up), Unit: "m"}, Limit: &finding.Measure{Value: farUp, Unit: "m"},
		Source: finding.Source{Text: "common practice, no source", Sure: finding.Practice},
	}
}

// Explanations says what each code of this package means.
var Explanations = []finding.Explanation{
	{
		Code: "climate.height", Meaning: "The nights are spent much higher or lower than the place whose weather is taken.",
		Why: "Temperature is carried over by a rule that says little about valleys and hills a kilometre apart.", Clear: "Choose a place of about that height, or write your own months under use.weather.",
	}, {
		Code: "climate.unknown", Meaning: "The place named for the weather is neither built in nor one of yours.",
		Why: "Another place stands in for it, which may be warmer, drier or sunnier.", Clear: "Choose one of the names offered, or write your own months under use.weather.",
	}, {
		Code: "climate.unsaid", Meaning: "There are trips, but no place whose weather they meet.",
		Why: "Heat, damp and sunshine follow from it; a stand-in is taken meanwhile.", Clear: "Name a place under use.climate.",
	},
}
