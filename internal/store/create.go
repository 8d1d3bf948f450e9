package store

import (
	"context"
	"crypto/rand"
	"database/sql"
	"os"
	"path/filepath"
	"strings"
	"time"

	"tumblehome/build"
	"tumblehome/build/tree"
)

// Create makes a new file with a first revision, and opens it. The file must not exist. It has its name only when it is whole.
func Create(ctx context.Context, path string, doc *build.Document, options Options) (*Store, error) {
	first := build.Encode(doc)
	if err := fits(first); err != nil {
		return nil, err
	}
	err := createFile(ctx, path, options, func(ctx context.Context, db *sql.DB) error {
		return within(ctx, db, func(tx *sql.Tx) error {
			return begin(ctx, tx, first, Revision{N: 1, When: options.Now().UTC().Round(0), Kind: Begin, Words: "begun"})
		})
	})
	if err != nil {
		return nil, err
	}
	return Open(ctx, path, options)
}

// begin writes the first revision.
func begin(ctx context.Context, tx *sql.Tx, first *tree.Node, r Revision) error {
	kept := rowOf(r, digestOf(first))
	kept.seal = kept.sealAfter("")
	return insert(ctx, tx, kept, first)
}

// createFile makes a new file under an unfinished name in the same folder, lets fill write to it, and gives it its name.
func createFile(ctx context.Context, path string, o Options, fill func(context.Context, *sql.DB) error) (err error) {
	if exists(path) {
		return trouble(ErrTaken, "%s exists already; choose another name, or move that file away.", path)
	}
	unfinished := unfinishedName(path)
	defer func() { err = because(err, "No build was made.") }()
	if err := os.WriteFile(unfinished, nil, 0o600); err != nil {
		return err
	}
	defer discard(unfinished)
	db, err := o.connect(unfinished, toOwn)
	if err != nil {
		return err
	}
	err = migrate(ctx, db, 0)
	if err == nil {
		err = fill(ctx, db)
	}
	if err := firstError(err, db.Close()); err != nil {
		return err
	}
	if err := clearStray(path); err != nil {
		return err
	}
	return settleName(unfinished, path)
}

// unfinishedName is a name beside a path that nobody else has. What a power cut leaves under it may be deleted.
func unfinishedName(path string) string {
	return filepath.Join(filepath.Dir(path), unfinishedBeginning(path)+rand.Text()[:8])
}

func unfinishedBeginning(path string) string { return "." + filepath.Base(path) + ".unfinished-" }

// abandoned is how old an unfinished file is when nobody can be at it any more: a program was killed or lost its power.
const abandoned = time.Hour

// sweep takes away what abandoned attempts at a file have left.
func sweep(path string) {
	folder, beginning := filepath.Dir(path), unfinishedBeginning(path)
	entries, _ := os.ReadDir(folder) // what cannot be listed cannot be swept
	for _, e := range entries {
		at, err := e.Info()
		if err == nil && strings.HasPrefix(e.Name(), beginning) && time.Since(at.ModTime()) > abandoned {
			discard(filepath.Join(folder, e.Name()))
		}
	}
}

// discard takes an unfinished file away, if it is still there.
func discard(unfinished string) {
	_ = os.Remove(unfinished) // if it can not be removed it is in nobody's way
	discardLog(unfinished)
}

// discardLog takes away what reading an unfinished file has left beside it.
func discardLog(unfinished string) {
	for _, part := range []string{"-wal", "-shm", "-journal"} {
		_ = os.Remove(unfinished + part)
	}
}

// within does something in one transaction: all of it or nothing.
func within(ctx context.Context, db *sql.DB, do func(*sql.Tx) error) error {
	tx, err := db.BeginTx(ctx, nil)
	if err != nil {
		return err
	}
	defer func() { _ = tx.Rollback() }() // does nothing once committed
	if err := do(tx); err != nil {
		return err
	}
	return tx.Commit()
}
