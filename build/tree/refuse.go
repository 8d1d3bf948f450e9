package tree

import (
	"errors"
	"strconv"

	"github.com/goccy/go-yaml"
	"github.com/goccy/go-yaml/token"
)

func itoa(n int) string { return strconv.Itoa(n) }

// unwanted says what to write instead of a piece of YAML that has no place here.
var unwanted = map[token.Type]string{
	token.AnchorType:     "an anchor (&); write the value out where it is needed",
	token.AliasType:      "an alias (*); write the value out, or put it in quotes if a star is meant",
	token.TagType:        "a tag (!); leave it out, or put the text in quotes if a mark is meant",
	token.MergeKeyType:   "a merge key (<<); write the keys out",
	token.MappingKeyType: "a key marked with ?; write `key: value`",
	token.DirectiveType:  "a directive (%); leave it out, or put the text in quotes if a per cent is meant",
}

// refuseTokens finds all that can be refused before the text is parsed, too deep
// nesting among it since parsers are recursive, and too many keys since the parser
// takes the square of them, and counts comments.
func refuseTokens(tokens token.Tokens, faults *faultList) (comments int) {
	depth, values := nesting{}, 0
	for i, t := range tokens {
		if says, bad := unwanted[t.Type]; bad {
			faults.add(t.Position.Line, t.Position.Column, says)
		}
		if t.Type == token.CommentType {
			comments++
		}
		if depth.after(t) > mostLevels {
			faults.add(t.Position.Line, t.Position.Column, "more than 32 levels inside one another")
			return comments
		}
		if depth.entries() > mostEntries {
			faults.add(t.Position.Line, t.Position.Column, tooManyEntries)
			return comments
		}
		if separates[t.Type] {
			values++
		}
		if values > 2*mostValues || i > 8*mostValues { // a key between brackets has a colon and a comma
			faults.add(t.Position.Line, t.Position.Column, tooManyValues)
			return comments
		}
	}
	return comments
}

// nesting follows how deep a stream of tokens is nested.
type nesting struct {
	flow   int // open brackets
	blocks []block
}

// block is an open map or list that is written line by line.
type block struct {
	column, entries int
	list            bool
}

// separates are the tokens between the values of a text, at least one for each but the first.
var separates = map[token.Type]bool{token.MappingValueType: true, token.SequenceEntryType: true, token.CollectEntryType: true}

func (n *nesting) after(t *token.Token) int {
	switch t.Type {
	case token.MappingStartType, token.SequenceStartType:
		n.flow++
	case token.MappingEndType, token.SequenceEndType:
		n.flow = max(0, n.flow-1)
	case token.SequenceEntryType:
		n.entry(t.Position.Column, true)
	case token.MappingValueType:
		if t.Prev != nil {
			n.entry(t.Prev.Position.Column, false)
		}
	}
	return n.flow + len(n.blocks)
}

// entry closes the blocks that stood further right and adds an entry to the one at the column, which it opens if need be. A list may
// stand at the column of its own key.
func (n *nesting) entry(column int, list bool) {
	if n.flow > 0 {
		return
	}
	last := len(n.blocks) - 1
	for last >= 0 && (n.blocks[last].column > column || n.blocks[last].column == column && n.blocks[last].list && !list) {
		last--
	}
	n.blocks = n.blocks[:last+1]
	if last < 0 || n.blocks[last].column < column || n.blocks[last].list != list {
		n.blocks = append(n.blocks, block{column: column, list: list})
		last++
	}
	n.blocks[last].entries++
}

// entries are those of the innermost block so far.
func (n *nesting) entries() int {
	if len(n.blocks) == 0 {
		return 0
	}
	return n.blocks[len(n.blocks)-1].entries
}

// plainer puts the library's commonest complaints in a builder's words.
var plainer = map[string]string{
	"sequence end token ']' not found":                       "the list opened with [ is not closed",
	"could not find flow mapping end token '}'":              "the { is not closed",
	"could not find end character of double-quoted text":     "the text opened with \" is not closed",
	"could not find end character of single-quoted text":     "the text opened with ' is not closed",
	"mapping value is not allowed in this context":           "a second colon in one line; put the text in quotes",
	"non-map value is specified":                             "a `key: value` is missing here, or the line is indented too little",
	"block sequence entries are not allowed in this context": "a dash with a blank begins a list here; write `-5` without the blank, or begin a new line",
}

// addSyntax turns the library's error into a fault.
func addSyntax(err error, faults *faultList) {
	line, column, says := 1, 1, ""
	var syntax *yaml.SyntaxError
	if !errors.As(err, &syntax) {
		says = err.Error()
	} else { // its Error prints the text around the place, for which it takes minutes in a long one
		says = syntax.Message
		if syntax.Token != nil && syntax.Token.Position != nil {
			line, column = syntax.Token.Position.Line, syntax.Token.Position.Column
		}
	}
	if plain, ok := plainer[says]; ok {
		says = plain
	} else {
		says = "not readable as YAML: " + says
	}
	faults.add(max(1, line), max(1, column), says)
}
