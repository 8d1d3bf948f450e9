package cli

import (
	"errors"
	"fmt"
	"io/fs"
	"syscall"

	"tumblehome/internal/store"
)

// plain puts what the system says of a file into words; what the database said comes last, for whoever is asked for help.
func plain(err error) error {
	var file *store.Trouble
	if errors.As(err, &file) && file.Cause != nil {
		return fmt.Errorf("%s\n  For whoever is asked for help, the database says: %v", file.Says, file.Cause)
	}
	var of *fs.PathError
	if !errors.As(err, &of) {
		return err
	}
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return fmt.Errorf("%s: there is no such file", of.Path)
	case errors.Is(err, fs.ErrPermission):
		return fmt.Errorf("%s: this program is not allowed to use it", of.Path)
	case errors.Is(err, syscall.EISDIR):
		return fmt.Errorf("%s is a folder; name a file in it", of.Path)
	case errors.Is(err, syscall.ENOSPC):
		return fmt.Errorf("%s: the disk is full; nothing was written", of.Path)
	}
	return err
}
