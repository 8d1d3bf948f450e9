package store

import (
	"context"
	"time"
)

// quietAfter is how long nobody must have saved before the log is brought into the file itself. People copy a build's file with the
// file manager while it is open, and forget the log beside it.
const quietAfter = time.Second

// afterCommit makes sure that what was committed has a name on disk, and brings the log in when it has been quiet for a while.
func (s *Store) afterCommit(ctx context.Context) error {
	if !exists(s.path + "-wal") { // somebody tidied it away; what is written to it now would be lost by the next power cut
		if err := s.bringIn(ctx, "TRUNCATE"); err != nil {
			return because(err, "The last change is saved only until the program ends, since the log beside the file was deleted. Close the program properly.")
		}
	}
	if s.quiet == nil {
		s.quiet = time.AfterFunc(quietAfter, s.settle)
	} else {
		s.quiet.Reset(quietAfter)
	}
	return nil
}

// settle brings the log into the file. If it can not, the log is as safe.
func (s *Store) settle() {
	s.writing.Lock()
	defer s.writing.Unlock()
	if s.write != nil {
		_ = s.bringIn(context.Background(), "PASSIVE")
	}
}

func (s *Store) bringIn(ctx context.Context, how string) error {
	var busy, inLog, done int
	return s.write.QueryRowContext(ctx, "PRAGMA wal_checkpoint("+how+")").Scan(&busy, &inLog, &done)
}
