package web_test

import (
	"encoding/json"
	"net/http"
	"strings"
	"testing"
)

func TestEditsOfPlainForms(t *testing.T) {
	run(t, dipper, []scenario{
		{name: "a value is set and the browser sent back to its page", request: post("/edit", "path", "/vehicle/wheelbase", "value", "3.36 m", "base", "1", "back", "/weight"),
			status: http.StatusSeeOther, location: "/weight"},
		{name: "the page then shows it in the document's base unit, and what it moved",
			before:  []*http.Request{post("/edit", "path", "/vehicle/wheelbase", "value", "3.36 m", "base", "1")},
			request: get("/weight"), status: 200, holds: []string{`value="3360"`, `data-revision="2"`, "Wheelbase: 3350 → 3.36 m"}},
		{name: "a value that is none is refused beside its field, with what was typed",
			request: post("/edit", "path", "/vehicle/wheelbase", "value", "3,350 m", "base", "1", "back", "/weight"), status: http.StatusUnprocessableEntity,
			holds: []string{"<h1>Is it legal, does it sit level?</h1>", `value="3,350 m"`, `aria-invalid="true"`, "has a comma; the decimal mark is a point", "Perhaps 3.350 m?"}},
		{name: "a decimal comma is taken for a point, as people write it", before: []*http.Request{post("/edit", "path", "/vehicle/wheelbase", "value", "3,36 m", "base", "1")},
			request: get("/weight"), status: 200, holds: []string{`value="3360"`, "Wheelbase: 3350 → 3.36 m"}},
		{name: "and so is one with many digits behind it", before: []*http.Request{post("/edit", "path", "/vehicle/wheelbase", "value", "3,3605 m", "base", "1")},
			request: get("/weight"), status: 200, holds: []string{"Wheelbase: 3350 → 3.3605 m"}},
		{name: "copper is taken as the page and the cable write it", before: []*http.Request{post("/edit", "path", "/power/circuits/lights/cable", "value", "7 mm²", "base", "1")},
			request: get("/power"), status: http.StatusOK, holds: []string{`value="7 mm2"`}, lacks: []string{`aria-invalid="true"`}},
		{name: "copper is taken as a bare number", before: []*http.Request{post("/edit", "path", "/power/circuits/lights/cable", "value", "9", "base", "1")},
			request: get("/power"), status: http.StatusOK, holds: []string{`value="9 mm2"`}, lacks: []string{`aria-invalid="true"`}},
		{name: "a name of other letters is kept, and the id says what it is", before: []*http.Request{post("/edit", "new", "тест 漢字", "path", "/power/circuits/{new}/from", "value", "house", "path", "/power/circuits/{new}/current", "value", "2", "base", "1")},
			request: get("/power?open=/power/circuits/circuit"), status: http.StatusOK, holds: []string{`name="path" value="/power/circuits/circuit"`, `value="тест 漢字"`}},
		{name: "an accent is left off the id", before: []*http.Request{post("/edit", "new", "Kühlbox", "path", "/power/circuits/{new}/from", "value", "house", "path", "/power/circuits/{new}/current", "value", "2", "base", "1")},
			request: get("/power?open=/power/circuits/kuhlbox"), status: http.StatusOK, holds: []string{`name="path" value="/power/circuits/kuhlbox"`, `value="Kühlbox"`}},
		{name: "a button pressed twice adds once and says so", before: []*http.Request{post("/edit", "new", "Reading", "path", "/power/circuits/{new}/from", "value", "house", "path", "/power/circuits/{new}/current", "value", "2", "base", "1")},
			request: post("/edit", "new", "Reading", "path", "/power/circuits/{new}/from", "value", "house", "path", "/power/circuits/{new}/current", "value", "2", "base", "1", "back", "/power"),
			status:  http.StatusUnprocessableEntity, holds: []string{"“Reading” is already added", `data-revision="2"`}, lacks: []string{"Somebody else"}},
		{name: "feet and inches have their marks", before: []*http.Request{post("/edit", "path", "/vehicle/wheelbase", "value", `10' 11 1/2"`, "base", "1")},
			request: get("/weight"), status: 200, holds: []string{"Wheelbase: 3350 → 10 ft 11 1/2 in"}},
		{name: "printed marks too", before: []*http.Request{post("/edit", "path", "/vehicle/wheelbase", "value", "131,5″", "base", "1")},
			request: get("/weight"), status: 200, holds: []string{`value="3340.1"`}},
		{name: "a mass may be in tonnes", before: []*http.Request{post("/edit", "path", "/vehicle/plate/gross", "value", "3.3 t", "base", "1")},
			request: get("/weight"), status: 200, holds: []string{`value="3300"`}},
		{name: "by their whole name too", before: []*http.Request{post("/edit", "path", "/vehicle/plate/gross", "value", "3,3 tonnes", "base", "1")},
			request: get("/weight"), status: 200, holds: []string{`value="3300"`}},
		{name: "a length in tonnes is none", request: post("/edit", "path", "/vehicle/wheelbase", "value", "3.3 t", "base", "1", "back", "/weight"), status: http.StatusUnprocessableEntity, holds: []string{`value="3.3 t"`}},
		{name: "a point before three digits of millimetres may part thousands, and is asked about", request: post("/edit", "path", "/vehicle/wheelbase", "value", "3.350", "base", "1", "back", "/weight"),
			status: http.StatusUnprocessableEntity, holds: []string{`value="3.350"`, "3.350 can be 3.35 mm or 3350 mm. Perhaps 3350 or 3.35 mm?"}},
		{name: "so it is of a thing's place", request: post("/edit", "path", "/fittings/table/size/x", "value", "1.200", "base", "1", "back", "/arrangement"),
			status: http.StatusUnprocessableEntity, holds: []string{"1.200 can be 1.2 mm or 1200 mm. Perhaps 1200 or 1.2 mm?"}},
		{name: "with its unit it is no question", before: []*http.Request{post("/edit", "path", "/vehicle/wheelbase", "value", "3.350 m", "base", "1")},
			request: get("/weight"), status: 200, holds: []string{`value="3350"`}},
		{name: "nor is a mass", before: []*http.Request{post("/edit", "path", "/people/tall/mass", "value", "84.125", "base", "1")}, request: get("/weight"), status: 200, holds: []string{`value="84.125"`}},
		{name: "nor a name", before: []*http.Request{post("/edit", "path", "/build/title", "value", "1.200", "base", "1")}, request: get("/weight"), status: 200, holds: []string{"1.200"}},
		{name: "a name keeps its comma", before: []*http.Request{post("/edit", "path", "/build/title", "value", "3,5 m of van", "path", "/vehicle/wheelbase", "value", "3,36 m", "base", "1")},
			request: get("/weight"), status: 200, holds: []string{"3,5 m of van", `value="3360"`}},
		{name: "a value out of its range is refused", request: post("/edit", "path", "/vehicle/wheelbase", "value", "33500", "base", "1", "back", "/weight"),
			status: http.StatusUnprocessableEntity, holds: []string{`value="33500"`, `role="alert"`}},
		{name: "one wrong value of several keeps all that was typed, and nothing is saved",
			request: post("/edit", "path", "/vehicle/overhang/front", "value", "940", "path", "/vehicle/width", "value", "wide", "base", "1", "back", "/weight"),
			status:  http.StatusUnprocessableEntity, holds: []string{`value="940"`, `value="wide"`, `data-revision="1"`}},
		{name: "a reading in a list is changed alone", before: []*http.Request{post("/edit", "path", "/shell/offsets/stations/s2/half/3", "value", "930", "base", "1")},
			request: get("/shell"), status: 200, holds: []string{`value="930"`, `value="939"`, "half widths, 4 from below: 934 → 930"}},
		{name: "an empty value takes away what is there", before: []*http.Request{post("/edit", "path", "/vehicle/roof-limit", "value", "", "base", "1")},
			request: get("/weight"), status: 200, holds: []string{"Roof limit taken out"}},
		{name: "a value that must be there cannot be taken away", request: post("/edit", "path", "/vehicle/wheelbase", "value", "", "base", "1", "back", "/weight"),
			status: http.StatusUnprocessableEntity, holds: []string{"is missing"}},
		{name: "a list of words is written as a person does",
			before:  []*http.Request{post("/edit", "path", "/vehicle/cases/finished-dry/people", "list", "/vehicle/cases/finished-dry/people", "value", "tall, small", "base", "1")},
			request: get("/weight"), status: 200, holds: []string{`value="tall, small"`}},
		{name: "a layer is laid over the others", before: []*http.Request{post("/edit", "path", "/lining/floor/-/lay", "value", "carpet-4way", "base", "1")},
			request: get("/build-up"), status: 200, holds: []string{`value="/lining/floor/4/lay"`}},
		{name: "a layer is taken off", before: []*http.Request{post("/edit", "path", "/lining/floor/3", "value", "", "base", "1")},
			request: get("/build-up"), status: 200, lacks: []string{`value="/lining/floor/3/lay"`, "Linoleum"}},
		{name: "a guess is written with its spread", before: []*http.Request{post("/edit", "path", "/people/tall/mass", "value", "84 ± 3", "base", "1")},
			request: get("/weight"), status: 200, holds: []string{`value="84 ± 3"`}},
		{name: "a value as it stands changes nothing and is no failure", before: []*http.Request{post("/edit", "path", "/vehicle/wheelbase", "value", "3350", "base", "1")},
			request: get("/weight"), status: 200, holds: []string{`data-revision="1"`}},
		{name: "a form that does not say for which revision is refused", request: post("/edit", "path", "/vehicle/wheelbase", "value", "3360"), status: http.StatusBadRequest},
		{name: "a form of a revision that there never was is refused", request: post("/edit", "path", "/vehicle/wheelbase", "value", "3360", "base", "900"), status: http.StatusNotFound},
		{name: "a proposal is applied as a patch", before: []*http.Request{post("/edit", "patch", `{"vehicle": {"cases": {"waste-full": {"fill": {"waste-can": "50 %"}}}}}`, "words", "travel with the waste can half full", "base", "1")},
			request: get("/revisions"), status: 200, holds: []string{"Travel with the waste can half full"}},
		{name: "a panel of other watts than the catalogue's has those of its label", before: []*http.Request{post("/edit", "path", "/catalogue/solar-rigid-180w/watts", "value", "120", "base", "1")},
			request: get("/power"), status: 200, holds: []string{`name="path" value="/catalogue/solar-rigid-180w/watts"`, `value="120"`, "gives in full light 120 W so far"}},
		{name: "and so has a battery of other ampere-hours", before: []*http.Request{post("/edit", "path", "/catalogue/battery-lfp-100ah/amp-hours", "value", "90", "base", "1")},
			request: get("/power"), status: 200, holds: []string{`name="path" value="/catalogue/battery-lfp-100ah/amp-hours"`, "holds 90 Ah so far"}},
		{name: "a label that says nonsense is refused beside its field", request: post("/edit", "path", "/catalogue/battery-lfp-100ah/amp-hours", "value", "many", "base", "1", "back", "/power"),
			status: http.StatusUnprocessableEntity, holds: []string{`value="many"`, `aria-invalid="true"`}},
		{name: "a vehicle of 24 V is said on the page of power", before: []*http.Request{post("/edit", "path", "/vehicle/volts", "value", "24", "base", "1")},
			request: get("/power"), status: 200, holds: []string{`<option value="24" selected>`}},
		{name: "what is rounded stands as it was worked out beside its working", request: get("/how/power.autonomy"), status: 200, holds: []string{"Rounded for reading; worked out, it is "}},
		{name: "an unknown place is refused in words", request: post("/edit", "path", "/vehicle/wings", "value", "2", "base", "1", "back", "/weight"), status: http.StatusUnprocessableEntity,
			holds: []string{"Nothing was saved", "nknown key"}},
	})
}

