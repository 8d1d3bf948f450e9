package web_test

import (
	"net/http"
	"strings"
	"testing"
)

func TestWhatABeginnerLooksForOnTheArrangement(t *testing.T) {
	sits := post("/edit", "path", "/modes/drive/people/tall", "value", `{"sits": "settle"}`, "base", "1")
	run(t, dipper, []scenario{
		{name: "a face can be cut to the lining by a tick", before: []*http.Request{post("/edit", "ticks", "/fittings/galley/scribe", "ticked", "/fittings/galley/scribe left", "ticked", "/fittings/galley/scribe roof", "base", "1")},
			request: get("/arrangement?open=/fittings/galley"), status: 200,
			holds: []string{"cut to follow the lining at", `value="/fittings/galley/scribe left" checked`, `value="/fittings/galley/scribe roof" checked`}},
		{name: "what somebody does is told in a sentence", before: []*http.Request{sits}, request: get("/revisions"), status: 200,
			holds: []string{"sits on settle"}, lacks: []string{"sits: settle"}},
		{name: "nobody cooks while driving", request: get("/arrangement?mode=drive"), status: 200, holds: []string{"in the cab, or nowhere in particular"}, lacks: []string{"cooks at"}},
		{name: "by day somebody may", request: get("/arrangement?mode=day"), status: 200, holds: []string{"cooks at"}},
		{name: "a fault of driving is told of by day, with a way there", before: []*http.Request{sits}, request: get("/arrangement?mode=day"), status: 200,
			holds: []string{"Not all is well in other ways the van stands", `">Drive: 2 faults`}},
		{name: "but not where it is seen", before: []*http.Request{sits}, request: get("/arrangement?mode=drive"), status: 200, lacks: []string{`">Drive: 1 fault`, `">Drive: 2 fault`}},
		{name: "a source is not told twice", request: get("/how/fit.opens"), lacks: []string{"common practice, no source (a habit"}, status: 200},
	})
}

func TestOneLiesOnTheMattressNotOnTheBedBelow(t *testing.T) {
	page := open(t, "../../examples/godwit.yaml").answer(get("/region/mode?mode=drive")).Body.String()
	if bed, mattress := strings.Contains(page, "lies on lowered bed<"), strings.Contains(page, "lies on mattress of the lowered bed<"); bed || !mattress {
		t.Errorf("lying on the bed is offered: %v, on the mattress: %v", bed, mattress)
	}
}

func TestOneDoubtfulReadingIsNotCalledAContradiction(t *testing.T) {
	w := openNew(t)
	one := w.answer(post("/start/tape", "height", "1.9")).Body.String()
	if !strings.Contains(one, "One answer cannot be so") || strings.Contains(one, "go together") {
		t.Errorf("one wrong reading: %s", firstOf(one, "role=\"alert\""))
	}
	two := w.answer(post("/start/tape", "height", "1500", "door-height", "1700")).Body.String()
	if !strings.Contains(two, "These do not go together yet") {
		t.Errorf("two readings: %s", firstOf(two, "role=\"alert\""))
	}
	comma := w.answer(post("/start/tape", "height", "1,935 m")).Body.String()
	if !strings.Contains(comma, "did you mean 1.935 m?<") || strings.Contains(comma, "?.") {
		t.Errorf("a comma: %s", firstOf(comma, "comma"))
	}
}
