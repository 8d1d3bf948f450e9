package web

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/build/begin"
	"tumblehome/internal/words"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/reckon/outlook"
	"tumblehome/trade/finding"
)

// firstAnswers is what the last screen of the first hour shows.
type firstAnswers struct {
	outlook.First
	Matters  []outlook.Matter
	Offers   []startOffer
	Assumed  []begin.Assumption
	Currency string
}

// startOffer is one starting arrangement, worked out.
type startOffer struct {
	begin.Arrangement
	Reckoning *reckon.Reckoning
	Picked    bool
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
		lies += fmt.Sprintf(" (crosswise lacks %s)", words.Amount(-p.Across, "mm"))
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

// clashWords says what does not go together in an arrangement with these people and wishes, before it is picked.
func clashWords(o startOffer) string {
	var clashes []string
	for _, f := range o.Reckoning.Findings {
		told := slices.ContainsFunc(clashes, func(one string) bool { return strings.HasPrefix(f.Title, one) }) // by day already, or by night as well
		if f.Severity >= finding.Fault && !told {
			clashes = append(clashes, f.Title)
		}
	}
	switch n := len(clashes); {
	case n == 0:
		return ""
	case n > mostClashes:
		clashes = append(clashes[:mostClashes], fmt.Sprintf("and %d more", n-mostClashes))
	}
	return "To be put right afterwards: " + strings.Join(clashes, "; ") + "."
}

// mostClashes is how many are named on one card.
const mostClashes = 2

// assumedStillWords says how much of a build is taken for granted.
func assumedStillWords(n int) string {
	if n == 1 {
		return "One thing is assumed, not measured."
	}
	return fmt.Sprintf("%d things are assumed, not measured.", n)
}

// lacksWords names the wishes that an arrangement leaves open.
func lacksWords(o begin.Arrangement) string {
	var names []string
	for _, w := range begin.Wishes() {
		for _, lacked := range o.Lacks {
			if w.ID == lacked {
				names = append(names, strings.ToLower(w.Name[:1])+w.Name[1:])
			}
		}
	}
	if len(names) == 0 {
		return ""
	}
	return "Not in it: " + strings.Join(names, ", ") + "."
}

// tapeWords say where to hold the tape.
var tapeWords = map[string]string{
	"length":      "On the floor, from the back of the front seats (or the partition) to the closed rear doors.",
	"knee":        "Across, from skin to skin between two ribs, 400 mm above the floor.",
	"arches":      "Across, between the two wheel arches where they come nearest.",
	"height":      "In the middle of the van, from the floor up to the skin of the roof between two bows.",
	"door-width":  "The clear opening of the sliding door, from its front edge to its rear edge.",
	"door-height": "The clear opening of the sliding door, from the step to its upper edge.",
	"wheelbase":   "Outside, from the middle of the front wheel to the middle of the rear wheel.",
}

// tapeReading is one reading of the tape as the form asks for it.
type tapeReading struct{ Field, Label string }

var tapeReadings = []tapeReading{
	{"length", "Length of the load floor"}, {"knee", "Width at knee height"}, {"arches", "Width between the wheel arches"},
	{"height", "Height in the middle"}, {"door-width", "Width of the side door"}, {"door-height", "Height of the side door"},
}

// typicalReading is what is taken where a reading is left out.
func (v startView) typicalReading(field string) string {
	b := v.body()
	typical := map[string]quantity.Length{"length": b.Length, "knee": b.Knee, "arches": b.Arches, "height": b.Height, "door-width": b.DoorWidth, "door-height": b.DoorHeight}
	return "left out: " + words.Amount(typical[field].Float(), "mm")
}

var plateNumbers = []tapeReading{
	{"gross", "Greatest mass of the laden van"}, {"train", "Greatest mass of van and trailer"}, {"front", "Greatest load of the front axle"}, {"rear", "Greatest load of the rear axle"},
}

// typicalPlate is what is taken where a number of the plate, or the wheelbase, is left out and the others stay as they are.
func (v startView) typicalPlate(field string) string {
	a := v.Answers
	a.Arrangement = ""
	switch field {
	case "train":
		return "left out: no trailer"
	case "gross":
		a.Plate.Gross = nil
	case "front":
		a.Plate.Front = nil
	case "rear":
		a.Plate.Rear = nil
	case "wheelbase":
		a.Wheelbase = nil
	}
	doc, _, err := begin.Document(a)
	if err != nil {
		return ""
	}
	plate := doc.Vehicle.Plate
	if mass, ok := map[string]*quantity.Mass{"gross": plate.Gross, "front": plate.Front, "rear": plate.Rear}[field]; ok {
		return "left out: " + words.Amount(mass.Float(), "kg")
	}
	return "left out: " + words.Amount(doc.Vehicle.Wheelbase.Float(), "mm")
}

// What a first conversion usually takes, for those who have no idea yet: from memory, no source.
const (
	budgetHint = "Without the van itself. From memory: boards, lining and a bed take 1 500 to 3 000; with battery, fridge and heating it is 3 000 to 6 000. " +
		"Left out, the cost is reckoned and held against nothing."
	weekendsHint = "Those on which somebody can really work. From memory: a first build takes 25 to 50. Left out, the work is reckoned and held against nothing."
)

// plateWhere says where the plate is found.
func plateWhere(rules string) string {
	if rules == "us" {
		return "On a label on the frame of the driver's door. Pounds are taken when they are written: 7275 lb."
	}
	return "On a door post, or under the bonnet on the panel before the radiator. The four numbers stand one below the other."
}

// offerFigures are the figures of an arrangement by which it is told from the others.
func offerFigures(o startOffer, f firstAnswers) string {
	one := outlook.Of(o.Arrangement, o.Reckoning)
	return fmt.Sprintf("About %s and %.0f weekends; %s to spare on %s.", f.money(one.Money.Likely), math.Ceil(one.Weekends.Likely),
		words.Amount(one.Left.Likely, "kg"), one.LeftOn)
}
