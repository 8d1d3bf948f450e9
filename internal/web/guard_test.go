package web_test

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"
)

func with(r *http.Request, change func(*http.Request)) *http.Request {
	change(r)
	return r
}

func TestOnlyPagesOfThisMachineGetIn(t *testing.T) {
	edit := func() *http.Request {
		return post("/edit", "path", "/build/title", "value", "Taken over", "base", "1")
	}
	run(t, dipper, []scenario{
		{name: "localhost is this machine", request: with(get("/weight"), func(r *http.Request) { r.Host = "localhost:7070" }), status: 200},
		{name: "the other loopback address is this machine", request: with(get("/weight"), func(r *http.Request) { r.Host = "[::1]:7070" }), status: 200},
		{name: "another name is refused, even if it leads here", request: with(get("/weight"), func(r *http.Request) { r.Host = "evil.example:7070" }),
			status: http.StatusMisdirectedRequest, lacks: []string{"Dipper", "What"}},
		{name: "a port that is none is refused", request: with(get("/weight"), func(r *http.Request) { r.Host = "localhost:evil" }), status: http.StatusMisdirectedRequest},
		{name: "an address of the house is refused", request: with(get("/weight"), func(r *http.Request) { r.Host = "192.168.1.5:7070" }), status: http.StatusMisdirectedRequest},
		{name: "another name is refused for news too", request: with(get("/events"), func(r *http.Request) { r.Host = "evil.example" }), status: http.StatusMisdirectedRequest},
		{name: "a form of this workspace is taken", request: edit(), status: http.StatusSeeOther, location: "/arrangement"},
		{name: "a form of another site is refused", request: with(edit(), func(r *http.Request) { r.Header.Set("Origin", "http://evil.example") }), status: http.StatusForbidden},
		{name: "a form of another port of this machine is refused", request: with(edit(), func(r *http.Request) { r.Header.Set("Origin", "http://127.0.0.1:8080") }), status: http.StatusForbidden},
		{name: "a form of nowhere is refused", request: with(edit(), func(r *http.Request) { r.Header.Set("Origin", "null") }), status: http.StatusForbidden},
		{name: "a request that says it crosses sites is refused", request: with(edit(), func(r *http.Request) {
			r.Header.Del("Origin")
			r.Header.Set("Sec-Fetch-Site", "cross-site")
		}), status: http.StatusForbidden},
		{name: "changing things by following a link is not possible", request: get("/edit?path=/build/title&value=x&base=1"), status: http.StatusNotFound},
		{name: "a form larger than any form is refused", request: with(edit(), func(r *http.Request) {
			body := "base=1&path=/build/note&value=" + strings.Repeat("x", 1<<20)
			*r = *withBody(r, body)
		}), status: http.StatusRequestEntityTooLarge},
		{name: "JSON larger than any patch is refused", request: postJSON("/preview", `{"revision": 1, "words": "`+strings.Repeat("x", 1<<20)+`"}`), status: http.StatusRequestEntityTooLarge},
		{name: "coming back leads to no other site", request: post("/edit", "path", "/build/title", "value", "Dip", "base", "1", "back", "//evil.example/"),
			status: http.StatusSeeOther, location: "/arrangement"},
		{name: "coming back leads to no other site by a whole address", request: post("/edit", "path", "/build/title", "value", "Dip", "base", "1", "back", "http://evil.example/"),
			status: http.StatusSeeOther, location: "/arrangement"},
		{name: "coming back leads to no other site by slashes the wrong way", request: post("/edit", "path", "/build/title", "value", "Dip", "base", "1", "back", `/\evil.example/`),
			status: http.StatusSeeOther, location: "/arrangement"},
		{name: "coming back leads to the page", request: post("/edit", "path", "/build/title", "value", "Dip", "base", "1", "back", "/arrangement?mode=night"),
			status: http.StatusSeeOther, location: "/arrangement?mode=night"},
	})
}

