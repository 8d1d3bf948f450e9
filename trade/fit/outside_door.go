package fit

import (
	"encoding/json"
	"fmt"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// What stands so near outside a door or hatch, and before so much of it, keeps it from opening [mm]: common practice, no source.
const (
	opensInto   = 500
	coversLong  = 200
	coversShort = 20
)

// outsideOf is the space outside an opening that it opens into, from the finished surface outwards.
func (w *worker) outsideOf(o Opening) solid.Bounds {
	zone, _, _ := w.zone(o)
	switch o.Through {
	case "left":
		zone.MinY, zone.MaxY = zone.MinY-opensInto, zone.MinY
	case "right":
		zone.MinY, zone.MaxY = zone.MaxY, zone.MaxY+opensInto
	case "rear":
		zone.MinX, zone.MaxX = zone.MaxX, zone.MaxX+opensInto
	case "roof":
		zone.MinZ, zone.MaxZ = zone.MaxZ, zone.MaxZ+opensInto
	case "floor":
		zone.MinZ, zone.MaxZ = zone.MinZ-opensInto, zone.MinZ
	}
	return zone
}

// barsOutside is the fitting outside the van that keeps an opening from opening, -1 for none. What is made to hang on the doors swings with them.
func (w *worker) barsOutside(mode *Mode, o Opening, today bool) int {
	if o.Through == "front" {
		return -1
	}
	zone := w.outsideOf(o)
	for i := range mode.Standings {
		s, f := &mode.Standings[i], &w.in.Fittings[i]
		if len(s.Solid) == 0 || !f.isOutside() || w.swings(i, s.Box, o) || w.liesInside(i) || today && !f.Today || !s.Box.Meets(zone) {
			continue
		}
		x, y, z := shared(s.Box.MinX, s.Box.MaxX, o.X), shared(s.Box.MinY, s.Box.MaxY, o.Y), shared(s.Box.MinZ, s.Box.MaxZ, o.Z)
		long, short := max(x, y), min(x, y) // of a hatch
		switch o.Through {
		case "left", "right":
			long, short = max(x, z), min(x, z)
		case "rear":
			long, short = max(y, z), min(y, z)
		}
		if long >= coversLong && short >= coversShort {
			return i
		}
	}
	return -1
}

// shared is how much of an extent a thing takes.
func shared(from, to float64, extent [2]float64) float64 {
	return min(to, extent[1]) - max(from, extent[0])
}

// doorBarredOutside tells of a door that something stands before outside; it says whether one does.
func (w *worker) doorBarredOutside(day *Mode, o Opening) bool {
	by := w.barsOutside(day, o, false)
	if by < 0 {
		return false
	}
	if w.in.Fittings[by].OnDoor == o.ID {
		return true // onDoors tells of it
	}
	out := finding.Finding{
		Code: "fit.door.barred", Severity: finding.Fault, Mode: "day", About: []string{pointer("fittings", w.in.Fittings[by].ID), o.pointer()},
		Title:    fmt.Sprintf("%s stands outside before %s", w.name(by), o.called()),
		Words:    fmt.Sprintf("It is within %d mm of it, so that it does not open: nobody gets in or out by it.", opensInto),
		Caution:  "A door that does not open is no way out of a fire.",
		Measured: mm(0), Limit: mm(escapeWidth), Source: outdoorsSource,
	}
	out.Words += w.mayCome(by)
	out.Proposals = append(w.onDoor(by, o), w.triedBeside(out, (*worker).barred, w.worseBy((*worker).ways), w.besideDoor(by, o)...)...)
	w.find(out)
	return true
}

// besideDoor are the attempts to move what bars a door outside along the wall that the door is in, as far as there is wall.
func (w *worker) besideDoor(i int, o Opening) []attempt {
	s, axis := w.resting(i), map[string]int{"left": 0, "right": 0, "rear": 1}[o.Through]
	if s == nil || o.Through == "roof" || o.Through == "floor" {
		return nil
	}
	var out []attempt
	for _, a := range w.asides(i, w.outsideOf(o), touching) {
		b, van := a.standing(*s).Box, w.in.Van
		onWall := b.MinX >= van.MinX && b.MaxX <= van.MaxX
		if axis == 1 {
			onWall = b.MinY >= van.MinY && b.MaxY <= van.MaxY
		}
		if a.by[axis] != 0 && onWall {
			out = append(out, a)
		}
	}
	return out
}

// onDoor is to say of a thing outside that it hangs on a door and swings with it.
func (w *worker) onDoor(i int, o Opening) []finding.Proposal {
	patch, err := json.Marshal(map[string]any{"fittings": map[string]any{w.in.Fittings[i].ID: map[string]string{"on-door": o.ID}}})
	if f := &w.in.Fittings[i]; err != nil || o.About != "" || f.Where != "outside" {
		return nil
	}
	return []finding.Proposal{{Words: fmt.Sprintf("say that %s hangs on %s and swings with it", w.name(i), o.called()), Patch: patch}}
}
