package draw

import (
	"encoding/base64"
	"fmt"
	"io"
	"maps"
	"slices"
	"strings"

	"tumblehome/draw/fonts"
)

// SVGOptions chooses between a drawing inside a page and a file of its own. The zero value is
// the drawing inside a page: classes only, no colours, no style, as the content policy asks.
type SVGOptions struct {
	ID         string // of the svg element
	Class      string // added to "drawing"
	Window     Rect   // the part of the sheet to show; empty shows all of it
	Standalone bool   // a file: XML head, size in millimetres, stylesheet inside
	EmbedFonts bool   // a file that carries its lettering with it (about 90 kB more)
	Theme      Theme  // of a file
}

// SVG writes the scene as an SVG drawing. The only possible error is the writer's.
func (s Scene) SVG(w io.Writer, o SVGOptions) error {
	p := &svgBrush{b: make([]byte, 0, 32<<10)}
	p.head(s, o)
	Paint(s.Marks, p)
	p.b = append(p.b, "</svg>\n"...)
	_, err := w.Write(p.b)
	return err
}

// SVG writes the group alone, as it stands inside the drawing: what a page fetches to replace
// a fitting that changed.
func (g Group) SVG(w io.Writer) error {
	p := &svgBrush{}
	Paint([]Mark{g}, p)
	_, err := w.Write(p.b)
	return err
}

type svgBrush struct {
	b    []byte
	ends []string // of the open elements
}

func (p *svgBrush) head(s Scene, o SVGOptions) {
	if o.Standalone {
		p.b = append(p.b, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"...)
	}
	window := o.Window
	if window.Empty() {
		window = s.Size.Rect()
	}
	p.b = append(p.b, `<svg xmlns="http://www.w3.org/2000/svg"`...)
	p.attribute("id", o.ID)
	p.attribute("class", strings.TrimSpace("drawing "+o.Class))
	p.b = append(p.b, ` viewBox="`...)
	p.b = appendNumbers(p.b, window.Min.X, window.Min.Y, window.Width(), window.Height())
	p.b = append(p.b, '"')
	if o.Standalone {
		p.b = fmt.Appendf(p.b, ` width="%smm" height="%smm"`, number(window.Width()), number(window.Height()))
	}
	p.attribute("role", role(s.Marks))
	p.attribute("aria-label", s.Title)
	p.b = append(p.b, ">\n"...)
	p.element("title", s.Title)
	p.element("desc", s.Description)
	if o.Standalone {
		p.style(o)
	}
}

// role is that of a picture. A drawing with links is a group instead: a picture hides what is
// inside it from a screen reader, and nothing that takes the focus may be hidden.
func role(marks []Mark) string {
	for _, m := range marks {
		if g, ok := m.(Group); ok && (safeLink(g.Href) != "" || role(g.Marks) == "group") {
			return "group"
		}
	}
	return "img"
}

func (p *svgBrush) style(o SVGOptions) {
	p.b = append(p.b, "<style>\n"...)
	if o.EmbedFonts {
		p.font(400, fonts.Regular)
		p.font(600, fonts.SemiBold)
	}
	p.b = append(p.b, literalRules(o.Theme)...)
	p.b = append(p.b, "</style>\n"...)
	p.b = append(p.b, `<path class="fill-sheet" d="`...)
	p.b = append(p.b, `M-2000 -2000H6000V6000H-2000Z"/>`+"\n"...)
}

func (p *svgBrush) font(weight int, file []byte) {
	p.b = fmt.Appendf(p.b, "@font-face { font-family: %q; font-weight: %d; src: url(data:font/ttf;base64,%s); }\n",
		fonts.Family, weight, base64.StdEncoding.EncodeToString(file))
}

func (p *svgBrush) Open(g Group) {
	tag := "g"
	href := safeLink(g.Href)
	if href != "" {
		tag = "a"
	}
	p.b = append(p.b, '<')
	p.b = append(p.b, tag...)
	p.attribute("id", g.ID)
	p.attribute("class", g.Class)
	p.attribute("href", href)
	p.attribute("data-digest", g.Digest)
	for _, k := range slices.Sorted(maps.Keys(g.Data)) {
		if name := dataName(k); name != "" && name != "digest" {
			p.attribute("data-"+name, g.Data[k])
		}
	}
	p.b = append(p.b, ">\n"...)
	p.element("title", g.Title)
	p.ends = append(p.ends, "</"+tag+">\n")
}

func (p *svgBrush) Shut(Group) {
	last := len(p.ends) - 1
	p.b = append(p.b, p.ends[last]...)
	p.ends = p.ends[:last]
}

func (p *svgBrush) Shape(s Shape) {
	class := make([]string, 0, 2)
	if s.Pen != NoPen {
		class = append(class, "pen-"+string(s.Pen))
	}
	if s.Fill != NoFill {
		class = append(class, "fill-"+string(s.Fill))
	}
	p.b = append(p.b, "<path"...)
	p.attribute("class", strings.Join(class, " "))
	p.b = append(p.b, ` d="`...)
	p.b = s.Path.appendData(p.b)
	p.b = append(p.b, "\"/>\n"...)
}

func (p *svgBrush) Letter(l Lettering) {
	p.b = append(p.b, `<text x="`...)
	p.b = appendNumber(p.b, l.At.X)
	p.b = append(p.b, `" y="`...)
	p.b = appendNumber(p.b, l.baseline())
	p.b = append(p.b, `" font-size="`...)
	p.b = append(appendNumber(p.b, emOf(l.height())), '"')
	if l.Anchor != Start {
		p.attribute("text-anchor", [...]string{"start", "middle", "end"}[l.Anchor])
	}
	if l.Turn != 0 {
		p.b = append(p.b, ` transform="rotate(`...)
		p.b = append(appendNumbers(p.b, l.Turn, l.At.X, l.At.Y), `)"`...)
	}
	p.attribute("class", strings.Join(nonEmpty(strongClass(l.Strong), l.Ink.class()), " "))
	p.b = append(p.b, '>')
	p.b = appendEscaped(p.b, l.line())
	p.b = append(p.b, "</text>\n"...)
}

func strongClass(strong bool) string {
	if strong {
		return "strong"
	}
	return ""
}

// class is the CSS class of the ink; plain ink needs none.
func (i Ink) class() string {
	if i == InkPlain {
		return ""
	}
	return "ink-" + string(i)
}

// attribute writes name="value", or nothing for an empty value.
func (p *svgBrush) attribute(name, value string) {
	if value == "" {
		return
	}
	p.b = append(p.b, ' ')
	p.b = append(p.b, name...)
	p.b = append(p.b, `="`...)
	p.b = append(appendEscaped(p.b, cleanText(value)), '"')
}

// element writes a whole element that holds only text, or nothing for an empty text.
func (p *svgBrush) element(name, text string) {
	if text == "" {
		return
	}
	p.b = fmt.Appendf(p.b, "<%s>", name)
	p.b = appendEscaped(p.b, cleanText(text))
	p.b = fmt.Appendf(p.b, "</%s>\n", name)
}
