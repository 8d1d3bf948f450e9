package begin

import (
	"cmp"
	"embed"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"sync"

	"tumblehome/build/tree"
)

//go:embed arrangements/*.yaml
var files embed.FS

// A fragment is part of a document, with what is otherwise under certain conditions.
//
//	with: part of a document
//	if:
//	  low: {without: [dotted paths], with: part of a document, title, says, suits, good-for: as the whole has them}
//	  low and toilet: …
//
// A condition is one word or several joined by "and": a height (low, middling, high), a wish, wide or narrow (whether the tallest
// can lie across), scant, tight or even tighter (how little length is left beside a bed lengthwise), how many sleep (one to four).
type fragment struct {
	card
	sleeps   int
	with     *tree.Node
	variants []variant
}

// card is what is told of an arrangement before it is picked.
type card struct {
	title, says, suits string
	good               []string // wishes it answers well
}

type variant struct {
	card
	when    []string
	without []string
	with    *tree.Node
}

// fragments are all embedded fragments by file name without its end. They are part of the program; a test reads them all.
var fragments = sync.OnceValue(func() map[string]fragment {
	all, err := readFragments()
	if err != nil {
		panic(err)
	}
	return all
})

func readFragments() (map[string]fragment, error) {
	all := map[string]fragment{}
	entries, err := files.ReadDir("arrangements")
	if err != nil {
		return nil, err
	}
	for _, e := range entries {
		text, err := files.ReadFile("arrangements/" + e.Name())
		if err != nil {
			return nil, err
		}
		source, err := tree.Parse(e.Name(), text)
		if err != nil {
			return nil, err
		}
		f, err := fragmentOf(source.Root)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", e.Name(), err)
		}
		all[strings.TrimSuffix(e.Name(), ".yaml")] = f
	}
	return all, nil
}

func fragmentOf(n *tree.Node) (fragment, error) {
	f := fragment{card: cardOf(n), with: n.Get("with")}
	if sleeps := text(n, "sleeps"); sleeps != "" {
		count, err := strconv.Atoi(sleeps)
		if err != nil {
			return f, err
		}
		f.sleeps = count
	}
	for _, e := range entriesOf(n.Get("if")) {
		v := variant{card: cardOf(e.Value), when: strings.Split(e.Key, " and "), without: texts(e.Value.Get("without")), with: e.Value.Get("with")}
		f.variants = append(f.variants, v)
	}
	if f.with == nil {
		return f, fmt.Errorf("there is no with")
	}
	return f, nil
}

func cardOf(n *tree.Node) card {
	return card{title: text(n, "title"), says: text(n, "says"), suits: text(n, "suits"), good: texts(n.Get("good-for"))}
}

// cardUnder is what is told where these conditions hold.
func (f fragment) cardUnder(holds []string) card {
	c := f.card
	for _, v := range f.variants {
		if !v.applies(holds) {
			continue
		}
		c.title, c.says, c.suits = cmp.Or(v.title, c.title), cmp.Or(v.says, c.says), cmp.Or(v.suits, c.suits)
		if v.good != nil {
			c.good = v.good
		}
	}
	return c
}

// under is the fragment as it is where these conditions hold. Variants are taken in their order.
func (f fragment) under(holds []string) *tree.Node {
	n := f.with
	for _, v := range f.variants {
		if !v.applies(holds) {
			continue
		}
		for _, path := range v.without {
			n = tree.Remove(n, tree.Dotted(path))
		}
		if v.with != nil {
			n = tree.Merge(n, tree.Setting("", v.with))
		}
	}
	return n
}

// answers tells whether a wish changes anything under these conditions.
func (f fragment) answers(wish string, holds []string) bool {
	return slices.ContainsFunc(f.variants, func(v variant) bool { return slices.Contains(v.when, wish) && v.applies(holds) })
}

func (v variant) applies(holds []string) bool {
	return !slices.ContainsFunc(v.when, func(word string) bool { return !slices.Contains(holds, word) })
}

func text(n *tree.Node, key string) string {
	if at := n.Get(key); at != nil {
		return at.Text
	}
	return ""
}

func texts(n *tree.Node) []string {
	if n == nil {
		return nil
	}
	out := make([]string, len(n.Items))
	for i, item := range n.Items {
		out[i] = item.Text
	}
	return out
}

func entriesOf(n *tree.Node) []tree.Entry {
	if n == nil {
		return nil
	}
	return n.Entries
}
