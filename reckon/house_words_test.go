package reckon_test

import (
	"regexp"
	"strings"
	"testing"

	"tumblehome/reckon"
)

// notOnAPage are words that live in files and under "show how", never in a sentence on a page.
var notOnAPage = regexp.MustCompile(`(?i)\b(p50|p80|take-?off|half-?breadths?|stations?|kerf|derat\w*|selectivity|patch|json|pointer|schema|null|nan|inf)\b|%!|\{|\}`)

// joined is a large number whose thousands are not parted, before its unit.
var joined = regexp.MustCompile(`\b\d{4,}(\.\d+)? (mm|kg|l|A|Ah|W|Wh)\b`)

// amiss says what is wrong with a sentence, or is empty.
func amiss(text string) string {
	if word := notOnAPage.FindString(text); word != "" {
		return "has the word " + word
	}
	if number := joined.FindString(text); number != "" {
		return "does not part the thousands of " + number
	}
	if strings.Contains(text, "  ") || strings.TrimSpace(text) != text {
		return "has a blank too many"
	}
	return ""
}

func TestFindingsSpeakTheWordsOfABuilder(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		for _, f := range b.Findings {
			sentences := []string{f.Title, f.Words, f.Caution}
			for _, p := range f.Proposals {
				sentences = append(sentences, p.Words)
			}
			for _, s := range sentences {
				if wrong := amiss(s); wrong != "" {
					t.Errorf("%s %s: %s", f.Code, wrong, s)
				}
			}
			if f.Title == "" || strings.HasSuffix(f.Title, ".") {
				t.Errorf("%s is called %q; a title is one sentence without its full stop", f.Code, f.Title)
			}
			if !strings.HasSuffix(f.Words, ".") && !strings.HasSuffix(f.Words, "?") {
				t.Errorf("%s does not end its words: %q", f.Code, f.Words)
			}
			if f.Source.Text == "" || f.Source.Sure == "" {
				t.Errorf("%s does not say who says so", f.Code)
			}
		}
	})
}

func TestFiguresSpeakTheWordsOfABuilder(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		for _, f := range b.Figures {
			for _, s := range []string{f.Label, f.Words} {
				if wrong := amiss(s); wrong != "" {
					t.Errorf("%s %s: %s", f.Code, wrong, s)
				}
			}
		}
	})
}

func TestExplanationsSpeakTheWordsOfABuilder(t *testing.T) {
	for _, code := range reckon.Codes() {
		e, _ := reckon.Explain(code)
		for _, s := range []string{e.Meaning, e.Why, e.Clear} {
			if wrong := amiss(s); wrong != "" {
				t.Errorf("%s %s: %s", code, wrong, s)
			}
		}
	}
}

func TestAssumptionsSpeakTheWordsOfABuilder(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		for _, s := range b.Places.Assumed {
			if wrong := amiss(s); wrong != "" {
				t.Errorf("an assumption %s: %s", wrong, s)
			}
		}
		for _, f := range b.Figures {
			w, _ := b.Working(f.Code)
			for _, l := range w.Lines {
				if wrong := amiss(l.From.Assumption); wrong != "" {
					t.Errorf("%s, line %q, assumes what %s: %s", f.Code, l.Label, wrong, l.From.Assumption)
				}
			}
		}
	})
}
