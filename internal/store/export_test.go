package store

import (
	"context"
	"time"
)

// Ask asks SQLite for one value, on the connection that writes or on one that reads.
func (s *Store) Ask(writer bool, query string, args ...any) (answer string, err error) {
	db := s.read
	if writer {
		s.writing.Lock()
		defer s.writing.Unlock()
		db = s.write
	}
	err = db.QueryRowContext(context.Background(), query, args...).Scan(&answer)
	return answer, err
}

// Do runs a statement on the connection that writes, behind the store's back.
func (s *Store) Do(statement string, args ...any) error {
	s.writing.Lock()
	defer s.writing.Unlock()
	_, err := s.write.ExecContext(context.Background(), statement, args...)
	return err
}

// SettleNow brings the log in without waiting for quiet.
func (s *Store) SettleNow() { s.settle() }

// QuietAfter is how long it waits.
const QuietAfter time.Duration = quietAfter

// Newest is the newest format.
func Newest() int { return newest() }

// PieceSize and MostAttachment are the bounds of attachments, in bytes.
const (
	PieceSize      = pieceSize
	MostAttachment = mostAttachment
)