func withBody(r *http.Request, body string) *http.Request {
	fresh := httptest.NewRequest(r.Method, r.URL.String(), strings.NewReader(body))
	fresh.Host, fresh.Header = r.Host, r.Header
	return fresh
}

func TestEveryAnswerCarriesTheContentPolicy(t *testing.T) {
	const policy = "default-src 'self'; style-src 'self'; img-src 'self' data: blob:; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'"
	w := open(t, dipper)
	for _, r := range []*http.Request{get("/arrangement"), get("/region/notes"), get("/static/main.css"), get("/nowhere"), post("/undo", "base", "1"), get("/how/weight.total"),
		with(get("/"), func(r *http.Request) { r.Host = "evil.example" })} {
		got := w.answer(r)
		if have := got.Header().Get("Content-Security-Policy"); have != policy {
			t.Errorf("%s %s has the policy %q", r.Method, r.URL, have)
		}
		if got.Header().Get("X-Content-Type-Options") != "nosniff" {
			t.Errorf("%s %s may be sniffed", r.Method, r.URL)
		}
	}
}

// hostile puts mark-up into every text a builder can write.
func hostile(text string) string {
	const script = `<script>alert(1)</script>"'><img src=x onerror=alert(2)>`
	quoted := fmt.Sprintf("%q", script)
	for _, key := range []string{"title: Dipper", "title: side"} {
		text = strings.Replace(text, key, "title: "+quoted, 1)
	}
	for _, pair := range [][2]string{
		{"title: two aboard, full fuel, gear, both cans full", "title: " + quoted},
		{"called: water can 20 l", "called: " + quoted},
		{"title: hole of the roof fan", "title: " + quoted},
		{"why: a lighter bench", "why: " + quoted},
		{"what: weighbridge", "what: " + quoted},
		{"where: clutch hydraulics", "where: " + quoted},
		{"note: Three drawers above it. No fixing for it yet.", "note: " + quoted},
		{"name: Sheep wool, half a split batt", "name: " + quoted},
	} {
		text = strings.Replace(text, pair[0], pair[1], 1)
	}
	return text
}

func TestNoTextOfTheBuildersBecomesMarkUp(t *testing.T) {
	w := open(t, dipper, hostile)
	addresses := []string{"/how/weight.total", "/how/weight.tyre.age", "/add?words=%3Cscript%3E", "/alternatives/thinner-settle", "/revisions/1", "/sheet.svg"}
	for _, name := range allPages {
		addresses = append(addresses, "/"+name)
	}
	for _, region := range []string{"drawing", "notes", "headline", "fittings", "said", "weight", "revisions", "shell", "build-up", "cost", "warmth", "power", "cables"} {
		addresses = append(addresses, "/region/"+region+"?mode=night")
	}
	seen := false
	for _, address := range addresses {
		got := w.answer(get(address))
		text := got.Body.String()
		if got.Code != 200 {
			t.Errorf("%s: %d", address, got.Code)
		}
		for _, bad := range []string{"<script>alert", "<img src=x", "onerror=alert(2)>", `"'>`} {
			if strings.Contains(text, bad) {
				at := strings.Index(text, bad)
				t.Errorf("%s holds %q: …%s…", address, bad, text[max(0, at-120):min(len(text), at+80)])
			}
		}
		seen = seen || strings.Contains(text, "&lt;script&gt;alert(1)")
	}
	if !seen {
		t.Error("no page shows the hostile text at all: this test tests nothing")
	}
	for _, r := range []*http.Request{
		post("/edit", "path", "/vehicle/wheelbase", "value", "<script>alert(1)</script>", "base", "1", "back", "/weight"),
		post("/edit", "path", "/<script>alert(1)</script>", "value", "1", "base", "1"),
		post("/fittings/%3Cscript%3Ealert(1)/delete", "base", "1"),
	} {
		got := w.answer(r)
		if got.Code < 400 || strings.Contains(got.Body.String(), "<script>alert") {
			t.Errorf("%s: %d, %.200s", r.URL, got.Code, got.Body)
		}
	}
}
