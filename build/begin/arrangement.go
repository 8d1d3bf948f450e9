package begin

import (
	"fmt"
	"slices"

	"tumblehome/build/tree"
)

// An Arrangement is one way to begin.
type Arrangement struct {
	ID     string
	Name   string
	Says   string // what it is
	Suits  string // whom it suits
	Sleeps int
	Lacks  []string // wishes it does not answer
	Note   string   // who finds no bed in it; empty if all do
}

// Offers are the three starting arrangements for the body, those that suit the wishes and the sleepers best first.
func Offers(a Answers) []Arrangement {
	length, _ := class(a.body().ID)
	wished := a.Wishes
	if len(wished) == 0 {
		wished = []string{"kitchen", "seats-table"} // what is assumed where nothing was said
	}
	type offer struct {
		Arrangement
		score int
	}
	var offers []offer
	for _, id := range arrangementIDs() {
		if !startsWith(id, length) {
			continue
		}
		f := fragments()[id]
		c := f.cardUnder(a.conditions())
		o := offer{Arrangement: Arrangement{ID: id, Name: c.title, Says: c.says, Suits: c.suits, Sleeps: f.sleeps}}
		n := len(a.sleepers())
		if f.sleeps < n {
			o.Note = fmt.Sprintf("It sleeps %s of your %s.", numbers[f.sleeps-1], numbers[min(n, len(numbers))-1])
			o.score = -3 * (n - f.sleeps)
		}
		o.score -= max(0, f.sleeps-n) // room for people who are not there
		for _, w := range wished {
			switch {
			case slices.Contains(c.good, w):
				o.score += 2
			case a.wants(w) && !f.answers(w, a.conditions()):
				o.Lacks = append(o.Lacks, w)
				o.score--
			}
		}
		offers = append(offers, o)
	}
	slices.SortStableFunc(offers, func(a, b offer) int { return b.score - a.score })
	out := make([]Arrangement, len(offers))
	for i, o := range offers {
		out[i] = o.Arrangement
	}
	return out
}

// arrangementIDs are those of all starting arrangements, sorted.
func arrangementIDs() []string {
	var ids []string
	for id, f := range fragments() {
		if f.title != "" {
			ids = append(ids, id)
		}
	}
	slices.SortFunc(ids, tree.Compare)
	return ids
}
