package cli

import (
	"bytes"
	"fmt"
	"path/filepath"
	"strings"

	"tumblehome/draw"
	"tumblehome/draw/paper"
	"tumblehome/draw/raster"
	"tumblehome/draw/sheet"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

type drawCommand struct {
	source
	Out  string `short:"o" required:"" help:"Where to write; the ending says how: .svg, .pdf or .png." type:"path"`
	Mode string `default:"day" help:"drive, day, night, one of the builder's own, or today."`
	Only string `enum:",plan,side,cross" default:"" help:"One view alone: plan, side or cross."`
}

// a3 is the sheet a drawing is printed on, lying [mm].
var a3 = draw.Size{Width: 420, Height: 297}

// Run draws the arrangement in one mode.
func (c drawCommand) Run(s *streams) error {
	r, err := c.reckon()
	if err != nil {
		return err
	}
	if err := knownMode(r, c.Mode); err != nil {
		return err
	}
	text, err := painted(c.Out, sheet.Arrangement(r, sheet.View{Mode: c.Mode, Size: a3, Only: c.Only}))
	if err != nil {
		return err
	}
	return writeTo(c.Out, text, s)
}

// dotsPerMM of a picture: 200 dots to the inch, good enough to print.
const dotsPerMM = 8

// painted writes a drawing in the form that a file's ending asks for.
func painted(path string, scene draw.Scene) ([]byte, error) {
	var out bytes.Buffer
	var err error
	switch ending := strings.ToLower(filepath.Ext(path)); ending {
	case ".svg":
		err = scene.SVG(&out, draw.SVGOptions{Standalone: true, EmbedFonts: true})
	case ".pdf":
		err = paper.Write(&out, []draw.Scene{scene}, paper.Options{Title: scene.Title})
	case ".png":
		err = raster.PNG(&out, scene, raster.Options{DotsPerMM: dotsPerMM})
	default:
		err = fmt.Errorf("%s: a drawing ends in .svg, .pdf or .png", path)
	}
	return out.Bytes(), err
}

// knownMode refuses a mode that the build does not have.
func knownMode(r *reckon.Reckoning, mode string) error {
	names := []string{sheet.Today}
	for _, m := range r.Places.Modes {
		names = append(names, m.Name)
	}
	for _, name := range names {
		if name == mode {
			return nil
		}
	}
	if near := quantity.Near(mode, names); near != "" {
		return fmt.Errorf("no mode is called %s; did you mean %s?", mode, near)
	}
	return fmt.Errorf("no mode is called %s; there are: %s", mode, strings.Join(names, " "))
}
