// Package power answers: will the lights stay on?
//
// It takes what uses electricity and how people live, what the battery holds, what charges it, the cabin's warmth and the weather of a place. It says what
// a day takes, what the sun and the engine bring, how long the battery lasts without either, and in how many nights of each month it is flat.
//
// # How
//
//	kinds.go     what a thing is by its name: lamp, fridge, pump
//	diary.go     what each thing takes in each hour of a day, in three ways of living
//	hours.go     when of a day it is on
//	uses.go      all of them together, corrected by the builder's own readings
//	fridge.go    how long a fridge runs, by the warmth about it
//	inverter.go  what an inverter takes for what it gives
//	chemistry.go what lead and lithium can and cannot do
//	peukert.go   lead gives less the faster it is emptied
//	accept.go    how fast a battery takes charge
//	panel.go     what a panel on a flat roof gives
//	engine.go    what comes from the engine
//	sky.go       light and air of many years, hour by hour, kept small
//	plan.go      which nights of which year are trips
//	kit.go       a battery with what charges it
//	year.go      that battery, hour by hour, through all the years
//	parked.go    and between trips
//	tally.go     what was counted on the way
//	months.go    what that comes to by month
//	helps.go     what half as much again of something would do
//	course.go    the nights of one of the years
//	needed.go    how large a battery for two days would be
//	chart.go     the same for many batteries and panels; chart_kits.go the cheapest to buy
//
// A night is flat when, between getting up and getting up the next day, the battery has given what may be taken from it and something that should run
// does not. What is switched off then stays unused; the battery goes no lower.
//
// # What it assumes
//
//   - A trip begins in the morning with its drive and lasts as many times 24 hours as it has nights.
//   - Between trips the van stands in the open: the panel charges, what is always on goes on. Without a panel the battery is as the last drive left it, less what it loses by itself.
//   - The battery is as warm as the cabin over the whole day, and warmer or colder with the weather of the day. Between trips it is as warm as the air outside.
//   - The panel lies flat, no snow lies on it, nothing shades it beyond what is said. The charge of one hour meets the use of the same hour first.
//   - The heater burns as on a usual night of the month.
//   - Charge goes in as into one battery, and all that is joined is alike.
//   - The most that an engine's charger may take, where a document says it, is compared with the current it gives the battery.
//   - Within an hour use and charge are even: the short draw of a pump or kettle counts by its mean.
//
// Voltage is a constant for giving and another for taking, so losses in cables are not in here; trade/cables has them.
//
// # Sources
//
// Peukert's law in the rated-hour form; Erbs, Klein and Duffie 1982 for the light of the sky; NOCT cell temperature; losses as listed by NREL/TP-6A20-62641;
// incidence after ASHRAE (Souka and Safwat 1966). Figures of batteries and appliances are common practice unless said otherwise beside them.
package power