func TestTwoPeopleAtOnce(t *testing.T) {
	first := func() []*http.Request {
		return []*http.Request{post("/edit", "path", "/vehicle/wheelbase", "value", "3360", "base", "1")}
	}
	run(t, dipper, []scenario{
		{name: "changes of different things both hold", before: first(), request: post("/edit", "path", "/vehicle/width", "value", "1980", "base", "1", "back", "/weight"), status: http.StatusSeeOther, location: "/weight"},
		{name: "changes of the same thing show both values and save nothing", before: first(),
			request: post("/edit", "path", "/vehicle/wheelbase", "value", "3370", "base", "1", "back", "/weight"), status: http.StatusConflict,
			holds: []string{"Somebody else changed the same thing", "<b>3360</b>", "<b>3370</b>", "take mine", `name="base" value="2-`, `data-revision="2"`}},
		{name: "a page older than the build that sends a value as it was says who changed it", before: first(),
			request: post("/edit", "path", "/vehicle/wheelbase", "value", "3350", "base", "1", "back", "/weight"), status: http.StatusConflict,
			holds: []string{"Somebody else changed the same thing", "<b>3360</b>", "<b>3350</b>", "take mine", `data-revision="2"`}},
		{name: "a page older than the build that sends what is saved is no clash", before: first(),
			request: post("/edit", "path", "/vehicle/wheelbase", "value", "3360", "base", "1", "back", "/weight"), status: http.StatusSeeOther, location: "/weight"},
		{name: "taking mine then holds", before: append(first(), post("/edit", "path", "/vehicle/wheelbase", "value", "3370", "base", "2")), request: get("/weight"), status: 200, holds: []string{`value="3370"`}},
		{name: "script is told both values", before: first(), request: with(post("/edit", "path", "/vehicle/wheelbase", "value", "3370", "base", "1"), byScript), status: http.StatusConflict,
			holds: []string{`"place":"/vehicle/wheelbase"`, `"mine":"3370"`, `"theirs":"3360"`, `"revision":2`}},
	})
}

