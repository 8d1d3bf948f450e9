package sheet

import (
	"cmp"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/solve/solid"
	"tumblehome/trade/arrangement"
)

// thing is one fitting as it is to be drawn.
type thing struct {
	*arrangement.Standing
	of      build.Fitting
	name    string
	box     solid.Bounds // about its solid
	carrier int          // index of what it stands in or upon, -1 for none
	hidden  bool         // inside something else
	root    int          // what carries it in the end, itself if nothing does
}

// gather lists what is to be seen in the mode, in order of ids.
func (d *drawing) gather() {
	d.index = map[string]int{}
	mode := d.standings()
	if mode == nil {
		return
	}
	for i := range mode.All {
		s := &mode.All[i]
		f := d.r.Document.Fittings[s.ID]
		if !s.Placed() || d.Mode == Today && !d.fitted(f) {
			continue
		}
		d.index[s.ID] = len(d.things)
		d.things = append(d.things, thing{Standing: s, of: f, name: nameOf(s.ID, f), box: s.Solid.Bounds(), carrier: -1})
	}
	for i := range d.things {
		if c, ok := d.index[d.things[i].Carrier]; ok {
			d.things[i].carrier = c
		}
	}
	for i := range d.things {
		d.things[i].root, d.things[i].hidden = d.carried(i)
	}
}

// carried is what carries a thing in the end, and whether it is out of sight on the way there.
func (d *drawing) carried(i int) (root int, hidden bool) {
	for range d.things {
		t := &d.things[i]
		if t.carrier < 0 {
			break
		}
		if t.In && mostly(t.box, d.things[t.carrier].box) {
			hidden = true
		}
		i = t.carrier
	}
	return i, hidden
}

// mostly says whether at least half of a box lies in another.
func mostly(a, b solid.Bounds) bool {
	share := func(a0, a1, b0, b1 float64) float64 {
		if a1 <= a0 {
			return 1
		}
		return max(0, min(a1, b1)-max(a0, b0)) / (a1 - a0)
	}
	return share(a.MinX, a.MaxX, b.MinX, b.MaxX)*share(a.MinY, a.MaxY, b.MinY, b.MaxY)*share(a.MinZ, a.MaxZ, b.MinZ, b.MaxZ) >= 0.5
}

// nameOf is what a fitting is called.
func nameOf(id string, f build.Fitting) string {
	if f.Called != "" {
		return f.Called
	}
	return strings.ReplaceAll(id, "-", " ")
}

// overhead says whether a thing hangs above the plane at which the plan is cut, or lies on the roof; not so a bed that somebody lies on.
func (d *drawing) overhead(t *thing) bool {
	return t.box.MinZ >= d.level && t.Where != "cab" && !d.resting(t)
}

// contents are the names of what stands in or upon a thing, the largest first.
func (d *drawing) contents(i int) []string {
	var inside []int
	for j := range d.things {
		if j != i && d.within(j, i) {
			inside = append(inside, j)
		}
	}
	inOrder(inside, func(i int) float64 { return -volume(d.things[i].box) })
	var out []string
	for _, j := range inside {
		out = append(out, d.things[j].name)
	}
	return out
}

// within says whether thing i carries j, directly or through others.
func (d *drawing) within(j, i int) bool {
	for range d.things {
		if j = d.things[j].carrier; j < 0 {
			return false
		}
		if j == i {
			return true
		}
	}
	return false
}

func volume(b solid.Bounds) float64 { return (b.MaxX - b.MinX) * (b.MaxY - b.MinY) * (b.MaxZ - b.MinZ) }

// busiest is the x at which a cut across shows most: looked for in the middle of every fitting, rounded to 10 mm.
func (d *drawing) busiest() float64 {
	body := d.r.Body
	best, most := (body.Start()+body.End())/2, 0.0
	for i := range d.things {
		x := float64(int((d.things[i].box.MinX+d.things[i].box.MaxX)/20)) * 10
		if x <= body.Start() || x >= body.End() {
			continue
		}
		if s := d.shown(x); s > most+1 {
			best, most = x, s
		}
	}
	return best
}

// shown is how much a cut at x shows: the area of what it cuts, each side counted to what one large thing gives at most.
func (d *drawing) shown(x float64) float64 {
	var sides [2]float64
	for i := range d.things {
		t := &d.things[i]
		if t.hidden || t.Where != "" || x <= t.box.MinX || x >= t.box.MaxX {
			continue
		}
		side := 0
		if t.box.MinY+t.box.MaxY > 0 {
			side = 1
		}
		sides[side] += (t.box.MaxY - t.box.MinY) * (t.box.MaxZ - t.box.MinZ)
	}
	const plenty = 500000 // mm2
	return min(sides[0], plenty) + min(sides[1], plenty) + 0.1*(sides[0]+sides[1])
}

// inOrder sorts by a number; equals stay as they were.
func inOrder[T any](all []T, key func(T) float64) {
	slices.SortStableFunc(all, func(a, b T) int { return cmp.Compare(key(a), key(b)) })
}
