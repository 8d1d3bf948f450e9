package web

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/a-h/templ"

	"tumblehome/build"
	"tumblehome/catalogue/settings"
	"tumblehome/trade/arrangement"
)

// fittingView is one line of the list of fittings.
type fittingView struct {
	ID, Name    string
	Kind        string // what it is: made of what, or which row of the catalogue
	Whereabouts string // where it is, in words
	Fitted      bool   // it is in the van today
	CanMove     bool
	Locked      bool          // it stays where it is until it is unlocked
	Waits       bool          // it has no place yet
	Carried     bool          // it stands in or upon another
	Bed         string        // what it lies on, where a press on it means that first
	Carries     []fittingView // what stands in or upon it
}

// fittingsOf lists the fittings, the largest first, each with what it carries; of the van of today only those that are in.
func fittingsOf(v view) []fittingView { return v.carriedBy("", 0) } // the document refuses rings of carriers

// fittingPiece is the line of one fitting, with what it carries.
func fittingPiece(v view, place string) templ.Component {
	var find func([]fittingView) templ.Component
	find = func(all []fittingView) templ.Component {
		for _, f := range all {
			if "/fittings/"+f.ID == place {
				return fittingItem(v, f)
			}
			if within := find(f.Carries); within != nil {
				return within
			}
		}
		return nil
	}
	return find(fittingsOf(v))
}

func (v view) carriedBy(host string, deep int) []fittingView {
	var out []fittingView
	for _, id := range build.SortedKeys(v.Doc.Fittings) {
		f := v.Doc.Fittings[id]
		if cmp.Or(f.In, f.Upon) != host {
			continue
		}
		carries := v.carriedBy(id, deep+1)
		if v.Mode == today && f.Fitted == nil {
			out = append(out, carries...)
			continue
		}
		one := v.fitting(id, f, deep)
		one.Carries = carries
		if v.liesUpon(id, f) {
			one.Bed = f.Upon
		}
		out = append(out, one)
	}
	slices.SortStableFunc(out, func(a, b fittingView) int { return cmp.Compare(v.volume(b.ID), v.volume(a.ID)) })
	return out
}

// A cushion, a mattress or a worktop is no higher than this [mm], and covers at least this share of what it lies on.
const (
	thinnest = 200.0
	covering = 0.3
)

// liesUpon reports whether a fitting is a thin thing that hides much of what carries it, so that the carrier could hardly be pressed.
func (v view) liesUpon(id string, f build.Fitting) bool {
	top, below := v.standing(id), v.standing(f.Upon)
	if f.Upon == "" || top == nil || below == nil || !top.Placed() || !below.Placed() || top.Box.MaxZ-top.Box.MinZ > thinnest {
		return false
	}
	shared := func(low, high, lowBelow, highBelow float64) float64 {
		return max(0, min(high, highBelow)-max(low, lowBelow))
	}
	a, b := top.Box, below.Box
	hidden := shared(a.MinX, a.MaxX, b.MinX, b.MaxX) * shared(a.MinY, a.MaxY, b.MinY, b.MaxY)
	return hidden >= covering*(b.MaxX-b.MinX)*(b.MaxY-b.MinY)
}

// volume is that of the box about a fitting as it stands [mm³]; 0 where it has no place.
func (v view) volume(id string) float64 {
	s := v.standing(id)
	if s == nil || !s.Placed() {
		return 0
	}
	return (s.Box.MaxX - s.Box.MinX) * (s.Box.MaxY - s.Box.MinY) * (s.Box.MaxZ - s.Box.MinZ)
}

// holdsOpen reports whether the fields of something it carries are shown.
func (f fittingView) holdsOpen(v view) bool {
	return slices.ContainsFunc(f.Carries, func(c fittingView) bool { return v.opens("/fittings/"+c.ID) || c.holdsOpen(v) })
}

// bed tells the page's script what a press on it means first.
func (f fittingView) bed() templ.Attributes {
	if f.Bed == "" {
		return nil
	}
	return templ.Attributes{"data-bed": f.Bed}
}

// carriesWords says what a fold hides.
func (f fittingView) carriesWords() string {
	names := make([]string, len(f.Carries))
	for i, c := range f.Carries {
		names[i] = c.Name
	}
	return "with it: " + strings.Join(names, ", ")
}

func (v view) fitting(id string, f build.Fitting, deep int) fittingView {
	return fittingView{
		ID: id, Name: v.name(id), Kind: v.kindOf(f), Whereabouts: v.whereabouts(id, f), Fitted: f.Fitted != nil, Carried: deep > 0,
		CanMove: f.For == "" && f.At != nil && !f.At.Undecided && !arrangement.IsLocked(f), Locked: arrangement.IsLocked(f),
		Waits: f.For == "" && (f.At == nil || f.At.Undecided),
	}
}

// name is what a fitting is called on all pages; one that is not known is called by its id.
func (s *state) name(id string) string {
	return cmp.Or(s.names[id], s.Doc.Fittings[id].Called, unhyphen(id))
}

// kindOf says what a fitting is.
func (v view) kindOf(f build.Fitting) string {
	kind := ""
	switch {
	case f.Buy != "":
		if row, ok := v.Rows.Row(f.Buy); ok {
			kind = "bought: " + decapital(row.Name)
		}
	case f.Make != "":
		if s, ok := settings.Get(f.Make); ok {
			kind = "made: " + decapital(s.Name)
		}
	}
	if f.Fitted == nil {
		return strings.TrimPrefix(kind+", planned", ", ")
	}
	return kind
}

// modeWords says which van is shown.
func (v view) modeWords() string {
	if v.Mode == today {
		return "as it stands today"
	}
	for _, m := range v.modes() {
		if m.Value == v.Mode {
			return decapital(m.Words) + ", as planned"
		}
	}
	return "as planned"
}

// nudge is a small move made by a button.
type nudge struct{ Step, Short, Words, Picture string }

// nudgeSteps are the moves without a pointer.
var nudgeSteps = []nudge{
	{"x -10", "forwards", "10 mm forwards", "go-forwards"}, {"x 10", "rearwards", "10 mm rearwards", "go-rearwards"},
	{"y -10", "left", "10 mm to the left", "go-left"}, {"y 10", "right", "10 mm to the right", "go-right"},
	{"z 10", "up", "10 mm up", "go-up"}, {"z -10", "down", "10 mm down", "go-down"}, {"turn 90", "turn", "turn by a quarter", "go-round"},
}

// free is an id that a collection does not hold yet: the one wished, or with a number.
func free[T any](id string, taken map[string]T) string {
	if _, used := taken[id]; !used {
		return id
	}
	for n := 2; ; n++ {
		numbered := fmt.Sprintf("%s-%d", id, n)
		if _, used := taken[numbered]; !used {
			return numbered
		}
	}
}

const longestID = 40
