// Package label answers: where do the labels go, so that every one can be read and none hides
// another? It is given boxes that belong to places, what may not be covered, and the sheet's
// bounds; it gives each box a position and a leader line to its place.
//
// No two boxes overlap, none covers an obstacle, none leaves the bounds, whenever room can be
// found; one for which there is no room is marked as not fitting. Leaders are kept short, and
// from crossing each other and from running through boxes where that can be had. The best
// arrangement is a hard problem (point-feature label placement is NP-hard: Marks and Shieber
// 1991, from memory), so this is a greedy choice improved by re-placing and swapping; it has a
// fixed amount of work and no randomness.
//
// Lengths are millimetres on paper. Measure text with draw.Lettering, whose Bounds keep the
// allowance for other faces.
package label
