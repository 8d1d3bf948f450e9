package cables

import "tumblehome/trade/finding"

// Section is the copper of a cable and why it is as thick as that.
type Section struct {
	MM2   float64 // what it is reckoned with: what is written, else what was chosen
	Said  bool
	Need  float64  // the least that passes every rule; 0 where no standard one does
	Rule  Rule     // which rule asked for most
	Steps []Demand // what each rule asks for, in the order of Rules
}

// Rule is why a cable must be as thick as that.
type Rule string

const (
	RuleCurrent    Rule = "current"    // the load
	RuleFuse       Rule = "fuse"       // the fuse that is written must not be more than the cable stands
	RuleDrop       Rule = "drop"       // voltage
	RuleMechanical Rule = "mechanical" // thinner strands break
	RulePlugs      Rule = "plugs"      // those of panels hold no thinner one
	RuleShort      Rule = "short"      // it must live through a short until its fuse has gone
)

// Demand is what one rule asks for.
type Demand struct {
	Rule   Rule
	MM2    float64 // 0 where no standard section passes
	Words  string
	Source finding.Source
}

// Rating is what a cable carries for good where it lies.
type Rating struct {
	Table      float64        // A alone at 30 °C, the lower of the two tables
	From       finding.Source // which of the tables that is
	Insulation float64        // what it stands, °C
	Ambient    float64        // factor
	Air        float64        // °C
	Bundle     float64        // factor
	Cores      int            // loaded cores side by side
	Wrapped    float64        // factor of insulation all round
	Amps       float64        // what is left
}

// Protection is the fuse at one end of a cable.
type Protection struct {
	Amps     float64 // what it is reckoned with: what is written, else what was chosen; 0 where there is none
	Said     bool
	None     bool // written that there is none
	Needless bool // what feeds it gives no more than it carries: panels
	Kind     Kind
	KindSaid bool
	Breaking float64 // A that it can break
	Meets    float64 // A into a short just before it
	Least    float64 // smallest rating that carries the load
	Most     float64 // greatest rating that the cable stands
	Colour   string  // of a blade fuse
	Backed   bool    // the main fuse breaks what this one cannot
	End      string  // which end of the cable it is at: "from" or "to"
	Where    string  // "at the fuse board", "within 200 mm of the battery's post"
	About    string
}

// Drop is what is lost on the way, V; shares are of Cable.Volts.
type Drop struct {
	Own    float64 // in its own two cores
	Shared float64 // in those of the cables that feed it, with everything on
	Joints float64 // in fuses and joints on the way, all of them
	Limit  float64 // share of Own + Shared that it may have, at most what is wanted
	Wanted float64 // share that the builder wants; 0 is not said
	Aim    float64 // share of Own that is aimed for where the program chooses
	At     float64 // V at its far end with everything on
	Alone  float64 // V lost from the battery's posts to its far end, joints too, with only this circuit on
}

// Cables is what is lost in cables, V.
func (d Drop) Cables() float64 { return d.Own + d.Shared }
