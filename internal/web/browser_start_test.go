package web_test

import (
	"strings"
	"testing"

	"tumblehome/internal/browser"
)

// How long a screen takes a beginner: reading at 200 words a minute, and five seconds for each field used. Both are estimates; holding
// the tape and looking for the plate come on top.
const (
	wordsAMinute    = 200.0
	secondsForField = 5.0
)

// visit is one screen of the first hour: what is done there, and how many fields that uses.
type visit struct {
	step   string
	fields int
	do     func(p *browser.Page)
}

// typing fills a field that is empty.
func typing(pairs ...string) func(p *browser.Page) {
	return func(p *browser.Page) {
		for i := 0; i+1 < len(pairs); i += 2 {
			p.Type("#f-"+pairs[i], pairs[i+1])
		}
	}
}

func picking(selectors ...string) func(p *browser.Page) {
	return func(p *browser.Page) {
		for _, s := range selectors {
			p.Click(s)
		}
	}
}

var firstHour = []visit{
	{"outline", 1, picking(`input[value="mid-high"]`)},
	{"tape", 7, func(p *browser.Page) {
		typing("length", "2850", "knee", "1930", "arches", "1400", "height", "1980", "door-width", "1240", "door-height", "1760")(p)
		p.Click(`input[name="door-side"][value="left"]`)
	}},
	{"plate", 5, func(p *browser.Page) {
		p.Click(`input[name="rules"][value="gb"]`)
		typing("gross", "3300", "train", "5300", "front", "1750", "rear", "1900")(p)
	}},
	{"people", 4, typing("name-1", "Ann", "stature-1", "1640", "name-2", "Tom", "stature-2", "183 cm")},
	{"wishes", 3, picking(`input[value="kitchen"]`, `input[value="toilet"]`, `input[value="heating"]`)},
	{"means", 3, typing("title", " Wren", "budget", "4000", "weekends", "30")},
}

// The first hour walked by somebody who answers everything: seven screens, and with reading and typing under ten minutes.
func TestTheFirstHourTakesSevenScreensAndTenMinutes(t *testing.T) {
	w := openNew(t)
	page := browser.Open(t, w.http.URL+"/", browser.Desk)
	seconds, screens := 0.0, 0
	for _, v := range firstHour {
		page.WaitFor(`location.pathname === "/start/` + v.step + `"`)
		words := browser.Eval[int](page, `document.querySelector("main").innerText.trim().split(/\s+/).length`)
		seconds += 60*float64(words)/wordsAMinute + secondsForField*float64(v.fields)
		screens++
		v.do(page)
		page.Click(`button[value="next"]`)
	}
	page.WaitFor(`location.pathname === "/start/answers"`)
	words := browser.Eval[int](page, `[...document.querySelectorAll("main section:not(.assumed)")].map(s => s.innerText).join(" ").trim().split(/\s+/).length`)
	seconds += 60*float64(words)/wordsAMinute + secondsForField
	screens++
	page.WholePage(t, "start-answers-desk-walked")
	if said := page.Text(".first-answers"); !strings.Contains(said, "Tom") || !strings.Contains(said, "weekends") {
		t.Errorf("the first answers are %q", said)
	}
	page.Click(`button[value="mid-settle"]`)
	page.WaitFor(`location.pathname === "/arrangement"`)
	t.Logf("%d screens, about %.1f minutes of reading and typing", screens, seconds/60)
	if screens != 7 || seconds > 600 {
		t.Errorf("%d screens and %.1f minutes", screens, seconds/60)
	}
	if _, doc := w.store.Head(); doc.Fittings["heater"].Buy == "" || doc.People["tom"].Stature != 1830 {
		t.Error("the build is not what was said")
	}
}

// Every screen at both sizes: nothing is wider than the window, axe finds nothing, nothing complains.
func TestEveryScreenOfTheFirstHourIsSound(t *testing.T) {
	w := openNew(t)
	for _, size := range []struct {
		name string
		browser.Size
	}{{"desk", browser.Desk}, {"phone", browser.Phone}} {
		page := browser.Open(t, w.http.URL+"/start", size.Size)
		for _, step := range []string{"outline", "tape", "plate", "people", "wishes", "means", "answers"} {
			page.Go(w.http.URL + "/start/" + step)
			page.Axe(t)
			if wide := browser.Eval[int64](page, `document.documentElement.scrollWidth`); wide > int64(size.Width) {
				t.Errorf("%s is %d wide on a %s of %d", step, wide, size.name, size.Width)
			}
			small := browser.Eval[string](page, `[...document.querySelectorAll("main a, main button, main input:not([type=hidden])")]
				.filter(e => { const b = (e.closest("label") || e).getBoundingClientRect(); return b.width > 0 && b.height < 24 }).map(e => e.outerHTML.slice(0, 80)).join(" | ")`)
			if small != "" {
				t.Errorf("%s on a %s has targets under 24 px: %s", step, size.name, small)
			}
			page.WholePage(t, "start-"+step+"-"+size.name)
		}
	}
}

// What was refused stands where it was typed, with the reason beside it.
func TestARefusedReadingKeepsWhatWasTyped(t *testing.T) {
	w := openNew(t)
	page := browser.Open(t, w.http.URL+"/start/tape", browser.Phone)
	page.Allow("422")
	typing("knee", "1700", "arches", "1800")(page)
	page.Click(`button[value="next"]`)
	page.WaitFor(`document.querySelector("#wrong-arches") !== null`)
	if typed := browser.Eval[string](page, `document.querySelector("#f-arches").value`); typed != "1800" {
		t.Errorf("the field holds %q", typed)
	}
	page.Axe(t)
	page.WholePage(t, "start-tape-refused-phone")
}
