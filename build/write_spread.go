package build

import (
	"reflect"

	"tumblehome/build/tree"
	"tumblehome/quantity"
)

// writeSpread writes a guess as `12`, `12 ± 3`, {likely, low, high} or {exactly}.
func writeSpread(p *plan, v reflect.Value) *tree.Node {
	canonical := v.MethodByName("Canonical").Call(nil)[0]
	likely, low, high := canonical.Field(0), canonical.Field(1), canonical.Field(2)
	part := func(key string, v reflect.Value) tree.Entry {
		return tree.Entry{Key: key, Value: tree.Plain(marshal(v))}
	}
	switch quantity.Form(canonical.Field(3).Int()) {
	case quantity.Three:
		return tree.MapOf(part("likely", likely), part("low", low), part("high", high))
	case quantity.Exact:
		return tree.MapOf(part("exactly", likely))
	}
	return tree.Plain(marshal(canonical))
}
