package begin

import (
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/quantity"
)

// Suppose is the build of some answers as it would be if one thing that is assumed were so and not as it was taken. The value is in the
// document's grammar. What follows from it follows: a longer load floor moves the rear axle, a taller sleeper lengthens the bed.
func Suppose(a Answers, path, value string) (*build.Document, error) {
	if told, ok, err := a.told(path, value); err != nil {
		return nil, err
	} else if ok {
		doc, _, err := Document(told)
		return doc, err
	}
	doc, _, err := Document(a)
	if err != nil {
		return nil, err
	}
	return build.Apply(doc, tree.Setting(tree.Pointer(path), tree.Plain(value)), catalogue.Builtin())
}

// told is the answers with one more, where the path is one that the first hour asks for.
func (a Answers) told(path, value string) (Answers, bool, error) {
	lengths := map[string]**quantity.Length{
		"/shell/quick/length": &a.Readings.Length, "/shell/quick/width-at-knee": &a.Readings.Knee, "/shell/quick/between-arches": &a.Readings.Arches,
		"/shell/quick/height": &a.Readings.Height, "/shell/quick/door-width": &a.Readings.DoorWidth, "/shell/quick/door-height": &a.Readings.DoorHeight,
		"/vehicle/wheelbase": &a.Wheelbase,
	}
	masses := map[string]**quantity.Mass{
		"/vehicle/plate/gross": &a.Plate.Gross, "/vehicle/plate/front": &a.Plate.Front, "/vehicle/plate/rear": &a.Plate.Rear,
	}
	who, isStature := strings.CutSuffix(strings.TrimPrefix(path, "/people/"), "/stature")
	switch {
	case lengths[path] != nil:
		l, err := quantity.ParseLength(value)
		*lengths[path] = &l
		return a, true, err
	case masses[path] != nil:
		m, err := quantity.ParseMass(value)
		*masses[path] = &m
		return a, true, err
	case isStature:
		l, err := quantity.ParseLength(value)
		a.Sleepers = slices.Clone(a.sleepers())
		for i := range a.Sleepers {
			if a.Sleepers[i].ID == who {
				a.Sleepers[i].Stature = l
			}
		}
		return a, true, err
	}
	return a, false, nil
}
