package sheet

import (
	"strconv"
	"strings"

	"tumblehome/draw"
	"tumblehome/reckon"
	"tumblehome/trade/cables"
)

// keyed lines of the wiring.
const (
	wiringIndent = 9.0  // of the words behind a cable's number [mm of the paper]
	leastLetters = 30.0 // that is kept for what the letters mean
)

// wiringKey lists the cables: where each leads, how thick it is and how long, the ways it takes, and whether it is dangerous; then what the lines and
// words mean, then what the letters stand for. What has no room is counted.
func (d *drawing) wiringKey(box draw.Rect, line float64) []draw.Mark {
	var out []draw.Mark
	y, wide := box.Min.Y+plainSize, box.Width()-wiringIndent
	put := func(sign, words string) {
		out = append(out, draw.Lettering{Text: sign, At: draw.Pt(box.Min.X, y), Strong: true, Ink: draw.InkQuiet})
		for _, text := range wrapped(words, wide) {
			out = append(out, draw.Lettering{Text: cutShort(text, wide, false), At: draw.Pt(box.Min.X+wiringIndent, y), Ink: draw.InkQuiet})
			y += line
		}
	}
	last := box.Max.Y - leastLetters
	all := d.r.Cables.Cables
	for i := range all {
		if y > last {
			put("", strconv.Itoa(len(all)-i)+" more cables stand on the cable schedule.")
			break
		}
		if sign := signOf(d.r, &all[i]); sign != "" {
			out = append(out, draw.Area(draw.PenEdge, draw.FillInk, sign.Outline(draw.Pt(box.Min.X-2.6, y-plainSize/2), 3)))
		}
		put(all[i].Number, cableWords(d.r, &all[i]))
	}
	if len(all) > 0 {
		y += line / 2
		for _, words := range d.wiringMeans() {
			put("", words)
		}
		y += line / 2
	}
	return append(out, d.keyColumns(draw.Rect{Min: draw.Pt(box.Min.X, y), Max: box.Max}, line)...)
}

// cableWords tell a cable in a line.
func cableWords(r *reckon.Reckoning, c *cables.Cable) string {
	words := c.Title + ", " + sectionWords(c) + ", " + lengthWords(c)
	if route := routeOf(r, c); route != nil && len(route.Circuit.Along) > 0 {
		words += ", along " + strings.ReplaceAll(strings.Join(route.Circuit.Along, " and "), "-", " ")
	}
	if sign := signOf(r, c); sign != "" {
		words += "; " + string(sign) + ": see margin notes before you connect it"
	}
	return words
}

// wiringMeans is what lines and words of the wiring mean; only of what there is.
func (d *drawing) wiringMeans() []string {
	out := []string{"Drawn out: ways that you wrote. Dashed: nobody wrote a way; it is taken along the surfaces."}
	for i := range d.r.Cables.Cables {
		if d.r.Cables.Cables[i].Length.Known != cables.Measured {
			return append(out, aboutKey)
		}
	}
	return out
}
