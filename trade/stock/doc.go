// Package stock answers: what is there to buy, how much of it, and at what price?
//
// Shops sell whole sheets, lengths, rolls and boxes. For each material the net need, with its share of waste, is rounded up to
// whole packs, and of the stock sizes on offer the one that costs least in all is chosen (of equals the one with fewer packs). What
// is fitted, paid for or in the workshop need not be bought again. A bought thing is one pack of one.
//
// A price has a standing. Where its spread is not stated: a guess may turn out 30 % lower or 50 % higher, a quote 5 % either
// way, paid is exact, free is nought. All are read as PERT distributions.
//
// First form: area and length only. A cutting plan may need one sheet more than the area says, above all for large
// panels; sizes are not mixed within one material. Waste shares are trade practice, from memory; price spreads are those
// of renovation budgets, from memory (package catalogue).
package stock
