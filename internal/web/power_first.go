package web

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

// firstThing is something electrical that most vans have, ready to be put in.
type firstThing struct {
	ID, Buy, Words string
	same           []string // beginnings of rows that do the same
}

// firstThings are those that one begins with, in the order in which one thinks of them: what is wanted, what feeds it, what fills that again.
var firstThings = []firstThing{
	{lamp, "led-spot-3w", "a lamp under the roof", []string{"led-"}},
	{"fridge", "fridge-compressor-50", "a fridge with a compressor, 50 l", []string{"fridge-", "coolbox-compressor"}},
	{"sockets", "socket-usb-12v", "sockets to charge telephones", []string{"socket-"}},
	{"battery", "battery-lfp-100ah", "a battery, 100 Ah", []string{"battery-lfp", "battery-agm", "battery-leisure"}},
	{"fuses", "fusebox-6way", "a fuse box for six circuits", []string{"fusebox-"}},
	{"panel", "solar-rigid-100w", "a solar panel for the roof", []string{"solar-rigid", "solar-flex"}},
	{"regulator", "mppt-20a", "the solar controller between panel and battery", []string{"mppt-", "pwm-"}},
	{"charger", "dcdc-30a", "a charger from the engine", []string{"dcdc-", "relay-"}},
}

const lamp = "lamp"

// lampPatch hangs a lamp under the middle of the roof, where the search for free floor would never put it.
func lampPatch(v view, t firstThing) string {
	room := v.Lining.Room
	at := map[string]any{"x": fmt.Sprintf("mid %.0f", 10*math.Round((room.Front()+room.Rear())/20)), "y": "mid 0", "z": "roof"}
	return patchText(map[string]any{"fittings": map[string]any{free(t.ID, v.Doc.Fittings): map[string]any{"buy": t.Buy, "at": at}}})
}

// firstMissing are the first things of which the van has none yet, until circuits are written down.
func firstMissing(v view) []firstThing {
	if v.Doc.Power != nil && len(v.Doc.Power.Circuits) > 0 {
		return nil
	}
	return slices.DeleteFunc(slices.Clone(firstThings), func(t firstThing) bool {
		_, known := v.Rows.Row(t.Buy)
		return !known || t.stands(v)
	})
}

// stands reports whether the van has something that does the same.
func (t firstThing) stands(v view) bool {
	for _, f := range v.Doc.Fittings {
		if slices.ContainsFunc(t.same, func(beginning string) bool { return strings.HasPrefix(f.Buy, beginning) }) {
			return true
		}
	}
	return false
}
