package warmth

import (
	"fmt"
	"math"
	"slices"

	"tumblehome/trade/finding"
)

// Remedy is a change that clears a finding. Who knows the document makes a patch of it.
type Remedy struct {
	Kind      Kind
	About     string  // the layer, opening or wish to change
	By        float64 // how many times as large, or the temperature to be content with
	Low, High float64 // free areas of new openings, m2
	Next      Thicker // of a layer
	Words     string
}

// Kind says what a remedy changes.
type Kind string

const (
	Larger   Kind = "larger"   // an opening By times as large
	Wider    Kind = "wider"    // opened By times as far at night
	Vents    Kind = "vents"    // a low and a high opening that nobody can close
	Bridge   Kind = "bridge"   // a strip of the layer over the ribs
	More     Kind = "more"     // more of the layer
	Glue     Kind = "glue"     // a closed-cell sheet of By mm glued to the steel beneath it
	Membrane Kind = "membrane" // a vapour membrane on the warm side
	Content  Kind = "content"  // be content with By °C at night
)

// Remedies are worth trying against a finding. All but being content were tried here, in the nights or the winter that the finding is about.
func (r Result) Remedies(f finding.Finding) []Remedy { return r.remedies[f.Key()] }

func (r *Result) tried(f finding.Finding) []Remedy {
	switch f.Code {
	case "warmth.air.fixed", "warmth.air.unsaid", "warmth.co2":
		return append(r.moreAir(f.Code), r.newVents(f.Code)...)
	case "warmth.glass.runs":
		return append(r.moreAir(f.Code), r.newVents(f.Code)...)
	case "warmth.surface.wet":
		return append(append(r.moreAir(f.Code), r.newVents(f.Code)...), r.bridging(f.About[0])...)
	case "warmth.heater.none":
		return r.content()
	case "warmth.heater.small":
		return append(r.thicker(f), r.content()...)
	case "warmth.winter.water":
		return append(append(r.thicker(f), r.glue(f.About[0])...), r.membrane(f.About[0])...)
	}
	return nil
}

// content lowers the wish, where there is one, to what comes of itself.
func (r *Result) content() []Remedy {
	if r.in.Keep == nil {
		return nil
	}
	low := math.Floor(math.Min(r.usual().Low, r.coldest().Low))
	return []Remedy{{Kind: Content, About: r.in.KeepAbout, By: low, Words: fmt.Sprintf("be content with %.0f °C at night", low)}}
}

// still says whether a finding is found.
func (r *Result) still(code string) bool {
	found := false
	switch code {
	case "warmth.air.fixed", "warmth.air.unsaid":
		_, found = r.air()
	case "warmth.co2":
		_, found = r.stale()
	case "warmth.glass.runs":
		_, found = r.glass()
	case "warmth.surface.wet":
		_, found = r.wetSurface()
	case "warmth.winter.water":
		_, found = r.gathering()
	case "warmth.heater.small", "warmth.heater.none":
		_, found = r.cold()
	}
	return found
}

// layers are the pointers of all that could be thicker, each once, in the order in which they lie.
func (r *Result) layers(of func(*Field) bool) []*Course {
	var out []*Course
	for i := range r.in.Fields {
		f := &r.in.Fields[i]
		for k := range f.Courses {
			c := &f.Courses[k]
			known := slices.ContainsFunc(out, func(o *Course) bool { return o.Pointer == c.Pointer })
			if c.Next.By > 0 && !known && of(f) {
				out = append(out, c)
			}
		}
	}
	return out
}
