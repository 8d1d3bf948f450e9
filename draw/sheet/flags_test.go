package sheet_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"tumblehome/draw"
	"tumblehome/draw/sheet"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

func TestNoFlagLiesOnLettering(t *testing.T) {
	for _, name := range demos {
		r := demo(t, name)
		for _, id := range slices.Sorted(maps.Keys(r.Document.Fittings)) {
			r = noted(r, "/fittings/"+id, 1)
		}
		for _, v := range []sheet.View{{}, {Size: draw.A3}, {Only: sheet.Plan}, {Mode: "night"}} {
			s := sheet.Arrangement(r, v)
			for _, box := range flagBoxes(s) {
				for _, b := range lettersBut(s, "flags") {
					if b.Overlaps(box) {
						t.Errorf("%s, %v: the flag at %v lies on the lettering at %v", name, v, box, b)
					}
				}
			}
		}
	}
}

func TestFlagsThatHaveNoRoomAreCounted(t *testing.T) {
	r := noted(demo(t, "dipper"), "/fittings/galley", 60)
	for _, v := range []sheet.View{{}, {Size: draw.A3}, {Only: sheet.Plan}} {
		s := sheet.Arrangement(r, v)
		flawless(t, s)
		if !strings.Contains(letters(s), "more in\n") {
			t.Errorf("%v: nothing says that there are more", v)
		}
		for _, box := range flagBoxes(s) {
			if !box.Within(s.Size.Rect()) {
				t.Errorf("%v: the flag at %v runs off the paper", v, box)
			}
		}
	}
}

func TestOutlinesDoNotRunThroughTheFiguresOfTheCrossSection(t *testing.T) {
	grounds, figures := 0, 0
	for _, m := range found(sheet.Arrangement(demo(t, "godwit"), sheet.View{}))["cross-measures"].Marks {
		switch m := m.(type) {
		case draw.Lettering:
			figures++
		case draw.Shape:
			if m.Fill == draw.FillSheet {
				grounds++
			}
		}
	}
	if grounds != figures || figures == 0 {
		t.Errorf("%d grounds under %d figures", grounds, figures)
	}
}

// noted has so many notes more about a thing.
func noted(r *reckon.Reckoning, about string, n int) *reckon.Reckoning {
	out := *r
	out.Findings = nil
	for i := range n {
		out.Findings = append(out.Findings, finding.Finding{Code: "trial", Title: fmt.Sprint("trial ", i), About: []string{about}})
	}
	out.Findings = append(out.Findings, r.Findings...)
	return &out
}

// flagBoxes are what the flags of a drawing take up.
func flagBoxes(s draw.Scene) []draw.Rect {
	var out []draw.Rect
	for _, m := range found(s)["flags"].Marks {
		g, ok := m.(draw.Group)
		if !ok {
			continue
		}
		for _, m := range g.Marks {
			if l, ok := m.(draw.Lettering); ok {
				out = append(out, draw.Rect{Min: l.At, Max: l.At}.Inset(-draw.FlagSize/2))
			}
		}
	}
	return out
}

// lettersBut are the boxes of all lettering outside a group.
func lettersBut(s draw.Scene, id string) []draw.Rect {
	var out []draw.Rect
	var walk func(marks []draw.Mark)
	walk = func(marks []draw.Mark) {
		for _, m := range marks {
			switch m := m.(type) {
			case draw.Group:
				if m.ID != id {
					walk(m.Marks)
				}
			case draw.Lettering:
				out = append(out, m.Bounds())
			}
		}
	}
	walk(s.Marks)
	return out
}
