package fit

import (
	"math"
	"slices"

	"tumblehome/catalogue/people"
	"tumblehome/quantity"
)

// Suits says whom the van suits: a row for each thing done in it, a column for each of the crew and for six standard bodies.
type Suits struct {
	Bodies []Column
	Rows   []Suit
}

// Column is a person of the crew, or a standard body.
type Column struct {
	ID   string // of the crew; empty for a standard body
	Name string
}

// Suit is one thing done at one place; Cells are in the order of the columns.
type Suit struct {
	Does   string // lie, sit, stand, cook, pass
	At     string // fitting; empty where there is most room, and for the way in
	What   string // what is measured, in words
	Nobody bool   // nobody is said to lie or sit there
	Cells  []Cell
}

// Cell is the room there is and the room a body needs [mm]. Fits is ok, close or short.
type Cell struct {
	Room, Need float64
	Fits       string
	How        string // what is amiss, where it is more than too little: too high, out of reach; or how one can sit all the same
}

// suits fills the table in, by the same measures as the findings.
func (w *worker) suits() {
	s := &w.result.Suits
	var bodies []people.Body
	for _, p := range w.in.People {
		s.Bodies = append(s.Bodies, Column{ID: p.ID, Name: p.name()})
		bodies = append(bodies, people.Of(quantity.Length(p.Stature)))
	}
	for _, b := range people.Standards() {
		s.Bodies = append(s.Bodies, Column{Name: b.Name})
		bodies = append(bodies, b.Body)
	}
	row := func(does, at, what string, room float64, need func(people.Body) (least, good float64)) {
		r := Suit{Does: does, At: at, What: what}
		for _, b := range bodies {
			least, good := need(b)
			r.Cells = append(r.Cells, cellOf(room, least, good))
		}
		s.Rows = append(s.Rows, r)
	}
	w.suitPlaces(bodies, row)
	w.suitUnused(bodies, row)
	if day := w.mode("day"); day != nil {
		if most, ok := w.roomiest(); ok {
			row("stand", "", "most headroom over the free floor", most.under-w.in.Room.Floor(), standing)
		}
	}
	if way, ok := w.worstWay(); ok {
		row("pass", way.To, "narrowest place on the way in", way.Width, func(b people.Body) (float64, float64) { return float64(b.Sidling()), escapeWidth })
	}
}

// suitPlaces are the rows of beds, seats and cookers, each place once.
func (w *worker) suitPlaces(bodies []people.Body, row adder) {
	var seen []Pose
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		for _, pose := range mode.Poses {
			i, ok := w.index[pose.At]
			key := Pose{Does: pose.Does, At: pose.At}
			if !ok || len(mode.Standings[i].Solid) == 0 || slices.Contains(seen, key) {
				continue
			}
			seen = append(seen, key)
			if b, ok := w.berth(mode, pose); ok {
				w.suitBed(b, row)
				continue
			}
			switch pose.Does {
			case "sits":
				w.suitSitting(mode, i, bodies, row)
			case "cooks", "stands":
				row(map[string]string{"cooks": "cook", "stands": "stand"}[pose.Does], pose.At, "headroom", w.before(mode, i).under-w.in.Room.Floor(), standing)
			}
		}
	}
}

// adder adds a row of the table, whose cells are made of one measure.
type adder func(does, at, what string, room float64, need func(people.Body) (least, good float64))

// suitBed is the row of a bed.
func (w *worker) suitBed(b berth, row adder) {
	length, _ := w.lain(b)
	row("lie", w.in.Fittings[b.bed].ID, "length", length, func(b people.Body) (float64, float64) {
		return float64(b.Stature) + people.Lying, float64(b.LyingLength())
	})
}

// suitSitting are the rows of a seat.
func (w *worker) suitSitting(mode *Mode, seat int, bodies []people.Body, row adder) {
	top, pressed := w.seatTop(mode, seat)
	row("sit", w.in.Fittings[seat].ID, "headroom", w.seatSpot(mode, seat, top-pressed).under-top+pressed, func(b people.Body) (float64, float64) {
		return float64(b.SittingHeadroom()) - slump, float64(b.SittingHeadroom())
	})
	w.suitSeat(mode, seat, bodies)
}

// standing is the headroom of one who stands: bent no further than over the work, and upright in shoes.
func standing(b people.Body) (least, good float64) {
	return float64(b.Stature) + people.Shoes - 50, float64(b.Stature) + people.Shoes
}

// worstWay is the narrowest of the ways from the main door by day.
func (w *worker) worstWay() (Way, bool) {
	door, ok := w.mainDoor()
	day := w.mode("day")
	worst := Way{Width: math.Inf(1)}
	for _, way := range w.result.Ways {
		if ok && way.Door == door.ID && way.Mode == day.Name && way.Width < worst.Width {
			worst = way
		}
	}
	return worst, !math.IsInf(worst.Width, 1)
}

func cellOf(room, least, good float64) Cell {
	c := Cell{Room: room, Need: good, Fits: "ok"}
	if room < good-touching {
		c.Fits = "close"
	}
	if room < least-touching {
		c.Fits = "short"
	}
	return c
}
