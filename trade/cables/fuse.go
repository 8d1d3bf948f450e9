package cables

import (
	"slices"

	"tumblehome/trade/finding"
)

// A pattern is what is known of one kind of fuse.
type pattern struct {
	words    string
	breaking float64 // A
	ratings  []float64
	limits   []timeLimit
}

// timeLimit is how soon a fuse opens at a share of its rating: not before, and not after [s].
type timeLimit struct{ share, least, most float64 }

// The times of blade fuses at 110 and 135 % and of maxi fuses were read; the rest is from memory.
var (
	bladeTimes = []timeLimit{{1.35, 0.75, 600}, {1.6, 0.25, 50}, {2, 0.15, 5}, {3.5, 0.04, 0.5}, {6, 0.02, 0.1}}
	maxiTimes  = []timeLimit{{1.35, 60, 1800}, {2, 2, 60}, {3.5, 0.2, 7}, {6, 0.04, 1}}
	stripTimes = []timeLimit{{1.35, 120, 1800}, {2, 1, 15}, {3.5, 0.3, 5}, {6, 0.1, 1}}
)

var makes = map[Kind]pattern{
	Blade:   {"blade fuse", 1000, []float64{1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40}, bladeTimes},
	Maxi:    {"large blade fuse", 1000, []float64{20, 30, 40, 50, 60, 70, 80, 100}, maxiTimes},
	SF30:    {"small strip fuse (30 mm between its bolts)", 1000, []float64{30, 40, 50, 60, 70, 80, 100, 125, 150}, stripTimes},
	SF51:    {"large strip fuse (51 mm between its bolts)", 2000, []float64{40, 60, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 500}, stripTimes},
	Block:   {"fuse block that sits on the battery's post", 10000, []float64{30, 40, 50, 60, 75, 80, 100, 125, 150, 175, 200, 225, 250, 300}, stripTimes},
	ClassT:  {"class T fuse", 20000, []float64{30, 40, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 400}, stripTimes},
	Breaker: {"breaker that can be reset", 3000, []float64{5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 100, 120, 150, 200}, bladeTimes},
}

// kinds from the one that breaks least.
var kinds = []Kind{Blade, Maxi, SF30, SF51, Block, ClassT}

var (
	breakingSource = finding.Source{Text: "ISO 8820-3 (blade, 1000 A); suppliers' articles on strip, block and class T fuses", Sure: finding.Read}
	loadSource     = finding.Source{Text: "a load of hours draws at most 80 % of its fuse; a marine cable catalogue", Sure: finding.Read}
	protectSource  = finding.Source{Text: "the fuse protects the cable: its rating is at most what the cable carries where it lies; ABYC E-11 would bear 150 %, this does not", Sure: finding.Practice}
)

// bladeColours are those of standard and mini blades.
var bladeColours = map[float64]string{1: "black", 2: "grey", 3: "violet", 4: "pink", 5: "tan", 7.5: "brown", 10: "red", 15: "blue", 20: "yellow", 25: "clear", 30: "green", 40: "orange"}

const mostLoad = 0.8 // of its rating that a fuse carries for hours

// leastFuse is the smallest rating that is sold and carries a load [A]; the greatest that is sold where none does.
func leastFuse(amps float64) float64 {
	for _, r := range soldRatings {
		if r*mostLoad >= amps*(1-1e-9) {
			return r
		}
	}
	return soldRatings[len(soldRatings)-1]
}

// greatestFuse is the greatest rating that is sold and no more than a current [A]; 0 where none is.
func greatestFuse(amps float64) float64 {
	out := 0.0
	for _, r := range soldRatings {
		if r <= amps*(1+1e-9) {
			out = r
		}
	}
	return out
}

// soldRatings are those of all kinds together.
var soldRatings = func() []float64 {
	var all []float64
	for _, k := range kinds {
		all = append(all, makes[k].ratings...)
	}
	slices.Sort(all)
	return slices.Compact(all)
}()

// kindFor is the plainest kind that is made for a rating and breaks a current [A]; Unsaid where none does.
func kindFor(rating, meets float64) Kind {
	for _, k := range kinds {
		if makes[k].breaking >= meets && slices.Contains(makes[k].ratings, rating) {
			return k
		}
	}
	return Unsaid
}

// bladeOhms is the cold resistance of blade fuses, from memory of makers' sheets; that of 25 A was read.
var bladeOhms = map[float64]float64{1: 0.123, 2: 0.0535, 3: 0.0311, 4: 0.0228, 5: 0.0178, 7.5: 0.0109, 10: 0.0074, 15: 0.0046, 20: 0.0033, 25: 0.00236, 30: 0.0019, 40: 0.0014}

const boltedVolts = 0.078 // lost over a bolted fuse and its joints at its rating: makers allow 0.1 V, common practice

// fuseOhms is the resistance of a fuse of a rating [A].
func fuseOhms(rating float64) float64 {
	if r, ok := bladeOhms[rating]; ok {
		return r
	}
	if rating <= 0 {
		return 0
	}
	return boltedVolts / rating
}
