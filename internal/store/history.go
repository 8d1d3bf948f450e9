package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"time"

	"tumblehome/build"
	"tumblehome/build/tree"
)

// commit writes a revision and makes it the head. It returns only when the revision is on disk.
func (s *Store) commit(ctx context.Context, next state) error {
	tx, err := s.db.BeginTx(ctx, nil)
	if err != nil {
		return err
	}
	defer func() { _ = tx.Rollback() }() // does nothing once committed
	r := next.revision
	_, err = tx.ExecContext(ctx, `INSERT INTO revision (n, parent, made, kind, words, maker, patch, inverse) VALUES (?, nullif(?, 0), ?, ?, ?, ?, ?, ?)`,
		r.N, r.Parent, r.When.Format(time.RFC3339Nano), r.Kind, r.Words, r.By, string(r.Patch.JSON()), string(r.Inverse.JSON()))
	if err != nil {
		return err
	}
	if r.N%wholeEvery == 1 {
		if _, err := tx.ExecContext(ctx, "INSERT INTO whole (n, document) VALUES (?, ?)", r.N, string(tree.Write(next.node))); err != nil {
			return err
		}
	}
	if err := tx.Commit(); err != nil {
		return err
	}
	s.head = next
	return nil
}

func (s *Store) refresh(ctx context.Context) error {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.refreshLocked(ctx)
}

// refreshLocked reads the newest revision and its document from the file.
func (s *Store) refreshLocked(ctx context.Context) error {
	var newest sql.NullInt64
	if err := s.db.QueryRowContext(ctx, "SELECT max(n) FROM revision").Scan(&newest); err != nil {
		return err
	}
	if !newest.Valid {
		return errors.New("the build has no revision; open a backup and keep this file")
	}
	revision, err := s.revision(ctx, int(newest.Int64))
	if err != nil {
		return err
	}
	node, err := s.nodeAt(ctx, revision.N)
	if err != nil {
		return err
	}
	doc, err := build.DecodeTree(node, s.options.Rows)
	if err != nil {
		return fmt.Errorf("revision %d: %w", revision.N, err)
	}
	s.head = state{revision, doc, node}
	return nil
}

// nodeAt replays patches from the nearest whole document before a revision.
func (s *Store) nodeAt(ctx context.Context, n int) (*tree.Node, error) {
	if n == s.head.revision.N && s.head.node != nil {
		return s.head.node, nil
	}
	var from int
	var text string
	err := s.db.QueryRowContext(ctx, "SELECT n, document FROM whole WHERE n <= ? ORDER BY n DESC LIMIT 1", n).Scan(&from, &text)
	if errors.Is(err, sql.ErrNoRows) {
		return nil, ErrNoRevision
	}
	if err != nil {
		return nil, err
	}
	source, err := tree.Parse("revision", []byte(text))
	if err != nil {
		return nil, err
	}
	return s.replay(ctx, source.Root, from, n)
}

func (s *Store) replay(ctx context.Context, node *tree.Node, from, to int) (_ *tree.Node, err error) {
	rows, err := s.db.QueryContext(ctx, "SELECT n, patch FROM revision WHERE n > ? AND n <= ? ORDER BY n", from, to)
	if err != nil {
		return nil, err
	}
	defer func() { err = firstError(err, rows.Close()) }()
	last := from
	for rows.Next() {
		var text string
		if err := rows.Scan(&last, &text); err != nil {
			return nil, err
		}
		patch, err := tree.ParsePatch([]byte(text))
		if err != nil {
			return nil, fmt.Errorf("patch of revision %d: %w", last, err)
		}
		node = tree.Merge(node, patch)
	}
	if last != to {
		return nil, ErrNoRevision
	}
	return node, rows.Err()
}

// At returns the document as it was at a revision.
func (s *Store) At(ctx context.Context, n int) (*build.Document, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	node, err := s.nodeAt(ctx, n)
	if err != nil {
		return nil, err
	}
	return build.DecodeTree(node, s.options.Rows)
}

const columns = "n, coalesce(parent, 0), made, kind, words, maker, patch, inverse"

func (s *Store) revision(ctx context.Context, n int) (Revision, error) {
	return scan(s.db.QueryRowContext(ctx, "SELECT "+columns+" FROM revision WHERE n = ?", n))
}

// Revisions returns up to limit revisions older than before, newest first; before 0 means from the newest.
func (s *Store) Revisions(ctx context.Context, before, limit int) (out []Revision, err error) {
	rows, err := s.db.QueryContext(ctx, "SELECT "+columns+" FROM revision WHERE ? = 0 OR n < ? ORDER BY n DESC LIMIT ?", before, before, limit)
	if err != nil {
		return nil, err
	}
	defer func() { err = firstError(err, rows.Close()) }()
	for rows.Next() {
		r, err := scan(rows)
		if err != nil {
			return nil, err
		}
		out = append(out, r)
	}
	return out, rows.Err()
}

func scan(row interface{ Scan(...any) error }) (Revision, error) {
	var r Revision
	var made, patch, inverse string
	if err := row.Scan(&r.N, &r.Parent, &made, &r.Kind, &r.Words, &r.By, &patch, &inverse); err != nil {
		return r, err
	}
	var err error
	if r.When, err = time.Parse(time.RFC3339Nano, made); err != nil {
		return r, err
	}
	if r.Patch, err = tree.ParsePatch([]byte(patch)); err != nil {
		return r, err
	}
	r.Inverse, err = tree.ParsePatch([]byte(inverse))
	return r, err
}
