// Package reckon answers: what follows from this document?
//
// It leads a document through the trades in their stated order and gathers what they find: figures, findings, workings, the room,
// the places of things. It is the only place where two trades meet: each stage_*.go fills one trade's Inputs from the document
// and from earlier results, and does no arithmetic of its own.
//
// A stage is a pure function with a key: the digest of its inputs and its version. The same key gives the same result without
// work, so an edit that leaves the lining as it was stops there. A Machine keeps the last few results of every stage; a Reckoning
// is immutable and may be shared.
package reckon
