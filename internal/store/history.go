package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"

	"tumblehome/build"
	"tumblehome/build/tree"
)

// wholeEvery is how many revisions lie between two whole documents kept in the file.
const wholeEvery = 50

// asker is a database, or a transaction on one.
type asker interface {
	QueryContext(ctx context.Context, query string, args ...any) (*sql.Rows, error)
	QueryRowContext(ctx context.Context, query string, args ...any) *sql.Row
}

// insert writes the row of a revision, and every fiftieth time the whole document, and reads the row again.
func insert(ctx context.Context, tx *sql.Tx, r row, node *tree.Node) error {
	_, err := tx.ExecContext(ctx, "INSERT INTO revision (n, parent, made, kind, words, maker, patch, inverse) VALUES (?, nullif(?, 0), ?, ?, ?, ?, ?, ?)",
		r.n, r.parent, r.made, r.kind, r.words, r.by, r.patch, r.inverse)
	if err != nil {
		return err
	}
	if _, err := tx.ExecContext(ctx, "INSERT INTO seal (n, digest, seal) VALUES (?, ?, ?)", r.n, r.digest, r.seal); err != nil {
		return err
	}
	if again, err := rowAt(ctx, tx, r.n); err != nil {
		return err
	} else if again != r {
		return errors.New("this change can not be kept: it would read differently afterwards")
	}
	if r.n%wholeEvery != 1 {
		return nil
	}
	return insertWhole(ctx, tx, r.n, node)
}

func insertWhole(ctx context.Context, tx *sql.Tx, n int, node *tree.Node) error {
	text := tree.Write(node)
	if again, err := tree.Parse("revision", text); err != nil {
		return fmt.Errorf("this change can not be kept: %w", err)
	} else if !tree.Equal(again.Root, node) {
		return errors.New("this change can not be kept: its document would read differently afterwards")
	}
	_, err := tx.ExecContext(ctx, "INSERT INTO whole (n, document) VALUES (?, ?)", n, string(text))
	return err
}

const columns = "SELECT r.n, coalesce(r.parent, 0), r.made, r.kind, r.words, r.maker, r.patch, r.inverse, coalesce(s.digest, ''), coalesce(s.seal, '') FROM revision r LEFT JOIN seal s ON s.n = r.n "

func (r *row) scan(from interface{ Scan(...any) error }) error {
	return from.Scan(&r.n, &r.parent, &r.made, &r.kind, &r.words, &r.by, &r.patch, &r.inverse, &r.digest, &r.seal)
}

func rowAt(ctx context.Context, db asker, n int) (r row, err error) {
	err = r.scan(db.QueryRowContext(ctx, columns+"WHERE r.n = ?", n))
	if errors.Is(err, sql.ErrNoRows) {
		err = ErrNoRevision
	}
	return r, err
}

// each calls do for the rows after one revision and up to another, in order.
func each(ctx context.Context, db asker, after, last int, do func(row) error) (err error) {
	rows, err := db.QueryContext(ctx, columns+"WHERE r.n > ? AND r.n <= ? ORDER BY r.n", after, last)
	if err != nil {
		return err
	}
	defer func() { err = firstError(err, rows.Close()) }()
	for rows.Next() {
		var r row
		if err := r.scan(rows); err != nil {
			return err
		}
		if err := do(r); err != nil {
			return err
		}
	}
	return rows.Err()
}

// nodeAt is the document of a revision, replayed from the nearest whole one and held against the digest that was kept with it.
func (s *Store) nodeAt(ctx context.Context, n int) (*tree.Node, error) {
	if now := s.now(); n == now.revision.N {
		return now.node, nil
	}
	from, node, err := wholeBefore(ctx, s.read, n)
	if err != nil {
		return nil, err
	}
	return replay(ctx, s.read, node, from, n)
}

// wholeBefore is the last whole document at or before a revision.
func wholeBefore(ctx context.Context, db asker, n int) (from int, node *tree.Node, err error) {
	var text string
	err = db.QueryRowContext(ctx, "SELECT n, document FROM whole WHERE n <= ? ORDER BY n DESC LIMIT 1", n).Scan(&from, &text)
	if errors.Is(err, sql.ErrNoRows) {
		return 0, nil, ErrNoRevision
	}
	if err != nil {
		return 0, nil, err
	}
	source, err := tree.Parse("revision", []byte(text))
	if err != nil {
		return 0, nil, damagedAt(from, err)
	}
	return from, source.Root, nil
}

func replay(ctx context.Context, db asker, node *tree.Node, from, to int) (*tree.Node, error) {
	last, digest := from-1, ""
	err := each(ctx, db, from-1, to, func(r row) error {
		if last, digest = r.n, r.digest; r.n == from {
			return nil
		}
		patch, err := tree.ParsePatch([]byte(r.patch))
		node = tree.Merge(node, patch)
		return err
	})
	switch {
	case err != nil:
		return nil, err
	case last != to:
		return nil, ErrNoRevision
	case digestOf(node) != digest:
		return nil, damagedAt(to, nil)
	}
	return node, nil
}

func damagedAt(n int, cause error) error {
	return &Trouble{Kind: ErrDamaged, Cause: cause,
		Says: fmt.Sprintf("The build's file is damaged: revision %d does not read as it was written. Restore a backup and keep this file.", n)}
}

// At returns the document as it was at a revision.
func (s *Store) At(ctx context.Context, n int) (*build.Document, error) {
	node, err := s.nodeAt(ctx, n)
	if err != nil {
		return nil, because(err, "The revision can not be shown.")
	}
	return build.DecodeTree(node, s.options.Rows)
}

// Revisions returns up to limit revisions older than before, newest first; before 0 means from the newest.
func (s *Store) Revisions(ctx context.Context, before, limit int) (out []Revision, err error) {
	rows, err := s.read.QueryContext(ctx, columns+"WHERE ? = 0 OR r.n < ? ORDER BY r.n DESC LIMIT ?", before, before, max(0, limit))
	if err != nil {
		return nil, because(err, "The history can not be shown.")
	}
	defer func() { err = firstError(err, rows.Close()) }()
	for rows.Next() {
		var r row
		if err := r.scan(rows); err != nil {
			return nil, err
		}
		revision, err := r.revision()
		if err != nil {
			return nil, damagedAt(r.n, err)
		}
		out = append(out, revision)
	}
	return out, because(rows.Err(), "The history can not be shown.")
}

func firstError(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}
