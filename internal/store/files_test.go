package store_test

import (
	"bytes"
	"context"
	"database/sql"
	"encoding/binary"
	"errors"
	"fmt"
	"io/fs"
	"math/rand/v2"
	"os"
	"strings"
	"testing"

	"tumblehome/build/tree"
	"tumblehome/internal/store"
)

// foreign makes a database of another program.
func foreign(t testing.TB, path, pragma string) {
	t.Helper()
	db, err := sql.Open("sqlite", "file:"+path)
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	if _, err := db.Exec(pragma + "; CREATE TABLE stamps (country TEXT); INSERT INTO stamps VALUES ('Ruritania')"); err != nil {
		t.Fatal(err)
	}
}

// sealed makes a build of a number of revisions and closes it, so that all of it is in the one file.
func (s *shed) sealed(name string, revisions int) {
	s.Helper()
	kept := s.begin(name)
	widen(s, kept, revisions-1)
	if err := kept.Close(); err != nil {
		s.Fatal(err)
	}
}

func TestWhatIsNoBuildIsLeftAsItIs(t *testing.T) {
	t.Parallel()
	write := func(content string) func(*shed, string) {
		return func(s *shed, path string) { writeFile(s, path, []byte(content)) }
	}
	for _, c := range []struct {
		says   string
		make   func(s *shed, path string)
		kind   error
		pieces []string
	}{
		{"there is nothing", func(*shed, string) {}, fs.ErrNotExist, []string{"There is no file"}},
		{"a folder", func(s *shed, path string) { os.Mkdir(path, 0o700) }, store.ErrForeign, []string{"is a folder"}},
		{"an empty file", write(""), store.ErrForeign, []string{"is empty", "restore a backup"}},
		{"a single letter", write("x"), store.ErrForeign, []string{"no build's own file"}},
		{"a document", write("tumblehome: 1\nbuild: {title: Wherry}\n" + strings.Repeat("# a remark\n", 100)), store.ErrForeign, []string{"import it"}},
		{"a long letter", write(strings.Repeat("Dear Sir or Madam, ", 9999)), store.ErrForeign, []string{"no build's own file"}},
		{"noughts", write(strings.Repeat("\x00", 40960)), store.ErrForeign, []string{"no build's own file"}},
		{"another program's database", func(s *shed, path string) { foreign(s, path, "PRAGMA user_version = 1") }, store.ErrForeign, []string{"another program"}},
		{"another program's database with a log of its own", func(s *shed, path string) { foreign(s, path, "PRAGMA journal_mode = WAL") }, store.ErrForeign, []string{"another program"}},
		{"a build in which somebody has hidden a trigger", func(s *shed, path string) {
			s.sealed("wherry.tumblehome", 2)
			foreign(s, path, "CREATE TRIGGER sly AFTER INSERT ON revision BEGIN DELETE FROM whole; END")
		}, store.ErrForeign, []string{"tampered"}},
		{"a newer format", func(s *shed, path string) {
			s.sealed("wherry.tumblehome", 2)
			foreign(s, path, fmt.Sprintf("PRAGMA user_version = %d", store.Newest()+1))
		}, store.ErrNewer, []string{"newer version", "Open it with that version"}},
	} {
		t.Run(c.says, func(t *testing.T) {
			s := newShed(t)
			path := s.path("wherry.tumblehome")
			c.make(s, path)
			before := snapshot(t, s.folder)
			s.refuses("wherry.tumblehome", c.kind, c.pieces...)
			wantSame(t, s.folder, before)
		})
	}
}

// snapshot is the name and content of every file in a folder.
func snapshot(t testing.TB, folder string) map[string]string {
	t.Helper()
	out := map[string]string{}
	for _, name := range files(t, folder) {
		if content, err := os.ReadFile(folder + "/" + name); err == nil {
			out[name] = string(content)
		}
	}
	return out
}

// wantSame wants the files of a folder unchanged; SQLite's index of a log (-shm) holds nothing and does not count, nor does an empty log.
func wantSame(t testing.TB, folder string, before map[string]string) {
	t.Helper()
	after := snapshot(t, folder)
	for _, side := range []map[string]string{before, after} {
		for name, content := range side {
			if strings.HasSuffix(name, "-shm") || strings.HasSuffix(name, "-wal") && content == "" {
				continue
			}
			if before[name] != after[name] {
				t.Errorf("%s has changed: %d bytes before, %d after", name, len(before[name]), len(after[name]))
			}
		}
	}
}

