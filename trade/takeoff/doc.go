// Package takeoff answers: how much of what is in the van, how heavy is it, and where?
//
// It works nothing out but gathers lines from those who do: linings, bought things, made things, what was taken out. A line is a net
// quantity, a mass and a place, never money. Each thing has exactly one supplier of lines, so nothing counts twice; the whole
// equals the sum of its lines.
package takeoff
