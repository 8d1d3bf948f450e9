package front_test

import (
	"encoding/json"
	"fmt"
	"html/template"
	"net/http"
	"net/http/httptest"
	"os"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/evanw/esbuild/pkg/api"
)

// contentPolicy is that of the workspace.
const contentPolicy = "default-src 'self'; style-src 'self'; img-src 'self' data: blob:; object-src 'none'; " +
	"base-uri 'none'; form-action 'self'; frame-ancestors 'none'"

// thing is a box of the stand-in build; sizes in millimetres.
type thing struct {
	ID, Carrier, Bed               string
	Named                          bool // its name is printed in the plan
	X, Y, Z, Long, Wide, High      float64
	PlanX, PlanY, PlanW, PlanH     float64 // on the sheet
	SideX, SideY, SideW, SideH     float64
	CrossX, CrossY, CrossW, CrossH float64
}

// bench serves a page with a drawing of boxes, and answers as the workspace does, without its reckoning.
type bench struct {
	*httptest.Server
	mu       sync.Mutex
	revision int
	past     [][]thing
	things   []thing
	Note     string // a value that two may type
	noteAt   int    // the revision that changed it last
	previews []string
	edits    []string
	readers  []chan int
	mute     bool // previews are not answered
}

func serve(t testing.TB, things ...thing) *bench {
	t.Helper()
	b := &bench{revision: 1, things: things, Note: "none"}
	page := template.Must(template.ParseFiles("testdata/page.html"))
	script, style := bundled(t)
	mux := http.NewServeMux()
	mux.HandleFunc("GET /{$}", func(w http.ResponseWriter, r *http.Request) { b.draw(w, page, "page.html") })
	mux.HandleFunc("GET /region/{name}", func(w http.ResponseWriter, r *http.Request) { b.draw(w, page, r.PathValue("name")) })
	mux.HandleFunc("GET /main.js", func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Content-Type", "text/javascript")
		_, _ = w.Write(script)
	})
	mux.HandleFunc("GET /main.css", func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Content-Type", "text/css")
		_, _ = w.Write(style)
	})
	mux.HandleFunc("GET /favicon.ico", func(w http.ResponseWriter, r *http.Request) { w.WriteHeader(http.StatusNoContent) })
	mux.HandleFunc("GET /events", b.tell)
	mux.HandleFunc("GET /drag-kit", b.kit)
	mux.HandleFunc("POST /preview", b.preview)
	mux.HandleFunc("POST /edit", b.edit)
	mux.HandleFunc("POST /undo", b.undo)
	mux.HandleFunc("POST /fittings/{id}/delete", b.takeOut)
	b.Server = httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Content-Security-Policy", contentPolicy)
		mux.ServeHTTP(w, r)
	}))
	t.Cleanup(func() {
		b.CloseClientConnections()
		b.Close()
	})
	return b
}

func bundled(t testing.TB) (script, style []byte) {
	t.Helper()
	result := api.Build(api.BuildOptions{EntryPoints: []string{"src/main.ts"}, Bundle: true, Format: api.FormatESModule, Outfile: "main.js"})
	for _, e := range result.Errors {
		t.Fatalf("%s: %s", e.Location.File, e.Text)
	}
	live, err := os.ReadFile("style/live.css")
	if err != nil {
		t.Fatal(err)
	}
	page, err := os.ReadFile("testdata/page.css")
	if err != nil {
		t.Fatal(err)
	}
	return result.OutputFiles[0].Contents, append(page, live...)
}

// NameY is the foot of a printed name, in the middle of the thing.
func (t *thing) NameY() float64 { return t.PlanY + t.PlanH/2 }

// The views: plan, long section, cross-section at 1 : 20.
const scale = 0.05

func (t *thing) lay() {
	t.PlanX, t.PlanY, t.PlanW, t.PlanH = 20+t.X*scale, 60+t.Y*scale, t.Long*scale, t.Wide*scale
	t.SideX, t.SideY, t.SideW, t.SideH = 20+t.X*scale, 230-(t.Z+t.High)*scale, t.Long*scale, t.High*scale
	t.CrossX, t.CrossY, t.CrossW, t.CrossH = 300+t.Y*scale, 230-(t.Z+t.High)*scale, t.Wide*scale, t.High*scale
}

