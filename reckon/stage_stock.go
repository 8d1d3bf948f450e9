package reckon

import (
	"slices"
	"strconv"
	"strings"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/trade/stock"
	"tumblehome/trade/takeoff"
)

// workStock says what there is to buy: materials by measure, everything else by the piece.
func (m *Machine) workStock(w *stages) (stock.Result, Digest) {
	in := stock.Inputs{Currency: w.doc.Build.Currency, Rates: w.doc.Build.Rates, Needs: takeoff.Gather(w.linings, w.wiring), Settled: settled(w.doc)}
	for _, name := range w.laidMaterials() {
		in.Offers = append(in.Offers, w.offers(name)...)
	}
	for _, id := range w.ids() {
		if w.things[id].later() {
			continue
		}
		in.Things = append(in.Things, w.purchase(id, w.things[id]))
	}
	for _, id := range build.SortedKeys(w.doc.Stock) {
		if s := w.doc.Stock[id]; s.Is != "" && s.Have != nil {
			in.InHand = append(in.InHand, stock.InHand{Row: s.Is, Have: *s.Have})
		}
	}
	return work(m, "stock", 1, stock.Work, in)
}

// settled are the things that spending says have been paid for.
func settled(doc *build.Document) []string {
	var out []string
	for _, id := range build.SortedKeys(doc.Spending) {
		if path := doc.Spending[id].For; path != "" {
			out = append(out, "/"+strings.ReplaceAll(path, ".", "/"))
		}
	}
	return out
}

// laidMaterials are the materials of the linings and the cables, sorted.
func (w *stages) laidMaterials() []string {
	var names []string
	for _, l := range takeoff.Gather(w.linings, w.wiring) {
		names = append(names, l.Of)
	}
	slices.Sort(names)
	return slices.Compact(names)
}

// offers are the stock sizes of a material, each with what one of it holds.
func (w *stages) offers(name string) []stock.Offer {
	m, ok := w.rows.Material(name)
	if !ok {
		return nil
	}
	var out []stock.Offer
	for _, id := range m.Stock {
		row, _ := w.rows.Row(id)
		o := stock.Offer{Of: name, Row: id, Each: row.Each, Waste: m.Waste, Price: w.price(id)}
		if row.Kind == "length" || row.Kind == "cable" { // battens and cables are counted by the metre, slats and cladding by what they cover
			o.Unit, o.Holds = "m", valueOf(row.Long).Float()/1000
			out = append(out, o)
		}
		o.Unit, o.Holds = "m2", packArea(row)
		if o.Holds > 0 {
			out = append(out, o)
		}
	}
	return out
}

// packArea is how many square metres one unit of a row covers.
func packArea(row catalogue.Row) float64 {
	if row.Covers != nil && row.Covers.Of == "m2" && !row.Covers.PerLitre {
		return row.Covers.Amount
	}
	return valueOf(row.Long).Float() * valueOf(row.Wide).Float() / 1e6
}

// price is the builder's own for a row, else the catalogue's guess; nil if nobody knows.
func (w *stages) price(row string) *stock.Price {
	if own, ok := w.doc.Prices[row]; ok {
		return &stock.Price{Price: own.Price, Standing: own.Standing, Pointer: "/prices/" + row}
	}
	if guess, ok := w.rows.Price(row, w.doc.Build.Currency); ok {
		return &stock.Price{Price: guess, Standing: "guess"}
	}
	return nil
}

// purchase is one fitting as something to pay for.
func (w *stages) purchase(id string, t thing) stock.Thing {
	out := stock.Thing{Pointer: "/fittings/" + id, Row: t.Buy, Fitted: isFitted(t.Fitted, w.today), Found: bool(valueOf(t.Found))}
	switch {
	case t.Costs != nil:
		out.Price = &stock.Price{Price: t.Costs.Price, Standing: t.Costs.Standing, Pointer: "/fittings/" + id + "/costs"}
	case t.Buy != "":
		out.Price = w.price(t.Buy)
	case t.board != nil:
		out.Price = w.boardPrice(id, t)
	}
	return out
}

// boardPrice guesses what a made thing costs from the mass of its board and the cheapest sheet of it.
func (w *stages) boardPrice(id string, t thing) *stock.Price {
	best := -1.0
	for _, o := range w.offers(t.board.ID) {
		if o.Price != nil && o.Unit == "m2" && (best < 0 || o.Price.Price.Mean().Float()/o.Holds < best) {
			best = o.Price.Price.Mean().Float() / o.Holds
		}
	}
	if best < 0 || t.board.PerArea == 0 {
		return nil
	}
	mass := massOf(id, &t, t.ownSize(w.places.Find(id).Box), w.rows).mean
	likely := best * mass / float64(t.board.PerArea) * (1 + t.board.Waste.Float())
	low, high := catalogue.PriceSpread("guess")
	return &stock.Price{Standing: "guess", Price: quantity.Between(money(likely*low), money(likely), money(likely*high))}
}

// money is an amount to the penny, in the build's currency.
func money(amount float64) quantity.Money {
	m, err := quantity.ParseMoney(strconv.FormatFloat(amount, 'f', 2, 64))
	if err != nil { // beyond what money holds: nobody's build
		return quantity.Money{}
	}
	return m
}
