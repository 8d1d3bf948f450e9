package web

import (
	"cmp"
	"net/http"
	"strings"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/catalogue/settings"
	"tumblehome/internal/store"
	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

// mostOffers is how many things one wish may mean before it is better to write another word.
const mostOffers = 8

// offersFor are what a beginner's words may mean.
func (s *state) offersFor(words string) []settings.Offer {
	all := settings.Offers(s.Rows, words)
	return all[:min(len(all), mostOffers)]
}

// showOffers shows what some words may mean, each ready to be put in.
func (s *Server) showOffers(w http.ResponseWriter, r *http.Request) {
	now, err := s.desk.head(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	v := s.viewOf(r, now, "arrangement", r.FormValue("mode")).in("fittings")
	wanted := strings.TrimSpace(r.FormValue("words"))
	s.showBeside(w, r, v, "Add "+wanted, offersList(v, wanted, now.offersFor(wanted)))
}

// addFitting puts in what was chosen at the first free place. Words alone lead to the list of what they may mean.
func (s *Server) addFitting(w http.ResponseWriter, r *http.Request) {
	base, err := baseOf(r)
	if err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	now, err := s.desk.head(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	wanted := strings.TrimSpace(r.PostFormValue("words"))
	chosen, ok := now.chosen(r.PostFormValue("make"), r.PostFormValue("buy"), wanted)
	if !ok {
		v := s.viewOf(r, now, "arrangement", r.PostFormValue("mode")).in("fittings")
		s.showBeside(w, r, v, "Add "+wanted, offersList(v, wanted, now.offersFor(wanted)))
		return
	}
	patch, id, cut := s.put(now, chosen, wanted)
	if _, err := s.desk.save(r.Context(), store.Edit{Base: base, Patch: patch, Words: "added: " + decapital(chosen.Name) + cut}); err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	s.done(w, r, id)
}

// chosen is the offer that a form names.
func (s *state) chosen(makes, buys, words string) (settings.Offer, bool) {
	if makes == "" && buys == "" {
		return settings.Offer{}, false
	}
	for _, o := range settings.Offers(s.Rows, words) {
		if o.Make == makes && o.Buy == buys {
			return o, true
		}
	}
	if setting, ok := settings.Get(makes); ok {
		return setting.Offer(s.Rows, 0), true
	}
	if row, ok := s.Rows.Row(buys); ok {
		return settings.Offer{Buy: buys, Name: row.Name}, true
	}
	return settings.Offer{}, false
}

// put is the patch that puts something in at the first place where it is in nobody's way, what it is called there, and words for what is cut
// off it. Where there is none it waits without a place.
func (s *Server) put(now *state, o settings.Offer, words string) (patch tree.Patch, id, cut string) {
	id = free(idFor(o, words), now.Doc.Fittings)
	undecided := tree.Setting(tree.PointerTo("fittings", id), set(fittingNode(now, o), []string{"at"}, undecidedPlace))
	node := tree.Merge(now.Node, undecided)
	doc, err := build.DecodeTree(node, s.desk.rows)
	if err != nil {
		return undecided, id, ""
	}
	with := *now
	with.Doc, with.Node, with.Reckoning = doc, node, s.desk.reckon(doc, now.Day)
	place, ok := s.freePlace(&with, id, tree.Patch{}, spotsOf(with.Thing(id)))
	if !ok {
		return undecided, id, ""
	}
	return tree.Difference(now.Node, tree.Merge(node, with.placing(id, tree.Patch{}, place))), id, with.cutWords(id, place)
}

// undecidedPlace says that a thing waits without a place.
const undecidedPlace = "undecided"

// idFor names a new fitting by the first word of the wish, else by what it is.
func idFor(o settings.Offer, words string) string {
	wish := catalogue.ReadWish(words)
	for _, w := range wish.Words {
		if id := asID(w); id != "" {
			return id
		}
	}
	return shortID(asID(cmp.Or(o.Make, o.Buy)))
}

// asID turns a word into an id, or "" where nothing of it can be one.
func asID(word string) string {
	var b strings.Builder
	for _, r := range strings.ToLower(word) {
		switch {
		case r >= 'a' && r <= 'z', r >= '0' && r <= '9' && b.Len() > 0:
			b.WriteRune(r)
		case b.Len() > 0:
			b.WriteByte('-')
		}
	}
	id := strings.Trim(strings.ReplaceAll(b.String(), "--", "-"), "-")
	if reservedIDs[id] {
		return id + "-1"
	}
	return shortID(id)
}

// reservedIDs are the words that no fitting may be called, because places are told with them.
var reservedIDs = map[string]bool{
	"front": true, "rear": true, "left": true, "right": true, "floor": true, "roof": true, "top": true, "bottom": true,
	"from": true, "to": true, "mid": true, "none": true, "undecided": true,
}

// fittingNode is an offer as a fitting without a place.
func fittingNode(now *state, o settings.Offer) *tree.Node {
	n := &tree.Node{Kind: tree.Map}
	put := func(value string, steps ...string) {
		if value != "" {
			n = set(n, steps, value)
		}
	}
	put(o.Make, "make")
	put(o.Buy, "buy")
	if row, ok := now.Rows.Row(o.Buy); ok && row.Stands != "" && row.Stands != "inside" {
		put(row.Stands, "where")
	}
	if o.Make != "" {
		put(sizeText(o.X), "size", "x")
		put(sizeText(o.Y), "size", "y")
		put(sizeText(o.Z), "size", "z")
	}
	if o.Across {
		n = setNode(n, []string{"scribe"}, tree.ListOf(tree.Plain("left"), tree.Plain("right")))
	}
	return n
}

func sizeText(l quantity.Length) string {
	if l <= 0 {
		return ""
	}
	return l.String()
}

func withPlace(fitting *tree.Node, place build.Place) *tree.Node {
	for axis, rule := range map[string]string{"x": place.X.String(), "y": place.Y.String(), "z": place.Z.String()} {
		if rule != "" {
			fitting = set(fitting, []string{"at", axis}, rule)
		}
	}
	return fitting
}

func aboutThing(f finding.Finding, pointer string) bool {
	for _, p := range f.About {
		if p == pointer || strings.HasPrefix(p, pointer+"/") {
			return true
		}
	}
	return false
}

// offerWords says how large and heavy an offer usually is.
func offerWords(o settings.Offer) string {
	var parts []string
	if o.Make != "" {
		parts = append(parts, "made")
	} else {
		parts = append(parts, "bought")
	}
	if o.X > 0 && o.Y > 0 && o.Z > 0 {
		parts = append(parts, o.X.String()+" × "+o.Y.String()+" × "+o.Z.String()+" mm")
	}
	if m := o.Mass.Mean(); m > 0 {
		parts = append(parts, "about "+massText(m))
	}
	return strings.Join(parts, ", ")
}

func massText(m quantity.Mass) string {
	if m < 10 {
		return plainNumber(m.Float()) + " kg"
	}
	return plainNumber(float64(int(m+0.5))) + " kg"
}
