package web

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"tumblehome/build/begin"
	"tumblehome/internal/words"
	"tumblehome/reckon"
	"tumblehome/reckon/outlook"
	"tumblehome/trade/finding"
)

// startOffer is one starting arrangement, worked out.
type startOffer struct {
	begin.Arrangement
	Reckoning *reckon.Reckoning
	Picked    bool
}

// clashWords says what does not go together in an arrangement with these people and wishes, before it is picked.
func clashWords(o startOffer) string {
	var clashes []string
	for _, f := range o.Reckoning.Findings {
		told := slices.ContainsFunc(clashes, func(one string) bool { return strings.HasPrefix(f.Title, one) }) // by day already, or by night as well
		if f.Severity >= finding.Fault && !told {
			clashes = append(clashes, f.Title)
		}
	}
	switch n := len(clashes); {
	case n == 0:
		return ""
	case n > mostClashes:
		clashes = append(clashes[:mostClashes], fmt.Sprintf("and %d more", n-mostClashes))
	}
	return "To be put right afterwards: " + strings.Join(clashes, "; ") + "."
}

// mostClashes is how many are named on one card.
const mostClashes = 2

// lacksWords names the wishes that an arrangement leaves open.
func lacksWords(o begin.Arrangement) string {
	var names []string
	for _, w := range begin.Wishes() {
		for _, lacked := range o.Lacks {
			if w.ID == lacked {
				names = append(names, strings.ToLower(w.Name[:1])+w.Name[1:])
			}
		}
	}
	if len(names) == 0 {
		return ""
	}
	return "Not in it: " + strings.Join(names, ", ") + "."
}

// offerFigures are the figures of an arrangement by which it is told from the others.
func offerFigures(o startOffer, f firstAnswers) string {
	one := outlook.Of(o.Arrangement, o.Reckoning)
	return fmt.Sprintf("About %s and %.0f weekends; %s to spare on %s.", f.money(one.Money.Likely), math.Ceil(one.Weekends.Likely),
		words.Amount(one.Left.Likely, "kg"), one.LeftOn)
}
