package web

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"

	"tumblehome/build/tree"
)

// wayCorner is a corner of a way, ready to be changed.
type wayCorner struct {
	Number  string
	Entries []entry // x, y, z; or the one face that it lies on
	Between string  // the patch that puts a corner between this and the next; none after the last
	Without string  // the patch that takes it out; none where two are left
}

// wayCorners are the corners of a way in their order.
func wayCorners(v view, id string) []wayCorner {
	at := tree.PointerTo("runs", id, "points")
	list := v.Node.At(at)
	if list == nil {
		return nil
	}
	var out []wayCorner
	for i, item := range list.Items {
		path := string(at) + "/" + count(i)
		c := wayCorner{Number: count(i + 1)}
		if item.Kind == tree.Map {
			for _, axis := range [...][2]string{{"x", "along the van"}, {"y", "across"}, {"z", "height"}} {
				c.Entries = append(c.Entries, quietly(path+"/"+axis[0], axis[1]+" of corner "+c.Number))
			}
		} else {
			c.Entries = []entry{quietly(path, "face at which corner "+c.Number+" lies")}
		}
		if len(list.Items) > 2 {
			c.Without = pointsPatch(id, slices.Delete(slices.Clone(list.Items), i, i+1))
		}
		if i+1 < len(list.Items) {
			if mid := between(v, id, i); mid != nil {
				c.Between = pointsPatch(id, slices.Insert(slices.Clone(list.Items), i+1, mid))
			}
		}
		out = append(out, c)
	}
	return out
}

func pointsPatch(id string, items []*tree.Node) string {
	return patchText(map[string]any{"runs": map[string]any{id: map[string]any{"points": json.RawMessage(tree.JSON(&tree.Node{Kind: tree.List, Items: items}))}}})
}

// between is a corner half-way to the next, which keeps the words that both say.
func between(v view, id string, i int) *tree.Node {
	l := v.Runs.Way(id)
	if l == nil || len(l.At) <= i+1 {
		return nil
	}
	points := v.Node.At(tree.PointerTo("runs", id, "points")).Items
	var out *tree.Node
	for axis, name := range [...]string{"x", "y", "z"} {
		text := fmt.Sprintf("%.0f", math.Round((l.At[i][axis]+l.At[i+1][axis])/2))
		step := tree.PointerTo(name)
		if a, b := points[i].At(step), points[i+1].At(step); a != nil && b != nil && tree.Equal(a, b) {
			text = a.Text
		}
		out = set(out, []string{name}, text)
	}
	return out
}
