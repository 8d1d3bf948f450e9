package cli

import (
	"context"
	"fmt"
	"io"
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"syscall"
	"text/tabwriter"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/examples"
	"tumblehome/internal/words"
)

type demoCommand struct {
	Build string `arg:"" optional:"" default:"dipper" enum:"dipper,twite,godwit" help:"Which invented build: dipper, twite or godwit."`
	Port  int    `default:"7350" help:"Port on this computer; the next free one if it is taken."`
	Print bool   `help:"Only print the headline and the notes."`
}

// Run prints the headline figures and the margin notes, then serves a copy of the build that is thrown away afterwards.
func (c demoCommand) Run(s *streams) error {
	text, err := examples.Document(c.Build)
	if err != nil {
		return err
	}
	doc, _, err := build.Decode(c.Build+".yaml", text, catalogue.Builtin())
	if err != nil {
		return err
	}
	if err := printHeadline(s.out, doc); err != nil || c.Print {
		return err
	}
	folder, err := os.MkdirTemp("", "tumblehome-demo-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	path := filepath.Join(folder, c.Build+".tumblehome")
	if err := createStore(path, doc); err != nil {
		return err
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	return workspace{path: path, port: c.Port, open: true}.serve(ctx, s)
}

// headline are the figures a builder asks for first.
var headline = []string{"shell.headroom", "shell.floor-area", "lining.floor-area", "weight.total", "weight.front-axle", "weight.rear-axle", "weight.payload-left", "cost.forecast", "cost.planned"}

func printHeadline(out io.Writer, doc *build.Document) error {
	r, worker := attempt(doc, today())
	title := r.Document.Build.Title
	fmt.Fprintf(out, "%s\n%s\n\n", title, strings.Repeat("-", len([]rune(title))))
	table := tabwriter.NewWriter(out, 0, 0, 2, ' ', 0)
	for _, code := range headline {
		if f, ok := r.Figure(code); ok {
			fmt.Fprintf(table, "%s\t%s\t%s\n", f.Label, words.Figure(f), remark(f))
		}
	}
	if err := table.Flush(); err != nil {
		return err
	}
	fmt.Fprintln(out)
	return printFindings(out, r, worker)
}
