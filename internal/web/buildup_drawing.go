package web

import (
	"fmt"
	"math"
	"regexp"

	"github.com/a-h/templ"

	"tumblehome/build"
	"tumblehome/draw"
	"tumblehome/trade/lining"
)

// sectionView is one cut through a build-up.
type sectionView struct {
	Key, Title string
	Surface    string
	Bay        string
	Rib        float64 // depth of the rib
	Courses    []lining.Course
	Depth      float64 // of the finished surface from the steel
}

// sectionsOf cuts a surface in its longest bay; a side that is covered otherwise higher up is cut twice.
func sectionsOf(v view, key string) []sectionView {
	surface := laidOn(key)[0]
	bay, rib := longestBay(v, surface)
	if bay == "" {
		return nil
	}
	low, ok := v.section(surface, bay, rib, kneeHeight)
	if !ok || len(low.Courses) == 0 {
		return nil
	}
	where := "cut in " + unhyphen(bay)
	if bay == surface {
		where = "cut in the " + surface
	}
	low.Key, low.Title = key, where
	high, ok := v.section(surface, bay, rib, elbowHeight)
	if !ok || key != "sides" && key != "left" && key != "right" || sameCourses(low.Courses, high.Courses) {
		return []sectionView{low}
	}
	low.Title += ", below"
	high.Key, high.Title = key+"-above", where+", above"
	return []sectionView{low, high}
}

func (v view) section(surface, bay string, rib, z float64) (sectionView, bool) {
	courses, depth, ok := v.Lining.Section(surface, bay, z)
	return sectionView{Surface: surface, Bay: bay, Rib: rib, Courses: courses, Depth: depth}, ok
}

func sameCourses(a, b []lining.Course) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i].Pointer != b[i].Pointer {
			return false
		}
	}
	return true
}

// longestBay is the bay to show, and how deep its rib is. Doors are bays of their own.
func longestBay(v view, surface string) (id string, rib float64) {
	if v.Body == nil {
		return "", 0
	}
	if surface == lining.Doors {
		for _, o := range build.SortedKeys(v.Doc.Shell.Openings) {
			if _, _, ok := v.Lining.Section(surface, o, kneeHeight); ok {
				return o, 0
			}
		}
		return "", 0
	}
	longest := 0.0
	for _, b := range v.Body.Bays(surface) {
		if long := b.To - b.From; long > longest {
			longest, id, rib = long, b.ID, b.Depth
		}
	}
	return id, rib
}

// Sizes of a section drawing [mm on paper], 1 : 2.5: a stretch with a rib at each end, and room for names beside it.
const (
	cutScale  = 2.5
	cutLong   = 400.0 // mm of the van that are shown
	cutFlange = 50.0  // mm of a rib's face
	cutLabels = 80.0  // room for names
	cutMargin = 8.0
	labelStep = 4.6
)

// sectionDrawing draws a build-up with the rib in it, true to scale, every layer named.
func sectionDrawing(v view, s sectionView) templ.Component {
	deepest := math.Max(math.Max(s.Depth, s.Rib), 20)
	tall := math.Max(deepest/cutScale, labelStep*float64(len(s.Courses))) + 2*cutMargin
	size := draw.Size{Width: cutLong/cutScale + cutLabels, Height: tall + 4}
	up := s.Surface == lining.Floor // the floor is built upwards
	view := draw.View{Origin: draw.Pt(cutMargin/2, cutMargin), Scale: cutScale, Up: up}
	if up {
		view.Origin.Y = cutMargin + deepest/cutScale
	}
	var marks []draw.Mark
	for _, c := range s.Courses {
		marks = append(marks, courseMarks(view, c)...)
	}
	marks = append(marks, steelMarks(view, s.Rib)...)
	marks = append(marks, draw.Stroke(draw.PenOutline, draw.Line(view.At(0, s.Depth), view.At(cutLong, s.Depth))))
	marks = append(marks, v.courseLabels(view, s, tall)...)
	return svgOf(draw.Scene{Size: size, Title: "Build-up, " + s.Title, Description: v.describeSection(s), Marks: marks}, "section-"+s.Key)
}

// steelMarks draw the skin and the ribs that stand in from it.
func steelMarks(view draw.View, rib float64) []draw.Mark {
	marks := []draw.Mark{draw.Stroke(draw.PenCut, draw.Line(view.At(0, 0), view.At(cutLong, 0)))}
	if rib <= 0 {
		return marks
	}
	for _, x := range []float64{0, cutLong - cutFlange} {
		hat := draw.Polyline(view.At(x, 0), view.At(x, rib), view.At(x+cutFlange, rib), view.At(x+cutFlange, 0))
		marks = append(marks, draw.Stroke(draw.PenCut, hat))
	}
	return marks
}

