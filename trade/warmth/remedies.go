package warmth

import (
	"fmt"
	"math"

	"tumblehome/trade/finding"
)

// Remedy is a change that clears a finding. Who knows the document makes a patch of it.
type Remedy struct {
	Kind  Kind
	About string  // the layer, opening or wish to change
	By    float64 // how many times as large, or the temperature to be content with
	Words string
}

// Kind says what a remedy changes.
type Kind string

const (
	Larger   Kind = "larger"   // an opening By times as large
	Wider    Kind = "wider"    // opened By times as far at night
	Vents    Kind = "vents"    // a low and a high opening that nobody can close
	Bridge   Kind = "bridge"   // a strip of the layer over the ribs
	Membrane Kind = "membrane" // a vapour membrane on the warm side
	Content  Kind = "content"  // be content with By °C at night
)

// NewLow and NewHigh are the free areas of the openings that Vents adds [m2]: a floor grille and a roof vent as they are sold.
const (
	NewLow  = 0.004
	NewHigh = 0.011
)

// Remedies are worth trying against a finding. Those of air and of strips over ribs were tried on the usual night; the others are untried.
func (r Result) Remedies(f finding.Finding) []Remedy { return r.remedies[f.Key()] }

func (r *Result) tried(f finding.Finding) []Remedy {
	switch f.Code {
	case "warmth.air.fixed", "warmth.air.unsaid", "warmth.co2":
		return append(r.moreAir(f.Code), r.newVents(f.Code)...)
	case "warmth.glass.runs":
		return r.moreAir(f.Code)
	case "warmth.surface.wet":
		return append(r.moreAir(f.Code), r.bridging(f.About[0])...)
	case "warmth.heater.small", "warmth.heater.none":
		low := math.Floor(math.Min(r.usual().Low, r.coldest().Low))
		return []Remedy{{Kind: Content, About: r.in.KeepAbout, By: low, Words: fmt.Sprintf("be content with %.0f °C at night", low)}}
	case "warmth.winter.water":
		return []Remedy{{Kind: Membrane, About: f.About[0], Words: "lay a vapour membrane on the warm side of the insulation, its edges taped"}}
	}
	return nil
}

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
				out = append(out, Remedy{Kind: Larger, About: v.About, By: times, Words: fmt.Sprintf("make an opening that is always open %s as large", fold(times))})
			} else {
				wider = true
				out = append(out, Remedy{Kind: Wider, About: v.About, By: times, Words: fmt.Sprintf("open it %s as far at night", fold(times))})
			}
			break
		}
	}
	return out
}

func fold(times float64) string {
	switch times {
	case 1.5:
		return "half again"
	case 2:
		return "twice"
	}
	return fmt.Sprintf("%.0f times", times)
}

// newVents adds a floor grille and a roof vent.
func (r *Result) newVents(code string) []Remedy {
	vents := append([]Vent(nil), r.in.Vents...)
	vents = append(vents, Vent{Free: NewLow, Fixed: true}, Vent{Free: NewHigh, Z: r.in.Top, Roof: true, Fixed: true})
	if r.withVents(vents).still(code) {
		return nil
	}
	return []Remedy{{Kind: Vents, Words: "cut a grille of 40 cm2 into the floor and a vent of 110 cm2 into the roof, both always open"}}
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

// still says whether a finding of air and water is found.
func (r *Result) still(code string) bool {
	var found bool
	switch code {
	case "warmth.air.fixed", "warmth.air.unsaid":
		_, found = r.air()
	case "warmth.co2":
		_, found = r.stale()
	case "warmth.glass.runs":
		_, found = r.glass()
	case "warmth.surface.wet":
		_, found = r.wetSurface()
	}
	return found
}
