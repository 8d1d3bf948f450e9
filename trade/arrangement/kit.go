package arrangement

import (
	"math"

	"tumblehome/build"
	"tumblehome/solve/solid"
)

// Kit is what a page needs to predict a drag in one mode without asking: outlines, what carries what, surfaces, faces to snap to.
// All lengths are in mm, rounded to 0.1.
type Kit struct {
	Mode     string       `json:"mode"`
	Fittings []KitFitting `json:"fittings"`
	Surfaces []KitSurface `json:"surfaces"`
	Snaps    []Snap       `json:"snaps"`
	Roof     *KitRoof     `json:"roof"`
	Ribs     []KitRib     `json:"ribs"`
	Least    float64      `json:"least"`  // how small stretching makes a thing
	Closed   bool         `json:"closed"` // a partition closes the front: nothing reaches through it
	Limits   KitLimits    `json:"limits"`
}

// KitLimits are the measures by which what stands out of the room is excused [mm]; trade/fit says why.
type KitLimits struct {
	CutShare   float64 `json:"cutShare"` // of its size across a face that is cut to the lining, which one cuts off
	CutLeast   float64 `json:"cutLeast"` // and so much in any case
	CabLong    float64 `json:"cabLong"`
	CabWider   float64 `json:"cabWider"`   // by how much a cab may be wider or higher than the front of the room
	WellInside float64 `json:"wellInside"` // what is said to be outside and lies deeper in the room than this is not outside
	Shoulder   float64 `json:"shoulder"`   // the height up to which a side is a side, and not yet the roof
}

// KitRoof is the underside of the finished roof, as heights on a grid.
type KitRoof struct {
	From    [2]float64  `json:"from"` // x and y of the first height
	Step    [2]float64  `json:"step"`
	Heights [][]float64 `json:"heights"` // along x, then across
}

// KitRib is a rib or bow of the body, so that a fixing can be laid on steel. Half is half the width of its face.
type KitRib struct {
	ID   string  `json:"id"`
	X    float64 `json:"x"`
	Half float64 `json:"half"`
	On   string  `json:"on"` // left, right, roof
}

// KitFitting is one fitting as convex prisms.
type KitFitting struct {
	ID      string     `json:"id"`
	Carrier string     `json:"carrier,omitempty"` // the fitting that takes it along
	In      bool       `json:"in,omitempty"`      // it stands inside its carrier
	Where   string     `json:"where,omitempty"`   // outside, under, cab
	Min     [3]float64 `json:"min"`
	Max     [3]float64 `json:"max"`
	Prisms  []KitPrism `json:"prisms"`

	Turn   float64           `json:"turn,omitempty"` // degrees, clockwise seen from above
	Locked bool              `json:"locked,omitempty"`
	Holds  [3]Hold           `json:"holds"`            // what it holds on to along, across and up
	Fixed  map[string]string `json:"fixed,omitempty"`  // why a face does not stretch; "" for all of them
	NoTurn string            `json:"noTurn,omitempty"` // why it cannot be turned

	Scribed []string  `json:"scribed,omitempty"` // faces cut to the surfaces: these stand nowhere out
	Opening bool      `json:"opening,omitempty"` // it belongs to an opening of the body
	Skin    bool      `json:"skin,omitempty"`    // it sits in one and stands out of the skin
	Gives   float64   `json:"gives,omitempty"`   // share of its least size that it may be pressed
	Along   [3]string `json:"along"`             // whose face its place is told from along, across and up; its carrier's otherwise

	// Stops is how far it may be dragged towards the surface it stands against, by axis: a drag stops there.
	Stops map[string]float64 `json:"stops,omitempty"`
}

// KitPrism is an upright convex prism, its outline counter-clockwise seen from above with x to the right and y away.
type KitPrism struct {
	Outline [][2]float64 `json:"outline"`
	Low     float64      `json:"low"`
	High    float64      `json:"high"`
}

// KitSurface is the inside of the living space at one height.
type KitSurface struct {
	Height  float64      `json:"height"`
	Outline [][2]float64 `json:"outline"`
}

// Snap is a flat face that a dragged face may be laid against. On says which word of the document names it.
type Snap struct {
	Axis string  `json:"axis"` // x, y or z
	At   float64 `json:"at"`
	Face string  `json:"face"` // rear, galley.rear
}

// Spacings of the roof's heights in a kit [mm]: across the van the roof falls off to the sides.
const (
	kitRoofAlong  = 200
	kitRoofAcross = 75
)

// NewKit gathers the drag kit of a mode: things are the fittings it stands for, ribs those of the body.
func NewKit(m *Mode, r Room, things map[string]Thing, ribs []KitRib) Kit {
	kit := Kit{Mode: m.Name, Fittings: []KitFitting{}, Snaps: roomSnaps(r), Ribs: ribs, Least: LeastSize}
	for i := range m.All {
		s := &m.All[i]
		if !s.Placed() {
			continue
		}
		kit.Fittings = append(kit.Fittings, kitFitting(s, things[s.ID]))
		kit.Snaps = append(kit.Snaps, fittingSnaps(s)...)
	}
	kit.Surfaces = kitSurfaces(r)
	kit.Roof = kitRoofOf(r)
	return kit
}

