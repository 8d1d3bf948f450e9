package build

import "tumblehome/quantity"

// Power says how electrical things are joined. Its trade comes later; the section is read and kept.
type Power struct {
	Batteries map[string]Bank    `doc:"batteries" says:"batteries that belong together"`
	Sources   map[string]Source  `doc:"sources" says:"where charge comes from"`
	Circuits  map[string]Circuit `doc:"circuits" says:"cables and what they feed"`
	Mains     *OrNone[Mains]     `doc:"mains" says:"mains inlet, none or undecided"`
	AtHome    string             `doc:"at-home" one:"mains sun nothing" says:"what charges the battery between trips; sun if left out"`
	MayFail   *quantity.Share    `doc:"may-fail" range:"0.001..1" says:"share of nights that may end flat; 5 % if left out"`
	Read      map[string]Metered `doc:"read" says:"what the battery monitor showed for a day of a trip"`
	Note      string             `doc:"note" says:"a remark"`
}

// Metered is what a monitor counted in a day of a trip. Days of several seasons are best.
type Metered struct {
	Date quantity.Date `doc:"date,need" says:"the day"`
	Took quantity.Rate `doc:"took,need" says:"what was used: 45 Ah/day, 560 Wh/day"`
	Note string        `doc:"note" says:"a remark"`
}

// Bank is one or several batteries joined.
type Bank struct {
	Is       []string          `doc:"is,need" ref:"fittings" says:"the batteries"`
	MainFuse *quantity.Current `doc:"main-fuse" range:"1..2000" says:"fuse at the battery"`
	Tested   *quantity.Charge  `doc:"tested" range:"0..5000" says:"what a test found it to hold"`
	Note     string            `doc:"note" says:"a remark"`
}

// Source is where charge comes from.
type Source struct {
	Is    []string          `doc:"is" ref:"fittings" says:"panels or chargers"`
	By    string            `doc:"by" ref:"fittings" says:"what controls it"`
	To    string            `doc:"to" says:"the battery bank it charges"`
	Most  *quantity.Current `doc:"most" range:"0..1000" says:"greatest current"`
	Shade *quantity.Share   `doc:"shade" range:"0..1" says:"share of a panel's light lost to shade"`
	Route *quantity.Length  `doc:"route" range:"0..50000" says:"length of cable one way, if measured"`
	Cable *quantity.Section `doc:"cable" says:"copper of one conductor"`
	Fuse  *quantity.Current `doc:"fuse" range:"0..2000" says:"fuse"`
	Note  string            `doc:"note" says:"a remark"`
}

// Circuit is a cable and what it feeds.
type Circuit struct {
	From       string            `doc:"from,need" says:"the battery bank"`
	Loads      []string          `doc:"loads" ref:"fittings" says:"what it feeds"`
	Along      []string          `doc:"along" ref:"runs" says:"ways it takes"`
	Current    *quantity.Current `doc:"current" range:"0..2000" says:"current when all is on"`
	Route      *quantity.Length  `doc:"route" range:"0..50000" says:"length of cable one way, if measured"`
	Cable      *quantity.Section `doc:"cable" says:"copper of one conductor"`
	Fuse       *quantity.Current `doc:"fuse" range:"0..2000" says:"fuse"`
	Breaking   *quantity.Current `doc:"breaking" range:"0..100000" says:"current the fuse can break"`
	DropWanted *quantity.Share   `doc:"drop-wanted" range:"0..1" says:"greatest loss of voltage wanted"`
	Note       string            `doc:"note" says:"a remark"`
}

// Mains is a mains inlet: licensed work.
type Mains struct {
	Inlet string `doc:"inlet" ref:"fittings" says:"the inlet"`
	By    string `doc:"by" says:"who installs it"`
	Note  string `doc:"note" says:"a remark"`
}

// Water says which fittings hold and draw water.
type Water struct {
	Fresh []string                 `doc:"fresh" ref:"fittings" says:"fresh water"`
	Waste []string                 `doc:"waste" ref:"fittings" says:"waste water"`
	Taps  map[string]Tap           `doc:"taps" keys:"fittings" says:"taps"`
	AHead map[string]quantity.Rate `doc:"a-head" says:"litres a head: drink, wash, cook"`
	Note  string                   `doc:"note" says:"a remark"`
}

// Tap is fed by a pump.
type Tap struct {
	By string `doc:"by" ref:"fittings" says:"the pump"`
}

// Gas says which fittings hold and burn gas: a licensed fitter's work.
type Gas struct {
	Bottles []string `doc:"bottles" ref:"fittings" says:"bottles"`
	Burners []string `doc:"burners" ref:"fittings" says:"what burns it"`
	By      string   `doc:"by" says:"who installs it"`
	Note    string   `doc:"note" says:"a remark"`
}

// Air says which openings let air through, and when.
type Air struct {
	AlwaysOpen []string                  `doc:"always-open" ref:"openings" says:"cannot be closed"`
	Asleep     map[string]quantity.Share `doc:"asleep" keys:"openings" range:"0..1" says:"how far open at night"`
	Note       string                    `doc:"note" says:"a remark"`
}
