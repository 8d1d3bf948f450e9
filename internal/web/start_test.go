package web_test

import (
	"context"
	"net/http"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/build/begin"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

// openNew opens a workspace on a build of which nothing is known.
func openNew(t testing.TB) *workshop {
	t.Helper()
	doc, _, err := begin.Document(begin.Answers{})
	if err != nil {
		t.Fatal(err)
	}
	return openDocument(t, doc)
}

func openDocument(t testing.TB, doc *build.Document) *workshop {
	t.Helper()
	file := filepath.Join(t.TempDir(), "new.yaml")
	if err := os.WriteFile(file, build.WriteYAML(doc), 0o600); err != nil {
		t.Fatal(err)
	}
	return open(t, file)
}

// says sends one screen of the first hour and gives where it leads.
func (w *workshop) says(step string, pairs ...string) string {
	w.t.Helper()
	out := w.answer(post("/start/"+step, pairs...))
	if out.Code != http.StatusSeeOther {
		w.t.Fatalf("/start/%s answers %d: %s", step, out.Code, firstOf(out.Body.String(), "role=\"alert\""))
	}
	return out.Header().Get("Location")
}

// firstOf is a bit of a page from a word on.
func firstOf(page, word string) string {
	i := strings.Index(page, word)
	if i < 0 {
		return ""
	}
	return page[i:min(len(page), i+300)]
}

func TestTheFirstHourAsksOneQuestionAScreen(t *testing.T) {
	w := openNew(t)
	if to := w.answer(get("/")).Header().Get("Location"); to != "/start" {
		t.Errorf("a new build opens at %s", to)
	}
	if to := w.answer(get("/start")).Header().Get("Location"); to != "/start/outline" {
		t.Errorf("the first hour begins at %s", to)
	}
	for i, step := range []string{"outline", "tape", "plate", "people", "wishes", "means", "answers"} {
		out := w.answer(get("/start/" + step))
		page := out.Body.String()
		if out.Code != http.StatusOK || strings.Count(page, "<h1") != 1 || strings.Contains(page, "<script") || strings.Contains(page, "style=") {
			t.Errorf("%s: %d, %d headings", step, out.Code, strings.Count(page, "<h1"))
		}
		if want := string(rune('1'+i)) + " of 7"; !strings.Contains(page, want) {
			t.Errorf("%s does not say %s", step, want)
		}
	}
	if out := w.answer(get("/start/zeppelin")); out.Code != http.StatusNotFound {
		t.Errorf("an unknown question answers %d", out.Code)
	}
}

// Among the cards what is wrong would take the place of one, and push the others along.
func TestWhatIsWrongStandsBeforeTheCards(t *testing.T) {
	page := openNew(t).answer(post("/start/outline", "go", "next")).Body.String()
	wrong, cards := strings.Index(page, `id="wrong-body"`), strings.Index(page, `class="start-outlines"`)
	if wrong < 0 || cards < 0 || wrong > cards {
		t.Errorf("what is wrong stands at %d, the cards begin at %d", wrong, cards)
	}
}

func TestTheFirstHourFromEndToEnd(t *testing.T) {
	w := openNew(t)
	for _, c := range []struct {
		step, next string
		pairs      []string
	}{
		{"outline", "/start/tape", []string{"body", "mid-high"}},
		{"tape", "/start/plate", []string{"length", "2 850", "knee", "193 cm", "height", "6' 6 1/2\"", "door-side", "left"}},
		{"plate", "/start/people", []string{"rules", "gb", "gross", "3300", "front", "1750", "rear", "1900"}},
		{"people", "/start/wishes", []string{"name-1", "Tall one", "stature-1", "1.83 m", "name-2", "", "stature-2", "1640"}},
		{"wishes", "/start/means", []string{"wish", "kitchen", "wish", "toilet"}},
		{"means", "/start/answers", []string{"title", "Wren", "budget", "4000", "weekends", "30", "currency", "GBP"}},
	} {
		if to := w.says(c.step, append(c.pairs, "go", "next")...); to != c.next {
			t.Errorf("%s leads to %s", c.step, to)
		}
	}
	page := w.answer(get("/start/answers")).Body.String()
	for _, want := range []string{"Tall one", "lie lengthwise", "Likely £", "weekends", "What to measure next", "Settle that pulls out", "plan-of-mid-settle", "Assumed meanwhile"} {
		if !strings.Contains(page, want) {
			t.Errorf("the answers do not say %q", want)
		}
	}
	if to := w.says("answers", "arrangement", "mid-settle"); to != "/arrangement?mode=day" {
		t.Errorf("the arrangement leads to %s", to)
	}
	_, doc := w.store.Head()
	if doc.Build.Title != "Wren" || *doc.Shell.Quick.Length != 2850 || *doc.Shell.Quick.WidthAtKnee != 1930 || doc.People["tall-one"].Stature != 1830 ||
		doc.People["sleeper-2"].Stature != 1640 || *doc.Vehicle.Plate.Rear != 1900 || doc.Fittings["toilet"].Buy == "" {
		t.Errorf("the build became %s", build.WriteYAML(doc))
	}
	for _, f := range reckonOf(doc).Findings {
		if f.Severity >= finding.Fault {
			t.Errorf("%s", f.Title)
		}
	}
	revisions, err := w.store.Revisions(context.Background(), 0, 20)
	if err != nil || len(revisions) != 8 {
		t.Errorf("%d revisions for seven answers, %v", len(revisions), err)
	}
	if to := w.answer(get("/")).Header().Get("Location"); to != "/arrangement" {
		t.Errorf("afterwards it opens at %s", to)
	}
	if _, err := w.store.Undo(context.Background(), ""); err != nil {
		t.Error(err)
	}
	if _, doc := w.store.Head(); len(doc.Fittings) != 0 {
		t.Error("one undo does not take the arrangement back")
	}
}

func reckonOf(doc *build.Document) *reckon.Reckoning {
	return machine.Reckon(doc, quantity.Date{})
}

func TestEveryQuestionMayBeSkipped(t *testing.T) {
	w := openNew(t)
	before, _ := w.store.Head()
	for _, step := range []string{"outline", "tape", "plate", "people", "wishes", "means"} {
		w.says(step, "go", "skip", "length", "nonsense")
	}
	if after, _ := w.store.Head(); after.N != before.N {
		t.Errorf("skipping made revision %d", after.N)
	}
	if page := w.answer(get("/start/answers")).Body.String(); !strings.Contains(page, "Begin with this") {
		t.Error("with nothing said there is nothing to begin with")
	}
}

func TestASkippedOutlineKeepsWhatWasPicked(t *testing.T) {
	w := openNew(t)
	w.says("outline", "go", "skip", "body", begin.Bodies()[3].ID)
	if _, doc := w.store.Head(); begin.Read(doc).Body != begin.Bodies()[3].ID {
		t.Errorf("the outline is %q", begin.Read(doc).Body)
	}
}

func TestADecimalCommaIsRead(t *testing.T) {
	w := openNew(t)
	w.says("tape", "knee", "1,87 m")
	w.says("plate", "gross", "3300,5")
	_, doc := w.store.Head()
	a := begin.Read(doc)
	if a.Readings.Knee.String() != "1870" || a.Plate.Gross.String() != "3300.5" {
		t.Errorf("read as %v and %v", a.Readings.Knee, a.Plate.Gross)
	}
}

func TestWhatCannotBeIsSaidBesideTheField(t *testing.T) {
	for _, c := range []struct {
		name, step string
		pairs      []string
		wants      []string
	}{
		{"a reading that is no length", "tape", []string{"length", "two metres", "knee", "1870"}, []string{`id="wrong-length"`, `value="two metres"`, `value="1870"`, `aria-invalid="true"`}},
		{"a reading in metres", "tape", []string{"knee", "1870", "arches", "1.39"}, []string{`id="wrong-arches"`, "Did you mean 1.39 m?"}},
		{"a point between thousands", "tape", []string{"knee", "1.870"}, []string{`id="wrong-knee"`, "1.870 can be 1.87 mm or 1870 mm; write 1870 or 1.87 mm.</span>"}},
		{"a comma between thousands", "tape", []string{"knee", "1,870"}, []string{`id="wrong-knee"`, "did you mean 1870?</span>", `<a href="#f-knee">Width at knee height</a>`, `autofocus id="f-knee"`}},
		{"two wrong fields: the first takes the focus, both are named", "plate", []string{"rear", "heavy", "gross", "much"},
			[]string{`<a href="#f-gross">Greatest mass of the laden van</a>`, `<a href="#f-rear">Greatest load of the rear axle</a>`}},
		{"arches wider apart than the sides", "tape", []string{"knee", "1700", "arches", "1800"}, []string{`id="wrong-arches"`, "stand out of the sides", `value="1800"`}},
		{"axles that carry too little", "plate", []string{"gross", "3500", "front", "1500", "rear", "1500"}, []string{`id="wrong-front"`, "another line of the plate", `value="3500"`}},
		{"a stature in centimetres", "people", []string{"name-1", "Ann", "stature-1", "175"}, []string{`id="wrong-stature-1"`, "write 175 cm or 1750", `value="Ann"`}},
		{"a name without a stature", "people", []string{"name-1", "Ann"}, []string{"How tall is Ann?"}},
		{"two of one name with an accent", "people", []string{"name-1", "Ann Löf", "stature-1", "1700", "name-2", "ann löf", "stature-2", "1600"}, []string{`id="wrong-name-2"`}},
		{"two of one name", "people", []string{"name-1", "Ann", "stature-1", "1700", "name-2", "ann", "stature-2", "1600"}, []string{`id="wrong-name-2"`}},
		{"weekends that are no number", "means", []string{"weekends", "soon"}, []string{`id="wrong-weekends"`}},
		{"money that is none", "means", []string{"budget", "lots"}, []string{`id="wrong-budget"`}},
		{"no outline picked", "outline", nil, []string{`id="wrong-body"`}},
		{"an outline that does not exist", "outline", []string{"body", "round"}, []string{`id="wrong-body"`}},
		{"no arrangement picked", "answers", nil, []string{`id="wrong-arrangement"`}},
	} {
		t.Run(c.name, func(t *testing.T) {
			w := openNew(t)
			before, _ := w.store.Head()
			out := w.answer(post("/start/"+c.step, c.pairs...))
			page := out.Body.String()
			if out.Code != http.StatusUnprocessableEntity {
				t.Errorf("answers %d", out.Code)
			}
			for _, want := range c.wants {
				if !strings.Contains(page, want) {
					t.Errorf("the page lacks %q: %s", want, firstOf(page, `role="alert"`))
				}
			}
			if after, _ := w.store.Head(); after.N != before.N {
				t.Error("it was saved all the same")
			}
		})
	}
}

func TestWhatIsOnlyUnusualMayBeKept(t *testing.T) {
	w := openNew(t)
	w.says("outline", "body", "mid-mid")
	out := w.answer(post("/start/tape", "length", "3900"))
	if page := out.Body.String(); out.Code != http.StatusUnprocessableEntity || !strings.Contains(page, "unusual") || !strings.Contains(page, `name="keep"`) {
		t.Fatalf("%d: %s", out.Code, firstOf(page, `role="alert"`))
	}
	w.says("tape", "length", "3900", "keep", "yes")
	if _, doc := w.store.Head(); *doc.Shell.Quick.Length != 3900 {
		t.Error("it was not kept")
	}
	w.says("means", "weekends", "12") // what was kept is not asked again
}

// An answer given in a window that is behind the build says so and overwrites nothing.
func TestTwoWindowsDoNotOverwriteEachOther(t *testing.T) {
	w := openNew(t)
	old, _ := w.store.Head()
	w.says("means", "weekends", "12", "base", strconv.Itoa(old.N))
	out := w.answer(post("/start/means", "weekends", "40", "base", strconv.Itoa(old.N)))
	if out.Code != http.StatusUnprocessableEntity || !strings.Contains(out.Body.String(), "another window") {
		t.Errorf("%d", out.Code)
	}
	w.says("wishes", "wish", "toilet", "base", strconv.Itoa(old.N)) // a different question is no conflict
	if _, doc := w.store.Head(); *doc.Build.Weekends != 12 {
		t.Errorf("weekends %d", *doc.Build.Weekends)
	}
}

func TestTheFirstHourOfAGrownBuildKeepsWhatWasChanged(t *testing.T) {
	doc, _, err := begin.Document(begin.Answers{Body: "mid-mid", Arrangement: "mid-settle", Title: "Wren"})
	if err != nil {
		t.Fatal(err)
	}
	w := openDocument(t, doc)
	if to := w.answer(get("/")).Header().Get("Location"); to != "/arrangement" {
		t.Errorf("opens at %s", to)
	}
	out := w.answer(post("/edit", "path", "/fittings/locker/at/x", "value", "1400", "base", "1", "back", "/arrangement"))
	if out.Code != http.StatusSeeOther {
		t.Fatalf("%d %s", out.Code, out.Body)
	}
	w.says("plate", "gross", "3100")
	_, after := w.store.Head()
	if after.Fittings["locker"].At.X.A.Plus != 1400 || *after.Vehicle.Plate.Gross != 3100 {
		t.Errorf("locker %v, gross %v", after.Fittings["locker"].At.X, *after.Vehicle.Plate.Gross)
	}
}

// Two very tall people, who sit upright nowhere in a low van: what clashes is said on the card before it is picked, and only there.
func TestWhatDoesNotGoTogetherIsSaidBeforeItIsPicked(t *testing.T) {
	for _, c := range []struct {
		body     string
		wishes   []string
		statures []string
		clashes  bool
	}{
		{"mid-low", []string{"wish", "toilet", "wish", "fridge"}, []string{"2000", "2000"}, true},
		{"mid-high", []string{"wish", "kitchen"}, []string{"1750", "1650"}, false},
	} {
		w := openNew(t)
		w.says("outline", "body", c.body)
		w.says("people", "name-1", "Ann", "stature-1", c.statures[0], "name-2", "Tom", "stature-2", c.statures[1])
		w.says("wishes", c.wishes...)
		if page := w.answer(get("/start/answers")).Body.String(); strings.Contains(page, "To be put right afterwards") != c.clashes {
			t.Errorf("%s: clashes said is %v", c.body, !c.clashes)
		}
	}
}

func TestWhatIsTakenWhenLeftOutIsSaidBeforehand(t *testing.T) {
	w := openNew(t)
	w.says("outline", "body", "mid-high")
	for step, wants := range map[string][]string{
		"plate": {"left out: 3\u00a0300\u00a0kg", "left out: no trailer", "left out: 3\u00a0360\u00a0mm"},
		"means": {"1 500 to 3 000", "held against nothing"},
	} {
		page := w.answer(get("/start/" + step)).Body.String()
		for _, want := range wants {
			if !strings.Contains(page, want) {
				t.Errorf("%s does not say %q: %s", step, want, firstOf(page, "placeholder="))
			}
		}
	}
}

func TestAnEmptyVanLeadsToTheStartingArrangements(t *testing.T) {
	if page := openNew(t).answer(get("/region/fittings")).Body.String(); !strings.Contains(page, `href="/start/answers"`) {
		t.Error("an empty van does not say where the starting arrangements are")
	}
}

func TestTheShellPageLeadsToWhatIsAssumed(t *testing.T) {
	if page := openNew(t).answer(get("/shell")).Body.String(); !strings.Contains(page, `href="/start/answers"`) || !strings.Contains(page, "things are assumed") {
		t.Error("a new build's shell does not say what is assumed")
	}
	if page := open(t, dipper).answer(get("/shell")).Body.String(); strings.Contains(page, "/start/answers") {
		t.Error("a measured body leads back into the first hour")
	}
}

// The six readings are of no use to a body that was measured station by station.
func TestTheFirstHourIsOverOnceTheBodyIsMeasured(t *testing.T) {
	w := open(t, dipper)
	for _, r := range []*http.Request{get("/start"), get("/start/tape"), get("/start/answers"), post("/start/tape", "length", "2900")} {
		if out := w.answer(r); out.Code != http.StatusSeeOther || out.Header().Get("Location") != "/arrangement" {
			t.Errorf("%s %s: %d to %s", r.Method, r.URL, out.Code, out.Header().Get("Location"))
		}
	}
}
