package reckon_test

import (
	"slices"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/internal/faultcase"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

// clears applies each proposal made against findings of a code and says in words what was proposed; what does not clear it fails.
func clears(t *testing.T, m *reckon.Machine, doc *build.Document, code string) []string {
	t.Helper()
	var out []string
	for _, f := range m.Reckon(doc, quantity.Date{}).Findings {
		if !strings.HasPrefix(f.Code, code) {
			continue
		}
		for _, p := range f.Proposals {
			out = append(out, p.Words)
			patch, err := tree.ParsePatch(p.Patch)
			if err != nil {
				t.Fatal(err)
			}
			after := m.Reckon(applied(t, doc, patch), quantity.Date{})
			if slices.ContainsFunc(after.Findings, func(g finding.Finding) bool { return g.Key() == f.Key() }) {
				t.Errorf("%s is still found after: %s", f.Code, p.Words)
			}
		}
	}
	return out
}

func TestWhatIsProposedAgainstColdAndDampHelpsInEveryFaultCase(t *testing.T) {
	m := reckon.NewMachine()
	for _, c := range faultcase.All() {
		if !slices.ContainsFunc(c.Finds, func(told string) bool { return strings.Contains(told, " warmth.") }) {
			continue
		}
		doc, err := c.Document()
		if err != nil {
			t.Fatal(err)
		}
		t.Run(c.Name, func(t *testing.T) { clears(t, m, doc, "warmth.") })
	}
}

const winterLong = `{"lining": {"sides": [{"lay": "wool-sheep-50", "thick": 45}, {"lay": "vcl-membrane-1500x50"}, {"lay": "pse-20-5x44", "cover": "24 %"}, {"lay": "ply-poplar-3-6"}]},
	"use": {"trips": {"winter-hills": {"often": "12 /month", "keep": 18}}}}`

func TestWhatHelpsAgainstColdAndDampIsProposed(t *testing.T) {
	m := reckon.NewMachine()
	thin := `"lining": {"sides": [{"lay": "foam-xlpe-10", "ribs": "bridged"}, {"lay": "ply-poplar-3-6"}]}`
	for _, c := range []struct{ name, patch, code, want string }{
		{"a heater that is a little too small for thin sides", `{` + thin + `, "catalogue": {"heater-diesel-2kw": {"kind": "appliance", "heat": 680}}}`,
			"warmth.heater.small", "more of closed-cell"},
		{"a winter lived through behind doors of wool", winterLong, "warmth.winter.water", "membrane"},
		{"doors that foam would keep dry", winterLong, "warmth.winter.water", "glue 20 mm"},
		{"ribs with nothing over them", `{"lining": {"sides": [{"lay": "wool-sheep-50", "thick": 45, "ribs": "free"}, {"lay": "ply-poplar-3-6"}],
			"doors": [{"lay": "foam-xlpe-10", "ribs": "bridged"}, {"lay": "ply-poplar-3-6"}]}, "air": {"always-open": ["low-vent"]}}`, "warmth.surface.wet", "over the ribs"},
		{"ribs that a vent would keep dry", `{"air": {"always-open": []}}`, "warmth.surface.wet", "cut a grille of"},
	} {
		t.Run(c.name, func(t *testing.T) {
			said := clears(t, m, applied(t, demo(t, "dipper"), patched(t, c.patch)), c.code)
			if !slices.ContainsFunc(said, func(words string) bool { return strings.Contains(words, c.want) }) {
				t.Errorf("of %s only this is proposed: %q", c.code, said)
			}
		})
	}
}
