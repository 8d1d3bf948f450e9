package words

import (
	"math"
	"strings"

	"tumblehome/reckon"
	"tumblehome/trade/working"
)

// Figure writes a figure's value with its unit, near its limit if it has one.
func Figure(f working.Figure) string {
	if strings.HasPrefix(f.Code, "power.drop.") { // a loss of voltage is told to a tenth
		return Fine(f.Value, f.Unit)
	}
	if f.Limit != nil {
		return Near(f.Value, *f.Limit, f.Unit)
	}
	return Amount(f.Value, f.Unit)
}

// Rounded says what a figure is before it is rounded for reading, for where it stands beside its working; "" where nothing is lost.
func Rounded(f working.Figure) string {
	exact := withUnit(plain(f.Value, 2), f.Unit)
	if math.Abs(Round(f.Value, f.Unit)-f.Value) < 0.005 || Figure(f) == exact {
		return ""
	}
	return "Rounded for reading; worked out, it is " + exact + "."
}

// Spread writes what a figure is likely to be: "likely £4 250, one in five it passes £4 600". It is empty without a spread worth telling.
func Spread(f working.Figure) string {
	if f.P50 == nil || f.P80 == nil {
		return ""
	}
	likely, late := Amount(*f.P50, f.Unit), Amount(*f.P80, f.Unit)
	if likely == late {
		return ""
	}
	return "likely " + likely + ", one in five it passes " + late
}

// Change writes how a figure moved: "On the rear axle 1 358 kg → 1 371 kg (+13 kg)".
func Change(c reckon.Change) string {
	switch {
	case c.New:
		return c.Label + ": now " + Amount(c.To, c.Unit)
	case c.Gone:
		return c.Label + ": no longer " + Amount(c.From, c.Unit)
	}
	return c.Label + " " + Fine(c.From, c.Unit) + " → " + Fine(c.To, c.Unit) + " (" + Signed(c.To-c.From, c.Unit) + ")"
}

// Moved reports whether a change is large enough to be told.
func Moved(c reckon.Change) bool {
	return c.New || c.Gone || Signed(c.To-c.From, c.Unit) != "no change"
}
