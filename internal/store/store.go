package store

import (
	"context"
	"database/sql"
	"sync"
	"time"

	"tumblehome/build"
	"tumblehome/build/tree"
)

// Options is what a store needs from outside.
type Options struct {
	Now  func() time.Time
	Rows build.RowSource // the built-in catalogue, against which documents are read
	Wait time.Duration   // for another program that is writing to the file; 0 is five seconds

	undecoded bool // the newest document is not held to this version's rules
}

// Store is one build's file. It may be used by several goroutines, and the file by several programs.
type Store struct {
	path    string
	options Options
	read    *sql.DB // never writes, not even to finish what a killed program left
	write   *sql.DB // one connection, since SQLite lets one write at a time; nil where the file can only be read
	barred  error   // why the file can only be read
	copied  string  // the copy of the older format that was kept, if there was one
	scratch string  // folder of a copy that is read instead of the file, if there is one
	file    identity

	writing sync.Mutex // held by whoever writes
	quiet   *time.Timer

	mu   sync.Mutex // held while the head changes or is looked at
	head state
}

// state is the newest revision as kept in memory.
type state struct {
	revision Revision
	seal     string
	digest   string
	document *build.Document
	node     *tree.Node
	stacks   stacks
}

// Head returns the newest revision this process knows and its document.
func (s *Store) Head() (Revision, *build.Document) {
	now := s.now()
	return now.revision, now.document
}

func (s *Store) now() state {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.head
}

func (s *Store) setHead(next state) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.head = next
}

// Barred says why nothing can be saved here, or nil.
func (s *Store) Barred() error { return s.barred }

// KeptCopy is the path of the copy that was kept when Open brought the file up to date, or "".
func (s *Store) KeptCopy() string { return s.copied }

// Refresh looks whether another program has written to the file, and tells whether the head has changed. The error says why what is
// shown may not be the newest, or why nothing more can be saved.
func (s *Store) Refresh(ctx context.Context) (changed bool, err error) {
	s.writing.Lock()
	defer s.writing.Unlock()
	if err := s.inPlace("Nothing more can be saved."); err != nil {
		return false, err
	}
	before := s.now().revision.N
	if err := s.catchUp(ctx, s.read); err != nil {
		return false, because(err, "What is shown may not be the newest.")
	}
	return s.now().revision.N != before, nil
}
