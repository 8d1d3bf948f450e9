package shell

import (
	"math"
	"strings"

	"tumblehome/quantity"
	"tumblehome/solve/offsets"
)

// knee is the height at which the width between the sides is read.
const knee = 400

// tapeQuick is how well the six readings are taken to be read.
const tapeQuick = 10

// stature is what goes with a height class: a typical section and what hangs
// on it. Invented, drawn to look like vans of the class.
type stature struct {
	height, knee, arches  float64   // typical readings
	doorWidth, doorHeight float64   // of the side door
	heights, half         []float64 // shares of height and of the widest half-breadth
	archUp                float64
	ribDepth, bowDepth    float64
}

var statures = map[string]stature{
	"low": {height: 1200, knee: 1530, arches: 1230, doorWidth: 660, doorHeight: 1060, archUp: 330, ribDepth: 30, bowDepth: 22,
		heights: []float64{0, 0.21, 0.415, 0.62, 0.83, 0.93}, half: []float64{0.962, 0.989, 1, 0.985, 0.919, 0.80}},
	"mid": {height: 1780, knee: 1865, arches: 1345, doorWidth: 1150, doorHeight: 1430, archUp: 310, ribDepth: 45, bowDepth: 32,
		heights: []float64{0, 0.17, 0.34, 0.505, 0.675, 0.845, 0.945}, half: []float64{0.962, 0.989, 1, 0.994, 0.969, 0.906, 0.804}},
	"high": {height: 2000, knee: 1950, arches: 1420, doorWidth: 1250, doorHeight: 1780, archUp: 290, ribDepth: 55, bowDepth: 38,
		heights: []float64{0, 0.2, 0.4, 0.6, 0.8, 0.925, 0.96}, half: []float64{0.962, 0.99, 1, 0.986, 0.948, 0.89, 0.83}},
}

// stretch is what goes with a length class: how breadth and crown run from the
// front to the rear, at even stations.
type stretch struct {
	length          float64
	breadth, crown  []float64 // shares of those in the middle
	archFrom, reach float64   // shares of the length: where the arch begins, how long it is
	ribs, bows      []float64 // shares of the length
}

var stretches = map[string]stretch{
	"short": {length: 1800, breadth: []float64{0.993, 1, 1, 0.988, 0.953}, crown: []float64{0.991, 0.999, 1, 0.992, 0.973},
		archFrom: 0.48, reach: 0.36, ribs: []float64{0.035, 0.36, 0.69, 0.97}, bows: []float64{0.21, 0.5, 0.78}},
	"mid": {length: 2900, breadth: []float64{0.991, 0.998, 1, 0.993, 0.941}, crown: []float64{0.985, 0.996, 1, 0.994, 0.972},
		archFrom: 0.57, reach: 0.26, ribs: []float64{0.03, 0.26, 0.49, 0.7, 0.91}, bows: []float64{0.14, 0.33, 0.51, 0.69, 0.87}},
	"long": {length: 4000, breadth: []float64{0.996, 1, 1, 0.99, 0.928}, crown: []float64{0.992, 0.999, 1, 0.995, 0.974},
		archFrom: 0.565, reach: 0.2, ribs: []float64{0.02, 0.17, 0.35, 0.5, 0.65, 0.8, 0.96}, bows: []float64{0.09, 0.22, 0.36, 0.5, 0.64, 0.78, 0.92}},
}

// formDoubt is how far a van of a class may be off its typical form.
const formDoubt = 0.03

// typical finds the two classes of a generic body; an unknown name is the
// middle one.
func typical(body string) (stretch, stature) {
	long, high, _ := strings.Cut(body, "-")
	s, ok := stretches[long]
	if !ok {
		s = stretches["mid"]
	}
	h, ok := statures[high]
	if !ok {
		h = statures["mid"]
	}
	return s, h
}

