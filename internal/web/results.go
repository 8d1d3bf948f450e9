package web

import (
	"tumblehome/trade/arrangement"
)

// places is where everything stands in the mode shown; nil when that was not worked out.
func (v view) places() *arrangement.Mode {
	mode := v.Mode
	if mode == today {
		mode = "drive"
	}
	return v.Places.Mode(mode)
}

// standing is where one fitting is in the mode shown, or nil.
func (v view) standing(id string) *arrangement.Standing {
	if m := v.places(); m != nil {
		return m.Find(id)
	}
	return nil
}
