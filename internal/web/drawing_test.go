package web_test

import (
	"net/url"

	"tumblehome/draw"
	"tumblehome/draw/sample"
	"tumblehome/reckon"
)

// drawing stands in for the drawing of the arrangement.
func drawing(*reckon.Reckoning, string) draw.Scene { return sample.Sheet() }

func form(pairs ...string) string {
	values := url.Values{}
	for i := 0; i+1 < len(pairs); i += 2 {
		values.Add(pairs[i], pairs[i+1])
	}
	return values.Encode()
}
