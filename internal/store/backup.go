package store

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// Backup is a copy of a build's file, made and verified at one moment.
type Backup struct {
	Path     string
	Number   int // counts on, whatever the clock says
	Revision int // the newest in it
}

// BackupFolder is where the backups of a build lie when nobody says otherwise: beside it.
func BackupFolder(path string) string { return stem(path) + "-backups" }

// BackUp writes a copy of a build's file into a folder, also while the build is open, and verifies it by opening it. Of the older
// backups of this build it keeps the newest, keep in all, and of those before them every tenth, keep in all. None is taken away before
// the new one is verified and on disk.
func BackUp(ctx context.Context, path, folder string, keep int, o Options) (made Backup, removed []Backup, err error) {
	defer func() { err = also(err, "No backup was made; the older ones are kept.") }()
	s, err := openToRead(ctx, path, o)
	if err != nil {
		return made, nil, err
	}
	defer func() { err = firstError(err, s.Close()) }()
	if err := os.MkdirAll(folder, 0o700); err != nil {
		return made, nil, err
	}
	inFolder := filepath.Join(folder, filepath.Base(path))
	sweep(inFolder)
	unfinished := unfinishedName(inFolder)
	defer discard(unfinished)
	if err := vacuumInto(ctx, s.read, unfinished); err != nil {
		return made, nil, err
	}
	report, err := Verify(ctx, unfinished, o)
	if err != nil {
		return made, nil, err
	}
	discardLog(unfinished)
	older := Backups(path, folder)
	made = Backup{Number: 1, Revision: report.Revisions}
	if len(older) > 0 {
		made.Number = older[0].Number + 1
	}
	made.Path = filepath.Join(folder, fmt.Sprintf("%s-backup-%04d-revision-%d-%s%s", filepath.Base(stem(path)), made.Number, made.Revision, o.Now().Format("2006-01-02"), ending))
	if err := settleName(unfinished, made.Path); err != nil {
		return made, nil, err
	}
	removed, err = thinOut(ctx, append([]Backup{made}, older...), report.first, max(1, keep), o)
	return made, removed, err
}

// Backups are the backups of a build in a folder, the newest first.
func Backups(path, folder string) (all []Backup) {
	pattern := regexp.MustCompile("^" + regexp.QuoteMeta(filepath.Base(stem(path))) + `-backup-(\d{4,9})-revision-(\d{1,9})-\d{4}-\d\d-\d\d` + regexp.QuoteMeta(ending) + "$")
	entries, err := os.ReadDir(folder)
	if err != nil {
		return nil // there is no such folder yet
	}
	for _, e := range entries {
		found := pattern.FindStringSubmatch(e.Name())
		if found == nil || !e.Type().IsRegular() {
			continue
		}
		number, _ := strconv.Atoi(found[1])
		revision, _ := strconv.Atoi(found[2])
		all = append(all, Backup{filepath.Join(folder, e.Name()), number, revision})
	}
	slices.SortFunc(all, func(a, b Backup) int {
		if a.Number != b.Number {
			return b.Number - a.Number
		}
		return strings.Compare(a.Path, b.Path)
	})
	return all
}

// thinOut removes old backups, newest first in all. It touches only those that begin with the same first revision: a new build under an
// old name must not push the old one's backups out.
func thinOut(ctx context.Context, all []Backup, first string, keep int, o Options) (removed []Backup, err error) {
	own, tenths := 0, 0
	for _, b := range all {
		if firstSeal(ctx, b.Path, o) != first {
			continue
		}
		if own++; own <= keep {
			continue
		}
		if b.Number%10 == 0 && tenths < keep {
			tenths++
			continue
		}
		if err := os.Remove(b.Path); err != nil {
			return removed, err
		}
		removed = append(removed, b)
	}
	return removed, nil
}

// firstSeal is the seal of a file's first revision, "" when it can not be read.
func firstSeal(ctx context.Context, path string, o Options) (seal string) {
	db, err := o.connect(path, toReadAlone)
	if err != nil {
		return ""
	}
	defer db.Close()
	if err := db.QueryRowContext(ctx, "SELECT seal FROM seal WHERE n = 1").Scan(&seal); err != nil {
		return ""
	}
	return seal
}

// KeepUp makes a backup where one usually lies, unless the newest there holds the newest revision already; made tells which.
func KeepUp(ctx context.Context, path string, keep int, o Options) (newest Backup, made bool, err error) {
	folder := BackupFolder(path)
	if all := Backups(path, folder); len(all) > 0 && firstSeal(ctx, all[0].Path, o) == firstSeal(ctx, path, o) {
		last, err := newestIn(ctx, path, o)
		if err != nil || last == all[0].Revision {
			return all[0], false, err
		}
	}
	newest, _, err = BackUp(ctx, path, folder, keep, o)
	return newest, err == nil, err
}

// newestIn is the number of the newest revision in a file.
func newestIn(ctx context.Context, path string, o Options) (n int, err error) {
	s, err := openToRead(ctx, path, o)
	if err != nil {
		return 0, err
	}
	defer func() { err = firstError(err, s.Close()) }()
	err = s.read.QueryRowContext(ctx, "SELECT coalesce(max(n), 0) FROM revision").Scan(&n)
	return n, because(err, "No backup was made.")
}
