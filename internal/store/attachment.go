package store

import (
	"bytes"
	"context"
	"crypto/sha256"
	"database/sql"
	"encoding/hex"
	"errors"
	"io"
	"time"
)

// Attachment is a photo, receipt or certificate kept in the build's file.
type Attachment struct {
	ID, Name, Kind string
	Made           time.Time
	Size           int64  // in bytes
	Content        []byte // nil where only the list was asked for
	digest         string
}

const (
	mostAttachment = 64 << 20  // bytes of one attachment
	pieceSize      = 256 << 10 // bytes of it kept in one row, so that a photo is never in memory twice
)

// ErrTooBig refuses an attachment.
var ErrTooBig = errors.New("a photo or paper may have at most 64 MB; make it smaller first")

// Attach keeps a file under the digest of its content, so that the same photo sent twice is kept once, under its first name. When it
// returns no error the file is on disk.
func (s *Store) Attach(ctx context.Context, name, kind string, content io.Reader) (string, error) {
	pieces, err := readPieces(content) // before the file is held, since a phone may send slowly
	if err != nil {
		return "", err
	}
	a := describe(pieces)
	a.Name, a.Kind, a.Made = oneLine(name), oneLine(kind), s.options.Now().UTC().Round(0)
	s.writing.Lock()
	defer s.writing.Unlock()
	if s.barred != nil {
		return "", s.barred
	}
	if err := s.inPlace("Nothing of this change was saved."); err != nil {
		return "", err
	}
	return a.ID, because(s.attach(context.WithoutCancel(ctx), a, pieces), "The photo or paper was not saved; all that was saved before it is kept.")
}

// readPieces reads a file piece by piece, so that its size in memory is its size on disk.
func readPieces(content io.Reader) (pieces [][]byte, err error) {
	for size := 0; ; {
		piece := bytes.NewBuffer(make([]byte, 0, pieceSize+bytes.MinRead))
		n, err := piece.ReadFrom(io.LimitReader(content, pieceSize))
		if err != nil {
			return nil, err // an unexpected end among them: a connection that broke must not leave half a photo
		}
		if n == 0 {
			return pieces, nil
		}
		pieces = append(pieces, piece.Bytes())
		if size += int(n); size > mostAttachment {
			return nil, ErrTooBig
		}
	}
}

// describe gives pieces their size, digest and id.
func describe(pieces [][]byte) Attachment {
	var a Attachment
	sum := sha256.New()
	for _, piece := range pieces {
		a.Size += int64(len(piece))
		_, _ = sum.Write(piece) // a hash takes all it is given
	}
	a.digest = hex.EncodeToString(sum.Sum(nil))
	a.ID = a.digest[:16]
	return a
}

func (s *Store) attach(ctx context.Context, a Attachment, pieces [][]byte) error {
	tx, err := s.write.BeginTx(ctx, nil)
	if err != nil {
		return err
	}
	defer func() { _ = tx.Rollback() }() // does nothing once committed
	if kept, err := attachmentIn(ctx, tx, a.ID); err == nil && kept.digest == a.digest {
		return nil
	} else if !errors.Is(err, ErrNoAttachment) {
		return firstError(err, errors.New("another file of the same id is kept already"))
	}
	if err := insertAttachment(ctx, tx, a, pieces); err != nil {
		return err
	}
	if err := tx.Commit(); err != nil {
		return err
	}
	return s.afterCommit(ctx)
}

// insertAttachment writes an attachment in pieces.
func insertAttachment(ctx context.Context, tx *sql.Tx, a Attachment, pieces [][]byte) error {
	_, err := tx.ExecContext(ctx, "INSERT INTO attachment (id, name, kind, made, size, digest, seal) VALUES (?, ?, ?, ?, ?, ?, ?)",
		a.ID, a.Name, a.Kind, a.made(), a.Size, a.digest, a.sealed(a.made()))
	if err != nil {
		return err
	}
	return insertPieces(ctx, tx, a.ID, pieces)
}

