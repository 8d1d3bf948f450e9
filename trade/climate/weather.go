package climate

import (
	places "tumblehome/catalogue/climate"
	"tumblehome/quantity"
)

// Weather is the weather of the nights spent in the van: that of a place, brought to the height of the camp.
type Weather struct {
	Place  places.Place // as it was given
	Height float64      // of the camp above the sea [m]
	Months [12]places.Month
}

// A Day is one kind of day of a month.
type Day struct {
	Low, High quantity.Temperature // of the air in the shade
	Vapour    float64              // vapour pressure all day [Pa]
	Sunrise   float64              // hour of standard time; where the clock is far from the sun it may lie beyond 0 to 24
	Noon      float64              // when the sun stands highest, likewise
}

// at brings a place's months to a height.
func at(p places.Place, height float64) Weather {
	w := Weather{Place: p, Height: height}
	for m, month := range p.Months {
		w.Months[m] = lifted(month, height-p.Height)
	}
	return w
}

// month is one month of the weather by its number, 1 to 12.
func (w *Weather) month(number int) places.Month { return w.Months[(number+11)%12] }
