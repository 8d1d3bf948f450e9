package settings_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"tumblehome/catalogue"
	"tumblehome/catalogue/settings"
	"tumblehome/internal/proof"
	"tumblehome/quantity"
)

func TestEverySettingIsWhole(t *testing.T) {
	seen := map[string]bool{}
	for _, s := range settings.All() {
		if seen[s.ID] {
			t.Errorf("%s stands twice", s.ID)
		}
		seen[s.ID] = true
		for _, r := range []settings.Range{s.X, s.Y, s.Z} {
			if !(0 < r.Low && r.Low <= r.Likely && r.Likely <= r.High) {
				t.Errorf("%s: size %v does not rise", s.ID, r)
			}
		}
		if s.Name == "" || s.Board == "" || s.Carried == "" || len(s.Words) == 0 {
			t.Errorf("%s lacks a name, board, carrier or words: %+v", s.ID, s)
		}
		for _, m := range s.Moves {
			if m.ID == "" || m.ID == "full" || m.ID == "rest" || m.Slide != "" && m.Hinge != "" {
				t.Errorf("%s: move %+v", s.ID, m)
			}
		}
	}
}

// Every word after make: in the document's grammar and its examples.
func TestWordsOfTheDocumentAreSettings(t *testing.T) {
	for _, id := range strings.Fields("carcass bench slat-bed worktop blackout shelf overlocker locker table drawer cushions curtains " +
		"partition box flap bunk lowered-bed seat-box cubicle wardrobe garage-floor splash tiles slatted-ceiling") {
		if _, ok := settings.Get(id); !ok {
			t.Errorf("%s is no setting", id)
		}
	}
	if _, ok := settings.Get("palace"); ok {
		t.Error("a palace can be made")
	}
}

func TestBeginnersWords(t *testing.T) {
	for words, want := range map[string]string{
		"kitchen": "carcass", "galley": "carcass", "bed": "slat-bed", "bench": "bench", "seat": "bench", "cupboard": "locker",
		"Table": "table", "double bed": "platform", "child bunk": "bunk", "bulkhead": "partition", "mattress": "cushions", "wardrobe": "wardrobe",
	} {
		found := settings.Search(strings.Fields(words))
		if len(found) == 0 || found[0].ID != want {
			t.Errorf("%q finds %v, want %s first", words, found, want)
		}
	}
	for _, words := range []string{"", "zeppelin", "bed zeppelin"} {
		if found := settings.Search(strings.Fields(words)); len(found) != 0 {
			t.Errorf("%q finds %v, want nothing", words, found)
		}
	}
}

// Masses of made things as practice gives them: ranges from memory. The guess
// must fall into the range, that is within half its width of its middle.
func TestGuessedMasses(t *testing.T) {
	const poplar12, birch12 = 5.28, 8.34 // kg/m2
	for _, c := range []struct {
		name, id  string
		x, y, z   quantity.Length
		board     quantity.PerArea
		low, high float64
	}{
		{"kitchen unit 1000 x 500 x 850 in 12 mm poplar", "carcass", 1000, 500, 850, poplar12, 18, 22},
		{"kitchen unit 1000 x 500 x 850 in 12 mm birch", "carcass", 1000, 500, 850, birch12, 26, 32},
		{"overhead locker, one metre, in 12 mm poplar", "overlocker", 1000, 300, 280, poplar12, 8, 12},
		{"fixed bed base of 2 m in 12 mm poplar", "platform", 2000, 1300, 700, poplar12, 20, 30},
	} {
		s, _ := settings.Get(c.id)
		got := s.GuessMass(c.x, c.y, c.z, c.board)
		proof.Check(t, proof.Case{Name: c.name, Source: "masses of made things, common practice, from memory", Inputs: fmt.Sprintf("board %g kg/m2", float64(c.board)),
			Expected: (c.low + c.high) / 2, Got: float64(got.Likely), Tolerance: (c.high - c.low) / 2, Unit: "kg"})
		if got.Low >= got.Likely || got.High <= got.Likely {
			t.Errorf("%s: %v has no spread", c.name, got)
		}
	}
}

func TestABiggerThingNeverWeighsLess(t *testing.T) {
	for _, s := range settings.All() {
		small := s.GuessMass(s.X.Low, s.Y.Low, s.Z.Low, 5)
		big := s.GuessMass(s.X.High, s.Y.High, s.Z.High, 5)
		if big.Likely < small.Likely {
			t.Errorf("%s: %v small, %v big", s.ID, small, big)
		}
		if got := s.GuessMass(-1, -1, -1, -1); got.Likely < 0 {
			t.Errorf("%s: nonsense weighs %v", s.ID, got)
		}
	}
}

