package quantity_test

import (
	"fmt"

	"tumblehome/quantity"
)

func ExampleParseLength() {
	wide, _ := quantity.ParseLength("7 ft 2 in")
	fmt.Println(wide, "mm")
	_, err := quantity.ParseLength("3,35 m")
	fmt.Println(err)
	// Output:
	// 2184.4 mm
	// `3,35 m` has a comma; the decimal mark is a point; expected a length such as `3350`, `3.35 m` or `7 ft 2 in`; did you mean `3.35 m`?
}

func ExampleParseSpread() {
	mass, _ := quantity.ParseSpread[quantity.Mass]("12 ± 25 %")
	fmt.Println("between", mass.Low, "and", mass.High, "kg, written", mass)
	// Output: between 9 and 15 kg, written 12 ± 3
}
