package warmth

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"tumblehome/trade/finding"
)

// bridging lays a strip of a layer over the ribs as well, where that keeps them dry.
func (r *Result) bridging(pointer string) []Remedy {
	next := r.withFields(r.in.bridged(pointer))
	if next.withVents(r.in.Vents).still("warmth.surface.wet") {
		return nil
	}
	return []Remedy{{Kind: Bridge, About: pointer, Words: "lay a strip of the insulation over the ribs as well"}}
}

// most is how many layers are proposed, and how many of them are tried.
const (
	most  = 2
	tries = 6
)

// thicker lays more of one insulation, where that clears a finding: of all there are, those first that lie where most heat goes.
func (r *Result) thicker(f finding.Finding) []Remedy {
	var out []Remedy
	for i, c := range r.byLoss(f) {
		if i == tries || len(out) == most {
			break
		}
		in := r.in.regrown(c.Pointer, c.Next.By, 0)
		if next := r.again(in, f.Code); next.still(f.Code) {
			continue
		}
		out = append(out, Remedy{Kind: More, About: c.Pointer, Next: c.Next, Words: fmt.Sprintf("%.0f mm more of %s on %s", c.Next.By, plainName(c.Of), r.lies(c.Pointer))})
	}
	return out
}

// byLoss are the layers that could be thicker: those behind which water gathers, or all, where most heat goes first.
func (r *Result) byLoss(f finding.Finding) []*Course {
	here := func(*Field) bool { return true }
	if f.Code == "warmth.winter.water" {
		worst := &r.in.Fields[r.worst().Field]
		here = func(f *Field) bool { return f == worst }
	}
	all := r.layers(here)
	loss := map[string]float64{}
	for i := range r.Lost {
		for _, c := range r.Lost[i].Field.Courses {
			loss[c.Pointer] += r.Lost[i].U * r.Lost[i].Field.Area
		}
	}
	slices.SortStableFunc(all, func(a, b *Course) int { return cmp.Compare(loss[b.Pointer], loss[a.Pointer]) })
	return all
}

// lies says where a layer lies.
func (r *Result) lies(pointer string) string {
	for i := range r.in.Fields {
		for _, c := range r.in.Fields[i].Courses {
			if c.Pointer == pointer {
				return groupLabels[r.in.Fields[i].Group]
			}
		}
	}
	return "the steel"
}

// plainName is a material without its size.
func plainName(m Material) string {
	name, _, _ := strings.Cut(m.Name, ",")
	if name == "" {
		return m.ID
	}
	return strings.ToLower(name[:1]) + name[1:]
}

// withFields is the van with other linings, before its nights.
func (r *Result) withFields(in Inputs) *Result {
	next := &Result{in: in, Fixed: r.Fixed, Flow: r.Flow, Nights: r.Nights, Usual: r.Usual, Coldest: r.Coldest}
	next.Lost, _ = next.in.losses()
	return next
}

// again is the van with other linings in the nights, or behind them in the winter, that a finding is about.
func (r *Result) again(in Inputs, code string) *Result {
	if code == "warmth.winter.water" { // the nights stay as they were
		next := *r
		next.in = in
		next.Winters = next.in.behind(r.Nights)
		return &next
	}
	next := r.withFields(in)
	next.Nights = slices.Clone(r.Nights)
	s := next.in.sleeping(next.Lost)
	for _, k := range []int{r.Usual, r.Coldest} {
		was := r.Nights[k]
		day := in.Months[was.Month-1].Usual
		if was.Cold {
			day = in.Months[was.Month-1].Cold
		}
		next.Nights[k] = s.spend(day)
		next.Nights[k].Month, next.Nights[k].Cold = was.Month, was.Cold
	}
	return next
}
