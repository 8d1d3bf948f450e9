package cables

import (
	"fmt"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

const leastBond = 10.0 // mm2, the next above American gauge 8

var bondSource = finding.Source{Text: "US National Electrical Code 552: the bond is at least AWG 8 and no thinner than the battery's lead", Sure: finding.Read}

// colour gives a cable its colours.
func (c *Cable) colour() {
	c.Positive, c.Negative = "red", "black"
	if c.way.Colour != "" {
		c.Positive = c.way.Colour
	}
	if c.Role == Bond {
		c.Positive, c.Negative = "", "green"
	}
	if c.Body {
		c.Negative = ""
	}
}

// link says by their numbers which cable feeds which.
func (r *Result) link() {
	numbers := map[string]string{}
	for _, c := range r.Cables {
		if c.Role == Feed || c.Role == Trunk {
			numbers[c.Bank+" "+c.ID] = c.Number
		}
		if c.Role == Trunk {
			numbers[c.Bank+" "] = c.Number
			r.Supplies[r.supplyOf(c.Bank)].Trunk = c.Number
		}
	}
	for i := range r.Cables {
		c := &r.Cables[i]
		switch c.Role {
		case Feed:
			c.FedBy = numbers[c.Bank+" "+c.fed]
		case Lead:
			c.FedBy = r.Cables[i-1].Number // its line stands before it
		}
		if c.Role != Bond && r.in.Rules == "us" && r.Mains.State == "planned" && c.Negative == "black" {
			c.Negative = "yellow" // black is live in American mains cable
		}
	}
}

// shorts settles what each fuse meets and which kind can break it.
func (r *Result) shorts() {
	for i := range r.Cables {
		c := &r.Cables[i]
		if c.Role == Bond {
			continue
		}
		s := r.Supplies[r.supplyOf(c.Bank)]
		if !c.charges() {
			c.Fuse.Meets = c.Fault[0]
		}
		if c.Role == Feed {
			c.Fuse.Where = "at the fuse board"
			if c.fed != "" {
				c.Fuse.Where = "where it leaves the cable that feeds it"
			}
		}
		c.Fuse.kind(c.way.Fuse, r.backed(c, s))
	}
}

// backed says whether the main fuse breaks what this one cannot: one behind it may then be of a small kind.
func (r *Result) backed(c *Cable, s Supply) bool {
	i := r.trunkOf(c.Bank)
	if i < 0 || c.Role == Trunk {
		return false
	}
	main := r.Cables[i].Fuse
	behind := c.Role == Feed || c.Fuse.End == "to" && c.Source != Split
	return behind && main.Amps > 0 && main.Breaking >= main.Meets && c.Fuse.Meets <= s.AtBoard*(1+1e-9)
}

// kind settles how a fuse is made: as written, or the plainest that breaks what it meets.
func (p *Protection) kind(f Fuse, backed bool) {
	if p.Amps <= 0 {
		return
	}
	p.Backed = backed
	p.Kind, p.KindSaid = f.Kind, f.Kind != Unsaid
	if !p.KindSaid {
		meets := p.Meets
		if backed {
			meets = 0
		}
		if f.Breaking > 0 {
			meets = f.Breaking
		}
		p.Kind = kindFor(p.Amps, meets)
	}
	p.Breaking = makes[p.Kind].breaking
	if f.Breaking > 0 {
		p.Breaking = f.Breaking
	}
}

// Words is a fuse as one asks for it in a shop.
func (p Protection) Words() string {
	if p.Amps <= 0 {
		return "no fuse"
	}
	words := makes[p.Kind].words
	if words == "" {
		words = fmt.Sprintf("fuse that breaks %s A", quantity.Parted(p.Meets))
	}
	if p.Colour != "" && p.Kind == Blade {
		words = p.Colour + " " + words
	}
	return fmt.Sprintf("%s A, %s", digits(p.Amps, 4), words)
}
