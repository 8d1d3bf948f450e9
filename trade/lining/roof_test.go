package lining_test

import (
	"testing"

	"tumblehome/trade/lining"
)

func TestBesideALeaningWallTheRoofIsWhereTheSideEnds(t *testing.T) {
	room := lining.Work(dipper()).Room
	seen := 0
	for x := room.Front() + 5; x < room.Rear(); x += 37 {
		for y := room.Left(x, 600) + 2; y < room.Right(x, 600); y += 13 {
			z := room.Roof(x, y)
			if z <= room.Floor() {
				continue
			}
			seen++
			if !room.Inside(x, y, z-0.1) || room.Inside(x, y, z+0.1) {
				t.Errorf("at %g, %g the roof is not at %g", x, y, z)
			}
		}
	}
	if seen < 1000 {
		t.Errorf("only %d places lie under the roof", seen)
	}
}
