package web

import (
	"slices"

	"tumblehome/build"
	"tumblehome/reckon"
)

// unjoinedAnswer says what it means that something is not joined up.
func unjoinedAnswer(v view, all []reckon.Unjoined) string {
	battery := slices.ContainsFunc(all, func(u reckon.Unjoined) bool { return u.Is == reckon.Feeds })
	switch {
	case v.Doc.Power == nil && battery:
		return "A battery stands in the van, but it is not told to feed anything. The nights above are reckoned as if everything were joined to it; no cable and no fuse is."
	case len(bankChoices(v)) == 0 && battery:
		return "A battery stands in the van, but it is not told to feed anything."
	case len(bankChoices(v)) == 0:
		return "These things stand in the van, and there is no battery yet to join them to. Add one on the page Arrangement."
	}
	return "These things stand in the van without a cable: what they take or bring is left out."
}

func unjoinedWords(u reckon.Unjoined) string {
	name := capital(u.Name)
	switch u.Is {
	case reckon.Feeds:
		return name + " feeds nothing"
	case reckon.Charges:
		return name + " charges nothing"
	case reckon.Controls:
		return name + " controls nothing"
	}
	return name + " is in no circuit"
}

// joinWords say what the click does.
func joinWords(v view, u reckon.Unjoined) string {
	bank := ""
	if v.Doc.Power != nil {
		if ids := build.SortedKeys(v.Doc.Power.Batteries); len(ids) > 0 {
			bank = unhyphen(ids[0])
		}
	}
	switch u.Is {
	case reckon.Feeds:
		if bank == "" {
			return "let it feed the van"
		}
		return "join it to the battery " + bank
	case reckon.Charges:
		return "let it charge the battery"
	case reckon.Controls:
		return "let it control the panels"
	}
	return "give it a cable"
}
