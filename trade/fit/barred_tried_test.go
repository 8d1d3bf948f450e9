package fit_test

import (
	"encoding/json"
	"strings"
	"testing"

	"tumblehome/solve/solid"
	"tumblehome/trade/fit"
)

func offered(r fit.Result, code string) string {
	var words []string
	for _, f := range r.Findings {
		for _, p := range f.Proposals {
			if f.Code == code {
				words = append(words, p.Words)
			}
		}
	}
	return strings.Join(words, "; ")
}

func anywhere(string, float64, float64, float64) (json.RawMessage, bool) {
	return json.RawMessage(`{"fittings":{}}`), true
}

// A drawer that two blocks bar opens no farther once one of them is moved.
func TestOnlyWhatLetsAPartOpenIsProposed(t *testing.T) {
	reach := func(_ int, share float64) solid.Solid {
		if share == 0 {
			return nil
		}
		return solid.Solid{solid.Box(box(1000, 1400, 200, 200+300*share, 40, 400))}
	}
	for _, tt := range []struct {
		name, want string
		second     solid.Bounds
	}{
		{"one block is moved away", "move block 240 mm forwards", box(100, 300, 250, 500, 40, 400)},
		{"of two one is not enough", "", box(1250, 1400, 280, 500, 40, 400)},
	} {
		v := in(high).put(fit.Fitting{ID: "chest"}, box(1000, 1400, -200, 200, 40, 400)).put(fit.Fitting{ID: "block"}, box(1000, 1240, 250, 500, 40, 400)).
			put(fit.Fitting{ID: "second"}, tt.second).mode("day", nil)
		v.in.Nudge = anywhere
		v.in.Parts = []fit.Part{{Fitting: 0, Kind: "drawer", Ways: 1, Key: "drawer", Swept: reach, Opened: reach}}
		if got := offered(fit.Work(v.in), "fit.opens"); got != tt.want {
			t.Errorf("%s: %q is proposed, not %q", tt.name, got, tt.want)
		}
	}
}

// A chest behind the side door may go forwards or rearwards. Where it slides out by that door in another mode it must still go through it, and
// it must not come to stand before the other way out.
func TestWhatIsMovedOffADoorBringsNothingWorse(t *testing.T) {
	side := fit.Opening{ID: "side", Through: "left", X: [2]float64{1200, 2800}, Z: [2]float64{40, 1600}, Door: true, WayOut: true, Made: true}
	for _, tt := range []struct {
		name, want string
		slides     bool
		rear       fit.Opening
	}{
		{"it goes either way", "move chest 567 mm forwards; move chest 567 mm rearwards", false, fit.Opening{}},
		{"it slides out by the door", "", true, fit.Opening{}},
		{"the other way out is behind it", "move chest 567 mm forwards", false,
			fit.Opening{ID: "rear", Through: "rear", Y: [2]float64{-900, -300}, Z: [2]float64{40, 1600}, Door: true, WayOut: true, Made: true}},
	} {
		v := in(high).put(fit.Fitting{ID: "chest"}, box(1700, 2300, -890, -300, 40, 1400)).put(fit.Fitting{ID: "bed", Rests: true}, box(300, 2800, 250, 890, 40, 400)).person("ada", 1700)
		v.mode("day", nil).mode("night", nil, fit.Pose{Person: "ada", Does: "lies", At: "bed"}).mode("load", map[int]solid.Bounds{0: box(1700, 2300, -1400, -800, 40, 1400)})
		v.in.Nudge, v.in.Openings = anywhere, []fit.Opening{side}
		if tt.rear.ID != "" {
			v.in.Openings = append(v.in.Openings, tt.rear)
		}
		if tt.slides {
			v.in.Modes[2].Movers, v.in.Modes[2].Open = []fit.Mover{{Fitting: 0, Position: "out"}}, []string{"side"}
		}
		if got := offered(fit.Work(v.in), "fit.door.barred"); got != tt.want {
			t.Errorf("%s: %q is proposed, not %q\n%s", tt.name, got, tt.want, told(fit.Work(v.in)))
		}
	}
}

func TestWhatComesLaterIsSaidToBarADoorOnceItComes(t *testing.T) {
	door := fit.Opening{ID: "side", Through: "left", X: [2]float64{1200, 2400}, Z: [2]float64{40, 1600}, Door: true, WayOut: true, Made: true}
	for _, where := range []string{"", "outside"} {
		y := [2]float64{-890, -300}
		if where != "" {
			y = [2]float64{-1200, -950}
		}
		for _, later := range []bool{false, true} {
			v := in(high).put(fit.Fitting{ID: "chest", Where: where, Later: later}, box(1500, 2100, y[0], y[1], 40, 1400)).mode("day", nil)
			v.in.Openings = []fit.Opening{door}
			told, says := false, false
			for _, f := range fit.Work(v.in).Findings {
				if f.Code == "fit.door.barred" {
					told, says = true, strings.Contains(f.Words, "Only the place of chest is kept")
				}
			}
			if !told || says != later {
				t.Errorf("chest %q, later %v: told %v, said to come later %v", where, later, told, says)
			}
		}
	}
}

func TestADrawerThatStandsAloneIsNoDrawersOfItself(t *testing.T) {
	reach := func(_ int, share float64) solid.Solid {
		return solid.Solid{solid.Box(box(1000, 1400, 200, 200+300*share, 40, 400))}
	}
	for name, want := range map[string]string{"drawer": "The drawer cannot be opened far", "tray": "The drawer tray cannot be opened far", "cutlery drawer": "The cutlery drawer cannot be opened far"} {
		v := in(high).put(fit.Fitting{ID: name, Make: "drawer"}, box(1000, 1400, -200, 200, 40, 400)).put(fit.Fitting{ID: "block"}, box(1000, 1400, 250, 500, 40, 400)).mode("day", nil)
		v.in.Parts = []fit.Part{{Fitting: 0, Kind: "drawer", Ways: 1, Key: "drawer", Swept: reach, Opened: reach}}
		got := ""
		for _, f := range fit.Work(v.in).Findings {
			if f.Code == "fit.opens" {
				got = f.Title
			}
		}
		if got != want {
			t.Errorf("%q, not %q", got, want)
		}
	}
}
