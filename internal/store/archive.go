package store

import (
	"archive/zip"
	"context"
	"encoding/json"
	"io"
	"math"

	"tumblehome/build/tree"
)

// An archive is a whole build as one zip file: every revision letter for letter, with its seal, and every photo. What lies in it:
//
//	about.json          what this is
//	build.yaml          the newest document, for people
//	first.yaml          the document of the first revision
//	history.jsonl       a line for each revision
//	attachments.jsonl   a line for each photo or paper
//	attachments/<id>    its content
const (
	aboutName       = "about.json"
	newestName      = "build.yaml"
	firstName       = "first.yaml"
	historyName     = "history.jsonl"
	attachmentsName = "attachments.jsonl"
	attachmentsIn   = "attachments/"
)

// archiveFormat is the format of archives, written into about.json.
const archiveFormat = 1

type about struct {
	Archive int `json:"tumblehome-archive"`
}

// archived is a revision in history.jsonl. The patches are texts, since the seals hold every letter of them.
type archived struct {
	N       int    `json:"n"`
	Parent  int    `json:"parent"`
	Made    string `json:"made"`
	Kind    string `json:"kind"`
	Words   string `json:"words"`
	By      string `json:"by"`
	Patch   string `json:"patch"`
	Inverse string `json:"inverse"`
	Digest  string `json:"digest"`
	Seal    string `json:"seal"`
}

func (a archived) row() row {
	return row{a.N, a.Parent, a.Made, a.Kind, a.Words, a.By, a.Patch, a.Inverse, a.Digest, a.Seal}
}

func archivedOf(r row) archived {
	return archived{r.n, r.parent, r.made, r.kind, r.words, r.by, r.patch, r.inverse, r.digest, r.seal}
}

// archivedFile is an attachment in attachments.jsonl.
type archivedFile struct {
	ID     string `json:"id"`
	Name   string `json:"name"`
	Kind   string `json:"kind"`
	Made   string `json:"made"`
	Size   int64  `json:"size"`
	Digest string `json:"digest"`
}

// Pack writes a build's file as an archive, also while the build is open. The same build gives the same bytes.
func Pack(ctx context.Context, path string, out io.Writer, o Options) (err error) {
	s, err := openToRead(ctx, path, o)
	if err != nil {
		return err
	}
	defer func() { err = firstError(because(err, "The archive is not whole."), s.Close()) }()
	now, err := s.newestState(ctx)
	if err != nil {
		return err
	}
	_, first, err := wholeBefore(ctx, s.read, 1)
	if err != nil {
		return err
	}
	p := packer{zip.NewWriter(out)}
	if err := firstError(p.line(aboutName, about{archiveFormat}), p.text(newestName, tree.Write(now.node)), p.text(firstName, tree.Write(first))); err != nil {
		return err
	}
	if err := p.history(ctx, s.read, now.revision.N); err != nil {
		return err
	}
	if err := p.attachments(ctx, s); err != nil {
		return err
	}
	return p.zip.Close()
}

// packer writes the pieces of an archive, none of them with a date of its own.
type packer struct{ zip *zip.Writer }

func (p packer) text(name string, content []byte) error {
	w, err := p.zip.Create(name)
	if err != nil {
		return err
	}
	_, err = w.Write(content)
	return err
}

func (p packer) line(name string, value any) error {
	w, err := p.zip.Create(name)
	if err != nil {
		return err
	}
	return lines(w).Encode(value)
}

// lines writes values as JSON, one a line.
func lines(w io.Writer) *json.Encoder {
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	return e
}

func (p packer) history(ctx context.Context, db asker, last int) error {
	w, err := p.zip.Create(historyName)
	if err != nil {
		return err
	}
	to := lines(w)
	return each(ctx, db, 0, min(last, math.MaxInt32), func(r row) error { return to.Encode(archivedOf(r)) })
}

func (p packer) attachments(ctx context.Context, s *Store) error {
	all, err := s.Attachments(ctx)
	if err != nil {
		return err
	}
	w, err := p.zip.Create(attachmentsName)
	if err != nil {
		return err
	}
	to := lines(w)
	for _, a := range all {
		if err := to.Encode(archivedFile{a.ID, a.Name, a.Kind, a.made(), a.Size, a.digest}); err != nil {
			return err
		}
	}
	for _, a := range all {
		w, err := p.zip.CreateHeader(&zip.FileHeader{Name: attachmentsIn + a.ID, Method: zip.Store}) // photos do not shrink
		if err != nil {
			return err
		}
		if err := writeAttachment(ctx, s.read, a, w); err != nil {
			return err
		}
	}
	return nil
}
