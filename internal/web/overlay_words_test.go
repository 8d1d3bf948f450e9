package web

import (
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/catalogue"
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
