package build

import (
	"bytes"
	"encoding/json"
	"fmt"
	"reflect"
	"slices"
	"strconv"

	"tumblehome/build/tree"
)

// Encode is the document as a tree in its one canonical form: sections and keys
// in the order of the types, ids sorted, what is left out not written.
func Encode(doc *Document) *tree.Node {
	return write(documentPlan(), reflect.ValueOf(doc).Elem())
}

// WriteYAML is the document as canonical YAML: equal documents are equal bytes.
func WriteYAML(doc *Document) []byte { return tree.Write(Encode(doc)) }

// WriteJSON is the document as canonical JSON, indented.
func WriteJSON(doc *Document) []byte {
	var b bytes.Buffer
	_ = json.Indent(&b, tree.JSON(Encode(doc)), "", "  ") // what JSON wrote is valid
	b.WriteByte('\n')
	return b.Bytes()
}

// write is a value as a tree.
func write(p *plan, v reflect.Value) *tree.Node {
	switch p.shape {
	case textShape:
		return tree.Text(v.String())
	case numberShape:
		return tree.Plain(writeNumber(v))
	case structShape:
		return writeStruct(p, v)
	case mapShape:
		return writeMap(p, v)
	case listShape:
		list := &tree.Node{Kind: tree.List, Items: make([]*tree.Node, v.Len())}
		for i := range v.Len() {
			list.Items[i] = write(p.elem, v.Index(i))
		}
		return list
	case pointerShape:
		return write(p.elem, v.Elem())
	case choiceShape:
		return writeChoice(p, v)
	case orNoneShape:
		return writeOrNone(p, v)
	case spreadShape:
		return writeSpread(v)
	case patchShape:
		return v.Interface().(PatchFragment).Node
	}
	return tree.Plain(marshal(v))
}

// marshal is the canonical text of a quantity.
func marshal(v reflect.Value) string {
	return addressable(v).Addr().Interface().(fmt.Stringer).String()
}

func writeNumber(v reflect.Value) string {
	if v.Kind() == reflect.Int {
		return strconv.FormatInt(v.Int(), 10)
	}
	return strconv.FormatFloat(v.Float(), 'f', -1, 64)
}

func writeStruct(p *plan, v reflect.Value) *tree.Node {
	if p.other {
		if n := addressable(v).Addr().Interface().(otherForm).writeOther(); n != nil {
			return n
		}
	}
	given := 0
	for i := range p.fields {
		if f := &p.fields[i]; f.need || !empty(v.Field(f.index)) {
			given++
		}
	}
	out := &tree.Node{Kind: tree.Map, Entries: make([]tree.Entry, 0, given)}
	for i := range p.fields {
		f := &p.fields[i]
		if value := v.Field(f.index); f.need || !empty(value) {
			out.Entries = append(out.Entries, tree.Entry{Key: f.key, Value: write(f.plan, value)})
		}
	}
	return out
}

// empty tells whether a value was left out.
func empty(v reflect.Value) bool {
	if k := v.Kind(); k == reflect.Map || k == reflect.Slice {
		return v.Len() == 0
	}
	return v.IsZero()
}

// addressable is v, or a copy of it that has an address.
func addressable(v reflect.Value) reflect.Value {
	if v.CanAddr() {
		return v
	}
	to := reflect.New(v.Type()).Elem()
	to.Set(v)
	return to
}

func writeMap(p *plan, v reflect.Value) *tree.Node {
	out := &tree.Node{Kind: tree.Map, Entries: make([]tree.Entry, 0, v.Len())}
	value := reflect.New(p.elem.typ).Elem()
	for it := v.MapRange(); it.Next(); {
		value.SetIterValue(it)
		out.Entries = append(out.Entries, tree.Entry{Key: it.Key().String(), Value: write(p.elem, value)})
	}
	slices.SortFunc(out.Entries, byID)
	return out
}

func byID(a, b tree.Entry) int { return tree.Compare(a.Key, b.Key) }

func writeChoice(p *plan, v reflect.Value) *tree.Node {
	among := v.Field(2)
	switch {
	case !v.Field(1).Bool():
		return write(p.elem, v.Field(0))
	case among.Len() == 0:
		return tree.Plain(undecided)
	}
	list := &tree.Node{Kind: tree.List}
	for i := range among.Len() {
		list.Items = append(list.Items, write(p.elem, among.Index(i)))
	}
	return tree.MapOf(tree.Entry{Key: undecided, Value: list})
}

func writeOrNone(p *plan, v reflect.Value) *tree.Node {
	switch {
	case v.Field(1).Bool():
		return tree.Plain(none)
	case v.Field(2).Bool():
		return tree.Plain(undecided)
	}
	return write(p.elem, v.Field(0))
}

// arrange is a tree with its keys in canonical order, its values as they are.
func arrange(p *plan, n *tree.Node) *tree.Node {
	for p.shape == pointerShape || p.shape == choiceShape || p.shape == orNoneShape {
		p = p.elem
	}
	out := &tree.Node{Kind: n.Kind, Text: n.Text, Quoted: n.Quoted}
	for _, item := range n.Items {
		inner := p
		if p.shape == listShape {
			inner = p.elem
		}
		out.Items = append(out.Items, arrange(inner, item))
	}
	for _, e := range n.Entries {
		out.Entries = append(out.Entries, tree.Entry{Key: e.Key, Value: arrange(p.under(e.Key), e.Value)})
	}
	slices.SortStableFunc(out.Entries, func(a, b tree.Entry) int {
		if i, j := p.rank(a.Key), p.rank(b.Key); i != j {
			return i - j
		}
		return byID(a, b)
	})
	return out
}

// under is the plan of what a key holds, or p itself where the plan has none.
func (p *plan) under(key string) *plan {
	switch p.shape {
	case structShape:
		if i, ok := p.at[key]; ok {
			return p.fields[i].plan
		}
	case mapShape:
		return p.elem
	}
	return p
}

// rank is the place of a key among those of a struct; other keys go last.
func (p *plan) rank(key string) int {
	if i, ok := p.at[key]; ok && p.shape == structShape {
		return i
	}
	return len(p.fields)
}
