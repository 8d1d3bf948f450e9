package web_test

import (
	"bufio"
	"context"
	"fmt"
	"net"
	"net/http"
	"regexp"
	"strings"
	"testing"
	"time"

	"tumblehome/build"
	"tumblehome/catalogue"
)

func TestARegionIsSentOnlyWhenItReadsDifferently(t *testing.T) {
	w := open(t, dipper)
	first := w.answer(get("/region/weight?page=weight"))
	tag := first.Header().Get("ETag")
	if first.Code != 200 || tag == "" || !strings.Contains(first.Body.String(), `data-region="weight"`) {
		t.Fatalf("%d, ETag %q, %.100q", first.Code, tag, first.Body)
	}
	if strings.Contains(first.Body.String(), "<html") {
		t.Error("a region is sent as a whole page")
	}
	again := func() *http.Request {
		return with(get("/region/weight?page=weight"), func(r *http.Request) { r.Header.Set("If-None-Match", tag) })
	}
	if got := w.answer(again()); got.Code != http.StatusNotModified || got.Body.Len() > 0 {
		t.Errorf("the same region is sent again: %d", got.Code)
	}
	// A revision that changes nothing in this region leaves its digest and the base of its forms.
	if got := w.answer(post("/edit", "path", "/build/note", "value", "It rains.", "base", "1")); got.Code != http.StatusSeeOther {
		t.Fatal(got.Body)
	}
	if got := w.answer(again()); got.Code != http.StatusNotModified || got.Header().Get("Revision") != "2" {
		t.Errorf("a remark on the build sends the weight again: %d, revision %s", got.Code, got.Header().Get("Revision"))
	}
	if got := w.answer(get("/region/weight?page=weight")).Body.String(); !strings.Contains(got, `name="base" value="1-`) {
		t.Error("the forms of an unchanged region are made for another revision than the first that read so")
	}
	if got := w.answer(post("/edit", "path", "/people/tall/mass", "value", "95", "base", "2")); got.Code != http.StatusSeeOther {
		t.Fatal(got.Body)
	}
	if got := w.answer(again()); got.Code != 200 || got.Header().Get("ETag") == tag {
		t.Errorf("a heavier person leaves the weight as it was: %d", got.Code)
	}
	if got := w.answer(get("/region/cellar")); got.Code != http.StatusNotFound {
		t.Errorf("a region that is none: %d", got.Code)
	}
}

func TestTheFootAndTheHistoryFollowEveryRevision(t *testing.T) {
	w := open(t, dipper)
	if got := w.answer(get("/revisions")).Body.String(); !strings.Contains(got, `data-region="title"`) {
		t.Error("the title block does not fetch itself")
	}
	if got := w.answer(post("/alternatives/keep", "fitting", "table", "why", "Is it worth it?", "base", "1")); got.Code != http.StatusSeeOther {
		t.Fatal(got.Code, got.Body)
	}
	if got := w.answer(get("/region/title?page=revisions")).Body.String(); !strings.Contains(got, "<dd>2, ") {
		t.Errorf("the title block reads %s", got)
	}
	if got := w.answer(get("/region/revisions?page=revisions")).Body.String(); !strings.Contains(got, `<li value="2">`) {
		t.Errorf("the history lacks the second revision")
	} else if !strings.Contains(got, `href="/alternatives/no-table"`) {
		t.Errorf("the alternative is not laid beside the build")
	}
}

// An alternative without a thing can be worked out, whatever hung on the thing; where that cannot be, it is refused in words.
func TestAnAlternativeWithoutAThingHolds(t *testing.T) {
	w := open(t, dipper)
	for _, id := range []string{"galley", "toilet", "controller", "pullout", "table"} {
		before, _ := w.store.Head()
		got := w.answer(post("/alternatives/keep", "fitting", id, "why", "a question", "new", "do without", "base", fmt.Sprint(before.N)))
		if got.Code != http.StatusSeeOther {
			t.Errorf("%s: %d", id, got.Code)
			continue
		}
		_, now := w.store.Head()
		taken, err := build.TakeAlternative(now, "do-without", catalogue.Builtin())
		if err != nil {
			t.Errorf("%s: %v", id, err)
		} else if _, still := taken.Fittings[id]; still {
			t.Errorf("%s is still there", id)
		}
		if _, err := w.store.Undo(context.Background(), ""); err != nil {
			t.Fatal(err)
		}
	}
	if got := w.answer(post("/alternatives/keep", "fitting", "battery", "why", "a question", "base", "1")); got.Code != http.StatusUnprocessableEntity || !strings.Contains(got.Body.String(), "Battery is wanted elsewhere") {
		t.Errorf("without the battery, on which the circuits hang: %d", got.Code)
	}
	if got := w.answer(post("/alternatives/keep", "fitting", "cellar", "why", "a question", "base", "1")); got.Code != http.StatusUnprocessableEntity {
		t.Errorf("without what is not there: %d", got.Code)
	}
}

