package shell_test

import (
	"math"
	"slices"
	"testing"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
	"tumblehome/trade/shell"
	"tumblehome/trade/working"
)

func long(v float64) *quantity.Length { l := quantity.Length(math.Round(v)); return &l }

// quick reads the six quick readings off a van that was measured well.
func quick(body string, b *shell.Body) shell.Quick {
	mid := (b.Start() + b.End()) / 2
	return shell.Quick{Body: body, Length: long(b.Length()), Knee: long(2 * b.Half(mid, 400)), Height: long(b.Roof(mid, 0)),
		BetweenArches: long(2 * b.Arches()[0].Face), DoorWidth: long(1150), DoorHeight: long(1000), DoorSide: "left"}
}

// The three vans again, from six readings: their measured sides shall lie within the spread that the quick body states.
func TestSixReadingsComeWithinTheirSpreadOfTheTable(t *testing.T) {
	for body, in := range map[string]shell.Inputs{"short-low": twite(), "mid-mid": dipper(), "long-high": godwit()} {
		measured := shell.Work(in).Body
		q := quick(body, measured)
		guessed := shell.Work(shell.Inputs{Quick: &q})
		b, places, held := guessed.Body, 0, 0
		for x := 0.0; x <= measured.End(); x += 50 {
			for z := 0.0; z <= min(measured.Eaves(), b.Eaves()); z += 20 {
				places++
				if math.Abs(b.Half(x, z)-measured.Half(x, z)) <= b.Spread(x, z) {
					held++
				}
			}
		}
		if share := float64(held) / float64(places); share < 0.9 {
			t.Errorf("%s: only %.0f %% of the sides lie within the spread", body, 100*share)
		}
		if v, w := b.Volume(), measured.Volume(); math.Abs(v-w) > 0.04*w {
			t.Errorf("%s: room %.2f m3 from six readings, %.2f from the table", body, v, w)
		}
		if a := 2 * b.Arches()[0].Face; math.Abs(a-float64(*q.BetweenArches)) > 1 {
			t.Errorf("%s: between the arches %g, read %g", body, a, *q.BetweenArches)
		}
		if codes := codes(guessed.Findings); !slices.Equal(codes, []string{"shell.quick"}) {
			t.Errorf("%s: findings %v", body, codes)
		}
	}
}

func TestAllNineBodiesAreSoundWithNothingRead(t *testing.T) {
	volume := 0.0
	for _, l := range []string{"short", "mid", "long"} {
		for _, h := range []string{"low", "mid", "high"} {
			r := shell.Work(shell.Inputs{Quick: &shell.Quick{Body: l + "-" + h}})
			b := r.Body
			if v := b.Volume(); v < 2.5 || v > 17 || h != "low" && v < volume {
				t.Errorf("%s-%s: room %.1f m3 after %.1f", l, h, v, volume)
			} else {
				volume = v
			}
			if len(b.Doors()) != 2 || len(b.Bays("left")) < 3 || len(b.Arches()) != 2 {
				t.Errorf("%s-%s: doors %v, bays %v", l, h, b.Doors(), b.Bays("left"))
			}
			for _, f := range r.Findings {
				if f.Severity > finding.Note {
					t.Errorf("%s-%s: %s", l, h, f.Title)
				}
			}
			for _, f := range r.Figures {
				if f.State != working.Assumed {
					t.Errorf("%s-%s: %s is %s", l, h, f.Code, f.State)
				}
			}
		}
	}
}

func TestWhatIsReadWinsOverTheTypical(t *testing.T) {
	q := shell.Quick{Body: "mid-mid"}
	r := shell.Work(shell.Inputs{Quick: &q, Ribs: []shell.Rib{{ID: "only", X: 1000, On: []string{"left"}, Depth: 20}},
		Arches: []shell.Arch{{ID: "mine", On: []string{"left"}, From: 1500, To: 2000, Inward: 150, Up: 200}}})
	if ribs := r.Body.Ribs("left"); len(ribs) != 1 || ribs[0].ID != "only" {
		t.Errorf("ribs %v", ribs)
	}
	if a := r.Body.Arches(); len(a) != 1 || a[0].ID != "mine" {
		t.Errorf("arches %v", a)
	}
}

func TestAVentDoesNotTakeTheDoorsAway(t *testing.T) {
	q := shell.Quick{Body: "mid-high"}
	vent := shell.Opening{ID: "vent", Through: "roof", X: &shell.Span{1900, 2020}, Y: &shell.Span{-60, 60}}
	if doors := shell.Work(shell.Inputs{Quick: &q, Openings: []shell.Opening{vent}}).Body.Doors(); len(doors) != 2 {
		t.Errorf("with a vent written down the doors are %v", doors)
	}
	side := shell.Opening{ID: "side", Through: "left", Door: "sliding", X: &shell.Span{200, 1300}, Z: &shell.Span{0, 1400}}
	if doors := shell.Work(shell.Inputs{Quick: &q, Openings: []shell.Opening{vent, side}}).Body.Doors(); len(doors) != 1 || doors[0].ID != "side" {
		t.Errorf("with a door written down the doors are %v", doors)
	}
}
