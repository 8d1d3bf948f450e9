package begin

import (
	"fmt"
	"strings"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/quantity"
)

// Document is the build that follows from some answers, and what it assumes besides. Without an arrangement it has no fittings. The
// error says which answer is of no use: a reading outside what a van can be, two sleepers of one name, an unknown arrangement.
func Document(a Answers) (*build.Document, []Assumption, error) {
	base, err := a.base()
	if err != nil {
		return nil, nil, err
	}
	n := tree.Merge(build.Encode(base), tree.Setting("", a.lining()))
	if a.Arrangement != "" {
		with, err := a.arranged()
		if err != nil {
			return nil, nil, err
		}
		n = tree.Merge(n, tree.Setting("", with))
	}
	doc, err := build.DecodeTree(n, catalogue.Builtin())
	if err != nil {
		return nil, nil, fmt.Errorf("the first build: %w", err)
	}
	if a.Arrangement != "" {
		if a.doorSide() == "left" {
			mirror(doc)
		}
		if doc, err = a.ready(doc); err != nil {
			return nil, nil, fmt.Errorf("the first build: %w", err)
		}
	}
	return doc, Assumed(doc), nil
}

// Change is the patch that makes of the build of some answers the build of others. What the builder has changed since elsewhere
// stays as it is.
func Change(from, to Answers) (tree.Patch, error) {
	before, _, err := Document(from)
	if err != nil {
		return tree.Patch{}, err
	}
	after, _, err := Document(to)
	if err != nil {
		return tree.Patch{}, err
	}
	return tree.Difference(build.Encode(before), build.Encode(after)), nil
}

// base is all but what is laid and placed in the van.
func (a Answers) base() (*build.Document, error) {
	people, err := a.people()
	if err != nil {
		return nil, err
	}
	doc := &build.Document{
		Version: 1,
		Build:   build.Build{Title: orText(a.Title, unnamed), Rules: a.rules(), Currency: a.currency(), Budget: a.Budget, Weekends: a.Weekends},
		People:  people,
		Use:     build.Use{Gear: a.gear(), Note: noted(wishesAre, a.Wishes)},
		Vehicle: a.vehicle(),
		Shell:   build.Shell{Quick: a.quick()},
	}
	if a.Body == "" {
		doc.Shell.Note = nearest
	}
	if a.Arrangement != "" {
		doc.Build.Note = noted(begunWith, []string{a.Arrangement})
	}
	return doc, nil
}

// quick are the readings as they were given; those left out are for the shell to assume.
func (a Answers) quick() *build.QuickReadings {
	r := a.Readings
	return &build.QuickReadings{Body: a.body().ID, Length: r.Length, WidthAtKnee: r.Knee, BetweenArches: r.Arches,
		Height: r.Height, DoorWidth: r.DoorWidth, DoorHeight: r.DoorHeight, DoorSide: a.doorSide()}
}

// lining is a simple insulated lining.
func (a Answers) lining() *tree.Node { return fragments()["lining"].under(a.conditions()) }

// ready adds the load cases, which name the tanks, and has all of it checked again.
func (a Answers) ready(doc *build.Document) (*build.Document, error) {
	all, half, full, yes, no := build.SortedKeys(doc.People), quantity.Share(0.5), quantity.Share(1), quantity.YesNo(true), quantity.YesNo(false)
	ready := build.LoadCase{Title: "all aboard, full fuel, gear, water", People: all, Fuel: &full, Gear: &yes, Fill: map[string]quantity.Share{}}
	for id, f := range doc.Fittings {
		if strings.HasPrefix(f.Buy, "container-") && !strings.Contains(f.Buy, "grey") {
			ready.Fill[id] = full
		}
	}
	doc.Vehicle.Cases = map[string]build.LoadCase{
		"finished-dry": {Title: "finished, dry, nobody aboard", Fuel: &half, Gear: &no},
		"ready":        ready,
	}
	return build.DecodeTree(build.Encode(doc), catalogue.Builtin())
}

const (
	unnamed = "My van"
	nearest = "Assumed until the nearest outline is picked."
)

// Notes by which answers are found again that no other field of a document holds.
const (
	begunWith = "Begun with: "
	wishesAre = "Wishes: "
	assumedIn = "Typical, from memory, until read: "
)

func noted(what string, ids []string) string {
	if len(ids) == 0 {
		return ""
	}
	return what + strings.Join(ids, ", ") + "."
}

// readNote takes the ids out of a note again.
func readNote(note, what string) []string {
	_, rest, ok := strings.Cut(note, what)
	if !ok {
		return nil
	}
	list, _, _ := strings.Cut(rest, ".")
	return strings.Split(list, ", ")
}
