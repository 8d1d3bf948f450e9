package cli_test

import (
	"encoding/json"
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"tumblehome/examples"
	"tumblehome/internal/cli"
)

// The scripts in testdata/script read like evenings at the kitchen table. Each runs in an empty folder with the three demonstration builds in it.
// Besides the usual commands of such scripts there are
//
//	leaves CODE COMMAND...             runs a command that must leave this exit code
//	within FILE FIGURE KEY LOW HIGH    a number of a figure in a file of figures lies between two others
//	asks PAGE PATTERN                  the workspace served at port $PORT shows a page that matches, soon
//	holdsSoon FOLDER COUNT             a folder holds so many builds' own files, soon
//	isJSON FILE                        a file is JSON
//	eachHas FILE KEY...                every entry of a file of figures or findings has these keys
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir: "testdata/script",
		Setup: func(env *testscript.Env) error {
			port, err := freePort()
			if err != nil {
				return err
			}
			env.Setenv("PORT", port)
			for _, name := range examples.Names {
				text, err := examples.Document(name)
				if err != nil {
					return err
				}
				if err := os.WriteFile(filepath.Join(env.WorkDir, name+".yaml"), text, 0o644); err != nil {
					return err
				}
			}
			return nil
		},
		Cmds: map[string]func(*testscript.TestScript, bool, []string){"leaves": leaves, "within": within, "eachHas": eachHas, "isJSON": isJSON, "asks": asks, "holdsSoon": holdsSoon},
	})
}

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"tumblehome": func() { os.Exit(cli.Run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) },
	})
}

func leaves(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: leaves CODE COMMAND...")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	got := 0
	var left *exec.ExitError
	switch err := ts.Exec(args[1], args[2:]...); {
	case errors.As(err, &left):
		got = left.ExitCode()
	case err != nil:
		ts.Fatalf("%v", err)
	}
	if got != want {
		ts.Fatalf("it left %d, not %d", got, want)
	}
}

func within(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 5 {
		ts.Fatalf("usage: within FILE FIGURE KEY LOW HIGH")
	}
	var all map[string]map[string]any
	ts.Check(json.Unmarshal([]byte(ts.ReadFile(args[0])), &all))
	low, err := strconv.ParseFloat(args[3], 64)
	ts.Check(err)
	high, err := strconv.ParseFloat(args[4], 64)
	ts.Check(err)
	if v, ok := all[args[1]][args[2]].(float64); !ok || v < low || v > high {
		ts.Fatalf("%s of %s is %v, not between %g and %g", args[2], args[1], all[args[1]][args[2]], low, high)
	}
}

func isJSON(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 1 {
		ts.Fatalf("usage: isJSON FILE")
	}
	if !json.Valid([]byte(ts.ReadFile(args[0]))) {
		ts.Fatalf("%s is not JSON", args[0])
	}
}

func eachHas(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: eachHas FILE KEY...")
	}
	text := []byte(ts.ReadFile(args[0]))
	var byCode map[string]map[string]any
	var list []map[string]any
	if json.Unmarshal(text, &byCode) != nil {
		ts.Check(json.Unmarshal(text, &list))
	}
	for _, entry := range byCode {
		list = append(list, entry)
	}
	if len(list) == 0 {
		ts.Fatalf("%s has no entries", args[0])
	}
	for _, entry := range list {
		for _, key := range args[1:] {
			if _, ok := entry[key]; !ok {
				ts.Fatalf("an entry lacks %s: %v", key, entry)
			}
		}
	}
}
