package build

import (
	"regexp"
	"slices"

	"tumblehome/build/tree"
	"tumblehome/quantity"
)

const longestID = 40

var (
	idText       = regexp.MustCompile("^" + idPattern + "$")
	bayText      = regexp.MustCompile(`^(left|right|roof)-[1-9][0-9]?$`)
	currencyText = regexp.MustCompile(`^[A-Z]{3}$`)
	weekdays     = []string{"monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"}
	axles        = []string{"front", "rear"}
	// misread are ids that other readers of YAML take for something else.
	misread = []string{"true", "false", "null"}
)

// key checks a key of a map: what its keys are, or else that it is a free id.
func (r *reader) key(rules rules, e *tree.Entry) bool {
	r.path = append(r.path, e.Key)
	defer func() { r.path = r.path[:len(r.path)-1] }()
	at := &tree.Node{Text: e.Key, Line: e.Line, Column: e.Column}
	switch rules.keys {
	case "":
		return r.id(rules.reserved, at)
	case "weekday":
		return r.oneKey(weekdays, at)
	case "axle":
		return r.oneKey(axles, at)
	case "bay":
		return r.keyLike(bayText, at, "a bay such as `left-2` or `roof-1`")
	case "currency":
		return r.keyLike(currencyText, at, "a currency such as `EUR`")
	}
	return r.refer(rules.keys, at)
}

// id checks an id that the builder chose.
func (r *reader) id(reserved []string, at *tree.Node) bool {
	f := &quantity.Fault{Expected: "an id of small letters, digits and single dashes, at most 40 of them", Examples: []string{"settle", "bench-2"}}
	switch {
	case slices.Contains(reserved, at.Text) || slices.Contains(misread, at.Text):
		f.Wrong, f.Expected, f.Examples = "`"+at.Text+"` means something else and can not be an id", "another id", nil
	case len(at.Text) > longestID:
		f.Wrong = "`" + clip(at.Text) + "` is too long for an id"
	case !isID(at.Text):
		f.Wrong, f.Near = "`"+clip(at.Text)+"` is no id", idFrom(at.Text)
	default:
		return true
	}
	r.fault(Keys, at, f)
	return false
}

// isID tells whether a text is of the form of idPattern. It is asked for every
// key, so it does without the pattern.
func isID(s string) bool {
	if s == "" || s[0] < 'a' || s[0] > 'z' {
		return false
	}
	for i := range len(s) {
		switch c := s[i]; {
		case c >= 'a' && c <= 'z', c >= '0' && c <= '9':
		case c == '-' && i+1 < len(s) && s[i+1] != '-':
		default:
			return false
		}
	}
	return true
}

var notID = regexp.MustCompile(`[^a-z0-9]+`)

// idFrom makes an id of a name, or nothing.
func idFrom(name string) string {
	id := string(notID.ReplaceAll(lower(name), []byte("-")))
	for len(id) > 0 && (id[0] < 'a' || id[0] > 'z') {
		id = id[1:]
	}
	for len(id) > 0 && id[len(id)-1] == '-' {
		id = id[:len(id)-1]
	}
	if !isID(id) || len(id) > longestID {
		return ""
	}
	return id
}

func lower(s string) []byte {
	b := []byte(s)
	for i, c := range b {
		if c >= 'A' && c <= 'Z' {
			b[i] = c + 'a' - 'A'
		}
	}
	return b
}

func (r *reader) oneKey(words []string, at *tree.Node) bool {
	if slices.Contains(words, at.Text) {
		return true
	}
	r.fault(Keys, at, &quantity.Fault{Wrong: "unknown key `" + clip(at.Text) + "`", Expected: quantity.OrList(words), Near: quantity.Near(at.Text, words)})
	return false
}

func (r *reader) keyLike(pattern *regexp.Regexp, at *tree.Node, expected string) bool {
	if pattern.MatchString(at.Text) {
		return true
	}
	r.fault(Keys, at, &quantity.Fault{Wrong: "unknown key `" + clip(at.Text) + "`", Expected: expected})
	return false
}
