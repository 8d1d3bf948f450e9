package shell

import "fmt"

// A Bay is the part of a side or the roof between two neighbouring ribs, or
// before the first or behind the last.
type Bay struct {
	ID       string // left-1, roof-3
	Surface  string
	From, To float64 // along x, between the middles of the ribs
	Depth    float64 // of the deepest rib at its ends
	Steel    float64 // how much of its length lies on the ribs' faces
	Net      float64 // m2, less openings and arches
}

const (
	leastBay     = 150 // a shorter strip at the end of a surface belongs to its neighbour
	commonFlange = 50  // where a rib's is not known
)

// Bays are the bays of a surface from the front; floor, front and rear are one
// bay each, without ribs and named like the surface.
func (b *Body) Bays(surface string) []Bay {
	if surface != Left && surface != Right && surface != Roof {
		bay := Bay{ID: surface, Surface: surface, From: b.Start(), To: b.End()}
		bay.Net, _ = b.Net(surface, bay.From, bay.To, -far, far)
		return []Bay{bay}
	}
	cuts := []float64{b.Start()}
	ribs := b.Ribs(surface)
	for _, r := range ribs {
		if x := float64(r.X); x-cuts[len(cuts)-1] >= leastBay && b.End()-x >= leastBay {
			cuts = append(cuts, x)
		}
	}
	cuts = append(cuts, b.End())
	bays := make([]Bay, len(cuts)-1)
	for i := range bays {
		bay := Bay{ID: fmt.Sprintf("%s-%d", surface, i+1), Surface: surface, From: cuts[i], To: cuts[i+1]}
		for _, r := range ribs {
			bay.touch(r)
		}
		bay.Net, _ = b.Net(surface, bay.From, bay.To, -far, far)
		bays[i] = bay
	}
	return bays
}

// touch counts a rib that stands in the bay or at one of its ends.
func (b *Bay) touch(r Rib) {
	x, half := float64(r.X), float64(r.face())/2
	if x < b.From || x > b.To {
		return
	}
	b.Depth = max(b.Depth, float64(r.Depth))
	b.Steel += max(0, min(b.To, x+half)-max(b.From, x-half))
}

// face is the width of a rib's face.
func (r Rib) face() float64 {
	if r.Flange > 0 {
		return float64(r.Flange)
	}
	return commonFlange
}
