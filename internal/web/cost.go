package web

import (
	"cmp"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/internal/words"
	"tumblehome/trade/stock"
)

// thingCost is what one fitting costs.
type thingCost struct {
	ID, Name, Address string
	Planned, ToCome   string
	Standing          string
	Entries           []entry
}

// thingCosts lists the fittings with what they cost and how far that can be trusted, the dearest first.
func thingCosts(v view) []thingCost {
	lines := slices.Clone(v.Stock.Lines)
	slices.SortStableFunc(lines, func(a, b stock.Line) int { return cmp.Compare(b.Plan.Cost.Likely, a.Plan.Cost.Likely) })
	var out []thingCost
	for _, l := range lines {
		if len(l.Pointers) == 0 {
			continue
		}
		id, ok := fittingOf(l.Pointers[0])
		if !ok || l.Unit != "piece" {
			continue
		}
		at := "/fittings/" + id + "/costs"
		out = append(out, thingCost{
			ID: id, Name: capital(v.name(id)), Address: "/arrangement#fitting-" + id,
			Planned: v.money(l.Plan.Cost.Likely), ToCome: v.money(l.Buy.Cost.Likely), Standing: standingOf(l),
			Entries: []entry{
				quietly(at+"/price", "price of "+unhyphen(id)),
				{Path: at + "/standing", Label: "how sure, " + unhyphen(id), Quiet: true, Choices: standings},
			},
		})
	}
	return out
}

var standings = []choice{{"guess", "a guess"}, {"quote", "heard in a shop"}, {"paid", "paid"}, {"free", "given"}}

// standingOf says where the price of a line comes from when the document says none.
func standingOf(l stock.Line) string {
	switch {
	case l.Unpriced:
		return "no price yet"
	case l.Plan.Stated == nil:
		return "costs nothing"
	case l.Plan.Stated.Pointer == "":
		return "from the catalogue"
	}
	return ""
}

func (v view) money(amount float64) string { return words.Amount(amount, v.Doc.Build.Currency) }

// materialCost is one material that is bought by measure.
type materialCost struct {
	Name, Packs, ToBuy, Planned, ToCome string
}

func materialCosts(v view) []materialCost {
	var out []materialCost
	for _, l := range v.Stock.Lines {
		if l.Unit == "piece" && len(l.Pointers) > 0 {
			if _, ok := fittingOf(l.Pointers[0]); ok {
				continue
			}
		}
		out = append(out, materialCost{
			Name:  v.materialName(l.Of),
			Packs: packWords(l.Plan), ToBuy: packWords(l.Buy), Planned: v.money(l.Plan.Cost.Likely), ToCome: v.money(l.Buy.Cost.Likely),
		})
	}
	return out
}

func packWords(p stock.Purchase) string {
	if p.Packs == 0 {
		return "none"
	}
	return strings.TrimSpace(count(p.Packs) + " × " + cmp.Or(p.Each, "piece"))
}

// spendingOf are the ids of what was paid, the newest first.
func spendingOf(v view) []string {
	ids := build.SortedKeys(v.Doc.Spending)
	slices.SortStableFunc(ids, func(a, b string) int {
		return v.Doc.Spending[b].Date.Compare(v.Doc.Spending[a].Date)
	})
	return ids
}

// newSpending is where the next payment is written down.
func newSpending(v view) string {
	return "/spending/" + free("s-"+count(len(v.Doc.Spending)+1), v.Doc.Spending)
}

func pointerOf(path string) tree.Pointer { return tree.Pointer(path) }

// fragmentID makes an id of an element from a path of the document.
func fragmentID(path string) string { return strings.Trim(strings.ReplaceAll(path, "/", "-"), "-") }
