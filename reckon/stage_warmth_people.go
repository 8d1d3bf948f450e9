package reckon

import (
	"cmp"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/trade/warmth"
)

// sleepers are who lies down at night, else who comes along on the trip with most aboard, else everybody.
func (w *stages) sleepers() []warmth.Sleeper {
	var ids []string
	for id, pose := range w.doc.Modes["night"].People {
		if pose.Lies != "" {
			ids = append(ids, id)
		}
	}
	for _, id := range build.SortedKeys(w.doc.Use.Trips) {
		if t := w.doc.Use.Trips[id]; len(w.doc.Modes["night"].People) == 0 && len(t.Aboard) > len(ids) {
			ids = slices.Clone(t.Aboard)
		}
	}
	if len(ids) == 0 {
		ids = build.SortedKeys(w.doc.People)
	}
	var out []warmth.Sleeper
	for _, id := range ids {
		if p, ok := w.doc.People[id]; ok {
			out = append(out, warmth.Sleeper{Mass: spreadOf(p.Mass).mean})
		}
	}
	slices.SortFunc(out, func(a, b warmth.Sleeper) int { return cmp.Compare(a.Mass, b.Mass) })
	return out
}

// flames are the heater, the strongest if there are several, and what else burns in the room without a flue.
func (w *stages) flames() (*warmth.Heater, []warmth.Burner) {
	var heater *warmth.Heater
	var burners []warmth.Burner
	for _, id := range w.ids() {
		t := w.things[id]
		if t.row == nil || valueOf(t.row.Heat) <= 0 || t.Where != "" || t.later() {
			continue
		}
		about, power := "/fittings/"+id, valueOf(t.row.Heat).Float()
		if !cooks(t) {
			if heater == nil || power > heater.Power {
				heater = &warmth.Heater{About: about, Row: t.Buy, Power: power, Flued: t.row.Flue != "none"}
			}
			continue
		}
		if t.row.Flue == "none" {
			spirit := strings.Contains(t.Buy+" "+t.row.Name, "alcohol") || strings.Contains(t.row.Name, "spirit")
			burners = append(burners, warmth.Burner{About: about, Power: power, Spirit: spirit, Inside: w.cookedInside(id)})
		}
	}
	slices.SortStableFunc(burners, func(a, b warmth.Burner) int { return cmp.Compare(b.Power, a.Power) })
	return heater, burners
}

// cooks tells a cooker from a heater by its row.
func cooks(t thing) bool { return !strings.Contains(t.Buy+" "+strings.ToLower(t.row.Name), "heater") }

// cookedInside says whether a burner is used in the van: where somebody cooks at it or at what carries it while it is there, or, where nobody
// is said to cook at it, unless a mode takes it out.
func (w *stages) cookedInside(id string) bool {
	said, taken := false, false
	for i := range w.places.Modes {
		mode := &w.places.Modes[i]
		s := mode.Find(id)
		if s == nil {
			continue
		}
		taken = taken || s.Off
		for _, pose := range w.doc.Modes[mode.Name].People {
			if pose.Cooks == "" || pose.Cooks != id && !w.carries(mode.Find(pose.Cooks) != nil, pose.Cooks, id) {
				continue
			}
			said = true
			if !s.Off {
				return true
			}
		}
	}
	return !said && !taken
}

// carries follows what a fitting stands on down to another.
func (w *stages) carries(known bool, below, above string) bool {
	for range w.things {
		s := w.places.Find(above)
		if !known || s == nil || s.Carrier == "" {
			return false
		}
		if s.Carrier == below {
			return true
		}
		above = s.Carrier
	}
	return false
}
