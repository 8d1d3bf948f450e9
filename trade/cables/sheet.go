package cables

// Terminal is what is crimped on.
type Terminal struct {
	Words string // "ring M8, 16 mm2", "blue push-on"
	Count int
	At    string // in words: "the fuse board"
	Row   string // of the catalogue; "" has none
}

// Item is a line of the bill.
type Item struct {
	Row    string // of the catalogue; "" has none
	Words  string
	Count  float64
	Unit   string   // "m", "piece"
	Price  float64  // in all; 0 is not known
	Cables []string // numbers that it is for
	Once   bool     // already among the fittings: it is listed, not bought again
}

// Test is one line of the test sheet.
type Test struct {
	Cable  string // number; "" for the whole
	Kind   TestKind
	How    string // what to do, in plain words
	Expect string // what it should show
	Low    float64
	High   float64
	Unit   string // "V", "Ω"; "" where nothing is read off
}

// TestKind is what a test is about; they are done in this order.
type TestKind string

const (
	TestEye        TestKind = "eye"        // look and tug
	TestPolarity   TestKind = "polarity"   // plus is plus
	TestInsulation TestKind = "insulation" // no way from plus to minus or to the body
	TestResistance TestKind = "resistance" // of the two cores, joined at the far end
	TestFirst      TestKind = "first"      // first switching on
	TestVoltage    TestKind = "voltage"    // at the load, under load
	TestPull       TestKind = "pull"       // pull the fuse: only that goes out
	TestWarmth     TestKind = "warmth"     // after half an hour
)
