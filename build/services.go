package build

import "tumblehome/quantity"

// Power says how electrical things are joined.
type Power struct {
	Batteries map[string]Bank    `doc:"batteries" says:"batteries that belong together"`
	Sources   map[string]Source  `doc:"sources" says:"where charge comes from"`
	Circuits  map[string]Circuit `doc:"circuits" says:"cables and what they feed"`
	Mains     *OrNone[Mains]     `doc:"mains" says:"mains inlet, none or undecided"`
	CountedIn []string           `doc:"counted-in" ref:"fittings" says:"fittings that stand for cables, fuses and terminals in mass and money"`
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
	Is         []string                  `doc:"is,need" ref:"fittings" says:"the batteries"`
	MainFuse   *OrNone[quantity.Current] `doc:"main-fuse" range:"1..2000" says:"fuse at the battery, or none"`
	FuseKind   string                    `doc:"fuse-kind" one:"blade maxi sf30 sf51 block class-t breaker" says:"how the main fuse is made"`
	Breaking   *quantity.Current         `doc:"breaking" range:"0..100000" says:"current the main fuse can break"`
	FuseAway   *quantity.Length          `doc:"fuse-away" range:"0..10000" says:"how far the main fuse is from the battery's post"`
	Shorted    *quantity.Current         `doc:"shorted" range:"50..100000" says:"current it gives into a short, from its label"`
	Bond       *quantity.Section         `doc:"bond" range:"0.5..150" says:"copper of the cable from negative to the body"`
	Tested     *quantity.Charge          `doc:"tested" range:"0.1..5000" says:"what a test found it to hold"`
	CutOff     *quantity.YesNo           `doc:"cut-off" says:"its label says that it takes no charge below freezing: low-temperature charge cut-off"`
	Heated     *quantity.YesNo           `doc:"heated" says:"it warms itself above freezing before it takes charge"`
	Number     int                       `doc:"number" range:"1..999" says:"the number on both ends of its main cable, where that is no circuit"`
	BondNumber int                       `doc:"bond-number" range:"1..999" says:"the number on both ends of the cable from negative to the body"`
	Note       string                    `doc:"note" says:"a remark"`
}

// Source is where charge comes from.
type Source struct {
	Is         []string                  `doc:"is" ref:"fittings" says:"panels or chargers"`
	By         string                    `doc:"by" ref:"fittings" says:"what controls it"`
	To         string                    `doc:"to" says:"the battery bank it charges"`
	Along      []string                  `doc:"along" ref:"runs" says:"ways its cable takes"`
	Most       *quantity.Current         `doc:"most" range:"0..1000" says:"greatest current in its cable, before what controls or converts it"`
	InRow      *quantity.YesNo           `doc:"in-row" says:"its panels are joined in a row, plus to minus: their volts add up; side by side if left out"`
	Shade      *quantity.Share           `doc:"shade" range:"0..1" says:"share of a panel's light lost to shade"`
	Route      *quantity.Length          `doc:"route" range:"0..50000" says:"length of its cable one way, without the lead, if measured"`
	Cable      *quantity.Section         `doc:"cable" range:"0.1..150" says:"copper of one conductor"`
	Insulation *quantity.Temperature     `doc:"insulation" range:"60..200" says:"what the cable's insulation stands"`
	Wrapped    *quantity.YesNo           `doc:"wrapped" says:"its cable lies in thermal insulation for more than half a metre"`
	Hot        *quantity.YesNo           `doc:"hot" says:"its cable lies beside an engine or an exhaust, or under a dark roof"`
	Fuse       *OrNone[quantity.Current] `doc:"fuse" range:"0.1..2000" says:"fuse where a battery feeds it, or none"`
	FuseKind   string                    `doc:"fuse-kind" one:"blade maxi sf30 sf51 block class-t breaker" says:"how the fuse is made"`
	Breaking   *quantity.Current         `doc:"breaking" range:"0..100000" says:"current the fuse can break"`
	FuseAway   *quantity.Length          `doc:"fuse-away" range:"0..10000" says:"how far the fuse is from the battery it protects the cable from"`
	StringFuse *OrNone[quantity.Current] `doc:"string-fuse" range:"1..100" says:"fuse in the plus cable of each of several panels side by side, or none"`
	StringMost *quantity.Current         `doc:"string-most" range:"1..100" says:"the largest fuse that a panel's label allows: maximum series fuse"`
	Fused      string                    `doc:"fused" one:"both house source" says:"which ends of a line between two batteries have the fuse"`
	Lead       *Lead                     `doc:"lead" says:"the short cable from what controls or converts it to the fuse board"`
	Colour     string                    `doc:"colour" one:"red brown black blue green yellow white grey orange pink violet" says:"colour of its positive"`
	Number     int                       `doc:"number" range:"1..999" says:"the number on both ends of its cable, 7 for W7"`
	Note       string                    `doc:"note" says:"a remark"`
}

