package warmth

import "tumblehome/trade/finding"

// Remedy is a change that may clear a finding. Who knows the document makes a patch of it.
type Remedy struct {
	Kind  Kind
	About string  // the layer or opening to change
	By    float64 // mm more, or how many times as large
	Words string
}

// Kind says what a remedy changes.
type Kind string

const (
	Larger   Kind = "larger"   // an opening By times as large
	Wider    Kind = "wider"    // opened By times as far at night
	Vents    Kind = "vents"    // a low and a high opening that nobody can close
	Thicker  Kind = "thicker"  // a layer By mm thicker
	Bridge   Kind = "bridge"   // a strip of the layer over the ribs
	Membrane Kind = "membrane" // a vapour membrane on the warm side
)

// Remedies are worth trying against a finding.
func (r Result) Remedies(f finding.Finding) []Remedy {
	about := ""
	if len(f.About) > 0 {
		about = f.About[0]
	}
	switch f.Code {
	case "warmth.air.fixed", "warmth.air.unsaid":
		return []Remedy{{Kind: Vents, Words: "cut a grille of 40 cm2 into the floor and a vent of 110 cm2 into the roof, both always open"}}
	case "warmth.co2":
		return append(r.moreAir(), Remedy{Kind: Vents, Words: "cut a grille of 40 cm2 into the floor and a vent of 110 cm2 into the roof, both always open"})
	case "warmth.glass.runs":
		return r.moreAir()
	case "warmth.surface.wet":
		return append([]Remedy{{Kind: Bridge, About: about, Words: "lay a strip of the insulation over the ribs as well"},
			{Kind: Thicker, About: about, By: 10, Words: "lay 10 mm more insulation here"}}, r.moreAir()...)
	case "warmth.heater.small", "warmth.heater.none":
		return []Remedy{{Kind: Thicker, About: r.thinnest(), By: 10, Words: "lay 10 mm more where most heat is lost"}}
	case "warmth.winter.water":
		return []Remedy{{Kind: Membrane, About: about, Words: "lay a vapour membrane on the warm side of the insulation, its edges taped"}}
	}
	return nil
}

// moreAir opens what can be opened twice as far, and makes what is always open twice as large.
func (r *Result) moreAir() []Remedy {
	var out []Remedy
	for _, v := range r.in.Vents {
		if !v.Fixed && v.Free > 0 {
			out = append(out, Remedy{Kind: Wider, About: v.About, By: 2, Words: "open it twice as far at night"})
			break
		}
	}
	for _, v := range r.in.Vents {
		if v.Fixed {
			out = append(out, Remedy{Kind: Larger, About: v.About, By: 2, Words: "make the vent that is always open twice as large"})
			break
		}
	}
	return out
}

// thinnest is the lining through which most heat goes.
func (r *Result) thinnest() string {
	var worst *Lost
	for i := range r.Lost {
		l := &r.Lost[i]
		if len(l.Field.Courses) > 0 && l.Field.Group != Front && (worst == nil || l.U*l.Field.Area > worst.U*worst.Field.Area) {
			worst = l
		}
	}
	if worst == nil {
		return ""
	}
	return worst.Field.About
}
