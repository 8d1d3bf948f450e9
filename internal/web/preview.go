package web

import (
	"net/http"
	"slices"

	"tumblehome/internal/words"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

// moved is one figure that a change would move, with its words.
type movedFigure struct {
	Code  string  `json:"code"`
	Label string  `json:"label"`
	Unit  string  `json:"unit"`
	From  float64 `json:"from"`
	To    float64 `json:"to"`
	Words string  `json:"words"`
}

// seen is one margin note that a change would bring or take away.
type seenNote struct {
	Code     string           `json:"code"`
	Severity finding.Severity `json:"severity"`
	Title    string           `json:"title"`
	About    []string         `json:"about"`
}

// previewAnswer is what follows from something not yet saved.
type previewAnswer struct {
	Revision int           `json:"revision"`
	Figures  []movedFigure `json:"figures"`
	Appeared []seenNote    `json:"appeared"`
	Cleared  []seenNote    `json:"cleared"`
	Sentence string        `json:"sentence"`
	Fouls    []string      `json:"fouls"` // fittings that would be in each other's way
}

// preview answers what a change would do. Nothing is saved.
func (s *Server) preview(w http.ResponseWriter, r *http.Request) {
	wanted, err := readWish(r)
	if err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	e, err := s.editOf(r, wanted)
	if err != nil {
		s.refuse(w, r, err, wanted.changes)
		return
	}
	would, err := s.desk.try(r.Context(), e.Patch)
	if err != nil {
		s.refuse(w, r, err, wanted.changes)
		return
	}
	n := newsIn(would.Difference)
	sendJSON(w, http.StatusOK, previewAnswer{
		Revision: would.from.Revision.N,
		Figures:  figuresMoved(would.Difference),
		Appeared: notesSeen(slices.Concat(n.Appeared, n.Graver)), Cleared: notesSeen(n.Cleared),
		Sentence: sentence(e.Words, withIt(would.from.Reckoning, would.to), would.Difference),
		Fouls:    fouls(would.to.Findings, wanted.Mode),
	})
}

func figuresMoved(d reckon.Difference) []movedFigure {
	out := []movedFigure{}
	for _, c := range d.Changes {
		if words.Moved(c) {
			out = append(out, movedFigure{c.Code, c.Label, c.Unit, c.From, c.To, words.Change(c)})
		}
	}
	return out
}

func notesSeen(all []finding.Finding) []seenNote {
	out := []seenNote{}
	for _, f := range all {
		out = append(out, seenNote{f.Code, f.Severity, f.Title + inMode(f), f.About})
	}
	return out
}

// fouls names the fittings that findings of fault or worse in a mode are about, where they are about places.
func fouls(all []finding.Finding, mode string) []string {
	out := []string{}
	for _, f := range all {
		if f.Severity < finding.Fault || f.Mode != "" && mode != "" && f.Mode != mode || !startsWith(f.Code, "fit", "arrangement") {
			continue
		}
		for _, about := range f.About {
			if id, ok := fittingOf(about); ok && !slices.Contains(out, id) {
				out = append(out, id)
			}
		}
	}
	return out
}
