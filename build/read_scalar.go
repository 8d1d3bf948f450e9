package build

import (
	"encoding"
	"fmt"
	"reflect"
	"regexp"
	"slices"
	"strconv"
	"unicode/utf8"

	"tumblehome/build/tree"
	"tumblehome/quantity"
)

// scalar reads a text, a number, or a quantity.
func (r *reader) scalar(p *plan, n *tree.Node, v reflect.Value) bool {
	if n.Kind != tree.Scalar {
		r.fault(Values, n, &quantity.Fault{Wrong: shown(n) + " stands where one value should", Expected: expectation(p)})
		return false
	}
	if n.Text == "" {
		r.fault(Values, n, &quantity.Fault{Wrong: "nothing is written here", Expected: expectation(p)})
		return false
	}
	var fault *quantity.Fault
	switch p.shape {
	case textShape:
		return r.text(p, n, v)
	case numberShape:
		fault = readNumber(n.Text, v)
	default:
		fault = asFault(v.Addr().Interface().(encoding.TextUnmarshaler).UnmarshalText([]byte(n.Text)))
	}
	if fault != nil {
		r.fault(Values, n, fault)
		return false
	}
	return r.meaning(p, n, v)
}

// text reads free text, a word of a closed list, or a reference.
func (r *reader) text(p *plan, n *tree.Node, v reflect.Value) bool {
	v.SetString(n.Text)
	switch {
	case len(p.rules.words) > 0 && !slices.Contains(p.rules.words, n.Text):
		f := &quantity.Fault{Wrong: "`" + clip(n.Text) + "` is not known here", Expected: quantity.OrList(p.rules.words), Near: quantity.Near(n.Text, p.rules.words)}
		r.fault(Values, n, f)
		return false
	case p.rules.letters > 0 && utf8.RuneCountInString(n.Text) > p.rules.letters:
		r.fault(Values, n, &quantity.Fault{Wrong: "`" + clip(n.Text) + "` is too long for a name", Expected: fmt.Sprintf("at most %d letters", p.rules.letters)})
		return false
	case p.rules.ref != "":
		return r.refer(p.rules.ref, n)
	}
	return true
}

var (
	wholeNumber = regexp.MustCompile(`^-?[0-9]{1,9}$`)
	plainNumber = regexp.MustCompile(`^-?[0-9]{1,12}(\.[0-9]{1,12})?$`)
)

func readNumber(text string, v reflect.Value) *quantity.Fault {
	if v.Kind() == reflect.Int {
		i, err := strconv.Atoi(text)
		if err != nil || !wholeNumber.MatchString(text) {
			return &quantity.Fault{Wrong: "`" + clip(text) + "` is not a whole number", Expected: "a whole number"}
		}
		v.SetInt(int64(i))
		return nil
	}
	if !plainNumber.MatchString(text) {
		return &quantity.Fault{Wrong: "`" + clip(text) + "` is not a plain number", Expected: "a number", Examples: []string{"1.17"}}
	}
	f, _ := strconv.ParseFloat(text, 64)
	v.SetFloat(f + 0) // never minus nought
	return nil
}

// asFault keeps what a quantity said about a text.
func asFault(err error) *quantity.Fault {
	if err == nil {
		return nil
	}
	if f, ok := err.(*quantity.Fault); ok {
		return f
	}
	return &quantity.Fault{Wrong: err.Error()}
}

// expectation says what a scalar should be.
func expectation(p *plan) string {
	switch {
	case len(p.rules.words) > 0:
		return quantity.OrList(p.rules.words)
	case p.shape == numberShape:
		return "a number"
	case p.shape == textShape:
		return "a text"
	}
	t := p.typ
	if p.shape == spreadShape {
		t = p.elem.typ
	}
	if g, ok := reflect.Zero(t).Interface().(grammared); ok {
		return "one value such as `" + g.Grammar().Examples[0] + "`"
	}
	return "one value"
}

// meaning checks a value that was read well: its range, its currency, the faces
// it names.
func (r *reader) meaning(p *plan, n *tree.Node, v reflect.Value) bool {
	ok := r.inRange(p, n, v)
	switch q := v.Addr().Interface().(type) {
	case *quantity.Money:
		ok = r.currency(n, q.Currency) && ok
	case *quantity.Spread[quantity.Money]:
		ok = r.currency(n, q.Likely.Currency) && ok
	case *Amount:
		if fault := q.tooFar(); fault != nil {
			r.fault(Meaning, n, fault)
			ok = false
		}
	case *AxisRule:
		ok = r.onAxis(p, n, *q) && r.points(n, v) && ok
	}
	return ok
}

func (r *reader) onAxis(p *plan, n *tree.Node, a AxisRule) bool {
	face := a.misplaced(p.rules.axis)
	if face == "" || p.rules.axis == "" {
		return true
	}
	r.fault(Values, n, &quantity.Fault{
		Wrong:    "`" + face + "` does not lie along " + p.rules.axis,
		Expected: "a face on this axis: " + facesOn[p.rules.axis],
	})
	return false
}

// points checks that the fittings whose faces are named exist.
func (r *reader) points(n *tree.Node, v reflect.Value) bool {
	named, has := v.Interface().(interface{ Points() []Point })
	if !has {
		return true
	}
	ok := true
	for _, p := range named.Points() {
		if p.Of != "" {
			ok = r.inCollection("fittings", p.Of, n) && ok
		}
	}
	return ok
}

// currency checks that another currency has a rate.
func (r *reader) currency(n *tree.Node, code string) bool {
	if code == "" || r.part {
		return true
	}
	terms := r.root.Get("build")
	if own := terms.Get("currency"); own != nil && own.Text == code || terms.Get("rates").Get(code) != nil {
		return true
	}
	r.fault(Meaning, n, &quantity.Fault{
		Wrong: "there is no rate for " + code, Expected: "the build's currency, or a rate in build.rates",
	})
	return false
}
