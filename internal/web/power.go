package web

import (
	"fmt"
	"math"
	"strings"

	"github.com/a-h/templ"

	"tumblehome/build"
	"tumblehome/draw/sheet"
	"tumblehome/internal/words"
	"tumblehome/trade/power"
)

// powerAnswer answers the first question of the page in a few sentences.
func powerAnswer(v view) []string {
	r := v.Power
	if len(r.Uses) == 0 {
		return []string{"Nothing in the van uses electricity yet."}
	}
	month := darkest(r)
	if month < 0 {
		return []string{fmt.Sprintf("What is in the van takes about %s a day.", wattHours(r.Uses, r.Habit))}
	}
	out := []string{takesWords(r, month)}
	if r.Battery == nil {
		return append(out, "There is no battery for the living space yet.")
	}
	flat := flatWords(r)
	if v.Doc.Power == nil || len(v.Doc.Power.Circuits) == 0 {
		flat = "No cable leads from the battery yet, so nothing would light. Once it is wired: " + decapital(flat)
	}
	out = append(out, flat, lastsWords(r))
	if v.Doc.Use.Climate == "" {
		out = append(out, "Nobody has said where you travel: the weather of "+v.Climate.Place.Name+" is taken.")
	}
	return out
}

// darkest is the month, from 0, that the page answers for; -1 where no trips are known.
func darkest(r power.Result) int {
	if m := r.Darkest - 1; m >= 0 && r.Months[m].Nights > 0 {
		return m
	}
	return -1
}

func takesWords(r power.Result, month int) string {
	m := r.Months[month]
	text := fmt.Sprintf("In %s a day in the van takes about %s", monthWords(month+1), whPerDay(m.Use[r.Habit]))
	switch {
	case m.Yield < 5 && m.Engine < 5:
		return text + ", and nothing brings any."
	case m.Engine < 5:
		return text + fmt.Sprintf("; the sun brings about %s.", whPerDay(m.Yield))
	case m.Yield < 5:
		return text + fmt.Sprintf("; driving brings about %s.", whPerDay(m.Engine))
	}
	return text + fmt.Sprintf("; the sun brings about %s and driving %s.", whPerDay(m.Yield), whPerDay(m.Engine))
}

func flatWords(r power.Result) string {
	worst := -1
	for i, m := range r.Months {
		if m.Flat.In > 0 && (worst < 0 || m.Flat.Share > r.Months[worst].Flat.Share) {
			worst = i
		}
	}
	if worst < 0 {
		return "How often the battery is flat cannot be said: no trips are written down."
	}
	w := r.Months[worst].Flat
	switch {
	case w.Of == 0:
		return fmt.Sprintf("In %d years of weather the lights never went out.", r.Years)
	case w.Share < 0.005:
		return fmt.Sprintf("The battery is flat in fewer than one night of two hundred, even in %s.", monthWords(worst+1))
	}
	return fmt.Sprintf("In %s the battery is flat in %s of a hundred nights; over all trips in %s.", monthWords(worst+1), nightsOf(w.Share), nightsOf(r.Flat.Share))
}

// nightsOf is a share in nights of a hundred.
func nightsOf(share float64) string {
	switch n := 100 * share; {
	case n == 0:
		return "none"
	case n < 1:
		return "less than one"
	}
	return fmt.Sprintf("about %.0f", 100*share)
}

func lastsWords(r power.Result) string {
	return fmt.Sprintf("From full, without sun and without driving, it lasts %s.", daysWords(r.Autonomy))
}

// daysWords is a time as a sentence has it, rounded as figures are.
func daysWords(days float64) string {
	if math.IsInf(days, 0) || days > 60 {
		return "more than two months"
	}
	switch words.Round(days, "d") {
	case 0:
		return "less than half a day"
	case 0.5:
		return "half a day"
	case 1:
		return "a day"
	}
	return words.Amount(days, "d")
}

// whPerDay rounds to what one can tell.
func whPerDay(v float64) string { return words.Amount(10*math.Round(v/10), "Wh") }

// wattHours is what all things take on a day of one way of living, mean of the year.
func wattHours(uses []power.Use, habit int) string {
	sum := 0.0
	for _, u := range uses {
		sum += u.Mean[habit]
	}
	return whPerDay(sum)
}

// shownMonth is the month, from 0, of the drawing of a day: the one asked for if there are trips in it, else the darkest.
func (v view) shownMonth() int {
	if m := v.Night.Month - 1; m >= 0 && v.Power.Months[m].Nights > 0 {
		return m
	}
	return darkest(v.Power)
}

func powerMonths(v view) []nightLink {
	var out []nightLink
	for i, m := range v.Power.Months {
		if m.Nights > 0 {
			out = append(out, nightLink{monthWords(i + 1)[:3], "/power?" + chosenNight{i + 1, false}.query(), i == v.shownMonth()})
		}
	}
	return out
}

func yearDrawing(v view, phone bool) templ.Component {
	return svgOf(sheet.PowerYear(v.Power, paperWide(phone)), sized("power-year", phone))
}

func dayDrawing(v view, phone bool) templ.Component {
	month := v.shownMonth()
	return svgOf(sheet.PowerDay(v.Power.Months[month], month+1, 1-v.Power.Battery.Usable, paperWide(phone)), sized("power-day", phone))
}

// used is a row of the diary.
type used struct {
	Name, How string
	Wh        [3]string
}

func usedRows(v view) []used {
	var out []used
	for _, u := range v.Power.Uses {
		row := used{Name: capital(u.Name), How: strings.TrimSuffix(u.How+"; "+u.Assumed, "; ")}
		for i, wh := range u.Mean {
			row.Wh[i] = wattHour(wh)
		}
		out = append(out, row)
	}
	return out
}

func wattHour(v float64) string {
	if v > 0 && v < 5 {
		return "under 5 Wh"
	}
	return words.Amount(v, "Wh")
}

// powerFigures are the codes of the months that have nights.
func powerFigures(v view, beginning string) []string {
	var out []string
	for _, f := range v.Figures {
		if strings.HasPrefix(f.Code, beginning) {
			out = append(out, f.Code)
		}
	}
	return out
}

// habitEntry is how people live, ready to be changed.
func habitEntry() entry {
	return entry{Path: "/use/habits", Label: "how you live", Choices: []choice{{"frugal", "frugal"}, {"usual", "usual"}, {"cosy", "cosy"}}}
}

// bankEntries are what the document says of its batteries.
func bankEntries(v view) []entry {
	var out []entry
	if v.Doc.Power == nil {
		return nil
	}
	if len(v.Doc.Power.Batteries) > 0 {
		out = append(out, entry{Path: "/vehicle/volts", Label: "the vehicle's own battery, in volts", Choices: []choice{{"12", "12"}, {"24", "24"}}})
	}
	for _, id := range build.SortedKeys(v.Doc.Power.Batteries) {
		at := "/power/batteries/" + id
		out = append(out, fieldOf(at+"/main-fuse", unhyphen(id)+": main fuse", "A"), fieldOf(at+"/tested", unhyphen(id)+": a test found it to hold", "Ah"),
			entry{Path: at + "/cut-off", Label: unhyphen(id) + ": stops charging in frost, by its label", Choices: wordsAllowed("yes", "no")},
			entry{Path: at + "/heated", Label: unhyphen(id) + ": warms itself", Choices: wordsAllowed("yes", "no")})
	}
	return out
}
