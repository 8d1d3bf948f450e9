package fit

import (
	"reflect"
	"testing"

	"tumblehome/solve/solid"
)

// hall has upright sides and a flat roof.
type hall struct{}

func (hall) Left(x, z float64) float64  { return -900 }
func (hall) Right(x, z float64) float64 { return 900 }
func (hall) Roof(x, y float64) float64  { return 1900 }
func (hall) Floor() float64             { return 40 }
func (hall) Front() float64             { return 0 }
func (hall) Rear() float64              { return 2900 }

// An attempt is judged with what is remembered of the van before it; judged afresh it is the same, wherever the thing goes.
func TestAnAttemptIsJudgedAsAfresh(t *testing.T) {
	in := Inputs{Room: hall{}, People: []Person{{ID: "ada", Stature: 1700}}, Openings: []Opening{
		{ID: "side", Through: "left", X: [2]float64{100, 700}, Z: [2]float64{40, 1400}, Door: true, WayOut: true, Made: true},
		{ID: "rear", Through: "rear", Y: [2]float64{-600, 600}, Z: [2]float64{40, 1500}, Door: true, WayOut: true, Made: true},
	}}
	day := Mode{Name: "day", Poses: []Pose{{Person: "ada", Does: "sits", At: "bench"}, {Person: "ada", Does: "cooks", At: "chest"}, {Person: "ada", Does: "lies", At: "bed"}}}
	for id, b := range map[string]solid.Bounds{
		"bed": {MinX: 1900, MaxX: 2890, MinY: -890, MaxY: 890, MinZ: 40, MaxZ: 450}, "bench": {MinX: 800, MaxX: 1800, MinY: 400, MaxY: 890, MinZ: 40, MaxZ: 450},
		"chest": {MinX: 900, MaxX: 1300, MinY: -250, MaxY: 150, MinZ: 40, MaxZ: 850}, "shelf": {MinX: 800, MaxX: 1800, MinY: 600, MaxY: 890, MinZ: 1200, MaxZ: 1500},
		"lockers": {MinX: 1900, MaxX: 2890, MinY: -890, MaxY: 890, MinZ: 1000, MaxZ: 1400},
	} {
		in.Fittings = append(in.Fittings, Fitting{ID: id, Rests: id == "bed" || id == "bench"})
		day.Standings = append(day.Standings, Standing{Solid: solid.Solid{solid.Box(b)}, Box: b})
	}
	in.Modes = []Mode{day}
	for name, judge := range map[string]func(*worker){
		"seats": (*worker).seats, "heads": (*worker).heads, "beds": (*worker).beds, "walkway": (*worker).walkway, "ways": (*worker).ways, "suits": (*worker).suits, "barred": (*worker).barred,
	} {
		before := newWorker(in)
		judge(before)
		for thing := range in.Fittings {
			for _, by := range [][3]float64{{150, 0, 0}, {-400, 0, 0}, {0, 300, 0}, {0, -500, 0}, {0, 0, -200}, {0, 0, 200}} {
				after := before.after(attempt{thing: thing, by: by})
				afresh := newWorker(after.in)
				judge(after)
				judge(afresh)
				a, b := after.result, afresh.result
				if !reflect.DeepEqual(a.Findings, b.Findings) || !reflect.DeepEqual(a.Figures, b.Figures) || !reflect.DeepEqual(a.workings, b.workings) || !reflect.DeepEqual(a.Suits, b.Suits) || !reflect.DeepEqual(a.Ways, b.Ways) {
					t.Errorf("%s with %s moved by %v: remembered\n%+v\nafresh\n%+v", name, in.Fittings[thing].ID, by, a.Figures, b.Figures)
				}
			}
		}
	}
}
