package store

import (
	"context"
	"errors"
	"os"
	"path/filepath"
)

// Restore puts a copy of a backup in the place of a build's file. What lay there before, sound or not, is kept under a name that it
// gives back ("" when nothing lay there). The build must not be open anywhere.
func Restore(ctx context.Context, backup, path string, o Options) (report Report, kept string, err error) {
	defer func() { err = also(err, "Nothing was restored; the build is as it was.") }()
	if target, err := filepath.EvalSymlinks(path); err == nil {
		path = target
	}
	if report, err = Verify(ctx, backup, o); err != nil {
		return report, "", also(err, "That is the backup; try an older one.")
	}
	source, err := openToRead(ctx, backup, o)
	if err != nil {
		return report, "", err
	}
	defer func() { err = firstError(err, source.Close()) }()
	unfinished := unfinishedName(path)
	defer discard(unfinished)
	if err := vacuumInto(ctx, source.read, unfinished); err != nil {
		return report, "", err
	}
	if again, err := Verify(ctx, unfinished, o); err != nil {
		return report, "", err
	} else if again.seal != report.seal || again.Attachments != report.Attachments {
		return report, "", errors.New("the backup changed while it was read")
	}
	discardLog(unfinished)
	if !exists(path) {
		return report, "", firstError(clearStray(path), settleName(unfinished, path))
	}
	if err := letGo(ctx, path, o); err != nil {
		return report, "", err
	}
	kept = freeName(stem(path) + "-before-restore")
	return report, kept, exchange(unfinished, path, kept)
}

// letGo brings a build's log into its file and makes sure that nobody else has it open. A file that is damaged, or no build, is not
// touched: it is kept with its log as it is.
func letGo(ctx context.Context, path string, o Options) error {
	o.undecoded = true
	s, err := openToRead(ctx, path, o)
	if err != nil {
		return onlyBusy(err)
	}
	format, err := formatOf(ctx, s.read, path)
	if err == nil && format == newest() {
		_, err = inspect(ctx, s.read, sizeOf(path), o)
	}
	if err := firstError(err, s.Close()); err != nil || markedReadOnly(path) {
		return onlyBusy(err)
	}
	return alone(ctx, path, o)
}

func onlyBusy(err error) error {
	if errors.Is(because(err, ""), ErrBusy) {
		return err
	}
	return nil
}

// alone makes a file whole without a log, which SQLite does only for who has it alone.
func alone(ctx context.Context, path string, o Options) error {
	db, err := o.connect(path, toOwn)
	if err != nil {
		return err
	}
	var mode string
	err = db.QueryRowContext(ctx, "PRAGMA journal_mode = DELETE").Scan(&mode)
	return firstError(because(err, "Is the workspace still running? Stop it first."), db.Close())
}

// exchange puts a finished file in the place of another, which keeps its content, and its log if it has one, under a new name. A power
// cut leaves the old file in place, or the new one, or at worst none: then both lie beside it.
func exchange(unfinished, path, kept string) error {
	if err := syncFile(unfinished); err != nil {
		return err
	}
	if sizeOf(path+"-wal") > 0 { // a damaged file is kept with its log, and the log must be gone before a new file has its name
		if err := os.Rename(path+"-wal", kept+"-wal"); err != nil {
			return err
		}
	}
	if err := os.Link(path, kept); err != nil {
		if err := renameFree(path, kept); err != nil {
			return err
		}
	}
	if err := clearStray(path); err != nil {
		return err
	}
	if err := os.Rename(unfinished, path); err != nil {
		return err
	}
	return syncFolder(filepath.Dir(path))
}
