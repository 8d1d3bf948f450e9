package reckon

import (
	"tumblehome/build"
	"tumblehome/catalogue/tyres"
	"tumblehome/solve/solid"
	"tumblehome/trade/fit"
)

// What a wheel needs beside its own size [mm], and what is taken where nothing is measured: common practice, no source.
const (
	springsUp     = 80   // above where it stands, laden or not
	steers        = 120  // inwards, of a front wheel turned to its stop
	axleThick     = 120  // of the rear axle
	usualRadius   = 345  // of a tyre
	usualTread    = 225  // width of a tyre
	besideWheels  = 250  // from overall width to track
	usualOverhang = 1000 // before the front axle, behind the rear
)

// vanBounds is the box about the whole vehicle, from the road to the roof.
func (w *stages) vanBounds() solid.Bounds {
	v, wide := w.doc.Vehicle, 0.0
	for _, x := range []float64{w.skin.Front(), (w.skin.Front() + w.skin.Rear()) / 2, w.skin.Rear()} {
		wide = max(wide, w.skin.Right(x, 600))
	}
	before, behind := float64(usualOverhang), float64(usualOverhang)
	if v.Overhang != nil {
		before, behind = v.Overhang.Front.Float(), v.Overhang.Rear.Float()
	}
	datum, wheelbase := v.Datum.Float(), v.Wheelbase.Float()
	return solid.Bounds{
		MinX: min(w.skin.Front(), -datum-before), MaxX: max(w.skin.Rear(), wheelbase-datum+behind), MinY: -wide, MaxY: wide,
		MinZ: ground(w.doc, w.skin), MaxZ: w.skin.highest(),
	}
}

// wheels are the four, with the room they need to spring and steer, and the rear axle.
func (w *stages) wheels() []fit.Wheel {
	v := w.doc.Vehicle
	road, track := ground(w.doc, w.skin), w.track()
	var all []fit.Wheel
	for _, axle := range []struct {
		name   string
		x      float64
		inward float64
	}{{"front", -v.Datum.Float(), steers}, {"rear", (v.Wheelbase - v.Datum).Float(), 0}} {
		radius, tread := tyreSize(v.Tyres[axle.name])
		for _, side := range []struct {
			name string
			sign float64
		}{{"left", -1}, {"right", 1}} {
			in, out := side.sign*(track/2-tread/2-axle.inward), side.sign*(track/2+tread/2)
			all = append(all, fit.Wheel{Name: "the " + side.name + " " + axle.name + " wheel", About: "/vehicle/wheelbase", Box: solid.Bounds{
				MinX: axle.x - radius, MaxX: axle.x + radius, MinY: min(in, out), MaxY: max(in, out), MinZ: road, MaxZ: road + 2*radius + springsUp,
			}})
		}
		if axle.name == "rear" {
			all = append(all, fit.Wheel{Name: "the rear axle", About: "/vehicle/wheelbase", Box: solid.Bounds{
				MinX: axle.x - axleThick/2, MaxX: axle.x + axleThick/2, MinY: -track / 2, MaxY: track / 2,
				MinZ: road + radius - axleThick/2, MaxZ: road + radius + axleThick/2 + springsUp,
			}})
		}
	}
	return all
}

// track is the distance between the wheels of an axle.
func (w *stages) track() float64 {
	v := w.doc.Vehicle
	switch {
	case v.Track != nil:
		return v.Track.Float()
	case v.Width != nil:
		return v.Width.Float() - besideWheels
	}
	return 2*w.skin.Right((w.skin.Front()+w.skin.Rear())/2, 600) - besideWheels
}

// tyreSize is the radius and the width of a tyre.
func tyreSize(t build.Tyre) (radius, tread float64) {
	m, err := tyres.Parse(t.Size)
	if err != nil {
		return usualRadius, usualTread
	}
	return m.Diameter().Float() / 2, float64(m.Width)
}
