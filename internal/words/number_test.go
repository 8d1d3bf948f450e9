package words_test

import (
	"testing"

	"tumblehome/internal/words"
	"tumblehome/trade/working"
)

func TestFiguresReadAsAVanIs(t *testing.T) {
	cases := []struct{ name, got, want string }{
		{"a length is rounded to 5 mm", words.Amount(1678.2, "mm"), "1\u202f680\u202fmm"},
		{"a mass is rounded to 5 kg", words.Amount(2652.6, "kg"), "2\u202f655\u202fkg"},
		{"money has its sign first", words.Amount(4248, "GBP"), "£4\u202f250"},
		{"negative money has the minus before the sign", words.Amount(-61, "EUR"), "−€60"},
		{"an area has one decimal", words.Amount(4.87, "m2"), "4.9\u202fm²"},
		{"a temperature is whole", words.Amount(-6.63, "°C"), "−7\u202f°C"},
		{"sunshine has one decimal", words.Amount(0.29, "kWh/m2"), "0.3\u202fkWh/m²"},
		{"what a wall lets through has one decimal", words.Amount(1.12, "W/m2K"), "1.1\u202fW/m²K"},
		{"stale air is rounded to a hundred parts", words.Amount(2216, "ppm"), "2\u202f200\u202fppm"},
		{"a count has no unit", words.Amount(3, "1"), "3"},
		{"nothing is never minus nothing", words.Amount(-0.4, "kg"), "0\u202fkg"},
		{"just over a limit never reads as at it", words.Near(1951, 1950, "kg"), "1\u202f951\u202fkg"},
		{"far from a limit it is rounded", words.Near(1358, 1850, "kg"), "1\u202f360\u202fkg"},
		{"a small change is shown to the kilogram", words.Signed(12.3, "kg"), "+12\u202fkg"},
		{"a loss has a true minus", words.Signed(-12.3, "kg"), "−12\u202fkg"},
		{"a count is whole however close one looks", words.Fine(3, "1"), "3"},
		{"what a cable loses is told to a tenth", words.Figure(working.Figure{Code: "power.drop.to.lights", Value: 3.28, Unit: "%"}), "3.3\u202f%"},
		{"a time is told to the half day", words.Figure(working.Figure{Value: 2.63, Unit: "d"}), "2.5\u202fdays"},
		{"whole days have no decimal", words.Figure(working.Figure{Value: 2.13, Unit: "d"}), "2\u202fdays"},
		{"one is one day", words.Figure(working.Figure{Value: 0.9, Unit: "d"}), "1\u202fday"},
		{"several days are told to the day", words.Figure(working.Figure{Value: 5.4, Unit: "d"}), "5\u202fdays"},
		{"what was rounded is said beside the working", words.Rounded(working.Figure{Value: 2.13, Unit: "d"}), "Rounded for reading; worked out, it is 2.13\u202fdays."},
		{"thousands are said as they are worked out", words.Rounded(working.Figure{Value: 1013.271, Unit: "Wh"}), "Rounded for reading; worked out, it is 1\u202f013.27\u202fWh."},
		{"where nothing is lost nothing is said", words.Rounded(working.Figure{Value: 2.5, Unit: "d"}), ""},
		{"next to nothing is no change", words.Signed(0.2, "kg"), "no change"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			if c.got != c.want {
				t.Errorf("got %q, want %q", c.got, c.want)
			}
		})
	}
}
