package web

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/draw/sheet"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

func TestDoorsThatNobodyWroteDownAreNamedAsWaysOut(t *testing.T) {
	const text = `
tumblehome: 1
build: {title: Quick, rules: gb, currency: EUR}
people: {ada: {stature: 1700, mass: 70}}
vehicle: {wheelbase: 3350, datum: 1290}
shell: {quick: {body: mid-mid}}
fittings:
  bed: {make: platform, at: {x: 900, y: mid 0}, size: {x: 1900, y: 1000, z: 400}}
modes: {night: {people: {ada: {lies: bed, head: front}}}}
`
	doc, _, err := build.Decode("quick.yaml", []byte(text), catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	v := view{state: &state{Doc: doc, Reckoning: reckon.NewMachine().Reckon(doc, quantity.Date{})}, Mode: "night"}
	if got := v.waysOutText(); strings.Contains(got, "quick") || !strings.Contains(got, "the rear door, or by the side door") {
		t.Errorf("got %q", got)
	}
}

// The words beside an overlay explain what is to be seen, all of it and nothing else.
func TestOverlayWordsTellOfWhatIsSeen(t *testing.T) {
	const wall = "  wall: {make: partition, at: {x: 1150, y: mid 0}, size: {x: 20, y: 1700, z: 1400}}\n"
	for _, test := range []struct {
		name, build, mode  string
		show               sheet.Overlay
		says, silent, also string
	}{
		{"where the tall one stands nowhere no green is promised", "dipper", "night", sheet.Upright, "Nowhere does the tall one", "Green", ""},
		{"floor on which nobody stands upright is explained", "dipper", "night", sheet.Upright, "White floor is too low", "", ""},
		{"nobody aboard stands upright in the lowest van", "twite", "day", sheet.Upright, "Nowhere does the builder", "Grey", ""},
		{"where all stand, nobody stoops", "godwit", "day", sheet.Upright, "Green is the floor", "Nowhere does", ""},
		{"a ring that is drawn is explained", "dipper", "day", sheet.Way, "the ring is", "", ""},
		{"a ring that is missing is not promised", "dipper", "night", sheet.Way, "nowhere is a narrow place", "the ring", ""},
		{"where one does not get everywhere that is said", "godwit", "day", sheet.Way, "not get everywhere on foot", "the ring", wall},
	} {
		t.Run(test.name, func(t *testing.T) {
			text, err := os.ReadFile(filepath.Join("..", "..", "examples", test.build+".yaml"))
			if err != nil {
				t.Fatal(err)
			}
			text = []byte(strings.Replace(string(text), "\nfittings:\n", "\nfittings:\n"+test.also, 1))
			doc, _, err := build.Decode(test.build, text, catalogue.Builtin())
			if err != nil {
				t.Fatal(err)
			}
			got := view{state: &state{Doc: doc, Reckoning: reckon.NewMachine().Reckon(doc, quantity.Date{})}, Mode: test.mode, Show: test.show}.overlayText()
			if !strings.Contains(got, test.says) || test.silent != "" && strings.Contains(got, test.silent) {
				t.Errorf("got %q", got)
			}
		})
	}
}
