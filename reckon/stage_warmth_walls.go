package reckon

import (
	"slices"

	"tumblehome/catalogue"
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
	out, _ := workBy(m, "walls", 1, key, func() walls { return w.measureWalls(laid) })
	return out
}

func materialsOf(laid map[string][]lining.Layer, rows *catalogue.Catalogue) []warmth.Material {
	var ids []string
	add := func(l lining.Layer) {
		ids = append(ids, l.Of.ID)
		if l.Between != nil {
			ids = append(ids, l.Between.Of.ID)
		}
	}
	for _, all := range laid {
		for _, l := range all {
			add(l)
			for _, instead := range l.Bays {
				add(instead)
			}
		}
	}
	slices.Sort(ids)
	var out []warmth.Material
	for _, id := range slices.Compact(ids) {
		out = append(out, heatOf(id, rows))
	}
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
		next := warmth.Course{Pointer: c.Pointer, Of: heatOf(c.Material, s.rows), InBay: c.InBay, OnRib: c.OnRib, Share: l.Cover.Float(), Filled: l.Ribs == lining.Filled}
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

// doors are lined like the sides; their frames count as ribs all round, as deep as those beside them.
func (s *surveyor) doors() {
	for _, d := range s.body.Doors() {
		courses, _, ok := s.lining.Section("doors", d.ID, (d.Low+d.Up)/2)
		if d.Net <= 0 || !ok {
			continue
		}
		f := warmth.Field{Group: warmth.Doors, Bay: d.ID, Flow: conduction.Level, Area: d.Net, Width: d.To - d.From, Courses: s.courses(courses)}
		if depth := s.besides(d); depth > 0 && f.Width > 0 {
			round := 2 * (d.To - d.From + d.Up - d.Low)
			f.Ribs = []warmth.Rib{{Depth: depth, Flange: 50, Halves: round * f.Width / (d.Net * 1e6)}}
		}
		s.put(f, d.ID)
	}
}

// besides is the depth of the shallowest ribs beside a side door.
func (s *surveyor) besides(d shell.Door) float64 {
	depth := 0.0
	for _, b := range s.body.Bays(d.Surface) {
		if d.Surface != "front" && d.Surface != "rear" && b.To > d.From && b.From < d.To && b.Depth > 0 && (depth == 0 || b.Depth < depth) {
			depth = b.Depth
		}
	}
	return depth
}

// front is the partition, where one is lined.
func (s *surveyor) front() {
	courses, _, ok := s.lining.Section("front", "front", s.body.Floor())
	area, _ := s.body.Net("front", -far, far, -far, far)
	if !ok || len(courses) == 0 || area <= 0 {
		return
	}
	s.put(warmth.Field{Group: warmth.Front, Bay: "front", Flow: conduction.Level, Area: area, Courses: s.courses(courses)}, "front")
}

// arches are wheel arches with what of the sides' lining goes over them.
func (s *surveyor) arches() {
	for _, a := range s.body.Arches() {
		area, _ := s.body.ArchArea(a)
		f := warmth.Field{Group: warmth.Sides, Bay: a.ID, Flow: conduction.Level, Area: area}
		at := 0.0
		for _, line := range s.lining.Lines {
			l, known := s.byPointer[line.Pointer]
			if line.Bay != a.ID || line.Surface != a.Side || !known {
				continue
			}
			t := l.Thick.Float()
			if t == 0 {
				t = l.Of.Thick.Float()
			}
			t *= float64(max(l.Times, 1))
			f.Courses = append(f.Courses, warmth.Course{Pointer: l.Pointer, Of: heatOf(l.Of.ID, s.rows), InBay: [2]float64{at, at + t}, OnRib: [2]float64{at, at + t}, Share: l.Cover.Float()})
			at += t
		}
		if area > 0 {
			s.put(f, a.ID)
		}
	}
}
