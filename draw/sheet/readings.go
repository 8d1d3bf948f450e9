package sheet

import (
	"math"
	"strings"

	"tumblehome/trade/shell"
)

// reading is one thing to measure: where the tape goes, in the van's own places.
type reading struct {
	letter string
	words  string
	from   [3]float64
	to     [3]float64
	sides  bool // from side to side, so that ribs or skin must be ticked
}

// most is how many readings a measuring sheet asks for: what a cold evening holds.
const most = 14

// readings are those that matter for this arrangement, the weightiest first: each is where something stands against the body.
func (d *drawing) readings() []reading {
	body := d.r.Body
	stations := d.stations()
	low, high, anyHigh := d.touched()
	var out []reading
	add := func(words string, from, to [3]float64, sides bool) {
		out = append(out, reading{words: words, from: from, to: to, sides: sides})
	}
	across := func(s station, z float64, words string) {
		y := body.Half(s.x, z)
		add("Full width "+words+", "+s.words, [3]float64{s.x, -y, z}, [3]float64{s.x, y, z}, true)
	}
	mid := stations[len(stations)/2]
	add("Length on the floor in the middle, from the front edge of the load space to the rear doors",
		[3]float64{body.Start(), 0, 0}, [3]float64{body.End(), 0, 0}, false)
	for _, s := range stations {
		across(s, low, whole(low)+" above the floor")
	}
	add("Height in the middle, floor to roof, "+mid.words, [3]float64{mid.x, 0, 0}, [3]float64{mid.x, 0, body.Roof(mid.x, 0)}, true)
	d.archReadings(add)
	d.doorReadings(add)
	if anyHigh {
		for _, s := range stations[len(stations)-min(2, len(stations)):] {
			across(s, high, whole(high)+" above the floor")
		}
	}
	last := stations[len(stations)-1]
	if last != mid { // one station is not read twice
		add("Height in the middle, floor to roof, "+last.words, [3]float64{last.x, 0, 0}, [3]float64{last.x, 0, body.Roof(last.x, 0)}, true)
	}
	across(last, 50, "just above the floor")
	if stations[0] != last {
		across(stations[0], 50, "just above the floor")
	}
	if len(out) > most {
		out = out[:most]
	}
	for i := range out {
		out[i].letter = string(rune('A' + i))
	}
	return out
}

// archReadings are those of the wheel arches.
func (d *drawing) archReadings(add func(words string, from, to [3]float64, sides bool)) {
	for _, a := range d.r.Body.Arches() {
		if a.Side != shell.Right {
			continue
		}
		x := (a.From + a.To) / 2
		add("Between the wheel arches, at the floor", [3]float64{x, -a.Face, 40}, [3]float64{x, a.Face, 40}, false)
		add("From the front edge of the load space to the wheel arch, along the floor", [3]float64{d.r.Body.Start(), a.Face, 0}, [3]float64{a.From, a.Face, 0}, false)
		add("Length of the wheel arch", [3]float64{a.From, a.Face, 0}, [3]float64{a.To, a.Face, 0}, false)
		add("Height of the wheel arch above the floor", [3]float64{x, a.Face, 0}, [3]float64{x, a.Face, a.Up}, false)
		return
	}
}

