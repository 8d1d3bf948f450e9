package tree

import (
	"bytes"
	"encoding/json"
	"strings"
	"unicode/utf8"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/lexer"
	"github.com/goccy/go-yaml/parser"
	"github.com/goccy/go-yaml/token"
)

const (
	mostBytes  = 4 << 20
	mostLevels = 32
)

// A Source is a text that was read.
type Source struct {
	Root     *Node
	Comments int // comments in the text, which the tree does not keep
}

// Parse reads YAML or JSON. The file is only named in faults; the error is of
// type Faults.
func Parse(file string, text []byte) (Source, error) {
	faults := faultList{file: file}
	clean, ok := normalise(text, &faults)
	if !ok {
		return Source{}, faults.all
	}
	var source Source
	if json.Valid([]byte(clean)) && strings.HasPrefix(strings.TrimLeft(clean, " \n"), "{") {
		source.Root = parseJSON(clean, &faults)
	} else {
		source = parseYAML(clean, &faults)
	}
	if at, says := TooMuch(source.Root); says != "" {
		faults.add(at.Line, at.Column, says)
	}
	if len(faults.all) > 0 {
		return Source{}, faults.all
	}
	return source, nil
}

// normalise turns line ends into LF and refuses what is no text.
func normalise(text []byte, faults *faultList) (string, bool) {
	if len(text) > mostBytes {
		faults.add(1, 1, "the text is larger than 4 MiB; keep photos and papers beside the document, not in it")
		return "", false
	}
	if !refuseMarks(text, faults) {
		return "", false
	}
	text = bytes.TrimPrefix(text, []byte("\uFEFF"))
	text = bytes.ReplaceAll(text, []byte("\r\n"), []byte("\n"))
	text = bytes.ReplaceAll(text, []byte("\r"), []byte("\n"))
	if bytes.HasPrefix(bytes.TrimLeft(text, " \t\n"), []byte("{")) { // JSON may be indented with tabs
		text = bytes.ReplaceAll(text, []byte("\t"), []byte(" "))
	}
	for i, line := range strings.Split(string(text), "\n") {
		refuseBytes(i+1, line, faults)
	}
	return string(text), len(faults.all) == 0
}

// refuseBytes finds tabs, control characters and broken UTF-8 in one line.
func refuseBytes(number int, line string, faults *faultList) {
	column := 1
	for i, r := range line {
		switch {
		case r == '\t':
			faults.add(number, column, "a tab; write blanks instead")
			return
		case r == utf8.RuneError && !strings.HasPrefix(line[i:], "\uFFFD"):
			faults.add(number, column, "a character that is not UTF-8; save the file as UTF-8")
			return
		case r < ' ' || r == 0x7F:
			faults.add(number, column, "a control character; take it out")
			return
		}
		column++
	}
}

// parseYAML reads a text through the YAML library. A panic of the library is a
// fault of the text: it must not end the program.
func parseYAML(text string, faults *faultList) (source Source) {
	defer func() {
		if recover() != nil {
			faults.add(1, 1, "the text can not be read as YAML or JSON")
		}
	}()
	tokens := lexer.Tokenize(text)
	source.Comments = refuseTokens(tokens, faults)
	if len(faults.all) > 0 {
		return source
	}
	file, err := parser.Parse(tokens, 0, parser.AllowDuplicateMapKey())
	if err != nil {
		addSyntax(err, faults)
		return source
	}
	body := onlyBody(file, faults)
	if body == nil {
		return source
	}
	source.Root = (&reader{faults: faults}).node(body)
	return source
}

// onlyBody is the one document of the file.
func onlyBody(file *ast.File, faults *faultList) ast.Node {
	var body ast.Node
	for _, doc := range file.Docs {
		if doc.Body == nil {
			continue
		}
		if body != nil {
			at := doc.Body.GetToken().Position
			faults.add(at.Line, 1, "a second document begins here; keep one in a file")
			return nil
		}
		body = doc.Body
	}
	if body == nil {
		faults.add(1, 1, "the document is empty")
	}
	return body
}

// reader turns the library's syntax tree into ours.
type reader struct {
	faults *faultList
	levels int
}

func (r *reader) node(n ast.Node) *Node {
	if r.levels++; r.levels > mostLevels+1 { // the innermost scalar is no level
		p := n.GetToken().Position
		r.faults.add(p.Line, p.Column, "more than 32 levels inside one another")
		return at(n.GetToken())
	}
	defer func() { r.levels-- }()
	switch n := n.(type) {
	case *ast.MappingNode:
		return r.mapping(n.Values, n.Start, n.IsFlowStyle)
	case *ast.MappingValueNode:
		return r.mapping([]*ast.MappingValueNode{n}, n.Start, false)
	case *ast.SequenceNode:
		list := at(n.Start)
		list.Kind = List
		for _, v := range n.Values {
			list.Items = append(list.Items, r.node(v))
		}
		return list
	case *ast.LiteralNode:
		text := at(n.Start)
		text.Text, text.Quoted = n.Value.Value, true
		return text
	}
	return r.scalar(n)
}

func (r *reader) mapping(values []*ast.MappingValueNode, start *token.Token, flow bool) *Node {
	m := at(start)
	m.Kind = Map
	m.Entries = make([]Entry, 0, len(values))
	seen := make(map[string]int, len(values))
	for i, v := range values {
		key := v.Key.GetToken()
		where := key.Position
		if i == 0 && !flow {
			m.Line, m.Column = where.Line, where.Column
		}
		if line, again := seen[key.Value]; again {
			r.faults.add(where.Line, where.Column, "`"+key.Value+"` stands here for the second time, first in line "+itoa(line)+"; keep one")
		}
		seen[key.Value] = where.Line
		if null := v.Value.GetToken(); flow && null.Type == token.ImplicitNullType {
			r.faults.add(where.Line, where.Column, "`"+key.Value+"` has no value; a text with a comma in it stands in quotes")
			continue
		}
		m.Entries = append(m.Entries, Entry{key.Value, r.node(v.Value), where.Line, where.Column})
	}
	return m
}

func (r *reader) scalar(n ast.Node) *Node {
	t := n.GetToken()
	s := at(t)
	s.Text = t.Value
	s.Quoted = t.Type == token.SingleQuoteType || t.Type == token.DoubleQuoteType
	switch n.(type) {
	case *ast.NullNode:
		says := "`" + t.Value + "` says nothing; leave the line out, or write `none` or `undecided`"
		if t.Type == token.ImplicitNullType {
			says = "nothing is written here; write a value or leave the line out"
		}
		r.faults.add(s.Line, s.Column, says)
	case *ast.NanNode, *ast.InfinityNode:
		r.faults.add(s.Line, s.Column, "`"+t.Value+"` is no number; write the number")
	case *ast.StringNode, *ast.IntegerNode, *ast.FloatNode, *ast.BoolNode:
	default:
		r.faults.add(s.Line, s.Column, "`"+t.Value+"` has no place in a document; write the value itself")
	}
	return s
}

func at(t *token.Token) *Node { return &Node{Line: t.Position.Line, Column: t.Position.Column} }
