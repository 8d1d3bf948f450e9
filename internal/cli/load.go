package cli

import (
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"time"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/internal/store"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

// source is what most commands begin with: a build and the day it is reckoned for.
type source struct {
	File string `arg:"" help:"A document (YAML or JSON) or a build's own file (*.tumblehome)." type:"path"`
	On   string `help:"The day to reckon for, as 2026-03-07; today if left out and the document does not say." placeholder:"DATE"`
}

// load reads the document.
func (s source) load() (*build.Document, error) { return load(s.File) }

// reckon reads the document and works it out.
func (s source) reckon() (*reckon.Reckoning, error) {
	doc, err := s.load()
	if err != nil {
		return nil, err
	}
	day, err := s.day()
	if err != nil {
		return nil, err
	}
	return reckon.NewMachine().Reckon(doc, day), nil
}

// day is the day asked for, else today.
func (s source) day() (quantity.Date, error) {
	if s.On == "" {
		return today(), nil
	}
	day, err := quantity.ParseDate(s.On)
	if err != nil {
		return day, fmt.Errorf("--on: %w", err)
	}
	return day, nil
}

func today() quantity.Date {
	now := time.Now()
	return quantity.Date{Year: now.Year(), Month: int(now.Month()), Day: now.Day()}
}

// isStore reports whether a path names a build's own file.
func isStore(path string) bool { return filepath.Ext(path) == ".tumblehome" }

func load(path string) (*build.Document, error) {
	if isStore(path) {
		return loadStore(path)
	}
	doc, _, err := loadText(path)
	return doc, err
}

func loadText(path string) (*build.Document, build.Report, error) {
	file, err := os.Open(path)
	if err != nil {
		return nil, build.Report{}, err
	}
	defer file.Close()
	text, err := io.ReadAll(io.LimitReader(file, mostRead))
	if err != nil {
		return nil, build.Report{}, err
	}
	return build.Decode(filepath.Base(path), text, catalogue.Builtin())
}

// mostRead is one byte more than a document may have: what is longer is refused for it, and never read whole.
const mostRead = 4<<20 + 1

func loadStore(path string) (doc *build.Document, err error) {
	if _, err := os.Stat(path); err != nil {
		return nil, err
	}
	s, err := store.Open(context.Background(), path, storeOptions())
	if err != nil {
		return nil, err
	}
	defer func() { err = firstError(err, s.Close()) }()
	_, doc = s.Head()
	return doc, nil
}

func storeOptions() store.Options {
	return store.Options{Now: time.Now, Rows: catalogue.Builtin()}
}

func firstError(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}
