package web

import (
	"fmt"
	"strings"

	"github.com/a-h/templ"

	"tumblehome/draw/sheet"
	"tumblehome/trade/lining"
	"tumblehome/trade/warmth"
)

// heatRow is one way out for the heat.
type heatRow struct {
	Name, Address string // where it can be changed
	Code          string // of its figure; "" for none
	Area          float64
	U             float64 // W/m2K; 0 where there is none to tell
	Loss, Share   float64
}

var heatNames = map[string]heatRow{
	warmth.Floor: {Name: "Floor", Address: "/build-up#surface-floor"}, warmth.Sides: {Name: "Sides", Address: "/build-up#surface-sides"},
	warmth.Roof: {Name: "Roof", Address: "/build-up#surface-roof"}, warmth.Doors: {Name: "Doors", Address: "/build-up#surface-doors"},
}

// heatRows say where the heat goes; together they are all of it.
func heatRows(v view) []heatRow {
	w := &v.Warmth
	rest := w.Loss - w.Glass - w.Cab
	var out []heatRow
	for _, s := range w.Surfaces {
		if r, ok := heatNames[s.Group]; ok {
			r.Code, r.Area, r.U, r.Loss = "warmth.u."+s.Group, s.Area, s.U, s.Loss
			rest -= s.Loss
			out = append(out, r)
		}
	}
	out = append(out, heatRow{Name: "Glass", Address: "/shell", Loss: w.Glass}, heatRow{Name: "The cab", Address: "#cab", Loss: w.Cab},
		heatRow{Name: "Air that is changed", Address: "#night-air", Loss: rest})
	for i := range out {
		if w.Loss > 0 {
			out[i].Share = out[i].Loss / w.Loss
		}
	}
	return out
}

// lostOn are the fields of what a key of the document lays.
func lostOn(v view, key string) []warmth.Lost {
	group := key
	if key == lining.Left || key == lining.Right {
		group = warmth.Sides
	}
	var out []warmth.Lost
	for _, l := range v.Warmth.Lost {
		if l.Field.Group == group && l.Field.Area > 0 && (group == key || strings.HasPrefix(l.Field.Bay, key)) {
			out = append(out, l)
		}
	}
	return out
}

// heatView is the heat through one surface in words, with the rib beside which it is coldest.
type heatView struct {
	Key, Code  string
	U, Plain   float64 // W/m2K
	Words      string
	Rib        *warmth.Detail // nil for none
	RibCaption string
}

// heatThrough sums up what a surface lets through.
func heatThrough(v view, key string) (h heatView, ok bool) {
	area := 0.0
	for _, l := range lostOn(v, key) {
		area, h.U, h.Plain = area+l.Field.Area, h.U+l.U*l.Field.Area, h.Plain+l.Plain*l.Field.Area
		for _, d := range l.Ribs {
			if d.Trouble == "" && (h.Rib == nil || d.Factor < h.Rib.Factor) {
				h.Rib = d
			}
		}
	}
	if area == 0 {
		return h, false
	}
	h.Key, h.U, h.Plain = key, h.U/area, h.Plain/area
	if key != lining.Left && key != lining.Right {
		h.Code = "warmth.u." + key
	}
	h.Words = throughRibs(h.U, h.Plain)
	if h.Rib != nil {
		h.RibCaption = fmt.Sprintf("The coldest of its ribs (%s), with %s outside and %s inside.", unhyphen(h.Rib.Name), celsius(0), celsius(20))
	}
	return h, true
}

// leastThroughRibs is a share that is worth telling.
const leastThroughRibs = 0.01

func throughRibs(u, plain float64) string {
	share := (u - plain) / u
	if !(share >= leastThroughRibs) {
		return "there are no ribs in it"
	}
	return fmt.Sprintf("%s between the ribs; the ribs let through %s of the heat", transmittance(plain), percent(share))
}

func transmittance(u float64) string { return fmt.Sprintf("%.2f W/m²K", u) }

func ribDrawing(v view, h heatView, phone bool) templ.Component {
	return svgOf(sheet.RibDetail(v.Reckoning, h.Rib, paperWide(phone)), sized("rib-"+h.Key, phone))
}