// Lead is the cable from the controller, the converter or the relay of a source to the fuse board.
type Lead struct {
	Route    *quantity.Length          `doc:"route" range:"0..50000" says:"length one way, if measured"`
	Cable    *quantity.Section         `doc:"cable" range:"0.1..150" says:"copper of one conductor"`
	Fuse     *OrNone[quantity.Current] `doc:"fuse" range:"0.1..2000" says:"fuse at the board, if another than that of the source; or none"`
	FuseKind string                    `doc:"fuse-kind" one:"blade maxi sf30 sf51 block class-t breaker" says:"how that fuse is made"`
	Number   int                       `doc:"number" range:"1..999" says:"the number on both ends of its cable, 7 for W7"`
	Note     string                    `doc:"note" says:"a remark"`
}

// Circuit is a cable and what it feeds. One that feeds nothing leads from the battery to the fuse board.
type Circuit struct {
	Called     string                    `doc:"called" letters:"200" says:"plain name, if the id does not say it"`
	From       string                    `doc:"from,need" says:"the battery bank, or the circuit at whose far end it begins"`
	Loads      []string                  `doc:"loads" ref:"fittings" says:"what it feeds; none: the fuse board"`
	Along      []string                  `doc:"along" ref:"runs" says:"ways it takes"`
	Current    *quantity.Current         `doc:"current" range:"0..2000" says:"current when all is on"`
	Route      *quantity.Length          `doc:"route" range:"0..50000" says:"length of cable one way, if measured"`
	Cable      *quantity.Section         `doc:"cable" range:"0.1..150" says:"copper of one conductor"`
	Insulation *quantity.Temperature     `doc:"insulation" range:"60..200" says:"what the cable's insulation stands"`
	Bundled    int                       `doc:"bundled" range:"1..100" says:"loaded cores side by side, its own two among them"`
	Wrapped    *quantity.YesNo           `doc:"wrapped" says:"it lies in thermal insulation for more than half a metre"`
	Hot        *quantity.YesNo           `doc:"hot" says:"it lies beside an engine or an exhaust, or under a dark roof"`
	Return     string                    `doc:"return" one:"cable body" says:"what leads back: a cable, or the body of the van"`
	Fuse       *OrNone[quantity.Current] `doc:"fuse" range:"0.1..2000" says:"fuse, or none"`
	FuseKind   string                    `doc:"fuse-kind" one:"blade maxi sf30 sf51 block class-t breaker" says:"how the fuse is made"`
	Breaking   *quantity.Current         `doc:"breaking" range:"0..100000" says:"current the fuse can break"`
	FuseAway   *quantity.Length          `doc:"fuse-away" range:"0..10000" says:"how far the fuse is from what feeds it"`
	DropWanted *quantity.Share           `doc:"drop-wanted" range:"0..1" says:"greatest loss of voltage wanted"`
	Colour     string                    `doc:"colour" one:"red brown black blue green yellow white grey orange pink violet" says:"colour of its positive"`
	Number     int                       `doc:"number" range:"1..999" says:"the number on both ends of its cable, 7 for W7"`
	Note       string                    `doc:"note" says:"a remark"`
}

// Mains is a mains inlet: licensed work.
type Mains struct {
	Inlet string   `doc:"inlet" ref:"fittings" says:"the inlet"`
	By    string   `doc:"by" says:"who installs it"`
	Along []string `doc:"along" ref:"runs" says:"ways its cables take"`
	Note  string   `doc:"note" says:"a remark"`
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
