package reckon

import (
	"math"
	"strconv"
	"strings"

	"tumblehome/build/tree"
	"tumblehome/quantity"
	"tumblehome/trade/finding"
	"tumblehome/trade/warmth"
)

// withRemedies are the findings of warmth with what could be tried, as patches of this document. They are made after the stage, so that a result
// that is found again never brings the words of an older document.
func (r *Reckoning) withRemedies(w warmth.Result) []note {
	all := w.Findings()
	for i := range all {
		for _, remedy := range w.Remedies(all[i]) {
			if patch, ok := r.patchOf(remedy); ok {
				all[i].Proposals = append(all[i].Proposals, finding.Proposal{Words: remedy.Words, Patch: patch.JSON()})
			}
		}
	}
	return all
}

func (r *Reckoning) patchOf(remedy warmth.Remedy) (tree.Patch, bool) {
	switch remedy.Kind {
	case warmth.Wider:
		return r.wider(remedy)
	case warmth.Larger:
		return r.larger(remedy)
	case warmth.Vents:
		return r.newVents(remedy)
	case warmth.Content:
		return tree.Setting(tree.Pointer(remedy.About), tree.Plain(quantity.Temperature(remedy.By).String())), true
	}
	return r.layered(remedy)
}

// wider opens an opening further at night.
func (r *Reckoning) wider(remedy warmth.Remedy) (tree.Patch, bool) {
	id := strings.TrimPrefix(remedy.About, "/air/asleep/")
	share, ok := r.Document.Air.Asleep[id]
	if !ok || share >= 1 {
		return tree.Patch{}, false
	}
	return tree.Setting(tree.Pointer(remedy.About), tree.Plain(quantity.Share(math.Min(1, share.Float()*remedy.By)).String())), true
}

// larger makes an opening larger.
func (r *Reckoning) larger(remedy warmth.Remedy) (tree.Patch, bool) {
	o, ok := r.Document.Shell.Openings[strings.TrimPrefix(remedy.About, "/shell/openings/")]
	if !ok || o.FreeArea == nil {
		return tree.Patch{}, false
	}
	return tree.Setting(tree.Pointer(remedy.About+"/free-area"), tree.Plain(quantity.Area(o.FreeArea.Float()*remedy.By).String())), true
}

// newVents cuts a low and a high opening that stay open, in the middle of the front of the van; the builder moves them.
func (r *Reckoning) newVents(remedy warmth.Remedy) (tree.Patch, bool) {
	const low, high = "grille-low", "vent-high"
	if r.Document.Air == nil && len(r.Warmth.Told().Vents) > 0 {
		return tree.Patch{}, false // with air said, the vents that stand there would count no longer
	}
	if _, there := r.Document.Shell.Openings[low]; there {
		return tree.Patch{}, false
	}
	if _, there := r.Document.Shell.Openings[high]; there {
		return tree.Patch{}, false
	}
	x := r.between()
	hole := func(through, area string) *tree.Node {
		along := strconv.Itoa(int(x)) + ".." + strconv.Itoa(int(x)+120)
		return tree.MapOf(tree.Entry{Key: "through", Value: tree.Plain(through)}, tree.Entry{Key: "x", Value: tree.Plain(along)},
			tree.Entry{Key: "y", Value: tree.Plain("-60..60")}, tree.Entry{Key: "free-area", Value: tree.Plain(area)})
	}
	open := []*tree.Node{}
	if r.Document.Air != nil {
		for _, id := range r.Document.Air.AlwaysOpen {
			open = append(open, tree.Plain(id))
		}
	}
	open = append(open, tree.Plain(low), tree.Plain(high))
	openings := tree.MapOf(tree.Entry{Key: low, Value: hole("floor", quantity.Area(remedy.Low).String())}, tree.Entry{Key: high, Value: hole("roof", quantity.Area(remedy.High).String())})
	patch, err := tree.ParsePatch(tree.JSON(tree.MapOf(
		tree.Entry{Key: "shell", Value: tree.MapOf(tree.Entry{Key: "openings", Value: openings})},
		tree.Entry{Key: "air", Value: tree.MapOf(tree.Entry{Key: "always-open", Value: tree.ListOf(open...)})})))
	return patch, err == nil
}

// between is where a hole of 120 lies in the middle of the foremost bay of the roof, clear of its bows.
func (r *Reckoning) between() float64 {
	bays := r.Body.Bays("roof")
	for _, b := range bays {
		if b.To-b.From > 300 {
			return math.Round((b.From+b.To)/20)*10 - 60
		}
	}
	return math.Round(r.Lining.Room.Middle()/10)*10 - 60
}
