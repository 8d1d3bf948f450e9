package power

import "math"

// filling is how a battery takes charge. Its state is what is missing from full [Ah].
type filling struct {
	most    float64 // A that it takes until it tapers
	from    float64 // missing [Ah] from which it tapers
	charged float64 // Ah kept of an Ah
}

func fillingOf(holds float64, n nature) filling {
	return filling{most: n.accepts * holds, from: (1 - n.tapers) * holds, charged: n.charged}
}

// after is what is missing after some hours of an offered current [A]. The battery takes what is offered until it would take less by itself:
// then as much as is missing, in proportion, so that the rest fades exponentially, as at a constant voltage.
func (f filling) after(missing, offered, hours float64) float64 {
	i := min(offered, f.most)
	if i <= 0 || missing <= 0 {
		return missing
	}
	corner := f.from * i / f.most
	if missing > corner {
		t := (missing - corner) / (f.charged * i)
		if t >= hours {
			return missing - f.charged*i*hours
		}
		missing, hours = corner, hours-t
	}
	return missing * math.Exp(-hours*f.charged*f.most/f.from)
}

// LastFifth is how long [h] the last fifth takes, up to 98 % of full, with as much charge offered as it likes.
func LastFifth(c Chemistry) float64 {
	f := fillingOf(100, natures[c])
	missing, t := 20.0, 0.0
	for ; missing > 2 && t < 100; t += 0.01 {
		missing = f.after(missing, math.Inf(1), 0.01)
	}
	return t
}
