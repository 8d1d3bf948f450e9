package store

import (
	"context"
	"database/sql"
	"embed"
	"errors"
	"fmt"
	"io/fs"
	"net/url"
	"os"
	"time"

	_ "modernc.org/sqlite" // the driver registers itself as "sqlite"

	"tumblehome/build"
)

//go:embed migrations/*.sql
var migrations embed.FS

// applicationID marks a file as ours in its header ("thum").
const applicationID = 0x7468756d

// Options is what a store needs from outside.
type Options struct {
	Now  func() time.Time
	Rows build.RowSource // the built-in catalogue, against which documents are read
}

// Create makes a new file with a first revision. The file must not exist.
func Create(ctx context.Context, path string, doc *build.Document, options Options) (*Store, error) {
	file, err := os.OpenFile(path, os.O_CREATE|os.O_EXCL|os.O_RDWR, 0o600)
	if err != nil {
		return nil, err
	}
	if err := file.Close(); err != nil {
		return nil, err
	}
	s, err := connect(ctx, path, options)
	if err == nil {
		err = s.begin(ctx, doc)
	}
	if err != nil {
		return nil, errors.Join(fmt.Errorf("create %s: %w", path, err), s.Close(), os.Remove(path))
	}
	return s, nil
}

// Open opens an existing file, checks that it is sound and reads its newest revision.
func Open(ctx context.Context, path string, options Options) (*Store, error) {
	if _, err := os.Stat(path); err != nil {
		return nil, err
	}
	s, err := connect(ctx, path, options)
	if err == nil {
		err = s.inspect(ctx)
	}
	if err == nil {
		err = s.refresh(ctx)
	}
	if err != nil {
		return nil, errors.Join(fmt.Errorf("open %s: %w", path, err), s.Close())
	}
	return s, nil
}

// connect opens the file with one writer: SQLite allows only one at a time, and queueing here gives no busy errors between our own edits.
func connect(ctx context.Context, path string, options Options) (*Store, error) {
	s := &Store{options: options}
	pragmas := url.Values{
		"_pragma": {"journal_mode(WAL)", "synchronous(FULL)", "foreign_keys(1)", "busy_timeout(5000)"},
		"_txlock": {"immediate"},
	}
	address := url.URL{Scheme: "file", Opaque: (&url.URL{Path: path}).EscapedPath(), RawQuery: pragmas.Encode()}
	db, err := sql.Open("sqlite", address.String())
	if err != nil {
		return s, err
	}
	db.SetMaxOpenConns(1)
	s.db = db
	return s, s.migrate(ctx)
}

// migrate brings the file to the newest format; a file of ours carries its format as user_version.
func (s *Store) migrate(ctx context.Context) error {
	names, err := fs.Glob(migrations, "migrations/*.sql")
	if err != nil {
		return err
	}
	var format, mark, tables int
	row := s.db.QueryRowContext(ctx, "SELECT (SELECT user_version FROM pragma_user_version), (SELECT application_id FROM pragma_application_id), (SELECT count(*) FROM sqlite_schema)")
	if err := row.Scan(&format, &mark, &tables); err != nil {
		return notOurs(err)
	}
	switch {
	case mark != applicationID && tables > 0:
		return errors.New("this is a database of another program, not a build")
	case format > len(names):
		return fmt.Errorf("this build was written by a newer version (format %d, this one knows %d); use that version", format, len(names))
	}
	for i := format; i < len(names); i++ {
		if err := s.apply(ctx, names[i], i+1); err != nil {
			return fmt.Errorf("%s: %w", names[i], err)
		}
	}
	return nil
}

func (s *Store) apply(ctx context.Context, name string, format int) error {
	text, err := migrations.ReadFile(name)
	if err != nil {
		return err
	}
	tx, err := s.db.BeginTx(ctx, nil)
	if err != nil {
		return err
	}
	defer func() { _ = tx.Rollback() }() // does nothing once committed
	script := fmt.Sprintf("%s;\nPRAGMA application_id = %d;\nPRAGMA user_version = %d;", text, applicationID, format)
	if _, err := tx.ExecContext(ctx, script); err != nil {
		return err
	}
	return tx.Commit()
}

// inspect lets SQLite check the whole file before anything is read from it.
func (s *Store) inspect(ctx context.Context) error {
	var verdict string
	if err := s.db.QueryRowContext(ctx, "PRAGMA quick_check(1)").Scan(&verdict); err != nil {
		return notOurs(err)
	}
	if verdict != "ok" {
		return fmt.Errorf("the file is damaged (%s); open a backup and keep this file", verdict)
	}
	return nil
}

func notOurs(err error) error {
	return fmt.Errorf("this is no build, or it is damaged: %w", err)
}

// Close closes the file.
func (s *Store) Close() error {
	if s == nil || s.db == nil {
		return nil
	}
	return s.db.Close()
}
