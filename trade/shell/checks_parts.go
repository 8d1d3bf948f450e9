package shell

import (
	"fmt"
	"math"

	"tumblehome/trade/finding"
)

// checkRibs finds ribs outside the body and ribs that stand in one another.
func (b *Body) checkRibs() []finding.Finding {
	var found []finding.Finding
	for _, r := range b.ribs {
		if x := float64(r.X); x < b.Start() || x > b.End() {
			found = append(found, finding.Finding{Code: "shell.rib-outside", Severity: finding.Fault, About: []string{"/shell/ribs/" + r.ID},
				Title:    fmt.Sprintf("Rib %s stands outside the load space", r.ID),
				Words:    fmt.Sprintf("It is at x %s; the load space runs from %s to %s.", mm(x), mm(b.Start()), mm(b.End())),
				Measured: &finding.Measure{Value: x, Unit: "mm"}, Limit: &finding.Measure{Value: b.End(), Unit: "mm"}, Source: computed})
		}
	}
	for _, surface := range []string{Left, Right, Roof} {
		on := b.Ribs(surface)
		for i := 1; i < len(on); i++ {
			gap := float64(on[i].X-on[i-1].X) - (on[i].face()+on[i-1].face())/2
			if gap < 0 && on[i].ID != on[i-1].ID {
				found = append(found, finding.Finding{Code: "shell.ribs-overlap", Severity: finding.Close,
					About:    []string{"/shell/ribs/" + on[i].ID, "/shell/ribs/" + on[i-1].ID},
					Title:    fmt.Sprintf("Ribs %s and %s on the %s overlap", on[i-1].ID, on[i].ID, surface),
					Words:    fmt.Sprintf("Their faces overlap by %s. A position, a flange or the side was misread.", mm(-gap)),
					Measured: &finding.Measure{Value: gap, Unit: "mm"}, Limit: &finding.Measure{Value: 0, Unit: "mm"}, Source: computed})
			}
		}
	}
	return found
}

// checkArches finds arches outside the body or too wide for it.
func (b *Body) checkArches(arches []Arch) []finding.Finding {
	var found []finding.Finding
	for _, a := range arches {
		from, to := float64(a.From), float64(a.To)
		half := b.Half((from+to)/2, b.Floor())
		f := finding.Finding{Severity: finding.Fault, About: []string{"/shell/arches/" + a.ID}, Source: computed}
		switch {
		case from < b.Start() || to > b.End():
			f.Code, f.Title = "shell.arch-outside", fmt.Sprintf("Wheel arch %s reaches out of the load space", a.ID)
			f.Words = fmt.Sprintf("It runs from x %s to %s; the load space from %s to %s.", mm(from), mm(to), mm(b.Start()), mm(b.End()))
		case float64(a.Inward) >= half:
			f.Code, f.Title = "shell.arch-too-wide", fmt.Sprintf("Wheel arch %s reaches over the middle of the van", a.ID)
			f.Words = fmt.Sprintf("It stands in by %s, the half width there is %s. Was the width between the arches written as the arch?", mm(float64(a.Inward)), mm(half))
			f.Measured, f.Limit = &finding.Measure{Value: float64(a.Inward), Unit: "mm"}, &finding.Measure{Value: half, Unit: "mm"}
		case float64(a.Up) >= b.Eaves():
			f.Code, f.Title = "shell.arch-too-high", fmt.Sprintf("Wheel arch %s is as high as the side", a.ID)
			f.Words = fmt.Sprintf("It is %s high, the side %s.", mm(float64(a.Up)), mm(b.Eaves()))
			f.Measured, f.Limit = &finding.Measure{Value: float64(a.Up), Unit: "mm"}, &finding.Measure{Value: b.Eaves(), Unit: "mm"}
		default:
			continue
		}
		found = append(found, f)
	}
	return found
}