// doorReadings are the clear width and height of the side door, else of the rear doors.
func (d *drawing) doorReadings(add func(words string, from, to [3]float64, sides bool)) {
	for _, surface := range []string{shell.Left, shell.Right, shell.Rear} {
		for _, o := range d.r.Body.Openings(surface) {
			along, okAlong := o.X, o.X != nil
			if surface == shell.Rear {
				along, okAlong = o.Y, o.Y != nil
			}
			if o.Door == "" || !okAlong || o.Z == nil {
				continue
			}
			name := d.openingName(o.ID)
			a, b, z0, z1 := along.From.Float(), along.To.Float(), o.Z.From.Float(), o.Z.To.Float()
			y := d.r.Body.Half((a+b)/2, z1/2)
			if surface == shell.Left {
				y = -y
			}
			if surface == shell.Rear {
				x := d.r.Body.End()
				add("Clear width of the "+name, [3]float64{x, a, z0 + 300}, [3]float64{x, b, z0 + 300}, false)
				add("Clear height of the "+name, [3]float64{x, (a + b) / 2, z0}, [3]float64{x, (a + b) / 2, z1}, false)
				return
			}
			add("Clear width of the "+name, [3]float64{a, y, z0 + 250}, [3]float64{b, y, z0 + 250}, false)
			add("Clear height of the "+name, [3]float64{(a + b) / 2, y, z0}, [3]float64{(a + b) / 2, y, z1}, false)
			return
		}
	}
}

// station is a place along the van where fittings begin or end at a side.
type station struct {
	x     float64
	words string
}

// stations are up to three: the first, the last and the one nearest the middle of where things stand against the sides.
func (d *drawing) stations() []station {
	body := d.r.Body
	var all []station
	for i := range d.things {
		t := &d.things[i]
		if !d.touches(t) {
			continue
		}
		all = append(all, station{t.box.MinX, "where the " + t.name + " begins"}, station{t.box.MaxX, "where the " + t.name + " ends"})
	}
	if len(all) == 0 {
		return []station{{body.Start() + body.Length()*0.05, "at the front"}, {body.Start() + body.Length()/2, "halfway"}, {body.End() - body.Length()*0.05, "at the rear"}}
	}
	inOrder(all, func(s station) float64 { return s.x })
	first, last := all[0], all[len(all)-1]
	middle := first
	for _, s := range all {
		if math.Abs(s.x-(first.x+last.x)/2) < math.Abs(middle.x-(first.x+last.x)/2) {
			middle = s
		}
	}
	out := []station{first}
	for _, s := range []station{middle, last} {
		if s.x > out[len(out)-1].x+300 {
			out = append(out, s)
		}
	}
	for i := range out {
		out[i].words = whole(out[i].x-body.Start()) + " from the front edge (" + out[i].words + ")"
		out[i].x = clamp(out[i].x, body.Start()+20, body.End()-20)
	}
	return out
}

// touches says whether something that matters stands against a side: of some size, in the living space, on its own.
func (d *drawing) touches(t *thing) bool {
	const size, off = 250, 40
	if t.hidden || t.Where != "" || t.For != "" || t.box.MaxX-t.box.MinX < size || t.box.MaxZ-t.box.MinZ < 150 {
		return false
	}
	x, z := (t.box.MinX+t.box.MaxX)/2, (t.box.MinZ+t.box.MaxZ)/2
	room := d.r.Lining.Room
	return t.box.MaxY > room.Right(x, z)-off || t.box.MinY < room.Left(x, z)+off
}

// touched are the heights at which things meet the sides: the tops of what stands on the floor, and the middle of what hangs.
func (d *drawing) touched() (low, high float64, anyHigh bool) {
	var lows, highs []float64
	for i := range d.things {
		switch t := &d.things[i]; {
		case !d.touches(t):
		case t.box.MinZ > d.level:
			highs = append(highs, (t.box.MinZ+t.box.MaxZ)/2)
		case t.box.MaxZ > d.level: // a tall thing says nothing of one height
		default:
			lows = append(lows, t.box.MaxZ)
		}
	}
	nearest := func(all []float64, usual float64) float64 {
		if len(all) == 0 {
			return usual
		}
		sum := 0.0
		for _, v := range all {
			sum += v
		}
		return math.Round(sum/float64(len(all))/50) * 50
	}
	return nearest(lows, kneeling), nearest(highs, 1400), len(highs) > 0
}

// lettersAt are the letters of the readings that answer to a place.
func lettersAt(all []reading, where func(reading) bool) string {
	var out []string
	for _, r := range all {
		if where(r) {
			out = append(out, r.letter)
		}
	}
	return strings.Join(out, " ")
}
