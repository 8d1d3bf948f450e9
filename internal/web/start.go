package web

import (
	"errors"
	"net/http"
	"net/url"
	"slices"
	"strconv"

	"tumblehome/build"
	"tumblehome/build/begin"
	"tumblehome/internal/store"
)

// startStep is one screen of the first hour: one question, which may be skipped.
type startStep struct {
	ID       string
	Question string
	Says     string
	Words    string // of the revision that an answer makes
}

// How the changes of the first hour are called in the history: the last question puts the first things into the van.
const (
	firstHour    = "first hour: "
	startPicked  = "starting arrangement picked"
	startedWords = firstHour + startPicked
)

var startSteps = []startStep{
	{"outline", "Which outline is nearest to your van?", "Look from the side and from behind. It need not be exact: the tape comes next.", "outline of the van picked"},
	{"tape", "What does the tape say?", "Six readings in ten minutes, each from steel to steel. Leave out what you cannot reach now.", "six tape readings"},
	{"plate", "What does the plate say?", "Four numbers say how much the van may weigh.", "numbers of the plate"},
	{"people", "Who sleeps in it, and how tall are they?", "Beds and headroom follow from this. Names are only for you.", "who sleeps in the van"},
	{"wishes", "What do you wish for most?", "Two or three are enough; the rest can wait.", "wishes"},
	{"means", "What is there to spend?", "Money and weekends, roughly, and a name for the van.", "money and weekends"},
	{"answers", "What fits, and how shall we begin?", "First answers from what you said, the rest assumed.", startPicked},
}

func startIndex(id string) int {
	return slices.IndexFunc(startSteps, func(s startStep) bool { return s.ID == id })
}

// startRoutes are the addresses of the first hour. routes calls it; "/" may lead to /start as long as begin.Open says so of the build.
func (s *Server) startRoutes(mux *http.ServeMux) {
	mux.HandleFunc("GET /start", s.inFirstHour(s.resumeStart))
	mux.HandleFunc("GET /start/{step}", s.inFirstHour(s.showStart))
	mux.HandleFunc("POST /start/{step}", s.inFirstHour(s.answerStart))
}

// home leads to the first hour while nothing is placed in the van, else to what is being built.
func (s *Server) home(w http.ResponseWriter, r *http.Request) {
	_, doc := s.desk.store.Head()
	to := "/arrangement"
	if begin.Open(doc) {
		to = "/start"
	}
	http.Redirect(w, r, to, http.StatusSeeOther)
}

// inFirstHour leads away from the first hour once the body was measured station by station: the six readings are then of no use.
func (s *Server) inFirstHour(answer http.HandlerFunc) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		if _, doc := s.desk.store.Head(); doc.Shell.Offsets != nil {
			http.Redirect(w, r, "/arrangement", http.StatusSeeOther)
			return
		}
		answer(w, r)
	}
}

// resumeStart leads to the first question that nobody has answered.
func (s *Server) resumeStart(w http.ResponseWriter, r *http.Request) {
	_, doc := s.desk.store.Head()
	step := "answers"
	if skipped := begin.Read(doc).Skipped(); len(skipped) > 0 {
		step = skipped[0]
	}
	http.Redirect(w, r, "/start/"+step, http.StatusSeeOther)
}

