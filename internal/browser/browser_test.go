package browser_test

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"tumblehome/internal/browser"
)

func TestMain(m *testing.M) { browser.Main(m) }

const policy = "default-src 'self'; style-src 'self'; object-src 'none'; base-uri 'none'; frame-ancestors 'none'"

const sound = `<h1>Sound</h1><p>Nothing to complain about.</p>`

// serve gives the address of a page with this body, under a strict content
// policy. Its script is served as a file of its own.
func serve(t *testing.T, body, script string) string {
	t.Helper()
	mux := http.NewServeMux()
	mux.HandleFunc("GET /{$}", func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Security-Policy", policy)
		fmt.Fprintf(w, `<!doctype html><html lang="en"><head><title>A page</title>
<meta name="viewport" content="width=device-width"><script defer src="/page.js"></script></head><body><main>%s</main></body></html>`, body)
	})
	mux.HandleFunc("GET /page.js", func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/javascript")
		fmt.Fprint(w, script)
	})
	mux.HandleFunc("GET /favicon.ico", func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(http.StatusNoContent) })
	server := httptest.NewServer(mux)
	t.Cleanup(server.Close)
	return server.URL
}

// spy stands in for a test, so that a page's complaints can be watched failing it.
type spy struct {
	testing.TB
	errors   []string
	cleanups []func()
}

func (s *spy) Helper()                   {}
func (s *spy) Cleanup(f func())          { s.cleanups = append(s.cleanups, f) }
func (s *spy) Errorf(f string, a ...any) { s.errors = append(s.errors, fmt.Sprintf(f, a...)) }

// end does what the end of a test does.
func (s *spy) end() string {
	for i := len(s.cleanups) - 1; i >= 0; i-- {
		s.cleanups[i]()
	}
	return strings.Join(s.errors, "\n")
}

func TestEveryComplaintOfAPageFailsItsTest(t *testing.T) {
	tests := []struct {
		name, body, script, allow string
		complaint                 string // part of it; empty when there must be none
	}{
		{name: "a sound page passes", body: sound, script: `console.log("fine")`},
		{name: "a console error", body: sound, script: `console.error("the lid is stuck")`, complaint: "the lid is stuck"},
		{name: "an uncaught exception", body: sound, script: `throw new Error("no hinge")`, complaint: "no hinge"},
		{name: "a rejected promise", body: sound, script: `Promise.reject(new Error("no screw"))`, complaint: "no screw"},
		{name: "an inline style against the content policy", body: sound + `<p style="color: red">red</p>`, complaint: "style"},
		{name: "an inline script against the content policy", body: sound + `<script>1</script>`, complaint: "script"},
		{name: "a picture that is not there", body: sound + `<img alt="" src="/none.png">`, complaint: "404"},
		{name: "a complaint that the test foresaw", body: sound, script: `console.error("the lid is stuck")`, allow: "lid"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s := &spy{TB: t}
			page := browser.Open(s, serve(t, tt.body, tt.script), browser.Desk)
			if tt.allow != "" {
				page.Allow(tt.allow)
			}
			got := s.end()
			if (tt.complaint == "") != (got == "") || !strings.Contains(got, tt.complaint) {
				t.Errorf("got %q, want a complaint about %q", got, tt.complaint)
			}
		})
	}
}

func TestAxeFailsATestForWhatItFinds(t *testing.T) {
	page := browser.Open(t, serve(t, sound, ""), browser.Desk)
	page.Axe(t)

	s := &spy{TB: t}
	page = browser.Open(t, serve(t, sound+`<label>Mass <input></label><input id="nameless">`, ""), browser.Desk)
	page.Axe(s)
	got := strings.Join(s.errors, "\n")
	if len(s.errors) != 1 || !strings.Contains(got, "nameless") {
		t.Errorf("axe says %q about a field without a label, want one finding that shows it", got)
	}
}

