package sheet

import (
	"slices"
	"strings"

	"tumblehome/trade/runs"
)

// wiredPlace is where cables end: their numbers, and what it is called where cables begin or a battery stands.
type wiredPlace struct {
	fitting, name string
	at            runs.Point
	numbers       []string
}

func (p *wiredPlace) words() string {
	return strings.TrimSpace(strings.Join(p.numbers, " ") + " " + p.name)
}

// wiredPlaces are the batteries, fuse boards, chargers and controllers by name, and the loads, each once with the numbers of the cables that end there.
// At a fuse board, where many begin, only the cable that feeds it is named.
func (d *drawing) wiredPlaces(numbers map[cableKey]string) []wiredPlace {
	var out []wiredPlace
	place := func(e runs.End) *wiredPlace {
		i := slices.IndexFunc(out, func(o wiredPlace) bool { return o.fitting == e.Fitting && (e.Fitting != "" || o.at == e.At) })
		if i < 0 {
			i, out = len(out), append(out, wiredPlace{fitting: e.Fitting, at: e.At})
		}
		return &out[i]
	}
	for _, e := range d.wiringStarts() {
		place(e).name = e.Name
	}
	for i := range d.r.Runs.Routes {
		c := d.r.Runs.Routes[i].Circuit
		for _, e := range c.Ends {
			if c.Lead && c.Start != nil {
				e = *c.Start
			}
			p := place(e)
			if n := numbers[cableKey{c.ID, c.Source, c.Lead}]; n != "" && !slices.Contains(p.numbers, n) {
				p.numbers = append(p.numbers, n)
			}
		}
	}
	return out
}

// wiringStarts are the batteries, fuse boards and controllers where cables begin, and all other batteries, each once.
func (d *drawing) wiringStarts() []runs.End {
	var out []runs.End
	add := func(e runs.End) {
		if e.Fitting != "" && !slices.ContainsFunc(out, func(o runs.End) bool { return o.Fitting == e.Fitting }) {
			out = append(out, e)
		}
	}
	for i := range d.r.Runs.Routes {
		if e := d.r.Runs.Routes[i].Circuit.Start; e != nil {
			add(*e)
		}
	}
	for i := range d.r.Cables.Supplies {
		for _, b := range d.r.Cables.Supplies[i].Batteries {
			if k, ok := d.index[b.ID]; ok {
				box := d.things[k].box
				add(runs.End{Fitting: b.ID, Name: d.things[k].name, At: runs.Point{(box.MinX + box.MaxX) / 2, (box.MinY + box.MaxY) / 2, (box.MinZ + box.MaxZ) / 2}})
			}
		}
	}
	return out
}
