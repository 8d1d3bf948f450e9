package store

import (
	"encoding/binary"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
)

const ending = ".tumblehome"

// identity tells a file from another that has taken its name.
type identity struct{ info os.FileInfo }

func identify(path string) (identity, error) {
	info, err := os.Stat(path)
	return identity{info}, err
}

// inPlace makes sure that the open file is still the one at its path. Who writes to a file that was deleted or renamed writes well and
// loses all. kept says what has become of what was wanted.
func (s *Store) inPlace(kept string) error {
	now, err := identify(s.path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return trouble(ErrGone, "%s was moved, renamed or deleted while it was open. %s Put it back under its old name first: what was saved last may still lie in the log beside it. Then stop the program, and move the file only after that.", s.path, kept)
	case err != nil:
		return because(err, kept)
	case !os.SameFile(now.info, s.file.info):
		return trouble(ErrGone, "Another file has taken the place of %s while it was open. %s Close the program and open the build again.", s.path, kept)
	case !wholeAtHead(s.path):
		return trouble(ErrDamaged, "%s was written over by another program while it was open. %s Restore a backup under another name.", s.path, kept)
	}
	return nil
}

// wholeAtHead says whether a file still begins as a build's own does: who goes on writing to the log of one that does not loses it all. How long it is
// says nothing: while the log is brought in it may be shorter than its header has it. Offsets are those of SQLite's file format
// (sqlite.org/fileformat2, section 1.3).
func wholeAtHead(path string) bool {
	file, err := os.Open(path)
	if err != nil {
		return true // whether it can be read is not asked here
	}
	defer file.Close()
	var head [100]byte
	if _, err := io.ReadFull(file, head[:]); err != nil {
		return false
	}
	return string(head[:16]) == "SQLite format 3\x00" && binary.BigEndian.Uint32(head[68:]) == applicationID
}

// freeName is the first of "stem.tumblehome", "stem-2.tumblehome", "stem-3…" that is not taken, alone or by a log.
func freeName(stem string) string {
	for i := 1; ; i++ {
		name := stem + ending
		if i > 1 {
			name = fmt.Sprintf("%s-%d%s", stem, i, ending)
		}
		if !exists(name) && !exists(name+"-wal") {
			return name
		}
	}
}

func stem(path string) string { return strings.TrimSuffix(path, ending) }

func exists(path string) bool {
	_, err := os.Lstat(path)
	return err == nil
}

// sizeOf is the size of a file, 0 when there is none.
func sizeOf(path string) int64 {
	info, err := os.Stat(path)
	if err != nil {
		return 0
	}
	return info.Size()
}

// settleName gives a finished file its name, which must be free, and makes sure that both are on disk. The unfinished name is gone
// afterwards, also when it fails.
func settleName(unfinished, path string) error {
	defer os.Remove(unfinished)
	if err := syncFile(unfinished); err != nil {
		return err
	}
	err := os.Link(unfinished, path) // unlike a renaming it never takes the place of a file
	if err != nil && !errors.Is(err, fs.ErrExist) {
		err = renameFree(unfinished, path) // some memory sticks know no links
	}
	if errors.Is(err, fs.ErrExist) {
		return trouble(ErrTaken, "%s exists already; choose another name, or move that file away.", path)
	}
	if err != nil {
		return err
	}
	return syncFolder(filepath.Dir(path))
}

func renameFree(from, to string) error {
	if exists(to) {
		return fs.ErrExist
	}
	return os.Rename(from, to)
}

func syncFile(path string) error {
	file, err := os.OpenFile(path, os.O_RDWR, 0)
	if err != nil {
		return err
	}
	return firstError(file.Sync(), file.Close())
}

// syncFolder makes sure that a folder's names are on disk.
func syncFolder(path string) error {
	if runtime.GOOS == "windows" {
		return nil // it keeps its names by itself, and folders can not be opened
	}
	folder, err := os.Open(path)
	if err != nil {
		return err
	}
	return firstError(folder.Sync(), folder.Close())
}

// clearStray moves logs away that belong to a file which is no longer there: SQLite would mix them into a new file of that name.
func clearStray(path string) error {
	for _, log := range []string{path + "-wal", path + "-journal"} {
		if sizeOf(log) > 0 {
			if err := os.Rename(log, strings.TrimSuffix(freeName(stem(path)+"-left-over"), ending)+filepath.Ext(log)); err != nil {
				return err
			}
			continue
		}
		if err := os.Remove(log); err != nil && !errors.Is(err, fs.ErrNotExist) {
			return err
		}
	}
	if err := os.Remove(path + "-shm"); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	return nil
}
