package draw

import "strings"

// appendEscaped writes text so that it can stand between tags and inside double quotes.
func appendEscaped(b []byte, s string) []byte {
	for i := 0; i < len(s); i++ {
		switch s[i] {
		case '<':
			b = append(b, "&lt;"...)
		case '>':
			b = append(b, "&gt;"...)
		case '&':
			b = append(b, "&amp;"...)
		case '"':
			b = append(b, "&quot;"...)
		case '\'':
			b = append(b, "&#39;"...)
		default:
			b = append(b, s[i])
		}
	}
	return b
}

// dataName makes a data attribute's name of lower-case letters, digits and hyphens; a key
// with anything else is left out, since it could end the attribute.
func dataName(key string) string {
	for _, r := range key {
		if !(r >= 'a' && r <= 'z' || r >= '0' && r <= '9' || r == '-') {
			return ""
		}
	}
	return key
}

// safeLink lets through only links within the program: to a place on the page or to one of
// its own pages. "//elsewhere" and "javascript:" are dropped.
func safeLink(href string) string {
	href = cleanText(href)
	switch {
	case strings.HasPrefix(href, "#"):
		return href
	case strings.HasPrefix(href, "/") && !strings.HasPrefix(href, "//") && !strings.Contains(href, `\`):
		return href
	}
	return ""
}