// checkOpenings finds openings without a size, outside the body, over a rib or
// over one another.
func (b *Body) checkOpenings() []finding.Finding {
	var found []finding.Finding
	for i, o := range b.openings {
		along, across, ok := o.window()
		about := []string{"/shell/openings/" + o.ID}
		if !ok {
			found = append(found, finding.Finding{Code: "shell.opening-unsized", Severity: finding.Note, About: about,
				Title: fmt.Sprintf("Opening %s has no size yet", o.ID), Words: "Its area is left out until both its extents are known.", Source: computed})
			continue
		}
		if by := b.outside(o, along, across); by > 1 {
			found = append(found, finding.Finding{Code: "shell.opening-outside", Severity: finding.Fault, About: about,
				Title:    fmt.Sprintf("Opening %s reaches %s out of the %s", o.ID, mm(by), o.Through),
				Words:    "The readings of the opening and of the body do not agree.",
				Measured: &finding.Measure{Value: by, Unit: "mm"}, Limit: &finding.Measure{Value: 0, Unit: "mm"}, Source: computed})
		}
		found = append(found, b.overRib(o, along, across)...)
		for _, p := range b.openings[i+1:] {
			if p.Through == o.Through && p.In != o.ID && o.In != p.ID {
				a, c, sized := p.window()
				if sized && overlap(along, a) > 1 && overlap(across, c) > 1 {
					found = append(found, finding.Finding{Code: "shell.openings-overlap", Severity: finding.Fault, About: []string{about[0], "/shell/openings/" + p.ID},
						Title: fmt.Sprintf("Openings %s and %s lie over one another", o.ID, p.ID),
						Words: "If one lies in the other, say so with `in`; else one of them was misread.", Source: computed})
				}
			}
		}
	}
	return found
}

// outside is how far an opening reaches beyond its surface.
func (b *Body) outside(o Opening, along, across [2]float64) float64 {
	beyond := func(span [2]float64, lo, hi float64) float64 { return math.Max(lo-span[0], span[1]-hi) }
	mid := (along[0] + along[1]) / 2
	switch o.Through {
	case Left, Right:
		return math.Max(beyond(along, b.Start(), b.End()), beyond(across, b.Floor(), b.Eaves()))
	case Roof:
		half := b.Half(mid, b.Eaves())
		return math.Max(beyond(along, b.Start(), b.End()), beyond(across, -half, half))
	case Floor:
		half := b.Half(mid, b.Floor())
		return math.Max(beyond(along, b.Start(), b.End()), beyond(across, -half, half))
	}
	x := b.Start()
	if o.Through == Rear {
		x = b.End()
	}
	half := b.Half(x, (across[0]+across[1])/2)
	return math.Max(beyond(along, -half, half), beyond(across, b.Floor(), b.Roof(x, 0)))
}

// overRib finds the ribs that a hole cuts or is marked over. Doors of the van itself never do.
func (b *Body) overRib(o Opening, along, across [2]float64) []finding.Finding {
	if o.Door != "" || o.In != "" {
		return nil
	}
	var found []finding.Finding
	for _, r := range b.Ribs(o.Through) {
		face := [2]float64{float64(r.X) - r.face()/2, float64(r.X) + r.face()/2}
		cut := overlap(along, face)
		if cut <= 0 || b.Assumed && r.ID == typicalID {
			continue
		}
		f := finding.Finding{Code: "shell.opening-over-rib", Severity: finding.Fault,
			About:    []string{"/shell/openings/" + o.ID, "/shell/ribs/" + r.ID},
			Title:    fmt.Sprintf("Opening %s is marked over rib %s", o.ID, r.ID),
			Measured: &finding.Measure{Value: cut, Unit: "mm"}, Limit: &finding.Measure{Value: 0, Unit: "mm"}, Source: practice}
		where, proposals := b.clear(o, along, across)
		f.Words, f.Proposals = fmt.Sprintf("It overlaps the rib by %s. Do not cut a rib or a bow: they carry the roof and the sides. %s", mm(cut), where), proposals
		if o.Made {
			f.Proposals = nil
			f.Title = fmt.Sprintf("Opening %s was cut through rib %s", o.ID, r.ID)
			f.Words = "Ribs and bows carry the roof and the sides. Let somebody who welds bodies frame the hole, or check the readings if it is not so."
		}
		found = append(found, f)
	}
	return found
}

// overlap is how much two extents have in common, negative for a gap.
func overlap(a, b [2]float64) float64 { return math.Min(a[1], b[1]) - math.Max(a[0], b[0]) }

// computed is the source of contradictions within the readings.
var computed = finding.Source{Text: "the readings themselves", Sure: finding.Computed}