func byScript(r *http.Request) { r.Header.Set("X-Tumblehome", "1") }

func TestEditsOfScript(t *testing.T) {
	run(t, dipper, []scenario{
		{name: "a drag is one revision with its words", request: postJSON("/edit", `{"revision": 1, "mode": "day", "moves": [{"fitting": "dry-locker", "dx": -50, "dy": 0, "dz": 0, "turn": 0}]}`), status: 200,
			holds: []string{`"revision":2`, `"sentence":"Dry locker 50 mm forwards`}},
		{name: "a form by script is answered with JSON", request: with(post("/edit", "path", "/people/tall/mass", "value", "90", "base", "1"), byScript), status: 200,
			holds: []string{`"revision":2`, "Tall, mass: 84 → 90"}},
		{name: "a refusal by script names the wrong value", request: with(post("/edit", "path", "/people/tall/mass", "value", "heavy", "base", "1"), byScript), status: http.StatusUnprocessableEntity,
			holds: []string{`"wrong":{"/people/tall/mass":`}},
		{name: "a fitting that is not there cannot be dragged", request: postJSON("/edit", `{"revision": 1, "moves": [{"fitting": "piano", "dx": 5}]}`), status: http.StatusBadRequest, holds: []string{"message"}},
		{name: "a drag beyond any van is refused", request: postJSON("/edit", `{"revision": 1, "moves": [{"fitting": "galley", "dx": 1e300}]}`), status: http.StatusBadRequest},
		{name: "what is no JSON is refused", request: postJSON("/edit", `{"revision": `), status: http.StatusBadRequest},
		{name: "an unknown wish is refused", request: postJSON("/edit", `{"revision": 1, "shout": true}`), status: http.StatusBadRequest},
		{name: "a patch that breaks a rule is refused", request: postJSON("/edit", `{"revision": 1, "patch": {"vehicle": {"wheelbase": null}}}`), status: http.StatusUnprocessableEntity, holds: []string{"missing"}},
	})
}

