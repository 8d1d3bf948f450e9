package begin

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/quantity"
)

// An Assumption is something nobody has said yet, and what was taken instead.
type Assumption struct {
	Path      string // JSON Pointer of the value
	Words     string // what it is
	Value     string // what was taken, in words
	Spread    string // how far off it may be, in words
	Matters   string // what hangs on it
	Asked     string // the question of the first hour that asks for it, or empty
	Low, High string // least and most it could reasonably be, in the document's grammar; empty where that is no number
}

// Assumed lists what a document takes for granted that was never said: readings left out, figures that are still the typical ones of
// its body, masses guessed from stature, a lining nobody chose. What has been changed since is not among them.
func Assumed(doc *build.Document) []Assumption {
	if doc.Shell.Quick == nil {
		return nil
	}
	a := Read(doc)
	all := slices.Concat(a.assumedReadings(), a.assumedVehicle(doc), a.assumedPeople(doc))
	if lining, err := a.liningOf(); err == nil && sameLining(doc, lining) {
		all = append(all, Assumption{Path: "/lining", Words: "lining", Value: "a simple insulated floor, sides and roof", Spread: "20 mm and 40 kg either way", Matters: "room, weight, money"})
	}
	if len(a.Wishes) == 0 {
		all = append(all, Assumption{Path: "/use/note", Words: "wishes", Value: "a bed, a seat and a place to cook", Spread: "anything", Matters: "everything", Asked: "wishes"})
	}
	return all
}

// assumedReadings are those that the tape has not taken. How far the typical ones may be off: from memory of vans of each class.
func (a Answers) assumedReadings() []Assumption {
	b, r := a.body(), a.Readings
	var all []Assumption
	if a.Body == "" {
		all = append(all, Assumption{Path: "/shell/quick/body", Words: "outline of the van", Value: b.Name, Spread: "any of the nine", Matters: "everything", Asked: "outline"})
	}
	for _, one := range []struct {
		read             *quantity.Length
		key, words, what string
		typical, off     quantity.Length
	}{
		{r.Length, "length", "length of the load floor", "beds lengthwise, everything along the van", b.Length, b.Length / 10},
		{r.Knee, "width-at-knee", "width at knee height", "beds crosswise, the way through", b.Knee, 50},
		{r.Arches, "between-arches", "width between the wheel arches", "what goes on the floor at the rear", b.Arches, 60},
		{r.Height, "height", "height in the middle", "standing, sitting, bunks", b.Height, 60},
		{r.DoorWidth, "door-width", "width of the side door", "what can be carried in, where the galley may stand", b.DoorWidth, 80},
		{r.DoorHeight, "door-height", "height of the side door", "what can be carried in", b.DoorHeight, 60},
	} {
		noDoor := strings.HasPrefix(one.key, "door-") && a.doorSide() == "none"
		if one.read == nil && !noDoor {
			all = append(all, lengthAssumed("/shell/quick/"+one.key, one.words, one.typical, one.off, one.what, "tape"))
		}
	}
	return all
}

func lengthAssumed(path, words string, typical, off quantity.Length, matters, asked string) Assumption {
	return Assumption{Path: path, Words: words, Value: plainMM(typical), Spread: "give or take " + plainMM(off), Matters: matters, Asked: asked,
		Low: (typical - off).String(), High: (typical + off).String()}
}

// assumedVehicle are the figures named in the vehicle's note that are still the typical ones.
func (a Answers) assumedVehicle(doc *build.Document) []Assumption {
	v, usual, note := doc.Vehicle, a.vehicle(), readNote(doc.Vehicle.Note, assumedIn)
	var all []Assumption
	take := func(name string, same bool, one Assumption) {
		if same && slices.Contains(note, name) {
			all = append(all, one)
		}
	}
	mass := func(path, words string, m *quantity.Mass) Assumption {
		low, high := tens(0.9**m), tens(1.12**m)
		return Assumption{Path: path, Words: words, Value: plainKG(*m), Spread: plainKG(low) + " to " + plainKG(high),
			Matters: "how much may be taken along", Asked: "plate", Low: low.String(), High: high.String()}
	}
	take(typicalGross, same(v.Plate.Gross, usual.Plate.Gross), mass("/vehicle/plate/gross", "greatest mass on the plate", usual.Plate.Gross))
	take(typicalFront, same(v.Plate.Front, usual.Plate.Front), mass("/vehicle/plate/front", "front axle on the plate", usual.Plate.Front))
	take(typicalRear, same(v.Plate.Rear, usual.Plate.Rear), mass("/vehicle/plate/rear", "rear axle on the plate", usual.Plate.Rear))
	take(typicalWheelbase, v.Wheelbase == usual.Wheelbase,
		lengthAssumed("/vehicle/wheelbase", "wheelbase", usual.Wheelbase, 150, "how the mass is shared between the axles", "plate"))
	take(typicalOutside, same(v.Width, usual.Width) && same(v.Height, usual.Height) && same(v.Overhang, usual.Overhang),
		Assumption{Path: "/vehicle/overhang", Words: "size outside", Value: fmt.Sprintf("%s wide, %s high", plainMM(*usual.Width), plainMM(*usual.Height)),
			Spread: "give or take 100 mm", Matters: "barriers and ferries, and the guess of the bare van's mass"})
	take(typicalSeats, true, Assumption{Path: "/vehicle/seats", Words: "seats in the cab", Value: "two", Spread: "or three", Matters: "how many may travel, weight on the front axle"})
	take(typicalTank, same(v.Tank, usual.Tank), Assumption{Path: "/vehicle/tank", Words: "fuel tank", Value: fmt.Sprintf("%v l", usual.Tank.Holds), Spread: "give or take 15 l", Matters: "weight with a full tank"})
	if len(v.Weighed) == 0 {
		all = append(all, Assumption{Path: "/vehicle/weighed", Words: "mass of the bare van", Value: "guessed from its size", Spread: "one part in eight either way", Matters: "how much may be taken along"})
	}
	return all
}

func same[T comparable](a, b *T) bool { return a != nil && b != nil && *a == *b }

// assumedPeople are sleepers nobody spoke of, and masses still guessed from stature.
func (a Answers) assumedPeople(doc *build.Document) []Assumption {
	var all []Assumption
	for _, id := range build.SortedKeys(doc.People) {
		p := doc.People[id]
		if p.Note == nobodySaid {
			low, high := p.Stature-120, p.Stature+130
			all = append(all, Assumption{Path: "/people/" + id + "/stature", Words: "stature of " + orText(p.Called, id), Value: plainMM(p.Stature),
				Spread: plainMM(low) + " to " + plainMM(high), Matters: "length of the bed, headroom", Asked: "people", Low: low.String(), High: high.String()})
		}
		if m := massOf(p.Stature); p.Mass == m {
			all = append(all, Assumption{Path: "/people/" + id + "/mass", Words: "mass of " + orText(p.Called, id), Value: plainKG(m.Likely),
				Spread: plainKG(m.Low) + " to " + plainKG(m.High), Matters: "weight with all aboard", Low: m.Low.String(), High: m.High.String()})
		}
	}
	return all
}

// plainMM is a length as people say it, to 5 mm, thousands apart.
func plainMM(l quantity.Length) string { return quantity.Parted(5*math.Round(float64(l)/5)) + " mm" }

// plainKG is a mass as people say it, to 5 kg from 100 on.
func plainKG(m quantity.Mass) string {
	if m < 100 {
		return quantity.Parted(float64(m)) + " kg"
	}
	return quantity.Parted(5*math.Round(float64(m)/5)) + " kg"
}
