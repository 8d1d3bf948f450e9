package web

import (
	"tumblehome/build/begin"
	"tumblehome/internal/words"
	"tumblehome/quantity"
)

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
