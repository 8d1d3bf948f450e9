package store_test

import (
	"context"
	"encoding/binary"
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"tumblehome/internal/store"
)

// Sizes in a write-ahead log, SQLite file format section 4.1.
const (
	logHeader   = 32
	frameHeader = 24
	pageSize    = 4096
	frame       = frameHeader + pageSize
)

// caught is a file and its log as they lay on disk at one moment, and what the log's length was when each revision was acknowledged.
type caught struct {
	file, log []byte
	texts     []string // by revision; 0 is not used
	lengths   []int    // of the log when a revision was acknowledged; those of revisions brought in before are 0
}

// catch saves revisions, the last of them into the log alone.
func catch(t testing.TB, inFile, inLog int) caught {
	t.Helper()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	if err := kept.Do("PRAGMA wal_autocheckpoint = 0"); err != nil {
		t.Fatal(err)
	}
	c := caught{texts: []string{"", text(kept)}, lengths: []int{0, 0}}
	path := s.path("wherry.tumblehome")
	for n := 2; n <= 1+inFile+inLog; n++ {
		widen(t, kept, 1)
		c.texts = append(c.texts, text(kept))
		c.lengths = append(c.lengths, 0)
		if n == 1+inFile {
			kept.SettleNow()
			kept.Do("PRAGMA wal_checkpoint(TRUNCATE)")
		} else if n > 1+inFile {
			c.lengths[n] = len(bytesOf(t, path+"-wal"))
		}
	}
	c.file, c.log = bytesOf(t, path), bytesOf(t, path+"-wal")
	if (len(c.log)-logHeader)%frame != 0 || len(c.log) < 10*frame {
		t.Fatalf("the log has %d bytes", len(c.log))
	}
	return c
}

// newestWithin is the last revision that had been acknowledged when the log had a length.
func (c caught) newestWithin(length int) int {
	newest := 1
	for n, needs := range c.lengths {
		if needs <= length && n > 0 {
			newest = n
		}
	}
	return newest
}

// opens lays down a file and a log and wants a revision to open from them.
func (c caught) opens(t *testing.T, s *shed, name string, file, log []byte, want int) {
	t.Helper()
	writeFile(t, s.path(name), file)
	writeFile(t, s.path(name+"-wal"), log)
	kept, err := store.Open(context.Background(), s.path(name), s.options())
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	defer kept.Close()
	if head, _ := kept.Head(); head.N != want {
		t.Errorf("%s: opened at revision %d, want %d", name, head.N, want)
	} else if text(kept) != c.texts[want] {
		t.Errorf("%s: revision %d reads differently", name, want)
	}
	widen(t, kept, 1) // and it can be gone on with
}

// TestTheLogIsCut cuts the log as a power cut does that came before all of it was on disk: at every frame, and inside frames. What
// opens is exactly the last revision that was whole by then.
func TestTheLogIsCut(t *testing.T) {
	notShort(t)
	t.Parallel()
	c := catch(t, 40, 14) // over a whole document in the log
	frames := (len(c.log) - logHeader) / frame
	cuts := []int{0, 1, logHeader - 1}
	for k := range frames + 1 {
		at := logHeader + k*frame
		cuts = append(cuts, at, at+1, at+frameHeader, at+frameHeader+512, at+frame-1)
	}
	s := newShed(t)
	for _, cut := range cuts {
		if cut <= len(c.log) {
			c.opens(t, s, fmt.Sprintf("cut-%d.tumblehome", cut), c.file, c.log[:cut], c.newestWithin(cut))
		}
	}
	t.Logf("%d cuts through %d frames", len(cuts), frames)
}

// TestTheEndOfTheLogIsRubbish is a disk that had made room for the log but had not filled it: noughts, or what lay there before.
func TestTheEndOfTheLogIsRubbish(t *testing.T) {
	notShort(t)
	t.Parallel()
	c := catch(t, 3, 10)
	dice := rand.New(rand.NewPCG(1, 9))
	s := newShed(t)
	for i := range 40 {
		cut := dice.IntN(len(c.log))
		log := slices.Clone(c.log)
		for j := cut; j < len(log); j++ {
			if log[j] = 0; i%2 == 0 {
				log[j] = byte(dice.Uint32())
			}
		}
		c.opens(t, s, fmt.Sprintf("rubbish-%d.tumblehome", i), c.file, log, c.newestWithin(cut))
	}
}

// TestOneSectorOfTheLogIsLost is a disk that wrote out of order: a piece in the middle is missing, later ones are there.
func TestOneSectorOfTheLogIsLost(t *testing.T) {
	notShort(t)
	t.Parallel()
	c := catch(t, 3, 10)
	s := newShed(t)
	for at := 0; at < len(c.log); at += 1 + len(c.log)/40 {
		from := at / 512 * 512
		log := slices.Clone(c.log)
		clear(log[from:min(len(log), from+512)])
		if string(log) == string(c.log) {
			continue // there were noughts
		}
		first := from // the first byte that is not as it was
		for log[first] == c.log[first] {
			first++
		}
		c.opens(t, s, fmt.Sprintf("sector-%d.tumblehome", from), c.file, log, c.newestWithin(first))
	}
}

// TestThePowerFailsWhileTheLogIsBroughtIn writes some pages, and halves of pages, of the log into the file and not others, as they lie
// when the power fails in the middle; the log is whole, since it is only begun again after the file is on disk.
func TestThePowerFailsWhileTheLogIsBroughtIn(t *testing.T) {
	notShort(t)
	t.Parallel()
	c := catch(t, 3, 60)
	latest := map[uint32][]byte{}
	for at := logHeader; at < len(c.log); at += frame {
		latest[binary.BigEndian.Uint32(c.log[at:])] = c.log[at+frameHeader : at+frame]
	}
	pages := []uint32{}
	for page := range latest {
		pages = append(pages, page)
	}
	slices.Sort(pages)
	dice := rand.New(rand.NewPCG(5, 5))
	s := newShed(t)
	for i := range 60 {
		file := slices.Clone(c.file)
		for _, page := range pages {
			if dice.IntN(2) == 0 && i > 0 { // the first time all of them
				continue
			}
			end := int(page) * pageSize
			if end > len(file) {
				file = append(file, make([]byte, end-len(file))...)
			}
			part := pageSize
			if dice.IntN(4) == 0 {
				part = 512 * dice.IntN(8)
			}
			copy(file[end-pageSize:], latest[page][:part])
		}
		c.opens(t, s, fmt.Sprintf("torn-%d.tumblehome", i), file, c.log, len(c.texts)-1)
	}
}
