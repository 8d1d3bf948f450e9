// Package draw answers: what is on the paper? It is the one model from which every drawing is
// painted, on the page, in print and in pictures.
//
// A Scene is a sheet in millimetres (x to the right, y down, from the top left corner) and a
// list of marks in painting order. There are three kinds of mark: a Shape is a path with a pen
// or a fill, a Lettering is one line of text, a Group is a part that means something and can be
// selected, replaced and read aloud. All else is made of these: Chain, Ruler, Flag, Frame,
// ScaleBar, CheckLine, Hatch and Quilt only give marks. Nothing here knows what a van is.
//
// Pens, fills and inks are names, not colours. Their widths, dashes and colours stand in one
// place (Pen.Nib, Theme.Colour), and Stylesheet gives them as CSS for pages.
//
// # Painters
//
//   - Scene.SVG writes SVG, for pages (classes and presentation attributes only, as the content
//     policy asks) or as a file of its own;
//   - draw/paper paints PDF, vectors as vectors;
//   - draw/raster paints PNG, text as outlines.
//
// All three follow Paint, so a scene looks the same in each. There is no kerning anywhere, and
// figures are tabular.
//
// # Classes that a page meets
//
// On the svg element "drawing"; on paths "pen-NAME" and "fill-NAME" for the names in Pens and
// Fills; on text "strong" and "ink-NAME" for those in Inks. Groups carry the class they were
// given ("fitting", "flag danger", "frame" …), id, data-digest and further data
// attributes; a group with a link is an <a>. Stylesheet styles the first kinds; what a page
// adds (selection, hover, focus) belongs to the page.
//
// # Manners of the drawing office
//
// Line widths follow ISO 128-2, heights of capitals ISO 3098-1, dimensions ISO 129-1; all from
// memory, in the measure that a home-made drawing wants. Check reports lettering below 2.5 mm
// on an A3 print, texts that collide or leave the sheet, ids used twice and numbers that are
// none.
package draw
