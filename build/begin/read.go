package begin

import (
	"slices"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
)

// Open tells whether a build is still in its first hour: a body from quick readings, or none yet, and nothing placed.
func Open(doc *build.Document) bool { return doc.Shell.Offsets == nil && len(doc.Fittings) == 0 }

// Read takes the answers of the first hour out of a build again, as far as they still stand there. What has been changed since by
// other ways counts as answered.
func Read(doc *build.Document) Answers {
	a := Answers{Title: doc.Build.Title, Rules: doc.Build.Rules, Currency: doc.Build.Currency, Budget: doc.Build.Budget, Weekends: doc.Build.Weekends,
		Wishes: wishIDs(readNote(doc.Use.Note, wishesAre))}
	if a.Title == unnamed {
		a.Title = ""
	}
	if a.Currency == (Answers{Rules: a.Rules}).currency() {
		a.Currency = ""
	}
	if with := readNote(doc.Build.Note, begunWith); len(with) == 1 {
		a.Arrangement = with[0]
	}
	if q := doc.Shell.Quick; q != nil {
		a.Body = q.Body
		a.Readings = Readings{Length: q.Length, Knee: q.WidthAtKnee, Arches: q.BetweenArches, Height: q.Height,
			DoorWidth: q.DoorWidth, DoorHeight: q.DoorHeight}
		if q.DoorSide != (Answers{Rules: a.Rules}).doorSide() {
			a.Readings.DoorSide = q.DoorSide
		}
		if doc.Shell.Note == nearest {
			a.Body = ""
		}
	}
	for _, id := range build.SortedKeys(doc.People) {
		if p := doc.People[id]; p.Note != nobodySaid {
			a.Sleepers = append(a.Sleepers, Sleeper{ID: id, Name: p.Called, Stature: p.Stature})
		}
	}
	a.readVehicle(doc.Vehicle)
	return a
}

// readVehicle takes for said what the note does not call typical.
func (a *Answers) readVehicle(v build.Vehicle) {
	typical := readNote(v.Note, assumedIn)
	said := func(name string) bool { return !slices.Contains(typical, name) }
	if said(typicalWheelbase) {
		a.Wheelbase = &v.Wheelbase
	}
	a.Plate.Train = v.Plate.Train
	if said(typicalGross) {
		a.Plate.Gross = v.Plate.Gross
	}
	if said(typicalFront) {
		a.Plate.Front = v.Plate.Front
	}
	if said(typicalRear) {
		a.Plate.Rear = v.Plate.Rear
	}
}

// liningOf is the lining that these answers begin with.
func (a Answers) liningOf() (build.Lining, error) {
	base, err := a.base()
	if err != nil {
		return build.Lining{}, err
	}
	doc, err := build.DecodeTree(tree.Merge(build.Encode(base), tree.Setting("", a.lining())), catalogue.Builtin())
	if err != nil {
		return build.Lining{}, err
	}
	return doc.Lining, nil
}

func sameLining(doc *build.Document, lining build.Lining) bool {
	return tree.Equal(build.Encode(&build.Document{Lining: doc.Lining}).Get("lining"), build.Encode(&build.Document{Lining: lining}).Get("lining"))
}

// Skipped are the questions of the first hour to which nothing was said.
func (a Answers) Skipped() []string {
	var out []string
	for _, q := range Questions {
		if !a.said(q) {
			out = append(out, q)
		}
	}
	return out
}

// Questions are the questions of the first hour, in their order.
var Questions = []string{"outline", "tape", "plate", "people", "wishes", "means"}

func (a Answers) said(question string) bool {
	r := a.Readings
	switch question {
	case "outline":
		return a.Body != ""
	case "tape":
		return r.Length != nil || r.Knee != nil || r.Arches != nil || r.Height != nil || r.DoorWidth != nil || r.DoorHeight != nil
	case "plate":
		return a.Plate.Gross != nil || a.Plate.Front != nil || a.Plate.Rear != nil || a.Plate.Train != nil || a.Wheelbase != nil
	case "people":
		return len(a.Sleepers) > 0
	case "wishes":
		return len(a.Wishes) > 0
	}
	return a.Budget != nil || a.Weekends != nil
}
