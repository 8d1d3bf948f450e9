package sheet

import (
	"fmt"
	"strings"
)

// describe says in words what stands where: the drawing's text equivalent.
func (d *drawing) describe() string {
	room := d.r.Lining.Room
	var b strings.Builder
	fmt.Fprintf(&b, "%s, %s. The room is %s long inside the lining, %s%s and %s high in the middle.",
		d.r.Document.Build.Title, d.title(), five(room.Rear()-room.Front()), five(room.Right(d.cut, d.level)-room.Left(d.cut, d.level)), d.wide(), five(room.Headroom(d.cut, 0)))
	for _, side := range []struct {
		words string
		at    func(*thing) bool
	}{
		{"On the right, from the front", func(t *thing) bool { return t.Where == "" && t.box.MinY > 0 }},
		{"On the left, from the front", func(t *thing) bool { return t.Where == "" && t.box.MaxY < 0 }},
		{"Across the middle", func(t *thing) bool { return t.Where == "" && t.box.MinY <= 0 && t.box.MaxY >= 0 }},
		{"Outside", func(t *thing) bool { return t.Where == "outside" || t.Where == "under" }},
		{"In the cab", func(t *thing) bool { return t.Where == "cab" }},
	} {
		if names := d.named(side.at); len(names) > 0 {
			fmt.Fprintf(&b, " %s: %s.", side.words, strings.Join(names, ", "))
		}
	}
	for i := range d.people {
		w := &d.people[i]
		verb := map[string]string{"lies": "lies on", "sits": "sits on", "stands": "stands at", "kneels": "kneels at", "squats": "sits on the floor at"}[w.how]
		if w.how == "stands" && w.bend > 0 {
			verb = "stoops at"
		}
		fmt.Fprintf(&b, " %s %s the %s.", w.id, verb, d.things[d.index[w.fitting]].name)
	}
	return b.String()
}

// named lists the things that stand on their own and answer to a place, from the front, each with what it holds.
func (d *drawing) named(at func(*thing) bool) []string {
	var which []int
	for i := range d.things {
		if t := &d.things[i]; t.root == i && at(t) {
			which = append(which, i)
		}
	}
	inOrder(which, func(i int) float64 { return d.things[i].box.MinX })
	var out []string
	for _, i := range which {
		t := &d.things[i]
		text := t.name + " from " + five(t.box.MinX) + " to " + five(t.box.MaxX)
		if inside := d.contents(i); len(inside) > 0 {
			text += " (with " + strings.Join(inside, ", ") + ")"
		}
		out = append(out, text)
	}
	return out
}
