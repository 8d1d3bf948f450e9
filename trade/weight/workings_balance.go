package weight

import (
	"fmt"

	"tumblehome/trade/finding"
	"tumblehome/trade/takeoff"
	"tumblehome/trade/working"
)

var moments = finding.Source{Text: "middle of several masses, statics", Sure: finding.Read}

func (c CaseLoad) figure(end string) working.Origin {
	return working.Origin{Figure: "weight.case." + c.ID + "." + end}
}

// showCentreX is L·R/W − d.
func (r *Result) showCentreX(c CaseLoad, x float64) working.Working {
	l, d := r.in.Wheelbase.Float(), r.in.Datum.Float()
	return working.Working{
		Formula: "x = L·R/W − d", Source: leverRule,
		Lines: []working.Line{
			{Symbol: "L", Label: "wheelbase", Value: l, Unit: "mm", From: at("/vehicle/wheelbase")},
			{Symbol: "d", Label: "front edge of the load space behind the front axle", Value: d, Unit: "mm", From: at("/vehicle/datum")},
			{Symbol: "R", Label: "on the rear axle", Value: c.Rear.Mean, Unit: "kg", From: c.figure("rear")},
			{Symbol: "W", Label: "in all", Value: c.Total.Mean, Unit: "kg", From: c.figure("total")},
			{Symbol: "x", Label: "from the front edge of the load space", Value: x, Unit: "mm", Sum: fmt.Sprintf("%s × %s / %s − %s", plain(l), plain(c.Rear.Mean), plain(c.Total.Mean), plain(d)), From: here()},
		},
	}
}

// showSum is Σ(m·p)/M along y (1) or z (2).
func (r *Result) showSum(c CaseLoad, along int, moment, mass, middle float64) working.Working {
	name := [3]string{"x", "y", "z"}[along]
	w := working.Working{
		Formula: fmt.Sprintf("%s = Σ(m·%s) / M", name, name), Source: moments, Lines: r.momentLines(c, along),
	}
	from := working.Origin{Here: true}
	if along == 1 {
		w.Notes = append(w.Notes, "The bare van is taken to be in its middle; weigh each wheel to know better.")
		from = c.figure("total")
	} else {
		w.Notes = append(w.Notes, "Of what was added only: how high the bare van's own middle lies is not known.")
	}
	w.Lines = append(w.Lines,
		working.Line{Symbol: "Σ(m·" + name + ")", Label: "sum of the moments", Value: moment, Unit: "kg mm", From: here()},
		working.Line{Symbol: "M", Label: "mass", Value: mass, Unit: "kg", From: from},
		working.Line{Symbol: name, Label: "middle", Value: middle, Unit: "mm", Sum: plain(moment) + " / " + plain(mass), From: here()})
	return w
}

// momentLines lists m·y or m·z of all that has one.
func (r *Result) momentLines(c CaseLoad, along int) []working.Line {
	name := [3]string{"x", "y", "z"}[along]
	var lines []working.Line
	c.cargo.each(func(l takeoff.Line) {
		if l.At[along] == 0 || l.Mass == 0 {
			return
		}
		lines = append(lines, working.Line{
			Symbol: "m·" + name, Label: label(l), Value: l.Mass * l.At[along], Unit: "kg mm",
			Sum: plain(l.Mass) + " × " + plain(l.At[along]), From: at(l.Pointer),
		})
	})
	return lines
}

// showSide is 2·Σ(m·y)/t as part of the whole.
func (r *Result) showSide(c CaseLoad, share float64) working.Working {
	track := working.Line{Symbol: "t", Label: "track", Value: r.track(), Unit: "mm", From: at("/vehicle/track")}
	if r.in.Track == 0 {
		track.From = working.Origin{Assumption: "nobody measured it: 85 % of the overall width"}
	}
	more := 2 * c.Side / r.track()
	return working.Working{
		Formula: "right − left = 2·Σ(m·y)/t", Source: sideSource,
		Lines: append(r.momentLines(c, 1),
			working.Line{Symbol: "Σ(m·y)", Label: "sum of the moments", Value: c.Side, Unit: "kg mm", From: here()},
			track,
			working.Line{Label: "right wheels carry more than left", Value: more, Unit: "kg", Sum: fmt.Sprintf("2 × %s / %s", plain(c.Side), plain(r.track())), From: here()},
			working.Line{Symbol: "W", Label: "in all", Value: c.Total.Mean, Unit: "kg", From: c.figure("total")},
			working.Line{Label: "as part of the whole", Value: share, Unit: "%", Sum: fmt.Sprintf("100 × %s / %s", plain(more), plain(c.Total.Mean)), From: here()}),
		Notes: []string{"The bare van is taken to be in its middle; weigh each wheel to know better."},
	}
}

