package web

import (
	"context"
	"errors"
	"math"
	"reflect"

	"tumblehome/internal/store"
	"tumblehome/reckon"
	"tumblehome/trade/arrangement"
)

// errElsewhere is a move of things that somebody else moved, turned or stretched while they were under the hand: "so far from there" then means
// another place than the hand meant.
type errElsewhere struct {
	Names string // of the things, as one reads them
	One   bool
	Head  int
}

func (e *errElsewhere) Error() string {
	if e.One {
		return "Somebody else moved or changed " + e.Names + " meanwhile, so your move was not made. It is shown where it stands now; move it again from there."
	}
	return "Somebody else moved or changed " + e.Names + " meanwhile, so your move was not made. They are shown where they stand now; move them again from there."
}

// movedMeanwhile refuses moves of what stands elsewhere now than in the revision that was seen when the moves began. Nothing is asked of a
// move that does not say what it saw.
func (s *Server) movedMeanwhile(ctx context.Context, w wish) error {
	now, err := s.desk.head(ctx)
	if err != nil || w.Seen == 0 || w.Seen == now.Revision.N {
		return err
	}
	then, err := s.desk.at(ctx, w.Seen)
	if err != nil {
		return err
	}
	var gone []string
	for _, m := range w.Moves {
		if !sameStand(then, now, w.Mode, m.Fitting) {
			gone = append(gone, m.Fitting)
		}
	}
	if len(gone) == 0 {
		return nil
	}
	return &errElsewhere{namesIn(now.Node, gone), len(gone) == 1, now.Revision.N}
}

// clashOfMoves is the words of a move that clashes with somebody else's change: that two wanted other numbers says nothing to a hand.
func (s *Server) clashOfMoves(ctx context.Context, err error, moves []reckon.Move) error {
	var clash *store.Conflict
	if len(moves) == 0 || !errors.As(err, &clash) {
		return err
	}
	now, failed := s.desk.head(ctx)
	if failed != nil {
		return err
	}
	ids := make([]string, len(moves))
	for i, m := range moves {
		ids[i] = m.Fitting
	}
	return &errElsewhere{namesIn(now.Node, ids), len(ids) == 1, clash.Head}
}

// standAlike is how far a thing may have shifted and still be where the hand saw it [mm].
const standAlike = 0.5

// sameStand reports whether a fitting stands in both states in one place, one way round and in one shape. What is in only one of them is
// another question.
func sameStand(then, now *state, mode, id string) bool {
	f, was := then.Doc.Fittings[id]
	g, is := now.Doc.Fittings[id]
	if !was || !is {
		return true
	}
	a, b := then.stand(mode, id), now.stand(mode, id)
	if a == nil || b == nil {
		return a == b
	}
	return reflect.DeepEqual(f.Turn, g.Turn) && a.Off == b.Off && a.Placed() == b.Placed() && alike(a.Box, b.Box)
}

// stand is where a fitting is in a mode; where there is no such mode, at rest.
func (s *state) stand(mode, id string) *arrangement.Standing {
	if m := s.Places.Mode(mode); m != nil {
		return m.Find(id)
	}
	return s.Places.Find(id)
}

func alike(a, b arrangement.Box) bool {
	off := max(math.Abs(a.MinX-b.MinX), math.Abs(a.MaxX-b.MaxX), math.Abs(a.MinY-b.MinY), math.Abs(a.MaxY-b.MaxY), math.Abs(a.MinZ-b.MinZ), math.Abs(a.MaxZ-b.MaxZ))
	return off <= standAlike
}
