package sheet_test

import (
	"fmt"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/draw"
	"tumblehome/draw/sheet"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

// A build of which little is known is drawn in a typical body.
func ExampleArrangement() {
	doc, _, err := build.Decode("siskin.yaml", []byte(`
tumblehome: 1
build: {title: Siskin, rules: gb, currency: GBP}
use: {climate: gb-highland}
vehicle: {wheelbase: 3000, datum: 1200}
shell: {quick: {body: mid-mid, length: 2600}}
fittings:
  chest: {make: bench, at: {x: 200, y: right}, size: {x: 1200, y: 450, z: 430}}
`), catalogue.Builtin())
	if err != nil {
		fmt.Println(err)
		return
	}
	r := reckon.NewMachine().Reckon(doc, quantity.Date{})
	drawing := sheet.Arrangement(r, sheet.View{Mode: "day", Size: draw.A3})
	fmt.Println(drawing.Title, drawing.Size)
	fmt.Println(len(drawing.Check()), "flaws")
	// Output:
	// The drawing of Siskin, day {420 297}
	// 0 flaws
}
