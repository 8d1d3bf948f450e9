package build

import (
	"reflect"
	"strconv"

	"tumblehome/build/tree"
	"tumblehome/quantity"
)

// choice reads a value, `undecided`, or `{undecided: [first, second]}`.
func (r *reader) choice(p *plan, n *tree.Node, v reflect.Value) bool {
	value, open, among := v.Field(0), v.Field(1), v.Field(2)
	if n.Kind == tree.Scalar && n.Text == undecided {
		open.SetBool(true)
		return true
	}
	if n.Kind != tree.Map || len(n.Entries) != 1 || n.Entries[0].Key != undecided {
		return r.read(p.elem, n, value)
	}
	open.SetBool(true)
	r.path = append(r.path, undecided)
	defer func() { r.path = r.path[:len(r.path)-1] }()
	list := n.Entries[0].Value
	if list.Kind != tree.List || len(list.Items) == 0 {
		r.fault(Values, list, &quantity.Fault{Wrong: shown(list) + " is no choice", Expected: "a list of the choices, the one to assume first"})
		return false
	}
	all, ok := reflect.MakeSlice(among.Type(), len(list.Items), len(list.Items)), true
	for i, item := range list.Items {
		ok = r.enter(strconv.Itoa(i), p.elem, item, all.Index(i)) && ok
	}
	among.Set(all)
	value.Set(all.Index(0))
	return ok
}

// orNone reads a value, `none` or `undecided`.
func (r *reader) orNone(p *plan, n *tree.Node, v reflect.Value) bool {
	switch {
	case n.Kind == tree.Scalar && n.Text == none:
		v.Field(1).SetBool(true)
		return true
	case n.Kind == tree.Scalar && n.Text == undecided:
		v.Field(2).SetBool(true)
		return true
	case n.Kind == tree.Scalar && p.elem.shape == structShape:
		r.fault(Values, n, &quantity.Fault{Wrong: shown(n) + " is not known here", Expected: "none, undecided or what there is", Near: quantity.Near(n.Text, []string{none, undecided})})
		return false
	}
	return r.read(p.elem, n, v.Field(0))
}

// spread reads `{likely, low, high}` or `{exactly}`.
func (r *reader) spread(p *plan, n *tree.Node, v reflect.Value) bool {
	likely, low, high, form := v.Field(0), v.Field(1), v.Field(2), v.Field(3)
	into := map[string]reflect.Value{"likely": likely, "low": low, "high": high, "exactly": likely}
	ok := true
	for i := range n.Entries {
		e := &n.Entries[i]
		to, known := into[e.Key]
		if !known {
			r.faultAt(Keys, e.Line, e.Column, &quantity.Fault{
				Wrong: "unknown key `" + clip(e.Key) + "`", Expected: "likely, low and high, or exactly",
				Near: quantity.Near(e.Key, []string{"likely", "low", "high", "exactly"}),
			})
			return false
		}
		ok = r.enter(e.Key, p.elem, e.Value, to) && ok
	}
	exactly := n.Get("exactly") != nil
	if !ok || !exactly && len(n.Entries) == 3 {
		form.SetInt(int64(quantity.Three))
		return ok && r.rising(n, v)
	}
	if !exactly || len(n.Entries) > 1 {
		r.fault(Keys, n, &quantity.Fault{Wrong: "a guess has three values, or one that is exact", Expected: "{likely, low, high} or {exactly}"})
		return false
	}
	form.SetInt(int64(quantity.Exact))
	low.Set(likely)
	high.Set(likely)
	return r.meaning(p, n, v)
}

// rising checks that the three values of a guess are alike and stand in order.
func (r *reader) rising(n *tree.Node, v reflect.Value) bool {
	if s, ok := v.Addr().Interface().(*quantity.Spread[quantity.Money]); ok && (s.Low.Currency != s.Likely.Currency || s.High.Currency != s.Likely.Currency) {
		r.fault(Meaning, n, &quantity.Fault{Wrong: "the three amounts are not of one currency", Expected: "the same currency three times"})
		return false
	}
	a, _ := number(v.Field(1))
	b, _ := number(v.Field(0))
	c, _ := number(v.Field(2))
	if a <= b && b <= c {
		return true
	}
	r.fault(Meaning, n, &quantity.Fault{Wrong: "low, likely and high do not rise", Expected: "the least, the most probable, the most"})
	return false
}

// fragment reads part of a document: its keys and values are checked as far as
// the part goes, and kept as they are, in the document's order.
func (r *reader) fragment(n *tree.Node, v reflect.Value) bool {
	part := &reader{file: r.file, root: r.root, rows: r.rows, part: true, path: r.path}
	whole := reflect.New(documentPlan().typ).Elem()
	ok := part.read(documentPlan(), n, whole)
	for kind, faults := range part.faults {
		room := mostFaults - len(r.faults[kind])
		r.faults[kind] = append(r.faults[kind], faults[:min(room, len(faults))]...)
	}
	v.Set(reflect.ValueOf(PatchFragment{Node: arrange(documentPlan(), n)}))
	return ok
}