func (b *bench) draw(w http.ResponseWriter, page *template.Template, name string) {
	b.mu.Lock()
	defer b.mu.Unlock()
	for i := range b.things {
		b.things[i].lay()
	}
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	w.Header().Set("ETag", fmt.Sprintf(`"%s-%d"`, name, b.revision))
	w.Header().Set("Revision", fmt.Sprint(b.revision))
	if err := page.ExecuteTemplate(w, name, map[string]any{"Revision": b.revision, "Things": b.things, "Note": b.Note}); err != nil {
		panic(err)
	}
}

// news makes a revision known.
func (b *bench) news() {
	for _, r := range b.readers {
		r <- b.revision
	}
}

func (b *bench) tell(w http.ResponseWriter, r *http.Request) {
	mine := make(chan int, 100)
	b.mu.Lock()
	b.readers = append(b.readers, mine)
	mine <- b.revision
	b.mu.Unlock()
	w.Header().Set("Content-Type", "text/event-stream")
	for {
		select {
		case <-r.Context().Done():
			return
		case n := <-mine:
			fmt.Fprintf(w, "data: {\"revision\": %d, \"stages\": []}\n\n", n)
			_ = http.NewResponseController(w).Flush()
		}
	}
}

func (b *bench) kit(w http.ResponseWriter, r *http.Request) {
	b.mu.Lock()
	defer b.mu.Unlock()
	fittings, snaps := []any{}, []any{map[string]any{"axis": "x", "at": 0, "face": "front"}, map[string]any{"axis": "x", "at": 3000, "face": "rear"}}
	for _, t := range b.things {
		x, y := t.X+t.Long, t.Y+t.Wide
		fittings = append(fittings, map[string]any{
			"id": t.ID, "carrier": t.Carrier, "min": []float64{t.X, t.Y, t.Z}, "max": []float64{x, y, t.Z + t.High},
			"holds":  [3]string{"low", "low", "low"},
			"along":  [3]string{},
			"prisms": []any{map[string]any{"outline": [][2]float64{{t.X, t.Y}, {x, t.Y}, {x, y}, {t.X, y}}, "low": t.Z, "high": t.Z + t.High}},
		})
		snaps = append(snaps, map[string]any{"axis": "x", "at": t.X, "face": t.ID + ".front"}, map[string]any{"axis": "x", "at": x, "face": t.ID + ".rear"})
	}
	surfaces := []any{}
	for _, h := range []float64{0, 150, 900, 1500, 1650} {
		surfaces = append(surfaces, map[string]any{"height": h, "outline": [][2]float64{{0, -900}, {3000, -900}, {3000, 900}, {0, 900}}})
	}
	answer(w, 200, map[string]any{"revision": b.revision, "mode": "day", "fittings": fittings, "surfaces": surfaces, "snaps": snaps, "ribs": []any{}, "least": 50})
}

type asked struct {
	Revision int
	Moves    []struct {
		Fitting          string
		DX, DY, DZ, Turn float64
		Snap             map[string]string
	}
}

func (b *bench) preview(w http.ResponseWriter, r *http.Request) {
	var a asked
	if err := json.NewDecoder(r.Body).Decode(&a); err != nil {
		panic(err)
	}
	b.mu.Lock()
	defer b.mu.Unlock()
	said := fmt.Sprintf("%s by %g, %g, %g", a.Moves[0].Fitting, a.Moves[0].DX, a.Moves[0].DY, a.Moves[0].DZ)
	b.previews = append(b.previews, said)
	if b.mute {
		b.mu.Unlock()
		<-r.Context().Done()
		b.mu.Lock()
		return
	}
	fouls := []string{}
	if a.Moves[0].DY > 0 { // the server knows of something that the browser cannot
		fouls = append(fouls, "galley")
	}
	answer(w, 200, map[string]any{"revision": b.revision, "sentence": said, "fouls": fouls, "appeared": []any{}, "cleared": []any{},
		"figures": []any{map[string]any{"code": "weight.rear-axle", "label": "Rear axle", "words": "Rear axle 1 358 → 1 371 kg"}}})
}

