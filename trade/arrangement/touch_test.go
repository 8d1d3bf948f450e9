package arrangement_test

import (
	"math"
	"reflect"
	"testing"

	"tumblehome/build"
	"tumblehome/solve/solid"
	"tumblehome/trade/arrangement"
)

func scribed(t arrangement.Thing, faces ...string) arrangement.Thing {
	t.Scribe = faces
	return t
}

// Sides lean by 0.1 above 600 and draw in by 0.02 a mm rearwards; numbers by hand.
func TestTouchingACurvedSurface(t *testing.T) {
	leaning, arched := room{lean: 0.1, fall: 0.02}, room{step: 230}
	tests := []struct {
		name string
		r    room
		it   arrangement.Thing
		want arrangement.Box
	}{
		{"a box meets a leaning side with its top edge at the narrow end",
			leaning, thing(place(t, "0", "right", ""), 500, 400, 960), box(0, 500, 920-10-40-400, 920-10-40, 40, 1000)},
		{"scribed it is pushed on until the last point touches: below the lean, at the wide end",
			leaning, scribed(thing(place(t, "0", "right", ""), 500, 400, 960), "right"), box(0, 500, 520, 920, 40, 1000)},
		{"scribed and clear of it", leaning, scribed(thing(place(t, "0", "right - 15", ""), 500, 400, 960), "right"), box(0, 500, 505, 905, 40, 1000)},
		{"scribed on the left", leaning, scribed(thing(place(t, "0", "left", ""), 500, 400, 960), "left"), box(0, 500, -900, -500, 40, 1000)},
		{"a box beside an arch meets the arch", arched, thing(place(t, "1200", "right", ""), 700, 300, 500), box(1200, 1900, 390, 690, 40, 540)},
		{"a box that touches the arch with its end meets it too", arched, thing(place(t, "1200", "right", ""), 501, 300, 500), box(1200, 1701, 390, 690, 40, 540)},
		{"a box above the arch does not", arched, thing(place(t, "1200", "right", "320"), 700, 300, 500), box(1200, 1900, 620, 920, 320, 820)},
		{"a box over the arch is scribed round it", arched, scribed(thing(place(t, "1200", "right", ""), 700, 300, 500), "right"), box(1200, 1900, 620, 920, 40, 540)},
		{"hung below a falling roof it meets it with its outer edge",
			room{crown: 100}, thing(place(t, "0", "0..300", "roof"), 100, 0, 200), box(0, 100, 0, 300, 1500-8.41, 1700-8.41)},
		{"pushed into the corner of a leaning side and a flat roof",
			leaning, thing(place(t, "0", "right", "roof"), 100, 200, 300), box(0, 100, 608, 808, 1400, 1700)},
		{"150 below the roof and against the side", room{lean: 0.1}, thing(place(t, "0", "right", "roof - 150"), 100, 15, 12), box(0, 100, 810, 825, 1538, 1550)},
		{"between both leaning sides it is as wide as the narrowest place", leaning, thing(place(t, "0", "left..right", ""), 500, 0, 960), box(0, 500, -850, 870, 40, 1000)},
		{"its middle goes where it is told whatever the sides do", leaning, thing(place(t, "0", "mid right - 100", ""), 500, 400, 960), box(0, 500, 570, 970, 40, 1000)},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r := work(tt.r, map[string]arrangement.Thing{"it": tt.it})
			near(t, r.Find("it").Box, tt.want, 0.01)
		})
	}
}

func TestAScribedSolidFollowsTheSurfaceFromWithin(t *testing.T) {
	tests := []struct {
		name   string
		r      room
		it     arrangement.Thing
		volume float64 // in litres, by hand
	}{
		{"a box against a flat side is not cut", room{}, scribed(thing(place(t, "0", "right", ""), 500, 400, 960), "right"), 192},
		// 500 long: below 600 (560 high) 400 deep; above it the depth falls by 0.1 a mm for 400: mean 380.
		{"a leaning side takes a wedge off", room{lean: 0.1}, scribed(thing(place(t, "0", "right", ""), 500, 400, 960), "right"), 0.5 * (400*560 + 380*400) / 1000},
		{"30 off it, it stays parallel", room{lean: 0.1}, scribed(thing(place(t, "0", "right - 30", ""), 500, 400, 960), "right"), 0.5 * (400*560 + 380*400) / 1000},
		// 120 off it is cut only within 50 of the side, which comes nearer than that nowhere: 120 less 40 of lean.
		{"well off it, it is a box", room{lean: 0.1}, scribed(thing(place(t, "0", "right - 120", ""), 500, 400, 960), "right"), 192},
		{"well off the left side too", room{lean: 0.1}, scribed(thing(place(t, "0", "left + 120", ""), 500, 400, 960), "left"), 192},
		// The arch stands in to y 690: it takes 200 x 230 x 270.
		{"an arch takes its corner off", room{step: 230}, scribed(thing(place(t, "1200", "right", ""), 700, 300, 500), "right"), 0.7*300*500/1000 - 0.2*230*270/1000},
		{"an arch in the middle leaves both ends", room{step: 230}, scribed(thing(place(t, "1500", "right", ""), 1100, 300, 500), "right"), 1.1*300*500/1000 - 0.7*230*270/1000},
		{"an arch deeper than the thing leaves nothing there", room{step: 400}, scribed(thing(place(t, "1500", "right", ""), 1100, 300, 500), "right"), 1.1*300*500/1000 - 0.7*300*270/1000},
		// Drawing in by 0.02 a mm over 500: mean depth 395.
		{"sides that draw in take a long wedge off", room{fall: 0.02}, scribed(thing(place(t, "0", "left", ""), 500, 400, 960), "left"), 0.5 * 395 * 960 / 1000},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			r := work(tt.r, map[string]arrangement.Thing{"it": tt.it})
			s := r.Find("it")
			if got := s.Solid.Volume() / 1e6; math.Abs(got-tt.volume) > 0.01*tt.volume {
				t.Errorf("volume %.2f l, want %.2f within 1 %%", got, tt.volume)
			}
			sound(t, s.Solid, tt.r)
		})
	}
}

