package store

import (
	"context"
	"strings"
)

// Undo takes back the newest edit that has not been taken back, whoever made it, as a new revision.
func (s *Store) Undo(ctx context.Context, by string) (Revision, error) {
	return s.reverse(ctx, Undid, by, 0)
}

// Redo brings back what the last undo took away, as a new revision. An edit after the undo ends that possibility.
func (s *Store) Redo(ctx context.Context, by string) (Revision, error) {
	return s.reverse(ctx, Redid, by, 0)
}

// UndoSeen is Undo for somebody who sees revision seen. It refuses with ErrMovedOn when that is no longer the newest, so that two
// people who undo the same edit at once do not take back two.
func (s *Store) UndoSeen(ctx context.Context, seen int, by string) (Revision, error) {
	return s.reverse(ctx, Undid, by, seen)
}

// RedoSeen is Redo in the same way.
func (s *Store) RedoSeen(ctx context.Context, seen int, by string) (Revision, error) {
	return s.reverse(ctx, Redid, by, seen)
}

func (s *Store) reverse(ctx context.Context, kind Kind, by string, seen int) (Revision, error) {
	return s.writeStep(ctx, func(now state) (step, error) {
		if seen != 0 && seen != now.revision.N {
			return step{}, ErrMovedOn
		}
		stack, none := now.stacks.undo, ErrNothingToUndo
		if kind == Redid {
			stack, none = now.stacks.redo, ErrNothingToRedo
		}
		n, ok := top(stack)
		if !ok {
			return step{}, none
		}
		r, err := rowAt(ctx, s.read, n)
		if err != nil {
			return step{}, err
		}
		target, err := r.revision()
		if err != nil {
			return step{}, damagedAt(n, err)
		}
		return step{kind, target.Inverse, reversal(kind, target, by), by, now.revision.N}, nil
	})
}

// reversal says what is taken back or brought back, and whose it was when it was somebody else's.
func reversal(kind Kind, target Revision, by string) string {
	if target.Kind != Made {
		return string(kind) + ": " + strings.TrimPrefix(target.Words, string(target.Kind)+": ")
	}
	words := string(kind) + ": " + target.Words
	if target.By != "" && target.By != by {
		words += " (by " + target.By + ")"
	}
	return words
}

// CanUndo and CanRedo say whether there is something to take back, or to bring back.
func (s *Store) CanUndo(context.Context) (undo, redo bool, err error) {
	now := s.now()
	return len(now.stacks.undo) > 0, len(now.stacks.redo) > 0, nil
}
