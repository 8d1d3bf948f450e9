package tree_test

import (
	"fmt"

	"tumblehome/build/tree"
)

func ExampleMerge() {
	source, _ := tree.Parse("van.yaml", []byte("bed: {mass: 12 ± 3, at: {x: front}}\ngas: none\n"))
	patch, _ := tree.ParsePatch([]byte(`{"bed": {"mass": 14}, "gas": null}`))
	fmt.Print(string(tree.Write(tree.Merge(source.Root, patch))))
	fmt.Println(string(tree.Inverse(source.Root, patch).JSON()))
	// Output:
	// bed: {mass: 14, at: {x: front}}
	// {"bed":{"mass":"12 ± 3"},"gas":"none"}
}

func ExampleParse() {
	_, err := tree.Parse("van.yaml", []byte("mass: 12\nat: {x: 1}\nmass: ~\n"))
	fmt.Println(err)
	// Output:
	// van.yaml:3:1: `mass` stands here for the second time, first in line 1; keep one
	// van.yaml:3:7: `~` says nothing; leave the line out, or write `none` or `undecided`
}
