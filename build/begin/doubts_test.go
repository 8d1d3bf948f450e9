package begin_test

import (
	"slices"
	"strings"
	"testing"

	"tumblehome/build/begin"
	"tumblehome/quantity"
)

func mm(v float64) *quantity.Length { return ptr(quantity.Length(v)) }
func kg(v float64) *quantity.Mass   { return ptr(quantity.Mass(v)) }

func TestDoubtsAreSpokenAtOnce(t *testing.T) {
	for _, c := range []struct {
		name  string
		a     begin.Answers
		sure  bool
		field string
		words string
	}{
		{"a reading in centimetres", begin.Answers{Body: "mid-mid", Readings: begin.Readings{Knee: mm(187)}}, true, "knee", "write 187 cm or 1870"},
		{"a reading in metres", begin.Answers{Body: "mid-mid", Readings: begin.Readings{Knee: mm(1870), Arches: mm(1.39)}}, true, "arches", "1.39 mm is no more than a fingernail. Did you mean 1.39 m? Then write 1.39 m or 1390."},
		{"a reading in metres beside others", begin.Answers{Body: "mid-mid", Readings: begin.Readings{Knee: mm(1.87), Arches: mm(1390)}}, true, "knee", "Did you mean 1.87 m?"},
		{"a stature in metres", begin.Answers{Sleepers: []begin.Sleeper{{ID: "ann", Name: "Ann", Stature: 1.75}}}, true, "stature-1", "Ann is 1.75 mm tall? Did you mean 1.75 m?"},
		{"a reading of no van", begin.Answers{Body: "mid-mid", Readings: begin.Readings{Height: mm(12)}}, true, "height", "not that of a van"},
		{"a low roof in a high van", begin.Answers{Body: "mid-high", Readings: begin.Readings{Height: mm(1600)}}, false, "height", "another outline"},
		{"arches wider apart than the sides", begin.Answers{Body: "mid-mid", Readings: begin.Readings{Knee: mm(1700), Arches: mm(1720)}}, true, "arches", "stand out of the sides"},
		{"a door higher than the van", begin.Answers{Body: "mid-mid", Readings: begin.Readings{Height: mm(1700), DoorHeight: mm(1750)}}, true, "door-height", "cannot be higher"},
		{"a door as wide as the van is long", begin.Answers{Body: "short-mid", Readings: begin.Readings{Length: mm(1600), DoorWidth: mm(1400)}}, true, "door-width", "nearly as wide"},
		{"axles that carry less than the van", begin.Answers{Plate: begin.Plate{Gross: kg(3500), Front: kg(1600), Rear: kg(1800)}}, true, "rear", "another line of the plate"},
		{"an axle that carries the whole van", begin.Answers{Plate: begin.Plate{Gross: kg(3300), Rear: kg(3300)}}, true, "rear", "whole van"},
		{"a train lighter than the van", begin.Answers{Plate: begin.Plate{Gross: kg(5300), Train: kg(3300)}}, true, "train", "changed places"},
		{"a lorry", begin.Answers{Plate: begin.Plate{Gross: kg(9000)}}, false, "gross", "unusual"},
		{"a wheelbase of another van", begin.Answers{Body: "long-mid", Readings: begin.Readings{Length: mm(4000)}, Wheelbase: mm(2900)}, true, "wheelbase", "read wrongly"},
		{"a stature in centimetres", begin.Answers{Sleepers: []begin.Sleeper{{ID: "ann", Stature: 175}}}, true, "stature-1", "write 175 cm or 1750"},
		{"a giant", begin.Answers{Sleepers: []begin.Sleeper{{ID: "ann", Stature: 1700}, {ID: "tom", Stature: 2900}}}, true, "stature-2", "Nobody is"},
	} {
		found := false
		for _, d := range begin.Doubts(c.a) {
			if slices.Contains(d.About, c.field) && strings.Contains(d.Words, c.words) {
				found = true
				if d.Sure != c.sure {
					t.Errorf("%s: sure is %v", c.name, d.Sure)
				}
			}
		}
		if !found {
			t.Errorf("%s: %+v", c.name, begin.Doubts(c.a))
		}
	}
}

// A typical van of every outline, and one a little off it, is beyond doubt.
func TestNothingIsDoubtedInAnOrdinaryVan(t *testing.T) {
	for _, b := range begin.Bodies() {
		for _, off := range []quantity.Length{-50, 0, 50} {
			r := begin.Readings{Length: mm(float64(b.Length + 2*off)), Knee: mm(float64(b.Knee + off)), Arches: mm(float64(b.Arches + off)),
				Height: mm(float64(b.Height + off)), DoorWidth: mm(float64(b.DoorWidth + off)), DoorHeight: mm(float64(b.DoorHeight + off/2))}
			a := begin.Answers{Body: b.ID, Readings: r, Sleepers: []begin.Sleeper{{ID: "ann", Stature: 1700}}}
			doc := document(t, a)
			a.Wheelbase = &doc.Vehicle.Wheelbase
			a.Plate = begin.Plate{Gross: doc.Vehicle.Plate.Gross, Front: doc.Vehicle.Plate.Front, Rear: doc.Vehicle.Plate.Rear}
			for _, d := range begin.Doubts(a) {
				t.Errorf("%s %+v: %s", b.ID, off, d.Words)
			}
		}
	}
}
