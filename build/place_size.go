package build

import (
	"tumblehome/build/tree"
	"tumblehome/quantity"
)

// Size is the size along a thing's own axes, each left out where something else
// gives it.
type Size struct {
	X *quantity.Length `doc:"x" range:"0.1..8000" says:"along"`
	Y *quantity.Length `doc:"y" range:"0.1..3000" says:"across"`
	Z *quantity.Length `doc:"z" range:"0.1..3500" says:"high"`
}

// readOther reads `[x, y, z]`.
func (s *Size) readOther(n *tree.Node) *quantity.Fault {
	wrong := &quantity.Fault{Wrong: shown(n) + " is no size", Expected: "{x, y, z}", Examples: []string{"{x: 950, y: 450, z: 880}"}}
	if n.Kind != tree.List || len(n.Items) != 3 {
		return wrong
	}
	for i, to := range []**quantity.Length{&s.X, &s.Y, &s.Z} {
		if n.Items[i].Kind != tree.Scalar {
			return wrong
		}
		v, err := quantity.ParseLength(n.Items[i].Text)
		if err != nil {
			return err.(*quantity.Fault)
		}
		*to = &v
	}
	return nil
}

func (s *Size) writeOther() *tree.Node { return nil }

func (s *Size) otherForm() other {
	return other{Name: "size-in-order", Says: "along, across, high", Schema: schemaOf{
		"type": "array", "items": schemaOf{"$ref": "#/$defs/length"}, "minItems": 3, "maxItems": 3,
	}}
}
