package weight

import "tumblehome/trade/finding"

// Explanations says what each code of this package means.
var Explanations = []finding.Explanation{
	{
		Code: "weight.total.over", Meaning: "In at least one load case the van weighs more than its plate allows.",
		Why: "It brakes and steers worse than it was approved for, may be stopped at the roadside, and insurers ask.", Clear: "Leave things at home, carry less water, choose lighter boards.",
	}, {
		Code: "weight.total.close", Meaning: "In at least one load case the van weighs 95 % or more of what its plate allows.",
		Why: "Masses are guesses until weighed; a wet tent is enough to pass the limit.", Clear: "Weigh the laden van; keep a list of what stays at home.",
	}, {
		Code: "weight.front-axle.over", Meaning: "In at least one load case the front axle carries more than its plate allows.",
		Why: "Each limit binds by itself, even when the van as a whole is light enough.", Clear: "Move heavy things rearward or leave them out.",
	}, {
		Code: "weight.front-axle.close", Meaning: "In at least one load case the front axle carries 95 % or more of what its plate allows.",
		Why: "Masses are guesses until weighed.", Clear: "Weigh each axle of the laden van.",
	}, {
		Code: "weight.rear-axle.over", Meaning: "In at least one load case the rear axle carries more than its plate allows.",
		Why: "Each limit binds by itself; what stands behind the rear axle counts there more than once and lifts the front.", Clear: "Move heavy things forward, travel with less water, take less on the tail.",
	}, {
		Code: "weight.rear-axle.close", Meaning: "In at least one load case the rear axle carries 95 % or more of what its plate allows.",
		Why: "Masses are guesses until weighed.", Clear: "Weigh each axle of the laden van; move heavy things forward.",
	}, {
		Code: "weight.front-axle.light", Meaning: "Less than 30 % of the van's mass stands on its front axle.",
		Why: "The front wheels steer and do most of the braking; lightly loaded they slide.", Clear: "Move heavy things forward, above all from behind the rear axle.",
	}, {
		Code: "weight.licence", Meaning: "The laden van is within 25 kg of the mass at which the usual driving licence ends.",
		Why: "Beyond it another licence, other taxes and other speed limits may apply.", Clear: "Keep a list of what stays at home, and weigh the laden van.",
	}, {
		Code: "weight.side", Meaning: "One side of the van carries more than the other by over 4 % of its mass.",
		Why: "The van leans and wears the springs and tyres of one side.", Clear: "Put the next heavy thing on the other side.",
	}, {
		Code: "weight.roof", Meaning: "What lies on the roof weighs more than the handbook allows there.",
		Why: "The roof's bows and gutters carry it in every bend and pothole.", Clear: "Take something down.",
	}, {
		Code: "weight.tyre.load", Meaning: "An axle carries more than its two tyres may by their load index.",
		Why: "Overloaded tyres run hot and may burst.", Clear: "Fit tyres of a higher load index, or lighten the axle.",
	}, {
		Code: "weight.tyre.plate", Meaning: "Two tyres of an axle carry less than the plate allows the axle.",
		Why: "Then the tyres are the limit, not the plate, and the yearly test may refuse them.", Clear: "Fit tyres of the load index that the maker asks for.",
	}, {
		Code: "weight.tyre.age", Meaning: "Two tyres are more than six years old; from nine years on they are due.",
		Why: "Rubber hardens standing as well as rolling, whatever the tread.", Clear: "Have them inspected yearly; replace them by about ten years.",
	}, {
		Code: "weight.mass-unknown", Meaning: "Something stands in the van of which nobody knows how heavy it is.",
		Why: "It counts as nothing, so every sum is too low.", Clear: "Weigh it, or write a guess with its spread.",
	}, {
		Code: "weight.never-weighed", Meaning: "Nobody has put this van on a scale; its bare mass is guessed from its size.",
		Why: "Vans of one size differ by hundreds of kilograms, and every load and every margin rests on the bare mass.", Clear: "Drive the emptied van over a weighbridge, each axle by itself, and write down both readings and the fuel.",
	}, {
		Code: "weight.weighing.off", Meaning: "A weighbridge read something else than the guesses and their spreads allow.",
		Why: "Something aboard is missing from the list, or a guess is far off, and every figure rests on it.", Clear: "Go through what was aboard that day; weigh the doubtful thing by itself.",
	},
}
