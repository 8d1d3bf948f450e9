package cli

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"log/slog"
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"

	"tumblehome/internal/store"
	"tumblehome/internal/web"
	"tumblehome/reckon"
)

type serveCommand struct {
	File  string `arg:"" help:"A build's own file (*.tumblehome), made if it is not there yet; or a document, from which one is made beside it." type:"path"`
	Port  int    `default:"7350" help:"Port on this computer; the next free one if it is taken."`
	Quiet bool   `help:"Do not open a browser."`
}

// Run serves until it is interrupted.
func (c serveCommand) Run(s *streams) error {
	if c.Port < 0 || c.Port > 65535-portsTried {
		return fmt.Errorf("--port: %d is no port; take one from 1024 to %d", c.Port, 65535-portsTried)
	}
	path, err := c.ownFile(s)
	if err != nil {
		return err
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	return workspace{path: path, port: c.Port, open: !c.Quiet, backups: true}.serve(ctx, s)
}

// ownFile finds or makes the build's own file.
func (c serveCommand) ownFile(s *streams) (string, error) {
	if isStore(c.File) {
		if _, err := os.Stat(c.File); errors.Is(err, fs.ErrNotExist) {
			doc, err := beginning(titleOf(c.File))
			if err != nil {
				return "", err
			}
			return c.File, createStore(c.File, doc)
		}
		return c.File, nil
	}
	beside := strings.TrimSuffix(c.File, filepath.Ext(c.File)) + ".tumblehome"
	if _, err := os.Stat(beside); err == nil {
		fmt.Fprintf(s.err, "%s exists already and is opened; the document is not read again.\n", beside)
		return beside, nil
	}
	return beside, importCommand{Document: c.File, Build: beside}.Run(s)
}

func titleOf(path string) string { return strings.TrimSuffix(filepath.Base(path), filepath.Ext(path)) }

// workspace is a build's own file to be shown in the browser.
type workspace struct {
	path    string
	port    int
	open    bool // in a browser, at once
	backups bool // are kept up beside it
}

// serve opens the file and answers until the context ends.
func (o workspace) serve(ctx context.Context, s *streams) (err error) {
	build, err := store.Open(ctx, o.path, storeOptions())
	if err != nil {
		return err
	}
	defer func() { err = firstError(err, build.Close()) }()
	tellOpened(s, build)
	machine := reckon.NewMachine()
	server, err := web.New(web.Options{
		Store: build, Reckon: machine.Reckon, AtHand: machine.AtHand, Today: today,
		Log: slog.New(slog.NewTextHandler(s.err, nil)),
	})
	if err != nil {
		return err
	}
	listener, err := listen(o.port)
	if err != nil {
		return err
	}
	tellPort(s.err, o.port, listener.Addr())
	address := "http://" + listener.Addr().String() + "/"
	fmt.Fprintf(s.out, "The workspace is open at %s (stop it with Ctrl+C)\n", address)
	if o.open {
		openBrowser(address)
	}
	if o.backups && build.Barred() == nil {
		defer keepUp(ctx, s, o.path)()
	}
	return server.Serve(ctx, listener)
}

// tellOpened says what is unusual about a build that was opened: that it can only be read, that a copy of its older format was kept.
func tellOpened(s *streams, build *store.Store) {
	if barred := build.Barred(); barred != nil {
		fmt.Fprintln(s.err, plain(barred))
	}
	if kept := build.KeptCopy(); kept != "" {
		fmt.Fprintf(s.err, "The build was of an older format and was brought up to date. As it was before it is kept in %s.\n", kept)
	}
}

// Backups that are kept: of a large file, which is full of photos, fewer.
const (
	backupsKept      = 10
	backupsKeptLarge = 2
	largeBuild       = 200 << 20 // bytes
)

// keepUp makes a backup while the workspace runs, unless there is one of the newest revision; done waits for it. What stands in its way
// is said and stops nothing.
func keepUp(ctx context.Context, s *streams, path string) (done func()) {
	keep := backupsKept
	if info, err := os.Stat(path); err == nil && info.Size() > largeBuild {
		keep = backupsKeptLarge
	}
	ended := make(chan struct{})
	go func() {
		defer close(ended)
		newest, made, err := store.KeepUp(ctx, path, keep, storeOptions())
		switch {
		case ctx.Err() != nil: // the workspace was stopped before the backup was ready; the next start makes it
		case err != nil:
			fmt.Fprintln(s.err, plain(err))
		case made:
			fmt.Fprintf(s.out, "Revision %d is backed up and checked in %s.\n", newest.Revision, newest.Path)
		}
	}()
	return func() { <-ended }
}

// openBrowser shows the page where there is a desktop to show it on; where there is none the address has been printed.
func openBrowser(address string) {
	var opener *exec.Cmd
	switch {
	case runtime.GOOS == "darwin":
		opener = exec.Command("open", address)
	case runtime.GOOS == "windows":
		opener = exec.Command("rundll32", "url.dll,FileProtocolHandler", address)
	case os.Getenv("DISPLAY") != "" || os.Getenv("WAYLAND_DISPLAY") != "":
		opener = exec.Command("xdg-open", address)
	default:
		return
	}
	if opener.Start() == nil {
		go func() { _ = opener.Wait() }()
	}
}
