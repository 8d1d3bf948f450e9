package fit

import (
	"fmt"
	"math"

	"tumblehome/quantity"
)

// alongWords say where along the van a place is, from what one can touch.
func (w *worker) alongWords(x float64) string {
	from := "the front edge of the load space"
	if w.in.Partition {
		from = "the partition behind the cab"
	}
	if x -= w.in.Room.Front(); x < 0 {
		return fmt.Sprintf("%s mm before %s", quantity.Parted(math.Round(-x/10)*10), from)
	}
	return fmt.Sprintf("%s mm from %s", quantity.Parted(math.Round(x/10)*10), from)
}
