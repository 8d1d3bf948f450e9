package paper

import (
	"fmt"
	"io"
	"time"

	"codeberg.org/go-pdf/fpdf"

	"tumblehome/draw"
	"tumblehome/draw/fonts"
)

// Options describe the file.
type Options struct {
	Title  string
	Author string
	Date   time.Time // written into the file; the zero time is written as the start of 2000
}

// Write paints each scene onto a page of its own size.
func Write(w io.Writer, scenes []draw.Scene, o Options) error {
	pdf := New(o)
	for _, s := range scenes {
		// "P" takes the sides as they are; "L" would swap them.
		pdf.AddPageFormat("P", fpdf.SizeType{Wd: s.Size.Width, Ht: s.Size.Height})
		Paint(pdf, s, draw.Point{}, 1)
	}
	if err := pdf.Output(w); err != nil {
		return fmt.Errorf("write drawing as PDF: %w", err)
	}
	return nil
}

// New starts a PDF in millimetres without margins, with the lettering of drawings at hand, in
// which further pages may be set. Its bytes depend on nothing but what is put in.
func New(o Options) *fpdf.Fpdf {
	pdf := fpdf.NewCustom(&fpdf.InitType{UnitStr: "mm", Size: fpdf.SizeType{Wd: draw.A3.Width, Ht: draw.A3.Height}})
	if o.Date.IsZero() {
		o.Date = time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)
	}
	pdf.SetCreationDate(o.Date.UTC())
	pdf.SetModificationDate(o.Date.UTC())
	pdf.SetCatalogSort(true)
	pdf.SetTitle(o.Title, true)
	pdf.SetAuthor(o.Author, true)
	pdf.SetMargins(0, 0, 0)
	pdf.SetAutoPageBreak(false, 0)
	for f := range fonts.Face(fonts.Faces) {
		pdf.AddUTF8FontFromBytes(Family(f), style(f), f.File())
	}
	return pdf
}

// Family is the name under which New registers a face; the strong ones have style "B".
func Family(f fonts.Face) string {
	if f == fonts.SparePlain || f == fonts.SpareStrong {
		return "spare"
	}
	return "lettering"
}

func style(f fonts.Face) string {
	if f.IsStrong() {
		return "B"
	}
	return ""
}

// Paint draws a scene onto the current page of a PDF made by New, its top left corner at a
// point (mm), enlarged by a factor. Lines and lettering are enlarged with it.
func Paint(pdf *fpdf.Fpdf, s draw.Scene, at draw.Point, factor float64) {
	draw.Paint(s.Marks, &brush{pdf: pdf, at: at, factor: factor})
}
