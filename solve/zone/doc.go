// Package zone answers: how warm, how damp and how stale does the air of one closed room become, and how much water
// settles on its cold surfaces?
//
// A Zone is well-mixed air of one volume with Bodies about it: lumps of heat capacity, each joined to the air and to
// the outside, on whose surface water may condense and from which it dries again. What drives it (weather, ventilation,
// sources of heat, vapour and CO2) is given step by step and is constant within a step; 60 s is meant.
//
//	Ca·dθ/dt = Σ Gk·(θk − θ) + (L + ρc·Q)·(θe − θ) + Φ
//	Ck·dθk/dt = Gk·(θ − θk) + Ek·(θe − θk) + Φk + r·mk
//	V·dv/dt = Q·(ve − v) + S − Σ mk,   mk = βk·Ak·(v − vsat(θk)) while that is above nought or water lies on k
//	V·dc/dt = Q·(ce − c) + Sc
//
// # How a step is made
//
// Temperatures by the implicit rule of Alexander (1977), of second order and without ringing; the bodies are joined
// only to the air, so one equation remains. Vapour and CO2 by their exact exponentials, with saturation at each body's
// mean temperature of the step, and again once the heat of the condensate has moved those temperatures. A body that
// dries up within a step gives off what it has and no more. Heat and water balance to rounding in every step.
//
// # Units and validity
//
// SI throughout: m³, s, W, W/K, J/K, kg, vapour as density kg/m³, CO2 as a share by volume (400 ppm is 0.0004),
// temperatures in °C. One zone; equal volume flows in and out; no heat or water stored in fabrics and timber beyond
// what bodies are given, so real evenings are less damp and mornings damper; frost is treated as water below nought.
// Vapour condenses only on bodies with an Area: where these are too few the air may be told more than saturated.
// With steps of ten minutes the night of the tests still keeps within 0.01 K and 0.5 g of that with steps of one.
//
// # Sources
//
// Balance: mass balance underlying ISO 13788; transfer by the Lewis relation, β = hc/(ρ·cp) (from memory).
// Saturation: ISO 13788, annex. Alexander, SIAM Journal on Numerical Analysis 14 (1977) 1006-1021 (from memory).
package zone
