package arrangement

import (
	"fmt"
	"maps"
	"math"
	"slices"

	"tumblehome/build"
	"tumblehome/catalogue/settings"
	"tumblehome/solve/solid"
)

// Work says where every fitting is, at rest and in every mode.
func Work(in Inputs) Result {
	w := &worker{in: in, place: make(map[string]int, len(in.Things)), known: make(map[string][]*answer, len(in.Things)), hosts: map[string]bool{}}
	if in.Before != nil && in.Before.room == in.RoomKey && in.RoomKey != "" {
		w.before = in.Before.known
	}
	ids := slices.Sorted(maps.Keys(in.Things))
	w.rest = make([]Standing, len(ids))
	w.state = make([]state, len(ids))
	for i, id := range ids {
		w.place[id] = i
		w.rest[i] = Standing{ID: id}
		if thing := in.Things[id]; thing.In+thing.Upon != "" {
			w.hosts[thing.In+thing.Upon] = true
		}
	}
	for i := range ids {
		w.resolve(i)
	}
	w.carriers()
	result := Result{Rest: w.rest, room: in.RoomKey, known: w.known}
	for _, name := range modeNames(in) {
		result.Modes = append(result.Modes, w.inMode(name, in.Modes[name]))
	}
	result.Parts = w.parts()
	result.Assumed = w.assumed
	return result
}

// carriers finds out what carries what.
func (w *worker) carriers() {
	w.carrier = make([]int, len(w.rest))
	for i := range w.rest {
		w.carrier[i] = -1
		if id := w.rest[i].Carrier; id != "" {
			if j, ok := w.place[id]; ok {
				w.carrier[i] = j
			}
		}
	}
}

// modeNames are the modes that always exist and then the builder's own.
func modeNames(in Inputs) []string {
	names := []string{"drive", "day", "night"}
	for _, name := range slices.Sorted(maps.Keys(in.Modes)) {
		if !slices.Contains(names[:3], name) {
			names = append(names, name)
		}
	}
	return names
}

// state of a fitting while places are worked out.
type state uint8

const (
	untouched state = iota
	begun           // being worked out; meeting it again is a ring
	done
)

// worker holds what is known so far.
type worker struct {
	in      Inputs
	place   map[string]int // index by id
	rest    []Standing
	state   []state
	assumed []string
	hosts   map[string]bool      // what something stands in or upon
	before  map[string][]*answer // of the result before, in the same room
	known   map[string][]*answer
	carrier []int // index of each fitting's carrier, -1 for none
}

// resolve places one fitting at rest, after those it refers to. Rings are refused when a document is read; one met here
// leaves its fittings undecided.
func (w *worker) resolve(i int) {
	if w.state[i] != untouched {
		return
	}
	w.state[i] = begun
	s := &w.rest[i]
	thing := w.in.Things[s.ID]
	s.Where, s.For, s.Carrier = thing.Where, thing.For, thing.In+thing.Upon
	s.In = thing.In != ""
	rules, undecided := rulesOf(thing.At)
	switch reason := w.await(i, rules, undecided); {
	case reason != "":
		w.undecided(s, reason)
	default:
		w.stand(s, thing, rules)
	}
	w.state[i] = done
}

// await resolves what a fitting refers to and says why it cannot be placed, if so.
func (w *worker) await(i int, r rules, undecided bool) (reason string) {
	s := &w.rest[i]
	thing := w.in.Things[s.ID]
	switch {
	case undecided:
		return "where it stands is not decided"
	case thing.At == nil && thing.For == "":
		return "nothing says where it stands"
	case thing.For != "" && !w.hasOpening(thing.For):
		return fmt.Sprintf("%s is not an opening", thing.For)
	}
	need := func(id string) {
		j, ok := w.place[id]
		switch {
		case reason != "":
		case !ok:
			reason = fmt.Sprintf("%s is not there", id)
		case w.state[j] == begun:
			reason = fmt.Sprintf("its place and that of %s depend on each other", id)
		default:
			if w.resolve(j); w.rest[j].Undecided != "" {
				reason = fmt.Sprintf("it depends on %s, and %s", id, w.rest[j].Undecided)
			}
		}
	}
	if s.Carrier != "" {
		need(s.Carrier)
	}
	r.others(need)
	return reason
}

// undecided puts the mass of what has no place in the middle of the living space, low.
func (w *worker) undecided(s *Standing, reason string) {
	r := w.in.Room
	s.Undecided = reason
	s.Middle = [3]float64{(r.Front() + r.Rear()) / 2, 0, r.Floor() + 400}
	s.Box = Box{MinX: s.Middle[0], MaxX: s.Middle[0], MinY: 0, MaxY: 0, MinZ: s.Middle[2], MaxZ: s.Middle[2]}
	w.assumed = append(w.assumed, fmt.Sprintf("%s counts at the middle of the living space: %s", s.ID, reason))
}

