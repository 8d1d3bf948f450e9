package store_test

import (
	"bytes"
	"context"
	"errors"
	"io"
	"os"
	"strings"
	"testing"
	"testing/iotest"

	"tumblehome/internal/store"
)

// photo is a picture of a size, each byte of its own.
func photo(seed byte, size int) []byte {
	out := make([]byte, size)
	x := uint32(seed) + 1
	for i := range out {
		x = x*1664525 + 1013904223 // Numerical Recipes, quick and even enough
		out[i] = byte(x >> 24)
	}
	return out
}

func TestAPhotoIsKeptByteForByte(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	ctx := context.Background()
	sizes := []int{0, 1, store.PieceSize - 1, store.PieceSize, store.PieceSize + 1, 4 << 20}
	var ids []string
	for i, size := range sizes {
		id, err := kept.Attach(ctx, "seam.jpg", "image/jpeg", bytes.NewReader(photo(byte(i), size)))
		if err != nil {
			t.Fatal(err)
		}
		ids = append(ids, id)
	}
	kept.Close()
	kept = s.open("wherry.tumblehome")
	for i, size := range sizes {
		a, err := kept.Attachment(ctx, ids[i])
		if err != nil || !bytes.Equal(a.Content, photo(byte(i), size)) || a.Name != "seam.jpg" || a.Kind != "image/jpeg" || a.Size != int64(size) {
			t.Errorf("%d bytes: got %d bytes, %s, %v", size, len(a.Content), a.Name, err)
		}
	}
	if list, err := kept.Attachments(ctx); err != nil || len(list) != len(sizes) || list[0].Content != nil {
		t.Errorf("the list has %d, %v", len(list), err)
	}
}

func TestTheSamePhotoTwiceIsKeptOnce(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	ctx := context.Background()
	first, err := kept.Attach(ctx, "seam.jpg", "image/jpeg", strings.NewReader("a photo"))
	if err != nil {
		t.Fatal(err)
	}
	second, err := kept.Attach(ctx, "IMG_0007.jpg", "image/jpeg", strings.NewReader("a photo"))
	if err != nil || second != first {
		t.Errorf("%s and %s, %v", first, second, err)
	}
	if a, err := kept.Attachment(ctx, first); err != nil || a.Name != "seam.jpg" {
		t.Errorf("its name is %s, %v", a.Name, err)
	}
	if _, err := kept.Attachment(ctx, "no-such-id"); !errors.Is(err, store.ErrNoAttachment) {
		t.Errorf("an id that is not there: %v", err)
	}
}

func TestAPhotoThatDoesNotComeWholeIsNotKept(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	ctx := context.Background()
	for _, lost := range []error{errors.New("the phone went out of reach"), io.ErrUnexpectedEOF} {
		for _, half := range []int{0, 9, store.PieceSize, store.PieceSize + 9} {
			if _, err := kept.Attach(ctx, "seam.jpg", "image/jpeg", io.MultiReader(bytes.NewReader(photo(1, half)), iotest.ErrReader(lost))); !errors.Is(err, lost) {
				t.Errorf("a connection broken after %d bytes: %v", half, err)
			}
		}
	}
	if _, err := kept.Attach(ctx, "film.mp4", "video/mp4", io.LimitReader(zeros{}, store.MostAttachment+1)); !errors.Is(err, store.ErrTooBig) {
		t.Errorf("a film: %v", err)
	}
	if list, err := kept.Attachments(ctx); err != nil || len(list) != 0 {
		t.Errorf("%d are kept, %v", len(list), err)
	}
}

type zeros struct{}

func (zeros) Read(p []byte) (int, error) { clear(p); return len(p), nil }

func TestADamagedPhotoIsSaidToBeDamagedAndNothingElse(t *testing.T) {
	t.Parallel()
	for _, statement := range []string{
		"UPDATE piece SET content = zeroblob(length(content)) WHERE n = 1",
		"DELETE FROM piece WHERE n = 1",
		"UPDATE piece SET content = x'' WHERE n = 0",
		"UPDATE attachment SET name = 'another'",
		"UPDATE attachment SET size = 1000000000000",
		"UPDATE attachment SET size = -5",
	} {
		s := newShed(t)
		kept := s.begin("wherry.tumblehome")
		id, err := kept.Attach(context.Background(), "seam.jpg", "image/jpeg", bytes.NewReader(photo(1, 3*store.PieceSize)))
		if err != nil {
			t.Fatal(err)
		}
		if err := kept.Do(statement); err != nil {
			t.Fatal(err)
		}
		_, err = kept.Attachment(context.Background(), id)
		wantTrouble(t, err, store.ErrDamaged, id, "The rest of the build is not touched")
		widen(t, kept, 1)
	}
}

// TestManyLargePhotos takes two gigabytes of disk and half a minute; make kills runs it.
func TestManyLargePhotos(t *testing.T) {
	t.Parallel()
	if os.Getenv("TUMBLEHOME_KILLS") == "" {
		t.Skip("make kills runs this")
	}
	s := newShed(t)
	s.sealed("wherry.tumblehome", 2)
	lines := runChild(t, "keeps many photos", s.path("wherry.tumblehome"))
	t.Log(strings.Join(lines, "; "))
}
