package cli

import (
	"bufio"
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"tumblehome/internal/store"
)

// isArchive reports whether a path names the archive of a whole build.
func isArchive(path string) bool { return strings.EqualFold(filepath.Ext(path), ".zip") }

// unpack makes a build's own file from an archive.
func (c importCommand) unpack(s *streams) error {
	if !isStore(c.Build) {
		return notOwn(c.Build)
	}
	archive, err := os.Open(c.Document)
	if err != nil {
		return err
	}
	defer archive.Close()
	info, err := archive.Stat()
	if err != nil {
		return err
	}
	report, err := store.Unpack(context.Background(), archive, info.Size(), c.Build, storeOptions())
	if err != nil {
		return err
	}
	fmt.Fprintf(s.out, "%s is in %s: %s.\n", titleOrBuild(report), c.Build, contents(report))
	tellUnfit(s, report)
	return nil
}

// pack writes a whole build as an archive.
func (c exportCommand) pack(s *streams) error {
	if !isStore(c.File) {
		return fmt.Errorf("%s: an archive is made of a build's own file (*.tumblehome); import the document first", c.File)
	}
	err := writeWhole(c.Out, func(out io.Writer) error {
		return store.Pack(context.Background(), c.File, out, storeOptions())
	})
	if err != nil {
		return err
	}
	fmt.Fprintf(s.out, "The whole build is in %s.\n", c.Out)
	return nil
}

// writeWhole writes a file piece by piece and gives it its name when all of it is on the disk: a full disk must not leave half an archive in
// the place of an older one.
func writeWhole(path string, write func(io.Writer) error) error {
	unfinished, err := os.CreateTemp(filepath.Dir(path), ".tumblehome-")
	if err != nil {
		return err
	}
	defer os.Remove(unfinished.Name()) // gone already when all went well
	out := bufio.NewWriter(unfinished)
	if err := firstError(write(out), out.Flush(), unfinished.Chmod(0o600), unfinished.Sync(), unfinished.Close()); err != nil {
		return err
	}
	return os.Rename(unfinished.Name(), path)
}
