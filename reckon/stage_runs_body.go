package reckon

import (
	"tumblehome/build"
	"tumblehome/solve/solid"
	"tumblehome/trade/arrangement"
	"tumblehome/trade/runs"
	"tumblehome/trade/shell"
)

// runRibs are the ribs and bows that are written down, each on every surface it is on.
func (w *stages) runRibs() []runs.Rib {
	var out []runs.Rib
	for _, on := range []string{shell.Left, shell.Right, shell.Roof} {
		for _, r := range w.body.Ribs(on) {
			if _, written := w.doc.Shell.Ribs[r.ID]; !written {
				continue
			}
			half := r.Flange.Float() / 2
			if half == 0 {
				half = usualFlange / 2
			}
			out = append(out, runs.Rib{ID: r.ID, On: on, From: r.X.Float() - half, To: r.X.Float() + half, Depth: r.Depth.Float()})
		}
	}
	return out
}

// runArches are the wheel arches that are written down, as boxes out to beyond the skin.
func (w *stages) runArches() []runs.Arch {
	var out []runs.Arch
	for _, a := range w.body.Arches() {
		if _, written := w.doc.Shell.Arches[a.ID]; !written {
			continue
		}
		const beyond = 500
		b := solid.Bounds{MinX: a.From, MaxX: a.To, MinY: a.Face, MaxY: a.Face + beyond, MinZ: -beyond, MaxZ: a.Up}
		if a.Side == shell.Left {
			b.MinY, b.MaxY = -b.MaxY, -b.MinY
		}
		out = append(out, runs.Arch{ID: a.ID, Box: b})
	}
	return out
}

func (w *stages) runOpenings() []runs.Opening {
	var out []runs.Opening
	for _, id := range build.SortedKeys(w.doc.Shell.Openings) {
		o := w.doc.Shell.Openings[id]
		if o.Through == shell.Front {
			continue
		}
		out = append(out, runs.Opening{ID: id, Name: o.Title, Through: o.Through, X: ends(o.X), Y: ends(o.Y), Z: ends(o.Z), In: o.In, Door: o.Door != ""})
	}
	return out
}

// laidOver are the layers of the lining nearer to the room than a place behind the finished surface.
func (w *stages) laidOver() func(surface string, at runs.Point, behind float64) []runs.Layer {
	bays := map[string][]shell.Bay{}
	return func(surface string, at runs.Point, behind float64) []runs.Layer {
		if _, known := bays[surface]; !known {
			bays[surface] = w.body.Bays(surface)
		}
		bay := surface
		for _, b := range bays[surface] {
			if at[0] >= b.From && at[0] <= b.To {
				bay = b.ID
			}
		}
		return w.layersOver(surface, bay, at[2], behind)
	}
}

func (w *stages) layersOver(surface, bay string, z, behind float64) []runs.Layer {
	courses, thick, ok := w.lining.Section(surface, bay, z)
	if !ok {
		return nil
	}
	var out []runs.Layer
	for _, c := range courses {
		if c.InBay[1] > c.InBay[0] && (c.InBay[0]+c.InBay[1])/2 > thick-behind {
			m, _ := w.rows.Material(c.Material)
			name := m.Title
			if name == "" {
				name = c.Material
			}
			out = append(out, runs.Layer{Pointer: c.Pointer, Name: name})
		}
	}
	return out
}

// endAt is a fitting as the end of a cable: its middle.
func endAt(s *arrangement.Standing, f build.Fitting) runs.End {
	b := s.Box
	return runs.End{Fitting: s.ID, Name: nameOf(s.ID, f), At: runs.Point{(b.MinX + b.MaxX) / 2, (b.MinY + b.MaxY) / 2, (b.MinZ + b.MaxZ) / 2}}
}
