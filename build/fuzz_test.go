package build_test

import (
	"regexp"
	"testing"

	"github.com/google/go-cmp/cmp"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
)

// A document that is taken comes back the same from its written form.
func comesBack(t *testing.T, doc *build.Document) {
	written := build.WriteYAML(doc)
	again, _, err := build.Decode("f", written, catalogue.Builtin())
	if err != nil {
		t.Fatalf("written and refused: %v\n%s", err, written)
	}
	if diff := cmp.Diff(doc, again, same); diff != "" {
		t.Fatalf("comes back as another document:\n%s\n%s", diff, written)
	}
	if twice := build.WriteYAML(again); string(twice) != string(written) {
		t.Fatalf("written in two ways:\n%s", cmp.Diff(string(written), string(twice)))
	}
}

func FuzzDecode(f *testing.F) {
	f.Add([]byte(base))
	f.Add([]byte("tumblehome: 1\nbuild: {title: T, rules: eu, currency: EUR}\nvehicle: {wheelbase: 2.7 m, datum: 0}\nshell: {}\n"))
	f.Add([]byte(`{"tumblehome":1,"build":{"title":"T","rules":"us","currency":"USD"},"vehicle":{"wheelbase":"13 ft","datum":0},"shell":{},"gas":"none"}`))
	for _, g := range grammarTable {
		f.Add(tree.Write(with(f, g.takes)))
		f.Add(tree.Write(with(f, g.refuses)))
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		doc, _, err := build.Decode("f", text, catalogue.Builtin())
		if err != nil {
			return
		}
		comesBack(t, doc)
	})
}

func FuzzApply(f *testing.F) {
	for _, g := range grammarTable {
		f.Add(tree.JSON(parse(f, g.takes)))
		f.Add(tree.JSON(parse(f, g.refuses)))
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		patch, err := tree.ParsePatch(text)
		if err != nil {
			return
		}
		doc := decoded(t, "{}")
		after, err := build.Apply(doc, patch, catalogue.Builtin())
		if err != nil {
			return
		}
		comesBack(t, after)
		back, err := build.Apply(after, tree.Inverse(build.Encode(doc), patch), catalogue.Builtin())
		if err != nil || cmp.Diff(doc, back, same) != "" {
			t.Fatalf("%s can not be taken back: %v", text, err)
		}
	})
}

func FuzzAxisRule(f *testing.F) {
	for _, seed := range []string{"right - 30", "from galley.front", "front..rear", "mid 7 ft 2 in", "1.5..2", "a.rear+1", "a-.front"} {
		f.Add(seed)
	}
	pattern := regexp.MustCompile(build.AxisRule{}.Grammar().Pattern)
	f.Fuzz(func(t *testing.T, text string) {
		rule, err := build.ParseAxisRule(text)
		if err != nil {
			return
		}
		again, err := build.ParseAxisRule(rule.String())
		if err != nil || again != rule {
			t.Fatalf("%q was written %q and read back as %+v, %v", text, rule, again, err)
		}
		for _, s := range []string{text, rule.String()} {
			if !pattern.MatchString(s) {
				t.Errorf("%q does not fit the schema's pattern", s)
			}
		}
	})
}
