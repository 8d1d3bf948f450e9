// Package catalogue answers: what can be bought or laid in a van, how big and
// how heavy is it, and what does it roughly cost?
//
// # Rows
//
// A Row is one thing as a shop sells it: a sheet of one size, a roll, a metre
// of cable, a tin, an appliance. Some 550 generic rows without brands are part
// of the program (rows.csv; README.md says where its figures are from). The
// document's own rows are of the same type and win over them, field by field:
// an own row that gives only a mass keeps the built-in size.
//
// # Materials
//
// What is laid or sawn is named by its material: a row's id, or the beginning
// that rows of one material and thickness share. `ply-poplar-12` is every sheet
// size of it; the sizes are its Stock. The beginning must reach to the end of
// the thickness, so `ply-poplar` names nothing, and a row added later cannot
// make a name that was good stand for two things.
//
// # How sure it is
//
// Nothing here was weighed by the project. Most figures are typical values from
// memory, some were read in public data sheets (Row.Source says which). Every
// mass and price therefore carries a spread; the table of spreads in spread.go
// states its source. One row has one error: a heavy batch of ply is heavy in
// every part cut from it.
//
// # Near it
//
// catalogue/settings lists what is made rather than bought, catalogue/tyres the
// load indices, catalogue/people the sizes of people, catalogue/climate the
// weather of places. Search finds rows from a beginner's words, settings.Offers
// rows and things to make.
package catalogue
