// Package cost answers: what has the conversion cost, what will it cost, and does the budget hold?
//
// Paid is the sum of the builder's own entries, to the penny: money spent less money that came back. The van itself is kept
// apart. To come is what is neither fitted nor paid for, at its best-known price. The forecast is the two together. Prices
// are guesses or quotes with a spread (package stock); prices of one catalogue row share one error, so deviations add
// within a row and squares between rows. "One in five it passes" is the 80 % quantile of a normal distribution with that spread.
//
// A budget holds while the forecast stays below it. The contingency is the share of the budget kept for what nobody
// planned, and entries marked sudden use it up.
//
// Not covered: the worth of the builder's hours, tools lent, what the van will fetch. Practice of renovation budgets,
// from memory: keep the contingency as a line of its own, and release it only with a reason.
package cost
