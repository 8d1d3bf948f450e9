package catalogue

import "tumblehome/quantity"

// Row is one thing as a shop sells it. The same type serves the built-in rows
// and the document's own, so every field may be left out but the kind. Read
// what the pointers point to; never change it.
type Row struct {
	Name         string            `doc:"name" says:"plain name with size"`
	Kind         string            `doc:"kind,need" one:"sheet board roll length liquid piece fixing cable appliance" says:"how it is sold and counted"`
	Group        string            `doc:"group" one:"plywood board insulation timber worktop finishing-trim metal floor lining soft finish bodywork sealant adhesive fixing hardware electrical water appliance gas openings safety consumable" says:"heading in the shopping list and the budget"`
	Size         *Size             `doc:"size" says:"outside size of something that is placed"`
	Long         *quantity.Length  `doc:"long" range:"1..60000" says:"stock length of what is laid or sawn"`
	Wide         *quantity.Length  `doc:"wide" range:"1..6000" says:"stock width of what is laid or sawn"`
	Thick        *quantity.Length  `doc:"thick" range:"0.01..300" says:"thickness"`
	ThickLeast   *quantity.Length  `doc:"thick-least" range:"0.01..300" says:"the thinnest it is delivered"`
	ThickMost    *quantity.Length  `doc:"thick-most" range:"0.01..300" says:"the thickest it is delivered"`
	Density      *quantity.Density `doc:"density" range:"5..12000" says:"density"`
	Mass         *quantity.Lay     `doc:"mass" range:"0..1000" says:"mass of one, or of a metre or square metre"`
	Spread       *quantity.Share   `doc:"spread" range:"0..1" says:"how far off the mass may be, either way"`
	Contents     *quantity.Volume  `doc:"contents" range:"0..1000" says:"what is in one tin, can or cartridge"`
	Covers       *Coverage         `doc:"covers" says:"what one, or a litre of it, is enough for"`
	CoversHow    string            `doc:"covers-how" says:"what the coverage holds for: one coat, a 10 mm bead"`
	Each         string            `doc:"each" says:"what one mass and one price stand for: sheet, metre, box"`
	Waste        *quantity.Share   `doc:"waste" range:"0..1" says:"added to the net need before rounding up"`
	Price        *quantity.Money   `doc:"price" says:"price of one with tax"`
	Volts        *quantity.Voltage `doc:"volts" range:"0..1000" says:"voltage it works at"`
	Watts        *quantity.Power   `doc:"watts" range:"0..10000" says:"power it takes while running, or gives (panel, inverter)"`
	Amps         *quantity.Current `doc:"amps" range:"0..1000" says:"current it is made for"`
	AmpHours     *quantity.Charge  `doc:"amp-hours" range:"0..2000" says:"what a battery holds"`
	Usable       *quantity.Share   `doc:"usable" range:"0..1" says:"share of it that may be used without harm"`
	CutOff       *quantity.YesNo   `doc:"cut-off" says:"its label says that a battery takes no charge below freezing: low-temperature charge cut-off"`
	Holds        *quantity.Volume  `doc:"holds" range:"0..500" says:"litres a tank or can holds"`
	Heat         *quantity.Power   `doc:"heat" range:"0..20000" says:"heat it gives"`
	Conducts     *float64          `doc:"conducts" range:"0.005..500" says:"how well it conducts heat, W/mK"`
	Vapour       *float64          `doc:"vapour" range:"1..1000000" says:"vapour resistance as a multiple of still air; 1000000 is tight"`
	HeatCapacity *float64          `doc:"heat-capacity" range:"100..5000" says:"heat kept by a kilogram, J/kgK"`
	Flue         string            `doc:"flue" one:"own none" says:"whether its fumes leave by a flue of its own, or stay in the room"`
	Stands       string            `doc:"stands" one:"inside outside under cab" says:"where it usually stands"`
	Source       string            `doc:"source" says:"how its figures are known"`
	Note         string            `doc:"note" says:"use and warnings"`
}

// Size is an outside size: along the van, across it and up, before turning.
type Size struct {
	X *quantity.Length `doc:"x" range:"0..8000" says:"along"`
	Y *quantity.Length `doc:"y" range:"0..3000" says:"across"`
	Z *quantity.Length `doc:"z" range:"0..3000" says:"high"`
}

// over is r with what base says where r says nothing. A mass, a density or a
// stock size given anew takes the place of all from which a mass was known:
// the old ones would contradict it.
func (r Row) over(base Row) Row {
	if r.Mass != nil {
		base.Density = nil
	}
	if r.Mass == nil && (r.Density != nil || r.Thick != nil || r.Long != nil || r.Wide != nil) {
		base.Mass, base.Covers = nil, nil
	}
	text(&r.Name, base.Name)
	text(&r.Kind, base.Kind)
	text(&r.Group, base.Group)
	text(&r.CoversHow, base.CoversHow)
	text(&r.Each, base.Each)
	text(&r.Flue, base.Flue)
	text(&r.Stands, base.Stands)
	text(&r.Source, base.Source)
	text(&r.Note, base.Note)
	keep(&r.Size, base.Size)
	keep(&r.Long, base.Long)
	keep(&r.Wide, base.Wide)
	keep(&r.Thick, base.Thick)
	keep(&r.ThickLeast, base.ThickLeast)
	keep(&r.ThickMost, base.ThickMost)
	keep(&r.Density, base.Density)
	keep(&r.Mass, base.Mass)
	keep(&r.Spread, base.Spread)
	keep(&r.Contents, base.Contents)
	keep(&r.Covers, base.Covers)
	keep(&r.Waste, base.Waste)
	keep(&r.Price, base.Price)
	keep(&r.Volts, base.Volts)
	keep(&r.Watts, base.Watts)
	keep(&r.Amps, base.Amps)
	keep(&r.AmpHours, base.AmpHours)
	keep(&r.Usable, base.Usable)
	keep(&r.CutOff, base.CutOff)
	keep(&r.Holds, base.Holds)
	keep(&r.Heat, base.Heat)
	keep(&r.Conducts, base.Conducts)
	keep(&r.Vapour, base.Vapour)
	keep(&r.HeatCapacity, base.HeatCapacity)
	return r
}

func text(own *string, base string) {
	if *own == "" {
		*own = base
	}
}

func keep[T any](own **T, base *T) {
	if *own == nil {
		*own = base
	}
}
