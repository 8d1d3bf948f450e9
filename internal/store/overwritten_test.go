package store_test

import (
	"context"
	"os"
	"testing"

	"tumblehome/internal/store"
)

func TestTheFileIsWrittenOverWhileItIsOpen(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		says string
		over func(path string) error
	}{
		{"with a letter", func(path string) error { return writeInPlace(path, "Dear Wren, the van is coming on.") }},
		{"with nothing", func(path string) error { return os.Truncate(path, 0) }},
	} {
		t.Run(c.says, func(t *testing.T) {
			s := newShed(t)
			kept := s.begin("wherry.tumblehome")
			widen(t, kept, 2)
			if err := c.over(s.path("wherry.tumblehome")); err != nil {
				t.Fatal(err)
			}
			_, err := kept.Save(context.Background(), set(kept, "build.budget", "3100"))
			wantTrouble(t, err, store.ErrDamaged, "written over", "Nothing of this change was saved")
			_, err = kept.Refresh(context.Background())
			wantTrouble(t, err, store.ErrDamaged, "Nothing more can be saved")
		})
	}
}

// writeInPlace writes into a file as a careless program does, without making a new one.
func writeInPlace(path, text string) error {
	file, err := os.OpenFile(path, os.O_WRONLY|os.O_TRUNC, 0)
	if err != nil {
		return err
	}
	_, err = file.WriteString(text)
	return firstOf(err, file.Close())
}
