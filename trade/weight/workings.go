package weight

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"tumblehome/trade/finding"
	"tumblehome/trade/takeoff"
	"tumblehome/trade/working"
)

var leverRule = finding.Source{Text: "lever rule, statics; agrees with the printed cases of three vehicle handbooks", Sure: finding.Read}

func here() working.Origin { return working.Origin{Here: true} }

func at(pointer string) working.Origin { return working.Origin{Pointer: pointer} }

// showLoad lists the base reading, what was aboard then, and everything aboard now.
func (r *Result) showLoad(a axis, on On) working.Working {
	w := working.Working{Formula: a.formula, Source: leverRule, Notes: r.notes()}
	if a.code != "total" {
		w.Lines = append(w.Lines,
			working.Line{Symbol: "L", Label: "wheelbase", Value: r.in.Wheelbase.Float(), Unit: "mm", From: at("/vehicle/wheelbase")},
			working.Line{Symbol: "d", Label: "front edge of the load space behind the front axle", Value: r.in.Datum.Float(), Unit: "mm", From: at("/vehicle/datum")})
	}
	bare := r.showBare(a, &w)
	w.Lines = append(w.Lines, working.Line{Symbol: symbolOf(a) + "₀", Label: "the bare van, tank empty", Value: bare, Unit: "kg", From: here()})
	for _, l := range together(on.cargo) {
		w.Lines = append(w.Lines, r.contribution(a, l, 1))
	}
	load := a.pick(on)
	if load.moved != 0 {
		w.Lines = append(w.Lines, working.Line{
			Label: "what further weighings say of the guesses", Value: load.moved, Unit: "kg",
			From: at(r.in.Weighings[r.offs[len(r.offs)-1].weighing].pointer()),
		})
	}
	w.Lines = append(w.Lines, working.Line{Symbol: symbolOf(a), Label: a.noun, Value: load.Mean, Unit: "kg", From: here()})
	w.Notes = append(w.Notes, fmt.Sprintf("Likely %.0f kg, one in five it passes %.0f kg: the spread of guesses and of the scale, %.1f kg as a standard deviation.", load.Mean, load.P80(), load.Dev))
	return w
}

func symbolOf(a axis) string {
	return map[string]string{"total": "W", "front": "F", "rear": "R"}[a.code]
}

// showBare lists what the bare van rests on and returns its mass before any correction.
func (r *Result) showBare(a axis, w *working.Working) float64 {
	if r.base < 0 {
		bare := a.pick(r.Bare).Mean
		w.Lines = append(w.Lines, working.Line{
			Label: "a bare van of this size", Value: bare, Unit: "kg",
			From: working.Origin{Assumption: "no weighing: guessed from the size of the body, a tenth either way; 60 % on the front axle"},
		})
		return bare
	}
	base, before := r.in.Weighings[r.base], len(w.Lines)
	if a.code != "rear" {
		w.Lines = append(w.Lines, working.Line{Label: "front axle as read", Value: base.Front.Float(), Unit: "kg", From: at(base.pointer() + "/front")})
	}
	if a.code != "front" {
		w.Lines = append(w.Lines, working.Line{Label: "rear axle as read", Value: base.Rear.Float(), Unit: "kg", From: at(base.pointer() + "/rear")})
	}
	for _, l := range r.in.aboard(base) {
		w.Lines = append(w.Lines, r.contribution(a, l, -1))
	}
	var sum float64
	for _, l := range w.Lines[before:] {
		sum += l.Value
	}
	return sum
}

// contribution is the line of a working that one line of the take-off makes.
func (r *Result) contribution(a axis, l takeoff.Line, times float64) working.Line {
	out := working.Line{Symbol: "m", Label: label(l), Value: times * a.carries(r.lever(), l), Unit: "kg", From: at(l.Pointer)}
	if times < 0 {
		out.Label = "less, aboard when weighed: " + out.Label
	}
	x, d, wheelbase := plain(l.At[0]), plain(r.in.Datum.Float()), plain(r.in.Wheelbase.Float())
	m := plain(times * l.Mass)
	switch a.code {
	case "rear":
		out.Symbol, out.Sum = "m·(x + d)/L", fmt.Sprintf("%s × (%s + %s) / %s", m, x, d, wheelbase)
	case "front":
		out.Symbol, out.Sum = "m − m·(x + d)/L", fmt.Sprintf("%s − %s × (%s + %s) / %s", m, m, x, d, wheelbase)
	}
	return out
}

