package cables

import (
	"unicode"
	"unicode/utf8"
)

// Test is one line of the test sheet.
type Test struct {
	Cable     string // number; "" for the whole
	Kind      TestKind
	How       string // what to do, in plain words; what all tests of a kind share stands in its TestPart
	Expect    string // what it should show
	Otherwise string // what to do if it does not, where that is not what its TestPart says
	Low       float64
	High      float64
	Unit      string // "V", "Ω"; "" where nothing is read off
}

// IfNot is what to do if it does not show what it should; "" where its TestPart says.
func (t Test) IfNot() string { return ifNot(t.Otherwise) }

// IfNot is what to do if a line does not show what it should.
func (p TestPart) IfNot() string { return ifNot(p.Otherwise) }

func ifNot(text string) string {
	first, n := utf8.DecodeRuneInString(text)
	if n == 0 {
		return ""
	}
	return "If not: " + string(unicode.ToLower(first)) + text[n:]
}

// TestKind is what a test is about; they are done in this order.
type TestKind string

const (
	TestOff        TestKind = "off"        // nothing gives current
	TestEye        TestKind = "eye"        // look and tug
	TestContinuity TestKind = "continuity" // each core is whole and the right one
	TestInsulation TestKind = "insulation" // no way from plus to minus or to the body
	TestResistance TestKind = "resistance" // of the two cores, joined at the far end
	TestBond       TestKind = "bond"       // negative to the body
	TestFirst      TestKind = "first"      // battery on, main fuse in
	TestPolarity   TestKind = "polarity"   // volts at each plug before anything is plugged in
	TestPlug       TestKind = "plug"       // one appliance and one fuse after the other
	TestVoltage    TestKind = "voltage"    // at the load, under load
	TestCharge     TestKind = "charge"     // each line that charges, before and while it does
	TestPull       TestKind = "pull"       // pull the fuse: only that goes out
	TestWarmth     TestKind = "warmth"     // after half an hour
	TestAgain      TestKind = "again"      // after 500 km
)

// TestPart is what all tests of one kind have in common.
type TestPart struct {
	Kind      TestKind
	Title     string
	How       string
	Otherwise string // what to do if a reading is not as it should be
}

// Part is the part of the sheet that a kind of test belongs to.
func (k TestKind) Part() TestPart {
	for _, p := range parts {
		if p.Kind == k {
			return p
		}
	}
	return TestPart{Kind: k}
}

var parts = []TestPart{
	{TestOff, "Nothing gives current", "Do this first, in this order. A panel gives current whenever it is light, a battery always.",
		"Something still feeds the wiring. Find what it is before you touch a cable."},
	{TestEye, "Look and tug", "Every appliance, charger and controller is unplugged, and stays so until a line below says otherwise.",
		"Mend it first: all that follows trusts it."},
	{TestContinuity, "Is each core whole, and the right one?", "Meter on Ω, one tip at each end of the same core, on the cable's side of its empty fuse holder, switches on the way on. A spare length of cable makes a lead of the meter long enough.",
		"The meter shows OL or 1: the core is broken, a crimp is bad, or these are the ends of two cables. Find it and label it anew."},
	{TestInsulation, "Is there no way where there should be none?", "Meter on its highest Ω range, nothing plugged in. OL or 1 means no way through, and is right here.",
		"There is a way through: a bare spot, a screw through a cable, or something still plugged in. Put no fuse in before you have found it."},
	{TestResistance, "Is the cable as good as planned?", "Join plus and minus at the far end with a clip, measure Ω between them at the near end, and take off what the meter shows with its own tips joined. Then take the clip off: forgotten, it is a short.",
		"More: a bad crimp, a longer way or thinner copper than planned. Less: a shorter way, or another clip that was forgotten."},
	{TestBond, "Is the negative joined to the body?", "Meter on Ω. Take off what it shows with its own tips joined.",
		"Scrape the paint off under the lug, put a toothed washer under it and tighten it."},
	{TestFirst, "Battery on, main fuse in", "Rings and watches off, insulated tools. Nothing is plugged in, every other fuse is out. Meter on V: red tip where plus should be, black tip where minus should be.",
		"A minus before the number: plus and minus are changed. Negative off at once; swap the cables before you go on."},
	{TestPolarity, "Plus and minus at every plug", "Before anything is plugged in. Put in the fuse of this one cable, measure V at its open plug or loose ends with the red tip on plus and the black tip on minus, then take the fuse out again.",
		"A minus before the number: plus and minus are changed. Swap them before you plug in: the wrong way round destroys it. Nothing: wrong holder, or a bad crimp."},
	{TestPlug, "Plug in, one fuse after the other", "Fuse out and switch off while you plug in. Then the fuse, then the switch. Go on only when this one runs.",
		"Fuse out at once. A fuse that blows shows a fault: find it, never take a larger one."},
	{TestVoltage, "What is lost under load", "Only this circuit on, all of it. Meter on V at the battery's posts, then at the plug while it runs.",
		"More is lost: feel for the warm crimp or holder, tighten it, crimp it again. If all joints are good, the cable is thinner or longer than planned."},
	{TestCharge, "What charges", "One line after the other, each step in its order. Meter on V, red tip on plus, black tip on minus.",
		"A minus before the number: swap plus and minus before you plug in. Nothing while it should charge: look at its fuses and at both plugs."},
	{TestPull, "Each fuse for its own", "Everything on. Pull one fuse, look, put it back.",
		"Something else went out, or this did not: a cable sits in the wrong holder. Put it right and write the label anew."},
	{TestWarmth, "Warm after half an hour", "Then feel the fuse, both ends and the cable with the back of the hand.",
		"Too hot to hold, or an end hotter than its cable: switch off, take the fuse out, crimp and tighten that end again."},
	{TestAgain, "After 500 km, and once a year", "Shaking loosens joints. Do this with the battery off, as in the first part.",
		"Do the part that this joint belongs to again, from its continuity on."},
}
