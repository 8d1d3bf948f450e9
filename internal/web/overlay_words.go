package web

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/catalogue/people"
	"tumblehome/draw/sheet"
	"tumblehome/internal/words"
)

// overlayText says in words what is laid over the drawing.
func (v view) overlayText() string {
	if v.Mode == today && (v.Show == sheet.Way || v.Show == sheet.Upright) {
		return "This is reckoned with all that is planned: look at it by day or by night."
	}
	switch v.Show {
	case sheet.Moves:
		return "Thin lines are the space that lids, doors and drawers pass through, and what is folded out."
	case sheet.Way:
		return "Green is the floor that one can walk on; " + v.narrowText() + "; arrows are the ways out." + v.waysOutText()
	case sheet.Upright:
		return v.uprightText()
	case sheet.Wiring:
		if len(v.Runs.Ways)+len(v.Runs.Routes) == 0 {
			return "No cables are written down yet: that is done on the page Power."
		}
		return "Full lines are the ways of the cables; dashed, what is taken to lead on from them."
	}
	return ""
}

// narrowText explains the ring about the narrowest place, or why there is none.
func (v view) narrowText() string {
	switch seen := sheet.See(v.Reckoning, v.Mode); {
	case seen.Ring:
		return "the ring is where the way is narrowest"
	case seen.Blocked:
		return "one does not get everywhere on foot, so that no narrowest place is marked"
	}
	return "nowhere is a narrow place to mark"
}

// waysOutText says by which openings one gets out from the bed or seat with the fewest ways out of the mode.
func (v view) waysOutText() string {
	code := "fit.ways-out." + v.Mode
	figure, ok := v.Figure(code)
	if !ok {
		return ""
	}
	how, _ := v.Working(code)
	var by []string
	for _, line := range how.Lines {
		if line.Symbol == "" && line.Value > 0 {
			by = append(by, strings.TrimPrefix(line.Label, "by "))
		}
	}
	slices.Sort(by)
	if len(by) == 0 {
		return " Out " + figure.Words + ": no way out was found."
	}
	return " Out " + figure.Words + ": by " + strings.Join(slices.Compact(by), ", or by ") + "; from everywhere else there are no fewer ways."
}

// uprightText says for whom the places are shown where one can stand upright.
func (v view) uprightText() string {
	tall, short := 0.0, math.Inf(1)
	name := ""
	for _, id := range build.SortedKeys(v.Doc.People) {
		need := v.Doc.People[id].Stature.Float() + people.Shoes
		if short = min(short, need); need > tall {
			tall, name = need, cmp.Or(v.Doc.People[id].Called, unhyphen(id))
		}
	}
	if tall == 0 {
		return "Nobody is aboard yet: say on the page Weight who goes along, and how tall they are."
	}
	seen := sheet.See(v.Reckoning, v.Mode)
	text := fmt.Sprintf("Green is the floor where %s, %s in shoes, stands upright.", name, words.Amount(tall, "mm"))
	if !seen.Tall {
		text = fmt.Sprintf("Nowhere does %s, %s in shoes, stand upright: over the free floor there are at most %s.", name, words.Amount(tall, "mm"), words.Amount(seen.Most, "mm"))
	}
	if short < tall && seen.Short {
		text += fmt.Sprintf(" Grey is where only those up to %s do.", words.Amount(short, "mm"))
	}
	if seen.Nobody {
		text += " White floor is too low for everybody aboard."
	}
	return text
}
