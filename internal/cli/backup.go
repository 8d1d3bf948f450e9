package cli

import (
	"context"
	"errors"
	"fmt"
	"strings"

	"tumblehome/internal/store"
)

type backupCommand struct {
	Build string `arg:"" help:"The build's own file (*.tumblehome); it may be open." type:"path"`
	Into  string `help:"Folder for the backups; beside the build if left out." type:"path" placeholder:"FOLDER"`
	Keep  int    `default:"10" help:"How many of the newest backups to keep; of older ones every tenth is kept, as many again."`
}

// Run makes one backup.
func (c backupCommand) Run(s *streams) error {
	if c.Into == "" {
		c.Into = store.BackupFolder(c.Build)
	}
	made, removed, err := store.BackUp(context.Background(), c.Build, c.Into, c.Keep, storeOptions())
	if err != nil {
		return err
	}
	fmt.Fprintf(s.out, "Revision %d is backed up and checked in %s.\n", made.Revision, made.Path)
	if len(removed) > 0 {
		fmt.Fprintf(s.out, "%s taken away.\n", several(len(removed), "old backup was", "old backups were"))
	}
	return nil
}

type restoreCommand struct {
	Backup string `arg:"" help:"The backup to restore." type:"path"`
	Build  string `arg:"" help:"The build's own file whose place it takes (*.tumblehome)." type:"path"`
}

// Run restores a backup and says where what lay there is kept.
func (c restoreCommand) Run(s *streams) error {
	if !isStore(c.Build) {
		return notOwn(c.Build)
	}
	report, kept, err := store.Restore(context.Background(), c.Backup, c.Build, storeOptions())
	if err != nil {
		return err
	}
	fmt.Fprintf(s.out, "%s is restored in %s: %s.\n", titleOrBuild(report), c.Build, contents(report))
	if kept != "" {
		fmt.Fprintf(s.out, "What lay there before is kept in %s.\n", kept)
	}
	tellUnfit(s, report)
	return nil
}

type verifyCommand struct {
	File string `arg:"" help:"A build's own file or a backup (*.tumblehome)." type:"path"`
}

// Run leaves 1 when the file is damaged.
func (c verifyCommand) Run(s *streams) error {
	report, err := store.Verify(context.Background(), c.File, storeOptions())
	if errors.Is(err, store.ErrDamaged) {
		fmt.Fprintln(s.err, "tumblehome:", plain(err))
		return exit(exitFault)
	}
	if err != nil {
		return err
	}
	fmt.Fprintf(s.out, "%s is sound: %s.\n", titleOrBuild(report), contents(report))
	tellUnfit(s, report)
	return nil
}

func titleOrBuild(r store.Report) string {
	if r.Title == "" {
		return "The build"
	}
	return r.Title
}

// contents says how much is in a build's own file.
func contents(r store.Report) string {
	parts := []string{several(r.Revisions, "revision", "revisions")}
	if !r.Head.When.IsZero() {
		parts[0] += ", the last of " + r.Head.When.Local().Format("2 January 2006, 15:04")
	}
	if r.Attachments > 0 {
		parts = append(parts, fmt.Sprintf("%s with %.1f MB", several(r.Attachments, "photo or paper", "photos and papers"), float64(r.Bytes)/1e6))
	}
	return strings.Join(parts, "; ")
}

func several(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}

// tellUnfit says that a sound build can not be shown by this version, and what to do.
func tellUnfit(s *streams, r store.Report) {
	if r.Unfit != nil {
		fmt.Fprintf(s.err, "Its newest document breaks a rule of this version and can not be shown until it is mended (export --as-kept writes it out):\n%v\n", r.Unfit)
	}
}
