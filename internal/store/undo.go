package store

import "context"

// Undo takes back the newest edit that has not been taken back, as a new revision.
func (s *Store) Undo(ctx context.Context, by string) (Revision, error) {
	return s.reverse(ctx, Undid, by)
}

// Redo brings back what the last undo took away, as a new revision. An edit after the undo ends that possibility.
func (s *Store) Redo(ctx context.Context, by string) (Revision, error) {
	return s.reverse(ctx, Redid, by)
}

func (s *Store) reverse(ctx context.Context, kind Kind, by string) (Revision, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if err := s.catchUp(ctx); err != nil {
		return Revision{}, err
	}
	undo, redo, err := s.stacks(ctx)
	if err != nil {
		return Revision{}, err
	}
	stack, none := undo, ErrNothingToUndo
	if kind == Redid {
		stack, none = redo, ErrNothingToRedo
	}
	if len(stack) == 0 {
		return Revision{}, none
	}
	target, err := s.revision(ctx, stack[len(stack)-1])
	if err != nil {
		return Revision{}, err
	}
	return s.advance(ctx, kind, target.Inverse, string(kind)+": "+target.Words, by, s.head.revision.N)
}

// CanUndo and CanRedo say whether there is something to take back, or to bring back.
func (s *Store) CanUndo(ctx context.Context) (undo, redo bool, err error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	u, r, err := s.stacks(ctx)
	return len(u) > 0, len(r) > 0, err
}

// stacks replays the kinds of all revisions: which ones undo, and which ones redo, would reverse next. Every revision carries its own
// inverse, so an undo is reversed like any edit.
func (s *Store) stacks(ctx context.Context) (undo, redo []int, err error) {
	rows, err := s.db.QueryContext(ctx, "SELECT n, kind FROM revision ORDER BY n")
	if err != nil {
		return nil, nil, err
	}
	defer func() { err = firstError(err, rows.Close()) }()
	for rows.Next() {
		var n int
		var kind Kind
		if err := rows.Scan(&n, &kind); err != nil {
			return nil, nil, err
		}
		switch kind {
		case Made:
			undo, redo = append(undo, n), nil
		case Undid:
			undo, redo = undo[:len(undo)-1], append(redo, n)
		case Redid:
			undo, redo = append(undo, n), redo[:len(redo)-1]
		}
	}
	return undo, redo, rows.Err()
}

func firstError(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}
