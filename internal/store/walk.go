package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"math"

	"tumblehome/build"
	"tumblehome/build/tree"
)

// walker follows the history revision by revision and holds every seal against what it seals.
type walker struct {
	last   row
	stacks stacks
	from   int        // the whole document from which node is replayed
	node   *tree.Node // nil before that
}

// follow takes the next row.
func (w *walker) follow(r row) error {
	if r.n != w.last.n+1 || r.parent != w.last.n {
		return damagedAt(w.last.n+1, fmt.Errorf("revision %d follows revision %d", r.n, w.last.n))
	}
	if r.seal != r.sealAfter(w.last.seal) {
		return damagedAt(r.n, nil)
	}
	if err := w.stacks.add(r.n, Kind(r.kind)); err != nil {
		return damagedAt(r.n, err)
	}
	if r.n > w.from && w.node != nil {
		patch, err := tree.ParsePatch([]byte(r.patch))
		if err != nil {
			return damagedAt(r.n, err)
		}
		w.node = tree.Merge(w.node, patch)
	}
	w.last = r
	return nil
}

// state is what the walk has come to, its document held against the newest digest and decoded.
func (w *walker) state(o Options) (state, error) {
	if w.last.n == 0 || w.node == nil || digestOf(w.node) != w.last.digest {
		return state{}, damagedAt(w.last.n, nil)
	}
	revision, err := w.last.revision()
	if err != nil {
		return state{}, damagedAt(w.last.n, err)
	}
	now := state{revision: revision, seal: w.last.seal, digest: w.last.digest, node: w.node, stacks: w.stacks}
	if o.undecoded {
		return now, nil
	}
	if now.document, err = build.DecodeTree(w.node, o.Rows); err != nil {
		return state{}, &Trouble{Kind: ErrUnfit, Cause: err, Says: fmt.Sprintf("The build is whole, but its document (revision %d) breaks a rule "+
			"that this version of the program has. Nothing was changed. Write it out with `tumblehome export --as-kept`, mend it and import it under another name.", revision.N)}
	}
	return now, nil
}

// walkAll follows the whole history.
func walkAll(ctx context.Context, db asker, o Options) (state, error) {
	from, node, err := wholeBefore(ctx, db, math.MaxInt32)
	if errors.Is(err, ErrNoRevision) {
		return state{}, trouble(ErrDamaged, "The build's file holds no revision. Restore a backup and keep this file.")
	}
	if err != nil {
		return state{}, err
	}
	w := &walker{from: from, node: node}
	if err := each(ctx, db, 0, math.MaxInt32, w.follow); err != nil {
		return state{}, err
	}
	return w.state(o)
}

// catchUp reads what another program has written since, and holds it to the same seals.
func (s *Store) catchUp(ctx context.Context, db asker) error {
	now := s.now()
	var newest sql.NullInt64
	if err := db.QueryRowContext(ctx, "SELECT max(n) FROM revision").Scan(&newest); err != nil {
		return err
	}
	switch {
	case int(newest.Int64) == now.revision.N:
		return nil
	case int(newest.Int64) < now.revision.N:
		return trouble(ErrDamaged, "The build's file has lost revisions since it was opened (%d of %d are there). Keep it and restore a backup.", newest.Int64, now.revision.N)
	}
	w := &walker{from: now.revision.N, node: now.node, last: row{n: now.revision.N, seal: now.seal, digest: now.digest}}
	w.stacks.undo = append(w.stacks.undo, now.stacks.undo...)
	w.stacks.redo = append(w.stacks.redo, now.stacks.redo...)
	if err := each(ctx, db, now.revision.N, math.MaxInt32, w.follow); err != nil {
		return err
	}
	next, err := w.state(s.options)
	if err == nil {
		s.setHead(next)
	}
	return err
}
