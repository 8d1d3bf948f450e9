package build

import (
	"slices"
	"strings"

	"tumblehome/build/tree"
	"tumblehome/catalogue/settings"
	"tumblehome/quantity"
)

// collectionPath is where a collection stands: most are sections of their own.
func collectionPath(name string) string {
	if name == "openings" {
		return "shell.openings"
	}
	return name
}

// collectionIn is a collection of the document, or nil.
func collectionIn(root *tree.Node, path string) *tree.Node {
	for more := true; more; {
		var step string
		step, path, more = strings.Cut(path, ".")
		root = root.Get(step)
	}
	return root
}

// refer checks that the text of n leads to what a field refers to. In part of a
// document it may lead elsewhere.
func (r *reader) refer(to string, n *tree.Node) bool {
	switch to {
	case "row":
		return r.rows.HasRow(n.Text) || r.noRow("row", n)
	case "material":
		_, known := r.rows.Material(n.Text)
		return known || r.noRow("material", n)
	case "setting":
		return r.setting(n)
	case "path":
		return r.leads(n)
	}
	return r.inCollection(to, n.Text, n)
}

func (r *reader) noRow(what string, n *tree.Node) bool {
	if r.part { // the part may bring the row
		return true
	}
	r.fault(References, n, &quantity.Fault{Wrong: "`" + clip(n.Text) + "` is no " + what + " of the catalogue"})
	if last := len(r.faults[References]) - 1; len(r.faults[References]) < mostFaults {
		near := r.rows.Near(n.Text)
		r.faults[References][last].Near = near[:min(3, len(near))]
	}
	return false
}

func (r *reader) setting(n *tree.Node) bool {
	if _, known := settings.Get(n.Text); known {
		return true
	}
	ids := settings.IDs()
	f := &quantity.Fault{Wrong: "`" + clip(n.Text) + "` is nothing that can be made here", Near: quantity.Near(n.Text, ids)}
	if f.Near == "" {
		f.Expected = quantity.OrList(ids)
	}
	r.fault(References, n, f)
	return false
}

// leads checks a dotted path from the top.
func (r *reader) leads(n *tree.Node) bool {
	if r.part {
		return true
	}
	for _, gone := range r.removed {
		if gone.Holds(tree.Dotted(n.Text)) {
			return true
		}
	}
	steps := strings.Split(n.Text, ".")
	if slices.Contains(r.meant, steps[0]) {
		return true
	}
	at := r.root
	for i, step := range steps {
		next := at.At(tree.PointerTo(step))
		if next != nil {
			at = next
			continue
		}
		f := &quantity.Fault{Wrong: "`" + n.Text + "` leads nowhere: there is no `" + clip(step) + "`"}
		if i > 0 {
			f.Wrong += " in " + strings.Join(steps[:i], ".")
		}
		if near := quantity.Near(step, at.Keys()); near != "" {
			f.Near = strings.Join(append(append([]string(nil), steps[:i]...), append([]string{near}, steps[i+1:]...)...), ".")
		}
		r.fault(References, n, f)
		return false
	}
	return true
}

// inCollection checks that an id stands in a collection.
func (r *reader) inCollection(name, id string, n *tree.Node) bool {
	if r.part {
		return true
	}
	path := collectionPath(name)
	if section, _, _ := strings.Cut(path, "."); slices.Contains(r.meant, section) {
		return true
	}
	there := collectionIn(r.root, path)
	if there.Get(id) != nil {
		return true
	}
	r.fault(References, n, notIn(path, id, there))
	return false
}

func notIn(path, id string, there *tree.Node) *quantity.Fault {
	f := &quantity.Fault{Wrong: "`" + clip(id) + "` is not in " + path}
	if there != nil && there.Kind == tree.Map {
		keys := there.Keys()
		if f.Near = quantity.Near(id, keys); f.Near == "" && len(keys) <= 8 {
			f.Expected = quantity.OrList(keys)
		}
	}
	return f
}
