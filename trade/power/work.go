package power

import "tumblehome/trade/working"

// Work finds out whether the lights stay on.
func Work(in Inputs) Result { return Result{in: in} }

// Figures are the numbers of power.
func (r Result) Figures() []working.Figure { return nil }

// Working shows how a figure came about; false if there is no figure of that code.
func (r Result) Working(code string) (working.Working, bool) { return working.Working{}, false }
