package fit

import (
	"fmt"
	"math"
	"slices"

	"tumblehome/catalogue/people"
	"tumblehome/quantity"
	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// Below so much headroom [mm], or for a child such a share of their stature, nobody expects to stand in a van: it is only said when the document
// has somebody stand there. Common practice, no source.
const (
	sittingVan   = 1450
	sittingShare = 0.85
)

// sitsOnly says whether a person does not expect to stand under so much.
func (p Person) sitsOnly(headroom float64) bool {
	return headroom < min(sittingVan, sittingShare*p.Stature)
}

// standing judges where a person stands or cooks; who does neither stands where the free floor of the day has most room.
func (w *worker) standing(p Person) {
	worst, found := spot{under: math.Inf(1)}, false
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		for _, pose := range mode.Poses {
			i, ok := w.index[pose.At]
			if pose.Person != p.ID || pose.Does != "stands" && pose.Does != "cooks" || !ok || len(mode.Standings[i].Solid) == 0 {
				continue
			}
			if s := w.before(mode, i); !found || s.under < worst.under {
				worst, found = s, true
			}
		}
	}
	if !found {
		if worst, found = w.roomiest(); !found {
			return
		}
	}
	w.reportStanding(p, worst)
}

// before is where somebody stands at a fitting, remembered.
func (w *worker) before(mode *Mode, i int) spot {
	return recall(w, w.was.spots, w.now.spots, mode, spotAt{mode.Name, i, stands}, all, func() (spot, solid.Bounds) {
		return w.seekBefore(mode, i), above(mode.Standings[i].Box, beforeWork+headWide/2)
	})
}

// seekBefore looks before the side of it that faces the middle of the van, where it has most room.
func (w *worker) seekBefore(mode *Mode, i int) spot {
	b := mode.Standings[i].Box
	y := b.MinY - beforeWork
	if (b.MinY+b.MaxY)/2 < 0 {
		y = b.MaxY + beforeWork
	}
	best := spot{under: math.Inf(-1)}
	for _, x := range spread(b.MinX+headWide/2, b.MaxX-headWide/2, 200) {
		if under := w.overhead(mode, x, y, w.in.Room.Floor()+stoops, -1); under > best.under {
			best = spot{x, y, under, mode.Name, i}
		}
	}
	return best
}

// roomiest is the place of the free floor of the day where a head has most room, looked for once.
func (w *worker) roomiest() (spot, bool) {
	if !w.roomSought {
		w.most, w.someRoom = w.seekRoom()
		w.roomSought = true
	}
	return w.most, w.someRoom
}

func (w *worker) seekRoom() (spot, bool) {
	mode := w.mode("day")
	if mode == nil {
		return spot{}, false
	}
	g, f := w.ground(), w.floor(mode)
	at, most := f.Most()
	if at < 0 {
		return spot{}, false
	}
	return spot{g.atX(at / g.ny), g.atY(at % g.ny), w.in.Room.Floor() + most, mode.Name, -1}, true
}

// Most is the cell of a floor on which a head has most room over its whole width, and how much [mm]; -1 where nobody can stand.
func (f *Floor) Most() (at int, most float64) {
	at = -1
	stands := func(c int) bool { return f.Free[c] && f.ClearAt(c) >= headWide }
	highest, sure := 0.0, 0.0 // under the highest place a head has this much for sure
	for i, row := range f.Headroom {
		for j, h := range row {
			if c := i*f.NY + j; h > highest && stands(c) {
				highest, sure = h, f.underHead(c)
			}
		}
	}
	for i, row := range f.Headroom {
		for j, h := range row {
			if c := i*f.NY + j; h > most && h >= sure && stands(c) {
				if under := f.underHead(c); under > most {
					at, most = c, under
				}
			}
		}
	}
	return at, most
}

// underHead is the least headroom over the width of a head about a cell.
func (f *Floor) underHead(c int) float64 {
	const half = headWide / 2 / cell
	least := f.Headroom[c/f.NY][c%f.NY]
	for i := max(0, c/f.NY-half); i <= min(f.NX-1, c/f.NY+half); i++ {
		for j := max(0, c%f.NY-half); j <= min(f.NY-1, c%f.NY+half); j++ {
			least = min(least, f.Headroom[i][j])
		}
	}
	return least
}

