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
	What string `enum:"arrangement,wiring,circuit,cables,tests" default:"arrangement" help:"arrangement, wiring in its place, circuit diagram, cables to cut, or tests before switching on."`
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
	text, err := painted(c.Out, sheet.Printed(r, c.sheets)...)
	if err != nil {
		return err
	}
	return writeTo(c.Out, text, s)
}

// sheets are what is asked for.
func (c drawCommand) sheets(r *reckon.Reckoning) []draw.Scene {
	switch c.What {
	case "wiring":
		return []draw.Scene{sheet.WiringPlan(r, c.Mode, "")}
	case "circuit":
		return sheet.Circuits(r, "")
	case "cables":
		return sheet.Schedule(r, "")
	case "tests":
		return sheet.Tests(r, "")
	}
	return []draw.Scene{sheet.Arrangement(r, sheet.View{Mode: c.Mode, Size: a3, Only: c.Only})}
}

// dotsPerMM of a picture: 200 dots to the inch, good enough to print.
const dotsPerMM = 8

// painted writes drawings in the form that a file's ending asks for; only a PDF has several sheets.
func painted(path string, scenes ...draw.Scene) ([]byte, error) {
	var out bytes.Buffer
	var err error
	ending, first := strings.ToLower(filepath.Ext(path)), scenes[0]
	switch {
	case ending == ".pdf":
		err = paper.Write(&out, scenes, paper.Options{Title: first.Title})
	case ending != ".svg" && ending != ".png":
		err = fmt.Errorf("%s: a drawing ends in .svg, .pdf or .png", path)
	case len(scenes) > 1:
		err = fmt.Errorf("%s: that takes %d sheets, which only a .pdf has", path, len(scenes))
	case ending == ".svg":
		err = first.SVG(&out, draw.SVGOptions{Standalone: true, EmbedFonts: true})
	default:
		err = raster.PNG(&out, first, raster.Options{DotsPerMM: dotsPerMM})
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