func TestALockerUnderARoofIsScribedToBoth(t *testing.T) {
	r := room{lean: 0.3, crown: 200}
	it := scribed(thing(place(t, "0", "right", "roof"), 1900, 300, 280), "right", "roof")
	result := work(r, map[string]arrangement.Thing{"it": it})
	s := result.Find("it")
	sound(t, s.Solid, r)
	if b := s.Solid.Bounds(); math.Abs(b.MaxZ-s.Box.MaxZ) > 6 {
		t.Errorf("the cut locker ends at %.1f, the box at %.1f", b.MaxZ, s.Box.MaxZ)
	}
	if v, all := s.Solid.Volume(), 1900*300*280.0; v < 0.5*all || v > 0.95*all {
		t.Errorf("volume %.0f of %.0f", v, all)
	}
}

// sound fails when a piece is not convex, or stands out of the room, or two pieces overlap.
func sound(t *testing.T, s solid.Solid, r room) {
	t.Helper()
	for i, p := range s {
		if !p.IsConvex() {
			t.Errorf("piece %d is not convex: %+v", i, p)
		}
		for side, by := range p.Excess(r, 50) {
			if by > 1.01 { // a millimetre at a step
				t.Errorf("piece %d stands %.2f out of side %d: %+v", i, by, side, p)
			}
		}
		for j := range i {
			if w, in := solid.Overlap(p, s[j]); in && w.Depth > 1.51 {
				t.Errorf("pieces %d and %d are %.2f in one another", i, j, w.Depth)
			}
		}
	}
}

// things is a little of everything, for properties.
func things(t testing.TB) map[string]arrangement.Thing {
	bed := scribed(thing(place(t, "front..rear", "right", ""), 0, 640, 60), "right")
	bed.Upon, bed.Make = "settle", "slat-bed"
	bed.Moves = map[string]build.Move{"out": {Slide: build.Direction{Axis: "y", Back: true}, By: &build.Amount{Form: build.Slid, Length: 600}}}
	bed.Positions = map[string]map[string]build.Amount{"made-up": {"out": {}}}
	battery := thing(place(t, "front + 20", "right - 30", ""), 330, 175, 220)
	battery.In = "settle"
	settle := scribed(thing(place(t, "1010..2890", "right", ""), 0, 640, 430), "right")
	settle.Make, settle.Board = "bench", 12
	turned := thing(place(t, "mid 600", "mid -200", "300"), 500, 200, 50)
	turned.Turn = degrees(25)
	return map[string]arrangement.Thing{
		"settle": settle, "bed": bed, "battery": battery, "turned": turned,
		"locker":     scribed(thing(place(t, "1340", "left", ""), 450, 420, 1500), "left"),
		"overlocker": scribed(thing(place(t, "1010", "right", "roof - 5"), 1880, 300, 280), "right", "roof"),
		"behind":     thing(place(t, "locker.rear + 5", "left", "locker.bottom + 700"), 200, 200, 200),
		"strip":      thing(place(t, "1500", "left", "roof - 150"), 600, 15, 12),
	}
}

var nightBed = map[string]build.Mode{"night": {Take: map[string]string{"bed": "made-up"}}}

func TestShiftingTheDatumShiftsEverything(t *testing.T) {
	here, there := room{lean: 0.2, fall: 0.01, step: 200, crown: 80}, room{lean: 0.2, fall: 0.01, step: 200, crown: 80, dx: 500}
	shifted := things(t)
	for id, one := range shifted {
		at := *one.At
		if one.In == "" && one.Upon == "" {
			for _, p := range []*build.Point{&at.X.A, &at.X.B} {
				if p.Face == "" {
					p.Plus += 500
				}
			}
		}
		one.At = &at
		shifted[id] = one
	}
	a := arrangement.Work(arrangement.Inputs{Room: here, Outside: skin{here}, Things: each(things(t)), Modes: nightBed})
	b := arrangement.Work(arrangement.Inputs{Room: there, Outside: skin{there}, Things: each(shifted), Modes: nightBed})
	for m := range a.Modes {
		for i := range a.Modes[m].All {
			near(t, b.Modes[m].All[i].Box, a.Modes[m].All[i].Box.Moved(500, 0, 0), 1e-6)
			if va, vb := a.Modes[m].All[i].Solid.Volume(), b.Modes[m].All[i].Solid.Volume(); math.Abs(va-vb) > 1e-3*va {
				t.Errorf("%s: volume %g, shifted %g", a.Modes[m].All[i].ID, va, vb)
			}
		}
	}
}

