package build_test

import (
	"fmt"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
)

const small = `tumblehome: 1
build: {title: Small, rules: eu, currency: EUR}
vehicle: {wheelbase: 2.7 m, datum: 1520}
shell: {}
fittings:
  box: {make: bench, at: {x: 0, y: right}, size: [1480, 620, 330]}
`

func ExampleDecode() {
	doc, _, err := build.Decode("small.yaml", []byte(small), catalogue.Builtin())
	fmt.Println(err)
	fmt.Print(string(build.WriteYAML(doc)))
	// Output:
	// <nil>
	// tumblehome: 1
	// build: {title: Small, rules: eu, currency: EUR}
	// vehicle: {wheelbase: 2700, datum: 1520}
	// shell: {}
	// fittings:
	//   box: {make: bench, at: {x: 0, y: right}, size: {x: 1480, y: 620, z: 330}}
}

func ExampleApply() {
	doc, _, _ := build.Decode("small.yaml", []byte(small), catalogue.Builtin())
	farther, _ := tree.ParsePatch([]byte(`{"fittings": {"box": {"at": {"x": "rear - 200"}}}}`))
	moved, err := build.Apply(doc, farther, catalogue.Builtin())
	fmt.Println(moved.Fittings["box"].At.X, err)

	wrong, _ := tree.ParsePatch([]byte(`{"fittings": {"box": {"at": {"x": "gally.rear"}}}}`))
	_, err = build.Apply(doc, wrong, catalogue.Builtin())
	fmt.Println(err)
	// Output:
	// rear - 200 <nil>
	// fittings.box.at.x: `gally` is not in fittings; expected box
}
