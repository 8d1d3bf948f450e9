package store

import (
	"database/sql"
	"fmt"
	"net/url"
	"path/filepath"
	"strings"
	"time"

	_ "modernc.org/sqlite" // the driver registers itself as "sqlite"
)

// mostReaders is how many may read at once, each with 2 MB of memory.
const mostReaders = 3

// How a file is opened.
const (
	toWrite     = "_txlock=immediate&_pragma=journal_mode(WAL)&_pragma=synchronous(FULL)&_pragma=foreign_keys(1)&_pragma=journal_size_limit(67108864)"
	toRead      = "mode=ro"                                               // with the log beside it, if there is one
	toReadAlone = "mode=ro&immutable=1"                                   // without looking at a log or a lock: nothing is made beside the file
	toOwn       = toWrite + "&_pragma=locking_mode(EXCLUSIVE)"            // nobody else may have it open
	suspicious  = "&_pragma=trusted_schema(0)&_pragma=cell_size_check(1)" // the file may come from anywhere
)

// connect opens a file with SQLite. It is not touched before the first question.
func (o Options) connect(path, how string) (*sql.DB, error) {
	wait := o.Wait
	if wait == 0 {
		wait = 5 * time.Second
	}
	whole, err := filepath.Abs(path)
	if err != nil {
		return nil, err
	}
	slashed := filepath.ToSlash(whole)
	if !strings.HasPrefix(slashed, "/") {
		slashed = "/" + slashed // a drive letter
	}
	address := url.URL{Scheme: "file", Path: slashed, RawQuery: fmt.Sprintf("_busy_timeout=%d&%s%s", wait.Milliseconds(), how, suspicious)}
	db, err := sql.Open("sqlite", address.String())
	if err != nil {
		return nil, err
	}
	if strings.HasPrefix(how, toWrite) {
		db.SetMaxOpenConns(1)
	} else {
		db.SetMaxOpenConns(mostReaders)
		db.SetMaxIdleConns(mostReaders)
	}
	return db, nil
}
