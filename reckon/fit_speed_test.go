package reckon

import (
	"fmt"
	"os"
	"testing"
	"time"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/trade/fit"
)

// Goals for a build of 200 fittings, on one core: where everything stands and whether it fits takes 15 ms the first time, and 2 ms after one
// of them was moved. They are the least times of many, since a machine has other things to do.

func BenchmarkPlacesAndFitCold(b *testing.B) {
	for name, doc := range crowds(b) {
		b.Run(name, func(b *testing.B) {
			w := upToPlaces(NewMachine(), doc)
			leastOf(b, func() (*Machine, *stages) { return NewMachine(), w })
		})
	}
}

func BenchmarkPlacesAndFitAfterAMove(b *testing.B) {
	for name, doc := range crowds(b) {
		b.Run(name, func(b *testing.B) {
			m, at := NewMachine(), 0
			m.placesAndFit(upToPlaces(m, doc))
			leastOf(b, func() (*Machine, *stages) {
				at++
				return m, upToPlaces(m, put(b, doc, "locker-7", fmt.Sprintf(`{"at": {"x": %d}}`, 100+at)))
			})
		})
	}
}

// leastOf reports the least time that places and fit take.
func leastOf(b *testing.B, before func() (*Machine, *stages)) {
	least := time.Hour
	for b.Loop() {
		b.StopTimer()
		m, w := before()
		b.StartTimer()
		start := time.Now()
		m.placesAndFit(w)
		least = min(least, time.Since(start))
	}
	b.ReportMetric(float64(least.Microseconds())/1000, "least-ms")
}

// crowds are two builds of some 200 fittings: one tidy, with things in every locker; one with lockers strewn all over the van, so that many foul
// and none gets about.
func crowds(t testing.TB) map[string]*build.Document {
	tidy, strewn := example(t, "dipper"), example(t, "dipper")
	for i := range 170 {
		x, y, z := 100+i%20*140, -700+i/20%14*100, 60+i/280*150
		strewn = put(t, strewn, fmt.Sprintf("locker-%d", i), fmt.Sprintf(`{"make": "carcass", "at": {"x": %d, "y": %d, "z": %d}, "size": {"x": 90, "y": 60, "z": 90}, "of": "ply-poplar-12"}`, x, y, z))
		tidy = put(t, tidy, fmt.Sprintf("locker-%d", i), tidyLocker(i))
	}
	return map[string]*build.Document{"tidy": tidy, "strewn": strewn}
}

// tidyLocker is one of many small things that stand in one another's way nowhere: some on the wall, the others in the overhead locker.
func tidyLocker(i int) string {
	if i < 8 {
		return fmt.Sprintf(`{"make": "carcass", "at": {"x": %d, "y": "left", "z": 1150}, "size": {"x": 90, "y": 120, "z": 90}, "of": "ply-poplar-12"}`, 1900+i*100)
	}
	return fmt.Sprintf(`{"make": "box", "in": "overlocker", "at": {"x": %d, "y": %d, "z": %d}, "size": {"x": 35, "y": 50, "z": 30}, "of": "ply-poplar-12"}`,
		20+i%40*40, -100+i/40%2*60, 20+i/80*40)
}

func example(t testing.TB, name string) *build.Document {
	t.Helper()
	text, err := os.ReadFile("../examples/" + name + ".yaml")
	if err != nil {
		t.Fatal(err)
	}
	doc, _, err := build.Decode(name, text, catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

func put(t testing.TB, doc *build.Document, id, fitting string) *build.Document {
	t.Helper()
	patch, err := tree.ParsePatch([]byte(fmt.Sprintf(`{"fittings": {%q: %s}}`, id, fitting)))
	if err != nil {
		t.Fatal(err)
	}
	after, err := build.Apply(doc, patch, catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	return after
}

// upToPlaces is a reckoning just before the places.
func upToPlaces(m *Machine, doc *build.Document) *stages {
	w := &stages{doc: doc, rows: catalogue.Builtin().Overlay(doc.Catalogue)}
	bare, bodyKey := m.workShell(doc)
	w.body = digestedBody{bare.Body, bodyKey}
	w.skin = outer(doc, w.body)
	lined, roomKey := m.workLining(doc, w.rows, w.body, w.today)
	w.lining, w.room = lined, digestedRoom{lined.Room, roomKey}
	w.things = completed(doc, w.rows)
	return w
}

func (m *Machine) placesAndFit(w *stages) fit.Result {
	w.places, w.placesKey = m.workArrangement(w.doc, w.room, w.skin, w.things)
	result, _ := m.workFit(w)
	return result
}
