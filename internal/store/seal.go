package store

import (
	"crypto/sha256"
	"encoding/binary"
	"encoding/hex"
	"hash"
	"slices"
	"strings"
	"time"

	"tumblehome/build/tree"
)

// row is a revision as it stands in the file, letter for letter.
type row struct {
	n, parent              int
	made, kind, words, by  string
	patch, inverse, digest string
	seal                   string
}

// rowOf is the row of a revision that makes a document of this digest.
func rowOf(r Revision, digest string) row {
	return row{
		n: r.N, parent: r.Parent, made: r.When.Format(time.RFC3339Nano), kind: string(r.Kind), words: r.Words, by: r.By,
		patch: string(r.Patch.JSON()), inverse: string(r.Inverse.JSON()), digest: digest,
	}
}

// revision reads a row.
func (r row) revision() (Revision, error) {
	out := Revision{N: r.n, Parent: r.parent, Kind: Kind(r.kind), Words: r.words, By: r.by, Seal: r.seal}
	var err error
	if out.When, err = time.Parse(time.RFC3339Nano, r.made); err != nil {
		return out, err
	}
	if out.Patch, err = tree.ParsePatch([]byte(r.patch)); err != nil {
		return out, err
	}
	out.Inverse, err = tree.ParsePatch([]byte(r.inverse))
	return out, err
}

// sealAfter is the seal that a row must carry: the SHA-256 of all it says and of the seal of the revision before it.
func (r row) sealAfter(before string) string {
	w := digester{sha256.New()}
	w.text(before)
	w.number(r.n)
	w.number(r.parent)
	for _, s := range []string{r.made, r.kind, r.words, r.by, r.patch, r.inverse, r.digest} {
		w.text(s)
	}
	return w.sum()
}

// digestOf is the SHA-256 of what a document says: the order of its keys and its quotes do not count, as in tree.Equal.
func digestOf(n *tree.Node) string {
	w := digester{sha256.New()}
	w.node(n)
	return w.sum()
}

// digester hashes values with their lengths before them, so that no two values read alike.
type digester struct{ hash.Hash }

func (d digester) sum() string { return hex.EncodeToString(d.Sum(nil)) }

func (d digester) number(n int) {
	var b [8]byte
	binary.BigEndian.PutUint64(b[:], uint64(n))
	_, _ = d.Write(b[:]) // a hash takes all it is given
}

func (d digester) text(s string) {
	d.number(len(s))
	_, _ = d.Write([]byte(s)) // a hash takes all it is given
}

func (d digester) node(n *tree.Node) {
	d.number(int(n.Kind))
	d.text(n.Text)
	d.number(len(n.Items))
	for _, item := range n.Items {
		d.node(item)
	}
	d.number(len(n.Entries))
	entries := slices.SortedFunc(slices.Values(n.Entries), func(a, b tree.Entry) int { return strings.Compare(a.Key, b.Key) })
	for _, e := range entries {
		d.text(e.Key)
		d.node(e.Value)
	}
}
