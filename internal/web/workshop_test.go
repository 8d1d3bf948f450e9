package web_test

import (
	"context"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/internal/browser"
	"tumblehome/internal/store"
	"tumblehome/internal/web"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

func TestMain(m *testing.M) { browser.Main(m) }

// machine serves all workspaces: what one has worked out the next finds. A few years of weather are enough for what pages show.
var machine = func() *reckon.Machine {
	m := reckon.NewMachine()
	m.Years = 20
	return m
}()

// workshop is a throw-away workspace on a copy of a build.
type workshop struct {
	t      testing.TB
	store  *store.Store
	server *web.Server
	http   *httptest.Server
}

// open opens a workspace on a document; edit, where given, changes its text first.
func open(t testing.TB, name string, edits ...func(string) string) *workshop {
	t.Helper()
	text, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	for _, edit := range edits {
		text = []byte(edit(string(text)))
	}
	doc, _, err := build.Decode(filepath.Base(name), text, catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	clock := time.Date(2026, 9, 19, 18, 20, 0, 0, time.UTC)
	options := store.Options{Rows: catalogue.Builtin(), Now: func() time.Time { clock = clock.Add(time.Minute); return clock }}
	kept, err := store.Create(context.Background(), filepath.Join(t.TempDir(), "build.tumblehome"), doc, options)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		if err := kept.Close(); err != nil {
			t.Error(err)
		}
	})
	server, err := web.New(web.Options{
		Store: kept, Reckon: machine.Reckon,
		Today: func() quantity.Date { return quantity.Date{Year: 2026, Month: 9, Day: 19} },
	})
	if err != nil {
		t.Fatal(err)
	}
	w := &workshop{t: t, store: kept, server: server, http: httptest.NewServer(server.Handler())}
	t.Cleanup(w.http.Close)
	return w
}

const dipper = "../../examples/dipper.yaml"

// answer asks the handler itself, without a network.
func (w *workshop) answer(r *http.Request) *httptest.ResponseRecorder {
	out := httptest.NewRecorder()
	w.server.Handler().ServeHTTP(out, r)
	return out
}

// reckoned is what follows from the newest revision.
func (w *workshop) reckoned() *reckon.Reckoning {
	_, doc := w.store.Head()
	return machine.Reckon(doc, quantity.Date{Year: 2026, Month: 9, Day: 19})
}

// get asks for a page of this machine.
func get(address string) *http.Request {
	r := httptest.NewRequest(http.MethodGet, address, nil)
	r.Host = "127.0.0.1:7070"
	return r
}

// post sends a form from a page of this machine; pairs are names and values.
func post(address string, pairs ...string) *http.Request {
	r := httptest.NewRequest(http.MethodPost, address, strings.NewReader(form(pairs...)))
	r.Host = "127.0.0.1:7070"
	r.Header.Set("Origin", "http://127.0.0.1:7070")
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	return r
}

// postJSON sends what script would send.
func postJSON(address, body string) *http.Request {
	r := post(address)
	r.Body = http.NoBody
	if body != "" {
		r = httptest.NewRequest(http.MethodPost, address, strings.NewReader(body))
		r.Host = "127.0.0.1:7070"
	}
	r.Header.Set("Origin", "http://127.0.0.1:7070")
	r.Header.Set("Content-Type", "application/json")
	r.Header.Set("X-Tumblehome", "1")
	return r
}
