package reckon_test

import (
	"strings"
	"testing"
)

// What is offered for some of the fault cases, in its words. That each clears what it is for, house_proposals_test.go holds.
func TestWhatIsOffered(t *testing.T) {
	all, err := faulty()
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct{ name, code, want string }{
		{"The panel on the roof is written ten times too far back", "fit.astray", "lay panel on the roof, where it is free"},
		{"The panel of the roof lies in the air under the floor", "fit.astray", "lay panel on the roof, where it is free"},
		{"The panel of the roof lies in the room over the heads", "fit.astray", "say that panel stands inside the van"},
		{"The hole of the fan is marked over a roof bow", "shell.opening-over-rib", "move the hole fan 260 mm forwards, between two ribs; move the hole fan 260 mm rearwards, between two ribs"},
		{"The hole of the fan has been cut through a roof bow", "shell.opening-over-rib", ""},
		{"A ladder is hung before the rear doors, and nobody says that it swings with them", "fit.door.barred", "say that ladder hangs on the rear door and swings with it"},
		{"A coolbox is put into the kitchen past three narrow doors", "fit.comes-out", "give kitchen 2 wider doors"},
		{"The bed is shorter than who lies in it", "fit.bed.length", "make bench 195 mm longer towards the front"},
		{"A box reaches through the lining of the rear doors", "fit.sticks-out", "move left box 14 mm forwards; cut the rear face of left box to the rear"},
		{"A bed lies across a van that is narrower than who lies in it is long", "fit.bed.length", "turn bench by a quarter, so that one lies along the van, and 75 mm forwards"},
		{"Somebody will have outgrown the bed", "fit.bed.growth", "make bench 75 mm longer, 20 at the front and 55 at the rear"},
		{"A rail runs over the bed a little higher than one turns over", "fit.bed.sit-up", "make bench 140 mm lower"},
		{"A seat with belts is planned and nobody says how it is held", "fit.seat.mounting", ""},
		{"Two sleep in a bed that is taken out for the night", "fit.absent", "leave bed where it rests in the mode \"night\""},
		{"A table stands too high to eat at", "fit.table", "move eating 165 mm down"},
	} {
		got, found := "", false
		for _, b := range all {
			for _, f := range b.Findings {
				if b.name != tt.name || f.Code != tt.code || found {
					continue
				}
				found = true
				for _, p := range f.Proposals {
					got += "; " + p.Words
				}
			}
		}
		if got = strings.TrimPrefix(got, "; "); !found || got != tt.want {
			t.Errorf("%s: for %s (found: %v) is offered %q, not %q", tt.name, tt.code, found, got, tt.want)
		}
	}
}

// A bed across ends at the linings, however long its boards are: its words are of the room, not of the bed.
func TestABedAcrossIsToldByTheRoomBetweenTheLinings(t *testing.T) {
	all, err := faulty()
	if err != nil {
		t.Fatal(err)
	}
	for _, b := range all {
		if b.name != "A bed lies across a van that is narrower than who lies in it is long" {
			continue
		}
		for _, f := range b.Findings {
			if f.Code == "fit.bed.length" && !strings.HasPrefix(f.Words, "Between the linings, at the height one lies, there are 1\u202f") {
				t.Errorf("its words are %q", f.Words)
			}
		}
	}
}
