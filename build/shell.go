package build

import "tumblehome/quantity"

// Shell is the bare body: quick readings on a generic body, or a table of offsets, and what stands out of or goes through it.
// Its positions are on the inside of the skin.
type Shell struct {
	Quick     *QuickReadings     `doc:"quick" says:"six tape readings on the nearest generic body"`
	Offsets   *Offsets           `doc:"offsets" says:"half widths measured at stations and heights"`
	Skin      *quantity.Length   `doc:"skin" range:"0.3..5" says:"thickness of the sheet"`
	Pressings *Pressings         `doc:"pressings" says:"pressings of the load floor"`
	Ribs      map[string]Rib     `doc:"ribs" says:"ribs of the sides and bows of the roof"`
	Arches    map[string]Arch    `doc:"arches" says:"wheel arches"`
	Openings  map[string]Opening `doc:"openings" says:"doors, windows, vents and fans"`
	Defects   map[string]Defect  `doc:"defects" draft:"yes" says:"rust, holes, leaks"`
	Note      string             `doc:"note" says:"a remark"`
}

// QuickReadings are what a tape gives in ten minutes.
type QuickReadings struct {
	Body          string           `doc:"body,need" one:"short-low short-mid short-high mid-low mid-mid mid-high long-low long-mid long-high" says:"which outline is nearest"`
	Length        *quantity.Length `doc:"length" range:"1000..6000" says:"load floor from the seats to the rear doors"`
	WidthAtKnee   *quantity.Length `doc:"width-at-knee" range:"900..2400" says:"between the sides, 400 above the floor"`
	BetweenArches *quantity.Length `doc:"between-arches" range:"600..2000" says:"between the wheel arches"`
	Height        *quantity.Length `doc:"height" range:"800..2600" says:"floor to roof in the middle"`
	DoorWidth     *quantity.Length `doc:"door-width" range:"400..2000" says:"clear width of the side door"`
	DoorHeight    *quantity.Length `doc:"door-height" range:"600..2400" says:"clear height of the side door"`
	DoorSide      string           `doc:"door-side" one:"left right none" says:"side of the sliding door"`
}

// Offsets is the table of half-breadths to the inside of the skin, both sides alike.
type Offsets struct {
	Heights      []quantity.Length  `doc:"heights,need" range:"0..3000" says:"heights of the readings, from the floor up"`
	Stations     map[string]Station `doc:"stations,need" says:"where along the van readings were taken"`
	ReadingError *quantity.Length   `doc:"reading-error" range:"0..50" says:"how well the tape was read, plus or minus"`
}

// Station is the row of readings at one x.
type Station struct {
	X     quantity.Length   `doc:"x,need" range:"-1000..8000" says:"rearwards from the datum"`
	Half  []quantity.Length `doc:"half,need" range:"50..1500" says:"half widths at the heights"`
	Crown quantity.Length   `doc:"crown,need" range:"300..3500" says:"inside of the roof in the middle"`
}

// Pressings are the ridges of the load floor; z counts from their crests.
type Pressings struct {
	Depth   quantity.Length  `doc:"depth,need" range:"0..60" says:"how deep the valleys are"`
	Spacing *quantity.Length `doc:"spacing" range:"20..600" says:"crest to crest"`
}

// Rib is a rib of the sides or a bow of the roof.
type Rib struct {
	X      quantity.Length  `doc:"x,need" range:"-1000..8000" says:"its middle"`
	On     []string         `doc:"on,need" one:"left right roof" says:"which surfaces it is on"`
	Depth  quantity.Length  `doc:"depth,need" range:"0..200" says:"how far it stands in from the skin"`
	Flange *quantity.Length `doc:"flange" range:"5..300" says:"width of its face"`
	Note   string           `doc:"note" says:"a remark"`
}

// Arch is a wheel arch.
type Arch struct {
	On     []string        `doc:"on,need" one:"left right" says:"which sides"`
	X      Extent          `doc:"x,need" range:"-20000..20000" says:"from and to"`
	Inward quantity.Length `doc:"inward,need" range:"10..700" says:"how far it stands in from the skin at the floor"`
	Up     quantity.Length `doc:"up,need" range:"10..900" says:"how high it is"`
	Note   string          `doc:"note" says:"a remark"`
}

// Opening is a door, window, vent or fan.
type Opening struct {
	Title    string          `doc:"title" says:"what it is called"`
	Through  string          `doc:"through,need" one:"left right front rear roof floor" says:"which surface it goes through"`
	X        *Extent         `doc:"x" range:"-20000..20000" says:"from and to along the van"`
	Y        *Extent         `doc:"y" range:"-20000..20000" says:"from and to across"`
	Z        *Extent         `doc:"z" range:"-20000..20000" says:"from and to in height"`
	Door     string          `doc:"door" one:"sliding,hinged,two leaves,up and over" says:"kind of door, if it is one"`
	Glazed   *quantity.Area  `doc:"glazed" says:"area of glass"`
	WayOut   *quantity.YesNo `doc:"way-out" says:"opens from inside, without tools, wide enough to leave by"`
	Made     *quantity.Date  `doc:"made" says:"when it was cut"`
	FreeArea *quantity.Area  `doc:"free-area" says:"area that air can pass"`
	In       string          `doc:"in" ref:"openings" says:"the opening it lies in: a window in a door"`
	Note     string          `doc:"note" says:"a remark"`
}

// Defect is rust, a hole or a leak.
type Defect struct {
	Near     string           `doc:"near" ref:"path" says:"dotted path of what it is near"`
	Where    string           `doc:"where" says:"place in words"`
	Length   *quantity.Length `doc:"length" range:"0..5000" says:"how long"`
	Width    *quantity.Length `doc:"width" range:"0..5000" says:"how wide"`
	Spots    *int             `doc:"spots" range:"1..500" says:"how many"`
	Kind     string           `doc:"kind" one:"surface crevice perforated hole leak mechanical mistake" says:"what kind"`
	Found    *quantity.Date   `doc:"found" says:"when"`
	State    string           `doc:"state,need" one:"open treated mended" says:"how it stands"`
	Evidence []string         `doc:"evidence" ref:"evidence" says:"photos"`
	Note     string           `doc:"note" says:"a remark"`
}
