package build

import (
	"encoding"
	"fmt"
	"reflect"
	"strconv"
	"strings"
	"sync"

	"tumblehome/build/tree"
	"tumblehome/quantity"
)

// A shape is how a Go type stands in a document.
type shape int

const (
	textShape    shape = iota // string
	numberShape               // int, float64
	scalarShape               // a type with a text form of its own
	structShape               // a map of known keys
	mapShape                  // a map of ids
	listShape                 // a list
	pointerShape              // an optional value
	choiceShape               // Choice
	orNoneShape               // OrNone
	spreadShape               // quantity.Spread
	patchShape                // PatchFragment
)

// A plan is all there is to know about reading, writing and describing one Go
// type in its place. Plans are made once and never changed.
type plan struct {
	shape  shape
	typ    reflect.Type
	elem   *plan   // of lists, maps, pointers, choices, spreads
	fields []field // of structs
	at     map[string]int
	rules  rules
	other  bool // the type has another form than a map: see otherForm
	checks bool // the type has a check of its own: see checker
}

// A field is one key of a struct.
type field struct {
	key   string
	index int // in the Go struct
	need  bool
	says  string
	draft bool
	plan  *plan
}

// rules are what the tags of a field say about its values.
type rules struct {
	ref       string
	words     []string
	low, high *float64
	letters   int      // how many a text may have; 0 is not limited
	keys      string   // what the keys of the map are
	reserved  []string // keys that may not be chosen
	axis      string   // of an axis rule
}

// grammared is a scalar that describes itself.
type grammared interface{ Grammar() quantity.Grammar }

// otherForm is a struct that may also be written as something else than a map:
// `at: undecided`, `size: [1, 2, 3]`, `battery.top`.
type otherForm interface {
	readOther(*tree.Node) *quantity.Fault
	writeOther() *tree.Node // nil when it is a map
	otherForm() other
}

// checker is a type with a check of meaning beyond its fields.
type checker interface{ check() *quantity.Fault }

var (
	unmarshaler = reflect.TypeFor[encoding.TextUnmarshaler]()
	speaking    = reflect.TypeFor[interface {
		fmt.Stringer
		grammared
	}]()
	choices  = reflect.TypeFor[interface{ choice() }]()
	orNones  = reflect.TypeFor[interface{ orNone() }]()
	spreads  = reflect.TypeFor[interface{ Variance() float64 }]()
	others   = reflect.TypeFor[otherForm]()
	checkers = reflect.TypeFor[checker]()
	fragment = reflect.TypeFor[PatchFragment]()
)

// documentPlan is the plan of a whole Document.
var documentPlan = sync.OnceValue(func() *plan {
	return (&planner{structs: map[reflect.Type]*plan{}}).plan(reflect.TypeFor[Document](), rules{})
})

// planner makes plans; structs are shared, since one may hold itself.
type planner struct{ structs map[reflect.Type]*plan }

func (pl *planner) plan(t reflect.Type, r rules) *plan {
	p := &plan{typ: t, rules: r}
	inner := r
	inner.keys, inner.reserved = "", nil // these belong to the outermost map
	switch {
	case t.Kind() == reflect.Pointer:
		p.shape, p.elem = pointerShape, pl.plan(t.Elem(), r)
	case t == fragment:
		p.shape = patchShape
	case t.Implements(choices):
		p.shape, p.elem = choiceShape, pl.plan(t.Field(0).Type, inner)
	case t.Implements(orNones):
		p.shape, p.elem = orNoneShape, pl.plan(t.Field(0).Type, inner)
	case t.Implements(spreads):
		p.shape, p.elem = spreadShape, pl.plan(t.Field(0).Type, inner)
	case reflect.PointerTo(t).Implements(unmarshaler):
		if !t.Implements(speaking) {
			panic(fmt.Sprintf("build: a %s has no String or no Grammar", t)) // a mistake in a document type
		}
		p.shape = scalarShape
	case t.Kind() == reflect.Struct:
		return pl.structPlan(t)
	case t.Kind() == reflect.Map:
		p.shape, p.elem = mapShape, pl.plan(t.Elem(), inner)
	case t.Kind() == reflect.Slice:
		p.shape, p.elem = listShape, pl.plan(t.Elem(), inner)
	case t.Kind() == reflect.String:
		p.shape = textShape
	case t.Kind() == reflect.Int || t.Kind() == reflect.Float64:
		p.shape = numberShape
	default:
		panic(fmt.Sprintf("build: no way to read a %s", t)) // a mistake in a document type
	}
	return p
}

// mostFields is how many keys a struct may have: reading ticks them off in 64 bits.
const mostFields = 64

func (pl *planner) structPlan(t reflect.Type) *plan {
	if p, known := pl.structs[t]; known {
		return p
	}
	pointer := reflect.PointerTo(t)
	p := &plan{
		shape: structShape, typ: t, at: map[string]int{},
		other: pointer.Implements(others), checks: pointer.Implements(checkers),
	}
	pl.structs[t] = p
	for i := range t.NumField() {
		sf := t.Field(i)
		tag, ok := sf.Tag.Lookup("doc")
		if !ok {
			continue
		}
		key, option, _ := strings.Cut(tag, ",")
		f := field{key: key, index: i, need: option == "need", says: sf.Tag.Get("says"), draft: sf.Tag.Get("draft") == "yes"}
		f.plan = pl.plan(sf.Type, rulesOf(key, sf.Tag))
		if p.at[key] = len(p.fields); len(p.fields) >= mostFields {
			panic(fmt.Sprintf("build: %s has too many keys", t)) // a mistake in a document type
		}
		p.fields = append(p.fields, f)
	}
	return p
}

func rulesOf(key string, tag reflect.StructTag) rules {
	r := rules{ref: tag.Get("ref"), keys: tag.Get("keys"), reserved: strings.Fields(tag.Get("reserved"))}
	if one := tag.Get("one"); strings.Contains(one, ",") {
		r.words = strings.Split(one, ",")
	} else {
		r.words = strings.Fields(one)
	}
	if low, high, ok := strings.Cut(tag.Get("range"), ".."); ok {
		r.low, r.high = bound(low), bound(high)
	}
	if n, err := strconv.Atoi(tag.Get("letters")); err == nil {
		r.letters = n
	}
	if key == "x" || key == "y" || key == "z" {
		r.axis = key
	}
	return r
}

func bound(text string) *float64 {
	if text == "" {
		return nil
	}
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		panic("build: range " + text) // a mistake in a document type
	}
	return &v
}

func (p *plan) keys() []string {
	keys := make([]string, len(p.fields))
	for i, f := range p.fields {
		keys[i] = f.key
	}
	return keys
}
