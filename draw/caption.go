package draw

// captionSize is the height of the capitals of names inside things, in millimetres.
const captionSize = 2.8

// Caption letters a name, and a quieter second line if there is one, in the middle of a box:
// both lines, or only the name, or the name turned to read from the right. When not even that
// fits it gives nothing; the caller may then lay a label beside the thing (draw/label).
func Caption(box Rect, name, detail string) []Mark {
	const air = 0.8
	room := box.Inset(air)
	first := Lettering{Text: name, At: box.Centre(), Size: captionSize, Anchor: Middle, Level: Midline, Strong: true}
	if detail != "" {
		upper, second := first, Lettering{Text: detail, At: box.Centre(), Anchor: Middle, Level: Midline, Ink: InkQuiet}
		upper.At.Y -= 2.5
		second.At.Y += 2.3
		if upper.Bounds().Within(room) && second.Bounds().Within(room) {
			return []Mark{upper, second}
		}
	}
	for _, turn := range [...]float64{0, -90} {
		first.Turn = turn
		if first.Bounds().Within(room) {
			return []Mark{first}
		}
	}
	return nil
}
