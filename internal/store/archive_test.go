package store_test

import (
	"archive/zip"
	"bytes"
	"context"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"tumblehome/internal/store"
)

// packed is the archive of a build with a history, an undo and photos.
func (s *shed) packed() []byte {
	s.Helper()
	kept := s.begin("packed.tumblehome")
	widen(s, kept, 55)
	if _, err := kept.Undo(context.Background(), "small"); err != nil {
		s.Fatal(err)
	}
	e := set(kept, "build.budget", "3100")
	e.Words, e.By = `<budget> & "more" – 予算`, "small"
	save(s, kept, e)
	for i, size := range []int{0, 9, 300_000} {
		if _, err := kept.Attach(context.Background(), fmt.Sprintf("../../photo %d.jpg", i), "image/jpeg", bytes.NewReader(photo(byte(i), size))); err != nil {
			s.Fatal(err)
		}
	}
	var out bytes.Buffer
	if err := store.Pack(context.Background(), s.path("packed.tumblehome"), &out, s.options()); err != nil {
		s.Fatal(err)
	}
	return out.Bytes()
}

func (s *shed) unpack(archive []byte, name string) (store.Report, error) {
	return store.Unpack(context.Background(), bytes.NewReader(archive), int64(len(archive)), s.path(name), s.options())
}

func TestAnArchiveBringsBackAllOfABuild(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	archive := s.packed()
	report, err := s.unpack(archive, "again.tumblehome")
	if err != nil || report.Revisions != 58 || report.Attachments != 3 || report.Bytes != 300_009 {
		t.Fatalf("%+v, %v", report, err)
	}
	if history(t, s.path("again.tumblehome")) != history(t, s.path("packed.tumblehome")) {
		t.Error("the history reads differently")
	}
	var out bytes.Buffer
	if err := store.Pack(context.Background(), s.path("again.tumblehome"), &out, s.options()); err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(out.Bytes(), archive) {
		t.Error("packed again it is another archive")
	}
	kept := s.open("again.tumblehome")
	if r, err := kept.Undo(context.Background(), "tall"); err != nil || !strings.Contains(r.Words, "予算") {
		t.Errorf("undo takes back %q, %v", r.Words, err)
	}
	photos, err := kept.Attachments(context.Background())
	if err != nil || len(photos) != 3 || !strings.HasPrefix(photos[0].Name, "../../photo") {
		t.Errorf("%+v, %v", photos, err)
	}
	if got := files(t, filepath.Dir(s.folder)); len(got) != 1 {
		t.Errorf("outside the folder lie %v", got)
	}
}