// form is the shape of a generic body.
func form(s stretch, h stature) offsets.Form {
	f := offsets.Form{Heights: h.heights, Crown: s.crown, Doubt: formDoubt}
	for i, k := range s.breadth {
		f.Stations = append(f.Stations, float64(i)/float64(len(s.breadth)-1))
		row := make([]float64, len(h.half))
		for j, share := range h.half {
			row[j] = share * k
		}
		f.Half = append(f.Half, row)
	}
	return f
}

// quickTable scales a generic body to the readings: its half-breadth is set so
// that the middle is as wide at the knee as was read.
func quickTable(q Quick) offsets.Table {
	s, h := typical(q.Body)
	length, height := read(q.Length, s.length), read(q.Height, h.height)
	f := form(s, h)
	unit, err := offsets.New(f.Scale(length, height, 1, 0))
	if err != nil { // the forms are constant and the readings positive: see read
		return offsets.Table{}
	}
	half := read(q.Knee, h.knee) / 2 / unit.Half(length/2, knee)
	return f.Scale(length, height, half, tapeQuick)
}

// read is a reading in mm, or the typical one where there is none to use.
func read(l *quantity.Length, typical float64) float64 {
	if l == nil || !(*l > 0) || math.IsInf(float64(*l), 0) {
		return typical
	}
	return float64(*l)
}

// typicalID is what ribs, arches and doors are called that nobody wrote down.
const typicalID = "typical"

// typicalRibs are the ribs and bows of a generic body of the given length.
func typicalRibs(q Quick, length float64) []Rib {
	s, h := typical(q.Body)
	var ribs []Rib
	for _, at := range s.ribs {
		ribs = append(ribs, Rib{ID: typicalID, X: quantity.Length(math.Round(at * length)), On: []string{Left, Right}, Depth: quantity.Length(h.ribDepth), Flange: 50})
	}
	for _, at := range s.bows {
		ribs = append(ribs, Rib{ID: typicalID, X: quantity.Length(math.Round(at * length)), On: []string{Roof}, Depth: quantity.Length(h.bowDepth), Flange: 50})
	}
	return ribs
}

// typicalArch is the pair of wheel arches of a generic body, as wide apart as read.
func typicalArch(q Quick, surface *offsets.Surface) Arch {
	s, h := typical(q.Body)
	length := surface.End()
	from, to := s.archFrom*length, (s.archFrom+s.reach)*length
	inward := surface.Half((from+to)/2, 0) - read(q.BetweenArches, h.arches)/2
	return Arch{ID: typicalID, On: []string{Left, Right}, From: quantity.Length(math.Round(from)), To: quantity.Length(math.Round(to)),
		Inward: quantity.Length(math.Max(0, inward)), Up: quantity.Length(h.archUp)}
}

// typicalDoors are the sliding door as read and two rear leaves.
func typicalDoors(q Quick, surface *offsets.Surface) []Opening {
	s, h := typical(q.Body)
	half, height := surface.Half(surface.End(), surface.TopRow()/2), surface.TopRow()
	doors := []Opening{{ID: typicalID, Through: Rear, Door: "two leaves", WayOut: true, Made: true,
		Y: &Span{quantity.Length(-0.86 * half), quantity.Length(0.86 * half)}, Z: &Span{0, quantity.Length(0.92 * height)}}}
	if q.DoorSide == "none" {
		return doors
	}
	side := Right
	if q.DoorSide == Left {
		side = Left
	}
	from := 0.05 * surface.End()
	wide := read(q.DoorWidth, math.Min(h.doorWidth, s.archFrom*surface.End()-from)) // no side door goes over a wheel arch
	return append(doors, Opening{ID: typicalID + "-side", Through: side, Door: "sliding", WayOut: true, Made: true,
		X: &Span{quantity.Length(from), quantity.Length(from + wide)}, Z: &Span{0, quantity.Length(read(q.DoorHeight, h.doorHeight))}})
}
