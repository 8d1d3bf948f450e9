package warmth

import (
	"fmt"
	"strings"
)

// moreAir opens further what is opened at night, and makes larger what is always open: each as little as clears the finding.
func (r *Result) moreAir(code string) []Remedy {
	var out []Remedy
	wider, larger := false, false
	for i, v := range r.in.Vents {
		if v.Free <= 0 || v.Fixed && larger || !v.Fixed && wider {
			continue
		}
		for _, times := range []float64{1.5, 2, 3, 5} {
			if !v.Fixed && v.Share*times > 1 {
				break
			}
			vents := append([]Vent(nil), r.in.Vents...)
			vents[i].Free *= times
			if r.withVents(vents).still(code) {
				continue
			}
			if v.Fixed {
				larger = true
				out = append(out, Remedy{Kind: Larger, About: v.About, By: times, Words: fmt.Sprintf("make the opening %s, which is always open, %s as large: %.0f cm² free", spaced(v.ID), fold(times), v.Free*times*cm2)})
			} else {
				wider = true
				out = append(out, Remedy{Kind: Wider, About: v.About, By: times, Words: fmt.Sprintf("open %s %s as far at night", spaced(v.ID), fold(times))})
			}
			break
		}
	}
	return out
}

// spaced is an id as words.
func spaced(id string) string { return strings.ReplaceAll(id, "-", " ") }

func fold(times float64) string {
	switch times {
	case 1.5:
		return "half again"
	case 2:
		return "twice"
	}
	return fmt.Sprintf("%.0f times", times)
}

// pairs are floor grilles and roof vents by their free area [m2], as they are sold: of each the smallest first (typical trade figures, from memory).
var pairs = []struct{ low, high float64 }{{0.004, 0.0078}, {0.004, 0.011}, {0.008, 0.011}, {0.008, 0.02}, {0.012, 0.03}}

// newVents adds a floor grille and a roof vent, the smallest that clear the finding.
func (r *Result) newVents(code string) []Remedy {
	low, high := "a", "a"
	for _, v := range r.in.Vents {
		switch {
		case v.Fixed && v.Roof:
			high = "a second"
		case v.Fixed && v.Z <= lowest:
			low = "a second"
		}
	}
	for _, p := range pairs {
		vents := append([]Vent(nil), r.in.Vents...)
		vents = append(vents, Vent{Free: p.low, Fixed: true}, Vent{Free: p.high, Z: r.in.Top, Roof: true, Fixed: true})
		if !r.withVents(vents).still(code) {
			return []Remedy{{Kind: Vents, Low: p.low, High: p.high,
				Words: fmt.Sprintf("cut %s grille of %.0f cm² into the floor and %s vent of %.0f cm² into the roof, both always open", low, p.low*cm2, high, p.high*cm2)}}
		}
	}
	return nil
}

// withVents is the usual night with other vents, and nothing else.
func (r *Result) withVents(vents []Vent) *Result {
	in := r.in
	in.Vents, in.AirSaid = vents, true
	s := in.sleeping(r.Lost)
	n := s.spend(in.Months[r.usual().Month-1].Usual)
	n.Month = r.usual().Month
	return &Result{in: in, Fixed: in.fixed(), Lost: r.Lost, Flow: s.flow, Nights: []Night{n}}
}