func insertPieces(ctx context.Context, tx *sql.Tx, id string, pieces [][]byte) error {
	for n, piece := range pieces {
		if _, err := tx.ExecContext(ctx, "INSERT INTO piece (attachment, n, content) VALUES (?, ?, ?)", id, n, piece); err != nil {
			return err
		}
	}
	return nil
}

func (a Attachment) made() string { return a.Made.Format(time.RFC3339Nano) }

func (a Attachment) sealed(made string) string {
	w := digester{sha256.New()}
	for _, s := range []string{a.ID, a.Name, a.Kind, made, a.digest} {
		w.text(s)
	}
	w.number(int(a.Size))
	return w.sum()
}

// Attachments lists what is kept, by id, without the contents.
func (s *Store) Attachments(ctx context.Context) (out []Attachment, err error) {
	rows, err := s.read.QueryContext(ctx, attachmentColumns+"ORDER BY id")
	if err != nil {
		return nil, because(err, "The photos and papers can not be shown.")
	}
	defer func() { err = firstError(err, rows.Close()) }()
	for rows.Next() {
		a, err := scanAttachment(rows)
		if err != nil {
			return nil, err
		}
		out = append(out, a)
	}
	return out, rows.Err()
}

const attachmentColumns = "SELECT id, name, kind, made, size, digest, seal FROM attachment "

func attachmentIn(ctx context.Context, db asker, id string) (Attachment, error) {
	a, err := scanAttachment(db.QueryRowContext(ctx, attachmentColumns+"WHERE id = ?", id))
	if errors.Is(err, sql.ErrNoRows) {
		err = ErrNoAttachment
	}
	return a, err
}

func scanAttachment(from interface{ Scan(...any) error }) (Attachment, error) {
	var a Attachment
	var made, seal string
	if err := from.Scan(&a.ID, &a.Name, &a.Kind, &made, &a.Size, &a.digest, &seal); err != nil {
		return a, err
	}
	if seal != a.sealed(made) {
		return a, attachmentDamaged(a)
	}
	var err error
	a.Made, err = time.Parse(time.RFC3339Nano, made)
	return a, err
}

func attachmentDamaged(a Attachment) error {
	return trouble(ErrDamaged, "The photo or paper %s (%s) is damaged. The rest of the build is not touched by it; restore a backup to have it back.", a.ID, a.Name)
}

// Attachment returns what was kept under an id.
func (s *Store) Attachment(ctx context.Context, id string) (Attachment, error) {
	a, err := attachmentIn(ctx, s.read, id)
	if err != nil {
		return a, because(err, "The photo or paper can not be shown.")
	}
	var content bytes.Buffer
	content.Grow(int(min(max(0, a.Size), mostAttachment)))
	if err := writeAttachment(ctx, s.read, a, &content); err != nil {
		return a, because(err, "The photo or paper can not be shown.")
	}
	a.Content = content.Bytes()
	return a, nil
}

// writeAttachment writes the content piece by piece, each asked for by itself, so that a slow reader holds up nobody. The error comes
// after the last piece when the whole is not what was kept.
func writeAttachment(ctx context.Context, db asker, a Attachment, to io.Writer) error {
	sum := sha256.New()
	to = io.MultiWriter(to, sum)
	written := int64(0)
	for n := 0; written < a.Size; n++ {
		var piece []byte
		err := db.QueryRowContext(ctx, "SELECT content FROM piece WHERE attachment = ? AND n = ?", a.ID, n).Scan(&piece)
		if errors.Is(err, sql.ErrNoRows) || err == nil && len(piece) == 0 {
			return attachmentDamaged(a)
		}
		if err != nil {
			return err
		}
		if _, err := to.Write(piece); err != nil {
			return err
		}
		written += int64(len(piece))
	}
	if hex.EncodeToString(sum.Sum(nil)) != a.digest {
		return attachmentDamaged(a)
	}
	return nil
}