func TestMouseAndKeyboardReachThePage(t *testing.T) {
	page := browser.Open(t, serve(t,
		sound+`<button id="add">Add</button><p id="count">0</p><label>Length <input id="length" value="950"></label><p id="keys"></p>`,
		`const count = document.getElementById("count"), keys = document.getElementById("keys");
		 document.getElementById("add").addEventListener("click", () => setTimeout(() => count.textContent++, 50));
		 addEventListener("keydown", e => keys.textContent += (e.shiftKey ? "shift " : "") + (e.altKey ? "alt " : "") + e.key + ";");`),
		browser.Desk)
	page.Click("#add")
	page.WaitFor(`document.getElementById("count").textContent == "1"`)
	page.Type("#length", "12")
	if got := browser.Eval[string](page, `document.getElementById("length").value`); got != "12" {
		t.Errorf("the field holds %q, want 12 in place of 950", got)
	}
	for _, key := range []string{"ArrowRight", "Shift+ArrowUp", "Alt+ArrowLeft", "Enter", "r"} {
		page.Press(key)
	}
	const want = "1;2;ArrowRight;shift ArrowUp;alt ArrowLeft;Enter;r;"
	if got := page.Text("#keys"); got != want {
		t.Errorf("the page saw the keys %q, want %q", got, want)
	}
}

// traced writes down the pointer events of a square as start, number of moves, end.
const traced = `const told = document.getElementById("told"), moves = {};
addEventListener("pointerdown", e => { moves[e.pointerId] = 0; told.textContent += e.pointerType + " down " + Math.round(e.clientX) + ";"; });
addEventListener("pointermove", e => { if (e.pointerId in moves) moves[e.pointerId]++; });
addEventListener("pointerup", e => { told.textContent += (moves[e.pointerId] > 2 ? "moved" : "hardly moved") + " up " + Math.round(e.clientX) + ";"; delete moves[e.pointerId]; });`

func TestADragIsPressedMovedAndReleased(t *testing.T) {
	page := browser.Open(t, serve(t, sound+`<p id="told"></p>`, traced), browser.Desk)
	page.Drag(browser.Point{X: 100, Y: 400}, browser.Point{X: 340, Y: 400})
	page.WaitFor(`document.getElementById("told").textContent.includes("up")`)
	if got, want := page.Text("#told"), "mouse down 100;moved up 340;"; got != want {
		t.Errorf("the page saw %q, want %q", got, want)
	}
}

func TestTwoFingersDragOnAPhone(t *testing.T) {
	page := browser.Open(t, serve(t, sound+`<p id="told"></p>`,
		traced+`addEventListener("touchstart", e => e.preventDefault(), {passive: false});`), browser.Phone)
	if got := browser.Eval[[]float64](page, `[innerWidth, innerHeight, matchMedia("(pointer: coarse)").matches ? 1 : 0]`); fmt.Sprint(got) != "[360 800 1]" {
		t.Errorf("the phone is %v, want 360 by 800 with a coarse pointer", got)
	}
	page.TouchDrag(
		browser.Path{From: browser.Point{X: 100, Y: 400}, To: browser.Point{X: 60, Y: 400}},
		browser.Path{From: browser.Point{X: 200, Y: 400}, To: browser.Point{X: 260, Y: 400}})
	page.WaitFor(`document.getElementById("told").textContent.split("up").length == 3`)
	const want = "touch down 100;touch down 200;moved up 60;moved up 260;"
	if got := page.Text("#told"); got != want {
		t.Errorf("the page saw %q, want %q", got, want)
	}
}

func TestAPageCutOffKnowsIt(t *testing.T) {
	page := browser.Open(t, serve(t, sound, ""), browser.Phone)
	page.Allow("Failed to load resource")
	// The browser takes the cut a moment later than it is told of it.
	fetched := `(async wanted => {
		let could;
		for (let tries = 0; tries < 50 && could !== wanted; tries++) {
			if (tries > 0) await new Promise(done => setTimeout(done, 100));
			could = await fetch("/page.js?" + performance.now()).then(() => true, () => false);
		}
		return could;
	})`
	for _, cut := range []bool{true, false} {
		page.Offline(cut)
		if got := browser.Eval[bool](page, fmt.Sprintf("%s(%t)", fetched, !cut)); got == cut {
			t.Errorf("cut off %v: the page could fetch: %v", cut, got)
		}
	}
}

func TestAPictureIsWritten(t *testing.T) {
	page := browser.Open(t, serve(t, sound, ""), browser.Desk)
	t.Setenv("TUMBLEHOME_PICTURES", "1")
	page.Screenshot(t, "browser/sound")
	path := filepath.Join("..", "..", "pictures", "browser", "sound.png")
	if info, err := os.Stat(path); err != nil || info.Size() < 1000 {
		t.Errorf("%s: %v, %v", path, info, err)
	}
}
