package tree

import (
	"bytes"
	"encoding/json"
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
