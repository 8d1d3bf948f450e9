package sheet

import (
	"tumblehome/trade/cables"
)

// sectionWords is the copper of a cable, with a word where it was chosen by the program.
func sectionWords(c *cables.Cable) string {
	if c.Section.MM2 == 0 {
		return "section open"
	}
	return plainNumber(c.Section.MM2) + " mm²"
}

// lengthWords is how long a cable is, one way; about where that was not measured.
func lengthWords(c *cables.Cable) string {
	text := plainNumber(float64(int(c.Length.MM/100+0.5))/10) + " m"
	if c.Length.Known != cables.Measured {
		return "about " + text
	}
	return text
}

// fuseWords is what a fuse is rated at.
func fuseWords(p *cables.Protection) string {
	if p.Amps == 0 {
		return "rating open"
	}
	return plainNumber(p.Amps) + " A"
}

// number of a cable: that of its fuse as well.
func number(c *cables.Cable) string {
	if len(c.Number) > 1 {
		return c.Number[1:]
	}
	return ""
}
