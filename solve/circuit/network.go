package circuit

// A Network is what is joined to what. Nodes are made by being named; names of parts are for messages and need not differ.
type Network struct {
	Reference  string // the node whose voltage is 0 V
	Sources    []Source
	Conductors []Conductor
	Loads      []Load
}

// A Source holds To above From by its voltage less what its own resistance takes.
type Source struct {
	Name, From, To string
	Voltage        float64 // V, without load, 0 or more
	Resistance     float64 // Ω, inside, above 0
}

// A Conductor joins two nodes. What an open one parts from the reference is dead: its nodes have 0 V, and its sources and
// loads carry nothing.
type Conductor struct {
	Name, From, To string
	Resistance     float64 // Ω, above 0
	Open           bool
}

// A Load draws P/u + I + u/R from From to To, where u is the voltage between them. Power and Current below nought put
// in what others draw. All three at nought: the load is off.
type Load struct {
	Name, From, To string
	Power          float64 // W, constant
	Current        float64 // A, constant
	Resistance     float64 // Ω, constant; 0 stands for none
}
