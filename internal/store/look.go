package store

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"

	"modernc.org/sqlite"
	sqlite3 "modernc.org/sqlite/lib"
)

// headerSize is how many bytes SQLite needs to know its own.
const headerSize = 100

// applicationID marks a file as ours in its header ("thum").
const applicationID = 0x7468756d

// look says what is wrong with a path before anything is made beside it: no file, a folder, nothing in it, another program's file, a
// newer format.
func look(ctx context.Context, path string, o Options) error {
	info, err := os.Stat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return &Trouble{Kind: fs.ErrNotExist, Says: fmt.Sprintf("There is no file %s.", path)}
	case err != nil:
		return because(err, "It was not opened.")
	case info.IsDir():
		return trouble(ErrForeign, "%s is a folder, not a build.", path)
	case info.Size() == 0:
		return trouble(ErrForeign, "%s is empty: there is no build in it. If there was one, restore a backup under another name.", path)
	case info.Size() < headerSize:
		return noBuild(path)
	}
	db, err := o.connect(path, toReadAlone)
	if err != nil {
		return err
	}
	_, err = formatOf(ctx, db, path)
	if errors.Is(err, ErrDamaged) && sizeOf(path+"-wal") > 0 {
		err = nil // a program was stopped while it brought the log in: without the log the file is no whole
	}
	return firstError(err, db.Close())
}

// formatOf is the format of a build's file.
func formatOf(ctx context.Context, db asker, path string) (format int, err error) {
	var mark, alien int
	row := db.QueryRowContext(ctx, `SELECT (SELECT user_version FROM pragma_user_version), (SELECT application_id FROM pragma_application_id),
		(SELECT count(*) FROM sqlite_schema WHERE type IN ('trigger', 'view'))`)
	if err := row.Scan(&format, &mark, &alien); err != nil {
		return 0, notOurs(err, path)
	}
	switch {
	case mark != applicationID:
		return 0, trouble(ErrForeign, "%s is a database of another program, not a build. It was left as it is.", path)
	case alien > 0:
		return 0, trouble(ErrForeign, "%s holds things that no build holds; somebody has tampered with it. It was left as it is.", path)
	case format < 1:
		return 0, trouble(ErrDamaged, "%s is damaged: it does not say which format it has. Restore a backup and keep this file. It was left as it is.", path)
	case format > newest():
		return 0, trouble(ErrNewer, "%s was written by a newer version of the program (format %d; this version knows up to %d). Open it with that version. It was left as it is.", path, format, newest())
	}
	return format, nil
}

// notOurs tells a file that never was a build from one that can not be read.
func notOurs(err error, path string) error {
	var failed *sqlite.Error
	if errors.As(err, &failed) {
		switch failed.Code() & 0xff {
		case sqlite3.SQLITE_NOTADB:
			return noBuild(path)
		case sqlite3.SQLITE_ERROR: // the header says what no SQLite knows
			return &Trouble{Kind: ErrDamaged, Cause: err, Says: path + " is damaged; restore a backup and keep this file. It was left as it is."}
		}
	}
	return because(err, "It was left as it is.")
}

func noBuild(path string) error {
	return trouble(ErrForeign, "%s is no build's own file. If it is a document (YAML or JSON), import it; if it was a build, it is damaged: restore a backup under another name. It was left as it is.", path)
}
