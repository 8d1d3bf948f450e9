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
		return r.newVents()
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
func (r *Reckoning) newVents() (tree.Patch, bool) {
	const low, high = "grille-low", "vent-high"
	if len(r.Document.Shell.Openings) == 0 { // those of a typical body stand in, and would be lost
		return tree.Patch{}, false
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
	openings := tree.MapOf(tree.Entry{Key: low, Value: hole("floor", "0.004 m2")}, tree.Entry{Key: high, Value: hole("roof", "0.011 m2")})
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

// layered changes one layer of a lining; its list is replaced whole, as lists are.
func (r *Reckoning) layered(remedy warmth.Remedy) (tree.Patch, bool) {
	steps := tree.Pointer(remedy.About).Steps()
	if len(steps) < 3 || steps[0] != "lining" {
		return tree.Patch{}, false
	}
	place := tree.Pointer("/lining/" + steps[1])
	list := r.Written().At(place)
	at, err := strconv.Atoi(steps[2])
	if err != nil || list == nil || at >= len(list.Items) {
		return tree.Patch{}, false
	}
	items := append([]*tree.Node(nil), list.Items...)
	switch remedy.Kind {
	case warmth.Bridge:
		if items[at].Get("ribs") != nil && items[at].Get("ribs").Text == "bridged" {
			return tree.Patch{}, false
		}
		items[at] = with(items[at], "ribs", "bridged")
	case warmth.Membrane:
		film := tree.MapOf(tree.Entry{Key: "lay", Value: tree.Plain("vcl-membrane-1500x50")})
		items = append(items[:at+1:at+1], append([]*tree.Node{film}, items[at+1:]...)...)
	}
	return tree.Setting(place, tree.ListOf(items...)), true
}

// with is a map with one entry set.
func with(n *tree.Node, key, text string) *tree.Node {
	return tree.Merge(n, tree.Setting(tree.Pointer("/"+key), tree.Plain(text)))
}
