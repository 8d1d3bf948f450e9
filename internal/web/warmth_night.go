package web

import (
	"fmt"
	"net/url"
	"slices"
	"strconv"

	"github.com/a-h/templ"

	"tumblehome/draw/sheet"
	"tumblehome/trade/warmth"
)

// chosenNight is the night that a reader of the page asks for; the zero value is the usual night of the coldest month.
type chosenNight struct {
	Month int // 1 to 12
	Cold  bool
}

// nightChosen reads it from an address; what is no month asks for none.
func nightChosen(asked url.Values) chosenNight {
	month, err := strconv.Atoi(asked.Get("month"))
	if err != nil || month < 1 || month > 12 {
		return chosenNight{}
	}
	return chosenNight{month, asked.Get("night") == "cold"}
}

// query is the choice as the end of an address, "" for none.
func (c chosenNight) query() string {
	text := ""
	if c.Month > 0 {
		text = "month=" + count(c.Month)
	}
	if c.Cold {
		text += "&night=cold"
	}
	return text
}

// shownNight is the night to draw: the one asked for, else the usual one of its month, else the one that the page answers for.
func (v view) shownNight() *warmth.Night {
	found := v.usualNight()
	for i := range v.Warmth.Nights {
		n := &v.Warmth.Nights[i]
		if n.Month == v.Night.Month && n.Cold == v.Night.Cold {
			return n
		}
		if n.Month == v.Night.Month && !n.Cold {
			found = n
		}
	}
	return found
}

// nightLink is a link to one night.
type nightLink struct {
	Words, Address string
	Here           bool
}

// monthLinks lead to a usual night of each month.
func monthLinks(v view) []nightLink {
	shown := v.shownNight()
	var out []nightLink
	for m := 1; m <= 12; m++ {
		out = append(out, nightLink{monthWords(m)[:3], "/warmth?" + chosenNight{m, false}.query(), shown.Month == m})
	}
	return out
}

// coldLinks lead to the usual night of the month shown and the cold one; none where no trip falls in it.
func coldLinks(v view) []nightLink {
	shown := v.shownNight()
	for _, n := range v.Warmth.Nights {
		if n.Month == shown.Month && n.Cold {
			usual, cold := chosenNight{n.Month, false}, chosenNight{n.Month, true}
			return []nightLink{{"a usual night", "/warmth?" + usual.query(), !shown.Cold}, {"one in ten is colder", "/warmth?" + cold.query(), shown.Cold}}
		}
	}
	return nil
}

// habitWords say what people do in a night.
func habitWords(h warmth.Habit) string {
	return fmt.Sprintf("People come in at %d h, cook, sleep from %d h to %d h and leave at %d h. A line shows how things stand at the end of each hour.", warmth.ComeIn, h.ToBed, h.Up, warmth.Leave)
}

// nightFigures are those of the usual night; that of a heater where one may burn.
func nightFigures(v view) []string {
	codes := []string{"warmth.night.low", "warmth.heater", "warmth.condensed", "warmth.co2.peak"}
	if !v.Warmth.Told().Warmed {
		codes = slices.Delete(codes, 1, 2)
	}
	return codes
}

// nightTitle says which night is shown.
func nightTitle(n *warmth.Night) string {
	if n.Cold {
		return "In " + monthWords(n.Month) + ", a night that only one in ten is colder than"
	}
	return "A usual night in " + monthWords(n.Month)
}

// nightDrawing draws a night, as wide as a page or as a phone.
func nightDrawing(v view, n *warmth.Night, phone bool) templ.Component {
	told, power := v.Warmth.Told(), 0.0
	if told.Warmed {
		power = told.Power
	}
	return svgOf(sheet.Night(*n, told.Habit, power, paperWide(phone)), sized("night", phone))
}

func paperWide(phone bool) float64 {
	if phone {
		return sheet.Phone
	}
	return sheet.WideChart
}

// sized is the id of a drawing that a page holds twice, for wide windows and for phones.
func sized(id string, phone bool) string {
	if phone {
		return id + "-phone"
	}
	return id + "-wide"
}

func winterDrawing(w warmth.Winter, phone bool) templ.Component {
	return svgOf(sheet.Winter(w, paperWide(phone)), sized("winter", phone))
}
