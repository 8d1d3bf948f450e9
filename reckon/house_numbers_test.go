package reckon_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"reflect"
	"slices"
	"sync"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

func TestEveryNumberIsANumber(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		check := func(what string, value any) {
			for _, path := range notNumbers(what, reflect.ValueOf(value)) {
				t.Errorf("%s is no number", path)
			}
		}
		check("figures", b.Figures)
		check("findings", b.Findings)
		check("lines", b.Lines)
		check("at rest", b.Places.Rest)
		check("modes", b.Places.Modes)
		for _, w := range workings(b.Reckoning) {
			check(w.Code, w)
		}
	})
}

// notNumbers are the paths of all numbers within a value that are none.
func notNumbers(path string, v reflect.Value) []string {
	var found []string
	switch v.Kind() {
	case reflect.Float64:
		if f := v.Float(); math.IsNaN(f) || math.IsInf(f, 0) {
			return []string{path}
		}
	case reflect.Pointer, reflect.Interface:
		if !v.IsNil() {
			return notNumbers(path, v.Elem())
		}
	case reflect.Struct:
		for i := range v.NumField() {
			found = append(found, notNumbers(path+"."+v.Type().Field(i).Name, v.Field(i))...)
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			found = append(found, notNumbers(fmt.Sprintf("%s[%d]", path, i), v.Index(i))...)
		}
	case reflect.Map:
		for _, k := range v.MapKeys() {
			found = append(found, notNumbers(fmt.Sprintf("%s[%v]", path, k), v.MapIndex(k))...)
		}
	}
	return found
}

func TestTheSameDocumentGivesTheSameBytes(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		shuffled := read(t, backwards(build.Encode(b.doc)))
		if first, second := asBytes(t, b.Reckoning), asBytes(t, reckoned(shuffled)); !bytes.Equal(first, second) {
			t.Errorf("another machine, given the keys in another order, does not agree:\n%s", parting(first, second))
		}
	})
}

func TestAMachineThatHasSeenOtherBuildsAgreesWithANewOne(t *testing.T) {
	machine := quick()
	for range 2 {
		eachDemo(t, func(t *testing.T, b tried) {
			first, second := asBytes(t, b.Reckoning), asBytes(t, machine.Reckon(b.doc, quantity.Date{}))
			if !bytes.Equal(first, second) {
				t.Errorf("what it remembers counts:\n%s", parting(first, second))
			}
		})
	}
}

// Run with -race this holds that what a machine remembers may be asked for by several at once.
func TestAMachineMayBeAskedByManyAtOnce(t *testing.T) {
	all, err := demos()
	if err != nil {
		t.Fatal(err)
	}
	machine := quick()
	var wait sync.WaitGroup
	for range 2 {
		for _, b := range all {
			wait.Go(func() {
				if got := machine.Reckon(b.doc, quantity.Date{}); len(got.Figures) != len(b.Figures) || len(got.Findings) != len(b.Findings) {
					t.Errorf("%s: asked at once by many, it has %d figures and %d findings, not %d and %d", b.name, len(got.Figures), len(got.Findings), len(b.Figures), len(b.Findings))
				}
			})
		}
	}
	wait.Wait()
}

// asBytes is all that a reckoning says, as JSON.
func asBytes(t *testing.T, r *reckon.Reckoning) []byte {
	t.Helper()
	text, err := json.Marshal(struct {
		Figures  []working.Figure
		Findings []finding.Finding
		Workings []working.Working
	}{r.Figures, r.Findings, workings(r)})
	if err != nil {
		t.Fatal(err)
	}
	return text
}

func workings(r *reckon.Reckoning) []working.Working {
	all := make([]working.Working, 0, len(r.Figures))
	for _, f := range r.Figures {
		if w, ok := r.Working(f.Code); ok {
			all = append(all, w)
		}
	}
	return all
}

// backwards is a tree with the keys of all its maps in the other order.
func backwards(n *tree.Node) *tree.Node {
	out := *n
	out.Entries, out.Items = slices.Clone(n.Entries), slices.Clone(n.Items)
	slices.Reverse(out.Entries)
	for i := range out.Entries {
		out.Entries[i].Value = backwards(out.Entries[i].Value)
	}
	for i := range out.Items {
		out.Items[i] = backwards(out.Items[i])
	}
	return &out
}

// parting shows where two texts part.
func parting(a, b []byte) string {
	same := 0
	for same < min(len(a), len(b)) && a[same] == b[same] {
		same++
	}
	from := max(0, same-120)
	return fmt.Sprintf("%s\n%s", a[from:min(len(a), same+80)], b[from:min(len(b), same+80)])
}
