package build

import "tumblehome/build/tree"

const (
	undecided = "undecided" // instead of a value, or the key of its choices
	none      = "none"
)

// A Choice is a value, or several between which nothing is decided yet. The
// reckoning then assumes the first and says so.
type Choice[T any] struct {
	Value     T    // the value, or the one assumed; the zero value if nothing is known
	Undecided bool // written `undecided`
	Among     []T  // the choices, Value first; none for the bare word
}

// Decided is a choice that was made.
func Decided[T any](v T) Choice[T] { return Choice[T]{Value: v} }

// Known tells whether there is a value, decided or assumed.
func (c Choice[T]) Known() bool { return !c.Undecided || len(c.Among) > 0 }

func (Choice[T]) choice() {}

// OrNone is a value, the statement that there is none, or undecided.
type OrNone[T any] struct {
	Value     T
	None      bool
	Undecided bool
}

// Known tells whether there is a value.
func (o OrNone[T]) Known() bool { return !o.None && !o.Undecided }

func (OrNone[T]) orNone() {}

// A PatchFragment is what an alternative merges into the document: part of a
// document, its keys in the document's order.
type PatchFragment struct{ Node *tree.Node }

// Equal tells whether two fragments say the same.
func (p PatchFragment) Equal(other PatchFragment) bool { return tree.Equal(p.Node, other.Node) }

// Patch is the fragment as a merge patch.
func (p PatchFragment) Patch() tree.Patch { return tree.Setting("", p.Node) }
