package build

import (
	"tumblehome/catalogue"
	"tumblehome/quantity"
)

// Document says everything a builder knows or has decided. It is a value: nobody changes one, an edit makes another.
// The order of the fields is the order in which a document is written.
type Document struct {
	Version      int                      `doc:"tumblehome,need" range:"1..1" says:"format of this document; 1 until the first release"`
	Build        Build                    `doc:"build,need" says:"title, rules, money, dates"`
	People       map[string]Person        `doc:"people" says:"who sleeps, sits and works here"`
	Use          Use                      `doc:"use" says:"trips, habits and what is taken along"`
	Vehicle      Vehicle                  `doc:"vehicle,need" says:"the van as a vehicle: plates, axles, weighings, load cases, tyres"`
	Shell        Shell                    `doc:"shell,need" says:"the bare body as measured"`
	Removed      map[string]MassAt        `doc:"removed" says:"what was taken out of the van, with mass and place"`
	Lining       Lining                   `doc:"lining" says:"what is laid on each surface, from the steel inwards"`
	Fittings     map[string]Fitting       `doc:"fittings" reserved:"front rear left right floor roof top bottom from to mid none undecided" says:"everything placed in or on the van"`
	Modes        map[string]Mode          `doc:"modes" says:"drive, day, night and the builder's own: which position each fitting takes, who is where"`
	Runs         map[string]Run           `doc:"runs" says:"ways for cables, hoses and ducts"`
	Power        *Power                   `doc:"power" says:"how the electrical things are joined and used"`
	Water        *Water                   `doc:"water" draft:"yes" says:"how tanks and taps are joined and used"`
	Gas          *OrNone[Gas]             `doc:"gas" draft:"yes" says:"bottles and burners, or none"`
	Air          *Air                     `doc:"air" says:"which openings are open when"`
	Stock        map[string]InStock       `doc:"stock" draft:"yes" says:"what is in the workshop"`
	Prices       map[string]Price         `doc:"prices" keys:"row" says:"own prices by catalogue row"`
	Catalogue    map[string]catalogue.Row `doc:"catalogue" says:"the builder's own rows; they win over the built-in ones"`
	Jobs         map[string]Job           `doc:"jobs" draft:"yes" says:"jobs done, added or changed"`
	Calendar     *Calendar                `doc:"calendar" draft:"yes" says:"workable days, barn, borrowed tools"`
	Spending     map[string]Spent         `doc:"spending" says:"what was paid and received"`
	Accepted     map[string]Accepted      `doc:"accepted" says:"findings lived with, and why"`
	Alternatives map[string]Alternative   `doc:"alternatives" says:"named changes, compared side by side"`
	Evidence     map[string]Evidence      `doc:"evidence" draft:"yes" says:"photos, receipts, certificates"`
}

// Build names the build and its terms.
type Build struct {
	Title       string             `doc:"title,need" says:"what the build is called"`
	Rules       string             `doc:"rules,need" one:"gb eu us" says:"which country's rules apply"`
	Currency    string             `doc:"currency,need" one:"GBP EUR USD" says:"money of the build"`
	Rates       map[string]float64 `doc:"rates" keys:"currency" says:"one unit of another currency in the build's currency"`
	Begun       *quantity.Date     `doc:"begun" says:"first day of work"`
	Today       *quantity.Date     `doc:"today" says:"the day the build is reckoned for; left out, the day it is opened"`
	Budget      *quantity.Money    `doc:"budget" says:"what the conversion may cost in all"`
	Contingency *quantity.Share    `doc:"contingency" range:"0..2" says:"share of the budget kept for the unforeseen"`
	Weekends    *int               `doc:"weekends" range:"0..520" says:"weekends left for the work"`
	Note        string             `doc:"note" says:"a remark"`
}

// Person is somebody who sleeps, sits or works here.
type Person struct {
	Called  string                         `doc:"called" letters:"200" says:"plain name, if the id does not say it"`
	Stature quantity.Length                `doc:"stature,need" range:"400..2300" says:"height without shoes"`
	Mass    quantity.Spread[quantity.Mass] `doc:"mass,need" range:"2..250" says:"mass with clothes"`
	Grows   *Growth                        `doc:"stature-in" says:"how tall in some years, of somebody still growing"`
	Free    map[string]quantity.Duration   `doc:"free" keys:"weekday" says:"hours free for the build, by weekday"`
	Skills  []string                       `doc:"skills" says:"what they are good at"`
	Note    string                         `doc:"note" says:"a remark"`
}

// Growth is how tall somebody will be.
type Growth struct {
	Years   int             `doc:"years,need" range:"1..20" says:"in how many years"`
	Stature quantity.Length `doc:"stature,need" range:"400..2300" says:"height without shoes by then"`
}

// Use says how the van will be used.
type Use struct {
	Climate  string             `doc:"climate" says:"place of the weather: a built-in one, or one of weather"`
	Altitude *int               `doc:"altitude" range:"-450..6000" says:"how high above the sea the nights are spent, in metres; left out, as high as the place"`
	Weather  map[string]Weather `doc:"weather" says:"weather of places of one's own; it wins over the built-in ones"`
	Trips    map[string]Trip    `doc:"trips" says:"journeys by month"`
	Habits   string             `doc:"habits" one:"frugal usual cosy" says:"how water and power are used"`
	Gear     map[string]MassAt  `doc:"gear" says:"what is taken along on a trip: clothes, food, tools, bicycles"`
	Note     string             `doc:"note" says:"a remark"`
}

// Trip is a kind of journey.
type Trip struct {
	Months  []int                 `doc:"months" range:"1..12" says:"months of the year, 1 to 12"`
	Often   *quantity.Rate        `doc:"often" says:"how often: 2 /month"`
	Nights  *int                  `doc:"nights" range:"0..366" says:"nights of one trip"`
	Aboard  []string              `doc:"aboard" ref:"people" says:"who comes along"`
	Driving *quantity.Rate        `doc:"driving" says:"hours at the wheel: 1 h/day, 5 h/trip"`
	Keep    *quantity.Temperature `doc:"keep" range:"-20..35" says:"temperature kept at night"`
	Wet     *quantity.Mass        `doc:"wet" range:"0..20" says:"water in the clothes that come in wet of an evening"`
	HookUp  *quantity.Share       `doc:"hook-up" range:"0..1" says:"share of nights on mains"`
	Note    string                `doc:"note" says:"a remark"`
}

// MassAt is a mass whose middle lies at a place. What is left out is at the middle of the van, and on the floor.
type MassAt struct {
	Mass quantity.Spread[quantity.Mass] `doc:"mass,need" range:"0..1000" says:"how heavy"`
	X    *quantity.Length               `doc:"x" range:"-4000..12000" says:"its middle, rearwards from the datum"`
	Y    *quantity.Length               `doc:"y" range:"-1500..1500" says:"its middle, to the right of the van's middle"`
	Z    *quantity.Length               `doc:"z" range:"-1500..3500" says:"its middle, up from the bare load floor"`
	Note string                         `doc:"note" says:"a remark"`
}
