package power

// Sky is the light and the air of many years.
type Sky struct {
	Years int
}
