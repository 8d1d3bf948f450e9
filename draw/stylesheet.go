package draw

import (
	"fmt"
	"strings"

	"tumblehome/draw/fonts"
)

// Stylesheet is the CSS by which pages show drawings: the tokens as variables for both
// themes, and a rule for every pen, fill and ink. The dark theme follows the reader's system
// unless <html data-theme="light"> or "dark" says otherwise.
func Stylesheet() string {
	var b strings.Builder
	fmt.Fprintf(&b, ":root {\n%s}\n", variables(Light))
	fmt.Fprintf(&b, "@media (prefers-color-scheme: dark) {\n:root:not([data-theme=\"light\"]) {\n%s}\n}\n", variables(Dark))
	fmt.Fprintf(&b, ":root[data-theme=\"dark\"] {\n%s}\n", variables(Dark))
	fmt.Fprintf(&b, "@media print {\n:root, :root:not([data-theme=\"light\"]), :root[data-theme=\"dark\"] {\n%s}\n}\n", variables(Print))
	b.WriteString(rules(func(t Token) string { return "var(--" + string(t) + ")" }))
	return b.String()
}

func variables(theme Theme) string {
	var b strings.Builder
	for _, t := range Tokens {
		fmt.Fprintf(&b, "  --%s: %s;\n", t, hex(theme, t))
	}
	return b.String()
}

// literalRules is the stylesheet of a file that must stand alone: no variables, since many
// viewers of SVG files do not know them.
func literalRules(theme Theme) string {
	return rules(func(t Token) string { return hex(theme, t) })
}

func hex(theme Theme, t Token) string {
	c := theme.Colour(t)
	return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B)
}

func rules(colour func(Token) string) string {
	var b strings.Builder
	b.WriteString(".drawing path { fill: none; fill-rule: evenodd; stroke: none; stroke-linecap: round; stroke-linejoin: round; }\n")
	fmt.Fprintf(&b, ".drawing text { fill: %s; stroke: none; font-family: \"%s\", \"Barlow\", sans-serif; font-weight: 400; font-kerning: none; font-variant-numeric: tabular-nums; white-space: pre; }\n",
		colour(TokenInk), fonts.Family)
	b.WriteString(".drawing .strong { font-weight: 600; }\n")
	for _, p := range Pens {
		n := p.Nib()
		fmt.Fprintf(&b, ".drawing .pen-%s { stroke: %s; stroke-width: %s;", p, colour(n.Colour), number(n.Width))
		if len(n.Dashes) > 0 {
			fmt.Fprintf(&b, " stroke-dasharray: %s; stroke-linecap: butt;", appendNumbers(nil, n.Dashes...))
		}
		b.WriteString(" }\n")
	}
	for _, f := range Fills {
		fmt.Fprintf(&b, ".drawing .fill-%s { fill: %s; }\n", f, colour(f.Token()))
	}
	for _, i := range Inks {
		fmt.Fprintf(&b, ".drawing text.%s { fill: %s; }\n", i.class(), colour(i.Token()))
	}
	return b.String()
}
