package build

import (
	"reflect"

	"tumblehome/build/tree"
	"tumblehome/quantity"
)

// guess is any quantity.Spread.
type guess interface {
	Parts() (form quantity.Form, text, likely, low, high string)
}

// writeSpread writes a guess as `12`, `12 ± 3`, {likely, low, high} or {exactly}.
func writeSpread(v reflect.Value) *tree.Node {
	form, text, likely, low, high := addressable(v).Addr().Interface().(guess).Parts()
	part := func(key, text string) tree.Entry { return tree.Entry{Key: key, Value: tree.Plain(text)} }
	switch form {
	case quantity.Three:
		return tree.MapOf(part("likely", likely), part("low", low), part("high", high))
	case quantity.Exact:
		return tree.MapOf(part("exactly", likely))
	}
	return tree.Plain(text)
}
