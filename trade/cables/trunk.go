package cables

import (
	"fmt"
	"slices"

	"tumblehome/trade/finding"
)

// main is the circuit that leads from a bank to its fuse board: one without loads. Among several it is the one whose fuse is
// the battery's, that is thickest and carries most, in this order. One that is smaller than what feeds things is no main cable: it lost its loads, or it
// feeds a second board.
func (b Bank) main(feeds []Circuit) (Circuit, bool) {
	var best Circuit
	found := false
	for _, f := range feeds {
		if f.From == b.ID && len(f.Loads) == 0 && !b.lostLoads(f, feeds) && !b.secondBoard(f, feeds) && (!found || slices.Compare(b.rank(f, feeds), b.rank(best, feeds)) > 0) {
			best, found = f, true
		}
	}
	return best, found
}

func (b Bank) rank(f Circuit, feeds []Circuit) []float64 {
	return []float64{truth(b.sameFuse(f)), f.Section, f.Fuse.Amps, f.Current, truth(b.feedsOthers(f, feeds))}
}

// secondBoard says whether a circuit that feeds others is too small for what begins at the bank beside it: then that does not go through it.
func (b Bank) secondBoard(f Circuit, feeds []Circuit) bool {
	if !b.feedsOthers(f, feeds) || b.sameFuse(f) {
		return false
	}
	beside, any := 0.0, false
	for _, other := range feeds {
		if other.From == b.ID && len(other.Loads) > 0 {
			beside, any = beside+other.amps(b.volts()), true
		}
	}
	thin := f.Section == 0 || f.rating(f.Section).Amps < b.MainFuse.Amps
	return any && (less(f.Fuse.Amps, beside) || less(f.Fuse.Amps, b.MainFuse.Amps) && thin)
}

func truth(is bool) float64 {
	if is {
		return 1
	}
	return 0
}

// feedsOthers says whether other circuits begin at one. Where a circuit is called as the bank is, they begin at the bank.
func (b Bank) feedsOthers(f Circuit, feeds []Circuit) bool {
	return f.ID != b.ID && slices.ContainsFunc(feeds, func(other Circuit) bool { return other.From == f.ID })
}

func (b Bank) sameFuse(f Circuit) bool {
	return f.Fuse.Amps > 0 && f.Fuse.Amps == b.MainFuse.Amps
}

// lostLoads says whether a circuit without loads is written for less than another that has some: all of those would have to go through it.
func (b Bank) lostLoads(f Circuit, feeds []Circuit) bool {
	if b.feedsOthers(f, feeds) || b.sameFuse(f) {
		return false
	}
	return slices.ContainsFunc(feeds, func(other Circuit) bool {
		return len(other.Loads) > 0 && (less(f.Current, other.amps(b.volts())) || less(f.Fuse.Amps, other.Fuse.Amps))
	})
}

// less compares what is written; 0 is not.
func less(a, b float64) bool { return a > 0 && b > 0 && a < b }

// feedsNothing finds the circuits of a bank that lead nowhere, beside its main cable.
func (r *Result) feedsNothing(s Supply) []finding.Finding {
	var out []finding.Finding
	feeds := r.in.feeds(s.ID)
	main, _ := s.main(feeds)
	for _, c := range feeds {
		if len(c.Loads) > 0 || c.ID == main.ID || s.feedsOthers(c, feeds) {
			continue
		}
		f := finding.Finding{Code: "power.cable.feeds-nothing", Severity: finding.Fault, About: []string{c.About}, Title: capital(c.Title) + " feeds nothing: what does it feed?",
			Source: finding.Source{Text: "the document names no loads for it", Sure: finding.Computed},
			Words:  "No thing is named that it feeds, and it is not the cable from the battery to the fuse board either. Name its loads, or take the circuit away."}
		if len(r.in.Unfed) == 1 {
			l := r.in.Unfed[0]
			f.Proposals = []finding.Proposal{propose("it feeds the "+l.Name, c.About, "loads", []string{l.ID})}
		}
		out = append(out, f)
	}
	return out
}

// twice finds a main fuse that is written at the battery and at its main circuit, and not alike.
func (r *Result) twice(s Supply) (finding.Finding, bool) {
	c, ok := s.main(r.in.feeds(s.ID))
	bank, main := s.MainFuse, c.Fuse
	if !ok || !bank.Said || !main.Said || bank.Amps == main.Amps && bank.None == main.None {
		return finding.Finding{}, false
	}
	f := finding.Finding{Code: "power.fuse.twice", Severity: finding.Close, About: []string{bank.About, main.About}, Title: "The main fuse is written twice, and not alike",
		Source:   finding.Source{Text: "the two places in the document", Sure: finding.Computed},
		Measured: measure(main.Amps, "A"), Limit: measure(bank.Amps, "A"),
		Words: fmt.Sprintf("The battery has %s, its circuit %s has %s. It is one fuse; what the battery has is reckoned with.", bank.words(), c.Title, main.words())}
	trunk := r.find(s.ID, c.ID)
	switch choose := trunk.fuseChoice(); {
	case !bank.None && bank.Amps <= trunk.Rating.Amps:
		f.Proposals = []finding.Proposal{propose("write "+bank.words()+" there too", c.About, "fuse", bank.Amps)}
	case choose > 0: // what the battery has is more than the cable stands
		f.Proposals = trunk.rated(choose)
	}
	return f, true
}

func (f Fuse) words() string {
	if f.None {
		return "no fuse"
	}
	return digits(f.Amps, 4) + " A"
}
