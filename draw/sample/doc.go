// Package sample holds small made-up drawings that show what the drawing model can do. The
// gallery shows them, and the painters are tested on them.
package sample
