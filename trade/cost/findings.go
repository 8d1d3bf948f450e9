package cost

import (
	"fmt"
	"math"
	"strings"

	"tumblehome/trade/finding"
)

var budgeting = finding.Source{Text: "practice of renovation budgets: contingency as a line of its own", Sure: finding.Practice}

// Findings lists what the builder should know, gravest first.
func (r Result) Findings() []finding.Finding {
	var out []finding.Finding
	if f, ok := r.overBudget(); ok {
		out = append(out, f)
	}
	if f, ok := r.usedUp(); ok {
		out = append(out, f)
	}
	if f, ok := r.noRate(); ok {
		out = append(out, f)
	}
	finding.Sort(out)
	return out
}

// overBudget is a fault when the forecast passes the whole budget, contingency and all, and close when it may well.
func (r *Result) overBudget() (finding.Finding, bool) {
	likely, high := r.Forecast.Mean, r.Forecast.P80()
	if r.budget <= 0 || high <= r.budget {
		return finding.Finding{}, false
	}
	f := finding.Finding{
		Code: "cost.budget", Severity: finding.Close, About: []string{"/build/budget"},
		Title:    "one in five that the budget does not hold",
		Words:    fmt.Sprintf("Likely %s, one in five it passes %s; the budget is %s, contingency and all.", r.money(likely), r.money(high), r.money(r.budget)),
		Measured: &finding.Measure{Value: high, Unit: r.in.Currency},
		Limit:    &finding.Measure{Value: r.budget, Unit: r.in.Currency},
		Source:   budgeting,
	}
	if likely > r.budget {
		f.Severity, f.Measured.Value = finding.Fault, likely
		f.Title = fmt.Sprintf("the conversion will cost %s more than the budget", r.money(likely-r.budget))
	}
	return f, true
}

func (r *Result) usedUp() (finding.Finding, bool) {
	if r.budget <= 0 || r.in.Contingency <= 0 || r.contingencyLeft() >= 0 {
		return finding.Finding{}, false
	}
	about := []string{"/build/contingency"}
	for _, e := range r.book.sudden {
		about = append(about, "/spending/"+e.ID)
	}
	return finding.Finding{
		Code: "cost.contingency", Severity: finding.Close, About: about,
		Title:    "the contingency is used up",
		Words:    fmt.Sprintf("%s was kept back for what nobody planned; %s has gone that way.", r.money(r.contingency()), r.money(r.Sudden.Float())),
		Measured: &finding.Measure{Value: r.Sudden.Float(), Unit: r.in.Currency},
		Limit:    &finding.Measure{Value: r.contingency(), Unit: r.in.Currency},
		Source:   budgeting,
	}, true
}

func (r *Result) noRate() (finding.Finding, bool) {
	if len(r.book.foreign) == 0 {
		return finding.Finding{}, false
	}
	var about, what []string
	for _, s := range r.book.foreign {
		about = append(about, "/spending/"+s.ID)
		what = append(what, s.Paid.String())
	}
	return finding.Finding{
		Code: "cost.rate", Severity: finding.Fault, About: append(about, "/build/rates"),
		Title:  "money in a currency without a rate is not counted",
		Words:  strings.Join(what, ", ") + ": write what one unit is worth under rates.",
		Source: adding,
	}, true
}

// money writes an amount rounded to five, with its currency.
func (r *Result) money(v float64) string {
	s := fmt.Sprintf("%.0f", 5*math.Round(math.Abs(v)/5))
	if n := len(s); n > 3 {
		s = s[:n-3] + " " + s[n-3:]
	}
	if v <= -2.5 {
		s = "−" + s
	}
	return s + " " + r.in.Currency
}

// Explanations says what each code of this package means.
var Explanations = []finding.Explanation{
	{
		Code: "cost.budget", Meaning: "The forecast passes the budget, or may well do so.",
		Why: "Prices still to be paid are guesses and quotes; overruns of a fifth to two fifths over the first list are usual.", Clear: "Ask for quotes, leave something out, buy second-hand, or set another budget.",
	}, {
		Code: "cost.contingency", Meaning: "More has gone on what nobody planned than was kept back for it.",
		Why: "From here on every surprise comes out of the plan.", Clear: "Leave something out, or keep more back.",
	}, {
		Code: "cost.rate", Meaning: "An entry is in a currency whose rate is not known.",
		Why: "It is left out of every sum.", Clear: "Add the rate under build.rates.",
	},
}
