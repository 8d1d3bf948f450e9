package arrangement_test

import (
	"math"
	"testing"

	"tumblehome/build"
	"tumblehome/quantity"
	"tumblehome/trade/arrangement"
)

// faceOf is a face of a box by its name.
func faceOf(b arrangement.Box, name string) float64 {
	return map[string]float64{"front": b.MinX, "rear": b.MaxX, "left": b.MinY, "right": b.MaxY, "bottom": b.MinZ, "top": b.MaxZ}[name]
}

var opposite = map[string]string{"front": "rear", "rear": "front", "left": "right", "right": "left", "bottom": "top", "top": "bottom"}

// Each form of an axis rule, stretched at each of its faces. The patch says how the builder's words changed; the places are worked out
// anew, so that the face must be found where it was pulled to and the other where it was.
func TestStretchingKeepsTheBuildersWords(t *testing.T) {
	galley := thing(place(t, "100", "right", ""), 1000, 450, 880) // stands at x 100..1100, y 470..920, z 40..920
	tests := []struct {
		name, x, y, z string
		face          string
		by            float64
		patch         string // of place and size
	}{
		{"a number: the far face makes it longer", "1500", "0", "", "rear", 120, `{"size":{"x":420}}`},
		{"a number: the near face moves the number too", "1500", "0", "", "front", -40, `{"at":{"x":1460},"size":{"x":340}}`},
		{"against a side: the free face makes it wider", "1500", "right", "", "left", -60, `{"size":{"y":260}}`},
		{"clear of a side: the face towards it changes how far from it", "1500", "right - 30", "", "right", 20, `{"at":{"y":"right - 10"},"size":{"y":220}}`},
		{"against a side: that face can be drawn back", "1500", "left", "", "left", 25, `{"at":{"y":"left + 25"},"size":{"y":175}}`},
		{"behind another: the rear makes it longer", "galley.rear + 10", "0", "", "rear", 50, `{"size":{"x":350}}`},
		{"behind another: the front changes how far behind", "galley.rear + 10", "0", "", "front", -10, `{"at":{"x":"galley.rear"},"size":{"x":310}}`},
		{"before another: the front makes it longer", "galley.front - 10", "0", "", "front", -70, `{"size":{"x":370}}`},
		{"from a face: flush there", "from galley.front", "0", "", "front", 5, `{"at":{"x":"from galley.front + 5"},"size":{"x":295}}`},
		{"to a face: the low face makes it longer", "to galley.rear", "0", "", "front", -100, `{"size":{"x":400}}`},
		{"to a face: the high face moves off it", "to galley.rear", "0", "", "rear", 100, `{"at":{"x":"to galley.rear + 100"},"size":{"x":400}}`},
		{"an end of two lengths", "1500..1900", "0", "", "rear", 45, `{"at":{"x":"1500..1945"}}`},
		{"an end at a face", "galley.rear..rear", "0", "", "rear", -200, `{"at":{"x":"galley.rear..rear - 200"}}`},
		{"an end at another's face", "galley.rear..rear", "0", "", "front", 30, `{"at":{"x":"galley.rear + 30..rear"}}`},
		{"on the floor: the top makes it higher", "1500", "0", "", "top", 300, `{"size":{"z":400}}`},
		{"on the floor: the bottom lifts it off", "1500", "0", "", "bottom", 40, `{"at":{"z":"floor + 40"},"size":{"z":60}}`},
		{"hung under the roof: the bottom makes it higher", "1500", "0", "roof", "bottom", -150, `{"size":{"z":250}}`},
		{"millimetres are whole", "1500", "0", "", "rear", 10.4, `{"size":{"x":310}}`},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			it := thing(place(t, tt.x, tt.y, tt.z), 300, 200, 100)
			all := map[string]arrangement.Thing{"galley": galley, "it": it}
			before := boxOf(room{}, all)
			after := arrangement.Stretch(it, before, tt.face, tt.by, "")
			if got, want := patchText(t, it, after), `{"fittings":{"it":`+tt.patch+`}}`; got != want {
				t.Errorf("got %s, want %s", got, want)
			}
			all["it"] = after
			now := boxOf(room{}, all)
			if got, want := faceOf(now, tt.face), faceOf(before, tt.face)+tt.by; math.Abs(got-want) > 0.5 {
				t.Errorf("its %s is at %g, want %g", tt.face, got, want)
			}
			if got, want := faceOf(now, opposite[tt.face]), faceOf(before, opposite[tt.face]); math.Abs(got-want) > 0.5 {
				t.Errorf("its %s went from %g to %g", opposite[tt.face], want, got)
			}
		})
	}
}

