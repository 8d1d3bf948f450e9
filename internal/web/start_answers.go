package web

import (
	"fmt"
	"math"
	"strings"

	"tumblehome/build"
	"tumblehome/build/begin"
	"tumblehome/internal/words"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/reckon/outlook"
)

// firstAnswers is what the last screen of the first hour shows.
type firstAnswers struct {
	outlook.First
	Matters  []outlook.Matter
	Offers   []startOffer
	Assumed  []begin.Assumption
	Currency string
}

// firstAnswers works out what can be said already. It reckons with a machine of its own, so that the many vans supposed here do not
// push the real one out of the desk's memory.
func (v startView) firstAnswers() (firstAnswers, error) {
	machine := reckon.NewMachine()
	reckoner := func(doc *build.Document) *reckon.Reckoning { return machine.Reckon(doc, v.Day) }
	first, err := outlook.Look(v.Answers, reckoner)
	if err != nil {
		return firstAnswers{}, err
	}
	matters, err := outlook.Matters(v.Answers, reckoner)
	if err != nil {
		return firstAnswers{}, err
	}
	out := firstAnswers{First: first, Matters: outlook.Top(matters, 2), Assumed: begin.Assumed(v.Doc), Currency: v.Doc.Build.Currency}
	for _, offer := range begin.Offers(v.Answers) {
		a := v.Answers
		a.Arrangement = offer.ID
		doc, _, err := begin.Document(a)
		if err != nil {
			return firstAnswers{}, err
		}
		out.Offers = append(out.Offers, startOffer{offer, reckoner(doc), offer.ID == v.Answers.Arrangement})
	}
	return out, nil
}

// personWords is who somebody is: a name, or a stature where nobody said who sleeps in the van.
func (v startView) personWords(p outlook.Person) string {
	if len(v.Answers.Sleepers) == 0 {
		return "Somebody of " + words.Amount(p.Stature, "mm")
	}
	if p.Called == p.ID {
		return capital(unhyphen(p.ID))
	}
	return p.Called
}

// fitsWords says which way somebody fits. Everything is known only as well as the body: to about 20 mm.
func fitsWords(p outlook.Person) string {
	var ways []string
	for _, way := range []struct {
		name string
		over float64
	}{{"lengthwise", p.Along}, {"crosswise", p.Across}} {
		if way.over >= 0 {
			ways = append(ways, way.name)
		}
	}
	lies := "can lie " + strings.Join(ways, " or ")
	switch {
	case len(ways) == 1 && p.Along >= 0:
		lies += fmt.Sprintf(" (crosswise lacks %s where the van is widest)", words.Amount(-p.Across, "mm"))
	case len(ways) == 0:
		lies = fmt.Sprintf("finds no bed of full length inside: lengthwise lacks %s, so the bed reaches over the front seats", words.Amount(-p.Along, "mm"))
	}
	switch {
	case p.Up >= 30:
		return lies + ", and stands upright"
	case p.Up >= -30:
		return lies + ", and stands just upright, or not: measure the height well"
	case p.Up >= -400:
		return lies + fmt.Sprintf(", and stands with the head bent (%s too low)", words.Amount(-p.Up, "mm"))
	}
	return lies + ", and sits or kneels, since nobody stands in so low a van"
}

// leftWords says what may still be taken along.
func (f firstAnswers) leftWords() string {
	with := "with everybody, full tanks, water and the usual gear aboard"
	switch {
	case f.LeftOn == "":
		return "Nobody can say without a plate."
	case f.Left.Likely < 0:
		return fmt.Sprintf("About %s too much on %s %s: a lighter build, or less aboard.", words.Amount(-f.Left.Likely, "kg"), f.LeftOn, with)
	case f.Left.Late < 0:
		return fmt.Sprintf("About %s more until %s is at its limit, %s; but one in five it is less than nothing. Weigh the van before anything else.",
			words.Amount(f.Left.Likely, "kg"), f.LeftOn, with)
	}
	return fmt.Sprintf("About %s more until %s is at its limit, %s; one in five it is less than %s.", words.Amount(f.Left.Likely, "kg"), f.LeftOn, with, words.Amount(f.Left.Late, "kg"))
}

// moneyWords says what it may cost, in round money, and holds it against what there is.
func (f firstAnswers) moneyWords(budget *quantity.Money) string {
	text := fmt.Sprintf("Likely %s, one in five it passes %s. ", f.money(f.Money.Likely), f.money(f.Money.Late)) + onNoList
	if budget == nil {
		return text
	}
	switch have := budget.Float(); {
	case have < f.Money.Likely:
		return text + fmt.Sprintf(" That is more than the %s there is.", f.money(have))
	case have < f.Money.Late:
		return text + fmt.Sprintf(" The %s there is may just do.", f.money(have))
	}
	return text + fmt.Sprintf(" The %s there is will do.", f.money(budget.Float()))
}

// onNoList is said wherever the cost of what is planned is told.
const onNoList = "What stands on no list, such as sealant, screws, paint and blades, comes on top: of a first list often about 15 % (common practice, no source)."

func (f firstAnswers) money(amount float64) string { return words.Amount(amount, f.Currency) }

func (f firstAnswers) weekendWords(have *int) string {
	likely, late := math.Ceil(f.Weekends.Likely), math.Ceil(f.Weekends.Late)
	text := fmt.Sprintf("Likely %.0f weekends of ten hours, one in five it takes more than %.0f.", likely, late)
	switch {
	case have == nil:
		return text
	case float64(*have) < likely:
		return text + fmt.Sprintf(" There are %d: do less, or find another pair of hands.", *have)
	case float64(*have) < late:
		return text + fmt.Sprintf(" There are %d, which may just do.", *have)
	}
	return text + fmt.Sprintf(" There are %d, which will do.", *have)
}

// matterWords says what a thing that is only assumed moves.
func matterWords(m outlook.Matter) string {
	low, high := min(m.Low, m.High), max(m.Low, m.High)
	what := map[string]string{
		"left": "what may still be taken along", "along": "the room to lie lengthwise", "across": "the room to lie crosswise",
		"up": "the height to stand in", "floor": "the free floor", "money": "what it costs", "weekends": "how many weekends it takes",
	}[m.Answer]
	text := fmt.Sprintf("%s: so far %s, %s. Depending on it, %s is %s to %s", capital(m.Words), m.Value, m.Spread, what,
		words.Amount(low, m.Unit), words.Amount(high, m.Unit))
	if m.Turns {
		text += ", and what fits now may fit no longer"
	}
	return text + "."
}

// assumedStillWords says how much of a build is taken for granted.
func assumedStillWords(n int) string {
	if n == 1 {
		return "One thing is assumed, not measured."
	}
	return fmt.Sprintf("%d things are assumed, not measured.", n)
}
