package store

import (
	"errors"
	"fmt"
	"io/fs"
	"syscall"

	"modernc.org/sqlite"
	sqlite3 "modernc.org/sqlite/lib"
)

// Kinds of trouble with a file or with the disk it lies on, for errors.Is.
var (
	ErrFull     = errors.New("the disk is full")
	ErrBusy     = errors.New("the file is in use")
	ErrReadOnly = errors.New("the file can only be read")
	ErrDamaged  = errors.New("the file is damaged")
	ErrForeign  = errors.New("the file is no build")
	ErrNewer    = errors.New("the file is of a newer format")
	ErrUnfit    = errors.New("the document breaks a rule of this version")
	ErrGone     = errors.New("the file is not where it was")
	ErrTaken    = errors.New("the name is taken")
	ErrDisk     = errors.New("the disk failed")
)

// Trouble is something wrong with a file or its disk, in words for whoever has to do something about it: what happened, what is kept,
// what to do next.
type Trouble struct {
	Kind  error  // one of the kinds above
	Says  string // whole sentences
	Cause error  // what the system said, if it said something
}

// Error is the sentences, and in brackets what the system said.
func (t *Trouble) Error() string {
	if t.Cause == nil {
		return t.Says
	}
	return fmt.Sprintf("%s [%v]", t.Says, t.Cause)
}

// Unwrap lets errors.Is find the kind. The cause is for whoever is asked for help; it must not speak over the sentences.
func (t *Trouble) Unwrap() error { return t.Kind }

func trouble(kind error, format string, args ...any) *Trouble {
	return &Trouble{Kind: kind, Says: fmt.Sprintf(format, args...)}
}

// because turns an error of SQLite or of the system into trouble, where it is any. kept says what has become of what was to be
// written or read: "nothing of this change was saved".
func because(err error, kept string) error {
	var already *Trouble
	if err == nil || errors.As(err, &already) {
		return err
	}
	says, kind := kindOf(err)
	if kind == nil {
		return err
	}
	return &Trouble{Kind: kind, Says: says + " " + kept, Cause: err}
}

// also adds a sentence to trouble, and makes trouble of what can be.
func also(err error, says string) error {
	var already *Trouble
	if !errors.As(err, &already) {
		return because(err, says)
	}
	return &Trouble{Kind: already.Kind, Says: already.Says + " " + says, Cause: already.Cause}
}

func kindOf(err error) (says string, kind error) {
	var failed *sqlite.Error
	switch {
	case errors.As(err, &failed):
		return kindOfCode(failed.Code())
	case errors.Is(err, syscall.ENOSPC), errors.Is(err, syscall.EFBIG), errors.Is(err, syscall.EDQUOT):
		return "The disk is full; make room and try again.", ErrFull
	case errors.Is(err, fs.ErrPermission), errors.Is(err, syscall.EROFS):
		return "This place can not be written to; choose another folder, or take the write protection off.", ErrReadOnly
	case errors.Is(err, syscall.EIO):
		return kindOfCode(sqlite3.SQLITE_IOERR)
	}
	return "", nil
}

func kindOfCode(code int) (says string, kind error) {
	switch code & 0xff { // the lower byte is the kind, the rest is detail
	case sqlite3.SQLITE_FULL:
		return "The disk is full; make room and try again.", ErrFull
	case sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED:
		return "Another program is using the build's file and does not let go; close it and try again.", ErrBusy
	case sqlite3.SQLITE_READONLY, sqlite3.SQLITE_CANTOPEN, sqlite3.SQLITE_PERM, sqlite3.SQLITE_AUTH:
		return "The build's file, or the folder it lies in, can not be written to.", ErrReadOnly
	case sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB:
		return "The build's file is damaged; restore a backup and keep this file.", ErrDamaged
	case sqlite3.SQLITE_IOERR:
		return "The disk could not be written or read; it may be full, unplugged or failing.", ErrDisk
	}
	return "", nil
}
