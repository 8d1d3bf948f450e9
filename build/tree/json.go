package tree

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strings"
)

// JSON is the node as JSON on one line. A scalar that looks like a JSON number,
// true or false, and was not quoted, is one.
func JSON(n *Node) []byte {
	var b bytes.Buffer
	writeJSON(&b, n)
	return b.Bytes()
}

func writeJSON(b *bytes.Buffer, n *Node) {
	switch n.Kind {
	case Scalar:
		if !n.Quoted && (jsonNumber.MatchString(n.Text) || n.Text == "true" || n.Text == "false") {
			b.WriteString(n.Text)
		} else {
			writeString(b, n.Text)
		}
	case Map:
		b.WriteByte('{')
		for i, e := range n.Entries {
			if i > 0 {
				b.WriteByte(',')
			}
			writeString(b, e.Key)
			b.WriteByte(':')
			writeJSON(b, e.Value)
		}
		b.WriteByte('}')
	case List:
		b.WriteByte('[')
		for i, item := range n.Items {
			if i > 0 {
				b.WriteByte(',')
			}
			writeJSON(b, item)
		}
		b.WriteByte(']')
	case Gone:
		b.WriteString("null")
	}
}

// writeString leaves <, > and & as they are: the text is no web page.
func writeString(b *bytes.Buffer, s string) {
	e := json.NewEncoder(b)
	e.SetEscapeHTML(false)
	_ = e.Encode(s) // a string always encodes
	b.Truncate(b.Len() - 1)
}

// readJSON reads one JSON value in which null may stand.
func readJSON(text []byte) (*Node, error) {
	if len(text) > mostBytes {
		return nil, errors.New("the patch is larger than 4 MiB")
	}
	d := json.NewDecoder(bytes.NewReader(text))
	d.UseNumber()
	n, err := jsonValue(d, 0, false)
	if err != nil {
		return nil, err
	}
	if _, err := d.Token(); err != io.EOF {
		return nil, errors.New("something follows the end of the patch")
	}
	return n, nil
}

// jsonValue reads one value; below a list, which a patch replaces whole, null
// would delete nothing.
func jsonValue(d *json.Decoder, depth int, inList bool) (*Node, error) {
	t, err := d.Token()
	if err != nil {
		return nil, fmt.Errorf("not readable as JSON: %s", strings.TrimPrefix(err.Error(), "json: "))
	}
	switch t := t.(type) {
	case nil:
		if inList {
			return nil, errors.New("null stands in a list; a list is replaced whole")
		}
		return &Node{Kind: Gone}, nil
	case bool:
		return Plain(fmt.Sprint(t)), nil
	case json.Number:
		return Plain(t.String()), nil
	case string:
		return Text(t), nil
	case json.Delim:
		if depth >= mostLevels {
			return nil, errors.New("more than 32 levels inside one another")
		}
		if t == '{' {
			return jsonMap(d, depth+1, inList)
		}
		return jsonList(d, depth+1)
	}
	return nil, errors.New("not readable as JSON")
}

func jsonMap(d *json.Decoder, depth int, inList bool) (*Node, error) {
	m := &Node{Kind: Map}
	seen := map[string]bool{}
	for d.More() {
		t, err := d.Token()
		if err != nil {
			return nil, fmt.Errorf("not readable as JSON: %s", err)
		}
		key, ok := t.(string)
		if !ok {
			return nil, errors.New("not readable as JSON: a key is missing")
		}
		if seen[key] {
			return nil, fmt.Errorf("`%s` stands twice in one map", key)
		}
		seen[key] = true
		v, err := jsonValue(d, depth, inList)
		if err != nil {
			return nil, err
		}
		m.Entries = append(m.Entries, Entry{Key: key, Value: v})
	}
	_, err := d.Token()
	return m, err
}

func jsonList(d *json.Decoder, depth int) (*Node, error) {
	l := &Node{Kind: List}
	for d.More() {
		v, err := jsonValue(d, depth, true)
		if err != nil {
			return nil, err
		}
		l.Items = append(l.Items, v)
	}
	_, err := d.Token()
	return l, err
}
