package arrangement

import (
	"tumblehome/build"
	"tumblehome/solve/solid"
)

// Room is the living space inside its finished surfaces [mm].
type Room = solid.Region

// Box is a space between flat faces [mm].
type Box = solid.Bounds

// Inputs is what the arrangement is worked out from.
type Inputs struct {
	Room     Room
	Outside  Room              // the outer skin: where outside things stand
	Ground   float64           // z of the ground under the van
	Cab      *Box              // the cab's own faces; nil is taken from the room and said so
	Things   map[string]*Thing // by fitting id; not changed
	Openings map[string]build.Opening
	Modes    map[string]build.Mode // drive, day and night exist even if not named here

	// Before is an earlier result of the same build, to save work: what rests on the same numbers stands where it stood. It
	// is used only if RoomKey, the digest of both rooms, is the same and not empty; the answer is the same either way.
	Before  *Result
	RoomKey string
}

// Thing is a fitting with what the caller knows better.
type Thing struct {
	build.Fitting
	Size  [3]float64 // along its own axes [mm], catalogue sizes filled in; an axis given by `..` may be 0
	Board float64    // thickness of its board [mm]; 0 for bought things
}
