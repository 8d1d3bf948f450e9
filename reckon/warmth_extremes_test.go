package reckon_test

import (
	"fmt"
	"reflect"
	"strings"
	"testing"

	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/warmth"
)

// crowd is a patch that lets so many people sleep in the van.
func crowd(n int) string {
	var people, lie []string
	for i := range n {
		people = append(people, fmt.Sprintf(`"guest-%d": {"stature": 1700, "mass": 70}`, i))
		lie = append(lie, fmt.Sprintf(`"guest-%d": {"lies": "pullout"}`, i))
	}
	return `{"people": {` + strings.Join(people, ", ") + `}, "modes": {"night": {"people": {` + strings.Join(lie, ", ") + `}}}}`
}

const noLining = `{"lining": {"floor": null, "sides": null, "roof": null, "doors": null, "front": null}}`

var extremes = []struct{ name, patch string }{
	{"no lining at all", noLining},
	{"one layer on the roof and nothing else", `{"lining": {"floor": null, "sides": null, "doors": null, "front": null, "roof": [{"lay": "ply-poplar-3-6"}]}}`},
	{"three hundred millimetres of wool", `{"lining": {"sides": [{"lay": "wool-sheep-50", "thick": 300}, {"lay": "ply-poplar-3-6"}], "roof": [{"lay": "wool-sheep-50", "thick": 300, "times": 10}]}}`},
	{"a tenth of a millimetre of foam", `{"lining": {"sides": [{"lay": "foam-xlpe-10", "thick": 0.1, "ribs": "filled"}]}}`},
	{"thirty people", crowd(30)},
	{"no openings that let air in", `{"air": {"always-open": [], "asleep": null}}`},
	{"air is not spoken of", `{"air": null}`},
	{"vents of next to nothing", `{"shell": {"openings": {"low-vent": {"free-area": "0.0000001 m2"}, "mushroom": {"free-area": "0.0000001 m2"}}}}`},
	{"vents of ten square metres", `{"shell": {"openings": {"low-vent": {"free-area": "10 m2"}, "mushroom": {"free-area": "10 m2"}}}}`},
	{"a heater of nothing", `{"catalogue": {"heater-diesel-2kw": {"kind": "appliance", "heat": 0}}}`},
	{"a heater of twenty kilowatts", `{"catalogue": {"heater-diesel-2kw": {"kind": "appliance", "heat": 20000}}}`},
	{"a flame of twenty kilowatts without a flue", `{"catalogue": {"heater-diesel-2kw": {"kind": "appliance", "heat": 20000, "flue": "none"}}}`},
	{"nobody says where", `{"use": {"climate": null}}`},
	{"near the pole in the dark", `{"use": {"climate": "own", "weather": {"own": {"lat": "85°", "lon": "10°", "mean": [-45, -45, -45, -45, -45, -45, -45, -45, -45, -45, -45, -45], "low": [-52, -52, -52, -52, -52, -52, -52, -52, -52, -52, -52, -52], "high": [-40, -40, -40, -40, -40, -40, -40, -40, -40, -40, -40, -40], "humidity": ["90 %", "90 %", "90 %", "90 %", "90 %", "90 %", "90 %", "90 %", "90 %", "90 %", "90 %", "90 %"], "sun": [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0]}}}}`},
	{"six thousand metres up", `{"use": {"altitude": 6000}}`},
	{"thirty degrees are wanted", `{"use": {"trips": {"winter-hills": {"keep": 30}}}}`},
	{"ice is wanted", `{"use": {"trips": {"winter-hills": {"keep": -10}}}}`},
	{"trips in no month", `{"use": {"trips": {"winter-hills": {"months": []}, "long-summer": {"months": []}}}}`},
	{"no trips", `{"use": {"trips": null}}`},
	{"nobody sleeps", `{"modes": {"night": {"people": null}}, "use": {"trips": null}}`},
	{"twenty kilograms of water in clothes", `{"use": {"trips": {"winter-hills": {"wet": 20}}}}`},
	{"a skin of a third of a millimetre", `{"shell": {"skin": 0.3}}`},
	{"glass as large as the side", `{"shell": {"openings": {"side": {"glazed": "5 m2"}}}}`},
	{"an insulation better than any", `{"catalogue": {"foam-xlpe-10-roll": {"kind": "roll", "conducts": 0.005, "vapour": 1000000}}}`},
	{"cosy habits", `{"use": {"habits": "cosy"}}`},
}

// What a document may say of cold, damp and air, however absurd, gives numbers and plain words.
func TestAbsurdNightsGiveNumbers(t *testing.T) {
	for _, c := range extremes {
		t.Run(c.name, func(t *testing.T) {
			bare := applied(t, demo(t, "dipper"), patched(t, `{"spending": null, "evidence": null, "shell": {"defects": null}}`))
			sound(t, reckon.NewMachine().Reckon(applied(t, bare, patched(t, c.patch)), quantity.Date{}))
		})
	}
}

func sound(t *testing.T, r *reckon.Reckoning) {
	t.Helper()
	w := &r.Warmth
	for _, path := range append(notNumbers("warmth", reflect.ValueOf([]any{w.Surfaces, w.Nights, w.Winters, w.Flow, w.Loss, w.Unsure, w.Year, w.Fixed})), notNumbers("figures", reflect.ValueOf(r.Figures))...) {
		t.Errorf("%s is no number", path)
	}
	for _, f := range w.Figures() {
		working, ok := w.Working(f.Code)
		if !ok {
			t.Errorf("%s has no working", f.Code)
		}
		for _, path := range notNumbers(f.Code, reflect.ValueOf(working)) {
			t.Errorf("%s is no number", path)
		}
	}
	for _, f := range w.Findings() {
		for _, text := range append([]string{f.Title, f.Words, f.Caution}, remedyWords(w.Remedies(f))...) {
			if strings.Contains(text, "NaN") || strings.Contains(text, "Inf") || strings.Contains(text, "%!") {
				t.Errorf("%s says: %s", f.Code, text)
			}
		}
	}
}

func remedyWords(all []warmth.Remedy) (out []string) {
	for _, r := range all {
		out = append(out, r.Words)
	}
	return out
}
