package draw

import (
	"fmt"
	"maps"
	"slices"
	"strings"
)

// String is the scene in a readable form, one mark a line, for tests and failure messages.
func (s Scene) String() string {
	w := &plainWriter{}
	w.line("sheet %s × %s mm %q", number(s.Size.Width), number(s.Size.Height), s.Title)
	w.depth++
	Paint(s.Marks, w)
	return w.b.String()
}

// String is the group in a readable form.
func (g Group) String() string {
	w := &plainWriter{}
	Paint([]Mark{g}, w)
	return w.b.String()
}

// String is the shape in one line: pen, fill and path.
func (s Shape) String() string {
	return strings.Join(nonEmpty(string(s.Pen), fillWord(s.Fill), s.Path.String()), " ")
}

// String is the lettering in one line.
func (l Lettering) String() string {
	words := nonEmpty(fmt.Sprintf("%q", l.line()), number(l.height()), "at "+number(l.At.X)+","+number(l.At.Y),
		[]string{"", "middle", "end"}[l.Anchor], []string{"", "midline", "topline"}[l.Level])
	if l.Turn != 0 {
		words = append(words, "turned "+number(l.Turn))
	}
	if l.Strong {
		words = append(words, "strong")
	}
	return strings.Join(append(words, nonEmpty(string(l.Ink), fillWord(l.Ground))...), " ")
}

type plainWriter struct {
	b     strings.Builder
	depth int
}

func (w *plainWriter) line(format string, args ...any) {
	w.b.WriteString(strings.Repeat("  ", w.depth))
	fmt.Fprintf(&w.b, format, args...)
	w.b.WriteByte('\n')
}

func (w *plainWriter) Open(g Group) {
	words := nonEmpty("group", g.ID)
	for _, c := range strings.Fields(g.Class) {
		words = append(words, "."+c)
	}
	if g.Digest != "" {
		words = append(words, "digest="+g.Digest)
	}
	for _, k := range slices.Sorted(maps.Keys(g.Data)) {
		words = append(words, k+"="+g.Data[k])
	}
	if g.Href != "" {
		words = append(words, "→ "+g.Href)
	}
	if g.Title != "" {
		words = append(words, fmt.Sprintf("%q", g.Title))
	}
	w.line("%s", strings.Join(words, " "))
	w.depth++
}

func (w *plainWriter) Shut(Group)         { w.depth-- }
func (w *plainWriter) Shape(s Shape)      { w.line("%s", s) }
func (w *plainWriter) Letter(l Lettering) { w.line("%s", l) }

func fillWord(f Fill) string {
	if f == NoFill {
		return ""
	}
	return "on " + string(f)
}

func nonEmpty(words ...string) []string {
	out := words[:0]
	for _, s := range words {
		if s != "" {
			out = append(out, s)
		}
	}
	return out
}
