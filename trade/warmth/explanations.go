package warmth

import "tumblehome/trade/finding"

// Explanations says what each code of this package means.
var Explanations = []finding.Explanation{
	{
		Code: "warmth.heater.unflued", Meaning: "A heater is fitted that burns in the room and gives its fumes to it.",
		Why: "Carbon monoxide kills sleepers without waking them; every kilowatt-hour of gas also gives 130 g of water.", Clear: "Fit a heater with sealed combustion, or an electric one. Never sleep with a flame alight that has no flue.",
	}, {
		Code: "warmth.air.fixed", Meaning: "The openings that nobody can close are too small, or all at one height.",
		Why: "A shut van runs short of fresh air, and of air for a flame, while people sleep and cannot notice.", Clear: "A grille near the floor and a vent in the roof, both without a shutter.",
	}, {
		Code: "warmth.air.unsaid", Meaning: "The document does not say yet which openings stay open.",
		Why: "Fresh air at night is the first thing to plan; all that is said of damp nights waits for it.", Clear: "Name the openings that are always open, and how far others are opened at night.",
	}, {
		Code: "warmth.co2", Meaning: "What people breathe out gathers in the room at night.",
		Why: "Stale air makes heads ache and sleep shallow, and where it gathers water gathers too.", Clear: "Openings low and high, larger or opened further; a roof fan on its lowest step.",
	}, {
		Code: "warmth.heater.small", Meaning: "With the heater at full power the van does not stay as warm at night as is wanted.",
		Why: "It runs all night, loud and thirsty, and people are cold nevertheless.", Clear: "More insulation where most heat goes, a curtain before the cab, a larger heater, or less warmth.",
	}, {
		Code: "warmth.heater.large", Meaning: "Even on the coldest nights of the trips the heater hardly runs.",
		Why: "A heater that burns fuel soots up when it seldom gets warm, and it costs, weighs and draws more than need be.", Clear: "A smaller one; or let it run hard for half an hour now and then.",
	}, {
		Code: "warmth.heater.none", Meaning: "A temperature is wanted at night that nothing keeps, or it is so cold inside that nobody sleeps.",
		Why: "The van follows the weather within an hour or two.", Clear: "A heater with a flue, warmer bedding, or trips in warmer months.",
	}, {
		Code: "warmth.glass.runs", Meaning: "Much water settles on glass by morning.",
		Why: "It runs into frames and linings, where steel rusts and boards swell.", Clear: "More air at night, double windows, a cloth in the morning.",
	}, {
		Code: "warmth.surface.wet", Meaning: "Steel, or the lining over a rib, stays below the dew point at night and gets wet.",
		Why: "What is wet night after night rusts or goes mouldy.", Clear: "10 mm of closed-cell insulation over the ribs, lining on bare steel, more air.",
	}, {
		Code: "warmth.winter.water", Meaning: "More water gathers behind the lining over the winter than dries.",
		Why: "Nobody sees it until the steel has rusted through from within.", Clear: "Closed-cell sheet glued to the steel; a membrane on the warm side with taped edges; drains kept open.",
	}, {
		Code: "warmth.clothes.wet", Meaning: "Wet clothes do not dry in the van in one night.",
		Why: "They are cold to put on, and all their water goes through the air of the room.", Clear: "Hang them where warm air comes out, with a vent above.",
	},
}
