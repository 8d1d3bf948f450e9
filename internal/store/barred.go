package store

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// openBarred opens a file beside which nothing can be made. Without a log it is whole by itself. With one, left by a program that was
// killed or is still running, the two are copied to a place of our own and read there.
func (s *Store) openBarred(why error) (err error) {
	s.barred = why
	if sizeOf(s.path+"-wal") == 0 {
		s.read, err = s.options.connect(s.path, toReadAlone)
		return err
	}
	if s.scratch, err = os.MkdirTemp("", "tumblehome-reading-"); err != nil {
		return err
	}
	copied := filepath.Join(s.scratch, "build"+ending)
	for _, part := range []string{"", "-wal"} {
		if err := copyFile(s.path+part, copied+part); err != nil {
			return err
		}
	}
	s.read, err = s.options.connect(copied, toRead)
	return err
}

// copyFile copies to a name that must be free. SQLite must not have the file open for writing in this program: closing it here would
// let go of its locks.
func copyFile(from, to string) (err error) {
	source, err := os.Open(from)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return err
	}
	defer source.Close()
	target, err := os.OpenFile(to, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o600)
	if err != nil {
		return err
	}
	_, err = io.Copy(target, source)
	return firstError(err, target.Sync(), target.Close())
}
