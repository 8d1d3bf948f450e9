package store

import (
	"context"
	"errors"
	"io"
	"math"

	"tumblehome/build"
	"tumblehome/build/tree"
)

// Report is what Verify found in a sound file.
type Report struct {
	Format      int
	Revisions   int
	Head        Revision // of the newest format only, like all below
	Title       string
	Attachments int
	Bytes       int64 // of the attachments
	Unfit       error // why this version of the program can not show the newest document; the file is sound all the same

	first, seal string // the seals of the first and of the newest revision
}

// Verify reads every page, every revision forwards and backwards, and every photo of a file, and holds them to their digests. It writes
// nothing. The error says what is damaged, or why the file could not be read.
func Verify(ctx context.Context, path string, o Options) (Report, error) {
	s, err := openToRead(ctx, path, o)
	if err != nil {
		return Report{}, err
	}
	report, err := s.verify(ctx)
	return report, firstError(because(err, "It was not changed."), s.Close())
}

// AsKept is the newest document of a build as it was kept, also where this version of the program has a rule against it.
func AsKept(ctx context.Context, path string, o Options) (text []byte, err error) {
	s, err := openToRead(ctx, path, o)
	if err != nil {
		return nil, err
	}
	defer func() { err = firstError(err, s.Close()) }()
	now, err := s.newestState(ctx)
	if err != nil {
		return nil, because(err, "It was not changed.")
	}
	return tree.Write(now.node), nil
}

// newestState follows the history of a file that was opened to be read, whatever rules its newest document breaks.
func (s *Store) newestState(ctx context.Context) (state, error) {
	format, err := formatOf(ctx, s.read, s.path)
	if err != nil {
		return state{}, err
	}
	if format < newest() {
		return state{}, trouble(ErrUnfit, "%s is of an older format; open it once, and it is brought up to date.", s.path)
	}
	raw := s.options
	raw.undecoded = true
	return walkAll(ctx, s.read, raw)
}

// openToRead opens a file as it is, of any format, without a way to write to it. Where there is no log beside it nobody has it open, and
// then nothing is made beside it either.
func openToRead(ctx context.Context, path string, o Options) (*Store, error) {
	s, err := unopened(ctx, path, o)
	if err != nil {
		return nil, err
	}
	if exists(s.path + "-wal") {
		_, err = s.openReader(ctx)
	} else {
		err = s.openBarred(trouble(ErrReadOnly, "%s was opened to be read.", path))
	}
	if err != nil {
		return nil, firstError(because(err, "It was not opened."), s.Close())
	}
	return s, nil
}

func (s *Store) verify(ctx context.Context) (r Report, err error) {
	if r.Format, err = formatOf(ctx, s.read, s.path); err != nil {
		return r, err
	}
	if err := integrity(ctx, s.read, "integrity_check"); err != nil {
		return r, err
	}
	orphans, err := texts(ctx, s.read, "SELECT \"table\" FROM pragma_foreign_key_check")
	if err == nil && len(orphans) > 0 {
		err = damagedAt(0, errors.New("a row of "+orphans[0]+" belongs to nothing"))
	}
	if err != nil {
		return r, err
	}
	if r.Format < newest() {
		return r, s.read.QueryRowContext(ctx, "SELECT count(*) FROM revision").Scan(&r.Revisions)
	}
	if err := s.verifyHistory(ctx, &r); err != nil {
		return r, err
	}
	return r, s.verifyAttachments(ctx, &r)
}

// verifyHistory follows the history from the first document on, and makes sure that each way back leads to where it came from.
func (s *Store) verifyHistory(ctx context.Context, r *Report) error {
	_, node, err := wholeBefore(ctx, s.read, 1)
	if err != nil {
		return damagedAt(1, err)
	}
	w := &walker{from: 1, node: node}
	err = each(ctx, s.read, 0, math.MaxInt32, func(row row) error {
		before := w.last.digest
		if err := w.follow(row); err != nil {
			return err
		}
		if row.n == 1 {
			r.first = row.seal
		}
		return held(ctx, s.read, w.node, row, before)
	})
	if err != nil {
		return err
	}
	raw := s.options
	raw.undecoded = true
	now, err := w.state(raw)
	if err != nil {
		return err
	}
	r.Revisions, r.Head, r.seal = now.revision.N, now.revision, now.seal
	doc, err := build.DecodeTree(now.node, s.options.Rows)
	if r.Unfit = err; err == nil {
		r.Title = doc.Build.Title
	}
	return nil
}

// held holds a revision's document to its digest, to the way back, and to the whole document where one is kept.
func held(ctx context.Context, db asker, node *tree.Node, r row, before string) error {
	if digestOf(node) != r.digest {
		return damagedAt(r.n, nil)
	}
	inverse, err := tree.ParsePatch([]byte(r.inverse))
	if err != nil {
		return damagedAt(r.n, err)
	}
	if r.n > 1 && digestOf(tree.Merge(node, inverse)) != before {
		return damagedAt(r.n, errors.New("the way back leads elsewhere"))
	}
	if r.n%wholeEvery != 1 {
		return nil
	}
	from, whole, err := wholeBefore(ctx, db, r.n)
	if err != nil {
		return damagedAt(r.n, err)
	}
	if from != r.n || digestOf(whole) != r.digest {
		return damagedAt(r.n, errors.New("the whole document differs"))
	}
	return nil
}

func (s *Store) verifyAttachments(ctx context.Context, r *Report) error {
	all, err := s.Attachments(ctx)
	if err != nil {
		return err
	}
	for _, a := range all {
		if err := writeAttachment(ctx, s.read, a, io.Discard); err != nil {
			return err
		}
		r.Attachments++
		r.Bytes += a.Size
	}
	return nil
}
