package build

import "tumblehome/quantity"

// Vehicle is the van as a vehicle. Distances along it count from the front axle where they belong to the vehicle (wheelbase, overhangs)
// and from the datum elsewhere.
type Vehicle struct {
	Wheelbase quantity.Length     `doc:"wheelbase,need" range:"1200..6000" says:"front axle to rear axle"`
	Datum     quantity.Length     `doc:"datum,need" range:"-1000..5000" says:"x = 0 of this document lies this far behind the front axle"`
	Overhang  *Overhang           `doc:"overhang" says:"front and rear overhang"`
	Width     *quantity.Length    `doc:"width" range:"1000..2600" says:"overall width without mirrors"`
	Height    *quantity.Length    `doc:"height" range:"1000..4000" says:"overall height of the bare van"`
	Track     *quantity.Length    `doc:"track" range:"800..2400" says:"distance between the wheels of an axle"`
	Drive     string              `doc:"drive" one:"front rear all" says:"driven wheels"`
	Plate     Plate               `doc:"plate" says:"limits on the plate; all of them bind separately"`
	Weighed   map[string]Weighing `doc:"weighed" says:"weighbridge readings, with what was aboard"`
	Cases     map[string]LoadCase `doc:"cases" says:"load cases: who and what is aboard"`
	Seats     map[string]Seat     `doc:"seats" says:"seats with belts"`
	Volts     *quantity.Voltage   `doc:"volts" range:"12..24" says:"voltage of the vehicle's own battery, 12 or 24; that of the house battery if left out"`
	Tank      *FuelTank           `doc:"tank" says:"fuel tank"`
	Tyres     map[string]Tyre     `doc:"tyres" keys:"axle" says:"tyres of the front and of the rear axle"`
	RoofLimit *quantity.Mass      `doc:"roof-limit" range:"0..1000" says:"most that the roof may carry, from the handbook"`
	Duties    map[string]Duty     `doc:"duties" draft:"yes" says:"dated duties: test, tax, insurance"`
	Note      string              `doc:"note" says:"a remark"`
}

// Overhang is what stands out before the front axle and behind the rear axle.
type Overhang struct {
	Front quantity.Length `doc:"front,need" range:"0..2500" says:"before the front axle"`
	Rear  quantity.Length `doc:"rear,need" range:"0..3500" says:"behind the rear axle"`
}

// Plate is what the maker's plate allows.
type Plate struct {
	Gross *quantity.Mass `doc:"gross" range:"500..12000" says:"greatest mass of the laden van"`
	Front *quantity.Mass `doc:"front" range:"200..6000" says:"greatest load of the front axle"`
	Rear  *quantity.Mass `doc:"rear" range:"200..9000" says:"greatest load of the rear axle"`
	Train *quantity.Mass `doc:"train" range:"500..20000" says:"greatest mass of van and trailer"`
}

// Weighing is one visit to a weighbridge.
type Weighing struct {
	Date   quantity.Date  `doc:"date,need" says:"day of the visit"`
	Front  quantity.Mass  `doc:"front,need" range:"200..6000" says:"front axle as read"`
	Rear   quantity.Mass  `doc:"rear,need" range:"100..9000" says:"rear axle as read"`
	Step   *quantity.Mass `doc:"step" range:"0..100" says:"step of the scale"`
	Times  *int           `doc:"times" range:"1..20" says:"how often each axle was read"`
	Aboard Aboard         `doc:"aboard" says:"what was in the van"`
	Note   string         `doc:"note" says:"a remark"`
}

// Aboard says what was in the van when it was weighed.
type Aboard struct {
	Fuel     *quantity.Share   `doc:"fuel" range:"0..1" says:"how full the fuel tank was"`
	People   []string          `doc:"people" ref:"people" says:"who sat in it"`
	Linings  *quantity.YesNo   `doc:"linings" says:"the linings were in"`
	Fittings []string          `doc:"fittings" ref:"fittings" says:"which fittings were in"`
	Removed  []string          `doc:"removed" ref:"removed" says:"what was still in and has been taken out since"`
	Besides  map[string]MassAt `doc:"besides" says:"anything else that was aboard"`
}

// LoadCase is one way of being on the road.
type LoadCase struct {
	Title   string                    `doc:"title" says:"what the case is called"`
	People  []string                  `doc:"people" ref:"people" says:"who is aboard; they take the seats from the front"`
	Fuel    *quantity.Share           `doc:"fuel" range:"0..1" says:"how full the fuel tank is"`
	Fill    map[string]quantity.Share `doc:"fill" keys:"fittings" range:"0..1" says:"how full each tank is; tanks not named are empty"`
	Gear    *quantity.YesNo           `doc:"gear" says:"whether the gear is aboard"`
	Without []string                  `doc:"without" says:"gear or fittings left at home"`
	Note    string                    `doc:"note" says:"a remark"`
}

// Seat is one seat with a belt.
type Seat struct {
	X    quantity.Length `doc:"x,need" range:"-3000..8000" says:"middle of whoever sits there"`
	Y    quantity.Length `doc:"y,need" range:"-1200..1200" says:"middle of whoever sits there"`
	Note string          `doc:"note" says:"a remark"`
}

// FuelTank is the vehicle's own tank.
type FuelTank struct {
	Holds quantity.Volume `doc:"holds,need" range:"5..300" says:"litres when full"`
	X     quantity.Length `doc:"x,need" range:"-3000..8000" says:"its middle"`
	Fuel  string          `doc:"fuel,need" one:"diesel petrol" says:"what is in it"`
}

// Tyre describes the tyres of one axle.
type Tyre struct {
	Size      string         `doc:"size" says:"as on the sidewall"`
	LoadIndex int            `doc:"load-index,need" range:"60..126" says:"first load index, for single wheels"`
	Made      *quantity.Date `doc:"made" says:"when they were made, from the week and year on the sidewall"`
	Note      string         `doc:"note" says:"a remark"`
}

// Duty is something the vehicle needs by a date.
type Duty struct {
	Due  quantity.Date `doc:"due,need" says:"last day"`
	Note string        `doc:"note" says:"a remark"`
}
