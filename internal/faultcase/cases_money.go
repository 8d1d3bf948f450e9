package faultcase

var moneyCases = []Case{
	{
		Name:  "A lamp is planned whose price nobody knows",
		Patch: `{"catalogue": {"lamp-copper": {"name": "copper lamp", "kind": "piece", "mass": 0.3, "size": {"x": 80, "y": 80, "z": 120}}}, "fittings": {"lamp": {"buy": "lamp-copper", "at": {"x": 1500, "y": "mid 0", "z": "roof"}}}}`,
		Finds: []string{"note stock.unpriced /fittings/lamp"},
	}, {
		Name:  "The conversion will cost more than the budget",
		Patch: `{"build": {"budget": 1200}}`,
		Finds: []string{"fault cost.budget /build/budget"},
	}, {
		Name:  "The budget holds, but one time in five it does not",
		Patch: `{"build": {"budget": 1380}}`,
		Finds: []string{"close cost.budget /build/budget"},
	}, {
		Name:  "A surprise costs more than was kept back for surprises",
		Patch: `{"build": {"contingency": "1 %"}}`,
		Finds: []string{"close cost.contingency /build/contingency"},
	}, {
		Name:    "Something is paid in a currency without a rate",
		Patch:   `{"spending": {"s-0004": {"date": "2026-03-01", "paid": "12.50 EUR", "what": "lamp"}}}`,
		Finds:   []string{"fault cost.rate /spending/s-0004"},
		Refused: "there is no rate for EUR",
	},
}
