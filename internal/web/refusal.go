package web

import (
	"errors"
	"net/http"
	"strings"

	"tumblehome/build"
	"tumblehome/internal/store"
)

// refusal is a change that was not saved, and why.
type refusal struct {
	Status  int
	Says    string
	Typed   []change
	Wrong   map[string]string // by path: what is wrong with the value typed there
	Clashes []store.Clash
	Head    int
	Held    *errHeld
}

// at is what was typed for a path and what is wrong with it.
func (f *refusal) at(path string) (typed, wrong string, ok bool) {
	if f == nil {
		return "", "", false
	}
	for _, c := range f.Typed {
		if string(c.Path) == path {
			return c.Value, f.Wrong[path], true
		}
	}
	return "", "", false
}

// refuse answers a change that was not saved, keeping what was typed.
func (s *Server) refuse(w http.ResponseWriter, r *http.Request, err error, typed []change) {
	if errors.Is(err, store.ErrNoChange) {
		s.unchanged(w, r)
		return
	}
	f := s.refusalOf(err, typed)
	if f.Status == http.StatusServiceUnavailable {
		s.log.Error("not saved", "path", r.URL.Path, "error", err)
	}
	if f.Status == http.StatusInternalServerError {
		s.fail(w, r, err)
		return
	}
	now, headErr := s.desk.head(r.Context())
	if headErr != nil {
		s.fail(w, r, headErr)
		return
	}
	if byScript(r) {
		sendJSON(w, f.Status, f.json())
		return
	}
	s.sendRefusal(w, r, now, f)
}

// unchanged answers a change that leaves everything as it is, which is no failure.
func (s *Server) unchanged(w http.ResponseWriter, r *http.Request) {
	now, err := s.desk.head(r.Context())
	switch {
	case err != nil:
		s.fail(w, r, err)
	case byScript(r):
		sendJSON(w, http.StatusOK, map[string]any{"revision": now.Revision.N, "mark": markOf(now.Revision), "sentence": "Nothing changed."})
	default:
		http.Redirect(w, r, backTo(r), http.StatusSeeOther)
	}
}

// refusalOf sorts errors: what the reader can mend, and what is a failure of the program.
func (s *Server) refusalOf(err error, typed []change) *refusal {
	f := &refusal{Status: http.StatusInternalServerError, Typed: typed, Says: err.Error()}
	var unreadable errUnreadable
	var unsaid errUnsaid
	var tooLarge *http.MaxBytesError
	var conflict *store.Conflict
	var elsewhere *errElsewhere
	var held *errHeld
	var faults build.Faults
	var trouble *store.Trouble
	switch {
	case errors.As(err, &unreadable):
		f.Status = http.StatusBadRequest
	case errors.As(err, &unsaid):
		f.Status = http.StatusUnprocessableEntity
	case errors.As(err, &tooLarge):
		f.Status, f.Says = http.StatusRequestEntityTooLarge, "This is more than the workspace takes at once."
	case errors.As(err, &conflict):
		f.Status, f.Clashes, f.Head = http.StatusConflict, conflict.Clashes, conflict.Head
		f.Says = "Somebody else changed the same thing meanwhile. Nothing was saved."
		if len(conflict.Clashes) == 0 {
			f.Says = "Somebody else changed the build meanwhile, and the two changes do not go together. Nothing was saved."
			if errors.As(err, &faults) {
				above, beside := explain(faults, typed)
				f.Says, f.Wrong = strings.TrimSpace(f.Says+"\n"+above), beside
			}
		}
	case errors.As(err, &elsewhere):
		f.Status, f.Head = http.StatusConflict, elsewhere.Head
	case errors.As(err, &held):
		f.Status, f.Says, f.Held = http.StatusUnprocessableEntity, "", held
	case errors.As(err, &faults):
		f.Status = http.StatusUnprocessableEntity
		f.Says, f.Wrong = explain(faults, typed)
	case errors.Is(err, store.ErrNothingToUndo), errors.Is(err, store.ErrNothingToRedo):
		f.Status, f.Says = http.StatusUnprocessableEntity, capital(err.Error())+"."
	case errors.As(err, &trouble):
		f.Status, f.Says = http.StatusServiceUnavailable, trouble.Says
	case errors.Is(err, store.ErrTooLarge):
		f.Status, f.Says = http.StatusUnprocessableEntity, capital(err.Error())+"."
	case errors.Is(err, store.ErrMovedOn):
		f.Status = http.StatusConflict
		f.Says = "Somebody changed the build since this page was made, so nothing was done. Look at the newest change first, then choose again."
	case errors.Is(err, errOtherHistory):
		f.Status = http.StatusConflict
		f.Says = "This page shows a state of the build that is no longer in its file: an older one was put in its place since the page was made. " +
			"Nothing was saved. Copy what you typed here, then load the page again."
	case errors.Is(err, errOtherRun):
		f.Status = http.StatusConflict
		f.Says = "The workspace was stopped and started again since this page was made. Nothing was saved. Load the page again, if it does not do so by itself, then do this again."
	case errors.Is(err, store.ErrNoRevision):
		f.Status, f.Says = http.StatusNotFound, "There is no such revision in this build. Nothing was changed."
	}
	return f
}

// explain puts each fault beside the value it is about; what is about none of them is said above all.
func explain(faults build.Faults, typed []change) (above string, beside map[string]string) {
	beside = map[string]string{}
	var rest []string
	for _, fault := range faults {
		words := faultWords(fault)
		if at := closest(fault.Path, typed); at != "" {
			beside[at] = strings.TrimSpace(beside[at] + " " + words)
			continue
		}
		rest = append(rest, capital(pathWords(fault.Path))+": "+words)
	}
	return strings.Join(rest, "\n"), beside
}

// closest is the path of the value that a fault is about: the same place, one above or one below it.
func closest(path string, typed []change) string {
	for _, c := range typed {
		p := c.Path.Path()
		if p == path || strings.HasPrefix(path, p+".") || strings.HasPrefix(p, path+".") && path != "" {
			return string(c.Path)
		}
	}
	return ""
}

func faultWords(f build.Fault) string {
	text := capital(f.Wrong)
	if f.Expected != "" {
		text += "; wanted is " + f.Expected
	}
	text += "."
	if len(f.Near) > 0 {
		text += " Perhaps " + strings.Join(f.Near, " or ") + "?"
	}
	return strings.ReplaceAll(text, "`", "")
}

func (f *refusal) json() map[string]any {
	out := map[string]any{"message": f.Says}
	if f.Held != nil {
		out["message"], out["held"] = f.Held.inFull(), !f.Held.Final
	}
	if len(f.Wrong) > 0 {
		out["wrong"] = f.Wrong
	}
	if len(f.Clashes) > 0 {
		type clash struct {
			Place  string `json:"place"`
			Words  string `json:"words"`
			Mine   string `json:"mine"`
			Theirs string `json:"theirs"`
		}
		var all []clash
		for _, c := range f.Clashes {
			all = append(all, clash{string(c.Pointer), pathWords(c.Pointer.Path()), c.Mine, c.Theirs})
		}
		out["conflict"] = all
	}
	if f.Head > 0 {
		out["revision"] = f.Head
	}
	return out
}