func TestStretchingAtItsLimits(t *testing.T) {
	straight := func(x, y string) arrangement.Thing { return thing(place(t, x, y, ""), 300, 200, 100) }
	turned := straight("1500", "0")
	quarter := quantity.Angle(90)
	turned.Turn = &quarter
	filling := thing(place(t, "", "0", "roof"), 0, 200, 20)
	tests := []struct {
		name string
		it   arrangement.Thing
		face string
		by   float64
		to   string
		want string
	}{
		{"what is held in its middle grows to both sides", straight("1500", "mid 0"), "right", 30, "", `{"size":{"y":260}}`},
		{"held in its middle it gets no smaller than can be taken hold of", straight("1500", "mid 0"), "right", -95, "", `{"size":{"y":50}}`},
		{"it gets no smaller than can be taken hold of", straight("1500", "0"), "rear", -290, "", `{"size":{"x":50}}`},
		{"nothing is stretched through a surface", straight("1500", "right - 30"), "right", 100, "", `{"at":{"y":"right"},"size":{"y":230}}`},
		{"nor is an end", straight("1500", "left + 20..0"), "left", -100, "", `{"at":{"y":"left..0"}}`},
		{"turned by a quarter, its own other axis grows", turned, "rear", 40, "", `{"size":{"y":240}}`},
		{"what fills its space gets an end", filling, "rear", -400, "", `{"at":{"x":"front..rear - 400"}}`},
		{"an end is laid against a face by its name", straight("1500..1900", "0"), "rear", 96, "galley.front", `{"at":{"x":"1500..galley.front"}}`},
		{"a size has no name for a face", straight("1500", "0"), "rear", 96, "galley.front", `{"size":{"x":396}}`},
		{"a face that is none is not written", straight("1500..1900", "0"), "rear", 96, "42", `{"at":{"x":"1500..1996"}}`},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			now := boxOf(room{}, map[string]arrangement.Thing{"it": tt.it})
			if got, want := patchText(t, tt.it, arrangement.Stretch(tt.it, now, tt.face, tt.by, tt.to)), `{"fittings":{"it":`+tt.want+`}}`; got != want {
				t.Errorf("got %s, want %s", got, want)
			}
		})
	}
}

// patchText is both patches of a stretch as one text.
func patchText(t *testing.T, before, after arrangement.Thing) string {
	t.Helper()
	at, size := string(arrangement.PlacePatch("it", before.At, *after.At)), string(arrangement.SizePatch("it", before.Fitting.Size, after.Fitting.Size))
	switch {
	case at == `{"fittings":{"it":{"at":{}}}}`:
		return size
	case size == "{}":
		return at
	}
	return at[:len(at)-3] + "," + size[len(`{"fittings":{"it":{`):]
}

