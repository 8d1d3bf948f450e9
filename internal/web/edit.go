package web

import (
	"cmp"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net/http"
	"slices"
	"strings"
	"unicode/utf8"

	"tumblehome/build/tree"
	"tumblehome/internal/store"
	"tumblehome/reckon"
)

// wish is an edit as it comes in: values for places, or a patch, made while looking at a revision.
type wish struct {
	Revision int             `json:"revision"`
	Seen     int             `json:"seen"` // the revision in which the moved things were seen where the hand took hold of them; 0: not said
	Patch    json.RawMessage `json:"patch"`
	Moves    []reckon.Move   `json:"moves"`
	Mode     string          `json:"mode"`
	Words    string          `json:"words"`
	By       string          `json:"by"`

	changes []change
	newName string // what a new item is called; its id takes the place of {new} in the paths
}

// errUnreadable is a request that no page of ours would send.
type errUnreadable string

func (e errUnreadable) Error() string { return string(e) }

// errUnsaid is a form in which something that is needed was left empty.
type errUnsaid string

func (e errUnsaid) Error() string { return string(e) }

// readWish reads JSON from script, or a form.
func readWish(r *http.Request) (wish, error) {
	var w wish
	if isJSON(r) {
		decoder := json.NewDecoder(r.Body)
		decoder.DisallowUnknownFields()
		if err := decoder.Decode(&w); err != nil {
			return w, bodyError(err)
		}
		if _, err := decoder.Token(); !errors.Is(err, io.EOF) {
			return w, errUnreadable("the request goes on after its end")
		}
		w.Words = clipped(w.Words)
		return w, nil
	}
	err := readForm(r)
	if err != nil {
		return w, err
	}
	if w.Revision, err = baseNumber(r.PostFormValue("base")); err != nil {
		return w, err
	}
	w.Words, w.By = clipped(r.PostFormValue("words")), r.PostFormValue("by")
	w.Patch = json.RawMessage(r.PostFormValue("patch"))
	w.newName = r.PostFormValue("new")
	paths, values := r.PostForm["path"], r.PostForm["value"]
	if len(paths) != len(values) {
		return w, errUnreadable("the form has not as many values as places")
	}
	for i, p := range paths {
		w.changes = append(w.changes, change{tree.Pointer(p), values[i], slices.Contains(r.PostForm["list"], p)})
	}
	for _, p := range r.PostForm["ticks"] {
		w.changes = append(w.changes, change{tree.Pointer(p), ticked(r.PostForm["ticked"], p), true})
	}
	if len(w.changes) == 0 && len(w.Patch) == 0 {
		return w, errUnreadable("the form holds no value")
	}
	return w, nil
}

// ticked are the items of a list whose boxes are ticked, as the list is written.
func ticked(boxes []string, list string) string {
	var out []string
	for _, box := range boxes {
		if item, ok := strings.CutPrefix(box, list+" "); ok {
			out = append(out, item)
		}
	}
	return strings.Join(out, ", ")
}

// readForm reads a form whose every value is text.
func readForm(r *http.Request) error {
	if err := r.ParseForm(); err != nil {
		return bodyError(err)
	}
	for _, values := range r.PostForm {
		for _, text := range values {
			if !utf8.ValidString(text) {
				return errUnreadable("a value holds letters that are none here; type it again")
			}
		}
	}
	return nil
}

// longestWords is as long as the sentence of a change may be, in characters.
const longestWords = 200

func clipped(words string) string {
	if runes := []rune(words); len(runes) > longestWords {
		return string(runes[:longestWords-1]) + "…"
	}
	return words
}

func bodyError(err error) error {
	var tooLarge *http.MaxBytesError
	if errors.As(err, &tooLarge) {
		return err
	}
	return errUnreadable("the request could not be read: " + err.Error())
}

func isJSON(r *http.Request) bool {
	return strings.HasPrefix(r.Header.Get("Content-Type"), "application/json")
}

// editOf turns a wish into an edit of the store.
func (s *Server) editOf(r *http.Request, w wish) (store.Edit, error) {
	base, err := s.desk.base(r.Context(), w.Revision)
	if err != nil {
		return store.Edit{}, err
	}
	e := store.Edit{Base: w.Revision, Words: w.Words, By: w.By}
	switch {
	case len(w.Moves) > 0:
		if err := s.movedMeanwhile(r.Context(), w); err != nil {
			return e, err
		}
		then, err := s.desk.at(r.Context(), w.Revision)
		if err != nil {
			return e, err
		}
		patch, words, err := then.patchOfMoves(w.Moves)
		if err != nil {
			return e, err
		}
		e.Patch, e.Words = patch, cmp.Or(e.Words, words)
	case len(w.Patch) > 0:
		if !utf8.Valid(w.Patch) {
			return e, errUnreadable("the patch holds letters that are none here")
		}
		if e.Patch, err = tree.ParsePatch(w.Patch); err != nil {
			return e, errUnreadable(err.Error())
		}
	default:
		w.changes = s.withKinds(base, withNewID(base, w.changes, w.newName))
		if err = s.askWhich(base, w.changes); err != nil {
			return e, err
		}
		if e.Patch, err = patchOf(base, w.changes); err != nil {
			return e, err
		}
	}
	if e.Words == "" {
		e.Words = wordsOf(base, e.Patch)
	}
	return e, nil
}

// overtaken is the clash of a page that is older than the build and sends a value as it stood there, where somebody has changed it since: who
// reads that page would take it for saved. Otherwise it is the error as it was.
func (s *Server) overtaken(r *http.Request, w wish, unchanged error) error {
	now, err := s.desk.head(r.Context())
	if err != nil || w.Revision == now.Revision.N {
		return cmp.Or(err, unchanged)
	}
	out := &store.Conflict{Base: w.Revision, Head: now.Revision.N}
	for _, c := range w.changes {
		if theirs := valueText(now.Node, c.Path); theirs != strings.TrimSpace(c.Value) {
			out.Clashes = append(out.Clashes, store.Clash{Pointer: c.Path, Mine: c.Value, Theirs: theirs})
		}
	}
	if len(out.Clashes) == 0 {
		return unchanged
	}
	return out
}

func (s *Server) saveWish(r *http.Request, w wish) error {
	e, err := s.editOf(r, w)
	if err == nil {
		_, err = s.desk.save(r.Context(), e)
	}
	return err
}

// edit saves what somebody changed.
func (s *Server) edit(w http.ResponseWriter, r *http.Request) {
	wanted, err := readWish(r)
	if err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	err = s.saveWish(r, wanted)
	if pointed, ok := rewritten(err, wanted.changes); ok {
		as := wanted
		as.changes = pointed
		err = s.saveWish(r, as)
	}
	if s.addedAlready(r, wanted, err) {
		s.refuse(w, r, errUnsaid(fmt.Sprintf("“%s” is already added. Nothing was added twice.", wanted.newName)), nil)
		return
	}
	if errors.Is(err, store.ErrNoChange) {
		err = s.overtaken(r, wanted, err)
	}
	err = s.clashOfMoves(r.Context(), err, wanted.Moves)
	if err != nil {
		s.refuse(w, r, err, wanted.changes)
		return
	}
	s.done(w, r)
}
