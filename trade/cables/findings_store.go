package cables

import (
	"fmt"

	"tumblehome/trade/finding"
)

var storeSource = finding.Source{Text: "both ends of a cable between two batteries are fed, and nothing limits what one sends the other; from memory", Sure: finding.Memory}

// feedsBattery finds a battery among the loads of a circuit: it feeds the cable from its other end.
func (r *Result) feedsBattery(c *Cable) (finding.Finding, bool) {
	var rest []string
	battery := Load{}
	for _, l := range c.Loads {
		if l.Kind == Store {
			battery = l
		} else {
			rest = append(rest, l.ID)
		}
	}
	if c.Role != Feed || battery.ID == "" {
		return finding.Finding{}, false
	}
	f := finding.Finding{Code: "power.battery.load", Severity: finding.Danger, About: []string{c.About + "/loads", battery.About}, Title: capital(battery.Name) + " is a battery and stands among the loads of " + c.Title, Source: storeSource, Caution: fireCaution,
		Words: fmt.Sprintf("It draws nothing that can be reckoned: it takes what the other battery sends, and gives it back into a short from an end without a fuse. %s mm² are not made for that.", digits(c.Section.MM2, 4))}
	if len(rest) > 0 {
		f.Proposals = []finding.Proposal{propose("take it out of the loads", c.About, "loads", rest)}
	}
	return f, true
}
