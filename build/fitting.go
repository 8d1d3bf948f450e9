package build

import "tumblehome/quantity"

// Fitting is anything placed in or on the van: bought, made or found.
type Fitting struct {
	Called    string                          `doc:"called" letters:"200" says:"plain name, if the id does not say it"`
	Make      string                          `doc:"make" ref:"setting" says:"what kind of thing is made"`
	Buy       string                          `doc:"buy" ref:"row" says:"catalogue row of what is bought"`
	Found     *quantity.YesNo                 `doc:"found" says:"given or found: it costs nothing"`
	Where     string                          `doc:"where" one:"outside under cab" says:"frame of its place, if it is not inside the van"`
	In        string                          `doc:"in" ref:"fittings" says:"the fitting it stands in"`
	Upon      string                          `doc:"upon" ref:"fittings" says:"the fitting it stands upon"`
	For       string                          `doc:"for" ref:"path" says:"the opening it belongs to"`
	OnDoor    string                          `doc:"on-door" ref:"openings" says:"the door that it hangs on outside and swings with: a ladder, a spare wheel"`
	At        *Place                          `doc:"at" says:"where it stands: one rule per axis"`
	Size      *Size                           `doc:"size" says:"size along its own axes"`
	Turn      *quantity.Angle                 `doc:"turn" range:"-360..360" says:"turned clockwise seen from above"`
	Scribe    []string                        `doc:"scribe" one:"front rear left right roof" says:"faces cut to follow the lining"`
	Of        *Choice[string]                 `doc:"of" ref:"material" says:"the board it is made of"`
	Fronts    *Fronts                         `doc:"fronts" says:"drawers and doors"`
	Moves     map[string]Move                 `doc:"moves" reserved:"full rest" says:"how its parts move"`
	Positions map[string]map[string]Amount    `doc:"positions" reserved:"rest full" says:"named positions: how far each move is"`
	Mass      *quantity.Spread[quantity.Mass] `doc:"mass" range:"0..1000" says:"how heavy it is, empty"`
	Holds     *quantity.Volume                `doc:"holds" range:"0..500" says:"litres it holds"`
	Costs     *Price                          `doc:"costs" says:"what it costs in all"`
	Fitted    *quantity.Date                  `doc:"fitted" says:"when it went in; left out, it is planned"`
	ForNow    *quantity.YesNo                 `doc:"for-now" says:"only for the time being"`
	Later     *quantity.YesNo                 `doc:"later" says:"only its place is kept: it takes room, but has no mass and no price"`
	Held      string                          `doc:"held" one:"screwed bolted strapped latched wedged bonded loose" says:"how it is held while driving"`
	Locked    *quantity.YesNo                 `doc:"locked" says:"it stays where it is, whatever is dragged, until it is unlocked"`
	Note      string                          `doc:"note" says:"a remark"`
}

// Fronts counts what opens at the front of a made fitting.
type Fronts struct {
	Drawers *int `doc:"drawers" range:"0..20" says:"drawers"`
	Doors   *int `doc:"doors" range:"0..20" says:"doors"`
}

// Mode is one way the van stands.
type Mode struct {
	Title  string            `doc:"title" says:"what the mode is called"`
	Take   map[string]string `doc:"take" keys:"fittings" says:"which position each fitting takes"`
	Open   []string          `doc:"open" ref:"openings" says:"openings that stand open"`
	People map[string]Pose   `doc:"people" keys:"people" says:"who is where"`
	Note   string            `doc:"note" says:"a remark"`
}

// Pose says where a person is and how; exactly one of the first four is given.
type Pose struct {
	Lies   string `doc:"lies" ref:"fittings" says:"lies on"`
	Sits   string `doc:"sits" ref:"fittings" says:"sits on"`
	Stands string `doc:"stands" ref:"fittings" says:"stands at"`
	Cooks  string `doc:"cooks" ref:"fittings" says:"cooks at"`
	Head   string `doc:"head" one:"front rear left right" says:"where the head is"`
}

// Run is a way for cables, hoses or ducts.
type Run struct {
	Points []Point3         `doc:"points,need" says:"corners of the way, in order"`
	Bore   *quantity.Length `doc:"bore" range:"1..300" says:"inner diameter"`
	Note   string           `doc:"note" says:"a remark"`
}
