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
	if err := os.WriteFile(unfinished, nil, 0o600); err != nil { // it is as private as a build's own file
		return err
	}
	if _, err := db.ExecContext(ctx, "VACUUM INTO ?", unfinished); err != nil {
		return err
	}
	return settleName(unfinished, path)
}
