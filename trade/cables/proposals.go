package cables

import (
	"encoding/json"
	"fmt"
	"strings"

	"tumblehome/trade/finding"
)

// edit writes one key of what a pointer leads to.
type edit struct {
	about, key string
	value      any
}

func propose(words, about, key string, value any) finding.Proposal {
	return proposeAll(words, edit{about, key, value})
}

// proposeAll makes one patch of several edits.
func proposeAll(words string, edits ...edit) finding.Proposal {
	patch := map[string]any{}
	for _, e := range edits {
		at := patch
		for _, step := range strings.Split(strings.TrimPrefix(e.about, "/"), "/") {
			if at[step] == nil {
				at[step] = map[string]any{}
			}
			at = at[step].(map[string]any)
		}
		at[e.key] = e.value
	}
	text, err := json.Marshal(patch)
	if err != nil {
		panic(err) // a mistake of the program: texts and numbers always can be written
	}
	return finding.Proposal{Words: words, Patch: text}
}

// chosen proposes the cross-section that was chosen, and with it what is not written and would be missed next: its fuse, the lead of a line, the main fuse.
func (r *Result) chosen(c *Cable) finding.Proposal {
	words, edits := c.choice()
	if lead := r.leadOf(c); c.Role == Charge && lead.ID != "" && !lead.Section.Said {
		leadWords, more := lead.choice()
		if lead.Source != Sun && lead.Fuse.Amps == c.Fuse.Amps { // the fuse of the line is that of both
			more = more[:1]
		}
		words, edits = words+"; for its lead "+leadWords, append(edits, more...)
	}
	if main := r.mainChoice(c); len(main) > 0 {
		edits = append(edits, main...)
		words += fmt.Sprintf("; %s A as the main fuse", digits(r.Cables[r.trunkOf(c.Bank)].fuseChoice(), 4))
	}
	return proposeAll("take "+words, edits...)
}

// choice is its cross-section, and the fuse where none is written.
func (c *Cable) choice() (string, []edit) {
	area := digits(c.Section.MM2, 4)
	words, edits := area+" mm²", []edit{{c.way.About, "cable", area + " mm2"}}
	if !c.takesFuse() {
		return words, edits
	}
	owner, key := c.fuseKey()
	if c.Role == Lead && c.Source != Sun { // there the source's fuse is that of its line
		owner, key = c.way.About, "fuse"
	}
	words += fmt.Sprintf(" and a fuse of %s A", digits(c.Fuse.Amps, 4))
	edits = append(edits, edit{owner, key, c.Fuse.Amps})
	if c.Role == Charge && c.Source != Shore && c.Ends == "" {
		words += " at both ends"
		edits = append(edits, edit{owner, "fused", "both"})
	}
	if c.Role == Trunk {
		edits = append(edits, c.kindEdit()...)
	}
	return words, edits
}

// takesFuse says whether a fuse goes with its cross-section: none is written, and one is right.
func (c *Cable) takesFuse() bool { return !c.Fuse.Said && c.fuseChoice() > 0 }

// mainChoice writes the main fuse with the first cable of a battery; none where it is written, or where cables are written already and it is missed by
// itself.
func (r *Result) mainChoice(c *Cable) []edit {
	i := r.trunkOf(c.Bank)
	if i < 0 || c.Role == Trunk || r.begun(c.Bank) || r.Cables[i].Fuse.Said {
		return nil
	}
	main := &r.Cables[i]
	owner, key := main.fuseKey()
	if key == "" || main.fuseChoice() == 0 {
		return nil
	}
	return append([]edit{{owner, key, main.fuseChoice()}}, main.kindEdit()...)
}

// kindEdit writes how a main fuse is made, where that counts and is not written.
func (c *Cable) kindEdit() []edit {
	f := c.way.Fuse
	if f.Kind != Unsaid || f.Breaking > 0 || c.Fuse.Kind == Unsaid || c.Fuse.Meets <= makes[Blade].breaking {
		return nil
	}
	owner, _ := c.fuseKey()
	return []edit{{owner, "fuse-kind", string(c.Fuse.Kind)}}
}
