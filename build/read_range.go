package build

import (
	"fmt"
	"reflect"
	"strconv"

	"tumblehome/build/tree"
	"tumblehome/quantity"
)

// inRange checks a number against the least and the most of its field.
func (r *reader) inRange(p *plan, n *tree.Node, v reflect.Value) bool {
	if p.rules.low == nil && p.rules.high == nil {
		return true
	}
	low, high, ok := ends(p, v)
	if !ok {
		return true
	}
	switch {
	case p.rules.low != nil && low < *p.rules.low:
		r.outOfRange(p, n, "is too little")
	case p.rules.high != nil && high > *p.rules.high:
		r.outOfRange(p, n, "is too much")
	default:
		return true
	}
	return false
}

// inRangeInOrder checks what a struct was given as a list, `[950, 450, 880]`, as if each stood under its key.
func (r *reader) inRangeInOrder(p *plan, n *tree.Node, v reflect.Value) bool {
	ok := true
	for i := range n.Items {
		ok = r.inRange(p.fields[i].plan, n.Items[i], v.Field(p.fields[i].index).Elem()) && ok
	}
	return ok
}

// ends are the least and the most that a value may be.
func ends(p *plan, v reflect.Value) (low, high float64, ok bool) {
	if p.shape == spreadShape {
		low, _ = number(v.FieldByName("Low"))
		high, ok = number(v.FieldByName("High"))
		return low, high, ok
	}
	if extended, has := v.Interface().(interface{ ends() (low, high float64) }); has {
		low, high = extended.ends()
		return low, high, true
	}
	low, ok = number(v)
	return low, low, ok
}

func number(v reflect.Value) (float64, bool) {
	switch v.Kind() {
	case reflect.Int:
		return float64(v.Int()), true
	case reflect.Float64:
		return v.Float(), true
	}
	if q, ok := v.Interface().(interface{ Float() float64 }); ok {
		return q.Float(), true
	}
	return 0, false
}

func (r *reader) outOfRange(p *plan, n *tree.Node, how string) {
	what := shown(n)
	if n.Kind != tree.Scalar {
		what = "this guess"
	}
	r.fault(Meaning, n, &quantity.Fault{Wrong: what + " " + how, Expected: rangeWords(p)})
}

// rangeWords is the range as it would be written: "400 to 2300", "at least 0 %".
func rangeWords(p *plan) string {
	low, high := written(p, p.rules.low), written(p, p.rules.high)
	switch {
	case low == "":
		return "at most " + high
	case high == "":
		return "at least " + low
	}
	return low + " to " + high
}

// written is a limit in the words of its field.
func written(p *plan, limit *float64) string {
	if limit == nil {
		return ""
	}
	t := p.typ
	if p.shape == spreadShape {
		t = p.elem.typ
	}
	if t.Kind() == reflect.Float64 {
		v := reflect.New(t).Elem()
		v.SetFloat(*limit)
		if q, ok := v.Interface().(fmt.Stringer); ok {
			return q.String()
		}
	}
	return strconv.FormatFloat(*limit, 'f', -1, 64)
}