func TestATurnSaysWhoseLengthIsWrittenDown(t *testing.T) {
	w := open(t, dipper)
	got := w.answer(postJSON("/preview", `{"revision": 1, "mode": "day", "moves": [{"fitting": "settle", "turn": 90}]}`))
	if want := `turned by 90°; kept as they were and written down: settle 1 900 mm long: `; !strings.Contains(got.Body.String(), strings.ReplaceAll(want, `\u00a0`, "\u00a0")) {
		t.Errorf("%d: it says %.300s", got.Code, got.Body)
	}
}

func TestAPreviewSavesNothing(t *testing.T) {
	w := open(t, dipper)
	got := w.answer(postJSON("/preview", `{"revision": 1, "mode": "day", "moves": [{"fitting": "galley", "dx": 1000, "dy": 0, "dz": 0, "turn": 0}]}`))
	var said struct {
		Revision int
		Figures  []struct {
			Code, Words string
			From, To    float64
		}
		Appeared []struct{ Severity, Title string }
		Sentence string
		Fouls    []string
	}
	if err := json.Unmarshal(got.Body.Bytes(), &said); err != nil || got.Code != 200 {
		t.Fatalf("%d %v: %s", got.Code, err, got.Body)
	}
	// 31 kg and what stands in it move 1000 mm rearwards on a wheelbase of 3350 mm: R = m·Δx/L.
	moved := false
	for _, f := range said.Figures {
		if f.Code == "weight.rear-axle" {
			moved = true
			if by := f.To - f.From; by < 31*1000/3350. || by > 40 {
				t.Errorf("the rear axle moves by %.1f kg", by)
			}
		}
	}
	if !moved || !strings.HasPrefix(said.Sentence, "Galley 1\u00a0000 mm rearwards: on the rear axle +") {
		t.Errorf("it says %q of %+v", said.Sentence, said.Figures)
	}
	if len(said.Fouls) == 0 {
		t.Error("the galley stands in the settle and nobody says so")
	}
	if revision, _ := w.store.Head(); revision.N != 1 || said.Revision != 1 {
		t.Errorf("a preview was saved as revision %d", revision.N)
	}
}

