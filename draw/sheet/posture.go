package sheet

import (
	"cmp"
	"math"
	"slices"
)

// posture is how a person is where the room is lower than they are tall, or the seat lower than their knees.
type posture struct {
	bend    float64 // of the back, forwards [rad]
	stretch float64 // of the lower legs, forwards [rad]
}

// Shares of stature at which one stoops, kneels or sits on the floor instead of standing: our own drawing, good for a picture.
const (
	stoops   = 0.9
	kneels   = 0.77
	bendMost = math.Pi / 3
	clear    = 15 // over a head [mm]
)

// hips is how high above its point a form bends.
var hips = map[string]float64{"stands": 0.5, "kneels": 0.25, "squats": 0.05, "sits": 0.05}

// crown is how high a form reaches.
var crown = map[string]float64{"stands": 1, "kneels": 0.75, "squats": 0.52, "sits": 0.52}

// headTop is how far the top of a head lies beyond its middle.
const headTop = 0.065

// suit chooses a form and bends it so that the person stays between the floor and the roof over them.
func (w *person) suit(floor, roof float64) {
	high := (roof - clear - w.at[2]) / w.stature
	switch {
	case w.does == "lies":
		return
	case w.does == "stands" && high < kneels:
		w.how = "squats"
	case w.does == "stands" && high < stoops:
		w.how = "kneels"
	}
	if hip := hips[w.how]; high < crown[w.how] {
		w.bend = math.Acos(min(1, max(math.Cos(bendMost), (high-hip-headTop)/(crown[w.how]-headTop-hip))))
	}
	if w.how == "stands" { // half of the lean goes back over the heels
		w.at[0] -= w.faces[0] * w.lean() / 2 * w.stature
		w.at[1] -= w.faces[1] * w.lean() / 2 * w.stature
	}
	if w.does == "sits" {
		w.stretchLegs((w.at[2] - floor) / w.stature)
	}
}

// lean is how far ahead of the hips the head comes by bending, a share of stature.
func (w *person) lean() float64 { return math.Sin(w.bend) * (crown[w.how] - headTop - hips[w.how]) }

// stretchLegs puts the feet forward as far as the seat is too low for them.
func (w *person) stretchLegs(seat float64) {
	const step = math.Pi / 180
	for w.stretch = 0; w.stretch < math.Pi/2-step/2; w.stretch += step {
		if lowest(w.legs(forms["sits"].profile[0])) >= -seat {
			return
		}
	}
}

func lowest(run []place) float64 {
	return slices.MinFunc(run, func(a, b place) int { return cmp.Compare(a[1], b[1]) })[1]
}

// knee is about what the lower leg of who sits turns: ahead, up.
var knee = place{0.255, 0.03}

// legs turns what is below the knee of who sits, seen in profile.
func (w *person) legs(run []place) []place {
	sin, cos := math.Sincos(w.stretch)
	out := slices.Clone(run)
	for i, p := range out {
		if u, v := p[0]-knee[0], p[1]-knee[1]; p[0] > 0.15 && p[1] < -0.003 {
			out[i] = place{knee[0] + u*cos - v*sin, knee[1] + u*sin + v*cos}
		}
	}
	return out
}

// form is the person's outlines in their posture.
func (w *person) form() form {
	f := forms[w.how]
	if w.bend == 0 && w.stretch == 0 {
		return f
	}
	return form{w.fromAbove(f.above), w.fromFront(f.front), w.inProfile(f.profile)}
}

// inProfile turns what is above the hips forwards.
func (w *person) inProfile(all [][]place) [][]place {
	hip := hips[w.how]
	sin, cos := math.Sincos(w.bend)
	out := make([][]place, len(all))
	for i, run := range all {
		if w.stretch > 0 {
			run = w.legs(run)
		}
		out[i] = slices.Clone(run)
		for k, p := range run {
			if up := p[1] - hip; up > 0 && !(w.how == "sits" && p[0] > 0.08 && p[1] < 0.12) {
				out[i][k] = place{p[0]*cos + up*sin, hip - p[0]*sin + up*cos}
			}
		}
	}
	return out
}

// fromFront shortens what leans towards the looker.
func (w *person) fromFront(all [][]place) [][]place {
	hip, bent, straight := hips[w.how], math.Cos(w.bend), math.Cos(w.stretch)
	out := make([][]place, len(all))
	for i, run := range all {
		out[i] = slices.Clone(run)
		for k, p := range run {
			if p[1] > hip {
				out[i][k][1] = hip + (p[1]-hip)*bent
			}
			if w.stretch > 0 && p[1] < 0 {
				out[i][k][1] = p[1] * straight
			}
		}
	}
	return out
}

// Of who sits, seen from above: which outlines are arms and shoulders, after those of the legs; how far the shoulders go of the way of the head; and how
// far ahead of the hips the hands lie, upon the knees.
const (
	armsAbove      = 4
	shouldersAbove = 6
	shoulders      = 0.77
	hands          = 0.26
)

// fromAbove puts the head ahead of the hips with the back between, and the feet ahead of the knees.
func (w *person) fromAbove(all [][]place) [][]place {
	out := slices.Clone(all)
	last := len(out) - 1
	if far := w.lean(); far > 0 {
		out[last] = moved(out[last], far)
		if w.how == "sits" {
			out = slices.Insert(bent(out, shoulders*far), last, limb(place{0, 0}, place{shoulders * far, 0}, 0.098, 0.1))
		} else {
			out = slices.Insert(out, last, limb(place{0, 0}, place{0.7 * far, 0}, 0.1, 0.07))
		}
	}
	if far := math.Sin(w.stretch) * 0.25; far > 0 {
		for _, hand := range []float64{-1, 1} {
			out = slices.Insert(out, 0, limb(place{0.3, 0.06 * hand}, place{0.3 + far, 0.065 * hand}, 0.03, 0.022))
		}
	}
	return out
}

// bent puts the shoulders of who sits so far ahead, with the arms down to the knees.
func bent(all [][]place, far float64) [][]place {
	for i, hand := range []float64{1, -1} {
		all[armsAbove+i] = limb(place{far, 0.112 * hand}, place{max(hands, far+0.05), 0.075 * hand}, 0.03, 0.022)
	}
	all[shouldersAbove] = moved(all[shouldersAbove], far)
	return all
}

// moved shifts an outline ahead.
func moved(run []place, ahead float64) []place {
	out := slices.Clone(run)
	for i := range out {
		out[i][0] += ahead
	}
	return out
}