func ExampleSearch() {
	for _, s := range settings.Search([]string{"galley"}) {
		fmt.Println(s.ID, "-", s.Name)
	}
	// Output:
	// carcass - kitchen unit or cupboard
	// worktop - worktop
}

func TestEverySettingIsMadeOfAMaterial(t *testing.T) {
	for _, s := range settings.All() {
		if m, ok := catalogue.Builtin().Material(s.Board); !ok || m.PerArea <= 0 {
			t.Errorf("%s is made of %s: %v, %v", s.ID, s.Board, ok, m.PerArea)
		}
	}
}

func TestOffersPutWhatIsMadeFirst(t *testing.T) {
	c := catalogue.Builtin()
	galley := settings.Offers(c, "galley, about 1.2 m")
	if len(galley) == 0 || galley[0].Make != "carcass" || galley[0].X != 1200 || galley[0].Mass.Likely < 15 || galley[0].Mass.Likely > 30 {
		t.Errorf("galley: %+v", galley)
	}
	bunk := settings.Offers(c, "bunk 1.75 m")
	if len(bunk) == 0 || bunk[0].Make != "bunk" || bunk[0].Y != 1750 {
		t.Errorf("bunk: %+v", bunk)
	}
	for _, word := range []string{"kitchen", "galley", "bed", "bench", "seat", "cupboard", "toilet", "fridge", "water", "battery"} {
		if len(settings.Offers(c, word)) == 0 {
			t.Errorf("%q offers nothing", word)
		}
	}
}

// Sizes are written as people talk: with a decimal comma, as two sides, or so that nobody can read them.
func TestOffersForWordsAsPeopleWriteThem(t *testing.T) {
	c := catalogue.Builtin()
	for words, want := range map[string]settings.Offer{
		"bunk bed 190 x 70 cm": {Make: "bunk", Y: 1900},
		"bunk bed, 70x190cm":   {Make: "bunk", Y: 1900},
		"bunk bed 1,75 m":      {Make: "bunk", Y: 1750},
		"Bunk 190 × 70":        {Make: "bunk", Y: 1700}, // no unit: the usual size
		"bunk 7.5.3m x 2":      {Make: "bunk", Y: 1700}, // cannot be read
		"galley, about 1,2 m":  {Make: "carcass", X: 1200},
		"galley 9999":          {Make: "carcass", X: 1000},
		"bike rack":            {Buy: "carrier-rear-4"},
		"rack for two bikes":   {Buy: "carrier-rear-4"},
		"battery 100 Ah":       {Buy: "battery-lfp-100ah"},
		"bed across":           {Make: "bunk"},
		"bed across 1.84 m":    {Make: "bunk", Y: 1840},
		"transverse bed":       {Make: "platform", X: 1300, Y: 1900},
		"fixed bed crosswise":  {Make: "platform", X: 1300, Y: 1900},
		"nice comfy bed":       {Make: "platform"}, // one word of three will do
	} {
		offers := settings.Offers(c, words)
		found := slices.ContainsFunc(offers, func(o settings.Offer) bool {
			return o.Make == want.Make && o.Buy == want.Buy && (want.X == 0 || o.X == want.X) && (want.Y == 0 || o.Y == want.Y)
		})
		if !found {
			t.Errorf("%q offers %+v, without %+v", words, offers, want)
		}
	}
}

// Where nothing goes by all the words, what goes by more of them stands before what goes by fewer.
func TestMoreOfTheWordsStandFirst(t *testing.T) {
	offers := settings.Offers(catalogue.Builtin(), "lovely double bed")
	if len(offers) < 3 || offers[0].Make != "platform" && offers[0].Make != "lowered-bed" {
		t.Errorf("a lovely double bed is %+v", offers)
	}
}

func ExampleOffers() {
	for _, o := range settings.Offers(catalogue.Builtin(), "galley, about 1 m") {
		fmt.Println(o.Make, o.X, "x", o.Y, "x", o.Z, "in", o.Of, "-", o.Mass, "kg")
	}
	// Output:
	// carcass 1000 x 450 x 880 in ply-poplar-12 - 19 ± 5.7 kg
	// worktop 1000 x 480 x 26 in worktop-beech-26 - 7.9 ± 2.4 kg
}
