package build

import (
	"strconv"

	"tumblehome/build/tree"
	"tumblehome/quantity"
)

// once checks that nothing is counted twice: a battery in two banks, a panel in two sources, a lamp on two circuits.
func (r *reader) once(doc *Document) {
	if doc.Power == nil {
		return
	}
	r.eachOnce("batteries", "is", "each battery once, in one bank")
	r.eachOnce("sources", "is", "each panel or charger once, in one source")
	r.eachOnce("circuits", "loads", "each load once, on one circuit")
	r.noneTwice("sources")
	r.noneTwice("circuits")
}

// noneTwice finds the same way twice in one cable: its metres would be bought and lose voltage twice.
func (r *reader) noneTwice(part string) {
	all := r.root.At(tree.PointerTo("power", part))
	if all == nil {
		return
	}
	for _, e := range all.Entries {
		list := e.Value.Get("along")
		if list == nil {
			continue
		}
		seen := map[string]bool{}
		for i, item := range list.Items {
			if seen[item.Text] {
				r.about(References, &quantity.Fault{Wrong: "`" + clip(item.Text) + "` stands here twice", Expected: "each way once"}, "power", part, e.Key, "along", strconv.Itoa(i))
			}
			seen[item.Text] = true
		}
	}
}

// eachOnce goes through the lists of a part of power as they are written.
func (r *reader) eachOnce(part, key, expected string) {
	all := r.root.At(tree.PointerTo("power", part))
	if all == nil {
		return
	}
	first := map[string]string{}
	for _, e := range all.Entries {
		list := e.Value.Get(key)
		if list == nil {
			continue
		}
		for i, item := range list.Items {
			if in, known := first[item.Text]; known {
				r.about(References, &quantity.Fault{Wrong: "`" + clip(item.Text) + "` is already in power." + part + "." + in, Expected: expected},
					"power", part, e.Key, key, strconv.Itoa(i))
				continue
			}
			first[item.Text] = e.Key
		}
	}
}
