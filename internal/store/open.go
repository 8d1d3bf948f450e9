package store

import (
	"context"
	"database/sql"
	"errors"
	"os"
	"path/filepath"
	"strings"
)

// Open opens an existing file, checks that it is sound and reads its newest revision. A file that fails the check is not written to. A
// file of an older format is copied and brought up to date. A file that can not be written to is opened all the same, and Barred says so.
func Open(ctx context.Context, path string, options Options) (*Store, error) {
	s, err := unopened(ctx, path, options)
	if err != nil {
		return nil, err
	}
	if err := s.open(ctx); err != nil {
		return nil, firstError(because(err, "It was not opened."), s.Close())
	}
	return s, nil
}

// unopened is a store of a file that is there and looks like a build.
func unopened(ctx context.Context, path string, options Options) (*Store, error) {
	if err := look(ctx, path, options); err != nil {
		return nil, err
	}
	whole, err := filepath.EvalSymlinks(path) // the log lies beside the file itself, not beside a link to it
	if err != nil {
		return nil, because(err, "It was not opened.")
	}
	return &Store{path: whole, options: options}, nil
}

func (s *Store) open(ctx context.Context) error {
	format, err := s.openReader(ctx)
	if err != nil {
		return err
	}
	if format < newest() {
		if err := s.upgrade(ctx, format); err != nil {
			return err
		}
	}
	if s.head, err = inspect(ctx, s.read, sizeOf(s.path), s.options); err != nil {
		return err
	}
	if s.file, err = identify(s.path); err != nil {
		return err
	}
	if s.barred != nil {
		return nil
	}
	return s.openWriter(ctx)
}

// openReader opens the file for reading only, since the check must not change a damaged file, and gives its format. Where not even the
// log beside it can be made, the file is read alone.
func (s *Store) openReader(ctx context.Context) (format int, err error) {
	if markedReadOnly(s.path) {
		err = s.openBarred(trouble(ErrReadOnly, "%s is marked read-only. It can be looked at, but nothing can be saved; copy it to another place to work on it.", s.path))
	} else {
		err = s.openBesideLog(ctx)
	}
	if err != nil {
		return 0, err
	}
	return formatOf(ctx, s.read, s.path)
}

func (s *Store) openBesideLog(ctx context.Context) (err error) {
	if s.read, err = s.options.connect(s.path, toRead); err != nil {
		return err
	}
	var tables int
	err = s.read.QueryRowContext(ctx, "SELECT count(*) FROM sqlite_schema").Scan(&tables)
	why := because(err, "")
	if errors.Is(why, ErrReadOnly) || errors.Is(why, ErrFull) || errors.Is(why, ErrDisk) {
		if err := s.read.Close(); err != nil {
			return err
		}
		return s.openBarred(s.notWritable(err))
	}
	return err
}

func (s *Store) notWritable(cause error) error {
	says, kind := kindOf(cause)
	return &Trouble{Kind: kind, Cause: cause,
		Says: says + " The build " + s.path + " can be looked at, but nothing can be saved. Open it again when that has changed, or copy it to another place to work on it."}
}

func markedReadOnly(path string) bool {
	info, err := os.Stat(path)
	return err == nil && info.Mode().Perm()&0o222 == 0
}

// mostChecked is the size of a file that is checked in every page when it is opened, in bytes. A larger one is full of photos: these are
// then checked when they are read, and by Verify.
const mostChecked = 32 << 20

// inspect lets SQLite check the file, or at least the history, and follows the history.
func inspect(ctx context.Context, db *sql.DB, size int64, o Options) (state, error) {
	tx, err := db.BeginTx(ctx, nil) // so that all that is checked is of one moment
	if err != nil {
		return state{}, err
	}
	defer func() { _ = tx.Rollback() }() // nothing was written
	checks := []string{"integrity_check"}
	if size > mostChecked {
		checks = []string{"integrity_check(revision)", "integrity_check(seal)", "integrity_check(whole)", "integrity_check(attachment)"}
	}
	for _, check := range checks {
		if err := integrity(ctx, tx, check); err != nil {
			return state{}, err
		}
	}
	return walkAll(ctx, tx, o)
}

// integrity lets SQLite check its own structures.
func integrity(ctx context.Context, db asker, pragma string) error {
	var verdict string
	if err := db.QueryRowContext(ctx, "PRAGMA "+pragma).Scan(&verdict); err != nil {
		return err
	}
	if verdict != "ok" {
		return &Trouble{Kind: ErrDamaged, Cause: errors.New(strings.ReplaceAll(verdict, "\n", "; ")), Says: "The build's file is damaged; restore a backup and keep this file."}
	}
	return nil
}

// openWriter opens the file for writing and finds out whether that is allowed.
func (s *Store) openWriter(ctx context.Context) (err error) {
	if s.write, err = s.options.connect(s.path, toWrite); err != nil {
		return err
	}
	tx, err := s.write.BeginTx(ctx, nil)
	if err == nil {
		return tx.Rollback()
	}
	switch trouble := because(err, ""); {
	case errors.Is(trouble, ErrReadOnly):
		s.barred = s.notWritable(err)
		err = s.write.Close()
		s.write = nil
		return err
	case errors.Is(trouble, ErrBusy):
		return nil // somebody is writing just now; saving will wait for them again
	}
	return err
}

// Close closes the file. What was saved is safe without it.
func (s *Store) Close() error {
	if s == nil {
		return nil
	}
	s.writing.Lock()
	defer s.writing.Unlock()
	if s.quiet != nil {
		s.quiet.Stop()
	}
	var errs []error
	for _, db := range []**sql.DB{&s.read, &s.write} { // the writer last, so that it can bring the log in
		if *db != nil {
			errs = append(errs, (*db).Close())
		}
	}
	s.write = nil
	if s.barred == nil {
		s.barred = trouble(ErrGone, "The build is closed.")
	}
	if s.scratch != "" {
		errs = append(errs, os.RemoveAll(s.scratch))
	}
	return because(firstError(errs...), "All that was saved is kept, in the log beside the file.")
}
