// Package weight answers: is the van legal on the scales, axle by axle, and does it sit level?
//
// The bare van comes from the weighbridge: one reading of each axle, less what was aboard. Everything else is a line of mass
// m whose middle lies x behind the front axle, and the lever rule shares it out over the wheelbase L:
//
//	on the rear axle   m·x/L
//	on the front axle  m − m·x/L
//
// A thing behind the rear axle puts more than its own mass there and lifts the front. Loads add line by line, for the van as
// it will be finished in every load case, and for the van as it stands today.
//
// Spread: lines of one error key share one error (a heavy batch of ply is heavy everywhere), so deviations add within a key and
// squares between keys. A scale of step s leaves s²/12 of variance unread in each reading. Weighings other than the one the
// bare van rests on correct the guesses for what was aboard and make them surer (package solve/conditioning). "One in
// five it passes" is the 80 % quantile of a normal distribution with that spread.
//
// Assumes: a rigid van on level ground; the bare van's own mass in its middle between left and right; people at the
// middle of their seats. Without any weighing the bare mass is a guess from the size of the body, wide and said to be so.
// Not covered: trailers beyond what the train plate leaves, tyre pressures, motion.
//
// Sources: lever rule: statics; printed cases of a motor-caravan magazine, a vehicle handbook and a chassis handbook are
// tested. Side balance of 3 % between wheels of one axle: a bodywork guide for trucks; 4 % here for light vans, from
// memory. Front axle not under 30 % of the laden mass: type approval of light vehicles, from memory. Mass in running
// order with 90 % fuel and a driver of 75 kg: Regulation (EU) 1230/2012 article 2. Axle-lift method: ISO 10392.
package weight
