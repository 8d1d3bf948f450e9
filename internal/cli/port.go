package cli

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"net"
	"net/http"
	"regexp"
	"strconv"
	"strings"
	"time"
)

// portsTried is how many ports are tried from the one asked for.
const portsTried = 20

// listen answers on this computer only, at the port asked for or the next one that is free.
func listen(port int) (net.Listener, error) {
	for p := port; p < port+portsTried; p++ {
		if l, err := net.Listen("tcp", at(p)); err == nil {
			return l, nil
		}
	}
	return nil, fmt.Errorf("no port from %d to %d is free; close one of the programs that run there, or choose another with --port, such as --port %d", port, port+portsTried-1,
		another(port))
}

func at(port int) string { return net.JoinHostPort("127.0.0.1", strconv.Itoa(port)) }

// another is a port far from those that were tried.
func another(port int) int {
	if port < 9000 {
		return 9000
	}
	return 8000
}

// tellPort says who has the port that was asked for, where it was not to be had.
func tellPort(out io.Writer, asked int, given net.Addr) {
	_, port, err := net.SplitHostPort(given.String())
	if err != nil || asked == 0 || port == strconv.Itoa(asked) {
		return
	}
	fmt.Fprintf(out, "Port %d is taken by %s; this one is at the next port that was free, %s. Choose one yourself with --port.\n", asked, whoHas(asked), port)
}

// patience is how long a stranger at a port is waited for.
const patience = 2 * time.Second

var titled = regexp.MustCompile(`<title>([^<]*)</title>`)

// whoHas asks what answers at a port: another workspace says which build it shows.
func whoHas(port int) string {
	const stranger = "another program"
	ctx, stop := context.WithTimeout(context.Background(), patience)
	defer stop()
	ask, err := http.NewRequestWithContext(ctx, http.MethodGet, "http://"+at(port)+"/", nil)
	if err != nil {
		return stranger
	}
	answer, err := http.DefaultClient.Do(ask)
	if err != nil {
		return stranger
	}
	defer answer.Body.Close()
	page, err := io.ReadAll(io.LimitReader(answer.Body, 1<<16))
	title := titled.FindSubmatch(page)
	if err != nil || title == nil || !bytes.Contains(page, []byte(`name="application-name" content="Tumblehome"`)) {
		return stranger
	}
	_, build, _ := strings.Cut(string(title[1]), "? ")
	return fmt.Sprintf("another workspace of this program (%s)", strings.TrimSpace(build))
}
