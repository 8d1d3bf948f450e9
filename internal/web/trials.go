package web

import (
	"strings"
	"sync"

	"tumblehome/reckon/remedy"
)

// trials is what came of trying the proposals of one revision, filled in the background.
type trials struct {
	mu    sync.Mutex
	known map[string][]remedy.Tried // by the finding they are for
}

func (t *trials) put(key string, all []remedy.Tried) {
	t.mu.Lock()
	defer t.mu.Unlock()
	if t.known == nil {
		t.known = map[string][]remedy.Tried{}
	}
	t.known[key] = all
}

func (t *trials) of(key string) []remedy.Tried {
	t.mu.Lock()
	defer t.mu.Unlock()
	return t.known[key]
}

// tryRemedies tries every proposal of a revision with a real reckoning, until a newer revision makes that idle, and then tells the pages.
func (d *desk) tryRemedies(now *state) {
	worker := remedy.Worker{Reckon: d.reckon, Rows: d.rows, Today: now.Day}
	something := false
	for _, f := range now.Findings {
		if d.now.Load() != now {
			return
		}
		if f.Accepted == "" && len(f.Proposals) > 0 {
			now.trials.put(f.Key()+f.Mode, worker.Try(now.Reckoning, f))
			something = true
		}
	}
	if something && d.now.Load() == now {
		d.tellOf("remedies")
	}
}

// tried is what came of the i-th proposal of a note, once it has been tried.
func (v view) tried(n note, i int) (remedy.Tried, bool) {
	for _, t := range v.trials.of(n.Key() + n.Mode) {
		if string(t.Patch) == string(n.Proposals[i].Patch) {
			return t, true
		}
	}
	return remedy.Tried{}, false
}

// triedWords say what came of a proposal: that it helps and what else it moves, or why it is no way out.
func triedWords(t remedy.Tried) string {
	switch {
	case t.Clears:
		return "tried, that clears it" + alsoMoves(t)
	case t.Eases:
		return "tried, that eases it" + alsoMoves(t)
	case len(t.Brings) > 0:
		return "Tried in vain: " + decapital(t.Words) + ". Then " + decapital(t.Brings[0].Title) + "."
	}
	return "Tried in vain: " + decapital(t.Words) + "."
}

// alsoMoves names the figures a proposal moves, the most telling first.
func alsoMoves(t remedy.Tried) string {
	var told []string
	for _, c := range telling(t.Moves) {
		if len(told) < 2 {
			told = append(told, decapital(c.Label)+" "+changeOf(c))
		}
	}
	if len(told) == 0 {
		return ""
	}
	return ": " + strings.Join(told, ", ")
}
