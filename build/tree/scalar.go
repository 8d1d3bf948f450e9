package tree

import (
	"regexp"
	"strings"
	"unicode"
)

// guessed is what the YAML 1.2 core schema (section 10.3.2) takes for something
// else than a text, and what older readers do.
var guessed = regexp.MustCompile(`^(~|null|Null|NULL|true|True|TRUE|false|False|FALSE` +
	`|[-+]?[0-9][0-9_]*|0o?[0-7_]+|0x[0-9a-fA-F_]+|0b[01_]+` +
	`|[-+]?(\.[0-9]+|[0-9][0-9_]*(\.[0-9_]*)?)([eE][-+]?[0-9]+)?` +
	`|[-+]?\.(inf|Inf|INF)|\.(nan|NaN|NAN)|<<)$`)

// jsonNumber is a number as RFC 8259 section 6 has it.
var jsonNumber = regexp.MustCompile(`^-?(0|[1-9][0-9]*)(\.[0-9]+)?([eE][-+]?[0-9]+)?$`)

// refused are the texts that Parse refuses unless they are quoted.
var refused = regexp.MustCompile(`^(~|null|Null|NULL|[-+]?\.(inf|Inf|INF)|\.(nan|NaN|NAN)|<<)$`)

func keyText(key string) string {
	if plainSafe(key, true) && !guessed.MatchString(key) {
		return key
	}
	return quote(key)
}

// scalarText writes a scalar plain where YAML reads it back as it is meant.
// Inside a flow map or list fewer characters may stand in it.
func scalarText(n *Node, inFlow bool) string {
	if !plainSafe(n.Text, inFlow) || n.Quoted && guessed.MatchString(n.Text) || refused.MatchString(n.Text) {
		return quote(n.Text)
	}
	return n.Text
}

// plainSafe tells whether a text may stand without quotes. It is stricter than
// YAML 1.2.2 section 7.3.3: when in doubt, quotes.
func plainSafe(s string, inFlow bool) bool {
	if s == "" || strings.TrimSpace(s) != s || strings.HasPrefix(s, "---") || strings.HasPrefix(s, "...") {
		return false
	}
	if strings.Contains(s, "  ") || strings.Contains(s, " #") {
		return false
	}
	for i, r := range s {
		if !plainRune(s, i, r, inFlow) {
			return false
		}
	}
	return true
}

// plainRune tells whether the character r may stand at s[i].
func plainRune(s string, i int, r rune, inFlow bool) bool {
	switch {
	case strings.ContainsRune(",[]{}", r):
		return i > 0 && !inFlow
	case strings.ContainsRune("'%>#!?&=*@`|\"", r):
		return i > 0
	case r == '\\':
		return false
	case r == ':':
		return i > 0 && i+1 < len(s) && isWordByte(s[i+1])
	case r == '-' && i == 0:
		return len(s) > 1 && s[1] >= '0' && s[1] <= '9'
	}
	return r == ' ' || unicode.IsGraphic(r)
}

func isWordByte(c byte) bool {
	return c >= '0' && c <= '9' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z'
}

// quote writes a text in double quotes, as JSON and YAML both read it.
func quote(s string) string {
	const hex = "0123456789abcdef"
	var b strings.Builder
	b.WriteByte('"')
	for _, r := range s {
		switch {
		case r == '"' || r == '\\':
			b.WriteByte('\\')
			b.WriteRune(r)
		case r == '\n':
			b.WriteString(`\n`)
		case r == '\t':
			b.WriteString(`\t`)
		case r < 0x10000 && r != ' ' && !unicode.IsGraphic(r):
			b.WriteString(`\u`)
			for shift := 12; shift >= 0; shift -= 4 {
				b.WriteByte(hex[r>>shift&15])
			}
		default:
			b.WriteRune(r)
		}
	}
	b.WriteByte('"')
	return b.String()
}
