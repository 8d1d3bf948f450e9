package sheet_test

import (
	"testing"

	"tumblehome/build/begin"
	"tumblehome/draw/sheet"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

// Whoever sits, cooks or stands is drawn between floor and roof, whatever the van and however tall they are.
func TestNobodyIsDrawnThroughTheRoofOrTheFloor(t *testing.T) {
	machine := reckon.NewMachine()
	for _, b := range begin.Bodies() {
		for _, o := range begin.Offers(begin.Answers{Body: b.ID}) {
			for _, stature := range []quantity.Length{1500, 1750, 1950} {
				a := begin.Answers{Body: b.ID, Arrangement: o.ID, Sleepers: []begin.Sleeper{{ID: "one", Stature: stature}, {ID: "two", Stature: stature}}}
				doc, _, err := begin.Document(a)
				if err != nil {
					t.Fatal(err)
				}
				for who, e := range sheet.Extents(machine.Reckon(doc, quantity.Date{}), "day") {
					if e[0] < e[2]-2 || e[1] > e[3]+2 {
						t.Errorf("%s %s, %s of %v: drawn from %.0f to %.0f, the room is from %.0f to %.0f", b.ID, o.ID, who, stature, e[0], e[1], e[2], e[3])
					}
				}
			}
		}
	}
}

// The seat of the third demonstration build is 480 long and 850 wide across the van: an adult and a child sit on it.
func TestTwoOnASeatAcrossTheVanSitSideBySide(t *testing.T) {
	all := sheet.Footprints(demo(t, "godwit"), "day")
	a, b := all["adult-1"], all["child-2"]
	if aside := min(a[1], b[1])-max(a[0], b[0]) <= 0 || min(a[3], b[3])-max(a[2], b[2]) <= 20; !aside {
		t.Errorf("one is drawn over x %.0f to %.0f, y %.0f to %.0f, the other over x %.0f to %.0f, y %.0f to %.0f", a[0], a[1], a[2], a[3], b[0], b[1], b[2], b[3])
	}
}

// In the second demonstration build one sits bent under the roof: the hands rest on the knees, which lie 0.3 of the stature ahead, and do not reach past them.
func TestWhoSitsBentHasTheHandsOnTheKnees(t *testing.T) {
	hands, head := sheet.Hands(demo(t, "twite"), "day", "solo")
	if head < 0.2 || hands < 0.22 || hands > 0.32 {
		t.Errorf("the hands lie %.2f of the stature ahead, the head %.2f", hands, head)
	}
}

// A bed lengthwise that reaches in before a tall locker is sat on where the locker is not.
func TestNobodySitsWithTheLegsInALocker(t *testing.T) {
	doc, _, err := begin.Document(begin.Answers{Body: "mid-mid", Arrangement: "mid-fixed"})
	if err != nil {
		t.Fatal(err)
	}
	long := quantity.Length(2500)
	doc.Fittings["bed"].Size.X = &long
	r := reckon.NewMachine().Reckon(doc, quantity.Date{})
	a := sheet.Footprints(r, "day")["first"]
	mid, seen := (a[0]+a[1])/2, false
	a[0], a[1] = mid-200, mid+200 // the legs are less wide than the elbows
	for _, s := range r.Places.Rest {
		if b := s.Box; s.ID == "locker" {
			seen = true
			if min(a[1], b.MaxX)-max(a[0], b.MinX) > 0 && min(a[3], b.MaxY)-max(a[2], b.MinY) > 0 {
				t.Errorf("the legs of one are drawn over x %.0f to %.0f, y %.0f to %.0f, in the locker of x %.0f to %.0f, y %.0f to %.0f", a[0], a[1], a[2], a[3], b.MinX, b.MaxX, b.MinY, b.MaxY)
			}
		}
	}
	if !seen || a[2] == a[3] {
		t.Error("there is no locker, or nobody sits")
	}
}
