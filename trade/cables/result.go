package cables

import "tumblehome/trade/finding"

// Result is every cable with its fuse, what is lost on the way, and what follows for buying, labelling and testing.
type Result struct {
	Supplies []Supply // one for each bank, in its order
	Cables   []Cable  // trunk of each bank first, then circuits, then sources; numbered in this order
	Bill     []Item   // what to buy for them
	Tests    []Test   // in the order in which they are done
	Mains    Mains
	Assumed  []string // what was taken for want of a word in the document, in plain sentences

	in    Inputs
	nets  map[string]net // solved, by bank
	found []finding.Finding
	of    map[string][]string // numbers of the cables that a finding is about, by its key
}

// Supply is a bank as the cables see it.
type Supply struct {
	Bank
	Volts      float64 // at its posts, without load
	Resistance float64 // Ω, inside
	Drive      float64 // V that drive a short when it is full
	Fault      float64 // A into a short at its posts
	Trunk      string  // number of the cable to the fuse board
	AtBoard    float64 // A into a short at the fuse board
	Together   float64 // A out of the battery when all is on
	Collapsed  *Collapsed
}

// Collapsed says that a battery cannot carry what hangs on it: the voltage falls until all goes out.
type Collapsed struct {
	Share float64 // of what is drawn, the most that is carried
	Tips  string  // id of the circuit that tips it
	Asked float64 // what that circuit asks for, in Unit
	Alone float64 // the most it can have beside the others, in Unit
	Unit  string  // W or A
}