func (r *Result) showFrontShare(c CaseLoad, share float64) working.Working {
	return working.Working{
		Formula: "100·F/W", Source: frontSource,
		Lines: []working.Line{
			{Symbol: "F", Label: "on the front axle", Value: c.Front.Mean, Unit: "kg", From: c.figure("front")},
			{Symbol: "W", Label: "in all", Value: c.Total.Mean, Unit: "kg", From: c.figure("total")},
			{Label: "part on the front axle", Value: share, Unit: "%", Sum: fmt.Sprintf("100 × %s / %s", plain(c.Front.Mean), plain(c.Total.Mean)), From: here()},
		},
	}
}

func (r *Result) showTyre(t axleTyres, share float64) working.Working {
	one := t.tyre.Carries.Float()
	return working.Working{
		Formula: "100 · axle load / (2 · load of one tyre)", Source: tyreSource,
		Lines: []working.Line{
			{Label: "on the " + t.name + " axle", Value: t.load, Unit: "kg", From: working.Origin{Figure: t.head}},
			{Label: fmt.Sprintf("one tyre of load index %d carries", t.tyre.LoadIndex), Value: one, Unit: "kg", From: at(t.pointer + "/load-index")},
			{Label: "part of what both carry", Value: share, Unit: "%", Sum: fmt.Sprintf("100 × %s / (2 × %s)", plain(t.load), plain(one)), From: here()},
		},
		Notes: []string{"Holds at the tyre maker's reference pressure; at less pressure a tyre carries less."},
	}
}

func showRoof(lines []takeoff.Line, mass float64) working.Working {
	w := working.Working{Formula: "Σ m", Source: finding.Source{Text: "the vehicle's handbook gives the limit", Sure: finding.Practice}}
	for _, l := range lines {
		w.Lines = append(w.Lines, working.Line{Symbol: "m", Label: label(l), Value: l.Mass, Unit: "kg", From: at(l.Pointer)})
	}
	w.Lines = append(w.Lines, working.Line{Label: "on the roof", Value: mass, Unit: "kg", From: here()})
	return w
}

// showOff is what a further weighing read less what was expected.
func (r *Result) showOff(o off) working.Working {
	w := r.in.Weighings[o.weighing]
	return working.Working{
		Formula: "read − expected", Source: conditioned,
		Lines: []working.Line{
			{Label: "front axle as read", Value: w.Front.Float(), Unit: "kg", From: at(w.pointer() + "/front")},
			{Label: "rear axle as read", Value: w.Rear.Float(), Unit: "kg", From: at(w.pointer() + "/rear")},
			{Label: "expected: the bare van and what was aboard", Value: o.estimate.mean, Unit: "kg", From: here()},
			{Label: "read above expected", Value: o.by, Unit: "kg", From: here()},
		},
		Notes: []string{fmt.Sprintf("The stated spreads allow %.0f kg either way, two weighings in three.", o.dev)},
	}
}

func (r *Result) showCorrection(moved float64) working.Working {
	w := working.Working{
		Formula: "m' = m + P·Hᵀ·(H·P·Hᵀ + R)⁻¹·(z − H·m)", Source: conditioned,
		Notes: []string{"Each guess takes a part of the difference, the greater the less sure it was; what was in no weighing keeps its value."},
	}
	for _, o := range r.offs {
		w.Lines = append(w.Lines, working.Line{
			Label: "read above expected", Value: o.by, Unit: "kg",
			From: working.Origin{Figure: "weight.weighing." + r.in.Weighings[o.weighing].ID + ".off"},
		})
	}
	w.Lines = append(w.Lines, working.Line{Label: "of that, laid to the guesses and to the first reading", Value: moved, Unit: "kg", From: here()})
	return w
}

var conditioned = finding.Source{Text: "conditioning of normal errors on readings, any text on multivariate statistics", Sure: finding.Memory}
