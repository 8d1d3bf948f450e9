package store

import (
	"errors"
	"fmt"
	"strings"
	"time"
	"unicode"

	"tumblehome/build/tree"
)

// Kind says how a revision came about.
type Kind string

const (
	Begin Kind = "begin"
	Made  Kind = "edit"
	Undid Kind = "undo"
	Redid Kind = "redo"
)

// Revision is one step in the history of a build.
type Revision struct {
	N, Parent      int
	When           time.Time // as the clock stood; N, not the clock, says what came first
	Kind           Kind
	Words, By      string
	Patch, Inverse tree.Patch
	Seal           string // over this revision and all before it: tells it from one of the same number in another history
}

// Edit is a change somebody wants, made while looking at revision Base.
type Edit struct {
	Base      int
	Patch     tree.Patch
	Words, By string
}

// Clash is one place that two edits want to change.
type Clash struct {
	Pointer      tree.Pointer
	Mine, Theirs string // the values as text; "" where it was deleted
}

// Conflict refuses an edit because the build has meanwhile changed at the same place.
type Conflict struct {
	Base, Head int
	Clashes    []Clash // none when the two changes together break a rule
}

func (c *Conflict) Error() string {
	if len(c.Clashes) == 0 {
		return fmt.Sprintf("revision %d has been followed by revision %d, and the two changes together make no sound build", c.Base, c.Head)
	}
	return fmt.Sprintf("%s was changed to %s meanwhile (revision %d); you wanted %s",
		c.Clashes[0].Pointer.Path(), orNothing(c.Clashes[0].Theirs), c.Head, orNothing(c.Clashes[0].Mine))
}

func orNothing(value string) string {
	if value == "" {
		return "nothing"
	}
	return value
}

// Errors that are neither conflicts nor trouble.
var (
	ErrNothingToUndo = errors.New("there is nothing to undo")
	ErrNothingToRedo = errors.New("there is nothing to redo")
	ErrNoChange      = errors.New("this changes nothing")
	ErrMovedOn       = errors.New("the build has changed since you looked at it; look again, then undo or redo")
	ErrTooLarge      = errors.New("the document would become larger than 4 MiB or deeper than 32 levels; keep photos and papers as attachments")
	ErrNoRevision    = errors.New("there is no such revision")
	ErrNoAttachment  = errors.New("there is no such attachment")
)

// mostWords is how long the sentence and the name of a revision may be, in characters.
const mostWords = 400

// oneLine makes what somebody typed fit to be kept as one line of plain text.
func oneLine(s string) string {
	s = strings.ToValidUTF8(s, "\uFFFD")
	s = strings.Map(func(r rune) rune {
		if unicode.IsControl(r) {
			return ' '
		}
		return r
	}, s)
	if long := []rune(s); len(long) > mostWords {
		s = string(long[:mostWords-1]) + "…"
	}
	return strings.TrimSpace(s)
}
