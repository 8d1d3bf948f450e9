package web

import (
	"slices"
	"strconv"
	"strings"

	"github.com/a-h/templ"
)

// entry describes one value that can be edited in place.
type entry struct {
	Path    string // JSON Pointer of the value
	Label   string // what it is, in plain words
	Unit    string // of a bare number
	Quiet   bool   // the label is for screen readers only, because a heading says it
	Long    bool   // several lines of text
	List    bool   // a list of words, written "small, tall"
	Ticks   bool   // a list of words, each of the choices ticked or not
	Choices []choice
	More    []choice // to tick, seldom wanted
}

// choice is one of several words allowed, and how it reads.
type choice struct{ Value, Words string }

// wordsAllowed offers words that read as they are written.
func wordsAllowed(words ...string) []choice {
	out := make([]choice, len(words))
	for i, w := range words {
		out[i] = choice{w, unhyphen(w)}
	}
	return out
}

// offered is the list with what stands there now in it, so that looking at a page changes nothing.
func (f entry) offered(now string) []choice {
	for _, c := range f.Choices {
		if c.Value == now {
			return f.Choices
		}
	}
	words := now
	if now == "" {
		words = "not said"
	}
	return append([]choice{{now, words}}, f.Choices...)
}

// tickable are the choices in the order in which they stand in the list, then the others, so that ticking one more keeps that order.
func (f entry) tickable(v view) []tick {
	var out []tick
	for _, now := range listNode(v.text(f.Path)).Items {
		c := choice{now.Text, unhyphen(now.Text)}
		if i := slices.IndexFunc(f.Choices, func(o choice) bool { return o.Value == now.Text }); i >= 0 {
			c = f.Choices[i]
		}
		out = append(out, tick{c, true})
	}
	for _, c := range f.Choices {
		if !slices.ContainsFunc(out, func(t tick) bool { return t.Value == c.Value }) {
			out = append(out, tick{c, false})
		}
	}
	return out
}

// more are the choices that are seldom wanted and not ticked.
func (f entry) more(v view) []choice {
	shown := f.tickable(v)
	return slices.DeleteFunc(slices.Clone(f.More), func(c choice) bool {
		return slices.ContainsFunc(shown, func(t tick) bool { return t.Value == c.Value })
	})
}

// tick is a choice that may be ticked.
type tick struct {
	choice
	Ticked bool
}

// sends is the value that a ticked box sends: the list, and what is in it.
func (f entry) sends(c choice) string { return f.Path + " " + c.Value }

// id is that of what is said to be wrong with the value, unique within a page.
func (f entry) id(v view) string {
	return "wrong-" + v.Region + strings.NewReplacer("/", "-", "~", "-", "{", "", "}", "").Replace(f.Path)
}

func (f entry) described(v view) templ.Attributes {
	if v.wrong(f.Path) == "" {
		return nil
	}
	return templ.Attributes{"aria-invalid": "true", "aria-describedby": f.id(v)}
}

// size gives an input about the room its text needs.
func (f entry) size(v view) string {
	return strconv.Itoa(min(max(len([]rune(v.text(f.Path)))+1, 6), 40))
}

// under is the entry of a new item: its path begins there.
func (f entry) under(item string) entry {
	f.Path = item + f.Path
	return f
}

// fieldOf is a field with a label and a unit.
func fieldOf(path, label, unit string) entry { return entry{Path: path, Label: label, Unit: unit} }

// isNumber reports whether what stands at a place begins with a number, or nothing stands there yet: words such as "right" have no unit.
func (v view) isNumber(path string) bool {
	first, _ := firstRune(v.text(path))
	return first == "" || strings.ToLower(first) == strings.ToUpper(first)
}

// quietly is a field in a table whose head says what it is.
func quietly(path, label string) entry { return entry{Path: path, Label: label, Quiet: true} }
