package sheet

import (
	"math"
	"testing"

	"tumblehome/solve/solid"
)

// areaOf is the area inside closed runs (Gauss's trapezoid rule).
func areaOf(runs [][]place) float64 {
	sum := 0.0
	for _, run := range runs {
		twice := 0.0
		for i, a := range run {
			b := run[(i+1)%len(run)]
			twice += a[0]*b[1] - b[0]*a[1]
		}
		sum += math.Abs(twice) / 2
	}
	return sum
}

func block(x0, x1, y0, y1, z0, z1 float64) solid.Prism {
	return solid.Box(solid.Bounds{MinX: x0, MaxX: x1, MinY: y0, MaxY: y1, MinZ: z0, MaxZ: z1})
}

func TestASilhouetteIsTheOutlineOfAllPiecesTogether(t *testing.T) {
	turned := solid.Solid{block(0, 400, 0, 300, 0, 100).Turned(solid.Point{X: 200, Y: 150}, 0.5)}
	slices := solid.Solid{block(0, 1000, 0, 400, 0, 100), block(0, 1000, 0, 380, 100, 200), block(0, 1000, 0, 350, 200, 300)}
	for _, c := range []struct {
		name   string
		strips []strip
		runs   int
		area   float64 // mm2
		points int
	}{
		{"a box from above", fromAbove(solid.Solid{block(0, 500, 0, 200, 0, 80)}), 1, 100000, 4},
		{"a box from the side", fromSide(solid.Solid{block(0, 500, 0, 200, 0, 80)}), 1, 40000, 4},
		{"a turned box keeps its area from above", fromAbove(turned), 1, 120000, 4},
		{"slices one above the other from above are the largest", fromAbove(slices), 1, 400000, 4},
		{"slices from behind are steps", fromBehind(slices), 1, 100 * (400 + 380 + 350), 8},
		{"a cut through all slices", cutAcross(slices, 500), 1, 100 * (400 + 380 + 350), 8},
		{"a cut that misses", cutAcross(slices, 1500), 0, 0, 0},
		{"an angle of two boxes", fromAbove(solid.Solid{block(0, 1000, 0, 400, 0, 9), block(0, 300, 400, 900, 0, 9)}), 1, 400000 + 150000, 6},
		{"two boxes apart", fromAbove(solid.Solid{block(0, 100, 0, 100, 0, 9), block(200, 300, 0, 100, 0, 9)}), 2, 20000, 8},
	} {
		t.Run(c.name, func(t *testing.T) {
			runs := silhouette(c.strips)
			points := 0
			for _, run := range runs {
				points += len(run)
			}
			if got := areaOf(runs); len(runs) != c.runs || math.Abs(got-c.area) > 1 || points != c.points {
				t.Errorf("%d runs of %d corners, %.1f mm2; want %d of %d, %.1f\n%v", len(runs), points, got, c.runs, c.points, c.area, runs)
			}
		})
	}
}

func TestALineIsFollowedWhereItBendsAndWhereItJumps(t *testing.T) {
	for _, c := range []struct {
		name string
		f    func(float64) float64
		most float64 // deviation allowed anywhere [mm]
	}{
		{"a straight line", func(u float64) float64 { return 0.1 * u }, 0.7},
		{"a circle", func(u float64) float64 { return math.Sqrt(1200*1200 - (u-1000)*(u-1000)) }, 2.5},
		{"a step of 50", func(u float64) float64 { return 900 + 50*math.Floor(u/700) }, 2.5},
	} {
		t.Run(c.name, func(t *testing.T) {
			run := follow(0, 2000, 150, c.f)
			for u := 5.0; u < 2000; u += 9 {
				if off := math.Abs(at(run, u) - c.f(u)); off > c.most && !nearStep(c.f, u) {
					t.Fatalf("at %g it is %.2f off, with %d corners", u, off, len(run))
				}
			}
			if len(run) > 60 {
				t.Errorf("%d corners are too many", len(run))
			}
		})
	}
}

// at is the value of a run at u.
func at(run []place, u float64) float64 {
	for i := 1; i < len(run); i++ {
		if u <= run[i][0] {
			a, b := run[i-1], run[i]
			if b[0] == a[0] {
				return b[1]
			}
			return a[1] + (b[1]-a[1])*(u-a[0])/(b[0]-a[0])
		}
	}
	return run[len(run)-1][1]
}

func nearStep(f func(float64) float64, u float64) bool { return math.Abs(f(u+2)-f(u-2)) > 20 }

func TestPeopleAreDrawnToTheirStature(t *testing.T) {
	for _, c := range []struct {
		name string
		who  person
		view string
		axis int // of the extent: 0 across, 1 along
		want float64
	}{
		{"lying lengthwise, from above", person{stature: 1830, how: "lies", faces: [2]float64{1, 0}}, Plan, 0, 1830},
		{"lying lengthwise, from the side", person{stature: 1830, how: "lies", faces: [2]float64{1, 0}}, Side, 0, 1830},
		{"lying across, from behind", person{stature: 1640, how: "lies", faces: [2]float64{0, 1}}, Cross, 0, 1640},
		{"standing, from the side", person{stature: 1640, how: "stands", faces: [2]float64{0, 1}}, Side, 1, 1640},
		{"standing, from behind", person{stature: 1640, how: "stands", faces: [2]float64{0, -1}}, Cross, 1, 1640},
	} {
		t.Run(c.name, func(t *testing.T) {
			b := around(c.who.parts(c.view))
			got := b[1] - b[0]
			if c.axis == 1 {
				got = b[3] - b[2]
			}
			if math.Abs(got-c.want) > 0.012*c.want { // ten points on a head fall short of its round by up to half a per cent
				t.Errorf("%.0f mm, want %.0f", got, c.want)
			}
		})
	}
}

func TestNumbersAreRoundedToWhatAVanIs(t *testing.T) {
	for v, want := range map[float64]string{1686.4: "1\u202f685", 0: "0", 42: "40", -421: "−420", 12345: "12\u202f345"} {
		if got := five(v); got != want {
			t.Errorf("five(%g) = %q, want %q", v, got, want)
		}
	}
}
