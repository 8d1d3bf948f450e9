package build_test

import (
	"bytes"
	"encoding/json"
	"slices"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
)

func compiled(t testing.TB) *jsonschema.Schema {
	t.Helper()
	schema, err := jsonschema.UnmarshalJSON(bytes.NewReader(build.Schema()))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	if err := c.AddResource("document.json", schema); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("document.json")
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// satisfies checks a document as an editor would see it: as YAML values.
func satisfies(s *jsonschema.Schema, root *tree.Node) error {
	value, err := jsonschema.UnmarshalJSON(bytes.NewReader(tree.JSON(root)))
	if err != nil {
		return err
	}
	return s.Validate(value)
}

func TestExamplesSatisfyTheSchema(t *testing.T) {
	schema := compiled(t)
	for file, text := range examples(t) {
		source, err := tree.Parse(file, text)
		if err != nil {
			t.Fatal(err)
		}
		if err := satisfies(schema, source.Root); err != nil {
			t.Errorf("%s: %v", file, err)
		}
	}
}

func TestEveryDocumentThatIsTakenSatisfiesTheSchema(t *testing.T) {
	schema := compiled(t)
	for _, tt := range grammarTable {
		node := with(t, tt.takes)
		if err := satisfies(schema, node); err != nil {
			t.Errorf("%s: as it was given: %v", tt.rule, err)
		}
		doc, err := build.DecodeTree(node, catalogue.Builtin())
		if err != nil {
			t.Fatal(err)
		}
		if err := satisfies(schema, build.Encode(doc)); err != nil {
			t.Errorf("%s: as it is written: %v", tt.rule, err)
		}
	}
}

func TestTheSchemaRefusesWhatItCanSee(t *testing.T) {
	schema := compiled(t)
	for _, fragment := range []string{
		"gaz: none", "people: {tall: {notte: x}}", "people: {Grand Ma: {stature: 1640, mass: 61}}", "fittings: {top: {mass: 1}}",
		"vehicle: {wheelbase: wide}", "build: {contingency: 0.12}", "build: {rules: uk}", "fittings: {galley: {at: {x: middle}}}",
		"fittings: {galley: {scribe: right}}", "lining: {floor: [{undecided: [xps-20]}]}", "gas: nothing",
	} {
		if satisfies(schema, with(t, fragment)) == nil {
			t.Errorf("%s is taken", fragment)
		}
	}
}

func TestEveryGrammarIsOneNamedDefinition(t *testing.T) {
	var schema struct {
		Defs map[string]struct {
			Description string
			Pattern     string
			Examples    []any
			OneOf       []struct{ Pattern string }
		} `json:"$defs"`
	}
	if err := json.Unmarshal(build.Schema(), &schema); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{
		"length", "area", "section", "angle", "mass", "volume", "share", "date", "rate", "money", "axis", "extent", "amount",
		"direction", "edge", "spread-mass", "spread-money", "id", "path", "yes-no", "lay", "coverage",
	} {
		d, ok := schema.Defs[name]
		if !ok {
			t.Errorf("%s is not defined", name)
			continue
		}
		patterned := d.Pattern != "" || slices.ContainsFunc(d.OneOf, func(o struct{ Pattern string }) bool { return o.Pattern != "" })
		if d.Description == "" || len(d.Examples) < 2 || !patterned {
			t.Errorf("%s lacks a description, two examples or a pattern: %+v", name, d)
		}
	}
	for _, name := range []string{"choice-of-material", "choice-of-layer", "keys-of-place", "keys-of-size", "keys-of-move", "keys-of-fitting"} {
		if _, ok := schema.Defs[name]; !ok {
			t.Errorf("%s is not defined", name)
		}
	}
}

func TestTheSchemaIsTheSameEveryTime(t *testing.T) {
	if !bytes.Equal(build.Schema(), build.Schema()) {
		t.Error("two schemas differ")
	}
}
