package reckon

import (
	"strings"

	"tumblehome/build"
	"tumblehome/trade/warmth"
)

// glass are the windows and the glass of doors, each with what it is of and whether a blind hangs before it.
func (w *stages) glass() []warmth.Glass {
	var out []warmth.Glass
	for _, id := range build.SortedKeys(w.doc.Shell.Openings) {
		o := w.doc.Shell.Openings[id]
		g := warmth.Glass{About: "/shell/openings/" + id, Area: valueOf(o.Glazed).Float()}
		for _, f := range w.fittedTo(id) {
			if strings.HasPrefix(f.Buy, "window-acrylic") {
				g.Double = true
			}
			if f.Make == "blackout" || f.Make == "curtains" {
				g.Blind = true
			}
		}
		if g.Area > 0 {
			out = append(out, g)
		}
	}
	return out
}

// fittedTo are the fittings that belong to an opening.
func (w *stages) fittedTo(opening string) []thing {
	var out []thing
	for _, id := range w.ids() {
		if t := w.things[id]; t.For == "shell.openings."+opening {
			out = append(out, t)
		}
	}
	return out
}

// cab is what closes it off: a lined partition, else a curtain, else nothing. Where no way into it is drawn the seats stand open to the room.
func (w *stages) cab() warmth.Cab {
	c := warmth.Cab{Partition: len(w.doc.Lining.Front) > 0, Opening: w.body.Areas("front").Openings}
	if c.Opening == 0 || !c.Partition {
		c.Opening = w.body.Areas("front").Gross
	}
	for _, t := range w.things {
		c.Curtain = c.Curtain || t.Make == "curtains"
	}
	return c
}
