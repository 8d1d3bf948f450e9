package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"

	"tumblehome/build"
	"tumblehome/build/tree"
)

// step is a revision about to be made from the one before it.
type step struct {
	kind      Kind
	patch     tree.Patch
	words, by string
	base      int // the revision it was wanted for
}

// Save makes an edit a revision. When the build has moved on since the revision the edit was made against, the edit is moved onto the
// newest one if the two touch different things and the result passes every check; else the error is a *Conflict. When it returns no
// error the revision is on disk.
func (s *Store) Save(ctx context.Context, e Edit) (Revision, error) {
	return s.writeStep(ctx, func(now state) (step, error) {
		if e.Base != now.revision.N {
			if err := s.rebase(ctx, e, now); err != nil {
				return step{}, err
			}
		}
		return step{Made, e.Patch, e.Words, e.By, e.Base}, nil
	})
}

// rebase checks that an edit made against an older revision touches nothing that has changed since.
func (s *Store) rebase(ctx context.Context, e Edit, now state) error {
	base, err := s.nodeAt(ctx, e.Base)
	if err != nil {
		return err
	}
	theirs := tree.Difference(base, now.node)
	if found := clashes(base, now.node, e.Patch, theirs); len(found) > 0 {
		return &Conflict{Base: e.Base, Head: now.revision.N, Clashes: found}
	}
	return nil
}

const notSaved = "Nothing of this change was saved; all that was saved before it is kept."

// writeStep holds the file for writing, reads what other programs have written meanwhile, asks what is to be done then and does it.
// It can not be called off half way: a browser that leaves must not leave a doubt whether its edit was saved.
func (s *Store) writeStep(ctx context.Context, wanted func(now state) (step, error)) (Revision, error) {
	s.writing.Lock()
	defer s.writing.Unlock()
	if s.barred != nil {
		return Revision{}, s.barred
	}
	if err := s.inPlace("Nothing of this change was saved."); err != nil {
		return Revision{}, err
	}
	ctx = context.WithoutCancel(ctx)
	tx, err := s.write.BeginTx(ctx, nil)
	if err != nil {
		return Revision{}, because(err, notSaved)
	}
	defer func() { _ = tx.Rollback() }() // does nothing once committed
	if err := s.catchUp(ctx, tx); err != nil {
		return Revision{}, because(err, notSaved)
	}
	now := s.now()
	todo, err := wanted(now)
	if err != nil {
		return Revision{}, because(err, notSaved)
	}
	next, err := s.advance(now, todo)
	if err != nil {
		return Revision{}, err
	}
	if err := s.commit(ctx, tx, next); err != nil {
		return Revision{}, because(err, notSaved)
	}
	return s.now().revision, nil
}

// advance is the state after a step. What it makes has been through the form in which it will be kept, so that nothing is acknowledged
// that could not be read again.
func (s *Store) advance(now state, todo step) (state, error) {
	merged := tree.Merge(now.node, todo.patch)
	if tree.Equal(merged, now.node) {
		return state{}, ErrNoChange
	}
	doc, err := build.DecodeTree(merged, s.options.Rows)
	if err != nil {
		if todo.base != now.revision.N {
			return state{}, errors.Join(&Conflict{Base: todo.base, Head: now.revision.N}, err)
		}
		return state{}, err
	}
	node := build.Encode(doc) // the canonical form, so that equal documents are equal nodes
	if tree.Equal(node, now.node) {
		return state{}, ErrNoChange
	}
	next := state{document: doc, revision: Revision{
		N: now.revision.N + 1, Parent: now.revision.N, When: s.options.Now().UTC().Round(0),
		Kind: todo.kind, Words: oneLine(todo.words), By: oneLine(todo.by),
	}}
	if next.revision.Patch, next.node, err = asKept(now.node, node); err != nil {
		return state{}, err
	}
	if next.revision.Inverse, _, err = asKept(node, now.node); err != nil {
		return state{}, err
	}
	return next, fits(next.node)
}

// asKept is the patch from one document to another as it will be read from the file, and the document it makes.
func asKept(from, to *tree.Node) (tree.Patch, *tree.Node, error) {
	text := tree.Difference(from, to).JSON()
	if len(text) > mostBytes {
		return tree.Patch{}, nil, ErrTooLarge
	}
	patch, err := tree.ParsePatch(text)
	if err != nil {
		return tree.Patch{}, nil, fmt.Errorf("this change can not be kept: %w", err)
	}
	made := tree.Merge(from, patch)
	if !tree.Equal(made, to) {
		return tree.Patch{}, nil, errors.New("this change can not be kept: it would read differently afterwards")
	}
	return patch, made, nil
}

// What a document's text may be, so that package tree reads it again.
const (
	mostBytes  = 4 << 20
	mostLevels = 32
)

func fits(n *tree.Node) error {
	if levels(n) > mostLevels || len(tree.Write(n)) > mostBytes {
		return ErrTooLarge
	}
	return nil
}

func levels(n *tree.Node) int {
	deepest := 0
	for _, item := range n.Items {
		deepest = max(deepest, levels(item))
	}
	for _, e := range n.Entries {
		deepest = max(deepest, levels(e.Value))
	}
	if n.Kind == tree.Scalar {
		return deepest
	}
	return deepest + 1
}

// commit writes a revision and makes it the head. It returns only when the revision is on disk.
func (s *Store) commit(ctx context.Context, tx *sql.Tx, next state) error {
	now := s.now()
	next.digest = digestOf(next.node)
	kept := rowOf(next.revision, next.digest)
	kept.seal = kept.sealAfter(now.seal)
	next.seal, next.revision.Seal = kept.seal, kept.seal
	next.stacks = now.stacks
	if err := insert(ctx, tx, kept, next.node); err != nil {
		return err
	}
	if err := tx.Commit(); err != nil {
		return err
	}
	if err := next.stacks.add(next.revision.N, next.revision.Kind); err != nil {
		return err
	}
	s.setHead(next)
	return s.afterCommit(ctx)
}