func TestAPressOnACushionMeansWhatItLiesOn(t *testing.T) {
	w := open(t, dipper)
	page := w.answer(get("/arrangement?mode=day")).Body.String()
	if !strings.Contains(page, `data-fitting="pullout" data-name="pull-out bed" data-bed="settle"`) {
		t.Error("the pull-out bed does not lie on the settle")
	}
	if strings.Contains(page, `data-bed="board"`) {
		t.Error("what is small on a board is said to hide it")
	}
}

func TestFittings(t *testing.T) {
	back := "/arrangement?mode=day"
	run(t, dipper, []scenario{
		{name: "a nudge moves it and keeps the builder's words", before: []*http.Request{post("/fittings/galley/nudge", "step", "x 10", "base", "1")},
			request: get("/arrangement?open=/fittings/galley"), status: 200, holds: []string{`name="value" value="50"`, `value="right"`, "Galley 10 mm rearwards"}},
		{name: "a nudge by axis and length does too", request: post("/fittings/galley/nudge", "axis", "x", "by", "-10", "base", "1", "back", back), status: http.StatusSeeOther, location: back},
		{name: "a move is told in whole millimetres", before: []*http.Request{post("/fittings/dry-locker/nudge", "axis", "x", "by", "-57.4", "base", "1")}, request: get("/arrangement"), status: 200,
			holds: []string{"Dry locker 57 mm forwards"}},
		{name: "a nudge turns", before: []*http.Request{post("/fittings/table/nudge", "step", "turn 90", "base", "1")}, request: get("/arrangement?open=/fittings/table"), status: 200, holds: []string{`value="90°"`}},
		{name: "a nudge to nowhere is refused", request: post("/fittings/galley/nudge", "step", "w 10", "base", "1"), status: http.StatusBadRequest},
		{name: "another one like it stands behind it", before: []*http.Request{post("/fittings/dry-locker/duplicate", "base", "1")}, request: get("/arrangement?open=/fittings/dry-locker"), status: 200,
			holds: []string{`data-fitting="dry-locker-2"`, "Another one like dry locker"}},
		{name: "nothing hangs on the table: it goes", request: post("/fittings/toilet/delete", "base", "1", "back", back), status: http.StatusUnprocessableEntity,
			holds: []string{"still wanted elsewhere", "take out all of it"}},
		{name: "what carries others is not taken out without asking", request: post("/fittings/galley/delete", "base", "1", "back", back), status: http.StatusUnprocessableEntity,
			holds: []string{"Galley is still wanted elsewhere", "Goes with it", "Stays where it stands now", "take out all of it", `name="with" value="yes"`}},
		{name: "with what hangs on it, it goes", before: []*http.Request{post("/fittings/galley/delete", "base", "1", "with", "yes")}, request: get("/arrangement"), status: 200,
			lacks: []string{`data-fitting="galley"`, `data-fitting="hob"`}, holds: []string{`data-fitting="settle"`, "Taken out: galley, with what hangs on it"}},
		{name: "script is told that it can be taken out with all of it", request: with(post("/fittings/galley/delete", "base", "1"), byScript), status: http.StatusUnprocessableEntity, holds: []string{`"held":true`}},
		{name: "words lead to offers to make and to buy", request: get("/add?words=galley%2C+about+1+m"), status: 200, holds: []string{"put in", `name="make" value="carcass"`, "1000 ×"}},
		{name: "words that mean nothing say so", request: get("/add?words=zeppelin"), status: 200, holds: []string{"Nothing is known by these words"}},
		{name: "a form of words alone shows the offers", request: post("/fittings/add", "words", "locker", "base", "1"), status: 200, holds: []string{"put in"}},
		{name: "a chosen thing is put in", before: []*http.Request{post("/fittings/add", "words", "locker", "make", "locker", "base", "1")}, request: get("/arrangement"), status: 200,
			holds: []string{`data-fitting="locker"`, "Added:"}},
		{name: "a bought thing is put in", before: []*http.Request{post("/fittings/add", "words", "pump", "buy", "pump-submersible-12v", "base", "1")}, request: get("/arrangement"), status: 200,
			holds: []string{`data-fitting="pump-2"`}},
	})
}

