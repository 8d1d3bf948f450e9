package web

import (
	"tumblehome/build"
	"tumblehome/internal/words"
	"tumblehome/trade/lining"
)

// surfaceView is one surface with what is laid on it.
type surfaceView struct {
	Key, Title string
	Layers     []layerView
	Sections   []sectionView
	Bays       []bayView
}

// bayView is what a bay comes to.
type bayView struct {
	Name, Rib, Long, Depth string
}

// surfaceKeys are the surfaces as the document names them; left and right stand for themselves only where they differ.
var surfaceKeys = []choice{
	{"floor", "On the floor"}, {"sides", "On both sides"}, {"left", "On the left side"}, {"right", "On the right side"},
	{"roof", "Under the roof"}, {"doors", "On the doors"}, {"front", "On the partition"},
}

func layersOn(l build.Lining, key string) []build.Choice[build.Layer] {
	return map[string][]build.Choice[build.Layer]{
		"floor": l.Floor, "sides": l.Sides, "left": l.Left, "right": l.Right, "roof": l.Roof, "doors": l.Doors, "front": l.Front,
	}[key]
}

// surfacesOf lists the surfaces that have layers, and those that every van has.
func surfacesOf(v view) []surfaceView {
	var out []surfaceView
	for _, k := range surfaceKeys {
		layers := layersOn(v.Doc.Lining, k.Value)
		if len(layers) == 0 && k.Value != "floor" && k.Value != "sides" && k.Value != "roof" {
			continue
		}
		s := surfaceView{Key: k.Value, Title: k.Words, Sections: sectionsOf(v, k.Value), Bays: baysOf(v, k.Value)}
		for i := range layers {
			s.Layers = append(s.Layers, v.layer(k.Value, i, layers))
		}
		out = append(out, s)
	}
	return out
}

// laidOn are the surfaces of the body that a key of the document lays.
func laidOn(key string) []string {
	if key == "sides" {
		return []string{lining.Left, lining.Right}
	}
	return []string{key}
}

// baysOf says what each bay comes to at knee height.
func baysOf(v view, key string) []bayView {
	var out []bayView
	for _, surface := range laidOn(key) {
		if v.Body == nil || surface == lining.Doors || surface == lining.Front {
			continue
		}
		for _, b := range v.Body.Bays(surface) {
			_, depth, ok := v.Lining.Section(surface, b.ID, kneeHeight)
			if !ok {
				continue
			}
			out = append(out, bayView{Name: build.BayWords(b.ID), Rib: words.Fine(b.Depth, "mm"), Long: words.Amount(b.To-b.From, "mm"), Depth: words.Fine(depth, "mm")})
		}
	}
	return out
}

const (
	kneeHeight  = 500.0  // mm above the floor
	elbowHeight = 1200.0 // mm above the floor, where sides are often covered otherwise
)

// roomLeft says what is left inside, in words.
func roomLeft(v view) []choice {
	room := v.Lining.Room
	if room == nil {
		return nil
	}
	x := room.Middle()
	wide := func(z float64) string { return words.Amount(room.Right(x, z)-room.Left(x, z), "mm") }
	return []choice{
		{wide(room.Floor() + kneeHeight), "wide at knee height"},
		{wide(room.Floor() + elbowHeight), "wide at elbow height"},
		{words.Amount(room.Headroom(x, 0), "mm"), "high in the middle"},
		{words.Amount(room.Rear()-room.Front(), "mm"), "long"},
	}
}
