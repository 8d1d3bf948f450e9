package web

import (
	"fmt"

	"tumblehome/trade/cables"
)

// worstDrop answers the second question of the page.
func worstDrop(v view) string {
	if len(v.Cables.Cables) == 0 {
		return "No circuits are written down yet."
	}
	worst := v.Cables.Cables[0]
	for _, c := range v.Cables.Cables {
		if share(c) > share(worst) {
			worst = c
		}
	}
	return fmt.Sprintf("%s. Most is lost on the way to %s: %s of the voltage.", capital(cableCount(len(v.Cables.Cables))), worst.To.Words, dropWords(worst))
}

func cableCount(n int) string {
	if n == 1 {
		return "one cable"
	}
	return count(n) + " cables"
}

func share(c cables.Cable) float64 { return c.Drop.Cables() / c.Volts }

// dropWords is what is lost in the cables as a share, to the tenth below ten.
func dropWords(c cables.Cable) string {
	s := 100 * share(c)
	if s >= 10 {
		return fmt.Sprintf("%.0f %%", s)
	}
	return fmt.Sprintf("%.1f %%", s)
}

func copperWords(mm2 float64) string { return fmt.Sprintf("%v\u00a0mm²", mm2) }

func fuseWords(p cables.Protection) string {
	switch {
	case p.Needless:
		return "needs none"
	case p.Amps <= 0:
		return "none"
	}
	text := fmt.Sprintf("%v A", p.Amps)
	if p.Colour != "" {
		text += " " + p.Colour
	}
	return text
}

func mainsWords(m cables.Mains) string {
	switch m.State {
	case "none":
		return "There is none."
	case "undecided":
		return "Whether there will be an inlet is undecided."
	case "planned":
		if m.By != "" {
			return "Planned, done by " + m.By + "."
		}
		return "Planned. Nobody is named yet who does it."
	}
	return "Nobody has said yet whether there will be any."
}
