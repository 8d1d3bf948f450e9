package build

import (
	"reflect"
	"strconv"
	"strings"

	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/quantity"
)

// reader reads a tree into Go values by their plans and gathers all faults.
type reader struct {
	file    string
	root    *tree.Node           // the whole document, to which references lead
	rows    *catalogue.Catalogue // with the document's own rows
	part    bool                 // only a part is read: needed keys and references may be elsewhere
	removed []tree.Pointer       // places that paths may still name
	meant   []string             // sections that are missing because their key is misspelt
	path    []string
	faults  [Meaning + 1][]Fault
}

// fault notes that something is wrong at a node.
func (r *reader) fault(kind FaultKind, n *tree.Node, f *quantity.Fault) {
	r.faultAt(kind, n.Line, n.Column, f)
}

func (r *reader) faultAt(kind FaultKind, line, column int, f *quantity.Fault) {
	if len(r.faults[kind]) >= mostFaults {
		return
	}
	expected := f.Expected
	if len(f.Examples) > 0 {
		expected += " such as " + ticked(f.Examples)
	}
	out := Fault{Kind: kind, File: r.file, Line: line, Column: column, Path: strings.Join(r.path, "."), Wrong: f.Wrong, Expected: expected}
	if f.Near != "" {
		out.Near = []string{f.Near}
	}
	r.faults[kind] = append(r.faults[kind], out)
}

// enter reads the value of a key with the path one step longer.
func (r *reader) enter(step string, p *plan, n *tree.Node, v reflect.Value) bool {
	r.path = append(r.path, step)
	ok := r.read(p, n, v)
	r.path = r.path[:len(r.path)-1]
	return ok
}

// read reads n into v and tells whether it could.
func (r *reader) read(p *plan, n *tree.Node, v reflect.Value) bool {
	switch p.shape {
	case structShape:
		return r.structure(p, n, v)
	case mapShape:
		return r.collection(p, n, v)
	case listShape:
		return r.list(p, n, v)
	case pointerShape:
		to := reflect.New(p.elem.typ)
		if !r.read(p.elem, n, to.Elem()) {
			return false
		}
		v.Set(to)
		return true
	case choiceShape:
		return r.choice(p, n, v)
	case orNoneShape:
		return r.orNone(p, n, v)
	case patchShape:
		return r.fragment(n, v)
	case spreadShape:
		if n.Kind == tree.Map {
			return r.spread(p, n, v)
		}
	}
	return r.scalar(p, n, v)
}

// structure reads a map of known keys.
func (r *reader) structure(p *plan, n *tree.Node, v reflect.Value) bool {
	if n.Kind != tree.Map {
		return r.notAMap(p, n, v)
	}
	ok, seen := true, uint64(0)
	for i := range n.Entries {
		e := &n.Entries[i]
		at, known := p.at[e.Key]
		if !known {
			r.unknownKey(p, e)
			ok = false
			continue
		}
		seen |= 1 << at
		f := &p.fields[at]
		ok = r.enter(e.Key, f.plan, e.Value, v.Field(f.index)) && ok
	}
	for i := range p.fields {
		if p.fields[i].need && seen&(1<<i) == 0 && !r.part {
			r.fault(Keys, n, &quantity.Fault{Wrong: "`" + p.fields[i].key + "` is missing", Expected: p.fields[i].says})
			ok = false
		}
	}
	if ok && p.checks && !r.part {
		if f := v.Addr().Interface().(checker).check(); f != nil {
			r.fault(Meaning, n, f)
			return false
		}
	}
	return ok
}

// notAMap reads the other form of a struct, if it has one.
func (r *reader) notAMap(p *plan, n *tree.Node, v reflect.Value) bool {
	if !p.other {
		r.fault(Values, n, &quantity.Fault{Wrong: shown(n) + " stands alone", Expected: "{" + strings.Join(firstFew(p.keys()), ", ") + "}"})
		return false
	}
	if f := v.Addr().Interface().(otherForm).readOther(n); f != nil {
		r.fault(Values, n, f)
		return false
	}
	return r.inRangeInOrder(p, n, v) && r.points(n, v)
}

func (r *reader) unknownKey(p *plan, e *tree.Entry) {
	keys := p.keys()
	f := &quantity.Fault{Wrong: "unknown key `" + clip(e.Key) + "`", Near: quantity.Near(e.Key, keys)}
	if f.Near == "" || len(keys) <= 8 {
		f.Expected = quantity.OrList(keys)
	}
	r.faultAt(Keys, e.Line, e.Column, f)
}

// collection reads a map of ids.
func (r *reader) collection(p *plan, n *tree.Node, v reflect.Value) bool {
	if n.Kind != tree.Map {
		r.fault(Values, n, &quantity.Fault{Wrong: shown(n) + " stands alone", Expected: "names with their values, `{name: …}`"})
		return false
	}
	if len(n.Entries) == 0 {
		return true // the same as left out
	}
	out, ok := reflect.MakeMapWithSize(p.typ, len(n.Entries)), true
	for i := range n.Entries {
		e := &n.Entries[i]
		ok = r.key(p.rules, e) && ok
		value := reflect.New(p.elem.typ).Elem()
		if r.enter(e.Key, p.elem, e.Value, value) {
			out.SetMapIndex(reflect.ValueOf(e.Key), value)
		} else {
			ok = false
		}
	}
	v.Set(out)
	return ok
}

// list reads a list.
func (r *reader) list(p *plan, n *tree.Node, v reflect.Value) bool {
	if n.Kind != tree.List {
		f := &quantity.Fault{Wrong: shown(n) + " stands alone", Expected: "a list"}
		if n.Kind == tree.Scalar {
			f.Near = "[" + clip(n.Text) + "]"
		}
		r.fault(Values, n, f)
		return false
	}
	if len(n.Items) == 0 {
		return true // the same as left out
	}
	out, ok := reflect.MakeSlice(p.typ, len(n.Items), len(n.Items)), true
	for i, item := range n.Items {
		ok = r.enter(strconv.Itoa(i), p.elem, item, out.Index(i)) && ok
	}
	v.Set(out)
	return ok
}

// shown is a node in a message.
func shown(n *tree.Node) string {
	switch n.Kind {
	case tree.Map:
		return "a map"
	case tree.List:
		return "a list"
	case tree.Gone:
		return "`null`"
	}
	return "`" + clip(n.Text) + "`"
}

// clip keeps a quoted text short enough for a message.
func clip(s string) string {
	const most = 40
	if r := []rune(s); len(r) > most {
		return string(r[:most]) + "…"
	}
	return s
}

func firstFew(words []string) []string {
	if len(words) > 5 {
		return append(append([]string(nil), words[:4]...), "…")
	}
	return words
}
