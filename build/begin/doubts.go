package begin

import (
	"fmt"
	"slices"

	"tumblehome/quantity"
)

// A Doubt is about something said that cannot be so, or hardly.
type Doubt struct {
	About []string // the fields concerned: length, knee, arches, height, door-width, door-height; gross, front, rear, train, wheelbase; stature-1 …
	Words string
	Sure  bool // it cannot be so; else it is only unusual, and may be kept
}

// Doubts are all that is contradictory or unusual in some answers. How far a van may be from the typical one of its outline before it
// is unusual: judgement.
func Doubts(a Answers) []Doubt {
	var d doubts
	d.sleepers(a.Sleepers)
	d.sizes(a)
	if !d.sure() { // else a reading in a wrong unit contradicts the others as well
		d.readings(a.Readings)
	}
	d.plate(a.Plate)
	d.axles(a)
	return d.all
}

type doubts struct{ all []Doubt }

func (d *doubts) sure() bool {
	return slices.ContainsFunc(d.all, func(one Doubt) bool { return one.Sure })
}

func (d *doubts) add(sure bool, words string, about ...string) {
	d.all = append(d.all, Doubt{About: about, Words: words, Sure: sure})
}

// sleepers finds statures in centimetres and people of no possible size.
func (d *doubts) sleepers(all []Sleeper) {
	for i, s := range all {
		about := fmt.Sprintf("stature-%d", i+1)
		switch {
		case s.Stature < 10:
			d.add(true, fmt.Sprintf("%s is %v mm tall? Did you mean %v m? Then write %v m or %v.", s.Called(), s.Stature, s.Stature, s.Stature, 1000*s.Stature), about)
		case s.Stature >= 90 && s.Stature <= 220:
			d.add(true, fmt.Sprintf("%s is %v mm tall? For %v cm write %v cm or %v.", s.Called(), s.Stature, s.Stature, s.Stature, 10*s.Stature), about)
		case s.Stature < 700 || s.Stature > 2300:
			d.add(true, fmt.Sprintf("Nobody is %s tall. Statures are in millimetres: 1 750, or 1.75 m.", plainMM(s.Stature)), about)
		}
	}
}

// sizes holds each reading against the outline: in wrong units first, then far from its like.
func (d *doubts) sizes(a Answers) {
	b := a.body()
	for _, one := range []struct {
		field, name string
		read        *quantity.Length
		typical     quantity.Length
		off         float64
	}{
		{"length", "load floor", a.Readings.Length, b.Length, 0.28}, {"knee", "width at the knee", a.Readings.Knee, b.Knee, 0.13},
		{"arches", "width between the arches", a.Readings.Arches, b.Arches, 0.22}, {"height", "height", a.Readings.Height, b.Height, 0.13},
		{"door-width", "door", a.Readings.DoorWidth, b.DoorWidth, 0.4}, {"door-height", "door's height", a.Readings.DoorHeight, b.DoorHeight, 0.3},
		{"wheelbase", "wheelbase", a.Wheelbase, tens(b.axle + b.datum), 0.3},
	} {
		if one.read == nil {
			continue
		}
		switch ratio := float64(*one.read) / float64(one.typical); {
		case *one.read < 10:
			d.add(true, fmt.Sprintf("A %s of %v mm is no more than a fingernail. Did you mean %v m? Then write %v m or %v.", one.name, *one.read, *one.read, *one.read, 1000**one.read), one.field)
		case ratio > 0.06 && ratio < 0.15:
			d.add(true, fmt.Sprintf("A %s of %v mm is hardly a hand. If the tape says %v cm, write %v cm or %v.", one.name, *one.read, *one.read, *one.read, 10**one.read), one.field)
		case ratio < 0.45 || ratio > 2.2:
			d.add(true, fmt.Sprintf("A %s of %s is not that of a van. Readings are in millimetres, or with their unit: 1.8 m, 71 in.", one.name, plainMM(*one.read)), one.field)
		case ratio < 1-one.off || ratio > 1+one.off:
			d.add(false, fmt.Sprintf("A %s of %s is unusual: vans of this outline have about %s. Perhaps another outline is nearer, or the tape slipped.",
				one.name, plainMM(*one.read), plainMM(one.typical)), one.field)
		}
	}
}

// readings finds what contradicts itself.
func (d *doubts) readings(r Readings) {
	if r.Arches != nil && r.Knee != nil && *r.Arches >= *r.Knee {
		d.add(true, fmt.Sprintf("Between the wheel arches (%s) it cannot be as wide as between the sides (%s), since the arches stand out of the sides.",
			plainMM(*r.Arches), plainMM(*r.Knee)), "arches", "knee")
	}
	if r.DoorHeight != nil && r.Height != nil && *r.DoorHeight > *r.Height {
		d.add(true, fmt.Sprintf("The side door (%s) cannot be higher than the van is inside (%s).", plainMM(*r.DoorHeight), plainMM(*r.Height)), "door-height", "height")
	}
	if r.DoorWidth != nil && r.Length != nil && *r.DoorWidth > 4**r.Length/5 {
		d.add(true, fmt.Sprintf("The side door (%s) is nearly as wide as the load floor is long (%s).", plainMM(*r.DoorWidth), plainMM(*r.Length)), "door-width", "length")
	}
}

// plate holds the limits against each other: both axles together carry at least the laden van, and none of them more.
func (d *doubts) plate(p Plate) {
	if p.Gross == nil {
		return
	}
	gross := *p.Gross
	for _, axle := range []struct {
		field, name string
		m           *quantity.Mass
	}{{"front", "front axle", p.Front}, {"rear", "rear axle", p.Rear}} {
		if axle.m != nil && *axle.m >= gross {
			d.add(true, fmt.Sprintf("The %s alone (%s) cannot be allowed as much as the whole van (%s).", axle.name, plainKG(*axle.m), plainKG(gross)), axle.field, "gross")
		}
	}
	if p.Front != nil && p.Rear != nil && *p.Front+*p.Rear < gross {
		d.add(true, fmt.Sprintf("Both axles together may carry %s, less than the whole van (%s). One of the three numbers stands in another line of the plate.",
			plainKG(*p.Front+*p.Rear), plainKG(gross)), "front", "rear", "gross")
	}
	if p.Train != nil && *p.Train < gross {
		d.add(true, fmt.Sprintf("Van and trailer together (%s) cannot be less than the van alone (%s). Perhaps the two numbers changed places.",
			plainKG(*p.Train), plainKG(gross)), "train", "gross")
	}
	if gross < 1200 || gross > 7500 {
		d.add(false, fmt.Sprintf("A van of %s laden is unusual: most are between 1 900 and 3 500 kg.", plainKG(gross)), "gross")
	}
}

// axles holds the wheelbase against the load floor: the rear axle lies under the arches, and the seats between front axle and floor.
func (d *doubts) axles(a Answers) {
	if a.Wheelbase == nil || a.Readings.Length == nil {
		return
	}
	if before := *a.Wheelbase - a.body().axleAt(*a.Readings.Length); before < 500 || before > 2600 {
		d.add(true, fmt.Sprintf("With a wheelbase of %s and a load floor of %s the load floor would begin %s behind the front axle. One of the two is read wrongly.",
			plainMM(*a.Wheelbase), plainMM(*a.Readings.Length), plainMM(before)), "wheelbase", "length")
	}
}
