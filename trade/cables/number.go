package cables

import (
	"encoding/json"
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// number names the cables: by the number that is written, else by the next that is free. Labels lie in the van; what is added later moves no number that is
// written.
func (r *Result) number() {
	taken := map[int]bool{}
	for i := range r.Cables {
		if n := r.Cables[i].said; n > 0 && !taken[n] {
			r.Cables[i].Number, taken[n] = label(n), true
		}
	}
	next := 1
	for i := range r.Cables {
		c := &r.Cables[i]
		c.colour()
		if c.Number != "" {
			continue
		}
		for taken[next] {
			next++
		}
		c.Number, taken[next] = label(next), true
	}
}

func label(n int) string { return fmt.Sprintf("W%d", n) }

// counted is the number without its letter.
func (c *Cable) counted() int {
	n, err := strconv.Atoi(strings.TrimPrefix(c.Number, "W"))
	if err != nil { // a mistake of the program: every cable has been numbered
		panic(err)
	}
	return n
}

// InOrder are the cables by their numbers.
func (r Result) InOrder() []Cable {
	return slices.SortedStableFunc(slices.Values(r.Cables), func(a, b Cable) int { return a.counted() - b.counted() })
}

// Kept is the patch that writes the number of every cable where none is written, so that it stays; none where all are.
func (r Result) Kept() json.RawMessage {
	var edits []edit
	for i := range r.Cables {
		if c := &r.Cables[i]; label(c.said) != c.Number {
			about, key := c.numberKey()
			edits = append(edits, edit{about, key, c.counted()})
		}
	}
	if len(edits) == 0 {
		return nil
	}
	return proposeAll("", edits...).Patch
}

// numberKey is where its number is written, or would be.
func (c *Cable) numberKey() (about, key string) {
	switch {
	case c.Role == Bond:
		return c.About, "bond-number"
	case c.ID == "":
		return c.About, "number"
	}
	return c.way.About, "number"
}
