package reckon

import (
	"slices"
	"strconv"
	"strings"

	"tumblehome/build/tree"
	"tumblehome/trade/warmth"
)

// layered changes one layer of a lining, or adds one; its list is replaced whole, as lists are.
func (r *Reckoning) layered(remedy warmth.Remedy) (tree.Patch, bool) {
	steps := tree.Pointer(remedy.About).Steps()
	if len(steps) < 3 || steps[0] != "lining" {
		return tree.Patch{}, false
	}
	place := tree.Pointer("/lining/" + steps[1])
	list := r.Written().At(place)
	at, err := strconv.Atoi(steps[2])
	if err != nil || list == nil || at >= len(list.Items) {
		return tree.Patch{}, false
	}
	items, layer := slices.Clone(list.Items), list.Items[at]
	switch remedy.Kind {
	case warmth.Bridge:
		if textOf(layer, "ribs") == "bridged" {
			return tree.Patch{}, false
		}
		items[at] = with(layer, "ribs", "bridged")
	case warmth.More:
		items = more(items, at, steps[3:], remedy.Next)
	case warmth.Glue:
		items = slices.Insert(items, 0, laid("foam-xlpe-"+strconv.Itoa(int(remedy.By)), "free"))
	case warmth.Membrane:
		items = slices.Insert(items, at+1, laid("vcl-membrane-1500x50", ""))
	}
	return tree.Setting(place, tree.ListOf(items...)), true
}

// more is a lining with more of one layer, or of what stands for it in one bay: the next thicker, or the same once more, which stops at the ribs.
func more(items []*tree.Node, at int, inBay []string, next warmth.Thicker) []*tree.Node {
	switch {
	case next.Lay != "":
		items[at] = with(items[at], strings.Join(append(slices.Clone(inBay), "lay"), "/"), next.Lay)
	case len(inBay) > 0:
		items[at] = with(items[at], strings.Join(append(slices.Clone(inBay), "times"), "/"), "2")
	default:
		again := laid(textOf(items[at], "lay"), "free")
		if heights := textOf(items[at], "z"); heights != "" {
			again = with(again, "z", heights)
		}
		items = slices.Insert(items, at+1, again)
	}
	return items
}

func laid(what, ribs string) *tree.Node {
	n := tree.MapOf(tree.Entry{Key: "lay", Value: tree.Plain(what)})
	if ribs != "" {
		n = with(n, "ribs", ribs)
	}
	return n
}

func textOf(n *tree.Node, key string) string {
	if at := n.Get(key); at != nil {
		return at.Text
	}
	return ""
}

// with is a map with one entry set.
func with(n *tree.Node, key, text string) *tree.Node {
	return tree.Merge(n, tree.Setting(tree.Pointer("/"+key), tree.Plain(text)))
}
