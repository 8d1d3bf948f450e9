package settings

import (
	"slices"
	"strings"

	"tumblehome/catalogue"
	"tumblehome/quantity"
)

// An Offer is one thing that a beginner's words may mean: to make, or to buy.
type Offer struct {
	Make    string // id of a setting, or
	Buy     string // id of a row
	Name    string
	X, Y, Z quantity.Length                // usual size; 0 where not known
	Across  bool                           // a bed that stands on the floor and goes from side to side, cut to both
	Of      string                         // board of a made thing
	Mass    quantity.Spread[quantity.Mass] // empty; a guess for a made thing
}

// Offers are what a beginner's words may mean, things to make before things to
// buy, each with its usual size; a length in the words becomes the length of
// what is made: "galley, about 1 m". Where nothing goes by all the words, some will do.
func Offers(c *catalogue.Catalogue, text string) []Offer {
	wish := catalogue.ReadWish(text)
	across := slices.ContainsFunc(wish.Words, isAcross)
	offers := offersOf(c, wish, text, across)
	if plain := wish.WithoutFigures(); len(offers) == 0 && len(plain) < len(wish.Words) { // sizes that nothing goes by are let go
		wish.Words = plain
		offers = offersOf(c, wish, strings.Join(plain, " "), across)
	}
	if len(offers) == 0 && len(wish.Words) > 1 {
		return someWords(c, wish, across)
	}
	return offers
}

// someWords are what goes by some words of a wish where nothing goes by all of them: first what goes by most.
func someWords(c *catalogue.Catalogue, wish catalogue.Wish, across bool) []Offer {
	found := map[string]int{}
	var offers []Offer
	for _, word := range wish.Words {
		wish.Words = []string{word}
		for _, o := range offersOf(c, wish, word, across) {
			if found[o.Make+" "+o.Buy]++; found[o.Make+" "+o.Buy] == 1 {
				offers = append(offers, o)
			}
		}
	}
	slices.SortStableFunc(offers, func(a, b Offer) int { return found[b.Make+" "+b.Buy] - found[a.Make+" "+a.Buy] })
	return offers
}

func offersOf(c *catalogue.Catalogue, wish catalogue.Wish, text string, across bool) []Offer {
	var offers []Offer
	for _, s := range Search(wish.Words) {
		o := s.Offer(c, wish.Long)
		if across && s.Carried == Floor && s.Does(Lies) {
			o = s.across(c, wish.Long)
		}
		offers = append(offers, o)
	}
	for _, id := range c.Search(text) {
		row, _ := c.Row(id)
		o := Offer{Buy: id, Name: row.Name}
		o.Mass, _ = c.UnitMass(id)
		if row.Size != nil {
			o.X, o.Y, o.Z = known(row.Size.X), known(row.Size.Y), known(row.Size.Z)
		}
		offers = append(offers, o)
	}
	return offers
}

// Offer is this setting at its usual size, its longer side as long as asked
// where that is near the usual; 0 asks for nothing.
func (s Setting) Offer(c *catalogue.Catalogue, long quantity.Length) Offer {
	o := Offer{Make: s.ID, Name: s.Name, X: s.X.Likely, Y: s.Y.Likely, Z: s.Z.Likely, Of: s.Board}
	along, usual := &o.X, s.X
	if s.Y.Likely > s.X.Likely { // it lies across the van
		along, usual = &o.Y, s.Y
	}
	if long >= usual.Low*6/10 && long <= usual.High*3/2 {
		*along = long
	}
	board, _ := c.Material(s.Board)
	o.Mass = s.GuessMass(o.X, o.Y, o.Z, board.PerArea)
	return o
}

func isAcross(word string) bool {
	return word == "across" || word == "crosswise" || word == "transverse"
}

// across is a bed that stands on the floor, turned so that one lies across the van.
func (s Setting) across(c *catalogue.Catalogue, long quantity.Length) Offer {
	turned := s
	turned.X, turned.Y = s.Y, s.X
	o := turned.Offer(c, long)
	o.Name, o.Across = s.Name+", across the van", true
	return o
}

func known(l *quantity.Length) quantity.Length {
	if l == nil {
		return 0
	}
	return *l
}
