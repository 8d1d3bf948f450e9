package web

import (
	"context"
	"sync"
	"sync/atomic"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/internal/store"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

// desk holds the build as it is now and what follows from it.
type desk struct {
	store  Keeper
	reckon func(*build.Document, quantity.Date) *reckon.Reckoning
	atHand func(*build.Document, quantity.Date, *reckon.Reckoning) *reckon.Reckoning
	today  func() quantity.Date
	rows   *catalogue.Catalogue
	news   *newsroom
	kit    kitChart

	mu  sync.Mutex // held while what lies on the desk is renewed
	now atomic.Pointer[state]

	bar atomic.Pointer[string] // why nothing can be saved, or why what is shown may not be the newest
}

// state is one revision and everything worked out from it. It never changes once made.
type state struct {
	Revision store.Revision
	Doc      *build.Document
	Node     *tree.Node // the document as it is written
	Day      quantity.Date
	Rows     *catalogue.Catalogue // the built-in rows under the document's own
	*reckon.Reckoning
	Said       string // what the last change moved, in a sentence
	trials     *trials
	names      map[string]string // of fittings
	Undo, Redo bool
}

// stagesAtHand are the parts of a reckoning that are worked out at once after a save.
var stagesAtHand = []string{"shell", "lining", "arrangement", "weight", "fit", "warmth", "power", "cables", "stock", "cost"}

// head is what lies on the desk. A new day makes a new reckoning: tyres age, prices too.
func (d *desk) head(ctx context.Context) (*state, error) {
	now := d.now.Load()
	if revision, _ := d.store.Head(); now != nil && now.Revision.N == revision.N && now.Day == d.today() {
		return now, nil
	}
	if err := d.renew(ctx); err != nil {
		return nil, err
	}
	return d.now.Load(), nil
}

// renew works out the newest revision, unless somebody else just did, and tells all readers.
func (d *desk) renew(ctx context.Context) error {
	d.mu.Lock()
	defer d.mu.Unlock()
	revision, doc := d.store.Head()
	day, before := d.today(), d.now.Load()
	if before != nil && before.Revision.N == revision.N && before.Day == day {
		return nil
	}
	undo, redo, err := d.store.CanUndo(ctx)
	if err != nil {
		return err
	}
	next := d.stateOf(revision, doc, day)
	next.Undo, next.Redo = undo, redo
	if before != nil && before.Revision.N != revision.N {
		next.Said = sentence(revision.Words, withIt(before.Reckoning, next.Reckoning), reckon.Compare(before.Reckoning, next.Reckoning))
	}
	d.now.Store(next)
	d.news.tell(bulletin{Revision: revision.N, Stages: stagesAtHand})
	go d.tryRemedies(next)
	return nil
}

// save makes an edit a revision and works it out.
func (d *desk) save(ctx context.Context, e store.Edit) (*state, error) {
	if _, err := d.store.Save(ctx, e); err != nil {
		return nil, err
	}
	return d.head(ctx)
}

// reverse takes the last change back, or brings it back, where it is the one that was seen.
func (d *desk) reverse(ctx context.Context, seen int, step func(ctx context.Context, seen int, by string) (store.Revision, error)) error {
	if _, err := step(ctx, seen, ""); err != nil {
		return err
	}
	_, err := d.head(ctx)
	return err
}

// base is the document as it is written at a revision.
func (d *desk) base(ctx context.Context, n int) (*tree.Node, error) {
	now, err := d.head(ctx)
	if err != nil || n == now.Revision.N {
		return now.Node, err
	}
	doc, err := d.store.At(ctx, n)
	if err != nil {
		return nil, err
	}
	return build.Encode(doc), nil
}

// at is the build at a revision, worked out for today.
func (d *desk) at(ctx context.Context, n int) (*state, error) {
	now, err := d.head(ctx)
	if err != nil || n == now.Revision.N {
		return now, err
	}
	doc, err := d.store.At(ctx, n)
	if err != nil {
		return nil, err
	}
	return d.stateOf(store.Revision{N: n}, doc, now.Day), nil
}

func (d *desk) stateOf(revision store.Revision, doc *build.Document, day quantity.Date) *state {
	return &state{trials: &trials{}, names: build.Names(doc.Fittings), Revision: revision, Doc: doc, Node: build.Encode(doc), Day: day, Rows: d.rows.Overlay(doc.Catalogue), Reckoning: d.reckon(doc, day)}
}

// tried is a document that is not saved, and what would follow from it.
type tried struct {
	from *state
	to   *reckon.Reckoning
	reckon.Difference
}

// try works out a patch without saving it.
func (d *desk) try(ctx context.Context, patch tree.Patch) (tried, error) {
	now, err := d.head(ctx)
	if err != nil {
		return tried{}, err
	}
	doc, err := build.DecodeTree(tree.Merge(now.Node, patch), d.rows)
	if err != nil {
		return tried{}, err
	}
	to := d.atHand(doc, now.Day, now.Reckoning)
	return tried{from: now, to: to, Difference: reckon.Compare(now.Reckoning, to)}, nil
}