func TestFilesAreKeptForGoodUnderTheirDigest(t *testing.T) {
	w := open(t, dipper)
	page := w.answer(get("/weight")).Body.String()
	_, rest, _ := strings.Cut(page, `href="/static/drawing.css?v=`)
	version, _, _ := strings.Cut(rest, `"`)
	if got := w.answer(get("/static/drawing.css?v=" + version)); got.Code != 200 || !strings.Contains(got.Header().Get("Cache-Control"), "immutable") || !strings.Contains(got.Body.String(), "--lead") {
		t.Errorf("with its digest: %d, %s", got.Code, got.Header())
	}
	got := w.answer(get("/static/drawing.css?v=old"))
	if got.Code != 200 || got.Header().Get("Cache-Control") != "no-cache" {
		t.Errorf("with an old digest: %d, %s", got.Code, got.Header())
	}
	if got := w.answer(get("/static/..%2fdoc.go")); got.Code != http.StatusNotFound {
		t.Errorf("a file outside the folder: %d", got.Code)
	}
}

func TestNewsReachesEveryPage(t *testing.T) {
	w := open(t, dipper)
	lines := listen(t, w.http.URL)
	if got := next(t, lines); !strings.HasPrefix(got, `data: {"revision":1,"stages":["shell","lining","arrangement","weight","fit","warmth","power","cables","stock","cost"],"run":"`) {
		t.Errorf("a page that joins hears %q", got)
	}
	other := listen(t, w.http.URL)
	next(t, other)
	if got := w.answer(post("/edit", "path", "/people/tall/mass", "value", "90", "base", "1")); got.Code != http.StatusSeeOther {
		t.Fatal(got.Body)
	}
	for _, l := range []<-chan string{lines, other} {
		if got := nextRevision(t, l, 1); !strings.HasPrefix(got, `data: {"revision":2,`) {
			t.Errorf("after a save a page hears %q", got)
		}
	}
}

// Else every page that is opened would fetch all its regions once more: the last that was told is told again to whoever joins.
func TestAPageKnowsWhatWasToldBeforeItWasDrawn(t *testing.T) {
	w := open(t, dipper)
	lines := listen(t, w.http.URL)
	told := regexp.MustCompile(`"told":(\d+)`)
	for heard := ""; !strings.Contains(heard, `"remedies"`); {
		heard = next(t, lines)
	}
	page := w.answer(get("/weight")).Body.String()
	again := told.FindStringSubmatch(next(t, listen(t, w.http.URL)))
	if again == nil || !strings.Contains(page, `data-told="`+again[1]+`"`) {
		t.Errorf("who joins hears %v, which the page does not say that it knows", again)
	}
}

// nextRevision is the first line that is not of a revision: what was tried in the background for that one may be told at any time.
func nextRevision(t *testing.T, lines <-chan string, known int) string {
	t.Helper()
	for {
		if got := next(t, lines); !strings.HasPrefix(got, fmt.Sprintf(`data: {"revision":%d,`, known)) {
			return got
		}
	}
}

// listen joins the news and gives its lines.
func listen(t *testing.T, address string) <-chan string {
	t.Helper()
	ctx, leave := context.WithCancel(context.Background())
	t.Cleanup(leave)
	r, err := http.NewRequestWithContext(ctx, http.MethodGet, address+"/events", nil)
	if err != nil {
		t.Fatal(err)
	}
	answer, err := http.DefaultClient.Do(r)
	if err != nil {
		t.Fatal(err)
	}
	if kind := answer.Header.Get("Content-Type"); kind != "text/event-stream" {
		t.Fatalf("news are sent as %q", kind)
	}
	lines := make(chan string, 16)
	go func() {
		defer answer.Body.Close()
		for scan := bufio.NewScanner(answer.Body); scan.Scan(); {
			if scan.Text() != "" {
				lines <- scan.Text()
			}
		}
	}()
	return lines
}

func next(t *testing.T, lines <-chan string) string {
	t.Helper()
	select {
	case line := <-lines:
		return line
	case <-time.After(10 * time.Second):
		t.Fatal("no news within ten seconds")
		return ""
	}
}

func TestServingEndsGentlyThoughPagesListen(t *testing.T) {
	w := open(t, dipper)
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	ctx, stop := context.WithCancel(context.Background())
	ended := make(chan error, 1)
	go func() { ended <- w.server.Serve(ctx, listener) }()
	next(t, listen(t, "http://"+listener.Addr().String()))
	stop()
	select {
	case err := <-ended:
		if err != nil {
			t.Errorf("it ended with %v", err)
		}
	case <-time.After(4 * time.Second):
		t.Error("an open stream of news keeps the server from ending")
	}
}
