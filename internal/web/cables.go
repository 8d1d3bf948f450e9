package web

import (
	"fmt"
	"math"
	"strings"

	"github.com/a-h/templ"

	"tumblehome/trade/cables"
)

// cableRow is a line of the schedule.
type cableRow struct {
	cables.Cable
	Path string // of the circuit, source or lead; "" for one nobody wrote
}

func cableRows(v view) []cableRow {
	var out []cableRow
	for _, c := range v.Cables.InOrder() {
		out = append(out, cableRow{Cable: c, Path: cablePath(c)})
	}
	return out
}

// anchor is the element in which it is changed.
func (r cableRow) anchor() string { return "change" + strings.ReplaceAll(r.Path, "/", "-") }

// cablePiece is the line in which one cable is changed.
func cablePiece(v view, place string) templ.Component {
	for _, r := range cableRows(v) {
		if r.Path != "" && r.Path == place {
			return oneCable(v, r)
		}
	}
	return nil
}

// cablePath is where the document says something of a cable; "" for one that it cannot say anything of.
func cablePath(c cables.Cable) string {
	switch {
	case c.Role == cables.Lead:
		return "/power/sources/" + c.ID + "/lead"
	case strings.HasPrefix(c.About, "/power/circuits/"), strings.HasPrefix(c.About, "/power/sources/"):
		return c.About
	}
	return ""
}

// fuseAt is where its fuse can be changed; "" where none is written, or where it is written with that of its line.
func (r cableRow) fuseAt() string {
	switch {
	case r.Path == "" || !r.Fuse.Said || r.Fuse.Needless:
		return ""
	case r.Role != cables.Lead:
		return r.Path + "/fuse"
	case r.Source == cables.Sun || strings.HasPrefix(r.Fuse.About, r.Path):
		return r.Fuse.About
	}
	return ""
}

// strike takes back what is written: a source has a lead all the same, of a usual length and of the copper that it needs.
func (r cableRow) strike() string {
	if r.Role == cables.Lead {
		return "take back what is written of " + r.Number
	}
	return "strike out " + r.Number
}

// leads is what it leads to; many leads lead to the fuse board.
func (r cableRow) leads() string {
	if r.Role == cables.Lead {
		return capital(r.Title)
	}
	return capital(r.To.Words)
}

// written says whether anything of it stands in the document.
func (r cableRow) written() bool { return r.Path != "" && r.Path == r.About }

// drop is what is lost, and how much may be.
func (r cableRow) drop() string {
	if r.Drop.Limit <= 0 || share(r.Cable) == 0 {
		return dropWords(r.Cable)
	}
	return fmt.Sprintf("%s of %.0f", dropWords(r.Cable), 100*r.Drop.Limit)
}

// length is that of each core as it is cut from the reel, to the next 50 mm.
func (r cableRow) length() string {
	return fmt.Sprintf("%.2f m", math.Ceil(r.Cut/50)*0.05)
}

// known says how the length is known, where it is not measured.
func (r cableRow) known() string {
	switch r.Length.Known {
	case cables.Measured:
		return "as measured"
	case cables.Laid:
		return "along its way"
	case cables.Straight:
		return "guessed from where things stand"
	}
	return "usual for such a cable"
}

func (r cableRow) section() string { return copperWords(r.Section.MM2) }

// need is what the rules ask for, where it is more than there is.
func (r cableRow) need() string {
	switch {
	case r.Section.Need == 0:
		return "none is thick enough"
	case r.Section.Need <= r.Section.MM2:
		return ""
	case r.unsafe():
		return copperWords(r.Section.Need) + " wanted"
	case r.Section.Rule == cables.RulePlugs:
		return copperWords(r.Section.Need) + " fits the plugs"
	}
	return copperWords(r.Section.Need) + " would lose less"
}

// unsafe reports whether the cable as it is passes a limit.
func (r cableRow) unsafe() bool {
	return r.Section.Need == 0 || share(r.Cable) > r.Drop.Limit || r.Current > r.Rating.Amps || r.Fuse.Amps > r.Fuse.Most
}

func (r cableRow) current() string {
	switch {
	case r.Current <= 0:
		return "–"
	case r.Current < 10:
		return fmt.Sprintf("%.1f A", r.Current)
	}
	return fmt.Sprintf("%.0f A", r.Current)
}

// oneWay is the length of the way, to the 100 mm.
func (r cableRow) oneWay() string { return fmt.Sprintf("%.1f m", r.Length.MM/1000) }

func (r cableRow) colours() string {
	switch {
	case r.Body:
		return r.Positive + ", minus through the body"
	case r.Negative == "":
		return r.Positive
	}
	return r.Positive + ", " + r.Negative
}

// rule is which rule decides how thick it must be.
func (r cableRow) rule() string {
	switch r.Section.Rule {
	case cables.RuleCurrent:
		return "by the current"
	case cables.RuleFuse:
		return "by its fuse"
	case cables.RuleDrop:
		return "by the voltage lost"
	case cables.RulePlugs:
		return "by the plugs of the panels"
	case cables.RuleMechanical:
		return "thinner ones break"
	case cables.RuleShort:
		return "by a short"
	}
	return ""
}

func (r cableRow) fuse() string {
	if r.Role == cables.Bond {
		return "needs none"
	}
	return fuseWords(r.Fuse)
}

func (r cableRow) chosen() string {
	if r.Section.Said && (r.Fuse.Said || r.Fuse.None || r.Role == cables.Bond) {
		return ""
	}
	return "chosen here"
}

func (r cableRow) terminals() string {
	var parts []string
	for _, t := range r.Terminals {
		parts = append(parts, fmt.Sprintf("%d × %s", t.Count, t.Words))
	}
	return strings.Join(parts, ", ")
}
