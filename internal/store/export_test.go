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
	now := s.now()
	err = within(context.Background(), s.write, func(tx *sql.Tx) error {
		for n := now.revision.N + 1; n <= revisions; n++ {
			value := tree.Plain(fmt.Sprint(500 + (n+7)%400))
			node := tree.Merge(now.node, tree.Setting("/fittings/settle/size/y", value))
			r := rowOf(Revision{N: n, Parent: n - 1, When: o.Now(), Kind: Made, Words: "settle " + value.Text + " wide", By: "tall",
				Patch: tree.Difference(now.node, node), Inverse: tree.Difference(node, now.node)}, digestOf(node))
			r.seal = r.sealAfter(now.seal)
			if err := insert(context.Background(), tx, r, node); err != nil {
				return err
			}
			now.node, now.seal = node, r.seal
		}
		return nil
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
