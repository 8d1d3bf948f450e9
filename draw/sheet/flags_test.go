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

func TestNoLineOfAFlagRunsThroughTheHeadroom(t *testing.T) {
	for _, name := range demos {
		for _, v := range []sheet.View{{}, {Mode: "day"}, {Mode: "night"}, {Size: draw.A3}} {
			all := found(sheet.Arrangement(demo(t, name), v))
			for _, m := range all["side-measures"].Marks {
				l, ok := m.(draw.Lettering)
				if !ok {
					continue
				}
				for id, g := range all {
					if strings.HasPrefix(id, "flag-") && crosses(g, l.Bounds()) {
						t.Errorf("%s, %v: the line of %s runs through %q", name, v, id, l.Text)
					}
				}
			}
		}
	}
}

// crosses follows the line of a flag by small steps.
func crosses(flag draw.Group, box draw.Rect) bool {
	from, to := flag.Marks[1].(draw.Shape).Path.Bounds().Centre(), flag.Marks[2].(draw.Shape).Path.Bounds().Centre()
	for i := range 1000 {
		share := float64(i) / 1000
		p := draw.Pt(from.X+(to.X-from.X)*share, from.Y+(to.Y-from.Y)*share)
		if (draw.Rect{Min: p, Max: p}).Overlaps(box) {
			return true
		}
	}
	return false
}

func TestTheFlagsOfAViewLieInAGroupOfItsOwn(t *testing.T) {
	all := found(sheet.Arrangement(demo(t, "dipper"), sheet.View{Mode: "day"}))
	for _, view := range []string{"plan", "side"} {
		g := all["flags-"+view]
		if g.Data["flags"] != view || len(g.Marks) == 0 {
			t.Errorf("the flags of the %s: %v, %d marks", view, g.Data, len(g.Marks))
		}
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
	for id, g := range found(s) {
		if !strings.HasPrefix(id, "flag-") {
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
