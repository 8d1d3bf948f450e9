package warmth

import (
	"fmt"
	"math"

	"tumblehome/build"
	"tumblehome/solve/conduction"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

type (
	line   = working.Line
	origin = working.Origin
)

var (
	here     = origin{Here: true}
	iso6946  = finding.Source{Text: "ISO 6946 for layers, surfaces and air; ISO 10211 for the ribs (both from memory, checked with published examples)", Sure: finding.Memory}
	balance  = finding.Source{Text: "heat and vapour balance of one room, as it underlies ISO 13788; Lewis relation at wet surfaces (from memory)", Sure: finding.Memory}
	iso13788 = finding.Source{Text: "ISO 13788, monthly method (from memory, checked with a published example); the air that leaks past the lining is our own extension", Sure: finding.Memory}
)

// largest is the field of a group with most area.
func (r *Result) largest(group string) *Lost {
	var out *Lost
	for i := range r.Lost {
		l := &r.Lost[i]
		if l.Field.Group == group && (out == nil || l.Field.Area > out.Field.Area) {
			out = l
		}
	}
	return out
}

func (r *Result) surface(group string) Surface {
	for _, s := range r.Surfaces {
		if s.Group == group {
			return s
		}
	}
	return Surface{}
}

// workingOfU shows the largest bay layer by layer, then what the ribs add over the whole surface.
func (r *Result) workingOfU(group string) working.Working {
	w := working.Working{Formula: "U0 = 1/(Rsi + Σ d/λ + Rse);  U = (Σ U0·A + Σ Ψ·l)/Σ A", Source: iso6946}
	s, l := r.surface(group), r.largest(group)
	w.Lines = l.stack()
	w.Lines = append(w.Lines,
		line{Symbol: "A", Label: "area of the surface", Value: s.Area, Unit: "m2", From: origin{Assumption: "measured on the bare body, less openings and wheel arches"}},
		line{Symbol: "U0", Label: "all bays without ribs", Value: s.Plain, Unit: "W/m2K", From: here, Sum: "Σ U0·A / Σ A"})
	for _, d := range l.Ribs {
		w.Lines = append(w.Lines, line{Symbol: "Ψ/2", Label: "half a rib there adds, for each m of it", Value: d.Excess, Unit: "W/mK", From: here, Sum: "two-dimensional conduction of the section"},
			line{Symbol: "fRsi", Label: "how near the surface over it stays to the room: 0 is outside, 1 inside", Value: d.Factor, Unit: "1", From: here})
	}
	if s.Combined != s.Plain {
		w.Lines = append(w.Lines, line{Label: "by the combined method, which is not made for steel", Value: s.Combined, Unit: "W/m2K", From: here},
			line{Label: "so much the ribs add to it in truth", Value: s.U - s.Combined, Unit: "W/m2K", From: here})
	}
	w.Lines = append(w.Lines, line{Symbol: "U", Label: "with ribs", Value: s.U, Unit: "W/m2K", From: here, Sum: fmt.Sprintf("%.1f W/K / %.2f m2", s.Loss, s.Area)})
	w.Notes = []string{"Conductivities are those of the catalogue, good to 10 %.", "Ribs are hats of the skin's sheet with still air in them unless insulation fills them."}
	return w
}

// stack lists the resistances of a field from the room outwards.
func (l *Lost) stack() []line {
	f := l.Field
	out := []line{{Symbol: "Rsi", Label: "from the room to the surface, " + directions[f.Flow], Value: inner(f.Flow), Unit: "m2K/W", From: origin{Assumption: "ISO 6946"}}}
	slabs := f.inBay()
	for i := len(slabs) - 1; i >= 0; i-- {
		s := slabs[i]
		one := line{Symbol: "R", Value: s.mixed.even(), Unit: "m2K/W", Label: fmt.Sprintf("still air, %.4g mm", s.to-s.from), From: origin{Assumption: "ISO 6946, unventilated air layer"}}
		if c := s.course; c != nil {
			one.Label = fmt.Sprintf("%s, %.4g mm", c.Of.Name, s.to-s.from)
			one.Sum = fmt.Sprintf("%.4g / %.3g", s.thick(), c.Of.Conducts)
			one.From = origin{Row: c.Of.ID}
			if c.Of.Assumed {
				one.From = origin{Assumption: "how well it conducts is not in the catalogue; that of similar things"}
			}
			if len(s.mixed) > 1 {
				one.Label, one.Sum = one.Label+", with what lies beside it", ""
			}
		}
		out = append(out, one)
	}
	return append(out,
		line{Symbol: "Rse", Label: "from the skin to what is outside of it", Value: f.outer(), Unit: "m2K/W", From: origin{Assumption: "ISO 6946"}},
		line{Symbol: "U0", Label: "the largest place, " + build.BayWords(f.Bay) + ", without ribs", Value: l.Plain, Unit: "W/m2K", From: here})
}

var directions = map[conduction.Direction]string{conduction.Level: "level", conduction.Upward: "upwards", conduction.Downward: "downwards"}

func (r *Result) workingOfLoss() working.Working {
	w := working.Working{Formula: "H = Σ U·A + Hcab + 0.34·Q", Source: iso6946}
	for _, s := range r.Surfaces {
		if s.Group != Front {
			w.Lines = append(w.Lines, line{Symbol: "U·A", Label: "through " + groupLabels[s.Group], Value: s.Loss, Unit: "W/K", Sum: fmt.Sprintf("%.2f × %.2f", s.U, s.Area),
				From: origin{Figure: "warmth.u." + s.Group}})
		}
	}
	w.Lines = append(w.Lines,
		line{Symbol: "U·A", Label: "through glass", Value: r.Glass, Unit: "W/K", From: here},
		line{Symbol: "Hcab", Label: r.cabWords(), Value: r.Cab, Unit: "W/K", From: origin{Assumption: "a cold cab loses 40 W/K to outside; common practice"}})
	w.Lines = append(w.Lines, r.airLines()...)
	w.Lines = append(w.Lines,
		line{Symbol: "0.34·Q", Label: "with the air that is exchanged", Value: r.airLoss(), Unit: "W/K", From: here},
		line{Symbol: "s", Label: "how far off it may be, as the materials differ (standard deviation)", Value: r.Unsure, Unit: "W/K", From: origin{Assumption: "sheets of one kind differ by 10 % in how well they conduct"}},
		line{Symbol: "H", Label: "in all", Value: r.Loss, Unit: "W/K", From: here})
	return w
}

func (r *Result) cabWords() string {
	switch {
	case r.in.Cab.Partition:
		return "through the partition into the cold cab"
	case r.in.Cab.Curtain:
		return "through the curtain into the cold cab"
	case r.in.Cab.Opening > 0:
		return "of the cab, which nothing closes off"
	}
	return "to the cab, which is closed off"
}

// airLines show what passes the vents in a usual night.
func (r *Result) airLines() []line {
	var out []line
	for _, v := range r.in.Vents {
		out = append(out, line{Symbol: "A", Label: fmt.Sprintf("open at night, %.4g above the floor", v.Z), Value: v.Free * cm2, Unit: "cm2", From: origin{Pointer: v.About}})
	}
	n, q := r.usual(), r.Flow
	rise := n.Mean - mean(r.in.Months[n.Month-1].Usual.Outside[:])
	return append(out,
		line{Symbol: "Qs", Label: "by the warmth of the room (stack), at the night's mean difference", Value: 3600 * q.Stack * math.Sqrt(math.Abs(rise)/(n.Mean+kelvin)), Unit: "m3/h", From: here,
			Sum: "Cd·A·√(2·g·H·ΔT/Ti), or what the largest opening exchanges alone"},
		line{Symbol: "Qw", Label: "by wind", Value: 3600 * q.Wind, Unit: "m3/h", From: origin{Assumption: "1.5 m/s at the vents"}, Sum: "Cd·A*·v·√ΔCp, or 0.025·A·v through the largest alone"},
		line{Symbol: "Ql", Label: "through seals", Value: 3600 * q.Leak, Unit: "m3/h", From: origin{Assumption: fmt.Sprintf("%.4g times the air of the room in an hour", r.in.leak())}},
		line{Symbol: "Q", Label: "in all, mean while people sleep", Value: n.Ventilate, Unit: "m3/h", From: here, Sum: "√(Qs² + Qw²) + Ql"})
}
