package store

import (
	"context"
	"database/sql"
	"os"
)

// copyInto writes a consistent copy of an open file, as it is at this moment, under a free name. The copy has its name only when it is
// whole and on disk.
func copyInto(ctx context.Context, db *sql.DB, path string) error {
	unfinished := unfinishedName(path)
	defer discard(unfinished)
	if err := vacuumInto(ctx, db, unfinished); err != nil {
		return err
	}
	return settleName(unfinished, path)
}

// vacuumInto lets SQLite write a copy of an open file, as it is at this moment, in one piece and without a log.
func vacuumInto(ctx context.Context, db *sql.DB, unfinished string) error {
	if err := os.WriteFile(unfinished, nil, 0o600); err != nil { // it is as private as a build's own file
		return err
	}
	_, err := db.ExecContext(ctx, "VACUUM INTO ?", unfinished)
	return err
}
