package store

import (
	"context"
	"database/sql"
	"embed"
	"errors"
	"fmt"
	"io/fs"
	"slices"

	"tumblehome/build/tree"
)

//go:embed migrations/*.sql
var migrations embed.FS

// fills do what SQL alone can not, after the migration of that format.
var fills = map[int]func(context.Context, *sql.Tx) error{2: fillSeals}

// newest is the format this version writes: the number of migrations.
func newest() int { return len(migrationNames()) }

func migrationNames() []string {
	names, err := fs.Glob(migrations, "migrations/*.sql")
	if err != nil {
		panic(err) // a mistake in the pattern
	}
	return names
}

// upgrade keeps a copy of the file as it is and brings the file to the newest format, in one transaction and while nobody else has it
// open. A power cut leaves the old file or the new one.
func (s *Store) upgrade(ctx context.Context, format int) error {
	if s.barred != nil {
		return &Trouble{Kind: ErrReadOnly, Cause: s.barred, Says: fmt.Sprintf("%s is of an older format and was not brought up to date, since it can not be written to. It was left as it is; copy it to another place and open it there.", s.path)}
	}
	if err := integrity(ctx, s.read, "integrity_check"); err != nil {
		return err
	}
	copied := freeName(fmt.Sprintf("%s-format-%d", stem(s.path), format))
	if err := copyInto(ctx, s.read, copied); err != nil {
		return because(err, "The build is of an older format and was not brought up to date, since no copy of it could be kept. It was left as it is.")
	}
	if err := s.read.Close(); err != nil {
		return err
	}
	db, err := s.options.connect(s.path, toOwn)
	if err != nil {
		return err
	}
	if err := firstError(migrate(ctx, db, format), db.Close()); err != nil {
		return notUpgraded(err, copied)
	}
	s.copied = copied
	s.read, err = s.options.connect(s.path, toRead)
	return err
}

// notUpgraded says what an upgrade failed for. What neither the disk nor another program is to blame for lies in the file.
func notUpgraded(err error, copied string) error {
	says := fmt.Sprintf("The build is of an older format and was not brought up to date. It was left as it is; a copy of it is %s.", copied)
	err = also(err, says)
	if already := (*Trouble)(nil); errors.As(err, &already) {
		return err
	}
	return &Trouble{Kind: ErrDamaged, Cause: err, Says: "The build's file is damaged. " + says}
}

// migrate takes a file from one format to the newest. The format is asked for again inside the transaction.
func migrate(ctx context.Context, db *sql.DB, from int) error {
	return within(ctx, db, func(tx *sql.Tx) error {
		if err := tx.QueryRowContext(ctx, "PRAGMA user_version").Scan(&from); err != nil {
			return err
		}
		for format, name := range migrationNames() {
			if format < from {
				continue
			}
			if err := apply(ctx, tx, name, format+1); err != nil {
				return fmt.Errorf("%s: %w", name, err)
			}
		}
		return nil
	})
}

func apply(ctx context.Context, tx *sql.Tx, name string, format int) error {
	text, err := migrations.ReadFile(name)
	if err != nil {
		return err
	}
	script := fmt.Sprintf("%s;\nPRAGMA application_id = %d;\nPRAGMA user_version = %d;", text, applicationID, format)
	if _, err := tx.ExecContext(ctx, script); err != nil {
		return err
	}
	if fill := fills[format]; fill != nil {
		return fill(ctx, tx)
	}
	return nil
}

// fillSeals seals the history of a file of format 1, and takes its attachments into pieces.
func fillSeals(ctx context.Context, tx *sql.Tx) error {
	if err := sealHistory(ctx, tx); err != nil {
		return err
	}
	ids, err := texts(ctx, tx, "SELECT id FROM attachment ORDER BY id")
	if err != nil {
		return err
	}
	for _, id := range ids {
		if err := intoPieces(ctx, tx, id); err != nil {
			return err
		}
	}
	_, err = tx.ExecContext(ctx, "ALTER TABLE attachment DROP COLUMN content")
	return err
}

func sealHistory(ctx context.Context, tx *sql.Tx) error {
	var last int
	if err := tx.QueryRowContext(ctx, "SELECT coalesce(max(n), 0) FROM revision").Scan(&last); err != nil || last == 0 {
		return err
	}
	_, node, err := wholeBefore(ctx, tx, 1)
	if err != nil {
		return damagedAt(1, err)
	}
	seal := ""
	for n := 1; n <= last; n++ {
		r, err := rowAt(ctx, tx, n)
		if err != nil {
			return damagedAt(n, err)
		}
		patch, err := tree.ParsePatch([]byte(r.patch))
		if err != nil {
			return damagedAt(n, err)
		}
		node = tree.Merge(node, patch)
		r.digest = digestOf(node)
		seal = r.sealAfter(seal)
		if _, err := tx.ExecContext(ctx, "INSERT INTO seal (n, digest, seal) VALUES (?, ?, ?)", n, r.digest, seal); err != nil {
			return err
		}
	}
	return nil
}

func intoPieces(ctx context.Context, tx *sql.Tx, id string) error {
	var name, kind, made string
	var content []byte
	err := tx.QueryRowContext(ctx, "SELECT name, kind, made, content FROM attachment WHERE id = ?", id).Scan(&name, &kind, &made, &content)
	if err != nil {
		return err
	}
	pieces := slices.Collect(slices.Chunk(content, pieceSize))
	a := describe(pieces)
	a.ID, a.Name, a.Kind = id, name, kind
	_, err = tx.ExecContext(ctx, "UPDATE attachment SET size = ?, digest = ?, seal = ? WHERE id = ?", a.Size, a.digest, a.sealed(made), id)
	if err != nil {
		return err
	}
	return insertPieces(ctx, tx, id, pieces)
}

func texts(ctx context.Context, db asker, query string, args ...any) (out []string, err error) {
	rows, err := db.QueryContext(ctx, query, args...)
	if err != nil {
		return nil, err
	}
	defer func() { err = firstError(err, rows.Close()) }()
	for rows.Next() {
		var text string
		if err := rows.Scan(&text); err != nil {
			return nil, err
		}
		out = append(out, text)
	}
	return out, rows.Err()
}
