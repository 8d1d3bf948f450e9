package shell

import (
	"fmt"
	"math"
	"slices"

	"tumblehome/quantity"
	"tumblehome/solve/offsets"
	"tumblehome/trade/finding"
)

// check collects what does not fit together.
func (b *Body) check(in Inputs, t offsets.Table) []finding.Finding {
	var found []finding.Finding
	switch {
	case in.Table != nil && !b.Assumed:
		found = append(found, doubtful(in, t)...)
	case in.Quick != nil:
		found = append(found, b.contradictory(*in.Quick)...)
		found = append(found, b.rough())
	default:
		found = append(found, unmeasured())
	}
	found = append(found, b.checkRibs()...)
	found = append(found, b.checkArches(in.Arches)...)
	return append(found, b.checkOpenings()...)
}

// doubtful finds readings that stand out: along the van the sides narrow alike at
// neighbouring heights, so a change from station to station that differs from the change at the
// other heights on both sides of a reading is a slip of the tape or the pencil. Limit: four times the reading
// error, at least 15 mm.
func doubtful(in Inputs, t offsets.Table) []finding.Finding {
	limit := math.Max(15, 4*t.Reading)
	stations := in.Table.sorted()
	var found []finding.Finding
	for i := range t.Stations {
		for j := range t.Heights {
			off := math.Inf(1)
			for _, k := range []int{i - 1, i + 1} {
				if k >= 0 && k < len(t.Stations) {
					off = least(off, t.Stations[i].Half[j]-t.Stations[k].Half[j]-usual(t, i, k))
				}
			}
			if math.Abs(off) > limit && !math.IsInf(off, 0) {
				found = append(found, finding.Finding{Code: "shell.reading-doubtful", Severity: finding.Close,
					About:    []string{fmt.Sprintf("/shell/offsets/stations/%s/half/%d", stations[i].ID, j)},
					Title:    fmt.Sprintf("The half width at x %s, z %s does not run with its neighbours", mm(t.Stations[i].X), mm(t.Heights[j])),
					Words:    fmt.Sprintf("It stands %s %s than the readings around it let expect. Measure it again: a rib under the tape or a slip of the pencil looks like this.", mm(math.Abs(off)), wider(off)),
					Measured: &finding.Measure{Value: math.Abs(off), Unit: "mm"}, Limit: &finding.Measure{Value: limit, Unit: "mm"},
					Source: practice})
			}
		}
	}
	return found
}

// usual is the middle one of the changes from station k to station i over all heights.
func usual(t offsets.Table, i, k int) float64 {
	changes := make([]float64, len(t.Heights))
	for j := range changes {
		changes[j] = t.Stations[i].Half[j] - t.Stations[k].Half[j]
	}
	slices.Sort(changes)
	return changes[len(changes)/2]
}

// least is the one of two numbers nearer to zero.
func least(a, b float64) float64 {
	if math.Abs(b) < math.Abs(a) {
		return b
	}
	return a
}

func wider(off float64) string {
	if off > 0 {
		return "wider"
	}
	return "narrower"
}

// contradictory finds quick readings that can not all be true.
func (b *Body) contradictory(q Quick) []finding.Finding {
	var found []finding.Finding
	add := func(about, title, words string, measured, limit float64) {
		found = append(found, finding.Finding{Code: "shell.quick-contradiction", Severity: finding.Fault, About: []string{"/shell/quick/" + about},
			Title: title, Words: words, Measured: &finding.Measure{Value: measured, Unit: "mm"}, Limit: &finding.Measure{Value: limit, Unit: "mm"},
			Source: computed})
	}
	s, h := typical(q.Body)
	length, height := read(q.Length, s.length), read(q.Height, h.height)
	wide, arches := read(q.Knee, h.knee), read(q.BetweenArches, h.arches)
	if arches >= wide {
		add("between-arches", "The wheel arches are further apart than the sides",
			fmt.Sprintf("%s between the arches, but %s between the sides at knee height. One of the two was misread.", mm(arches), mm(wide)), arches, wide)
	}
	if d := read(q.DoorHeight, h.doorHeight); q.DoorHeight != nil && d >= height {
		add("door-height", "The side door is higher than the van inside",
			fmt.Sprintf("The door is %s high, the van %s. One of the two was misread.", mm(d), mm(height)), d, height)
	}
	if d := read(q.DoorWidth, h.doorWidth); q.DoorWidth != nil && d >= length {
		add("door-width", "The side door is wider than the van is long",
			fmt.Sprintf("The door is %s wide, the load floor %s long. One of the two was misread.", mm(d), mm(length)), d, length)
	}
	return found
}

func (b *Body) rough() finding.Finding {
	spread := b.Spread(b.middle(), b.Eaves()/2)
	return finding.Finding{Code: "shell.quick", Severity: finding.Note, About: []string{"/shell/quick"},
		Title:    "The shape of the van is that of an invented body of its kind, stretched to your readings",
		Words:    fmt.Sprintf("Sides may be off by %s. That is enough to try arrangements; before you cut wood measure half widths at several places and heights; the measuring sheet says where.", mm(spread)),
		Measured: &finding.Measure{Value: spread, Unit: "mm"},
		Source:   finding.Source{Text: "nine typical bodies of our own, invented; good to about 3 % of the half width", Sure: finding.Practice}}
}

func unmeasured() finding.Finding {
	return finding.Finding{Code: "shell.not-measured", Severity: finding.Note, About: []string{"/shell"},
		Title:  "The van has not been measured: an invented one of middle length and height stands in",
		Words:  "Six readings with a tape take ten minutes and make everything else better.",
		Source: finding.Source{Text: "nine typical bodies of our own, invented", Sure: finding.Practice}}
}

// practice is the source of limits that are habits of ours.
var practice = finding.Source{Text: "common practice, no source", Sure: finding.Practice}

// mm writes a length as a builder reads it.
func mm(v float64) string { return quantity.Parted(v) + " mm" }
