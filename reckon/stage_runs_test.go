package reckon

import (
	"os"
	"testing"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/trade/runs"
)

// The stage of the runs alone, cold; the goal is under a millisecond on one core.
func BenchmarkRuns(b *testing.B) {
	text, err := os.ReadFile("../examples/dipper.yaml")
	if err != nil {
		b.Fatal(err)
	}
	doc, _, err := build.Decode("dipper", text, catalogue.Builtin())
	if err != nil {
		b.Fatal(err)
	}
	m := NewMachine()
	w := &stages{doc: doc, rows: catalogue.Builtin().Overlay(doc.Catalogue), today: quantity.Date{}}
	bare, bodyKey := m.workShell(doc)
	w.body = digestedBody{bare.Body, bodyKey}
	w.skin = outer(doc, w.body)
	lined, roomKey := m.workLining(doc, w.rows, w.body, w.today)
	w.lining, w.room = lined, digestedRoom{lined.Room, roomKey}
	w.things = completed(doc, w.rows)
	w.places, w.placesKey = m.workArrangement(doc, w.room, w.skin, w.things)
	for b.Loop() {
		runs.Work(w.runsInputs())
	}
}
