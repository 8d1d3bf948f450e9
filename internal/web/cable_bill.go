package web

import (
	"fmt"
	"math"
	"strings"

	"tumblehome/internal/words"
	"tumblehome/trade/cables"
)

// billCost is what the bill comes to; ok is false where no price is known.
func billCost(v view) (sum float64, unknown int) {
	for _, i := range v.Cables.Bill {
		switch {
		case i.Once:
		case i.Price > 0:
			sum += i.Price
		default:
			unknown++
		}
	}
	return sum, unknown
}

func billWords(v view) string {
	sum, unknown := billCost(v)
	if sum == 0 && unknown == 0 {
		return "All of it is already among the fittings."
	}
	text := "Comes to about " + words.Amount(sum, v.Doc.Build.Currency)
	if unknown > 0 {
		text += fmt.Sprintf("; for %d lines no price is known", unknown)
	}
	return text + "."
}

func billAmount(i cables.Item) string {
	if i.Unit == "m" {
		return fmt.Sprintf("%.1f m", math.Ceil(10*i.Count)/10)
	}
	return fmt.Sprintf("%.0f", math.Ceil(i.Count))
}

func joined(names []string) string { return strings.Join(names, ", ") }
