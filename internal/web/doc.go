// Package web answers: how does a builder see the build and change it?
//
// It shows one build in the browser and takes edits from it. It listens on this machine only. Every page reads and every form posts
// without script; script adds dragging and news. A page is made of regions; each region that shows something older than the newest
// revision fetches itself again. An edit is one merge patch, hence one revision, hence one undo.
//
// The desk holds the newest revision and what follows from it, worked out once after each save; pages only show it. Values travel as
// text in the document's own grammar, in both directions: a field shows the text of a place of the document and sends such text back,
// and the document's decoder is the only judge of it.
package web
