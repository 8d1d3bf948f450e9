package cli

import (
	"fmt"
	"os"
	"path/filepath"
)

// writeTo writes to a file, or to the terminal when no file is named. It never writes over a build's own file, whose history would be
// lost, and it leaves an older file as it was until the new one is whole on the disk.
func writeTo(path string, text []byte, s *streams) error {
	if path == "" {
		_, err := s.out.Write(text)
		return err
	}
	if isStore(path) {
		return fmt.Errorf("%s: a name ending in .tumblehome is for a build's own file; choose another ending", path)
	}
	if real, err := filepath.EvalSymlinks(path); err == nil {
		path = real // a link stays one; what it points to is written
	}
	if at, err := os.Stat(path); err == nil && !at.Mode().IsRegular() {
		return writeThrough(path, text)
	}
	unfinished, err := os.CreateTemp(filepath.Dir(path), ".tumblehome-")
	if err != nil {
		return plain(err)
	}
	defer os.Remove(unfinished.Name()) // gone already when all went well
	_, err = unfinished.Write(text)
	err = firstError(err, unfinished.Chmod(0o644), unfinished.Sync(), unfinished.Close())
	if err != nil {
		return plain(err)
	}
	return plain(os.Rename(unfinished.Name(), path))
}

// writeThrough writes to what is no file, such as a pipe or the terminal, and stays what it is.
func writeThrough(path string, text []byte) error {
	out, err := os.OpenFile(path, os.O_WRONLY, 0)
	if err != nil {
		return plain(err)
	}
	_, err = out.Write(text)
	return plain(firstError(err, out.Close()))
}
