// Package store answers: what did the build look like after every edit, and is the last one safe on disk?
//
// One SQLite file holds one build. An edit is a merge patch and makes a revision; undo and redo make revisions too, so nothing is
// ever lost. Save returns only after the revision is on disk (WAL, synchronous=FULL). Edits are made against a revision somebody
// saw; when the build has moved on meanwhile, an edit that touches other things is moved onto the newest revision, and one that
// touches the same things is refused with both values.
package store
