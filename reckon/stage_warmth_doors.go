package reckon

import (
	"tumblehome/solve/conduction"
	"tumblehome/trade/shell"
	"tumblehome/trade/warmth"
)

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
			f.Courses = append(f.Courses, warmth.Course{Pointer: l.Pointer, Of: heatOf(l.Of.ID, s.rows), InBay: [2]float64{at, at + t}, OnRib: [2]float64{at, at + t}, Share: l.Cover.Float(), Next: thicker(l, s.rows)})
			at += t
		}
		if area > 0 {
			s.put(f, a.ID)
		}
	}
}
