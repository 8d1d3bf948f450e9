package web

import (
	"tumblehome/internal/store"
	"tumblehome/internal/words"
	"tumblehome/reckon"
	"tumblehome/trade/working"
)

// comparedRow is one figure across the build and its alternatives; a cell is empty where nothing differs.
type comparedRow struct {
	Label, Now string
	Then       []string
}

// comparison lays every figure that differs anywhere in a row; per-case details are left to the page of the alternative.
func comparison(v view, all []beside) []comparedRow {
	moved := map[string]bool{}
	for _, a := range all {
		for _, c := range telling(a.Changes) {
			moved[c.Code] = true
		}
	}
	var out []comparedRow
	for _, f := range v.Figures {
		if !moved[f.Code] {
			continue
		}
		row := comparedRow{Label: f.Label, Now: words.Figure(f)}
		for _, a := range all {
			row.Then = append(row.Then, cellOf(f, a.to))
		}
		out = append(out, row)
	}
	return out
}

func cellOf(f working.Figure, to *reckon.Reckoning) string {
	if to == nil {
		return "not known"
	}
	then, ok := to.Figure(f.Code)
	switch {
	case !ok:
		return "none"
	case words.Signed(then.Value-f.Value, f.Unit) == "no change":
		return ""
	}
	return words.Figure(then) + " (" + words.Signed(then.Value-f.Value, f.Unit) + ")"
}

// historyStart is the number of the first revision listed.
func historyStart(list []store.Revision) string {
	if len(list) == 0 {
		return "1"
	}
	return count(list[0].N)
}