func TestHistory(t *testing.T) {
	edit := func() *http.Request { return post("/edit", "path", "/people/tall/mass", "value", "90", "base", "1") }
	run(t, dipper, []scenario{
		{name: "nothing to undo is said, not failed", request: post("/undo", "base", "1", "back", "/weight"), status: http.StatusUnprocessableEntity, holds: []string{"There is nothing to undo"}},
		{name: "undo brings the old value back as a new revision", before: []*http.Request{edit(), post("/undo", "base", "2")}, request: get("/weight"), status: 200,
			holds: []string{`value="84"`, `data-revision="3"`}},
		{name: "redo brings the new one back", before: []*http.Request{edit(), post("/undo", "base", "2"), post("/redo", "base", "3")}, request: get("/weight"), status: 200,
			holds: []string{`value="90"`, `data-revision="4"`}},
		{name: "a change shows what it moved", before: []*http.Request{edit()}, request: get("/revisions/2"), status: 200, holds: []string{"On the front axle", "→", "Tall, mass: 84 → 90"}, lacks: forbidden},
		{name: "the build can be made again what it was", before: []*http.Request{edit()}, request: get("/revisions/1"), status: 200, holds: []string{"make it as it was then"}},
		{name: "an old revision can be brought back", before: []*http.Request{edit(), post("/revisions/1/restore", "base", "2")}, request: get("/weight"), status: 200, holds: []string{`value="84"`, `data-revision="3"`}},
		{name: "a revision that never was is not found", request: get("/revisions/77"), status: http.StatusNotFound},
		{name: "an alternative is taken, the others stay", before: []*http.Request{post("/alternatives/thinner-settle/take", "base", "1")}, request: get("/revisions"), status: 200,
			holds: []string{"Taken: thinner settle", "no toilet"}, lacks: []string{`href="/alternatives/thinner-settle"`}},
	})
}
