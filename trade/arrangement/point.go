package arrangement

import "tumblehome/build"

// PointAt is where a corner of a run lies while everything rests [mm]: the rules of a fitting without a size, inside the van, or the
// middle of a fitting's face. False where it names a fitting that has no place.
func (r *Result) PointAt(p build.Point3, room Room) (at [3]float64, ok bool) {
	if p.At.Of != "" {
		return r.faceMiddle(p.At)
	}
	rules := rules{p.X, p.Y, p.Z}
	for _, rule := range rules {
		for _, q := range rule.Points() {
			if q.Of != "" && !r.hasPlace(q.Of) {
				return at, false
			}
		}
	}
	for _, axis := range orderOf(rules) {
		at[axis] = r.coordinate(rules[axis], axis, at, room)
	}
	return at, true
}

// orderOf are the axes in the order in which one needs the other; in a corner of side and roof each is found twice.
func orderOf(r rules) []int {
	across, up := followsRoom(r[1], "left", "right"), followsRoom(r[2], "roof", "roof")
	switch {
	case across && up:
		return []int{0, 2, 1, 2, 1}
	case up:
		return []int{0, 1, 2}
	}
	return []int{0, 2, 1}
}

func followsRoom(rule build.AxisRule, low, high string) bool {
	for _, p := range rule.Points() {
		if p.Of == "" && (p.Face == low || p.Face == high) {
			return true
		}
	}
	return false
}

// coordinate is where a rule without a size lies on its axis; between two points it is half way.
func (r *Result) coordinate(rule build.AxisRule, axis int, at [3]float64, room Room) float64 {
	points := rule.Points()
	sum := 0.0
	for _, p := range points {
		sum += p.Plus.Float()
		switch {
		case p.Of != "":
			sum += faceOf(r.Find(p.Of).Box, sideOf[p.Face])
		case p.Face != "":
			sum += roomFace(room, sideOf[p.Face], at)
		}
	}
	if len(points) == 0 {
		return at[axis]
	}
	return sum / float64(len(points))
}

func roomFace(room Room, face side, at [3]float64) float64 {
	switch face {
	case front:
		return room.Front()
	case rear:
		return room.Rear()
	case left:
		return room.Left(at[0], at[2])
	case right:
		return room.Right(at[0], at[2])
	case roof:
		return room.Roof(at[0], at[1])
	}
	return room.Floor()
}

func (r *Result) hasPlace(id string) bool {
	s := r.Find(id)
	return s != nil && s.Undecided == ""
}

// faceMiddle is the middle of a fitting's face.
func (r *Result) faceMiddle(p build.Point) (at [3]float64, ok bool) {
	if !r.hasPlace(p.Of) {
		return at, false
	}
	b := r.Find(p.Of).Box
	at = [3]float64{(b.MinX + b.MaxX) / 2, (b.MinY + b.MaxY) / 2, (b.MinZ + b.MaxZ) / 2}
	face := sideOf[p.Face]
	at[axisOf(face)] = faceOf(b, face)
	return at, true
}