func TestATruncatedFileIsRefusedAndLeftAsItIs(t *testing.T) {
	notShort(t)
	t.Parallel()
	s := newShed(t)
	s.sealed("whole.tumblehome", 60)
	whole := bytesOf(t, s.path("whole.tumblehome"))
	for size := 1; size < len(whole); size += 1 + size/3 {
		writeFile(t, s.path("cut.tumblehome"), whole[:size])
		before := snapshot(t, s.folder)
		opened, err := store.Open(context.Background(), s.path("cut.tumblehome"), s.options())
		if err == nil {
			opened.Close()
			t.Errorf("%d of %d bytes opened", size, len(whole))
		} else if !errors.Is(err, store.ErrDamaged) && !errors.Is(err, store.ErrForeign) {
			t.Errorf("%d of %d bytes: %v", size, len(whole), err)
		}
		wantSame(t, s.folder, before)
	}
}

// TestAFlippedBitNeverMakesAnotherBuild changes single bits all over a file. Either the file is refused, and then it is left as it is,
// or all that it says is what was saved.
func TestAFlippedBitNeverMakesAnotherBuild(t *testing.T) {
	notShort(t)
	t.Parallel()
	s := newShed(t)
	kept := s.begin("whole.tumblehome")
	widen(t, kept, 59)
	want := text(kept)
	id, err := kept.Attach(context.Background(), "seam.jpg", "image/jpeg", strings.NewReader(strings.Repeat("rear seam ", 2000)))
	if err != nil {
		t.Fatal(err)
	}
	kept.Close()
	whole := bytesOf(t, s.path("whole.tumblehome"))
	dice := rand.New(rand.NewPCG(11, 4))
	tries, refused := 250, 0
	for i := range tries {
		at := dice.IntN(len(whole))
		if i%3 == 0 {
			at = i / 3 % 100 // the header
		}
		bit := byte(1) << dice.IntN(8)
		whole[at] ^= bit
		writeFile(t, s.path("bent.tumblehome"), whole)
		opened, err := store.Open(context.Background(), s.path("bent.tumblehome"), s.options())
		if err != nil {
			refused++
			wantKind(t, at, err, store.ErrDamaged, store.ErrForeign, store.ErrNewer)
			if string(bytesOf(t, s.path("bent.tumblehome"))) != string(whole) {
				t.Errorf("byte %d: the refused file was written to", at)
			}
		} else {
			if text(opened) != want {
				t.Errorf("byte %d, bit %08b: the build reads differently", at, bit)
			}
			if a, err := opened.Attachment(context.Background(), id); err == nil && (a.Name != "seam.jpg" || len(a.Content) != 20000) {
				t.Errorf("byte %d: the photo reads differently", at)
			} else if err != nil {
				refused++
				wantKind(t, at, err, store.ErrDamaged, store.ErrNoAttachment)
			}
			for n := range 60 {
				if r, err := opened.Revisions(context.Background(), n+2, 1); err != nil || r[0].N != n+1 {
					t.Errorf("byte %d: revision %d: %v", at, n+1, err)
				}
			}
			opened.Close()
		}
		for _, name := range files(t, s.folder) {
			if strings.HasPrefix(name, "bent") {
				os.Remove(s.path(name))
			}
		}
		whole[at] ^= bit
	}
	t.Logf("%d of %d flipped bits were found; the others lie where nothing is kept", refused, tries)
	if refused < tries/3 {
		t.Errorf("only %d of %d flipped bits were found", refused, tries)
	}
}

func wantKind(t *testing.T, at int, err error, kinds ...error) {
	t.Helper()
	for _, kind := range kinds {
		if errors.Is(err, kind) {
			return
		}
	}
	t.Errorf("byte %d: %v is none of %v", at, err, kinds)
}

func TestADamagedPageIsFoundWhenTheBuildIsOpened(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	if _, err := kept.Attach(context.Background(), "seam.jpg", "image/jpeg", bytes.NewReader(photo(1, 100_000))); err != nil {
		t.Fatal(err)
	}
	kept.Close()
	whole := bytesOf(t, s.path("wherry.tumblehome"))
	clear(whole[len(whole)-3*pageSize : len(whole)-2*pageSize]) // the photo's: no seal of the history is broken
	writeFile(t, s.path("wherry.tumblehome"), whole)
	s.refuses("wherry.tumblehome", store.ErrDamaged, "restore a backup and keep this file")
	if string(bytesOf(t, s.path("wherry.tumblehome"))) != string(whole) {
		t.Error("the refused file was written to")
	}
}

