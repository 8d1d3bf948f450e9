package store

import (
	"archive/zip"
	"bufio"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"regexp"
)

// ErrArchive refuses an archive.
var ErrArchive = errors.New("this archive can not be read")

// Bounds of an archive. What is unpacked is counted as it comes out, whatever the archive says about itself, and all of it together may
// be a hundred times the archive: honest ones are nowhere near.
const (
	mostEntries   = 20_000
	mostDirectory = 4 << 20 // bytes of the list of contents
	mostSwelling  = 100
	mostLine      = 16 << 20 // bytes of one revision
	mostRevisions = 200_000
)

// unpacker reads the pieces of an archive.
type unpacker struct {
	pieces map[string]*zip.File
	left   int64 // bytes that may still come out
}

var knownName = regexp.MustCompile(`^(about\.json|build\.yaml|first\.yaml|history\.jsonl|attachments\.jsonl|attachments/[0-9a-f]{16})$`)

func openArchive(archive io.ReaderAt, size int64) (*unpacker, error) {
	opening := &bounded{from: archive, left: mostDirectory}
	contents, err := zip.NewReader(opening, size)
	if opening.exceeded {
		return nil, badArchive("its list of contents is too long")
	}
	if err != nil {
		return nil, badArchive("%v", err)
	}
	opening.off = true
	u := &unpacker{pieces: map[string]*zip.File{}, left: min(mostSwelling*size, 1<<50) + 1<<20}
	if len(contents.File) > mostEntries {
		return nil, badArchive("it holds more than %d things", mostEntries)
	}
	for _, f := range contents.File {
		if !knownName.MatchString(f.Name) {
			return nil, badArchive("it holds %q, which no build has", f.Name)
		}
		if u.pieces[f.Name] != nil {
			return nil, badArchive("it holds %s twice", f.Name)
		}
		u.pieces[f.Name] = f
	}
	var what about
	if err := u.values(aboutName, func(line []byte) error { return json.Unmarshal(line, &what) }); err != nil {
		return nil, err
	}
	if what.Archive > archiveFormat {
		return nil, badArchive("it was written by a newer version of the program; import it with that version")
	}
	return u, nil
}

func badArchive(format string, args ...any) error {
	return &Trouble{Kind: ErrArchive, Says: "This archive can not be imported: " + fmt.Sprintf(format, args...) + ". No build was made."}
}

// bounded reads at most so many bytes while the list of contents is read.
type bounded struct {
	from     io.ReaderAt
	left     int64
	exceeded bool
	off      bool
}

func (b *bounded) ReadAt(p []byte, at int64) (int, error) {
	if b.off {
		return b.from.ReadAt(p, at)
	}
	if b.left -= int64(len(p)); b.left < 0 {
		b.exceeded = true
		return 0, errors.New("too long")
	}
	return b.from.ReadAt(p, at)
}

// open gives a reader of a piece that fails when more comes out of the archive than may.
func (u *unpacker) open(name string) (io.ReadCloser, error) {
	piece := u.pieces[name]
	if piece == nil {
		return nil, badArchive("%s is missing", name)
	}
	content, err := piece.Open()
	if err != nil {
		return nil, badArchive("%s: %v", name, err)
	}
	return &rationed{content, name, u}, nil
}

type rationed struct {
	io.ReadCloser
	name string
	from *unpacker
}

func (r *rationed) Read(p []byte) (int, error) {
	n, err := r.ReadCloser.Read(p)
	if r.from.left -= int64(n); r.from.left < 0 {
		return 0, badArchive("it swells to more than a hundred times its size")
	}
	if err != nil && !errors.Is(err, io.EOF) {
		err = badArchive("%s: %v", r.name, err)
	}
	return n, err
}

// values calls do for each line of a piece.
func (u *unpacker) values(name string, do func(line []byte) error) error {
	content, err := u.open(name)
	if err != nil {
		return err
	}
	defer content.Close()
	scanner := bufio.NewScanner(content)
	scanner.Buffer(nil, mostLine)
	for number := 1; scanner.Scan(); number++ {
		if err := do(scanner.Bytes()); err != nil {
			err = firstError(scanner.Err(), err) // a line that was cut off is no line
			return asArchive(err, fmt.Sprintf("%s, line %d", name, number))
		}
	}
	return asArchive(scanner.Err(), name)
}

// asArchive turns what is wrong with a piece into what is wrong with the archive; trouble with the disk stays what it is.
func asArchive(err error, where string) error {
	var already *Trouble
	switch {
	case err == nil:
		return nil
	case errors.As(err, &already) && !errors.Is(err, ErrDamaged):
		return err
	case errors.As(err, &already):
		return badArchive("%s: %s", where, "it does not read as it was written")
	}
	if _, kind := kindOf(err); kind != nil {
		return err
	}
	return badArchive("%s: %v", where, err)
}
