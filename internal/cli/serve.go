package cli

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"log/slog"
	"net"
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"runtime"
	"strconv"
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
	return serve(ctx, s, path, c.Port, !c.Quiet)
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

// serve opens a build's own file in the workspace and answers until the context ends.
func serve(ctx context.Context, s *streams, path string, port int, open bool) (err error) {
	build, err := store.Open(ctx, path, storeOptions())
	if err != nil {
		return err
	}
	defer func() { err = firstError(err, build.Close()) }()
	server, err := web.New(web.Options{
		Store: build, Reckon: reckon.NewMachine().Reckon, Today: today,
		Log: slog.New(slog.NewTextHandler(s.err, nil)),
	})
	if err != nil {
		return err
	}
	listener, err := listen(port)
	if err != nil {
		return err
	}
	address := "http://" + listener.Addr().String() + "/"
	fmt.Fprintf(s.out, "The workspace is open at %s (stop it with Ctrl+C)\n", address)
	if open {
		openBrowser(address)
	}
	return server.Serve(ctx, listener)
}

// portsTried is how many ports are tried from the one asked for.
const portsTried = 20

// listen answers on this computer only.
func listen(port int) (net.Listener, error) {
	var err error
	for p := port; p < port+portsTried; p++ {
		var l net.Listener
		if l, err = net.Listen("tcp", net.JoinHostPort("127.0.0.1", strconv.Itoa(p))); err == nil {
			return l, nil
		}
	}
	return nil, fmt.Errorf("no free port from %d to %d: %w", port, port+portsTried-1, err)
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