func TestADocumentThatBreaksALaterRuleIsKeptAndCanBeWrittenOut(t *testing.T) {
	t.Parallel()
	ctx := context.Background()
	s := newShed(t)
	s.sealed("wherry.tumblehome", 3)
	path := s.path("wherry.tumblehome")
	if err := store.BreakRules(path, tree.Setting("/build/sail-number", tree.Plain("1234")), s.options()); err != nil {
		t.Fatal(err)
	}
	before := snapshot(t, s.folder)
	_, err := store.Open(ctx, path, s.options())
	if !errors.Is(err, store.ErrUnfit) || !strings.Contains(err.Error(), "The build is whole") || !strings.Contains(err.Error(), "export --as-kept") || !strings.Contains(err.Error(), "sail-number") {
		t.Errorf("opening: %v", err)
	}
	written, err := store.AsKept(ctx, path, s.options())
	if err != nil || !strings.Contains(string(written), "sail-number: 1234") {
		t.Errorf("written out it reads %v\n%s", err, written)
	}
	report, err := store.Verify(ctx, path, s.options())
	if err != nil || report.Unfit == nil || report.Revisions != 4 {
		t.Errorf("verified: %+v, %v", report, err)
	}
	wantSame(t, s.folder, before)
	if b := s.backUp("wherry.tumblehome", 3); b.Revision != 4 {
		t.Errorf("the backup is %+v", b)
	}
}

func TestATamperedHistoryIsRefused(t *testing.T) {
	notShort(t)
	t.Parallel()
	for _, c := range []struct{ says, statement string }{
		{"a word is changed", "UPDATE revision SET words = 'nothing' WHERE n = 3"},
		{"a value is changed", "UPDATE revision SET patch = replace(patch, '5', '6') WHERE n = 55"},
		{"the way back is changed", "UPDATE revision SET inverse = '{}' WHERE n = 5"},
		{"the last revision is gone", "DELETE FROM whole WHERE n = 51; DELETE FROM seal WHERE n = 60"},
		{"one in the middle is gone", "PRAGMA foreign_keys = 0; DELETE FROM seal WHERE n = 7; DELETE FROM revision WHERE n = 7"},
		{"a whole document is changed", "UPDATE whole SET document = replace(document, 'Wherry', 'Ferry') WHERE n = 51"},
		{"there is nothing left", "PRAGMA foreign_keys = 0; DELETE FROM whole; DELETE FROM seal; DELETE FROM revision"},
		{"a date is no date", "UPDATE revision SET made = 'yesterday' WHERE n = 60"},
	} {
		t.Run(c.says, func(t *testing.T) {
			s := newShed(t)
			s.sealed("wherry.tumblehome", 60)
			tamper(t, s.path("wherry.tumblehome"), c.statement)
			before := snapshot(t, s.folder)
			s.refuses("wherry.tumblehome", store.ErrDamaged, "backup")
			wantSame(t, s.folder, before)
		})
	}
}

func tamper(t testing.TB, path, statement string) {
	t.Helper()
	db, err := sql.Open("sqlite", "file:"+path)
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	if _, err := db.Exec(statement); err != nil {
		t.Fatal(err)
	}
}

func TestTheSettingsAreReallyOn(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	for _, c := range []struct {
		writer       bool
		pragma, want string
	}{
		{true, "journal_mode", "wal"},
		{true, "synchronous", "2"}, // FULL
		{true, "foreign_keys", "1"},
		{true, "busy_timeout", "500"},
		{true, "trusted_schema", "0"},
		{true, "cell_size_check", "1"},
		{true, "locking_mode", "normal"},
		{true, "application_id", fmt.Sprint(0x7468756d)},
		{true, "user_version", fmt.Sprint(store.Newest())},
		{false, "busy_timeout", "500"},
		{false, "trusted_schema", "0"},
	} {
		if got, err := kept.Ask(c.writer, "PRAGMA "+c.pragma); err != nil || got != c.want {
			t.Errorf("%s is %q, want %q (%v)", c.pragma, got, c.want, err)
		}
	}
	if err := kept.Do("INSERT INTO whole (n, document) VALUES (99, '')"); err == nil {
		t.Error("a whole document of no revision was taken: foreign keys are off")
	}
	if loose, err := kept.Ask(true, "SELECT count(*) FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND name NOT LIKE 'sqlite_%' AND NOT strict"); err != nil || loose != "0" {
		t.Errorf("%s tables are not STRICT (%v)", loose, err)
	}
	if tables, err := kept.Ask(true, "SELECT group_concat(name, ' ') FROM (SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name)"); err != nil || tables != "attachment piece revision seal whole" {
		t.Errorf("the tables are %q (%v)", tables, err)
	}
	if _, err := kept.Ask(false, "INSERT INTO whole (n, document) VALUES (1, '') RETURNING n"); err == nil {
		t.Error("a reader could write")
	}
}

func TestTheHeaderMarksTheFileAsOurs(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	s.sealed("wherry.tumblehome", 3)
	header := bytesOf(t, s.path("wherry.tumblehome"))[:100]
	if mark := string(header[68:72]); mark != "thum" { // the application id, SQLite file format 1.2.17
		t.Errorf("the mark is %q", mark)
	}
	if format := binary.BigEndian.Uint32(header[60:64]); int(format) != store.Newest() {
		t.Errorf("the format is %d", format)
	}
}
