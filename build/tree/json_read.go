package tree

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"strings"
	"unicode/utf8"
)

// readJSON reads one JSON value in which null may stand, except in lists: they
// are replaced whole, so it would delete nothing.
func readJSON(text []byte) (*Node, error) {
	if len(text) > mostBytes {
		return nil, errors.New("larger than 4 MiB")
	}
	var first error
	r := newJSONReader(text, func(_, _ int, says string) {
		if first == nil {
			first = errors.New(says)
		}
	})
	r.gone = true
	n := r.value()
	if _, err := r.decoder.Token(); err != io.EOF && first == nil {
		first = errors.New("something follows the end")
	}
	return n, first
}

// parseJSON reads a whole document that is known to be valid JSON. It does what
// parseYAML would, sooner.
func parseJSON(text string, faults *faultList) *Node {
	return newJSONReader([]byte(text), faults.add).value()
}

// jsonReader turns the tokens of encoding/json into nodes with their places.
type jsonReader struct {
	decoder      *json.Decoder
	text         []byte
	fault        func(line, column int, says string)
	gone         bool // null may stand here
	levels       int
	stopped      bool
	values       int // begun so far
	read         int // bytes whose lines are counted
	line, column int // of text[read]
}

func newJSONReader(text []byte, fault func(line, column int, says string)) *jsonReader {
	d := json.NewDecoder(bytes.NewReader(text))
	d.UseNumber()
	return &jsonReader{decoder: d, text: text, fault: fault, line: 1, column: 1}
}

// next is the next token and an empty node at its place, or nil at the end of
// what can be read.
func (r *jsonReader) next() (json.Token, *Node) {
	if r.stopped {
		return nil, nil
	}
	start := r.decoder.InputOffset()
	for int(start) < len(r.text) && strings.IndexByte(" \t\r\n,:", r.text[start]) >= 0 {
		start++
	}
	r.moveTo(int(start))
	n := &Node{Line: r.line, Column: r.column}
	token, err := r.decoder.Token()
	if err != nil {
		r.stop("not readable as JSON: " + strings.TrimPrefix(err.Error(), "json: "))
		return nil, nil
	}
	return token, n
}

func (r *jsonReader) stop(says string) {
	r.fault(r.line, r.column, says)
	r.stopped = true
}

func (r *jsonReader) moveTo(offset int) {
	passed := r.text[r.read:offset]
	if i := bytes.LastIndexByte(passed, '\n'); i >= 0 {
		r.line += bytes.Count(passed, []byte("\n"))
		r.column, passed = 1, passed[i+1:]
	}
	r.column += utf8.RuneCount(passed)
	r.read = offset
}

func (r *jsonReader) value() *Node {
	token, n := r.next()
	if n == nil {
		return nil
	}
	if r.values++; r.values > mostValues+1 { // the whole is no value of itself
		r.stop(tooManyValues)
		return n
	}
	switch t := token.(type) {
	case nil:
		n.Kind = Gone
		if !r.gone {
			r.fault(n.Line, n.Column, "`null` says nothing here; leave it out, or write `none` or `undecided`")
		}
	case bool:
		n.Text = map[bool]string{true: "true", false: "false"}[t]
	case json.Number:
		n.Text = t.String()
	case string:
		n.Text, n.Quoted = t, true
	case json.Delim:
		r.inside(t, n)
	}
	return n
}

// inside reads what stands between brackets into n.
func (r *jsonReader) inside(open json.Delim, n *Node) {
	if r.levels++; r.levels > mostLevels {
		r.stop("more than 32 levels inside one another")
		return
	}
	if open == '{' {
		n.Kind = Map
		r.entries(n)
	} else {
		n.Kind = List
		defer func(gone bool) { r.gone = gone }(r.gone)
		r.gone = false
		for !r.stopped && r.decoder.More() {
			n.Items = append(n.Items, r.value())
			r.count(len(n.Items))
		}
	}
	r.next() // the closing bracket
	r.levels--
}

func (r *jsonReader) entries(n *Node) {
	seen := map[string]int{}
	for !r.stopped && r.decoder.More() {
		token, place := r.next()
		key, ok := token.(string)
		if place == nil || !ok {
			return
		}
		if line, again := seen[key]; again {
			r.fault(place.Line, place.Column, "`"+key+"` stands here for the second time, first in line "+itoa(line)+"; keep one")
		}
		seen[key] = place.Line
		n.Entries = append(n.Entries, Entry{key, r.value(), place.Line, place.Column})
		r.count(len(n.Entries))
	}
}

func (r *jsonReader) count(entries int) {
	if entries > mostEntries && !r.stopped {
		r.stop(tooManyEntries)
	}
}