func (b *bench) edit(w http.ResponseWriter, r *http.Request) {
	b.mu.Lock()
	defer b.mu.Unlock()
	if r.Header.Get("X-Tumblehome") == "" {
		panic("not sent by script")
	}
	if !strings.HasPrefix(r.Header.Get("Content-Type"), "application/json") {
		b.write(w, r)
		return
	}
	var a asked
	if err := json.NewDecoder(r.Body).Decode(&a); err != nil {
		panic(err)
	}
	text, _ := json.Marshal(a.Moves)
	b.edits = append(b.edits, string(text))
	b.past = append(b.past, slices.Clone(b.things))
	moved := map[string]bool{a.Moves[0].Fitting: true}
	for i := range b.things { // carriers stand before what they carry
		t := &b.things[i]
		if moved[t.Carrier] || moved[t.ID] {
			moved[t.ID] = true
			t.X, t.Y, t.Z = t.X+a.Moves[0].DX, t.Y+a.Moves[0].DY, t.Z+a.Moves[0].DZ
		}
	}
	b.saved(w, "moved "+a.Moves[0].Fitting)
}

// write takes a typed value: "bad" is refused, and what was based on an older one clashes.
func (b *bench) write(w http.ResponseWriter, r *http.Request) {
	var base int
	_, _ = fmt.Sscan(r.PostFormValue("base"), &base)
	value := r.PostFormValue("value")
	switch {
	case value == "bad":
		answer(w, 422, map[string]any{"message": "", "wrong": map[string]string{"/note": "That is no note."}})
	case base < b.noteAt:
		answer(w, 409, map[string]any{"message": "Somebody else changed it.", "revision": b.revision,
			"conflict": []any{map[string]string{"place": "/note", "words": "The note", "mine": value, "theirs": b.Note}}})
	default:
		b.Note, b.noteAt = value, b.revision+1
		b.saved(w, "note is "+value)
	}
}

func (b *bench) undo(w http.ResponseWriter, r *http.Request) {
	b.mu.Lock()
	defer b.mu.Unlock()
	if len(b.past) == 0 {
		answer(w, 422, map[string]any{"message": "Nothing to undo."})
		return
	}
	b.things, b.past = b.past[len(b.past)-1], b.past[:len(b.past)-1]
	b.saved(w, "taken back")
}

func (b *bench) takeOut(w http.ResponseWriter, r *http.Request) {
	b.mu.Lock()
	defer b.mu.Unlock()
	id := r.PathValue("id")
	holds := slices.ContainsFunc(b.things, func(t thing) bool { return t.Carrier == id })
	if holds && r.PostFormValue("with") != "yes" {
		answer(w, 422, map[string]any{"message": "Something stands on it.", "held": true})
		return
	}
	b.things = slices.DeleteFunc(slices.Clone(b.things), func(t thing) bool { return t.ID == id || t.Carrier == id })
	b.saved(w, "taken out "+id)
}

func (b *bench) saved(w http.ResponseWriter, sentence string) {
	b.revision++
	b.news()
	answer(w, 200, map[string]any{"revision": b.revision, "mark": fmt.Sprint(b.revision), "sentence": sentence})
}

func answer(w http.ResponseWriter, status int, value any) {
	w.Header().Set("Content-Type", "application/json")
	w.WriteHeader(status)
	_ = json.NewEncoder(w).Encode(value)
}

// at is where a thing stands now.
func (b *bench) at(id string) (x, y, z float64) {
	b.mu.Lock()
	defer b.mu.Unlock()
	for _, t := range b.things {
		if t.ID == id {
			return t.X, t.Y, t.Z
		}
	}
	return -1, -1, -1
}

// count is how many edits were saved and previews asked for.
func (b *bench) count() (edits, previews int) {
	b.mu.Lock()
	defer b.mu.Unlock()
	return len(b.edits), len(b.previews)
}
