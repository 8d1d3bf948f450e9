package web_test

import (
	"net/http"
	"slices"
	"strings"
	"testing"

	"golang.org/x/net/html"
)

// sheetForm is a form as a browser without script would send it.
type sheetForm struct {
	method, action string
	pairs          []string
}

// formsOf reads every form of a page, filled as it stands; a form with several buttons is sent by its first.
func formsOf(t *testing.T, page string) []sheetForm {
	t.Helper()
	root, err := html.Parse(strings.NewReader(page))
	if err != nil {
		t.Fatal(err)
	}
	var all []sheetForm
	each(root, "form", func(n *html.Node) {
		f := sheetForm{method: attribute(n, "method"), action: attribute(n, "action")}
		pressed := false
		each(n, "", func(c *html.Node) {
			name := attribute(c, "name")
			switch {
			case attribute(c, "type") == "checkbox" && !ticked(c):
			case c.Data == "input" && name != "":
				f.pairs = append(f.pairs, name, attribute(c, "value"))
			case c.Data == "textarea":
				f.pairs = append(f.pairs, name, text(c))
			case c.Data == "select":
				f.pairs = append(f.pairs, name, optionOf(c))
			case c.Data == "button" && name != "" && !pressed:
				f.pairs = append(f.pairs, name, attribute(c, "value"))
				pressed = true
			}
		})
		all = append(all, f)
	})
	return all
}

func each(n *html.Node, tag string, do func(*html.Node)) {
	for c := range n.Descendants() {
		if c.Type == html.ElementNode && (tag == "" || c.Data == tag) {
			do(c)
		}
	}
}

// ticked reports whether a box is: an unticked one is not sent.
func ticked(n *html.Node) bool {
	return slices.ContainsFunc(n.Attr, func(a html.Attribute) bool { return a.Key == "checked" })
}

func attribute(n *html.Node, name string) string {
	for _, a := range n.Attr {
		if a.Key == name {
			return a.Val
		}
	}
	return ""
}

func text(n *html.Node) string {
	var b strings.Builder
	for c := range n.Descendants() {
		if c.Type == html.TextNode {
			b.WriteString(c.Data)
		}
	}
	return b.String()
}

// optionOf is the option marked, else the first.
func optionOf(n *html.Node) string {
	var values []string
	marked := -1
	each(n, "option", func(o *html.Node) {
		for _, a := range o.Attr {
			if a.Key == "selected" {
				marked = len(values)
			}
		}
		values = append(values, attribute(o, "value"))
	})
	if len(values) == 0 {
		return ""
	}
	return values[max(marked, 0)]
}

// unfolded is the address of a page with all its fields shown.
func (w *workshop) unfolded(name string) string {
	_, doc := w.store.Head()
	address := "/" + name
	if !strings.Contains(name, "?") {
		address += "?all"
	}
	for id := range doc.Fittings {
		address += "&open=/fittings/" + id
	}
	for id := range doc.Power.Circuits {
		address += "&open=/power/circuits/" + id
	}
	for id := range doc.Power.Sources {
		address += "&open=/power/sources/" + id + "&open=/power/sources/" + id + "/lead"
	}
	return address
}

// What a page shows in a form, sent back untouched, changes nothing: looking and pressing "set" is always safe.
func TestAFormSentAsItStandsChangesNothing(t *testing.T) {
	w := open(t, dipper)
	for _, name := range allPages {
		sent := 0
		for _, f := range formsOf(t, w.answer(get(w.unfolded(name))).Body.String()) {
			if f.action != "/edit" || !strings.Contains(strings.Join(f.pairs, " "), " path ") && f.pairs[0] != "path" || asksForMore(f) {
				continue
			}
			got := w.answer(post(f.action, f.pairs...))
			if got.Code != http.StatusSeeOther {
				t.Errorf("%s: a form answers %d: %q\n%.400s", name, got.Code, f.pairs, got.Body)
			}
			if revision, _ := w.store.Head(); revision.N != 1 {
				t.Fatalf("%s: a form sent as it stands made a change: %s\n%q", name, revision.Words, f.pairs)
			}
			sent++
		}
		if sent == 0 && name != "revisions" {
			t.Errorf("%s has no form", name)
		}
	}
}

// asksForMore tells forms that do something new: add, take out, apply, swap, live with a note.
func asksForMore(f sheetForm) bool {
	for i := 0; i+1 < len(f.pairs); i += 2 {
		name, value := f.pairs[i], f.pairs[i+1]
		if name == "words" || name == "patch" || name == "new" || name == "path" && (strings.Contains(value, "{new}") || strings.HasSuffix(value, "/-/lay") || strings.HasPrefix(value, "/spending/") && strings.Count(value, "/") == 2 || (strings.HasPrefix(value, "/lining/") || strings.HasPrefix(value, "/power/") || strings.HasPrefix(value, "/use/trips/")) && strings.Count(value, "/") == 3 || strings.HasPrefix(value, "/power/sources/") && strings.HasSuffix(value, "/lead")) {
			return true
		}
	}
	return false
}

// Every form of every page is understood by the server, whatever it then says.
func TestEveryFormIsUnderstood(t *testing.T) {
	for _, name := range append([]string{"add?words=bench", "revisions/1", "alternatives/no-toilet"}, allPages...) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			w := open(t, dipper)
			for _, f := range formsOf(t, w.answer(get(w.unfolded(name))).Body.String()) {
				request := get(f.action + "?" + form(f.pairs...))
				if f.method == "post" {
					request = post(f.action, f.pairs...)
				}
				switch got := w.answer(request); got.Code {
				case http.StatusOK, http.StatusSeeOther, http.StatusConflict, http.StatusUnprocessableEntity:
				default:
					// A fitting taken out by an earlier form is not there for a later one.
					if !strings.Contains(got.Body.String(), "there is no ") && !strings.Contains(got.Body.String(), "no place yet") {
						t.Errorf("%s %s answers %d: %.300s\n%q", f.method, f.action, got.Code, got.Body, f.pairs)
					}
				}
			}
		})
	}
}
