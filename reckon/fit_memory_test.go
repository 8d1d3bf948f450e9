package reckon

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/trade/arrangement"
	"tumblehome/trade/fit"
)

// What is remembered of where things stood and how they fitted spares work and changes no answer, edit for edit: things are moved, now and
// then stretched, taken out, put back, turned, and a mode's position is changed.
func TestMemoryOfPlacesAndFitChangesNothing(t *testing.T) {
	builds := map[string]*build.Document{"dipper": example(t, "dipper"), "godwit": example(t, "godwit"), "twite": example(t, "twite")}
	for name, doc := range crowds(t) {
		builds[name] = doc
	}
	for name, doc := range builds {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			edits := 80
			if testing.Short() {
				edits = 20
			}
			random := rand.New(rand.NewPCG(7, uint64(len(doc.Fittings))))
			warm := NewMachine()
			for range edits {
				next, words := edited(t, doc, warm, random)
				if next == nil {
					continue // the document refuses it
				}
				doc = next
				a := upToPlaces(warm, doc)
				b := *a
				remembered, afresh := warm.placesAndFit(a), NewMachine().placesAndFit(&b)
				if !reflect.DeepEqual(a.places.Rest, b.places.Rest) || !reflect.DeepEqual(a.places.Modes, b.places.Modes) {
					t.Fatalf("%s: places differ", words)
				}
				if what := difference(&remembered, &afresh); what != "" {
					t.Fatalf("%s: %s", words, what)
				}
			}
		})
	}
}

// edited is a document after something was done to one of its fittings, and what; nil if it may not be.
func edited(t *testing.T, doc *build.Document, m *Machine, random *rand.Rand) (*build.Document, string) {
	ids := build.SortedKeys(doc.Fittings)
	id := ids[random.IntN(len(ids))]
	f := doc.Fittings[id]
	w := upToPlaces(m, doc)
	w.places, _ = m.workArrangement(doc, w.room, w.skin, w.things)
	at := w.places.Find(id)
	dx, dy, dz := random.Float64()*600-300, random.Float64()*400-200, float64(random.IntN(2))*(random.Float64()*100-50)
	var patch []byte
	switch k := random.IntN(20); {
	case k == 0:
		patch = []byte(fmt.Sprintf(`{"fittings": {%q: {"turn": "%d °"}}}`, id, 15*random.IntN(24)))
	case k == 1:
		patch = []byte(fmt.Sprintf(`{"fittings": {%q: {"held": "strapped"}}}`, id))
	case k == 2:
		patch = []byte(fmt.Sprintf(`{"fittings": {%q: null}}`, id))
	case k == 3:
		patch = []byte(fmt.Sprintf(`{"fittings": {"added-%d": {"make": "box", "at": {"x": %.0f, "y": %.0f}, "size": {"x": 200, "y": 300, "z": 250}, "of": "ply-poplar-12"}}}`, random.IntN(1000), 1000+dx, dy))
	case k == 4:
		patch, _ = arrangement.Lengthen(id, f, random.IntN(3), dx/4)
	default:
		if f.At == nil || f.At.Undecided || !at.Placed() {
			return nil, ""
		}
		patch = arrangement.PlacePatch(id, f.At, arrangement.Drag(f, at.Box, dx, dy, dz))
	}
	if patch == nil {
		return nil, ""
	}
	parsed, err := tree.ParsePatch(patch)
	if err != nil {
		t.Fatal(err)
	}
	after, err := build.Apply(doc, parsed, catalogue.Builtin())
	if err != nil {
		return nil, ""
	}
	return after, string(patch)
}

// difference is what two results differ in, but for what they remember; empty if in nothing.
func difference(a, b *fit.Result) string {
	x, y := reflect.ValueOf(*a), reflect.ValueOf(*b)
	for i := range x.NumField() {
		if f := x.Type().Field(i); f.IsExported() && f.Name != "Memory" && !reflect.DeepEqual(x.Field(i).Interface(), y.Field(i).Interface()) {
			return fmt.Sprintf("%s\n%+v\n%+v", f.Name, x.Field(i).Interface(), y.Field(i).Interface())
		}
	}
	for _, f := range a.Figures {
		v, _ := a.Working(f.Code)
		w, _ := b.Working(f.Code)
		if !reflect.DeepEqual(v, w) {
			return fmt.Sprintf("the working of %s\n%+v\n%+v", f.Code, v, w)
		}
	}
	return ""
}
