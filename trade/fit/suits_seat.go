package fit

import (
	"math"

	"tumblehome/catalogue/people"
)

// suitSeat are the rows of what a seat is to a body beside headroom: its height against the lower leg, the room for knees, the table and the
// reach to its middle. The row of headroom, which is the last one, is told how one sits there who does not sit upright.
func (w *worker) suitSeat(mode *Mode, seat int, bodies []people.Body) {
	top, pressed := w.seatTop(mode, seat)
	f, id := w.faces(mode, seat), w.in.Fittings[seat].ID
	head := w.result.Suits.Rows[len(w.result.Suits.Rows)-1]
	for k, b := range bodies {
		if head.Cells[k].Fits == "short" {
			head.Cells[k].How = w.sitsHow(head.Cells[k].Room, b)
		}
	}
	add := func(what string, cell func(people.Body) Cell) {
		r := Suit{Does: "sit", At: id, What: what}
		for _, b := range bodies {
			if c := cell(b); b.Stature >= grownUp {
				r.Cells = append(r.Cells, c)
			} else {
				r.Cells = append(r.Cells, Cell{Room: c.Room, Need: c.Need, How: "not judged of a child"})
			}
		}
		w.result.Suits.Rows = append(w.result.Suits.Rows, r)
	}
	add("height of the seat", func(b people.Body) Cell {
		_, best := b.SeatHeight()
		return betweenCell(top-pressed-w.in.Room.Floor(), float64(best)-squats, float64(best)+feetHang, float64(best), "low, knees high", "feet hang")
	})
	add("room for knees", func(b people.Body) Cell { return cellOf(f.free, float64(b.LegRoom()), float64(b.LegRoom())) })
	at, away := w.tableBefore(mode, f, top-pressed)
	if at < 0 {
		return
	}
	t := mode.Standings[at].Box
	add("table above it", func(b people.Body) Cell {
		best := float64(b.TableAboveSeat())
		return betweenCell(t.MaxZ-top+pressed, best-tableOff, best+tableOff, best, "table low", "table high")
	})
	deep := t.MaxX - t.MinX
	if f.axis == 1 {
		deep = t.MaxY - t.MinY
	}
	add("from its back to the middle of the table", func(b people.Body) Cell {
		from := max(0, away) + min(f.depth, float64(b.SeatDepth())) + deep/2
		return betweenCell(from, math.Inf(-1), float64(b.ArmReach()), float64(b.ArmReach()), "", "out of reach")
	})
}

// sitsHow is how a body sits that does not sit upright on a seat: leaning back, or on the floor where there is room, or not at all.
func (w *worker) sitsHow(room float64, b people.Body) string {
	if room >= float64(b.LeaningHeadroom())-touching {
		return "leaning back"
	}
	if most, ok := w.roomiest(); ok && most.under-w.in.Room.Floor() >= float64(b.SittingHeadroom())-slump {
		return "only on the floor"
	}
	return "not at all, only lying"
}

// betweenCell is a cell of what is good between two limits; beyond them it is close, and what is amiss is said.
func betweenCell(room, low, high, best float64, below, above string) Cell {
	c := Cell{Room: room, Need: best, Fits: "ok"}
	switch {
	case room < low-touching:
		c.Fits, c.How = "close", below
	case room > high+touching:
		c.Fits, c.How = "close", above
	}
	return c
}
