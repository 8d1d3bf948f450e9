package web_test

import (
	"net/http"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

// roomy is an empty van of middling height with the body at its usual width.
const roomy = `
tumblehome: 1
build: {title: roomy, rules: gb, currency: GBP}
people: {one: {stature: 1750, mass: 79}}
vehicle: {wheelbase: 3320, datum: 1290, overhang: {front: 930, rear: 1050}, width: 2080, height: 2390, plate: {gross: 3300, front: 1780, rear: 1910}}
shell: {quick: {body: mid-mid, door-side: left, length: 2950}}
lining:
  sides: [{lay: foam-xlpe-10, ribs: bridged}, {lay: fleece-25, ribs: free}, {lay: ply-poplar-3-6}]
  roof: [{lay: foam-xlpe-20, ribs: free}, {lay: ply-poplar-3-6}]
`

// openText opens a workspace on a document given as text.
func openText(t *testing.T, text string) *workshop {
	t.Helper()
	name := filepath.Join(t.TempDir(), "roomy.yaml")
	if err := os.WriteFile(name, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return open(t, name)
}

// A bunk goes across the rear above the wheel arches, cut to the width between the linings, and is not hung from the roof.
func TestABunkLiesAcrossAboveTheArches(t *testing.T) {
	w := openText(t, roomy)
	if got := w.answer(post("/fittings/add", "words", "bunk 2 m", "make", "bunk", "base", "1")); got.Code != http.StatusSeeOther {
		t.Fatal(got.Code, got.Body)
	}
	head, _ := w.store.Head()
	s := w.reckoned().Places.Find("bunk")
	if !strings.Contains(head.Words, "cut to the") {
		t.Errorf("it is not said that the bunk is cut: %s", head.Words)
	}
	room := w.reckoned().Lining.Room
	x := (s.Box.MinX + s.Box.MaxX) / 2
	if s.Box.MinZ < 350 || s.Box.MaxZ > 800 {
		t.Errorf("the bunk is put from %.0f to %.0f up", s.Box.MinZ, s.Box.MaxZ)
	}
	if s.Box.MaxY > room.Right(x, s.Box.MaxZ) || s.Box.MinY < room.Left(x, s.Box.MaxZ) {
		t.Errorf("the bunk goes from %.0f to %.0f across; the sides stand at %.0f and %.0f", s.Box.MinY, s.Box.MaxY, room.Left(x, s.Box.MaxZ), room.Right(x, s.Box.MaxZ))
	}
	if patch, ok := w.reckoned().MovePatch(reckon.Move{Fitting: "bunk", DZ: 100}); !ok || len(patch.Touches()) == 0 {
		t.Error("the bunk is not lifted")
	}
	if page := w.answer(get("/arrangement")).Body.String(); !strings.Contains(page, "lying on bunk (nobody yet)") {
		t.Error("the table of who fits does not say that nobody lies on the bunk yet")
	}
	if got := w.answer(post("/fittings/add", "words", "bunk", "make", "bunk", "base", "2")); got.Code != http.StatusSeeOther {
		t.Fatal(got.Code, got.Body)
	}
	if above := w.reckoned().Places.Find("bunk-2"); above == nil || above.Box.MinZ < s.Box.MaxZ+500 {
		t.Errorf("a second bunk is put at %v", above)
	}
}

// A fixed bed across stands at the rear, cut to both sides and round the wheel arches, as long as there is room for on its top.
func TestAFixedBedGoesAcross(t *testing.T) {
	w := openText(t, roomy)
	if got := w.answer(post("/fittings/add", "words", "fixed bed across 1.84 m", "make", "platform", "base", "1")); got.Code != http.StatusSeeOther {
		t.Fatal(got.Code, got.Body)
	}
	head, _ := w.store.Head()
	f, s := w.fitting("fixed"), w.reckoned().Places.Find("fixed")
	if f.Size.X.Float() != 1300 || f.Size.Y.Float() < 1600 || !strings.Contains(head.Words, "cut to the "+f.Size.Y.String()+" mm") {
		t.Errorf("%s: the bed is %v", head.Words, f.Size)
	}
	if s == nil || !s.Placed() || f.At.X.String() != "rear" {
		t.Fatalf("the bed stands at %v", f.At)
	}
	for _, n := range w.reckoned().Findings {
		if n.Severity >= finding.Fault && strings.HasPrefix(n.Code, "fit") && slices.Contains(n.About, "/fittings/fixed") {
			t.Errorf("%s: %s", n.Code, n.Title)
		}
	}
}
