// Package web shows one build in the browser and takes edits from it.
//
// It listens on this machine only. Every page reads and every form posts without script; script adds dragging and news. A page
// is made of regions; each region that shows something older than the newest revision fetches itself again. An edit is one merge
// patch, hence one revision, hence one undo.
package web
