package cli_test

import (
	"fmt"
	"io"
	"net"
	"net/http"
	"path/filepath"
	"regexp"
	"strconv"
	"time"

	"github.com/rogpeppe/go-internal/testscript"
)

// freePort is a port that nobody has just now.
func freePort() (string, error) {
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		return "", err
	}
	defer l.Close()
	_, port, err := net.SplitHostPort(l.Addr().String())
	return port, err
}

// soon asks again until there is nothing to complain of, for half a minute.
func soon(ts *testscript.TestScript, ask func() error) {
	var err error
	for range 300 {
		if err = ask(); err == nil {
			return
		}
		time.Sleep(100 * time.Millisecond)
	}
	ts.Fatalf("%v", err)
}

func asks(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: asks PAGE PATTERN")
	}
	wanted, err := regexp.Compile(args[1])
	ts.Check(err)
	soon(ts, func() error {
		answer, err := http.Get("http://127.0.0.1:" + ts.Getenv("PORT") + "/" + args[0])
		if err != nil {
			return err
		}
		defer answer.Body.Close()
		page, err := io.ReadAll(answer.Body)
		if err == nil && !wanted.Match(page) {
			err = fmt.Errorf("%s answers %d, which does not match %s", args[0], answer.StatusCode, wanted)
		}
		return err
	})
}

func holdsSoon(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: holdsSoon FOLDER COUNT")
	}
	want, err := strconv.Atoi(args[1])
	ts.Check(err)
	soon(ts, func() error {
		found, err := filepath.Glob(filepath.Join(ts.MkAbs(args[0]), "*.tumblehome"))
		if err == nil && len(found) != want {
			err = fmt.Errorf("%s holds %d builds, not %d", args[0], len(found), want)
		}
		return err
	})
}
