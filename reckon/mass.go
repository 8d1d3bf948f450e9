package reckon

import (
	"math"

	"tumblehome/catalogue"
	"tumblehome/catalogue/settings"
	"tumblehome/quantity"
	"tumblehome/trade/takeoff"
)

// ownSpread is how far off a mass may be that the builder gave as a bare number for something made: common practice, no source.
const ownSpread = 0.15

// guessed is the mass of a fitting, where its error comes from, and whether it is only a guess.
type guessed struct {
	mean, dev float64
	key       string // things that share this key share the error
	guess     bool
}

// massOf takes the builder's own figure, else the catalogue's, else a guess from the envelope of a made thing.
func massOf(id string, t *thing, size [3]float64, rows *catalogue.Catalogue) guessed {
	if t.Mass != nil {
		g := spreadOf(t.Mass.WithDefault(t.ownSpread(rows)))
		g.key = "/fittings/" + id
		return g
	}
	if mass, ok := rows.UnitMass(t.Buy); ok {
		g := spreadOf(mass)
		g.key = t.Buy
		return g
	}
	if t.setting != nil {
		g := spreadOf(envelopeMass(t.setting, t.board, size))
		g.key, g.guess = "made:"+t.Make, true
		return g
	}
	return guessed{key: "/fittings/" + id, guess: true}
}

func envelopeMass(s *settings.Setting, board *catalogue.Material, size [3]float64) quantity.Spread[quantity.Mass] {
	var perArea quantity.PerArea
	if board != nil {
		perArea = board.PerArea
	}
	return s.GuessMass(quantity.Length(size[0]), quantity.Length(size[1]), quantity.Length(size[2]), perArea)
}

// ownSpread is that of the catalogue row for a bought thing, else that of a made one.
func (t thing) ownSpread(rows *catalogue.Catalogue) float64 {
	if t.row != nil {
		return catalogue.MassSpread(t.Buy, *t.row)
	}
	return ownSpread
}

func spreadOf(s quantity.Spread[quantity.Mass]) guessed {
	return guessed{mean: s.Mean().Float(), dev: math.Sqrt(s.Variance())}
}

// line makes the take-off line of one thing at one place.
func (g guessed) line(pointer, of, group string, at [3]float64, fitted bool) takeoff.Line {
	return takeoff.Line{Pointer: pointer, Of: of, Net: 1, Unit: "piece", Mass: g.mean, Dev: g.dev, Error: g.key, At: at,
		Group: group, Fitted: fitted, Guess: g.guess}
}
