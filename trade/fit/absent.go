package fit

import (
	"encoding/json"
	"fmt"
	"slices"

	"tumblehome/trade/finding"
)

var absentSource = finding.Source{Text: "where this build says people and things are", Sure: finding.Computed}

// absent finds people who lie, sit or cook at what is not in the van then, or has no place.
func (w *worker) absent() {
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		for _, pose := range mode.Poses {
			i, known := w.index[pose.At]
			if !known || len(mode.Standings[i].Solid) > 0 {
				continue
			}
			name := pose.Person
			if p, ok := w.people[pose.Person]; ok {
				name = w.in.People[p].name()
			}
			w.find(finding.Finding{
				Code: "fit.absent", Severity: finding.Fault, Mode: mode.Name, Source: absentSource,
				About: []string{pointer("fittings", w.in.Fittings[i].ID), pointer("people", pose.Person)},
				Title: fmt.Sprintf("%s %s at %s, which is not there in the mode %q", name, pose.Does, w.name(i), mode.Name),
				Words: "It is out of the van then, or nothing says yet where it stands. Say where it is, or where else they are.", Proposals: w.leftThere(mode, i),
			})
		}
	}
}

// leftThere proposes to leave a thing where it rests in a mode, if it is that mode that takes it, or what carries it, away.
func (w *worker) leftThere(mode *Mode, i int) []finding.Proposal {
	if w.resting(i) == nil {
		return nil
	}
	for ; i >= 0; i = w.carriers[i] {
		if slices.ContainsFunc(mode.Movers, func(m Mover) bool { return m.Fitting == i }) {
			patch, err := json.Marshal(map[string]any{"modes": map[string]any{mode.Name: map[string]any{"take": map[string]any{w.in.Fittings[i].ID: nil}}}})
			if err != nil {
				return nil
			}
			return []finding.Proposal{{Words: fmt.Sprintf("leave %s where it rests in the mode %q", w.name(i), mode.Name), Patch: patch}}
		}
	}
	return nil
}
