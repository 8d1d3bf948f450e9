package store

import (
	"bytes"
	"context"
	"database/sql"
	"encoding/json"
	"errors"
	"io"
	"time"

	"tumblehome/build/tree"
)

// Unpack makes a new build's file from an archive. Nothing is unpacked to disk: what lies in the archive is found by its name in a list
// of known names, so that no name in it can point anywhere. Every seal and every digest must hold.
func Unpack(ctx context.Context, archive io.ReaderAt, size int64, path string, o Options) (Report, error) {
	u, err := openArchive(archive, size)
	if err != nil {
		return Report{}, err
	}
	err = createFile(ctx, path, o, func(ctx context.Context, db *sql.DB) error {
		if err := within(ctx, db, func(tx *sql.Tx) error { return u.history(ctx, tx) }); err != nil {
			return err
		}
		return u.attachments(ctx, db)
	})
	if err != nil {
		return Report{}, err
	}
	return Verify(ctx, path, o)
}

// document reads a document.
func (u *unpacker) document(name string) (*tree.Node, error) {
	content, err := u.open(name)
	if err != nil {
		return nil, err
	}
	defer content.Close()
	text, err := io.ReadAll(io.LimitReader(content, mostBytes+1))
	if err != nil {
		return nil, err
	}
	source, err := tree.Parse(name, text)
	if err != nil {
		return nil, badArchive("%v", err)
	}
	return source.Root, nil
}

// history writes every revision, as the walk allows.
func (u *unpacker) history(ctx context.Context, tx *sql.Tx) error {
	first, err := u.document(firstName)
	if err != nil {
		return err
	}
	w := &walker{from: 1, node: first}
	err = u.values(historyName, func(line []byte) error {
		var a archived
		if err := strict(line, &a); err != nil {
			return err
		}
		r := a.row()
		if _, err := r.revision(); err != nil {
			return err
		}
		if r.n > mostRevisions {
			return badArchive("it holds more than %d revisions", mostRevisions)
		}
		if err := w.follow(r); err != nil {
			return err
		}
		if digestOf(w.node) != r.digest {
			return damagedAt(r.n, nil)
		}
		return insert(ctx, tx, r, w.node)
	})
	if err != nil {
		return err
	}
	if w.last.n == 0 {
		return badArchive("it holds no revision")
	}
	newest, err := u.document(newestName)
	if err != nil {
		return err
	}
	if !tree.Equal(newest, w.node) {
		return badArchive("its %s was changed by hand, and its history knows nothing of it; import that file by itself", newestName)
	}
	return nil
}

func strict(line []byte, to any) error {
	d := json.NewDecoder(bytes.NewReader(line))
	d.DisallowUnknownFields()
	return d.Decode(to)
}

// attachments writes every photo, each by itself.
func (u *unpacker) attachments(ctx context.Context, db *sql.DB) error {
	written := 0
	err := u.values(attachmentsName, func(line []byte) error {
		var f archivedFile
		if err := strict(line, &f); err != nil {
			return err
		}
		written++
		return within(ctx, db, func(tx *sql.Tx) error { return u.attachment(ctx, tx, f) })
	})
	if err != nil {
		return err
	}
	for name := range u.pieces {
		if len(name) > len(attachmentsIn) && name[:len(attachmentsIn)] == attachmentsIn {
			written--
		}
	}
	if written != 0 {
		return badArchive("its list of photos and its photos do not agree")
	}
	return nil
}

func (u *unpacker) attachment(ctx context.Context, tx *sql.Tx, f archivedFile) error {
	content, err := u.open(attachmentsIn + f.ID)
	if err != nil {
		return err
	}
	defer content.Close()
	pieces, err := readPieces(content)
	if err != nil {
		return err
	}
	a := describe(pieces)
	if a.digest != f.Digest || a.Size != f.Size || a.ID != f.ID {
		return errors.New("the photo is not the one that was kept")
	}
	if f.Name != oneLine(f.Name) || f.Kind != oneLine(f.Kind) {
		return errors.New("its name is no line of text")
	}
	if a.Made, err = time.Parse(time.RFC3339Nano, f.Made); err != nil || a.made() != f.Made {
		return firstError(err, errors.New("its date is none"))
	}
	a.Name, a.Kind = f.Name, f.Kind
	return insertAttachment(ctx, tx, a, pieces)
}