// stand places a fitting whose references are all known.
func (w *worker) stand(s *Standing, thing *Thing, r rules) {
	f := w.frame(s, thing)
	size, turn := thing.Size, 0.0
	if thing.Turn != nil {
		turn = -thing.Turn.Float() * math.Pi / 180 // clockwise seen from above
	}
	if thing.For != "" {
		r, size = w.atOpening(thing, r, size)
		if thing.Make == "" { // bought: it sits in the hole and stands out of the skin
			f = outside(w.in.Outside)
		}
	} else if r[2].Form == build.LeftOut && hangsFromRoof(thing) {
		f.hang = true
	}
	st := standing{size: size, turn: turn, rules: r, frame: &f, others: w.box}
	for _, face := range thing.Scribe {
		st.scribed[sideOf[face]] = true
		s.Scribed = append(s.Scribed, sideOf[face])
	}
	st.spanTurned()
	a := w.answer(s.ID, &st, s.Scribed)
	s.Box, s.Solid, s.follows = a.box, a.solid, a.follows
	s.own, s.askew = st.askew(s.Box)
	if s.Box.Empty() || len(s.Solid) == 0 {
		why := "has no size yet"
		if !s.Box.Empty() {
			why = "is cut away whole where it is cut to the lining"
		}
		s.Middle = [3]float64{(s.Box.MinX + s.Box.MaxX) / 2, (s.Box.MinY + s.Box.MaxY) / 2, (s.Box.MinZ + s.Box.MaxZ) / 2}
		w.assumed = append(w.assumed, fmt.Sprintf("%s %s: it counts as a point", s.ID, why))
		return
	}
	s.Middle = a.middle
}

// spanTurned lets a thing whose size an axis rule fixes be turned by quarters only; the document refuses any other turn of it.
func (s *standing) spanTurned() {
	if s.rules[0].Form != build.Between && s.rules[1].Form != build.Between {
		return
	}
	if quarters := math.Round(s.turn / (math.Pi / 2)); int64(quarters)%2 != 0 {
		s.size[0], s.size[1] = s.size[1], s.size[0]
	}
	s.turn = 0
}

// parallel is how far from a surface a face cut to it goes on following it [mm]: behind what stands farther off a curve serves nothing, and
// the face is cut only where it would come nearer than this (common practice, no source).
const parallel = 50

// clear is how far from each curved surface the fitting was told to keep; its scribed faces keep the same distance, as far as parallel.
func (s *standing) clear() (clear [6]float64) {
	for _, r := range s.rules {
		for _, p := range [2]build.Point{r.A, r.B} {
			if p.Of == "" && p.Face != "" && (r.Form == build.Against || r.Form == build.Between || r.Form == build.From || r.Form == build.To) {
				clear[sideOf[p.Face]] = following(sideOf[p.Face], p.Plus.Float())
			}
		}
	}
	return clear
}

func following(face side, plus float64) float64 {
	if high(face) {
		return max(plus, -parallel)
	}
	return min(plus, parallel)
}

func (w *worker) box(id string) (Box, bool) {
	i, ok := w.place[id]
	if !ok {
		return Box{}, false
	}
	return w.rest[i].Box, true
}

// frame in which a fitting's rules are read.
func (w *worker) frame(s *Standing, thing *Thing) frame {
	switch {
	case thing.In != "":
		return within(w.find(thing.In), w.in.Things[thing.In].Board, w.in.Room)
	case thing.Upon != "":
		return upon(w.find(thing.Upon), w.in.Room)
	case thing.Where == "outside":
		return outside(w.in.Outside)
	case thing.Where == "under":
		return under(w.in.Outside, w.in.Ground)
	case thing.Where == "cab":
		if w.in.Cab == nil {
			w.assume("the cab is taken as 1 m long and as wide and high as the front of the living space")
		}
		return cab(w.in.Cab, w.in.Room)
	}
	return inside(w.in.Room)
}

func (w *worker) find(id string) *Standing { return &w.rest[w.place[id]] }

// assume notes an assumption once.
func (w *worker) assume(words string) {
	if !slices.Contains(w.assumed, words) {
		w.assumed = append(w.assumed, words)
	}
}

// hangsFromRoof says whether the setting-out of a made thing is carried by the roof.
func hangsFromRoof(thing *Thing) bool {
	setting, ok := settings.Get(thing.Make)
	return ok && setting.Carried == settings.Roof
}

var _ solid.Region = (*frame)(nil)
