package build

import (
	"errors"
	"reflect"
	"slices"

	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/quantity"
)

// RowSource is where rows and materials of the catalogue come from: the built-in
// catalogue, over which a document's own rows are laid.
type RowSource interface {
	Overlay(own map[string]catalogue.Row) *catalogue.Catalogue
}

// Report is what reading a document did not keep.
type Report struct {
	Comments int // comments of the text; remarks that shall stay belong in `note`
}

// Decode reads a document from YAML or JSON. The file is only named in faults.
// The error is of type Faults and holds everything wrong, kind by kind; then
// there is no document.
func Decode(file string, text []byte, rows RowSource) (*Document, Report, error) {
	source, err := tree.Parse(file, text)
	if err != nil {
		return nil, Report{}, syntaxFaults(err)
	}
	doc, err := decode(file, source.Root, rows)
	if err != nil {
		return nil, Report{}, err
	}
	return doc, Report{Comments: source.Comments}, nil
}

// DecodeTree reads a document from a tree, which may come from a text or from a
// patch. The error is of type Faults.
func DecodeTree(n *tree.Node, rows RowSource) (*Document, error) { return decode("", n, rows) }

// decode also takes places that were removed on purpose, to which money already
// spent and findings accepted may go on pointing.
func decode(file string, n *tree.Node, rows RowSource, removed ...tree.Pointer) (*Document, error) {
	if at, says := tree.TooMuch(n); says != "" {
		return nil, Faults{{Kind: Syntax, File: file, Line: at.Line, Column: at.Column, Wrong: says}}
	}
	p, doc := documentPlan(), new(Document)
	r := &reader{file: file, root: n, rows: rows.Overlay(ownRows(p, n)), removed: removed}
	r.meant = misspelt(n, p.keys())
	r.read(p, n, reflect.ValueOf(doc).Elem())
	if len(r.faults[Keys])+len(r.faults[Values]) == 0 {
		r.wholeDocument(doc)
	}
	var all Faults
	for _, faults := range r.faults {
		all = append(all, faults...)
	}
	if len(all) > 0 {
		return nil, all
	}
	return doc, nil
}

// ownRows are the document's own catalogue rows, read ahead of the rest because
// the rest refers to them. What is wrong with them is said when their turn comes.
func ownRows(p *plan, n *tree.Node) map[string]catalogue.Row {
	own := map[string]catalogue.Row{}
	section := n.Get("catalogue")
	if section == nil || section.Kind != tree.Map {
		return own
	}
	row := p.under("catalogue").elem
	for _, e := range section.Entries {
		v := reflect.New(row.typ)
		(&reader{root: n, part: true}).read(row, e.Value, v.Elem())
		own[e.Key] = *v.Interface().(*catalogue.Row)
	}
	return own
}

func syntaxFaults(err error) error {
	var faults tree.Faults
	if !errors.As(err, &faults) {
		return err
	}
	out := make(Faults, len(faults))
	for i, f := range faults {
		out[i] = Fault{Kind: Syntax, File: f.File, Line: f.Line, Column: f.Column, Wrong: f.Says}
	}
	return out
}

// misspelt are the sections that some unknown key of the document seems to mean. What refers into one of them is not at fault: the key is.
func misspelt(n *tree.Node, sections []string) []string {
	var meant []string
	for _, key := range n.Keys() {
		if near := quantity.Near(key, sections); near != "" && !slices.Contains(sections, key) && n.Get(near) == nil {
			meant = append(meant, near)
		}
	}
	return meant
}
