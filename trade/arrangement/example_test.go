package arrangement_test

import (
	"fmt"

	"tumblehome/build"
	"tumblehome/quantity"
	"tumblehome/trade/arrangement"
)

// A galley stands against the right side, a tap stands on it; at night the galley is slid rearwards and takes the tap along.
func ExampleWork() {
	at := func(x, y string) *build.Place {
		var p build.Place
		p.X, _ = build.ParseAxisRule(x)
		p.Y, _ = build.ParseAxisRule(y)
		return &p
	}
	galley := arrangement.Thing{Size: [3]float64{950, 450, 880}, Fitting: build.Fitting{
		At:        at("40", "right"),
		Moves:     map[string]build.Move{"aft": {Slide: build.Direction{Axis: "x"}, By: &build.Amount{Form: build.Slid, Length: quantity.Length(200)}}},
		Positions: map[string]map[string]build.Amount{"back": {"aft": {}}},
	}}
	tap := arrangement.Thing{Size: [3]float64{50, 60, 220}, Fitting: build.Fitting{Upon: "galley", At: at("front + 240", "right - 20")}}
	result := arrangement.Work(arrangement.Inputs{
		Room: room{}, Outside: skin{room{}}, Things: map[string]*arrangement.Thing{"galley": &galley, "tap": &tap},
		Modes: map[string]build.Mode{"night": {Take: map[string]string{"galley": "back"}}},
	})
	rest, night := result.Find("tap").Box, result.Mode("night").Find("tap").Box
	fmt.Println("at rest", rest.MinX, rest.MaxY, rest.MinZ)
	fmt.Println("at night", night.MinX, night.MaxY, night.MinZ)
	// Output:
	// at rest 280 900 920
	// at night 480 900 920
}

func ExampleDrag() {
	var p build.Place
	p.Y, _ = build.ParseAxisRule("right")
	after := arrangement.Drag(build.Fitting{At: &p}, arrangement.Box{}, 0, -30, 0)
	fmt.Println(after.Y)
	// Output: right - 30
}
