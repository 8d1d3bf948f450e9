package reckon_test

import (
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/trade/working"
)

func TestEveryFindingPointsAtSomethingInTheDocument(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		root := build.Encode(b.doc)
		for _, f := range b.Findings {
			if len(f.About) == 0 {
				t.Errorf("%s is about nothing", f.Code)
			}
			for _, p := range f.About {
				if !leads(root, p) {
					t.Errorf("%s points at %s, where nothing is", f.Code, p)
				}
			}
		}
	})
}

func TestEveryLineOfAWorkingComesFromSomewhere(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		root, rows := build.Encode(b.doc), catalogue.Builtin().Overlay(b.doc.Catalogue)
		for _, f := range b.Figures {
			w, _ := b.Working(f.Code)
			for _, l := range w.Lines {
				if wrong := astray(b, root, rows, l.From); wrong != "" {
					t.Errorf("%s, line %q: %s", f.Code, l.Label, wrong)
				}
			}
		}
	})
}

// astray says why an origin leads nowhere, or is empty.
func astray(b tried, root *tree.Node, rows *catalogue.Catalogue, from working.Origin) string {
	set := 0
	for _, given := range []bool{from.Pointer != "", from.Row != "", from.Figure != "", from.Assumption != "", from.Here} {
		if given {
			set++
		}
	}
	_, isMaterial := rows.Material(from.Row)
	_, isFigure := b.Figure(from.Figure)
	switch {
	case set != 1:
		return "it does not come from exactly one place"
	case from.Pointer != "" && !leads(root, from.Pointer):
		return from.Pointer + " leads to nothing in the document"
	case from.Row != "" && !rows.HasRow(from.Row) && !isMaterial:
		return from.Row + " is not in the catalogue"
	case from.Figure != "" && !isFigure:
		return "there is no figure " + from.Figure
	}
	return ""
}

// leads says whether a pointer leads to something in the document.
func leads(root *tree.Node, pointer string) bool {
	return strings.HasPrefix(pointer, "/") && root.At(tree.Pointer(pointer)) != nil
}
