package store

import (
	"reflect"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/build/tree"
)

// touched are the places a patch touches in the document it was made against. A thing that the patch brings in under a new id is
// touched as a whole: else two people who each add a fitting under the same id would find the two mixed into one.
func touched(base *tree.Node, p tree.Patch) []tree.Pointer {
	places := p.Touches()
	for i, place := range places {
		places[i] = newThing(base, place)
	}
	return places
}

// newThing is the first place on the way to p that is an id which base does not have, else p.
func newThing(base *tree.Node, p tree.Pointer) tree.Pointer {
	at, node, t := tree.Pointer(""), base, reflect.TypeFor[build.Document]()
	for _, step := range p.Steps() {
		t = bare(t)
		if t == nil {
			break
		}
		at, node = at.Then(step), node.Get(step)
		if t.Kind() == reflect.Map && node == nil {
			return at
		}
		t = under(t, step)
	}
	return p
}

// bare takes a document's type out of what says that it may be left out or undecided.
func bare(t reflect.Type) reflect.Type {
	for t != nil {
		value := reflect.StructField{}
		wrapped := false
		if t.Kind() == reflect.Struct {
			value, wrapped = t.FieldByName("Value")
			_, documented := value.Tag.Lookup("doc")
			wrapped = wrapped && !documented
		}
		switch {
		case t.Kind() == reflect.Pointer:
			t = t.Elem()
		case wrapped:
			t = value.Type
		default:
			return t
		}
	}
	return nil
}

// under is the type of what stands under a key, or nil where no document says.
func under(t reflect.Type, key string) reflect.Type {
	switch t.Kind() {
	case reflect.Map:
		return t.Elem()
	case reflect.Struct:
		for i := range t.NumField() {
			if name, _, _ := strings.Cut(t.Field(i).Tag.Get("doc"), ","); name == key {
				return t.Field(i).Type
			}
		}
	}
	return nil
}

// clashes are the places where both patches, made against the same document, want something else than what now stands there.
func clashes(base, head *tree.Node, mine, theirs tree.Patch) []Clash {
	wanted, others := tree.Merge(head, mine), touched(base, theirs)
	var out []Clash
	seen := map[tree.Pointer]bool{}
	for _, p := range touched(base, mine) {
		if tree.Equal(wanted.At(p), head.At(p)) || !meets(p, others) {
			continue // it is as wanted, or nobody else's
		}
		if p = valueAbove(head, p); !seen[p] {
			seen[p] = true
			out = append(out, Clash{Pointer: p, Mine: textAt(wanted, p), Theirs: textAt(head, p)})
		}
	}
	return out
}

func meets(p tree.Pointer, others []tree.Pointer) bool {
	return slices.ContainsFunc(others, func(q tree.Pointer) bool { return p.Holds(q) || q.Holds(p) })
}

// valueAbove is p, or the place above it that now holds a single value, so that the value is shown and not the lack of its parts.
func valueAbove(head *tree.Node, p tree.Pointer) tree.Pointer {
	at := tree.Pointer("")
	for _, step := range p.Steps() {
		if found := head.At(at); found != nil && found.Kind != tree.Map {
			return at
		}
		at = at.Then(step)
	}
	return p
}

func textAt(n *tree.Node, p tree.Pointer) string {
	found := n.At(p)
	switch {
	case found == nil:
		return ""
	case found.Kind == tree.Scalar:
		return found.Text
	}
	return string(tree.JSON(found))
}
