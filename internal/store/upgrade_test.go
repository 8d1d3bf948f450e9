package store_test

import (
	"bytes"
	"context"
	"database/sql"
	"fmt"
	"slices"
	"strings"
	"testing"

	"tumblehome/internal/store"
)

// The file testdata/format-1.tumblehome was written by the version of the program that first had a file: 58 edits that make the settle
// 600 to 657 mm wide, with undos and redos between, 68 revisions in all, and one photo.
const (
	oldRevisions = 68
	oldWidth     = "y: 657"
)

func (s *shed) old(name string) []byte {
	s.Helper()
	content := bytesOf(s, "testdata/format-1.tumblehome")
	writeFile(s, s.path(name), content)
	return content
}

// wantOld wants all that was in the old file.
func wantOld(t testing.TB, kept *store.Store) {
	t.Helper()
	head, _ := kept.Head()
	if head.N != oldRevisions || !strings.Contains(text(kept), oldWidth) || head.Words != "settle 657 mm wide" {
		t.Errorf("the head is %d %q", head.N, head.Words)
	}
	if got := textAt(t, kept, 30); !strings.Contains(got, "y: 625") {
		t.Errorf("revision 30 reads\n%s", got)
	}
	photos, err := kept.Attachments(context.Background())
	if err != nil || len(photos) != 1 {
		t.Fatalf("%d photos, %v", len(photos), err)
	}
	a, err := kept.Attachment(context.Background(), photos[0].ID)
	if err != nil || string(a.Content) != strings.Repeat("a photo of the rear seam. ", 400) || a.Name != "seam.jpg" {
		t.Errorf("the photo: %q, %d bytes, %v", a.Name, len(a.Content), err)
	}
}

// history is the table of revisions, letter for letter.
func history(t testing.TB, path string) string {
	t.Helper()
	db, err := sql.Open("sqlite", "file:"+path+"?mode=ro")
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	var all string
	if err := db.QueryRow("SELECT group_concat(n || parent || made || kind || words || maker || patch || inverse, char(10)) FROM (SELECT n, coalesce(parent, '') parent, made, kind, words, maker, patch, inverse FROM revision ORDER BY n)").Scan(&all); err != nil {
		t.Fatal(err)
	}
	return all
}

func TestAnOlderFormatIsBroughtUpToDateAndACopyKept(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	old := s.old("wherry.tumblehome")
	kept := s.open("wherry.tumblehome")
	wantOld(t, kept)
	if format, err := kept.Ask(true, "PRAGMA user_version"); err != nil || format != fmt.Sprint(store.Newest()) {
		t.Errorf("the format is %s, %v", format, err)
	}
	copied := s.path("wherry-format-1.tumblehome")
	if kept.KeptCopy() != copied {
		t.Errorf("the copy is %q, want %q", kept.KeptCopy(), copied)
	}
	widen(t, kept, 1)
	if r, err := kept.Undo(context.Background(), "tall"); err != nil || r.N != oldRevisions+2 {
		t.Errorf("undo: %v", err)
	}
	kept.Close()
	writeFile(t, s.path("original.tumblehome"), old)
	if history(t, copied) != history(t, s.path("original.tumblehome")) {
		t.Error("the copy does not hold what the old file held")
	}
	again := s.open("wherry-format-1.tumblehome") // the copy can be opened itself
	wantOld(t, again)
	if again := s.open("wherry.tumblehome"); again.KeptCopy() != "" {
		t.Errorf("opened for the second time it kept a copy %q", again.KeptCopy())
	}
}

func TestAnOlderFormatThatIsDamagedIsNotBroughtUpToDate(t *testing.T) {
	t.Parallel()
	t.Run("in a page of its photo", func(t *testing.T) {
		s := newShed(t)
		old := s.old("wherry.tumblehome")
		at := bytes.Index(old, []byte("rear seam. a photo of the"))
		clear(old[at/pageSize*pageSize : (at/pageSize+1)*pageSize])
		writeFile(t, s.path("wherry.tumblehome"), old)
		s.refuses("wherry.tumblehome", store.ErrDamaged)
		if string(bytesOf(t, s.path("wherry.tumblehome"))) != string(old) {
			t.Error("the refused file was written to")
		}
	})
	for _, statement := range []string{
		"UPDATE revision SET patch = '{' WHERE n = 50",
		"DELETE FROM whole WHERE n = 1",
		"PRAGMA foreign_keys = 0; DELETE FROM revision WHERE n = 40",
		"UPDATE whole SET document = 'x: [' WHERE n = 1",
	} {
		s := newShed(t)
		s.old("wherry.tumblehome")
		tamper(t, s.path("wherry.tumblehome"), statement)
		before := history(t, s.path("wherry.tumblehome"))
		s.refuses("wherry.tumblehome", store.ErrDamaged)
		if history(t, s.path("wherry.tumblehome")) != before {
			t.Error("the history has changed")
		}
	}
}

func TestAnOlderFormatWhileSomebodyElseHasItOpenIsLeftAlone(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	s.old("wherry.tumblehome")
	letGo := hold(t, s.path("wherry.tumblehome"), "SELECT count(*) FROM revision") // an older program that is only open
	before := history(t, s.path("wherry.tumblehome"))
	s.refuses("wherry.tumblehome", store.ErrBusy, "was not brought up to date")
	if history(t, s.path("wherry.tumblehome")) != before {
		t.Error("the history has changed")
	}
	letGo()
	wantOld(t, s.open("wherry.tumblehome"))
}

// TestThePowerFailsInTheMiddleOfAnUpgrade cuts the log of the upgrade at every frame and inside frames.
func TestThePowerFailsInTheMiddleOfAnUpgrade(t *testing.T) {
	notShort(t)
	t.Parallel()
	s := newShed(t)
	old := s.old("wherry.tumblehome")
	stop, err := store.MigrateAndStop(s.path("wherry.tumblehome"), s.options())
	if err != nil {
		t.Fatal(err)
	}
	file, log := bytesOf(t, s.path("wherry.tumblehome")), bytesOf(t, s.path("wherry.tumblehome-wal"))
	if string(file) != string(old) || len(log) < 10*frame {
		t.Fatalf("the log has %d bytes; the file is the old one: %v", len(log), string(file) == string(old))
	}
	if err := stop(); err != nil {
		t.Fatal(err)
	}
	upgraded := 0
	for k := range (len(log)-logHeader)/frame + 1 {
		for _, more := range []int{0, frameHeader, frame - 1} {
			cut := logHeader + k*frame + more
			if cut > len(log) {
				continue
			}
			name := fmt.Sprintf("cut-%d.tumblehome", cut)
			writeFile(t, s.path(name), file)
			writeFile(t, s.path(name+"-wal"), slices.Clone(log[:cut]))
			kept := s.open(name)
			wantOld(t, kept)
			if kept.KeptCopy() == "" {
				upgraded++ // it was whole already
			}
			kept.Close()
		}
	}
	if upgraded != 1 {
		t.Errorf("%d cuts had the whole upgrade in them, want the last one", upgraded)
	}
}
