package web_test

import (
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// This van is 1 865 wide at the knee and 1 345 between the arches: an arch comes 260 into the room, less the lining of the side and its lean.
func TestWhatAWheelArchKeepsOffTheWallSaysSo(t *testing.T) {
	said := regexp.MustCompile(`clear of the wheel arch; cut round it, it could stand (\d+) mm farther out`)
	list := func(galley string) string {
		w := openText(t, roomy+"\nfittings:\n  galley: {make: carcass, "+galley+"}\n")
		return w.answer(get("/region/fittings")).Body.String()
	}
	found := said.FindStringSubmatch(list("at: {x: 1900, y: right}, size: {x: 900, y: 450, z: 880}"))
	if found == nil {
		t.Fatal("it is not said what keeps the galley off the wall")
	}
	if by, _ := strconv.Atoi(found[1]); by < 150 || by > 260 {
		t.Errorf("it could stand %d mm farther out", by)
	}
	for name, galley := range map[string]string{
		"before the arch":    "at: {x: 100, y: right}, size: {x: 900, y: 450, z: 880}",
		"cut round the arch": "at: {x: 1900, y: right}, scribe: [right], size: {x: 900, y: 450, z: 880}",
		"off the wall":       "at: {x: 1900, y: 100}, size: {x: 900, y: 450, z: 880}",
		"lower than it":      "at: {x: 1900, y: right}, size: {x: 900, y: 450, z: 200}",
	} {
		if page := list(galley); strings.Contains(page, "wheel arch;") {
			t.Errorf("%s, the galley is said to be kept off the wall by the arch", name)
		}
	}
}
