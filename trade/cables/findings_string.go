package cables

import (
	"fmt"

	"tumblehome/trade/finding"
)

// Panels side by side, as electricians see them: each with its own cable is a string. A short in one is fed by all others, through its own cells.

const (
	shortedPanel  = 1.06 // of a panel's current at work that it gives into a short; from memory
	stringReserve = 1.5  // of that current that its fuse is rated for at least: full sun with clouds beside it, for hours
)

// stringRatings are the fuses for panels that are sold [A], and what labels of panels allow; from memory.
var stringRatings = []float64{10, 15, 20, 25, 30}

const usualString = 15.0 // A that a panel's label allows; from memory

var stringSource = finding.Source{Text: "IEC 62548: a fuse in every string where (n − 1)·Isc is more than the module's maximum series fuse, rated 1.5·Isc at least; that limit is 15 A on most panels, more on large ones", Sure: finding.Memory}

// panels are panels side by side, each on its own cable.
type panels struct {
	count   int
	reverse float64 // A that all others send into the weakest
	least   float64 // A that a fuse must carry
	most    float64 // A that a panel's label allows
	said    bool    // it is written
	choose  float64 // A of the fuse that suits; 0 where none does
}

// strings are the panels of a source, each on its own cable; a panel of which nothing is known counts for nothing, and
// those in a row are none.
func (s Source) strings() panels {
	out := panels{}
	if s.InRow {
		return out
	}
	sum, weakest, strongest := 0.0, 0.0, 0.0
	for _, l := range s.Is {
		i := shortedPanel * l.panelAmps()
		if i <= 0 {
			continue
		}
		if out.count++; out.count == 1 || i < weakest {
			weakest = i
		}
		sum, strongest = sum+i, max(strongest, i)
	}
	out.reverse, out.least = sum-weakest, stringReserve*strongest
	if out.most, out.said = s.StringMost, s.StringMost > 0; !out.said {
		out.most = usualString
	}
	for _, rating := range stringRatings {
		if !out.said && rating >= out.least {
			out.most = max(out.most, rating)
		}
		if rating >= out.least && rating <= out.most {
			out.choose = rating
			break
		}
	}
	return out
}

// stringUnfused finds panels side by side that can send more into a faulty one than it stands.
func (r *Result) stringUnfused(c *Cable) (finding.Finding, bool) {
	s, ok := r.sourceOf(c)
	if !ok {
		return finding.Finding{}, false
	}
	p, fuse := s.strings(), s.String
	f := finding.Finding{Code: "power.fuse.string", Severity: finding.Fault, About: []string{s.About + "/is"}, Source: stringSource, Caution: stringCaution,
		Measured: measure(p.reverse, "A"), Limit: measure(p.most, "A")}
	switch {
	case p.reverse <= p.most:
		return f, false
	case fuse.Amps > p.most:
		f.About, f.Title, f.Measured = []string{fuse.About}, "The fuses of the panels are larger than a panel stands", measure(fuse.Amps, "A")
	case fuse.Amps >= p.least:
		return f, false
	case fuse.Amps > 0:
		f.About, f.Severity, f.Title = []string{fuse.About}, finding.Close, "The fuses of the panels blow in bright sun"
		f.Measured, f.Limit = measure(fuse.Amps, "A"), measure(p.least, "A")
	default:
		f.Title = fmt.Sprintf("%d panels side by side want a fuse each", p.count)
		if fuse.Said {
			f.About = []string{fuse.About}
		} else if !c.Section.Said {
			f.Severity = finding.Note
		}
	}
	f.Words = fmt.Sprintf("If one fails, the others together push about %s A back through it", digits(p.reverse, 2))
	if p.said {
		f.Words += fmt.Sprintf("; its label allows %s A.", digits(p.most, 3))
	} else {
		f.Words += fmt.Sprintf("; such a panel usually stands %s A: its label says “maximum series fuse”.", digits(p.most, 3))
	}
	if p.choose == 0 {
		p.unfusable(&f)
		return f, true
	}
	f.Words += fmt.Sprintf(" A fuse of at least %s A belongs in the plus cable of each. Panels joined plus to minus, in a row, need none: then write in-row: yes, and see that the controller bears their volts together.", digits(p.least, 2))
	f.Proposals = []finding.Proposal{propose(fmt.Sprintf("put a fuse of %s A into the plus cable of each panel", digits(p.choose, 3)), s.About, "string-fuse", p.choose)}
	return f, true
}

// unfusable says what is left where a fuse that carries a panel's sun is more than its label allows.
func (p panels) unfusable(f *finding.Finding) {
	if f.Severity != finding.Close {
		f.Title = fmt.Sprintf("These %d panels cannot stand side by side so", p.count)
	}
	f.Words += fmt.Sprintf(" No fuse helps: one that carries its sun for hours has %s A at least, and none that is sold for panels has that and no more than the label allows. Put them in a row, plus to minus (in-row: yes), with a controller that bears their volts together; or give them two controllers, each with its own panels as a source of its own. Look at the label once more first: it may allow more.", digits(p.least, 2))
}

// sourceOf is the source of panels that a cable leads from.
func (r *Result) sourceOf(c *Cable) (Source, bool) {
	for _, s := range r.in.Sources {
		if c.Role == Charge && s.Kind == Sun && s.ID == c.ID {
			return s, true
		}
	}
	return Source{}, false
}

const stringCaution = "A panel that carries the current of the others gets hot enough to set fire to what it lies on. Cover all panels before you join or part their cables."

// stringFuses are those to buy.
func (r *Result) stringFuses() []Item {
	var out []Item
	for i := range r.Cables {
		s, ok := r.sourceOf(&r.Cables[i])
		if n := s.strings().count; ok && s.String.Amps > 0 && n > 1 {
			out = append(out, Item{Words: fmt.Sprintf("fuse for solar strings of %s A, in a holder with plugs", digits(s.String.Amps, 3)), Unit: "piece", Count: float64(n), Cables: []string{r.Cables[i].Number}, Row: "fuse-solar-inline"})
		}
	}
	return out
}
