package store

import (
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
	Content        []byte
}

// Attach keeps a file under the digest of its content, so that the same photo sent twice is kept once.
func (s *Store) Attach(ctx context.Context, name, kind string, content io.Reader) (string, error) {
	body, err := io.ReadAll(content)
	if err != nil {
		return "", err
	}
	sum := sha256.Sum256(body)
	id := hex.EncodeToString(sum[:8])
	_, err = s.db.ExecContext(ctx, "INSERT INTO attachment (id, name, kind, made, content) VALUES (?, ?, ?, ?, ?) ON CONFLICT (id) DO NOTHING",
		id, name, kind, s.options.Now().UTC().Format(time.RFC3339Nano), body)
	return id, err
}

// Attachment returns what was kept under an id.
func (s *Store) Attachment(ctx context.Context, id string) (Attachment, error) {
	a := Attachment{ID: id}
	var made string
	err := s.db.QueryRowContext(ctx, "SELECT name, kind, made, content FROM attachment WHERE id = ?", id).Scan(&a.Name, &a.Kind, &made, &a.Content)
	if errors.Is(err, sql.ErrNoRows) {
		return a, ErrNoAttachment
	}
	if err == nil {
		a.Made, err = time.Parse(time.RFC3339Nano, made)
	}
	return a, err
}
