// Package paper answers: how does a drawing get onto paper? It paints scenes as PDF pages,
// vectors as vectors and millimetres as millimetres, in the colours for white paper (draw.Print). The same
// scenes and date give the same bytes.
//
// Fonts are embedded, cut down to the letters used. Printers may still scale a page: sheets
// meant to be used at full size carry a draw.CheckLine each way.
package paper
