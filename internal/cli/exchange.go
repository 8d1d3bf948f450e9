package cli

import (
	"context"
	"fmt"

	"tumblehome/build"
	"tumblehome/internal/store"
)

type importCommand struct {
	Document string `arg:"" help:"The document to read (YAML or JSON), or the archive of a whole build (*.zip)." type:"path"`
	Build    string `arg:"" help:"The build's own file to make (*.tumblehome)." type:"path"`
}

// Run makes a build's own file from a document or an archive; it never overwrites one.
func (c importCommand) Run(s *streams) error {
	if isArchive(c.Document) {
		return c.unpack(s)
	}
	doc, report, err := loadText(c.Document)
	if err != nil {
		return err
	}
	if err := createStore(c.Build, doc); err != nil {
		return err
	}
	fmt.Fprintf(s.out, "%s is in %s.\n", doc.Build.Title, c.Build)
	tellComments(s, report)
	return nil
}

// tellComments says how many comments of a text are lost where it is written anew.
func tellComments(s *streams, report build.Report) {
	switch n := report.Comments; {
	case n == 1:
		fmt.Fprintln(s.err, "1 comment of the file could not be kept; a build keeps remarks under note:.")
	case n > 1:
		fmt.Fprintf(s.err, "%d comments of the file could not be kept; a build keeps remarks under note:.\n", n)
	}
}

// createStore refuses a path that is taken, so that no build is lost.
func createStore(path string, doc *build.Document) error {
	if !isStore(path) {
		return notOwn(path)
	}
	made, err := store.Create(context.Background(), path, doc, storeOptions())
	if err != nil {
		return err
	}
	return made.Close()
}

func notOwn(path string) error {
	return fmt.Errorf("%s: a build's own file ends in .tumblehome", path)
}

type exportCommand struct {
	source
	Out    string `short:"o" help:"Where to write; the terminal if left out. A name that ends in .zip gets the whole build, every revision and every photo." type:"path"`
	JSON   bool   `name:"json" help:"Write JSON instead of YAML."`
	AsKept bool   `help:"Write the newest document of a build's own file as it was kept, even where this version has a rule against it."`
}

// Run writes the document in its canonical form, or the whole build as an archive.
func (c exportCommand) Run(s *streams) error {
	if isArchive(c.Out) {
		return c.pack(s)
	}
	if c.AsKept {
		text, err := store.AsKept(context.Background(), c.File, storeOptions())
		if err != nil {
			return err
		}
		return writeTo(c.Out, text, s)
	}
	doc, report, err := c.whole()
	if err != nil {
		return err
	}
	tellComments(s, report)
	text := build.WriteYAML(doc)
	if c.JSON {
		text = build.WriteJSON(doc)
	}
	return writeTo(c.Out, text, s)
}

// whole is the document, and what of its text was not kept.
func (c exportCommand) whole() (*build.Document, build.Report, error) {
	if isStore(c.File) {
		doc, err := loadStore(c.File)
		return doc, build.Report{}, err
	}
	return loadText(c.File)
}

type schemaCommand struct{}

// Run prints the schema of the document.
func (schemaCommand) Run(s *streams) error {
	_, err := s.out.Write(build.Schema())
	return err
}
