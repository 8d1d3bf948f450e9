package cables

import "tumblehome/trade/finding"

func (r *Result) judge() []finding.Finding { return nil }
