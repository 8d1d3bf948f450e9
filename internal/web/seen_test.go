package web_test

import (
	"net/http"
	"testing"
)

// Two people at two browsers: whoever goes back does so only over changes that stood on the page.
func TestNobodyTakesBackWhatTheyHaveNotSeen(t *testing.T) {
	twice := func() []*http.Request {
		return []*http.Request{post("/edit", "path", "/vehicle/wheelbase", "value", "3360", "base", "1"), post("/edit", "path", "/vehicle/width", "value", "1980", "base", "2")}
	}
	run(t, dipper, []scenario{
		{name: "an undo of a page that shows an older revision is refused in words", before: twice(), request: post("/undo", "base", "2", "back", "/weight"),
			status: http.StatusConflict, holds: []string{"since this page was made", `data-revision="3"`}},
		{name: "script is told the same", before: twice(), request: with(post("/undo", "base", "2"), byScript), status: http.StatusConflict, holds: []string{"since this page was made"}},
		{name: "a redo of an older page is refused", before: append(twice(), post("/undo", "base", "3")), request: post("/redo", "base", "3"), status: http.StatusConflict},
		{name: "an undo that does not say what was seen is refused", before: twice(), request: post("/undo"), status: http.StatusBadRequest},
		{name: "no page shows revision 0", before: twice(), request: post("/undo", "base", "0"), status: http.StatusNotFound},
		{name: "the forms of undo and redo say what is seen", before: twice(), request: get("/region/said"), status: 200, holds: []string{`name="base" value="3-`}},
		{name: "an older page does not make the build again as it was", before: twice(), request: post("/revisions/1/restore", "base", "2"), status: http.StatusConflict},
		{name: "the newest page does, whole", before: append(twice(), post("/revisions/1/restore", "base", "3")), request: get("/weight"), status: 200,
			holds: []string{`value="3350"`, `data-revision="4"`}, lacks: []string{`value="1980"`}},
	})
}
