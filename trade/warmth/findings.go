package warmth

import (
	"slices"

	"tumblehome/trade/finding"
)

// Limits, and where each is from.
const (
	staleCO2   = 2000.0 // ppm: beyond it air counts as stale (indoor-air guide values 1000 and 2000, from memory)
	badCO2     = 2600.0 // ppm: sleep disturbed, felt the next day (news item on a bedroom study)
	mostCO2    = 5000.0 // ppm: 8 h limit at work
	runs       = 200.0  // g/m2: water runs off smooth surfaces (ISO 13788, from memory)
	beads      = 50.0   // g/m2: beads that wet what touches them; common practice, no source
	cupful     = 120.0  // g on all glass and bare steel, a small cup: more than a cloth takes up; common practice, no source
	gathers    = 200.0  // g/m2 behind a lining, likewise
	nearGather = 150.0  // g/m2 that are near it
	leastBare  = 1.5    // m2 of bare steel of which nothing is said: wheel arches are seldom covered
	dry        = 20.0   // g/m2 left after a summer that count as dry, a film of a fiftieth of a millimetre
	tooBig     = 5.0    // times what the coldest night wants: a diesel heater soots when it seldom runs warm; common practice, no source
	bearable   = 5.0    // °C inside below which people without a heater sleep badly in what most bring; common practice, no source
	bitter     = -10.0  // °C inside beyond what usual winter sleeping bags are made for; likewise
	nearKeep   = 0.5    // K below what is kept that nobody notices
	nearlyAll  = 0.9    // of a free area asked
	dryClothes = 0.9    // of the water gone by morning
)

var (
	en721     = finding.Source{Text: "EN 721 as quoted by an inspection body (leaflet 740, read in a forum); check the current standard", Sure: finding.Read}
	practice  = finding.Source{Text: "common practice, no source", Sure: finding.Practice}
	airGuides = finding.Source{Text: "guide values for indoor air: 2000 ppm stale, 2600 ppm disturbed sleep (press on a bedroom study), 5000 ppm the limit for a day's work", Sure: finding.Read}
	runoff    = finding.Source{Text: "ISO 13788: beyond 200 g/m2 water runs off smooth surfaces (from memory); below, common practice", Sure: finding.Memory}
)

const fumes = "Never sleep with a flame alight that has no flue. Fit a carbon monoxide alarm; it is no leave to do so."

// Findings are what the builder should know.
func (r Result) Findings() []finding.Finding { return slices.Clone(r.found) }

func (r *Result) judge() []finding.Finding {
	var out []finding.Finding
	put := func(f finding.Finding, ok bool) {
		if ok {
			out = append(out, f)
		}
	}
	put(r.unflued())
	put(r.air())
	if !r.in.PlaceAssumed { // of nights that nobody has planned yet nothing is said but what can hurt
		put(r.stale())
		put(r.cold())
		put(r.large())
		put(r.glass())
		put(r.wetSurface())
		put(r.gathering())
		put(r.clothes())
	}
	finding.Sort(out)
	return out
}