// courseMarks draw one layer: between the ribs, and over them where it goes over.
func courseMarks(view draw.View, c lining.Course) []draw.Mark {
	if c.InBay == c.OnRib {
		return coursePart(view, c.Kind, 0, cutLong, c.InBay)
	}
	marks := coursePart(view, c.Kind, cutFlange, cutLong-cutFlange, c.InBay)
	marks = append(marks, coursePart(view, c.Kind, 0, cutFlange, c.OnRib)...)
	return append(marks, coursePart(view, c.Kind, cutLong-cutFlange, cutLong, c.OnRib)...)
}

func coursePart(view draw.View, kind lining.Kind, from, to float64, depth [2]float64) []draw.Mark {
	if depth[1]-depth[0] < 0.05 {
		if kind == lining.Patch { // pressed into what lies over it: only a line
			return []draw.Mark{draw.Stroke(draw.PenRib, draw.Line(view.At(from+60, depth[0]+1), view.At(to-60, depth[0]+1)))}
		}
		return nil
	}
	outline := draw.Rectangle(view.Box(from, depth[0], to-from, depth[1]-depth[0]))
	switch kind {
	case lining.Fill:
		outer := []draw.Point{view.At(from, depth[0]), view.At(to, depth[0])}
		inner := []draw.Point{view.At(from, depth[1]), view.At(to, depth[1])}
		pitch := math.Max(2, math.Min((depth[1]-depth[0])/cutScale, 8))
		return []draw.Mark{draw.Area(draw.PenHairline, draw.FillPaper, outline), draw.Quilt(outer, inner, pitch)}
	case lining.Batten:
		return battens(view, from, to, depth)
	case lining.Board:
		return []draw.Mark{draw.Area(draw.PenFine, draw.FillDeep, outline), draw.Hatch(outline, draw.HatchGrain, 1)}
	case lining.Patch:
		return []draw.Mark{draw.Area(draw.PenFine, draw.FillQuiet, outline)}
	}
	return []draw.Mark{draw.Area(draw.PenFine, draw.FillWash, outline)}
}

// battens are strips over the ribs with air between.
func battens(view draw.View, from, to float64, depth [2]float64) []draw.Mark {
	const wide = 44.0
	var marks []draw.Mark
	for _, x := range []float64{3, cutLong - 3 - wide} {
		if x < from-1 || x+wide > to+1 {
			continue
		}
		outline := draw.Rectangle(view.Box(x, depth[0], wide, depth[1]-depth[0]))
		marks = append(marks, draw.Area(draw.PenFine, draw.FillTone, outline), draw.Hatch(outline, draw.HatchRising, 1.2))
	}
	return marks
}

// courseLabels name the layers beside the cut, each with a line to it, and say which side is outside.
func (v view) courseLabels(view draw.View, s sectionView, tall float64) []draw.Mark {
	right := cutLong/cutScale + cutMargin/2
	n := len(s.Courses)
	var marks []draw.Mark
	for i, c := range s.Courses {
		row := i
		if view.Up {
			row = n - 1 - i
		}
		y := cutMargin + labelStep*(float64(row)+0.5)
		middle := view.At(cutLong, (c.InBay[0]+c.InBay[1])/2)
		marks = append(marks,
			draw.Stroke(draw.PenLeader, draw.Polyline(middle, draw.Pt(right+3, middle.Y), draw.Pt(right+9, y), draw.Pt(right+11, y))),
			draw.Lettering{Text: v.courseWords(c), At: draw.Pt(right+12, y), Level: draw.Midline})
	}
	outside, inside := cutMargin-3, tall
	if view.Up {
		outside, inside = tall, cutMargin-3
	}
	return append(marks,
		draw.Lettering{Text: "steel, outside", At: draw.Pt(cutMargin/2, outside), Ink: draw.InkQuiet},
		draw.Lettering{Text: fmt.Sprintf("inside, %.0f from the steel", s.Depth), At: draw.Pt(cutMargin/2, inside), Ink: draw.InkQuiet})
}

func (v view) courseWords(c lining.Course) string {
	if t := c.InBay[1] - c.InBay[0]; t > 0.05 {
		return fmt.Sprintf("%s, %.4g", sizeAtEnd.ReplaceAllString(v.materialName(c.Material), ""), t)
	}
	return v.materialName(c.Material)
}

// sizeAtEnd is a thickness at the end of a material's name, which the drawing says itself.
var sizeAtEnd = regexp.MustCompile(` [0-9.]+( x [0-9.]+)*( mm)?( finished)?$`)

// describeSection is the drawing in words.
func (v view) describeSection(s sectionView) string {
	text := fmt.Sprintf("From the steel inwards; the rib stands in by %.0f mm.", s.Rib)
	for _, c := range s.Courses {
		text += fmt.Sprintf(" %s, %.4g mm.", v.materialName(c.Material), c.InBay[1]-c.InBay[0])
	}
	return text + fmt.Sprintf(" The finished surface lies %.0f mm from the steel.", s.Depth)
}
