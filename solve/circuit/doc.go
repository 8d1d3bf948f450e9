// Package circuit answers: what voltage reaches every point of a direct-current network, what flows in every conductor,
// and can the network carry its loads at all?
//
// A network is sources (an open-circuit voltage behind a resistance), conductors (resistances; a fuse or a closed switch
// is a small one, an open one carries nothing) and loads between two nodes, each drawing a constant power, a constant
// current, through a constant resistance, or any sum of these:
//
//	i = P/u + I + u/R
//
// Unknown are the voltages of the nodes against the reference. At each node the currents sum to nought (Kirchhoff), which
// is solved by Newton's method from the voltages without load. The slope of those equations is symmetric; where it is
// positive definite a small rise of load lowers the voltages a little, and the network is stable. Only such a solution is
// returned.
//
// A constant power has two solutions or none: behind E and R it finds u = (E ± √(E² − 4·R·P))/2, of which the upper is
// stable, and none beyond P = E²/(4·R): the voltage collapses. If every load's current lowers the voltage at every
// load and none puts power in (so always when all loads end at the reference, and when supply and return are two trees)
// the equations are convex and monotone. Newton's iterates then fall from above onto the stable solution whenever there
// is one (Baluev's theorem; Ortega and Rheinboldt, Iterative Solution of Nonlinear Equations, 13.3; from memory), and
// lose definiteness only when there is none. Otherwise, and to find how much can be carried, the load is raised step by
// step from nothing, the solution of one step being the beginning of the next; the first point of collapse on that way is
// taken as the limit.
//
// A [Collapse] says how much would be carried and which load tips the network. A [Fault] says what is wrong with the
// network as written, and where.
//
// All figures are SI: V, A, W, Ω. The network is in its steady state: no inductance, no capacity, no arcs, and sources
// that take current back (a battery being charged). Resistances do not change with the current; [PerMetre] gives those of
// copper conductors at a temperature. Currents are differences of voltages over a resistance, so through 1 µΩ they are
// known to about 10⁻⁸ A, through 0.1 mΩ to 10⁻¹⁰ A.
package circuit