// kitRoofOf looks at the roof on a grid over all the room.
func kitRoofOf(r Room) *KitRoof {
	middle := (r.Front() + r.Rear()) / 2
	half := max(-r.Left(middle, r.Floor()+600), r.Right(middle, r.Floor()+600)) + kitRoofAcross
	n, m := solid.Every(r.Rear()-r.Front(), kitRoofAlong), solid.Every(2*half, kitRoofAcross)
	roof := &KitRoof{From: [2]float64{r.Front(), -half}, Step: [2]float64{(r.Rear() - r.Front()) / float64(n), 2 * half / float64(m)}}
	for i := range n + 1 {
		row := make([]float64, m+1)
		for j := range row {
			row[j] = tenth(r.Roof(roof.From[0]+float64(i)*roof.Step[0], roof.From[1]+float64(j)*roof.Step[1]))
		}
		roof.Heights = append(roof.Heights, row)
	}
	return roof
}

func kitFitting(s *Standing, t Thing) KitFitting {
	f := KitFitting{ID: s.ID, Carrier: s.Carrier, In: s.In, Where: s.Where, Locked: IsLocked(t.Fitting), NoTurn: FixedTurn(t), Fixed: fixedFaces(t)}
	f.Stops, f.Scribed, f.Opening = stops(t), t.Scribe, t.For != ""
	f.Skin = t.For != "" && t.Make == ""
	r, _ := rulesOf(t.At)
	for axis := range r {
		f.Along[axis] = r[axis].A.Of
	}
	f.Holds = [3]Hold{HoldOf(t, 0), HoldOf(t, 1), HoldOf(t, 2)}
	if t.Turn != nil {
		f.Turn = t.Turn.Float()
	}
	f.Min = [3]float64{tenth(s.Box.MinX), tenth(s.Box.MinY), tenth(s.Box.MinZ)}
	f.Max = [3]float64{tenth(s.Box.MaxX), tenth(s.Box.MaxY), tenth(s.Box.MaxZ)}
	for _, p := range s.Solid {
		f.Prisms = append(f.Prisms, KitPrism{tenths(p.Outline), tenth(p.Low), tenth(p.High)})
	}
	return f
}

// fixedFaces says of each face that does not stretch why; where that is the same of all, once.
func fixedFaces(t Thing) map[string]string {
	fixed := map[string]string{}
	for _, face := range [...]string{"front", "rear", "left", "right", "bottom", "top"} {
		if why := Fixed(t, face); why != "" {
			fixed[face] = why
		}
	}
	if why := fixed["top"]; len(fixed) == 6 && why == fixed["front"] {
		return map[string]string{"": why}
	}
	return fixed
}

// stops are the drags that Drag cuts short.
func stops(t Thing) map[string]float64 {
	r, _ := rulesOf(t.At)
	var out map[string]float64
	for axis, rule := range r {
		if rule.Form == build.LeftOut && t.At != nil {
			rule = unsaidSurface(t.Fitting, axis)
		}
		if rule.Form != build.Against || rule.A.Of != "" || t.Where == "outside" {
			continue
		}
		if out == nil {
			out = map[string]float64{}
		}
		out[[3]string{"x", "y", "z"}[axis]] = -rule.A.Plus.Float() + 0
	}
	return out
}

// IsLocked says whether a fitting is to stay where it is until it is unlocked.
func IsLocked(f build.Fitting) bool { return f.Locked != nil && bool(*f.Locked) }

func roomSnaps(r Room) []Snap {
	return []Snap{{"x", tenth(r.Front()), "front"}, {"x", tenth(r.Rear()), "rear"}, {"z", tenth(r.Floor()), "floor"}}
}

func fittingSnaps(s *Standing) []Snap {
	b := s.Box
	return []Snap{
		{"x", tenth(b.MinX), s.ID + ".front"}, {"x", tenth(b.MaxX), s.ID + ".rear"},
		{"y", tenth(b.MinY), s.ID + ".left"}, {"y", tenth(b.MaxY), s.ID + ".right"},
		{"z", tenth(b.MinZ), s.ID + ".bottom"}, {"z", tenth(b.MaxZ), s.ID + ".top"},
	}
}

func tenths(outline []solid.Point) [][2]float64 {
	out := make([][2]float64, len(outline))
	for i, v := range outline {
		out[i] = [2]float64{tenth(v.X), tenth(v.Y)}
	}
	return out
}

// tenth rounds to 0.1 mm, and -0 to 0.
func tenth(v float64) float64 { return math.Round(v*10)/10 + 0 }
