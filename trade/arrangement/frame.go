package arrangement

import (
	"math"

	"tumblehome/solve/solid"
)

// side is one of the six surfaces of a frame: 2*axis for the low one, 2*axis+1 for the high one.
type side = solid.Side

const (
	front = solid.Front
	rear  = solid.Rear
	left  = solid.Left
	right = solid.Right
	floor = solid.Floor
	roof  = solid.Roof
)

func axisOf(s side) int { return int(s) / 2 }

// high says whether the surface is the one at the greater coordinate.
func high(s side) bool { return s%2 == 1 }

// frame is the space in which a fitting's rules are read: six faces and where lengths count from.
type frame struct {
	faces   [6]float64 // flat faces; for curved ones the face of the box about the frame
	curved  [6]bool    // these follow the room
	room    Room       // what curved faces follow
	origin  [3]float64
	outward bool // against means outside the faces
	hang    bool // z left out: against the roof instead of on the floor
}

// A frame is a region, so that things are moved against its curved faces as against the room's.

func (f *frame) Front() float64 { return f.faces[front] }
func (f *frame) Rear() float64  { return f.faces[rear] }
func (f *frame) Floor() float64 { return f.faces[floor] }

func (f *frame) Left(x, z float64) float64 {
	if f.curved[left] {
		return f.room.Left(x, z)
	}
	return f.faces[left]
}

func (f *frame) Right(x, z float64) float64 {
	if f.curved[right] {
		return f.room.Right(x, z)
	}
	return f.faces[right]
}

// Steps are those of the room that the curved faces follow.
func (f *frame) Steps() (along, up []float64) { return solid.Steps(f.room) }

func (f *frame) Roof(x, y float64) float64 {
	if f.curved[roof] {
		return f.room.Roof(x, y)
	}
	return f.faces[roof]
}

// inside is the frame of the living space.
func inside(r Room) frame {
	return frame{
		faces:  [6]float64{front: r.Front(), rear: r.Rear(), floor: r.Floor()},
		curved: [6]bool{left: true, right: true, roof: true},
		room:   r,
	}
}

// outside is the frame of the outer skin: things lie on its roof, hang on its rear.
func outside(r Room) frame {
	f := inside(r)
	f.outward = true
	return f
}

// under is the frame below the van: its roof is the underside of the floor.
func under(skin Room, ground float64) frame {
	x := (skin.Front() + skin.Rear()) / 2
	return frame{
		faces: [6]float64{
			front: skin.Front(), rear: skin.Rear(), left: skin.Left(x, 0), right: skin.Right(x, 0),
			floor: ground, roof: skin.Floor(),
		},
		hang: true,
	}
}

// cab is the frame of the cab, from its own faces or else from the front of the room.
func cab(known *Box, r Room) frame {
	if known != nil {
		return flat(*known)
	}
	return flat(assumedCab(r))
}

// assumedCab is a cab nobody measured: 1 m long, as wide and high as the room's front.
func assumedCab(r Room) Box {
	x := r.Front()
	return Box{MinX: min(x, 0) - 1000, MaxX: min(x, 0), MinY: r.Left(x, 600), MaxY: r.Right(x, 600), MinZ: 0, MaxZ: r.Roof(x, 0)}
}

func flat(b Box) frame {
	return frame{faces: [6]float64{b.MinX, b.MaxX, b.MinY, b.MaxY, b.MinZ, b.MaxZ}}
}

// within is the frame of what stands in a host: its inner faces. A side that the host has scribed to the room is open to it, as long as the
// host stands there: then the room's surface is the inner face.
func within(host *Standing, board float64, r Room) frame {
	b := host.Box
	f := flat(Box{
		MinX: b.MinX + board, MinY: b.MinY + board, MinZ: b.MinZ + board,
		MaxX: b.MaxX - board, MaxY: b.MaxY - board, MaxZ: b.MaxZ - board,
	})
	f.follow(host, r)
	f.origin = [3]float64{f.faces[front], (f.faces[left] + f.faces[right]) / 2, f.faces[floor]}
	return f
}

// upon is the frame of what stands on a host: the edges of its top. Above it is whatever is above the host.
func upon(host *Standing, r Room) frame {
	b := host.Box
	f := flat(Box{
		MinX: b.MinX, MinY: b.MinY, MinZ: b.MaxZ,
		MaxX: b.MaxX, MaxY: b.MaxY, MaxZ: max(b.MaxZ, r.Roof((b.MinX+b.MaxX)/2, 0)),
	})
	f.follow(host, r)
	f.curved[roof] = true
	f.origin = [3]float64{b.MinX, (b.MinY + b.MaxY) / 2, b.MaxZ}
	return f
}

// follow lets the sides that the host has scribed to the room follow the room, unless the host stands off them: what stood there goes along with it.
func (f *frame) follow(host *Standing, r Room) {
	f.room = r
	if host.follows == nil {
		return
	}
	for s, along := range host.follows {
		if along {
			f.faces[s], f.curved[s] = faceOf(host.Box, side(s)), true
		}
	}
}

// followed are the sides of the room along which the scribed faces of a box lie.
func followed(b Box, scribed []side, r Room) *[6]bool {
	at, along := inside(r), new([6]bool)
	for _, s := range scribed {
		along[s] = (s == left || s == right) && math.Abs(reach(solid.Box(b), &at, s, true)) <= parallel
	}
	return along
}
