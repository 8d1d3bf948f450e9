package store

import (
	"context"
	"database/sql"
	"fmt"
	"time"

	"tumblehome/build/tree"
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

// Lengthen gives a closed build a long history quickly: edits that are not held to the rules, in one transaction.
func Lengthen(path string, revisions int, o Options) error {
	s, err := Open(context.Background(), path, o)
	if err != nil {
		return err
	}
	err = within(context.Background(), s.write, func(tx *sql.Tx) error {
		now := s.now()
		for n := now.revision.N + 1; n <= revisions; n++ {
			value := tree.Plain(fmt.Sprint(500 + (n+7)%400))
			if err := unruled(tx, &now, tree.Setting("/fittings/settle/size/y", value), o); err != nil {
				return err
			}
		}
		return nil
	})
	return firstError(err, s.Close())
}

// unruled writes an edit whatever the rules say.
func unruled(tx *sql.Tx, now *state, p tree.Patch, o Options) error {
	node := tree.Merge(now.node, p)
	n := now.revision.N + 1
	r := rowOf(Revision{N: n, Parent: n - 1, When: o.Now(), Kind: Made, Words: string(p.JSON()), By: "tall",
		Patch: tree.Difference(now.node, node), Inverse: tree.Difference(node, now.node)}, digestOf(node))
	r.seal = r.sealAfter(now.seal)
	now.node, now.seal, now.revision.N = node, r.seal, n
	return insert(context.Background(), tx, r, node)
}

// BreakRules saves an edit as a version of the program would have saved it that did not have today's rules yet.
func BreakRules(path string, p tree.Patch, o Options) error {
	s, err := Open(context.Background(), path, o)
	if err != nil {
		return err
	}
	err = within(context.Background(), s.write, func(tx *sql.Tx) error {
		now := s.now()
		return unruled(tx, &now, p, o)
	})
	return firstError(err, s.Close())
}

// MigrateAndStop brings a file up to date as Open does and gives back what to call to close it: until then all of it is in the log.
func MigrateAndStop(path string, o Options) (stop func() error, err error) {
	db, err := o.connect(path, toOwn)
	if err != nil {
		return nil, err
	}
	return db.Close, migrate(context.Background(), db, 0)
}

// Sealed is the seal of the newest revision and the digest of its document.
func Sealed(s *Store) (seal, digest string) { now := s.now(); return now.seal, now.digest }