func (s *Server) showStart(w http.ResponseWriter, r *http.Request) {
	now, err := s.desk.head(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	at := startIndex(r.PathValue("step"))
	if at < 0 {
		s.notFound(w, r)
		return
	}
	s.send(w, r, http.StatusOK, startLayout(s.startView(now, at)))
}

// answerStart saves what was said to one question and goes on to the next.
func (s *Server) answerStart(w http.ResponseWriter, r *http.Request) {
	now, err := s.desk.head(r.Context())
	at := startIndex(r.PathValue("step"))
	if err == nil {
		err = r.ParseForm()
	}
	var tooLarge *http.MaxBytesError
	switch {
	case errors.As(err, &tooLarge):
		http.Error(w, "This is more than the workspace takes at once.", http.StatusRequestEntityTooLarge)
		return
	case err != nil:
		s.fail(w, r, err)
		return
	case at < 0:
		s.notFound(w, r)
		return
	}
	// A picked outline is kept although the question is skipped: it stands in the picture of every screen that follows.
	if r.PostFormValue("go") != "skip" || startSteps[at].ID == "outline" && r.PostFormValue("body") != "" {
		if v, ok := s.takeAnswer(r, now, at); !ok {
			s.send(w, r, http.StatusUnprocessableEntity, startLayout(v))
			return
		}
	}
	http.Redirect(w, r, afterStep(at), http.StatusSeeOther)
}

func afterStep(at int) string {
	if at+1 < len(startSteps) {
		return "/start/" + startSteps[at+1].ID
	}
	return "/arrangement?mode=day"
}

// takeAnswer makes one edit of what was typed, or gives the screen once more, saying beside each field what is wrong with it.
func (s *Server) takeAnswer(r *http.Request, now *state, at int) (startView, bool) {
	v := s.startView(now, at)
	v.Typed = r.PostForm
	from := v.Answers
	to, wrong := readAnswer(startSteps[at].ID, from, r.PostForm)
	if v.Wrong = wrong; len(wrong) > 0 {
		v.Says = "Nothing was saved yet. This could not be read:"
		return v, false
	}
	if v.doubt(from, to, r.PostFormValue("keep") == "yes"); len(v.Wrong) > 0 {
		return v, false
	}
	if err := s.saveAnswer(r, at, from, to); err != nil {
		v.Says = startTrouble(err)
		return v, false
	}
	return v, true
}

// doubt speaks of what the new answer makes contradictory; what is only unusual may be kept.
func (v *startView) doubt(from, to begin.Answers, keep bool) {
	before := begin.Doubts(from)
	v.Says = "One answer cannot be so, or is unusual: look at it again. Nothing was saved yet."
	for _, d := range begin.Doubts(to) {
		old := slices.ContainsFunc(before, func(b begin.Doubt) bool { return b.Words == d.Words })
		if old || keep && !d.Sure {
			continue
		}
		v.Wrong[v.fieldOf(d)] = d.Words
		v.Unusual = v.Unusual || !d.Sure
		if len(d.About) > 1 {
			v.Says = "These do not go together yet. Nothing was saved."
		}
	}
	if len(v.Wrong) == 0 {
		v.Says = ""
	}
}

// fieldOf is the first field of this screen that a doubt is about; "" is the screen as a whole.
func (v startView) fieldOf(d begin.Doubt) string {
	for _, name := range d.About {
		if slices.Contains(startFields[v.Step.ID], name) {
			return name
		}
	}
	return ""
}

// saveAnswer makes one edit of the difference between two sets of answers. What the builder has changed since in other ways stays.
func (s *Server) saveAnswer(r *http.Request, at int, from, to begin.Answers) error {
	patch, err := begin.Change(from, to)
	if err != nil || patch.Empty() {
		return err
	}
	base, err := strconv.Atoi(r.PostFormValue("base"))
	if err != nil {
		revision, _ := s.desk.store.Head()
		base = revision.N
	}
	_, err = s.desk.save(r.Context(), store.Edit{Base: base, Patch: patch, Words: firstHour + startSteps[at].Words})
	if errors.Is(err, store.ErrNoChange) {
		return nil
	}
	return err
}

// startTrouble says in words why an answer was not saved.
func startTrouble(err error) string {
	var conflict *store.Conflict
	var faults build.Faults
	switch {
	case errors.As(err, &conflict):
		return "Meanwhile somebody answered this question in another window. Load this page again to see what they said."
	case errors.As(err, &faults):
		return "This does not go together with what is already built: " + faults[0].Wrong + "."
	}
	return err.Error()
}

// startView is what a screen of the first hour is drawn from.
type startView struct {
	*state
	Step    startStep
	At      int // counted from 0
	Answers begin.Answers
	Typed   url.Values        // what was typed and not saved; nil shows what the build says
	Wrong   map[string]string // by field
	Says    string            // why nothing was saved
	Unusual bool              // something is only unusual and may be kept
	server  *Server
}

func (s *Server) startView(now *state, at int) startView {
	return startView{state: now, Step: startSteps[at], At: at, Answers: begin.Read(now.Doc), Wrong: map[string]string{}, server: s}
}

func (v startView) base() string { return markOf(v.Revision) }

// body is the outline said, or the one assumed.
func (v startView) body() begin.Body { return begin.BodyOf(v.Answers.Body) }
