// Package fonts carries the lettering of every drawing and page, so that nothing depends
// on what a machine has installed.
//
// The face is Barlow Semi Condensed (SIL Open Font License 1.1, see LICENSE), reduced by
// subset.py to the letters of the European languages and the signs a drawing needs. Three
// things differ from the original: the plain figures are the tabular ones, so that columns
// line up in every output; thin spaces and four arrows were added; kerning and hinting were
// left out, so that the width of a word is the sum of its letters wherever it is shown.
package fonts

import _ "embed"

// Family is the name under which a stylesheet should declare both files.
const Family = "Barlow Semi Condensed"

// Regular is the plain weight, a TrueType file.
//
//go:embed BarlowSemiCondensed-Regular.ttf
var Regular []byte

// SemiBold is the strong weight (600), a TrueType file.
//
//go:embed BarlowSemiCondensed-SemiBold.ttf
var SemiBold []byte
