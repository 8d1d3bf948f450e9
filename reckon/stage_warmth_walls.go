package reckon

import (
	"slices"

	"tumblehome/solve/conduction"
	"tumblehome/trade/lining"
	"tumblehome/trade/shell"
	"tumblehome/trade/warmth"
)

// walls is what lies on the steel as heat meets it, and the room within.
type walls struct {
	Fields            []warmth.Field
	Volume, Plan, Top float64
}

// walls are known by the room and by what the materials in them do with heat and vapour.
func (m *Machine) walls(w *stages) walls {
	laid := layers(w.doc.Lining, w.rows, w.today)
	key := struct {
		Room      digestedRoom
		Layers    map[string][]lining.Layer
		Materials []warmth.Material
	}{w.room, laid, materialsOf(laid, w.rows)}
	out, _ := workBy(m, "walls", 2, key, func() walls { return w.measureWalls(laid) })
	return out
}

const far = 1e6 // mm: beyond any van

// surveyor measures the walls.
type surveyor struct {
	*stages
	byPointer map[string]lining.Layer // with the battens and shares that a course does not tell
	out       walls
}

func (w *stages) measureWalls(laid map[string][]lining.Layer) walls {
	s := &surveyor{stages: w, byPointer: map[string]lining.Layer{}}
	for _, all := range laid {
		for _, l := range all {
			s.byPointer[l.Pointer] = l
			for _, instead := range l.Bays {
				s.byPointer[instead.Pointer] = instead
			}
		}
	}
	s.floor()
	for _, surface := range []string{shell.Left, shell.Right} {
		for _, b := range w.body.Bays(surface) {
			s.side(b, laid[surface])
		}
	}
	for _, b := range w.body.Bays(shell.Roof) {
		s.field(warmth.Roof, "roof", b, conduction.Upward, -far, far)
	}
	s.doors()
	s.front()
	s.arches()
	s.out.Volume, s.out.Plan, s.out.Top = w.room.Volume(), w.room.FloorArea(), w.room.Roof(w.room.Middle(), 0)
	return s.out
}

// side adds a bay of a side, cut at the heights where its layers change.
func (s *surveyor) side(b shell.Bay, laid []lining.Layer) {
	cuts := []float64{s.body.Floor(), s.body.Eaves()}
	for _, l := range laid {
		if own, ok := l.Bays[b.ID]; ok {
			l = own
		}
		if l.From != nil {
			cuts = append(cuts, l.From.Float())
		}
		if l.To != nil {
			cuts = append(cuts, l.To.Float())
		}
	}
	slices.Sort(cuts)
	for i := range len(cuts) - 1 {
		if lo, hi := cuts[i], cuts[i+1]; hi-lo > 1 && lo >= s.body.Floor() && hi <= s.body.Eaves() {
			s.field(warmth.Sides, b.Surface, b, conduction.Level, lo, hi)
		}
	}
}

// field adds the part of a bay between two heights.
func (s *surveyor) field(group, surface string, b shell.Bay, flow conduction.Direction, lo, hi float64) {
	area, _ := s.body.Net(b.Surface, b.From, b.To, lo, hi)
	courses, _, ok := s.lining.Section(surface, b.ID, max(lo, min((lo+hi)/2, hi)))
	if area <= 0 || !ok {
		return
	}
	f := warmth.Field{Group: group, Bay: b.ID, Flow: flow, Area: area, Width: b.To - b.From, Courses: s.courses(courses)}
	for _, r := range s.body.Ribs(b.Surface) {
		x, halves := r.X.Float(), 1.0
		if x < b.From || x > b.To {
			continue
		}
		if x-b.From > 1 && b.To-x > 1 {
			halves = 2
		}
		flange := r.Flange.Float()
		if flange <= 0 {
			flange = 50 // as the shell takes it
		}
		f.Ribs = append(f.Ribs, warmth.Rib{Depth: r.Depth.Float(), Flange: flange, Halves: halves})
	}
	s.put(f, surface)
}

// put adds a field that something may be said about: the layer that keeps most heat, or what is bare.
func (s *surveyor) put(f warmth.Field, surface string) {
	most := 0.0
	for _, c := range f.Courses {
		if r := (c.InBay[1] - c.InBay[0]) / c.Of.Conducts; r > most && (c.Share == 0 || c.Share > 0.5) {
			most, f.About = r, c.Pointer
		}
	}
	if f.About == "" {
		f.About, f.Courses, f.Ribs = s.bareAbout(surface), nil, nil
	}
	s.out.Fields = append(s.out.Fields, f)
}

// bareAbout is what in the document stands for a surface on which nothing lies.
func (s *surveyor) bareAbout(surface string) string {
	if _, ok := s.doc.Shell.Openings[surface]; ok {
		return "/shell/openings/" + surface
	}
	if _, ok := s.doc.Shell.Arches[surface]; ok {
		return "/shell/arches/" + surface
	}
	switch {
	case s.doc.Shell.Offsets != nil:
		return "/shell/offsets"
	case s.doc.Shell.Quick != nil:
		return "/shell/quick"
	}
	return "/vehicle"
}

// courses add to what the lining tells of them how they pass heat, and what lies beside them.
func (s *surveyor) courses(all []lining.Course) []warmth.Course {
	var out []warmth.Course
	for _, c := range all {
		l := s.byPointer[c.Pointer]
		next := warmth.Course{Pointer: c.Pointer, Of: heatOf(c.Material, s.rows), InBay: c.InBay, OnRib: c.OnRib, Share: l.Cover.Float(), Filled: l.Ribs == lining.Filled, Next: thicker(l, s.rows)}
		if c.Kind == lining.Batten && l.Cover == 0 {
			next.Share = l.Of.Wide.Float() / 400 // as the lining spaces battens of which nothing is said
		}
		if b := l.Between; b != nil && b.Every > 0 {
			strip := heatOf(b.Of.ID, s.rows)
			next.Between, next.BetweenShare = &strip, min(b.Of.Wide.Float()/b.Every.Float(), 0.9)
		}
		out = append(out, next)
	}
	return out
}

func (s *surveyor) floor() {
	area, _ := s.body.Net("floor", -far, far, -far, far)
	courses, _, ok := s.lining.Section("floor", "floor", s.body.Floor())
	if area <= 0 || !ok {
		return
	}
	f := warmth.Field{Group: warmth.Floor, Bay: "floor", Flow: conduction.Downward, Area: area, Courses: s.courses(courses)}
	if p := s.doc.Shell.Pressings; p != nil {
		f.Valleys = p.Depth.Float()
	}
	s.put(f, "floor")
}
