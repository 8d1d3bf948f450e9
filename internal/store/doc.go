// Package store answers: what did the build look like after every edit, and is the last one safe on disk?
//
// One SQLite file holds one build. An edit is a merge patch and makes a revision; undo and redo make revisions too, so nothing is
// ever lost. Save returns only after the revision is on disk (WAL, synchronous=FULL). Edits are made against a revision somebody
// saw; when the build has moved on meanwhile, an edit that touches other things is moved onto the newest revision, and one that
// touches the same things is refused with both values.
//
// Every revision carries the digest of the document it made and a seal: a digest over all that the revision says and over the seal
// before it. Opening a file walks the whole chain, so that a history in which one letter has changed is refused instead of read.
// A file that is refused is never written to. A file of an older format is copied before it is brought up to date.
//
// What it trusts: that the disk keeps what it says it has kept (fsync), and that locks work (they often do not on network drives).
// What happens in every fault, and the test that shows it, stands in docs/trust.md.
//
// Sources: the SQLite documentation on its write-ahead log, atomic commit, VACUUM INTO, and on how files come to be corrupted; RFC
// 7396 for patches; FIPS 180-4 for the digests.
package store
