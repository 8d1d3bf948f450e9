package web

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/catalogue/climate"
	"tumblehome/trade/warmth"
)

// ventRow is an opening as it is set at night.
type ventRow struct {
	Name, Free, High, Shuts string
}

// ventRows are the openings through which air passes at night, the lowest first.
func ventRows(v view) []ventRow {
	var out []ventRow
	for _, vent := range v.Warmth.Told().Vents {
		r := ventRow{Name: capital(openingName(v, vent.ID)), Free: squareCentimetres(1e4 * vent.Free), High: fmt.Sprintf("%.0f mm", 10*math.Round(vent.Z/10)), Shuts: "can be closed"}
		if vent.Fixed {
			r.Shuts = "never closed"
		}
		out = append(out, r)
	}
	return out
}

func openingName(v view, id string) string {
	return cmp.Or(v.Doc.Shell.Openings[id].Title, v.Doc.Fittings[id].Called, unhyphen(id))
}

func squareCentimetres(v float64) string {
	if v < 0.5 {
		return "nothing"
	}
	return fmt.Sprintf("%.0f cm²", v)
}

// fixedWords compares the openings that nobody can close with what is asked.
func fixedWords(f warmth.Fixed) string {
	why := ""
	if f.Burner {
		why = ", as something burns in the van"
	}
	return fmt.Sprintf("What nobody can close: %s high up, where %s are asked%s; %s low down, where %s are asked.",
		squareCentimetres(f.High), squareCentimetres(f.WantHigh), why, squareCentimetres(f.Low), squareCentimetres(f.WantLow))
}

// airEntries are what can be said of each opening that air can pass at night.
func airEntries(v view) []entry {
	out := []entry{{Path: "/air/always-open", Label: neverClosed(v), List: true}}
	fixed := []string{}
	if v.Doc.Air != nil {
		fixed = v.Doc.Air.AlwaysOpen
	}
	for _, id := range build.SortedKeys(v.Doc.Shell.Openings) {
		if o := v.Doc.Shell.Openings[id]; o.Door == "" && (o.FreeArea != nil || v.asleep(id)) && !slices.Contains(fixed, id) {
			out = append(out, fieldOf("/air/asleep/"+id, openingName(v, id)+", how far open at night", ""))
		}
	}
	return out
}

func (v view) asleep(id string) bool {
	if v.Doc.Air == nil {
		return false
	}
	_, said := v.Doc.Air.Asleep[id]
	return said
}

// weatherEntries say where and how high the nights are spent.
func weatherEntries(v view) []entry {
	return []entry{{Path: "/use/climate", Label: "weather of", Choices: placesOf(v)}, fieldOf("/use/altitude", "height above the sea", "m")}
}

// placesOf are all places whose weather is known, the builder's own first.
func placesOf(v view) []choice {
	var out []choice
	for _, id := range build.SortedKeys(v.Doc.Use.Weather) {
		out = append(out, choice{id, capital(unhyphen(id))})
	}
	var known []choice
	for _, p := range climate.All() {
		if _, own := v.Doc.Use.Weather[p.ID]; !own {
			known = append(known, choice{p.ID, p.Name})
		}
	}
	slices.SortFunc(known, func(a, b choice) int { return cmp.Compare(a.Words, b.Words) })
	return append(out, known...)
}

// neverClosed asks which openings nobody can close, and names those there are to choose from.
func neverClosed(v view) string {
	var vents []string
	for _, id := range build.SortedKeys(v.Doc.Shell.Openings) {
		if v.Doc.Shell.Openings[id].Door == "" {
			vents = append(vents, id)
		}
	}
	if len(vents) == 0 {
		return "never closed: first write a vent down on the page Shell"
	}
	return "never closed, of " + strings.Join(vents, ", ")
}

// tripEntries are what is known of a kind of trip.
func tripEntries(id string) []entry {
	out := newTrip()
	for i := range out {
		out[i] = out[i].under("/use/trips/" + id)
	}
	return append(out, fieldOf("/use/trips/"+id+"/wet", "water in wet clothes of an evening", "kg"), fieldOf("/use/trips/"+id+"/hook-up", "nights on the mains", ""))
}

// newTrip is what is asked of a new one.
func newTrip() []entry {
	return []entry{{Path: "/months", Label: "months, as 11, 12, 1", List: true}, fieldOf("/often", "how often: 2 /month", ""), fieldOf("/nights", "nights each", ""), {Path: "/aboard", Label: "who comes along", List: true},
		fieldOf("/driving", "driving: 1 h/day or 5 h/trip", ""), fieldOf("/keep", "as warm at night as", "°C")}
}

// drawnFrom says what the nights were reckoned with where the document does not.
func drawnFrom(v view) string {
	told, text := v.Warmth.Told(), ""
	if v.Climate.StandIn {
		text = "No place is said yet: the weather of " + v.Climate.Place.Name + " stands in. "
	}
	if told.TripsAssumed {
		text += "No nights are planned yet: a few from April to October are taken. "
	}
	if told.Keep == nil && told.Warmed {
		text += fmt.Sprintf("Nobody said how warm it shall be: %s while people sleep. ", celsius(told.Kept))
	}
	return text
}

// clothesWords says how wet clothes come out of a night.
func clothesWords(n *warmth.Night, told warmth.Told) string {
	return fmt.Sprintf("Of %s of water in what comes in wet of an evening %s are gone by morning. It goes into the air of the van and has to leave with it: warmth and air together dry, either alone does not.",
		grams(1000*told.Wet), grams(1000*math.Max(0, math.Min(n.Dried, told.Wet))))
}

// trips in the order of their names.
func tripsOf(v view) []string { return build.SortedKeys(v.Doc.Use.Trips) }
