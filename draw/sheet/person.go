package sheet

import (
	"tumblehome/build"
	"tumblehome/draw"
)

// person is somebody to scale: where, how tall, doing what.
type person struct {
	id      string
	stature float64
	does    string     // lies, sits, stands
	how     string     // the form: the same, or kneels or squats where one cannot stand
	at      [3]float64 // the crown of who lies, the seat of who sits, the soles of who stands
	faces   [2]float64 // direction on the floor plan of the feet of who lies, the knees of who sits, the face of who stands
	fitting string
	posture
}

// pose finds everybody's place in the mode.
func (d *drawing) pose() {
	if d.Mode == Today {
		return
	}
	poses := d.r.Document.Modes[d.mode()].People
	lanes := map[string][]string{} // who lies or sits on what
	ids := build.SortedKeys(poses)
	for _, id := range ids {
		at := poses[id].Lies + poses[id].Sits
		lanes[at] = append(lanes[at], id)
	}
	for _, id := range ids {
		p := poses[id]
		who := person{id: id, stature: d.r.Document.People[id].Stature.Float()}
		for i, other := range lanes[p.Lies+p.Sits] {
			share := (float64(i) + 0.5) / float64(len(lanes[p.Lies+p.Sits]))
			if other == id && d.settle(&who, p, share) {
				d.people = append(d.people, who)
			}
		}
	}
}

// settle puts a person on the given share of a bed's width or a seat's length.
func (d *drawing) settle(who *person, p build.Pose, share float64) bool {
	who.fitting = p.Lies + p.Sits + p.Stands + p.Cooks
	i, ok := d.index[who.fitting]
	if !ok || who.stature == 0 {
		return false
	}
	b := d.things[i].box
	inward := -1.0 // towards the middle of the van
	if b.MinY+b.MaxY < 0 {
		inward = 1
	}
	mid := func(a, b float64) float64 { return (a + b) / 2 }
	between := func(a, b float64) float64 { return a + (b-a)*share }
	switch {
	case p.Lies != "":
		who.does = "lies"
		head := p.Head
		if head == "" && b.MaxY-b.MinY > b.MaxX-b.MinX {
			head = "left"
		}
		half := (who.stature*1.008 + 60) / 2 // lying makes a little longer; 60 for the pillow
		top := d.softTop(i)
		switch head {
		case "rear":
			who.at, who.faces = [3]float64{max(mid(b.MinX, b.MaxX)+half-60, b.MaxX-80), between(b.MinY, b.MaxY), top}, [2]float64{-1, 0}
		case "left":
			who.at, who.faces = [3]float64{between(b.MinX, b.MaxX), min(mid(b.MinY, b.MaxY)-half+60, b.MinY+80), top}, [2]float64{0, 1}
		case "right":
			who.at, who.faces = [3]float64{between(b.MinX, b.MaxX), max(mid(b.MinY, b.MaxY)+half-60, b.MaxY-80), top}, [2]float64{0, -1}
		default:
			who.at, who.faces = [3]float64{min(mid(b.MinX, b.MaxX)-half+60, b.MinX+80), between(b.MinY, b.MaxY), top}, [2]float64{1, 0}
		}
	case p.Sits != "":
		who.does = "sits"
		if who.at, who.faces, ok = d.sitsAt(who.id, hollow*who.stature); !ok {
			return false
		}
		who.at[2] = d.softTop(i)
	default:
		who.does = "stands"
		y := b.MinY - 0.12*who.stature
		if inward > 0 {
			y = b.MaxY + 0.12*who.stature
		}
		who.at, who.faces = [3]float64{mid(b.MinX, b.MaxX), y, d.r.Lining.Room.Floor()}, [2]float64{0, -inward}
	}
	who.how = who.does
	room := d.r.Lining.Room
	who.suit(room.Floor(), room.Roof(who.at[0], who.at[1]))
	return true
}

// sitsAt is where one sits, so far behind the front of the seat, and where one looks: as the fit is judged.
func (d *drawing) sitsAt(who string, back float64) (at [3]float64, faces [2]float64, ok bool) {
	for _, s := range d.r.Fit.Seated {
		if s.Mode == d.mode() && s.Person == who {
			return [3]float64{s.Front[0] - back*s.Faces[0], s.Front[1] - back*s.Faces[1]}, s.Faces, true
		}
	}
	return at, faces, false
}