func TestWhatDoesNotStretchSaysWhy(t *testing.T) {
	made := func(change func(*arrangement.Thing)) arrangement.Thing {
		it := thing(place(t, "1500", "right", ""), 900, 400, 12)
		it.Make = "shelf"
		change(&it)
		return it
	}
	angle := quantity.Angle(30)
	tests := []struct {
		name, face, want string
		it               arrangement.Thing
	}{
		{"a free face of a made thing stretches", "rear", "", made(func(*arrangement.Thing) {})},
		{"what is bought", "rear", "it is bought and comes in one size", made(func(t *arrangement.Thing) { t.Make, t.Buy = "", "fridge" })},
		{"a scribed face", "right", "its right face is cut to the lining and ends where that is", made(func(t *arrangement.Thing) { t.Scribe = []string{"right"} })},
		{"the face opposite a scribed one stretches", "left", "", made(func(t *arrangement.Thing) { t.Scribe = []string{"right"} })},
		{"a top cut to the roof", "top", "its top face is cut to the lining and ends where that is", made(func(t *arrangement.Thing) { t.Scribe = []string{"roof"} })},
		{"what belongs to an opening", "rear", "the opening it belongs to gives its size", made(func(t *arrangement.Thing) { t.For = "shell.openings.rear" })},
		{"what stands at an angle", "rear", "it stands turned by 30°: turn it straight first, or type its size", made(func(t *arrangement.Thing) { t.Turn = &angle })},
		{"but not its height", "top", "", made(func(t *arrangement.Thing) { t.Turn = &angle })},
		{"a board's thickness", "top", "it is as thick as its board", made(func(t *arrangement.Thing) { t.Board = 12 })},
		{"what has no place", "rear", "it has no place yet", made(func(t *arrangement.Thing) { t.At = &build.Place{Undecided: true} })},
	}
	for _, tt := range tests {
		if got := arrangement.Fixed(tt.it, tt.face); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

func TestWhatCannotBeTurnedSaysWhy(t *testing.T) {
	between := "it runs from face to face: say one face it stands against, and how long it is, first"
	askew := quantity.Angle(30)
	for name, tt := range map[string]struct {
		x, y, buy string
		turn      *quantity.Angle
		want      string
	}{
		"a number and a face turn":             {"1500", "right", "", nil, ""},
		"ends along are written down":          {"front..rear", "0", "", nil, ""},
		"and ends across":                      {"0", "left..right", "", nil, ""},
		"what fills its space is as well":      {"", "0", "", nil, ""},
		"what is bought has no length to say":  {"front..rear", "0", "strip-600", nil, between},
		"nor has what stands askew between":    {"front..rear", "0", "", &askew, between},
		"what stands askew at a number is not": {"0", "0", "", &askew, ""},
	} {
		one := thing(place(t, tt.x, tt.y, "40..900"), 300, 200, 100)
		one.Buy, one.Turn = tt.buy, tt.turn
		if got := arrangement.FixedTurn(one); got != tt.want {
			t.Errorf("%s: %q, want %q", name, got, tt.want)
		}
	}
}

// Each of these is as long as it was and stands where it stood once its length is written down.
func TestWhatRunsFromFaceToFaceKeepsItsLengthWrittenDown(t *testing.T) {
	all := map[string]arrangement.Thing{"galley": thing(place(t, "700", "right", ""), 700, 450, 880)}
	for name, tt := range map[string]struct {
		x      string
		leaves bool // the galley goes
		want   string
		length float64
	}{
		"between a wall and a thing":           {"front..galley.front - 5", true, "front", 695},
		"between a thing that goes and a wall": {"galley.rear..rear - 20", true, "rear - 20", 1480},
		"between a thing that stays":           {"galley.rear..rear", false, "galley.rear", 1500},
		"from a far face":                      {"galley.front..rear", false, "from galley.front", 2200},
		"between numbers":                      {"100..900", true, "100", 800},
		"up to a number":                       {"galley.front + 100..900", true, "to 900", 100},
		"of a thing's own length":              {"galley.front..galley.rear", true, "from galley.front", 700},
		"filling its space":                    {"", true, "front", 2900},
	} {
		all["shelf"] = thing(place(t, tt.x, "left", ""), 0, 200, 20)
		result := work(room{}, all)
		before := result.Find("shelf").Box
		got, ok := arrangement.Sized(all["shelf"], before, 0, func(p build.Point) bool { return !tt.leaves || p.Of != "galley" })
		if !ok || got.At.X.String() != tt.want || got.Size[0] != tt.length || got.Fitting.Size.X.Float() != tt.length {
			t.Errorf("%s: %v %q, %g long; want %q, %g", name, ok, got.At.X.String(), got.Size[0], tt.want, tt.length)
			continue
		}
		all["shelf"] = got
		result = work(room{}, all)
		if after := result.Find("shelf").Box; after != before {
			t.Errorf("%s: it stood at %v and stands at %v", name, before, after)
		}
	}
	if _, ok := arrangement.Sized(all["galley"], arrangement.Box{}, 0, func(build.Point) bool { return true }); ok {
		t.Error("a thing of its own length is written anew")
	}
}

// A settle behind a galley, a cushion upon it, and a shelf between the two and the rear.
func TestMovedTogetherEachGoesAsFarAsWanted(t *testing.T) {
	all := map[string]arrangement.Thing{
		"galley":  thing(place(t, "100", "right - 100", ""), 700, 450, 880),
		"settle":  thing(place(t, "galley.rear + 10", "to galley.right", ""), 900, 400, 400),
		"cushion": thing(place(t, "front", "left", ""), 800, 300, 80),
		"shelf":   thing(place(t, "galley.rear..rear", "left", "galley.top"), 0, 200, 20),
		"table":   thing(place(t, "1500", "-300", ""), 500, 400, 20),
	}
	cushion := all["cushion"]
	cushion.Upon = "settle"
	all["cushion"] = cushion
	for _, moved := range [][]string{{"galley"}, {"galley", "settle"}, {"settle", "galley", "cushion"}, {"shelf", "galley"}, {"table", "cushion"}} {
		before := work(room{}, all)
		fittings, wanted := map[string]build.Fitting{}, map[string][3]float64{}
		for id, one := range all {
			fittings[id] = one.Fitting
		}
		for i, id := range moved {
			wanted[id] = [3]float64{40, 20, 10 * float64(i)} // each lifted by something else
		}
		then := map[string]arrangement.Thing{}
		for id, one := range all {
			then[id] = one
		}
		for id, own := range arrangement.Together(fittings, wanted) {
			one := all[id]
			at := arrangement.DragPoints(one.Fitting, before.Find(id).Box, own)
			one.At = &at
			then[id] = one
		}
		after := work(room{}, then)
		for _, id := range moved {
			by := wanted[id]
			want := before.Find(id).Box.Moved(by[0], by[1], by[2])
			if id == "shelf" { // its far end is not stretched out of the van
				want.MaxX = before.Find(id).Box.MaxX + 40
			}
			near(t, after.Find(id).Box, want, 0.6)
		}
	}
}

// boxOf is where "it" stands.
func boxOf(r room, all map[string]arrangement.Thing) arrangement.Box {
	result := work(r, all)
	return result.Find("it").Box
}

func TestWhatStandsOnWhat(t *testing.T) {
	at := func(x string) build.Fitting { return build.Fitting{At: place(t, x, "0", "")} }
	all := map[string]build.Fitting{"galley": at("100"), "settle": at("galley.rear + 10"), "cushion": {Upon: "settle", At: place(t, "front", "left", "")}}
	for _, tt := range []struct {
		id, on string
		want   bool
	}{{"settle", "galley", true}, {"cushion", "galley", true}, {"galley", "settle", false}, {"galley", "galley", true}, {"", "galley", false}, {"nobody", "galley", false}} {
		if got := arrangement.StandsOn(all, tt.id, tt.on); got != tt.want {
			t.Errorf("%q stands on %q: %v, want %v", tt.id, tt.on, got, tt.want)
		}
	}
}
