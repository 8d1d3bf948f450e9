package fit

import "tumblehome/solve/solid"

// Limits are the measures by which what stands out of the room is excused, for a page that predicts where a thing may be dragged [mm].
type Limits struct {
	CutShare   float64 // of its size across a face that is cut to the lining, which one cuts off
	CutLeast   float64 // and so much in any case
	CabLong    float64
	CabWider   float64 // by how much a cab may be wider or higher than the front of the room
	WellInside float64 // what is said to be outside and lies deeper in the room than this is not outside
	Shoulder   float64 // the height up to which a side is a side, and not yet the roof
}

// LimitsOf are the limits in a room.
func LimitsOf(r solid.Region) Limits {
	return Limits{CutShare: cutShare, CutLeast: cutLeast, CabLong: cabLong, CabWider: cabUnsure, WellInside: wellInside, Shoulder: lowRoof(r) - roofMargin}
}
