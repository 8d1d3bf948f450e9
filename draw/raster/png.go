package raster

import (
	"fmt"
	"image"
	"image/png"
	"io"
	"math"

	"github.com/tdewolff/canvas"
	"github.com/tdewolff/canvas/renderers/rasterizer"

	"tumblehome/draw"
)

// Options choose the size and colours of the picture.
type Options struct {
	DotsPerMM float64    // 0 means 6 (about 150 to the inch)
	Theme     draw.Theme // Light or Dark
	Window    draw.Rect  // part of the sheet; empty shows all
}

// largest is the most pixels a picture may have each way: enough for A3 at 600 to the inch.
const largest = 10000

// Image paints the scene.
func Image(s draw.Scene, o Options) (image.Image, error) {
	window := o.Window
	if window.Empty() {
		window = s.Size.Rect()
	}
	dots := o.DotsPerMM
	if dots == 0 {
		dots = 6
	}
	w, h := window.Width(), window.Height()
	if !(w*dots >= 1 && h*dots >= 1 && math.Max(w, h)*dots <= largest) {
		return nil, fmt.Errorf("paint drawing as picture: %.0f × %.0f mm at %g dots per mm is not between 1 and %d dots", w, h, dots, largest)
	}
	r := rasterizer.New(w, h, canvas.DPMM(dots), canvas.DefaultColorSpace)
	b := &brush{r: r, theme: o.Theme, origin: window.Min, height: h}
	b.fill(canvas.Rectangle(w, h), draw.TokenSheet)
	draw.Paint(s.Marks, b)
	r.Close()
	return r, nil
}

// PNG paints the scene and writes it.
func PNG(w io.Writer, s draw.Scene, o Options) error {
	picture, err := Image(s, o)
	if err != nil {
		return err
	}
	return png.Encode(w, picture)
}
