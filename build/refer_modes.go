package build

import (
	"tumblehome/catalogue/settings"
	"tumblehome/quantity"
)

// positions checks that the moves a position names exist and that its amounts
// are of the move's kind.
func (r *reader) positions(id string, f Fitting) {
	if len(f.Positions) == 0 {
		return
	}
	moves := movesOf(f)
	names := SortedKeys(moves)
	for _, position := range SortedKeys(f.Positions) {
		for _, move := range SortedKeys(f.Positions[position]) {
			form, known := moves[move]
			amount := f.Positions[position][move]
			at := []string{"fittings", id, "positions", position, move}
			switch {
			case !known && len(names) == 0:
				r.about(References, &quantity.Fault{Wrong: "`" + move + "` is no move of " + id + ", which has none"}, at...)
			case !known:
				r.about(References, &quantity.Fault{Wrong: "`" + move + "` is no move of " + id, Expected: quantity.OrList(names), Near: quantity.Near(move, names)}, at...)
			case amount.Form != Full && amount.Form != form:
				r.about(Meaning, &quantity.Fault{Wrong: "`" + amount.String() + "` does not fit the move", Expected: map[AmountForm]string{Full: "full", Slid: "full or a length", Swung: "full or an angle"}[form]}, at...)
			}
		}
	}
}

// movesOf are the moves of a fitting, its own and those its setting-out brings,
// with what their amounts are counted in.
func movesOf(f Fitting) map[string]AmountForm {
	moves := map[string]AmountForm{}
	if s, ok := settings.Get(f.Make); ok {
		for _, m := range s.Moves {
			if moves[m.ID] = Swung; m.Slide != "" {
				moves[m.ID] = Slid
			}
		}
	}
	for id, m := range f.Moves {
		switch {
		case m.Slide != Direction{}:
			moves[id] = Slid
		case m.Hinge != Edge{} || m.Swivel != nil:
			moves[id] = Swung
		default:
			moves[id] = Full
		}
	}
	return moves
}

// modes checks that the positions taken exist.
func (r *reader) modes(doc *Document) {
	for _, mode := range SortedKeys(doc.Modes) {
		take := doc.Modes[mode].Take
		for _, id := range SortedKeys(take) {
			f, read := doc.Fittings[id]
			position := take[id]
			if _, known := f.Positions[position]; known || position == "rest" || !read { // what was not read is said elsewhere
				continue
			}
			names := append(SortedKeys(f.Positions), "rest")
			r.about(References, &quantity.Fault{
				Wrong: "`" + clip(position) + "` is no position of " + id, Expected: quantity.OrList(names), Near: quantity.Near(position, names),
			}, "modes", mode, "take", id)
		}
	}
}

// banks checks that sources are joined to a bank of batteries, and circuits to a bank or to another circuit.
func (r *reader) banks(doc *Document) {
	if doc.Power == nil {
		return
	}
	power := r.root.Get("power")
	for _, id := range SortedKeys(doc.Power.Sources) {
		if _, known := doc.Power.Batteries[doc.Power.Sources[id].To]; !known && doc.Power.Sources[id].To != "" {
			r.about(References, notIn("power.batteries", doc.Power.Sources[id].To, power.Get("batteries")), "power", "sources", id, "to")
		}
	}
	for _, id := range SortedKeys(doc.Power.Circuits) {
		from := doc.Power.Circuits[id].From
		_, bank := doc.Power.Batteries[from]
		_, circuit := doc.Power.Circuits[from]
		switch {
		case from == "" || bank:
		case !circuit:
			r.about(References, notIn("power.batteries", from, power.Get("batteries")), "power", "circuits", id, "from")
		case doc.Power.feedsItself(id):
			r.about(References, &quantity.Fault{Wrong: "`" + id + "` feeds itself in the end", Expected: "a circuit that begins at a battery"}, "power", "circuits", id, "from")
		}
	}
}

// feedsItself says whether the way up from a circuit comes back to where it was.
func (p *Power) feedsItself(id string) bool {
	seen := map[string]bool{}
	for at := id; ; at = p.Circuits[at].From {
		if _, circuit := p.Circuits[at]; !circuit {
			return false
		}
		if seen[at] {
			return true
		}
		seen[at] = true
	}
}

// leftAtHome checks that a load case leaves out gear or fittings that there are.
func (r *reader) leftAtHome(doc *Document) {
	for _, id := range SortedKeys(doc.Vehicle.Cases) {
		for _, left := range doc.Vehicle.Cases[id].Without {
			_, gear := doc.Use.Gear[left]
			if _, fitting := doc.Fittings[left]; gear || fitting {
				continue
			}
			names := append(SortedKeys(doc.Use.Gear), SortedKeys(doc.Fittings)...)
			r.about(References, &quantity.Fault{
				Wrong: "`" + clip(left) + "` is neither in use.gear nor in fittings", Near: quantity.Near(left, names),
			}, "vehicle", "cases", id, "without")
		}
	}
}
