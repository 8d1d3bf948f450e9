package build_test

import (
	"fmt"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
)

// A patch is read alone, but what it makes of the document is held to the same bounds: else a preview could ask for gigabytes.
func TestAPatchCanNotMakeMoreFittingsThanAnyVanHolds(t *testing.T) {
	for count, wrong := range map[int]string{60: "", 5000: "more than 5000 entries"} { // over the sixty that are there
		more := &tree.Node{Kind: tree.Map}
		box := parse(t, "{make: carcass, at: {x: 300, y: right, z: 40}, size: {x: 300, y: 400, z: 500}, of: ply-poplar-12}")
		for i := range count {
			more.Entries = append(more.Entries, tree.Entry{Key: fmt.Sprintf("more-%d", i), Value: box})
		}
		_, err := build.DecodeTree(tree.Merge(sixty(t), tree.Setting("/fittings", more)), catalogue.Builtin())
		if wrong == "" && err != nil || wrong != "" && (err == nil || !strings.Contains(err.Error(), wrong)) {
			t.Errorf("%d more fittings: %.200v, want %q", count, err, wrong)
		}
	}
}
