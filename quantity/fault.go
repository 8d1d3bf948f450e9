package quantity

import "strings"

// A Fault says why a text is not the quantity it should be, in words for the
// person who wrote it. It is the error of every Parse function here.
type Fault struct {
	Wrong    string   // what is wrong, quoting the text
	Expected string   // what should stand there: "a length"
	Examples []string // texts that would do
	Near     string   // what was probably meant, or empty
}

// Error is one line: what is wrong; what is expected; what was probably meant.
func (f *Fault) Error() string {
	var b strings.Builder
	b.WriteString(f.Wrong)
	b.WriteString("; expected " + f.Expected)
	if len(f.Examples) > 0 {
		b.WriteString(" such as " + OrList(quoted(f.Examples)))
	}
	if f.Near != "" {
		b.WriteString("; did you mean `" + f.Near + "`?")
	}
	return b.String()
}

// OrList joins words as a sentence does: "a, b or c".
func OrList(words []string) string {
	switch n := len(words); n {
	case 0:
		return ""
	case 1:
		return words[0]
	default:
		return strings.Join(words[:n-1], ", ") + " or " + words[n-1]
	}
}

func quoted(words []string) []string {
	out := make([]string, len(words))
	for i, w := range words {
		out[i] = "`" + w + "`"
	}
	return out
}