// remade is an archive with its pieces changed: what change gives back is written instead, nothing where it is nil.
func remade(t testing.TB, archive []byte, change func(name string, content []byte) []byte, more ...string) []byte {
	t.Helper()
	old, err := zip.NewReader(bytes.NewReader(archive), int64(len(archive)))
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	w := zip.NewWriter(&out)
	put := func(name string, content []byte) {
		piece, err := w.Create(name)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := piece.Write(content); err != nil {
			t.Fatal(err)
		}
	}
	for _, f := range old.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		content, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(err)
		}
		if content = change(f.Name, content); content != nil {
			put(f.Name, content)
		}
	}
	for _, name := range more {
		put(name, []byte("more"))
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

func TestABadArchiveIsRefusedAndLeavesNothing(t *testing.T) {
	notShort(t)
	t.Parallel()
	s := newShed(t)
	archive := s.packed()
	same := func(_ string, content []byte) []byte { return content }
	in := func(name string, change func([]byte) []byte) []byte {
		return remade(t, archive, func(n string, content []byte) []byte {
			if n == name {
				return change(content)
			}
			return content
		})
	}
	replace := func(name, old, new string) []byte {
		return in(name, func(b []byte) []byte {
			if !bytes.Contains(b, []byte(old)) {
				t.Fatalf("%s does not hold %q", name, old)
			}
			return bytes.Replace(b, []byte(old), []byte(new), 1)
		})
	}
	without := func(prefix string) []byte {
		return remade(t, archive, func(n string, content []byte) []byte {
			if strings.HasPrefix(n, prefix) {
				return nil
			}
			return content
		})
	}
	dropLine := func(name string, which int) []byte {
		return in(name, func(b []byte) []byte {
			lines := strings.SplitAfter(string(b), "\n")
			return []byte(strings.Join(slices.Delete(lines, which, which+1), ""))
		})
	}
	for _, c := range []struct {
		says    string
		archive []byte
		piece   string
	}{
		{"nothing", nil, "zip"},
		{"a letter", []byte("Dear Sir or Madam"), "zip"},
		{"half an archive", archive[:len(archive)/2], "zip"},
		{"a name that points out of the folder", remade(t, archive, same, "../../evil.sh"), "no build has"},
		{"a name from the root", remade(t, archive, same, "/etc/evil"), "no build has"},
		{"a photo's name that points out", remade(t, archive, same, "attachments/../evil"), "no build has"},
		{"a drive's name", remade(t, archive, same, `C:\evil`), "no build has"},
		{"a thing twice", remade(t, archive, same, "build.yaml"), "twice"},
		{"a photo that is in no list", remade(t, archive, same, "attachments/0123456789abcdef"), "do not agree"},
		{"no history", without("history"), "history.jsonl is missing"},
		{"no first document", without("first"), "first.yaml is missing"},
		{"no list of photos", without("attachments.jsonl"), "is missing"},
		{"a photo missing", without("attachments/"), "is missing"},
		{"not said what it is", without("about"), "about.json is missing"},
		{"a newer archive", replace("about.json", ":1", ":2"), "newer version"},
		{"an empty history", in("history.jsonl", func([]byte) []byte { return []byte{} }), "no revision"},
		{"a word of the history changed", replace("history.jsonl", "to 501", "to 502"), "does not read as it was written"},
		{"a value of the history changed", replace("history.jsonl", `\"y\":501`, `\"y\":999`), "does not read as it was written"},
		{"a key of the history that nobody knows", replace("history.jsonl", `"kind"`, `"sort"`), "unknown field"},
		{"a line of the history missing", dropLine("history.jsonl", 20), "does not read as it was written"},
		{"the last line of the history missing", dropLine("history.jsonl", 57), "by hand"},
		{"the newest document changed by hand", replace("build.yaml", "Wherry", "Ferry"), "by hand"},
		{"the first document changed", replace("first.yaml", "Wherry", "Ferry"), "does not read as it was written"},
		{"a document that is none", in("first.yaml", func([]byte) []byte { return []byte("a: [") }), "first.yaml"},
		{"a photo changed", in("attachments/"+photoID(t, s, 9), func(b []byte) []byte { b[3]++; return b }), "not the one that was kept"},
		{"a photo's name of two lines", replace("attachments.jsonl", "photo 1", `photo\n1`), "no line of text"},
		{"a photo's date that is none", replace("attachments.jsonl", "2026-", "20-26-"), "attachments.jsonl"},
		{"a line that never ends", in("history.jsonl", func([]byte) []byte { return bytes.Repeat([]byte("x"), 17<<20) }), "too long"},
	} {
		t.Run(c.says, func(t *testing.T) {
			_, err := s.unpack(c.archive, "again.tumblehome")
			wantTrouble(t, err, store.ErrArchive, c.piece, "No build was made")
			for _, name := range files(t, s.folder) {
				if !strings.HasPrefix(name, "packed") {
					t.Errorf("%s was left behind", name)
				}
			}
		})
	}
}

// photoID is the id of the photo of a size.
func photoID(t testing.TB, s *shed, size int64) string {
	t.Helper()
	all, err := s.open("packed.tumblehome").Attachments(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	return all[slices.IndexFunc(all, func(a store.Attachment) bool { return a.Size == size })].ID
}

func TestAnArchiveThatSwellsIsRefused(t *testing.T) {
	notShort(t)
	t.Parallel()
	s := newShed(t)
	kept := s.begin("packed.tumblehome")
	if _, err := kept.Attach(context.Background(), "seam.jpg", "image/jpeg", bytes.NewReader(photo(1, 9))); err != nil {
		t.Fatal(err)
	}
	var small bytes.Buffer
	if err := store.Pack(context.Background(), s.path("packed.tumblehome"), &small, s.options()); err != nil {
		t.Fatal(err)
	}
	archive := small.Bytes()
	bomb := func(name string) []byte { // many blanks in few bytes
		return remade(t, archive, func(n string, content []byte) []byte {
			if n == name {
				return bytes.Repeat([]byte(" "), 6<<20)
			}
			return content
		})
	}
	for name, piece := range map[string]string{
		"history.jsonl":                   "too long",
		"attachments/" + photoID(t, s, 9): "swells",
		"first.yaml":                      "4 MiB",
		"attachments.jsonl":               "too long",
		"about.json":                      "too long",
	} {
		b := bomb(name)
		if len(b) > 1<<18 {
			t.Fatalf("the bomb has %d bytes", len(b))
		}
		_, err := s.unpack(b, "again.tumblehome")
		if err == nil || !strings.Contains(err.Error(), piece) && !strings.Contains(err.Error(), "swells") && !strings.Contains(err.Error(), "64 MB") {
			t.Errorf("%s: %v", name, err)
		}
	}
	t.Run("a list of contents without end", func(t *testing.T) {
		var out bytes.Buffer
		w := zip.NewWriter(&out)
		for i := range 60_000 {
			if _, err := w.Create(fmt.Sprintf("attachments/%016x", i)); err != nil {
				t.Fatal(err)
			}
		}
		w.Close()
		_, err := s.unpack(out.Bytes(), "again.tumblehome")
		wantTrouble(t, err, store.ErrArchive, "list of contents is too long")
	})
	t.Run("more things than a build has", func(t *testing.T) {
		var out bytes.Buffer
		w := zip.NewWriter(&out)
		for i := range 21_000 {
			if _, err := w.Create(fmt.Sprintf("attachments/%016x", i)); err != nil {
				t.Fatal(err)
			}
		}
		w.Close()
		_, err := s.unpack(out.Bytes(), "again.tumblehome")
		wantTrouble(t, err, store.ErrArchive, "more than 20000")
	})
}

func TestAnArchiveIsNeverUnpackedOverAFile(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	archive := s.packed()
	before := bytesOf(t, s.path("packed.tumblehome"))
	_, err := s.unpack(archive, "packed.tumblehome")
	wantTrouble(t, err, store.ErrTaken, "exists already")
	if !bytes.Equal(bytesOf(t, s.path("packed.tumblehome")), before) {
		t.Error("the build was changed")
	}
}

// TestABentArchiveMakesNoOtherBuild changes letters inside the pieces of an archive, which fuzzing the zip itself seldom reaches. What is
// not refused is the same build.
func TestABentArchiveMakesNoOtherBuild(t *testing.T) {
	notShort(t)
	t.Parallel()
	s := newShed(t)
	archive := s.packed()
	want := history(t, s.path("packed.tumblehome"))
	dice := rand.New(rand.NewPCG(3, 14))
	refused := 0
	for i := range 80 {
		count := 0
		bent := remade(t, archive, func(name string, content []byte) []byte {
			if count++; count != 1+i%5 || len(content) == 0 {
				return content
			}
			at := dice.IntN(len(content))
			switch dice.IntN(3) {
			case 0:
				content[at] = byte(dice.Uint32())
			case 1:
				content = slices.Delete(content, at, at+1)
			case 2:
				content = slices.Insert(content, at, content[dice.IntN(len(content))])
			}
			return content
		})
		name := fmt.Sprintf("bent-%d.tumblehome", i)
		if _, err := s.unpack(bent, name); err != nil {
			refused++
			wantTrouble(t, err, store.ErrArchive, "No build was made")
		} else if history(t, s.path(name)) != want {
			t.Errorf("archive %d makes another history", i)
		}
	}
	if t.Logf("%d of 80 bent archives were refused", refused); refused < 60 {
		t.Error("the bending goes unseen")
	}
}

// FuzzUnpack feeds archives that were bent: whatever comes, nothing panics, a refusal leaves nothing behind, and what is taken is a sound
// build that packs into an archive of the same content.
func FuzzUnpack(f *testing.F) {
	s := newShed(f)
	archive := s.packed()
	f.Add(archive)
	f.Add(archive[:200])
	f.Add([]byte("PK\x05\x06" + strings.Repeat("\x00", 18)))
	f.Add(remade(f, archive, func(n string, content []byte) []byte { return content }, "../x"))
	f.Add(remade(f, archive, func(n string, content []byte) []byte { return content[:len(content)/2] }))
	f.Fuzz(func(t *testing.T, bent []byte) {
		path := s.path("fuzz.tumblehome")
		report, err := store.Unpack(context.Background(), bytes.NewReader(bent), int64(len(bent)), path, s.options())
		if err != nil {
			if _, gone := os.Stat(path); gone == nil {
				t.Fatalf("refused (%v), and a file was left", err)
			}
			return
		}
		defer os.Remove(path)
		var out bytes.Buffer
		if err := store.Pack(context.Background(), path, &out, s.options()); err != nil || report.Revisions == 0 {
			t.Fatalf("taken, but it does not pack: %v", err)
		}
	})
}
