package build_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
)

func decoded(t testing.TB, fragment string) *build.Document {
	t.Helper()
	doc, err := build.DecodeTree(with(t, fragment), catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

func TestApplyMakesAnotherDocumentOrRefuses(t *testing.T) {
	tests := []struct{ name, patch, want, fault string }{
		{"a changed value", `{"fittings":{"galley":{"at":{"x":60}}}}`, "at: {x: 60, y: right}", ""},
		{"a deleted key", `{"fittings":{"galley":{"size":null}}}`, "galley: {make: carcass, at: {x: 40, y: right}}", ""},
		{"a number becomes a guess", `{"people":{"tall":{"mass":{"likely":84,"low":80,"high":90}}}}`, "mass: {likely: 84, low: 80, high: 90}", ""},
		{"an edit that leaves references hanging", `{"fittings":{"lamp":null}}`, "", "power.batteries.house.is.0: `lamp` is not in fittings; expected galley or settle"},
		{"an edit that is no value", `{"fittings":{"galley":{"at":{"x":"middle-ish"}}}}`, "",
			"fittings.galley.at.x: `middle` is no face here; expected a length, a face with or without a length, or a rule with from, to, mid or .. such as `right - 30`, `from galley.front` or `front..rear`"},
		{"a patch that replaces the document", `7`, "", "`7` stands alone; expected {tumblehome, build, people, use, …}"},
		{"a patch that deletes the document", `null`, "", "`null` stands alone; expected {tumblehome, build, people, use, …}"},
	}
	for _, tt := range tests {
		doc := decoded(t, "{}")
		before := string(build.WriteYAML(doc))
		patch, err := tree.ParsePatch([]byte(tt.patch))
		if err != nil {
			t.Fatal(err)
		}
		after, err := build.Apply(doc, patch, catalogue.Builtin())
		switch {
		case tt.fault != "" && (err == nil || err.Error() != tt.fault):
			t.Errorf("%s:\n got %v\nwant %s", tt.name, err, tt.fault)
		case tt.fault == "" && err != nil:
			t.Errorf("%s: %v", tt.name, err)
		case tt.fault == "" && !strings.Contains(string(build.WriteYAML(after)), tt.want):
			t.Errorf("%s:\n%s\nlacks %s", tt.name, build.WriteYAML(after), tt.want)
		}
		if string(build.WriteYAML(doc)) != before {
			t.Errorf("%s changed the document it was applied to", tt.name)
		}
	}
}

func TestAnEditTakenBackGivesTheDocumentBefore(t *testing.T) {
	rows, doc := catalogue.Builtin(), decoded(t, "{}")
	patch, err := tree.ParsePatch([]byte(`{"fittings":{"galley":{"of":{"undecided":["ply-poplar-9","ply-poplar-12"]},"mass":"20 ± 3"}},"gas":"none"}`))
	if err != nil {
		t.Fatal(err)
	}
	node := build.Encode(doc)
	after, err := build.Apply(doc, patch, rows)
	if err != nil {
		t.Fatal(err)
	}
	if of := after.Fittings["galley"].Of; !of.Undecided || of.Value != "ply-poplar-9" || !of.Known() {
		t.Errorf("the choice was read as %+v", of)
	}
	back, err := build.Apply(after, tree.Inverse(node, patch), rows)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(doc, back, same); diff != "" {
		t.Errorf("taken back, it is another document:\n%s", diff)
	}
}

func TestAnAlternativeIsTakenWithAndWithout(t *testing.T) {
	doc := decoded(t, `
spending: {s-1: {date: 2026-03-07, paid: 5, for: fittings.lamp}}
alternatives:
  dark: {why: cheap, without: [fittings.lamp, power.batteries.house], with: {fittings: {galley: {mass: 12, of: ply-poplar-9}}}}
  hanging: {why: forgets the battery, without: [fittings.lamp]}
`)
	taken, err := build.TakeAlternative(doc, "dark", catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	if _, still := taken.Fittings["lamp"]; still || taken.Fittings["galley"].Of.Value != "ply-poplar-9" {
		t.Errorf("taken:\n%s", build.WriteYAML(taken))
	}
	if !strings.Contains(string(build.WriteYAML(doc)), "galley: {of: ply-poplar-9, mass: 12}") {
		t.Errorf("the fragment is not in the document's order:\n%s", build.WriteYAML(doc))
	}
	const want = "alternative hanging: power.batteries.house.is.0: `lamp` is not in fittings; expected galley or settle"
	if _, err := build.TakeAlternative(doc, "hanging", catalogue.Builtin()); err == nil || err.Error() != want {
		t.Errorf("got %v", err)
	}
	if _, err := build.TakeAlternative(doc, "darc", catalogue.Builtin()); err == nil || err.Error() != "alternatives: `darc` is not in alternatives; did you mean `dark`?" {
		t.Errorf("got %v", err)
	}
}
