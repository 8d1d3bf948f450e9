package build

import "tumblehome/quantity"

// Lining is what is laid on each surface, from the steel inwards. Left and Right, where given, win over Sides.
type Lining struct {
	Floor []Choice[Layer] `doc:"floor" says:"on the load floor"`
	Sides []Choice[Layer] `doc:"sides" says:"on both sides"`
	Left  []Choice[Layer] `doc:"left" says:"on the left side, where it differs"`
	Right []Choice[Layer] `doc:"right" says:"on the right side, where it differs"`
	Roof  []Choice[Layer] `doc:"roof" says:"under the roof"`
	Doors []Choice[Layer] `doc:"doors" says:"on the rear doors"`
	Front []Choice[Layer] `doc:"front" says:"on the partition, if there is one"`
	Note  string          `doc:"note" says:"a remark"`
}

// Layer is one material on one surface.
type Layer struct {
	Lay     string           `doc:"lay,need" ref:"material" says:"the material"`
	Thick   *quantity.Length `doc:"thick" range:"0.1..300" says:"how thick, if the material does not fix it"`
	Cover   *quantity.Share  `doc:"cover" range:"0..1" says:"share of the surface it covers"`
	Times   *int             `doc:"times" range:"1..10" says:"how many times it is laid"`
	Z       *AxisRule        `doc:"z" range:"-20000..20000" says:"between which heights, on a side"`
	Between *Battens         `doc:"between" says:"battens it lies between"`
	Ribs    string           `doc:"ribs" one:"free bridged filled" says:"how it meets the ribs"`
	Bays    map[string]Layer `doc:"bays" keys:"bay" says:"another layer in named bays"`
	Fitted  *quantity.Date   `doc:"fitted" says:"when it was laid; left out, it is planned"`
	Mass    *quantity.Mass   `doc:"mass" range:"0..500" says:"mass in all, if it was weighed"`
	Note    string           `doc:"note" says:"a remark"`
}

// Battens are strips at an even spacing.
type Battens struct {
	Batten string          `doc:"batten,need" ref:"material" says:"the strip"`
	Every  quantity.Length `doc:"every,need" range:"50..2000" says:"middle to middle"`
}