// plain writes a number to two decimals, without those that are nought.
func plain(v float64) string {
	s := strconv.FormatFloat(math.Round(v*100)/100+0, 'f', -1, 64)
	if strings.HasPrefix(s, "-") {
		return "−" + s[1:]
	}
	return s
}

// notes are the assumptions behind every load.
func (r *Result) notes() []string {
	notes := []string{"Rigid van on level ground; things of one catalogue row share one error."}
	if r.base < 0 {
		return append(notes, "Nobody has weighed the van: the bare mass is a guess, from memory, and wide.")
	}
	base := r.in.Weighings[r.base]
	if base.Step == nil {
		notes = append(notes, "The step of the scale is not written down: 20 kg taken, as public weighbridges have.")
	}
	if base.Fuel == nil && r.in.FuelTank != nil {
		notes = append(notes, "Nobody wrote down the fuel at the weighing: half a tank taken, give or take a quarter.")
	}
	if r.in.FuelTank == nil {
		notes = append(notes, "The fuel tank is not described: its fuel counts as it was when weighed.")
	}
	if len(r.in.Seats) == 0 && len(r.in.People) > 0 {
		notes = append(notes, "No seats are described: people sit 1 050 mm behind the front axle.")
	}
	return notes
}

// spare is a limit less a load.
func (r *Result) spare(plate string, limit float64, of string, load float64) working.Working {
	return working.Working{
		Formula: "limit − load", Source: finding.Source{Text: "the maker's plate; all its limits bind separately", Sure: finding.Read},
		Lines: []working.Line{
			{Label: "limit on the plate", Value: limit, Unit: "kg", From: at(plate)},
			{Label: "load", Value: load, Unit: "kg", From: working.Origin{Figure: of}},
			{Label: "to spare", Value: limit - load, Unit: "kg", Sum: plain(limit) + " − " + plain(load), From: here()},
		},
	}
}

// showPayload is the plate less the mass in running order.
func (r *Result) showPayload(left float64) working.Working {
	w := working.Working{
		Formula: "payload = gross − (finished van with 90 % fuel + driver)",
		Source:  finding.Source{Text: "Regulation (EU) 1230/2012 article 2(4): mass in running order", Sure: finding.Read},
		Lines: []working.Line{
			{Label: "gross on the plate", Value: r.in.Plate.Gross.Float(), Unit: "kg", From: at("/vehicle/plate/gross")},
			{Label: "less the finished van", Value: -r.Finished.Total.Mean, Unit: "kg", From: working.Origin{Figure: "weight.finished.total"}},
		},
	}
	for _, l := range r.Finished.cargo.extra {
		w.Lines = append(w.Lines, working.Line{Label: "its fuel, counted anew", Value: l.Mass, Unit: "kg", From: at(l.Pointer)})
	}
	for _, l := range r.in.fuel(defaultFuel) {
		w.Lines = append(w.Lines, working.Line{Label: "less 90 % fuel", Value: -l.Mass, Unit: "kg", From: at(l.Pointer)})
	}
	w.Lines = append(w.Lines,
		working.Line{Label: "less the driver", Value: -standardDriver, Unit: "kg", From: working.Origin{Assumption: "75 kg, as the regulation has it"}},
		working.Line{Label: "left", Value: left, Unit: "kg", From: here()})
	return w
}

// together joins what is of one thing and one material, such as a layer in all its bays, at the middle of its mass: its moment is the
// same, and a reader can follow it.
func together(c cargo) []takeoff.Line {
	type same struct{ pointer, of string }
	place := map[same]int{}
	var out []takeoff.Line
	c.each(func(l takeoff.Line) {
		key := same{l.Pointer, l.Of}
		i, met := place[key]
		if !met || out[i].Mass+l.Mass == 0 {
			place[key] = len(out)
			out = append(out, l)
			return
		}
		sum := out[i].Mass + l.Mass
		for axis := range l.At {
			out[i].At[axis] = (out[i].Mass*out[i].At[axis] + l.Mass*l.At[axis]) / sum
		}
		out[i].Mass = sum
		out[i].Net += l.Net
	})
	return out
}