// resting says whether somebody lies or sits on a thing, or on what it carries or is carried by.
func (d *drawing) resting(t *thing) bool {
	for i := range d.people {
		w := &d.people[i]
		if w.does != "stands" && d.things[d.index[w.fitting]].root == t.root {
			return true
		}
	}
	return false
}

// softTop is the top of a bed or seat with the cushions that lie on it.
func (d *drawing) softTop(i int) float64 {
	top := d.things[i].box.MaxZ
	for j := range d.things {
		if t := &d.things[j]; d.within(j, i) && !t.In && soft(t.of) {
			top = max(top, t.box.MaxZ)
		}
	}
	return top
}

// soft says whether people lie or sit right on it.
func soft(f build.Fitting) bool { return f.Make == "cushions" || f.Make == "mattress" }

// draw lays a person down in a view: the limbs with their outline first and then their inside, so that they grow together, and what
// is nearer on top.
func (w *person) draw(s *sketch, view string) {
	parts := w.parts(view)
	under := len(parts) - w.nearer(view)
	if under > 1 {
		for _, part := range parts[:under] {
			s.put(draw.PenWater, draw.NoFill, smooth(s.view, part)) // only its outer half stays
		}
		for _, part := range parts[:under] {
			s.put(draw.NoPen, draw.FillPaper, smooth(s.view, part))
			s.take(part)
		}
		parts = parts[under:]
	}
	for _, part := range parts {
		s.put(draw.PenPerson, draw.FillPaper, smooth(s.view, part))
		s.take(part)
	}
}

// nearer is how many of the last parts lie before the others: the head, or what lies before it, and the legs of who sits and is looked in the face.
func (w *person) nearer(view string) int {
	if w.how == "sits" && w.facing(view) {
		return 3
	}
	return 1
}

// facing says whether a view sees a person from the front or the back.
func (w *person) facing(view string) bool {
	return view == Side && w.faces[0] == 0 || view == Cross && w.faces[0] != 0
}

// parts are the outlines of a person in a view, in millimetres of the van.
func (w *person) parts(view string) [][]place {
	f := w.form()
	fx, fy := w.faces[0], w.faces[1]
	look := func(p place) (ahead, aside, up float64) { return p[0], 0, p[1] }
	form := f.profile
	switch {
	case view == Plan:
		form, look = f.above, func(p place) (ahead, aside, up float64) { return p[0], p[1], 0 }
	case w.facing(view):
		form, look = f.front, func(p place) (ahead, aside, up float64) { return 0, p[0], p[1] }
	}
	out := make([][]place, len(form))
	for i, part := range form {
		for _, p := range part {
			ahead, aside, up := look(p)
			x, y := w.at[0]+(fx*ahead+fy*aside)*w.stature, w.at[1]+(fy*ahead-fx*aside)*w.stature
			out[i] = append(out[i], seen(view, x, y, w.at[2]+up*w.stature))
		}
	}
	return out
}

// seen carries a place of the van to where a view shows it.
func seen(view string, x, y, z float64) place {
	switch view {
	case Plan:
		return place{x, y}
	case Side:
		return place{x, z}
	}
	return place{y, z}
}

// head is the middle of a person's head from above.
func (w *person) head() place {
	all := w.parts(Plan)
	b := around(all[len(all)-1:])
	return place{(b[0] + b[1]) / 2, (b[2] + b[3]) / 2}
}

// smooth draws a closed curve through points (Catmull and Rom, A class of local interpolating splines, 1974), in a view.
func smooth(v draw.View, run []place) draw.Path {
	at := v.Points(run...)
	n := len(at)
	if n < 3 {
		return draw.Path{}
	}
	p := draw.From(at[0])
	for i := range n {
		a, b, c, e := at[(i+n-1)%n], at[i], at[(i+1)%n], at[(i+2)%n]
		p = p.Curve(b.Add(c.Sub(a).Mul(1.0/6)), c.Sub(e.Sub(b).Mul(1.0/6)), c)
	}
	return p.Close()
}
