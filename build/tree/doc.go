// Package tree answers: what does a YAML or JSON text say, before anybody asks
// what it means, and how are two such texts compared, merged and written?
//
// A Node is a map, a list or a scalar with its place in the text. A scalar keeps
// the text as it was written: `007`, `no`, `19:00` and `2026-03-07` are texts
// here, whatever YAML would guess. Nothing in this package knows a document's
// keys.
//
// Parse is strict. It refuses what a document of a builder has no use for, and
// says what to write instead: repeated keys, anchors, aliases, merge keys, tags,
// null, NaN and infinities, tabs, more than one document, more than 4 MiB or
// more than 32 levels.
//
// A Patch is a JSON Merge Patch (RFC 7396): maps merge, everything else is
// replaced, null deletes. Places are JSON Pointers (RFC 6901), or the same with
// dots for people.
//
// Nodes are not changed once they are made: Merge shares with its argument all
// that it does not change.
//
// Sources: YAML 1.2.2 (the core schema, sections 7.3 and 10.3), RFC 8259, RFC
// 7396, RFC 6901.
package tree