func TestAMirroredVanIsTheMirrorOfItself(t *testing.T) {
	here := room{lean: 0.2, fall: 0.01, step: 200, crown: 80}
	there := here
	there.mirror = true
	mirrored := things(t)
	for id, one := range mirrored {
		one.At = &build.Place{X: one.At.X, Y: mirrorRule(one.At.Y), Z: one.At.Z}
		var faces []string
		for _, f := range one.Scribe {
			faces = append(faces, mirrorFace(f))
		}
		one.Scribe = faces
		if one.Turn != nil {
			one.Turn = degrees(-one.Turn.Float())
		}
		if m, ok := one.Moves["out"]; ok {
			m.Slide.Back = !m.Slide.Back
			one.Moves = map[string]build.Move{"out": m}
		}
		mirrored[id] = one
	}
	a := arrangement.Work(arrangement.Inputs{Room: here, Outside: skin{here}, Things: each(things(t)), Modes: nightBed})
	b := arrangement.Work(arrangement.Inputs{Room: there, Outside: skin{there}, Things: each(mirrored), Modes: nightBed})
	for m := range a.Modes {
		for i := range a.Modes[m].All {
			w := a.Modes[m].All[i].Box
			w.MinY, w.MaxY = -w.MaxY, -w.MinY
			near(t, b.Modes[m].All[i].Box, w, 1e-6)
			if va, vb := a.Modes[m].All[i].Solid.Volume(), b.Modes[m].All[i].Solid.Volume(); math.Abs(va-vb) > 1e-3*va {
				t.Errorf("%s: volume %g, mirrored %g", a.Modes[m].All[i].ID, va, vb)
			}
		}
	}
}

func mirrorFace(f string) string {
	switch f {
	case "left":
		return "right"
	case "right":
		return "left"
	}
	return f
}

// mirrorRule of a middle rule or one against a face; low faces become high ones, which these things do not use.
func mirrorRule(r build.AxisRule) build.AxisRule {
	r.A.Face = mirrorFace(r.A.Face)
	r.A.Plus = -r.A.Plus
	return r
}

func BenchmarkWork60(b *testing.B) {
	r := room{lean: 0.2, fall: 0.01, step: 200, crown: 80}
	all := map[string]arrangement.Thing{}
	for i := range 8 {
		for id, one := range things(b) {
			if one.In != "" {
				one.In += string(rune('a' + i))
			}
			if one.Upon != "" {
				one.Upon += string(rune('a' + i))
			}
			if id == "behind" {
				one.At = place(b, "locker"+string(rune('a'+i))+".rear + 5", "left", "900")
			}
			all[id+string(rune('a'+i))] = one
		}
	}
	in := arrangement.Inputs{Room: r, Outside: skin{r}, Things: each(all), Modes: nightBed}
	for b.Loop() {
		arrangement.Work(in)
	}
}

func TestAnEarlierResultChangesNothing(t *testing.T) {
	r := room{lean: 0.2, fall: 0.01, step: 200, crown: 80}
	in := arrangement.Inputs{Room: r, Outside: skin{r}, Things: each(things(t)), Modes: nightBed, RoomKey: "here"}
	first := arrangement.Work(in)
	in.Things["settle"].At = place(t, "1000..2880", "right", "")
	afresh := arrangement.Work(in)
	in.Before = &first
	again := arrangement.Work(in)
	if !reflect.DeepEqual(again, func() arrangement.Result { in.Before = nil; return arrangement.Work(in) }()) {
		t.Error("worked out from the result before, something differs")
	}
	if afresh.Find("bed").Box == first.Find("bed").Box {
		t.Error("the bed did not go with the settle")
	}
	in.Room, in.RoomKey, in.Before = room{}, "elsewhere", &first
	if other := arrangement.Work(in); other.Find("locker").Box == first.Find("locker").Box && len(other.Find("locker").Solid) > 1 {
		t.Error("a result of another room was used")
	}
}

func BenchmarkMoveOne(b *testing.B) {
	r := room{lean: 0.2, fall: 0.01, step: 200, crown: 80}
	in := arrangement.Inputs{Room: r, Outside: skin{r}, Things: each(things(b)), Modes: nightBed, RoomKey: "here"}
	before := arrangement.Work(in)
	in.Before = &before
	n := 0.0
	for b.Loop() {
		n++
		in.Things["turned"].Size[0] = 400 + n/1000
		arrangement.Work(in)
	}
}
