package begin

import (
	"fmt"

	"tumblehome/build/tree"
)

// conditions are the words that hold for some answers, for the variants of fragments.
func (a Answers) conditions() []string {
	_, height := class(a.body().ID)
	if height == "mid" {
		height = "middling"
	}
	holds := append([]string{height}, a.Wishes...)
	holds = append(holds, numbers[min(len(a.sleepers()), len(numbers))-1])
	beside := a.length() - a.measure().long
	if beside < tight {
		holds = append(holds, "tight")
	}
	if beside < scant {
		holds = append(holds, "scant")
	}
	if beside < tighter {
		holds = append(holds, "tighter")
	}
	if a.measure().long <= a.across() {
		return append(holds, "wide")
	}
	return append(holds, "narrow")
}

// numbers are the sleepers' names within a fragment.
var numbers = []string{"one", "two", "three", "four"}

// arranged is the chosen arrangement for the sleepers and the body.
func (a Answers) arranged() (*tree.Node, error) {
	f, ok := fragments()[a.Arrangement]
	if length, _ := class(a.body().ID); !ok || f.title == "" || !startsWith(a.Arrangement, length) {
		return nil, fmt.Errorf("there is no starting arrangement %q for a %s van", a.Arrangement, a.body().Name)
	}
	holds := a.conditions()
	n := tree.Merge(fragments()["kit"].under(holds), tree.Setting("", f.under(holds)))
	return a.named(a.measure().put(n)), nil
}

func startsWith(id, length string) bool {
	return len(id) > len(length) && id[:len(length)+1] == length+"-"
}

// named gives the poses of an arrangement to the sleepers, and leaves out those of people who are not there.
func (a Answers) named(n *tree.Node) *tree.Node {
	modes := n.Get("modes")
	if modes == nil {
		return n
	}
	all := a.sleepers()
	out := &tree.Node{Kind: tree.Map}
	for _, mode := range modes.Entries {
		people := &tree.Node{Kind: tree.Map}
		for _, pose := range entriesOf(mode.Value.Get("people")) {
			for i, word := range numbers {
				if pose.Key == word && i < len(all) {
					people.Entries = append(people.Entries, tree.Entry{Key: all[i].ID, Value: pose.Value})
				}
			}
		}
		value := tree.Remove(mode.Value, "/people")
		if len(people.Entries) > 0 {
			value = tree.Merge(value, tree.Setting("/people", people))
		}
		if value.Entries == nil {
			value = &tree.Node{Kind: tree.Map}
		}
		out.Entries = append(out.Entries, tree.Entry{Key: mode.Key, Value: value})
	}
	return tree.Merge(tree.Remove(n, "/modes"), tree.Setting("/modes", out))
}
