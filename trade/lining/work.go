package lining

import (
	"tumblehome/trade/finding"
	"tumblehome/trade/takeoff"
	"tumblehome/trade/working"
)

// Result is the finished room and what is on the steel.
type Result struct {
	Room     *Room
	Lines    []Line
	Figures  []working.Figure
	Findings []finding.Finding
	laid     *laid
}

// Work lays the lining on the body.
func Work(in Inputs) Result {
	l := lay(in)
	r := Result{Room: l.room(), Lines: l.lines(), laid: l}
	r.Figures = r.figures()
	r.Findings = l.check()
	finding.Sort(r.Findings)
	return r
}

// TakeOff are the lines as the take-off gathers them.
func (r Result) TakeOff() []takeoff.Line {
	lines := make([]takeoff.Line, len(r.Lines))
	for i := range lines {
		lines[i] = r.Lines[i].Line
	}
	return lines
}

// Section is the build-up of a bay at height z from the steel inwards (floor
// and roof: any z), and the depth of the finished surface; false for a bay there is not.
// Doors are bays of the surface doors.
func (r Result) Section(surface, bay string, z float64) ([]Course, float64, bool) {
	for _, f := range r.laid.fields[surface] {
		if f.bay.ID == bay {
			b := f.at(z)
			return b.courses, b.thick, true
		}
	}
	return nil, 0, false
}
