package store

import (
	"context"
	"database/sql"
	"errors"
	"sync"

	"tumblehome/build"
	"tumblehome/build/tree"
)

// wholeEvery is how many revisions lie between two whole documents kept in the file.
const wholeEvery = 50

// Store is one build's file. It may be used by several goroutines.
type Store struct {
	db      *sql.DB
	options Options

	mu   sync.Mutex // held while the head changes
	head state
}

// state is the newest revision as kept in memory.
type state struct {
	revision Revision
	document *build.Document
	node     *tree.Node
}

// Head returns the newest revision this process knows and its document.
func (s *Store) Head() (Revision, *build.Document) {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.head.revision, s.head.document
}

// begin writes the first revision.
func (s *Store) begin(ctx context.Context, doc *build.Document) error {
	s.mu.Lock()
	defer s.mu.Unlock()
	node := build.Encode(doc)
	first := Revision{N: 1, When: s.options.Now().UTC(), Kind: Begin, Words: "begun"}
	return s.commit(ctx, state{first, doc, node})
}

// Save makes an edit a revision. When the build has moved on since the revision the edit was made against, the edit is moved onto the
// newest one if the two touch different things and the result passes every check; else the error is a *Conflict.
func (s *Store) Save(ctx context.Context, e Edit) (Revision, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if err := s.catchUp(ctx); err != nil {
		return Revision{}, err
	}
	if e.Base != s.head.revision.N {
		if err := s.rebase(ctx, e); err != nil {
			return Revision{}, err
		}
	}
	return s.advance(ctx, Made, e.Patch, e.Words, e.By, e.Base)
}

// rebase checks that an edit made against an older revision touches nothing that has changed since.
func (s *Store) rebase(ctx context.Context, e Edit) error {
	base, err := s.nodeAt(ctx, e.Base)
	if err != nil {
		return err
	}
	theirs := tree.Difference(base, s.head.node)
	if tree.Disjoint(e.Patch, theirs) {
		return nil
	}
	return &Conflict{Base: e.Base, Head: s.head.revision.N, Clashes: s.clashes(e.Patch, theirs)}
}

// clashes lists the places of an edit that somebody else has changed, with both values.
func (s *Store) clashes(mine, theirs tree.Patch) []Clash {
	wanted := tree.Merge(s.head.node, mine)
	var out []Clash
	for _, p := range mine.Touches() {
		for _, q := range theirs.Touches() {
			if p.Holds(q) || q.Holds(p) {
				out = append(out, Clash{Pointer: p, Mine: textAt(wanted, p), Theirs: textAt(s.head.node, p)})
				break
			}
		}
	}
	return out
}

func textAt(n *tree.Node, p tree.Pointer) string {
	found := n.At(p)
	switch {
	case found == nil:
		return ""
	case found.Kind == tree.Scalar:
		return found.Text
	}
	return string(tree.JSON(found))
}

// advance applies a patch to the head, checks the result and writes it.
func (s *Store) advance(ctx context.Context, kind Kind, patch tree.Patch, words, by string, base int) (Revision, error) {
	merged := tree.Merge(s.head.node, patch)
	if tree.Equal(merged, s.head.node) {
		return Revision{}, ErrNoChange
	}
	doc, err := build.DecodeTree(merged, s.options.Rows)
	if err != nil {
		if base != s.head.revision.N {
			return Revision{}, errors.Join(&Conflict{Base: base, Head: s.head.revision.N}, err)
		}
		return Revision{}, err
	}
	node := build.Encode(doc) // the canonical form, so that equal documents are equal nodes
	next := Revision{
		N: s.head.revision.N + 1, Parent: s.head.revision.N, When: s.options.Now().UTC(), Kind: kind, Words: words, By: by,
		Patch: tree.Difference(s.head.node, node), Inverse: tree.Difference(node, s.head.node),
	}
	return next, s.commit(ctx, state{next, doc, node})
}

// catchUp reads the newest revision again if another program has written to the file.
func (s *Store) catchUp(ctx context.Context) error {
	var newest int
	if err := s.db.QueryRowContext(ctx, "SELECT max(n) FROM revision").Scan(&newest); err != nil {
		return err
	}
	if newest == s.head.revision.N {
		return nil
	}
	return s.refreshLocked(ctx)
}