// mode of this name, else the first, else none.
func (w *worker) mode(name string) *Mode {
	for i := range w.in.Modes {
		if w.in.Modes[i].Name == name {
			return &w.in.Modes[i]
		}
	}
	if len(w.in.Modes) == 0 {
		return nil
	}
	return &w.in.Modes[0]
}

func (w *worker) reportStanding(p Person, s spot) {
	floor := w.in.Room.Floor()
	have, need := s.under-floor, p.Stature+people.Shoes
	words, pointers := "where there is most", []string{pointer("people", p.ID)}
	if s.at >= 0 {
		words = "at " + w.name(s.at)
		pointers = append(pointers, pointer("fittings", w.in.Fittings[s.at].ID))
	}
	w.show(working.Figure{
		Code: "fit.headroom.stand." + p.ID, Value: have, Unit: "mm", Label: "Headroom standing, " + p.name(), Limit: &need, Least: true, Words: words,
	}, working.Working{
		Formula: "headroom = what is overhead - floor", Source: standSource,
		Notes: []string{fmt.Sprintf("In shoes %s is %s mm; about %s is comfortable.", p.name(), quantity.Parted(need), quantity.Parted(need+people.Clearance))},
		Lines: []working.Line{
			{Symbol: "r", Label: "what is overhead", Value: s.under, Unit: "mm", Sum: fmt.Sprintf("at x %.0f, y %.0f", s.x, s.y), From: working.Origin{Here: true}},
			{Symbol: "f", Label: "finished floor", Value: floor, Unit: "mm", From: working.Origin{Pointer: "/lining/floor"}},
			{Symbol: "n", Label: "stature in shoes", Value: need, Unit: "mm", Sum: fmt.Sprintf("%g + 25", p.Stature), From: working.Origin{Pointer: pointer("people", p.ID) + "/stature"}},
			{Symbol: "h", Label: "headroom", Value: have, Unit: "mm", Sum: fmt.Sprintf("%.1f - %.1f", s.under, floor), From: working.Origin{Here: true}},
		},
	})
	if have >= need-touching || s.at < 0 && p.sitsOnly(have) {
		return
	}
	w.stooping = append(w.stooping, stoop{p, s, words, pointers, have, need})
}

// A stoop is a person who cannot stand upright at a fitting, or where there is most room (-1).
type stoop struct {
	who        Person
	spot       spot
	words      string
	pointers   []string
	have, need float64
}

// tellStooping says of each place once who stoops there: the tallest, and how many more.
func (w *worker) tellStooping() {
	for i, s := range w.stooping {
		first := slices.IndexFunc(w.stooping, func(o stoop) bool { return o.spot.at == s.spot.at })
		if first != i {
			continue
		}
		more := -1
		for _, o := range w.stooping {
			if o.spot.at != s.spot.at {
				continue
			}
			if more++; o.need-o.have > s.need-s.have {
				s = o
			}
		}
		has := "There is %s between floor and roof"
		if s.spot.at < 0 {
			has = "Over the free floor a head has at most %s"
		}
		out := finding.Finding{
			Code: "fit.headroom.stand", Severity: finding.Note, About: s.pointers,
			Title:    whoStoops(s.who.name(), more) + " " + s.words,
			Words:    fmt.Sprintf(has+", %s less than %s in shoes. Only a higher roof or a thinner floor and ceiling would change it.", about(s.have), about(s.need-s.have), s.who.name()),
			Measured: mm(s.have), Limit: mm(s.need), Source: standSource,
		}
		if hangs, attempts := w.offTheHead(s.spot, s.need-s.have); hangs != "" {
			out.Words = fmt.Sprintf("Where one stands there %s is free over the floor, %s less than %s in shoes. %s", about(s.have), about(s.need-s.have), s.who.name(), hangs)
			out.Proposals = w.tried(out, (*worker).heads, attempts...)
		}
		w.find(out)
	}
}

func whoStoops(who string, more int) string {
	switch more {
	case 0:
		return who + " stoops"
	case 1:
		return who + " and one more stoop"
	}
	return fmt.Sprintf("%s and %d more stoop", who, more)
}
