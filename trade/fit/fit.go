package fit

import (
	"strings"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// Result says what fits and what does not.
type Result struct {
	Figures  []working.Figure
	Findings []finding.Finding
	Opens    []Opens  // of every lid, door and drawer, by day
	Floors   []Floor  // the walkable floor by day and by night, for a drawing
	Suits    Suits    // whom the van suits
	Ways     []Way    // the widest ways from every door, by day and by night
	Seated   []Seated // where everybody sits, for a drawing
	Memory   *Memory  // for the next working-out
	workings map[string]working.Working
}

// Working shows how a figure came about.
func (r *Result) Working(code string) (working.Working, bool) {
	w, ok := r.workings[code]
	return w, ok
}

// Work judges the fit.
func Work(in Inputs) Result {
	w := newWorker(in)
	w.cabSeats()
	w.inside()
	w.absent()
	w.fouls()
	w.outdoors()
	w.uponIt()
	w.comesOut()
	w.openDriving()
	w.opens()
	w.unfold()
	w.pullOuts()
	w.through()
	w.beds()
	w.heads()
	w.seats()
	w.seated()
	w.together()
	w.walkway()
	w.ways()
	w.barred()
	w.onDoors()
	w.shareOpening()
	w.indoors()
	w.cuts()
	w.flames()
	w.loose()
	w.unbelted()
	w.ajar()
	w.height()
	w.suits()
	w.turns()
	finding.Sort(w.result.Findings)
	return w.result
}

// worker gathers the result.
type worker struct {
	in       Inputs
	index    map[string]int // fitting index by id
	people   map[string]int
	result   Result
	carriers []int // index of each fitting's carrier, -1 for none

	most                 spot // where a head has most room
	someRoom, roomSought bool

	stooping []stoop // who cannot stand upright

	cabThing int     // what stands low and farthest into an open cab
	cabBy    float64 // and how far

	leftOpen bool // something is open while driving: shutting it comes before any order of moves

	near  []edge       // room for the edges about a place
	off   []sided      // and for their distances
	order []ranked     // and for their order
	spare [][]Standing // and for the standings of an attempt, by mode

	doors []Opening // that one walks through

	was, now *Memory
	changes  map[string][]change // by mode
	movedIn  map[string][]int    // by mode
}

func newWorker(in Inputs) *worker {
	w := &worker{in: in, index: make(map[string]int, len(in.Fittings)), people: make(map[string]int, len(in.People))}
	w.result.workings = make(map[string]working.Working)
	w.movedIn = make(map[string][]int, len(in.Modes))
	w.in.Error = max(1, in.Error)
	w.remember()
	for i, f := range in.Fittings {
		w.index[f.ID] = i
	}
	for i, p := range in.People {
		w.people[p.ID] = i
	}
	w.carriers = make([]int, len(in.Fittings))
	for i, f := range in.Fittings {
		w.carriers[i] = -1
		if j, ok := w.index[f.Carrier]; ok && f.Carrier != "" {
			w.carriers[i] = j
		}
	}
	return w
}

// carries says whether fitting i carries j, directly or through others.
func (w *worker) carries(i, j int) bool {
	for range len(w.carriers) {
		if j = w.carriers[j]; j < 0 {
			return false
		}
		if j == i {
			return true
		}
	}
	return false
}

// name of a fitting in plain words.
func (w *worker) name(i int) string {
	if f := w.in.Fittings[i]; f.Name != "" {
		return f.Name
	}
	return w.in.Fittings[i].ID
}

// show adds a figure and its working, whose last line is made to be the figure.
func (w *worker) show(f working.Figure, how working.Working) {
	f.State = working.Current
	how.Code, how.Label = f.Code, f.Label
	w.result.Figures = append(w.result.Figures, f)
	w.result.workings[f.Code] = how
}

func (w *worker) find(f finding.Finding) { w.result.Findings = append(w.result.Findings, f) }

// pointer into the document, by RFC 6901.
func pointer(section, id string) string { return "/" + section + "/" + escaped.Replace(id) }

var escaped = strings.NewReplacer("~", "~0", "/", "~1")

func mm(v float64) *finding.Measure { return &finding.Measure{Value: v, Unit: "mm"} }
