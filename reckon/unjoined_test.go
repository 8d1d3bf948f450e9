package reckon_test

import (
	"os"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/quantity"
)

// demoAfter is a demo after patches.
func demoAfter(t *testing.T, name string, patches ...string) *build.Document {
	t.Helper()
	text, err := os.ReadFile("../examples/" + name + ".yaml")
	if err != nil {
		t.Fatal(err)
	}
	doc, _, err := build.Decode(name, text, catalogue.Builtin())
	for _, p := range patches {
		if err != nil {
			break
		}
		var patch tree.Patch
		if patch, err = tree.ParsePatch([]byte(p)); err == nil {
			doc, err = build.DecodeTree(tree.Merge(build.Encode(doc), patch), catalogue.Builtin())
		}
	}
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

func TestWhatIsNotJoinedUp(t *testing.T) {
	for _, c := range []struct {
		name, demo string
		before     []string
		want       string // of each: what it is and what it could be told
		alone      string // the patch of the first
	}{
		{"in a finished van all is joined", "dipper", nil, "", ""},
		{"a battery in no bank becomes the bank", "twite", []string{`{"alternatives": null, "power": null}`, `{"power": {"mains": "none"}}`}, "battery feeds, relay charges, fan is fed, lamp-front is fed, lamp-rear is fed", `{"power":{"batteries":{"house":{"is":["battery"]}}}}`},
		{"with a bank there a panel charges it, by the controller that stands there", "dipper", []string{`{"alternatives": null, "power": {"sources": {"sun": null}}}`}, "panel charges, controller controls", `{"power":{"sources":{"sun":{"is":["panel"],"to":"house"}}}}`},
		{"a lamp joins the other lamps", "dipper", []string{`{"power": {"circuits": {"lights": {"loads": ["strip-left"]}}}}`}, "strip-right is fed", `{"power":{"circuits":{"lights":{"loads":["strip-left","strip-right"]}}}}`},
		{"a pump gets a circuit of its own", "dipper", []string{`{"power": {"circuits": {"tap-pump": null}}}`}, "pump is fed", `{"power":{"circuits":{"pump":{"from":"house","loads":["pump"]}}}}`},
	} {
		doc := demoAfter(t, c.demo, c.before...)
		all, together := quick().Reckon(doc, quantity.Date{}).Unjoined()
		var got []string
		for _, u := range all {
			got = append(got, u.ID+" "+u.Is)
		}
		if strings.Join(got, ", ") != c.want {
			t.Errorf("%s: %s, want %s", c.name, strings.Join(got, ", "), c.want)
		}
		if len(all) == 0 {
			if together != nil {
				t.Errorf("%s: nothing is to be joined, and the patch is %s", c.name, together)
			}
			continue
		}
		if string(all[0].Patch) != c.alone {
			t.Errorf("%s: the first is joined by %s, want %s", c.name, all[0].Patch, c.alone)
		}
		joined := demoAfter(t, c.demo, append(c.before, string(together))...)
		if left, _ := quick().Reckon(joined, quantity.Date{}).Unjoined(); len(left) > 0 {
			t.Errorf("%s: with %s there is still %v", c.name, together, left)
		}
	}
}
