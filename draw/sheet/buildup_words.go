package sheet

import (
	"math"
	"regexp"
	"strconv"
	"strings"

	"tumblehome/build"
	"tumblehome/draw"
	"tumblehome/trade/lining"
)

// isWool says whether a material is a fleece rather than a foam.
func isWool(material string) bool {
	return strings.Contains(material, "wool") || strings.Contains(material, "hemp") || strings.Contains(material, "fleece")
}

// name is a layer in words: what it is, how thick, on how much of the surface.
func (b *buildup) name(c lining.Course) string {
	m, _ := b.rows.Material(c.Material)
	title := brief(m.Title)
	if title == "" {
		title = strings.ReplaceAll(c.Material, "-", " ")
	}
	thick := c.InBay[1] - c.InBay[0]
	layer := b.layer(c.Pointer)
	if thick <= 0 {
		thick = m.Thick.Float()
	}
	text := title + ", " + tenth(thick) + " mm"
	if layer == nil {
		return text
	}
	if layer.Times != nil && *layer.Times > 1 {
		text = title + ", " + strconv.Itoa(*layer.Times) + " × " + tenth(thick/float64(*layer.Times)) + " mm"
	}
	if layer.Between != nil {
		text += " between battens"
	}
	if layer.Cover != nil && layer.Cover.Float() < 1 {
		text += " on " + whole(layer.Cover.Float()*100) + " %"
	}
	return text
}

var ownThickness = regexp.MustCompile(` \d+(\.\d+)? mm$`)

// brief is a material's title without how it is sold: up to the first comma, without its thickness and what stands in brackets.
func brief(title string) string {
	title, _, _ = strings.Cut(title, ",")
	title, _, _ = strings.Cut(title, " (")
	return ownThickness.ReplaceAllString(title, "")
}

// tenth writes a thickness: whole where it is, else with one decimal.
func tenth(v float64) string {
	if math.Abs(v-math.Round(v)) < 0.05 {
		return whole(v)
	}
	return strconv.FormatFloat(v, 'f', 1, 64)
}

// layer finds a layer of the document by its pointer: /lining/sides/2 or /lining/sides/2/bays/left-2.
func (b *buildup) layer(pointer string) *build.Layer {
	part := strings.Split(strings.TrimPrefix(pointer, "/"), "/")
	if len(part) < 3 {
		return nil
	}
	l := &b.r.Document.Lining
	all, ok := map[string][]build.Choice[build.Layer]{
		"floor": l.Floor, "sides": l.Sides, "left": l.Left, "right": l.Right, "roof": l.Roof, "doors": l.Doors, "front": l.Front,
	}[part[1]]
	i, err := strconv.Atoi(part[2])
	if !ok || err != nil || i < 0 || i >= len(all) {
		return nil
	}
	layer := all[i].Value
	if len(part) == 5 && part[3] == "bays" {
		layer = layer.Bays[part[4]]
	}
	return &layer
}

// pressed is a patch that lies in the insulation over it and adds no thickness: drawn on the steel over its share.
func (b *buildup) pressed(c lining.Course, layer *build.Layer) {
	m, _ := b.rows.Material(c.Material)
	thick, share := math.Max(m.Thick.Float(), 1.5), 1.0
	if layer != nil && layer.Cover != nil {
		share = layer.Cover.Float()
	}
	from := b.side(0) + 20
	b.box(draw.NoPen, draw.FillInk, place{reach - (reach-from)*share - 12, 0.6}, place{reach - 12, 0.6 + thick})
}

// words are the section's text equivalent.
func (b *buildup) words(title string) string {
	names := []string{"steel"}
	for _, c := range b.courses {
		names = append(names, b.name(c))
	}
	text := title + ". From the steel inwards: " + strings.Join(names, "; ") + ". The finished surface stands " + tenth(b.thick) + " mm from the steel"
	if b.depth > 0 {
		text += "; the ribs are " + tenth(b.depth) + " deep"
	}
	return text + "."
}
