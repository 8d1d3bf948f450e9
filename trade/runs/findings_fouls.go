package runs

import (
	"cmp"
	"fmt"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

// foulWords is what is said of a foul of one kind: the way, then what is fouled.
var foulWords = map[Kind]struct {
	severity       finding.Severity
	title, words   string
	source         finding.Source
	caution, about string
}{
	Through: {finding.Fault, "The way %s leads through %s", "That is no hollow thing: a cable cannot lie there. Lead it round, or along the side behind it.", placed, "", "/fittings/"},
	GasAt: {finding.Danger, "The way %s leads through the gas: %s", "No cable runs through the locker of a gas bottle: gas that leaks gathers there, and a spark is enough. Lead it round outside.",
		finding.Source{Text: "common rule of caravan wiring (IEC 60364-7-721 and dealers' advice), read second-hand", Sure: finding.Read},
		"Gas and its locker are the work of a registered fitter; ask before anything is led past it.", "/fittings/"},
	ArchAt: {finding.Fault, "The way %s leads through the wheel arch %s", "Behind it the wheel turns. Lead the way over the arch or round it.", placed, "", "/shell/arches/"},
	Hole:   {finding.Fault, "The way %s crosses the opening %s", "Nothing can lie across a door, a window or a hole: it is in the way or cut through. Lead it round.", placed, "", "/shell/openings/"},
	RibKind: {finding.Close, "The way %s leads through the rib %s", "Behind the lining the steel of the rib is in the way. Use a hole that the maker left, with a grommet; drill none into pillars, and lay the cable before the lining if there is room.",
		finding.Source{Text: "converters' practice: every hole in sheet metal deburred, painted, with a grommet", Sure: finding.Memory}, "", "/shell/ribs/"},
	Gangway: {finding.Close, "The way %s lies on the open %s", "Feet go there: one stumbles over it, and it is crushed. Lead it by the roof, under furniture, or in the floor under its covering (write its height as less than the floor's, such as floor - 15).",
		finding.Source{Text: "common practice, no source; the places are those of this build", Sure: finding.Memory}, "", ""},
	Bed: {finding.Close, "The way %s leads through the place where somebody lies on %s", "Somebody would lie on it or pull at it at night. Lead it along the side or under the bed.", placed, "", "/fittings/"},
}

var placed = finding.Source{Text: "the places of this build", Sure: finding.Computed}

// tellFoul makes a finding of a foul and looks for a way round.
func (w *worker) tellFoul(l *Led, f Foul) finding.Finding {
	if f.Kind == Skin {
		return w.tellSkin(l, f)
	}
	say := foulWords[f.Kind]
	name := f.ID
	for i := range w.in.Things {
		if t := &w.in.Things[i]; t.ID == f.ID && say.about == "/fittings/" {
			name = t.Name
		}
	}
	for _, s := range w.in.Sleepers {
		if f.Kind == Bed && s.On == f.ID {
			name = s.Name
		}
	}
	about := []string{l.pointer()}
	if say.about != "" {
		about = append(about, say.about+f.ID)
	}
	out := finding.Finding{Code: "runs." + string(f.Kind), Severity: say.severity, About: about,
		Title: fmt.Sprintf(say.title, l.ID, cmp.Or(name, f.Surface)), Words: fmt.Sprintf("For %s mm, at %s. ", quantity.Parted(f.To-f.From), f.where()) + say.words,
		Measured: mm(f.To - f.From), Source: say.source, Caution: say.caution, Mode: f.Mode}
	if f.Kind != RibKind {
		out.Proposals = w.detours(l, f)
	}
	return out
}

func (w *worker) tellSkin(l *Led, f Foul) finding.Finding {
	return finding.Finding{Code: "runs.skin", Severity: finding.Close, About: []string{l.pointer()},
		Title:    fmt.Sprintf("The way %s leaves the body through the %s", l.ID, f.Surface),
		Words:    fmt.Sprintf("At %s it is outside the skin, and no opening is written there. A hole through the skin is deburred, painted and closed with a gland; write it down as an opening and let the way end in it. If none is wanted, move the corner inwards.", f.where()),
		Measured: mm(f.To - f.From), Source: finding.Source{Text: "converters' practice: every hole in sheet metal deburred, painted, with a grommet or gland", Sure: finding.Memory}}
}

// where says the middle of a foul as a tape finds it.
func (f Foul) where() string {
	return fmt.Sprintf("x %s, y %s, %s above the load floor", quantity.Parted(f.At[0]), quantity.Parted(f.At[1]), quantity.Parted(f.At[2]))
}
