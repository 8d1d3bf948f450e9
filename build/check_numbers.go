package build

import (
	"strconv"

	"tumblehome/quantity"
)

// check holds the numbers that are written on cables apart.
func (p *Power) check() *quantity.Fault {
	first := map[int]string{}
	var twice *quantity.Fault
	see := func(number int, of string) {
		if number == 0 || twice != nil {
			return
		}
		if other := first[number]; other != "" {
			twice = &quantity.Fault{Wrong: "the number " + strconv.Itoa(number) + " is on two cables: that of " + other + " and that of " + of, Expected: "another number for one of them"}
		}
		first[number] = of
	}
	for _, id := range SortedKeys(p.Batteries) {
		see(p.Batteries[id].Number, "the battery "+id)
		see(p.Batteries[id].BondNumber, "the bond of "+id)
	}
	for _, id := range SortedKeys(p.Circuits) {
		see(p.Circuits[id].Number, "the circuit "+id)
	}
	for _, id := range SortedKeys(p.Sources) {
		see(p.Sources[id].Number, "the source "+id)
		if lead := p.Sources[id].Lead; lead != nil {
			see(lead.Number, "the lead of "+id)
		}
	}
	return twice
}
