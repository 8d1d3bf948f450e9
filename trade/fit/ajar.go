package fit

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"tumblehome/trade/finding"
)

// ajar tells of doors and hatches that stand open while the van is driven.
func (w *worker) ajar() {
	drive := w.named("drive")
	if drive == nil {
		return
	}
	for _, o := range w.in.Openings {
		if slices.Contains(drive.Open, o.ID) && o.Through != "front" && (o.Door || o.WayOut) {
			w.reportAjar(drive, o)
		}
	}
}

func (w *worker) reportAjar(drive *Mode, o Opening) {
	stand := "stands"
	if o.Name != "" && o.Name[len(o.Name)-1] == 's' {
		stand = "stand"
	}
	out := finding.Finding{
		Code: "fit.door.open", Severity: finding.Fault, Mode: drive.Name, About: []string{o.pointer()},
		Title:  fmt.Sprintf("%s%s %s open while the van is driven", strings.ToUpper(o.called()[:1]), o.called()[1:], stand),
		Words:  "What is not fastened falls out, it hits whoever is passed, and exhaust is drawn in. Shut it to drive; say in another mode that it is open.",
		Source: finding.Source{Text: "driven with everything shut: common practice, no source", Sure: finding.Practice},
	}
	shut := slices.DeleteFunc(slices.Clone(drive.Open), func(id string) bool { return id == o.ID })
	var open any
	if len(shut) > 0 {
		open = shut
	}
	if patch, err := json.Marshal(map[string]any{"modes": map[string]any{"drive": map[string]any{"open": open}}}); err == nil {
		out.Proposals = []finding.Proposal{{Words: "shut " + o.called(), Patch: patch}}
	}
	w.find(out)
}
