package cables

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

// Findings are what the builder should know.
func (r Result) Findings() []finding.Finding { return slices.Clone(r.found) }

// Marks are the numbers of the cables that a finding came from; none where it is about a battery, a thing or a bond. The fuse of a source may be written
// once for its line and its lead: what a finding points at does not tell them apart.
func (r Result) Marks(f finding.Finding) []string { return r.of[f.Key()] }

// judge asks every question of every cable.
func (r *Result) judge() []finding.Finding {
	var out []finding.Finding
	r.of = map[string][]string{}
	for i := range r.Cables {
		c := &r.Cables[i]
		if c.Role == Bond {
			out = r.thinBond(out, c)
			continue
		}
		for _, ask := range []func(*Cable) (finding.Finding, bool){r.unfused, r.stringUnfused, r.ends, r.tooThin, r.tooGreat, r.absurd, r.tooSmall, r.far, r.drop, r.starved, r.strand, r.body, r.together, r.allAtOnce, r.unchosen, r.breaks, r.slow, r.selective, r.feedsBattery} {
			f, ok := ask(c)
			if ok {
				r.of[f.Key()] = append(r.of[f.Key()], c.Number)
			}
			if ok && !slices.ContainsFunc(out, func(g finding.Finding) bool { return g.Key() == f.Key() }) { // a line and its lead may share a fuse
				out = append(out, f)
			}
		}
	}
	if f, ok := r.mainsUnnamed(); ok {
		out = append(out, f)
	}
	for _, l := range r.in.Unfed {
		out = append(out, r.unfed(l))
	}
	for _, s := range r.Supplies {
		out = append(out, r.feedsNothing(s)...)
		out = append(out, r.lowCurrents(s)...)
		out = append(out, r.volts(s)...)
		for _, ask := range []func(Supply) (finding.Finding, bool){r.collapse, r.kindUnsaid, r.weakPart, r.unlike, r.twice} {
			if f, ok := ask(s); ok {
				out = append(out, f)
			}
		}
	}
	return out
}

// sectioned proposes another cross-section for a cable that stands in the document.
func (c *Cable) sectioned(mm2 float64) []finding.Proposal {
	if mm2 <= 0 || c.ID == "" || mm2 == c.Section.MM2 {
		return nil
	}
	return []finding.Proposal{propose(fmt.Sprintf("make the cable %s mm²", digits(mm2, 4)), c.way.About, "cable", fmt.Sprintf("%s mm2", digits(mm2, 4)))}
}

// rated proposes another rating for its fuse, wherever that is written.
func (c *Cable) rated(amps float64) []finding.Proposal {
	edits := c.fuseEdits(amps)
	if amps <= 0 || amps == c.Fuse.Amps && c.Fuse.Said || len(edits) == 0 {
		return nil
	}
	return []finding.Proposal{proposeAll(fmt.Sprintf("take a fuse of %s A", digits(amps, 4)), edits...)}
}

// fuseEdits write a rating for its fuse. The key of a trunk's may be the bank's, and the circuit may say it too; a lead whose line needs a greater one has its own.
func (c *Cable) fuseEdits(amps float64) []edit {
	about, key := c.fuseKey()
	if key == "" {
		return nil
	}
	if c.Role == Lead && c.Source == Engine && c.Fuse.Said {
		about, key = c.way.About, "fuse"
	}
	edits := []edit{{about, key, amps}}
	if c.also.Said && c.also.Amps != amps && c.About != about {
		edits = append(edits, edit{c.About, "fuse", amps})
	}
	return edits
}

// fuseKey is where its fuse is written, or would be.
func (c *Cable) fuseKey() (about, key string) {
	f := c.way.Fuse
	if !f.Said {
		if strings.HasPrefix(f.About, "/power/batteries/") {
			return f.About, "main-fuse"
		}
		return f.About, "fuse"
	}
	i := strings.LastIndexByte(f.About, '/')
	return f.About[:i], f.About[i+1:]
}

// sectionAbout points at its cross-section where that is written, else at the cable.
func (c *Cable) sectionAbout() string {
	if c.Section.Said {
		return c.About + "/cable"
	}
	return c.About
}

// name is the cable in a list.
func (c *Cable) name() string { return fmt.Sprintf("%s (%s)", c.Number, c.Title) }

// itsFuse and itself are its fuse and the cable at the beginning of a sentence.
func (c *Cable) itsFuse() string {
	switch c.Role {
	case Trunk:
		return "The main fuse"
	case Lead:
		return "The fuse of the " + c.Title
	}
	return "The fuse of " + c.Title
}

func (c *Cable) itself() string {
	switch c.Role {
	case Trunk:
		return "The main cable"
	case Lead:
		return "The " + c.Title
	}
	return "The cable of " + c.Title
}

func measure(v float64, unit string) *finding.Measure { return &finding.Measure{Value: v, Unit: unit} }

// whole is a current as it is told: large ones to the next 100 A.
func whole(amps float64) string {
	if amps >= 1000 {
		amps = math.Round(amps/100) * 100
	}
	return quantity.Parted(amps)
}

const fireCaution = "A cable that glows sets fire to what it lies in. Disconnect the battery before you change anything: rings and watches off, negative first off and last on."

func capital(text string) string {
	first, n := utf8.DecodeRuneInString(text)
	if n == 0 {
		return text
	}
	return string(unicode.ToUpper(first)) + text[n:]
}
