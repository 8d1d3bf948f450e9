// Package quantity answers: what does a builder mean by `3.35 m`, `12 ± 25 %`
// or `2 /month`, and how is it written back?
//
// Every quantity is its own Go type, so that a mass can not be passed for a
// length. The value inside is always in the base unit:
//
//	Length mm        Area m2       Section mm2 (of a cable)   Angle degrees
//	Mass kg          Volume l      Density kg/m3              Temperature °C
//	Power W          Voltage V     Current A                  Charge Ah    Energy Wh
//	Duration h       Share 0..1    PerArea kg/m2              PerLength kg/m
//
// Beside these stand Date, Clock, YesNo, Money (exact decimals), Rate (an
// amount in a period), Lay (a mass by the piece, metre or square metre) and
// Spread (a guess with its least and its most).
//
// A bare number is in the base unit, except where that could mean two things:
// areas, cable sections and shares always name their unit. Only plain decimals
// with a point are read. What is read is a number of at most 24 characters,
// between 1e-9 and 1e12 in size, or nought. String gives the canonical text:
// the base unit in the shortest decimal that reads back as the same value.
//
// Sources: inch, foot, pound and gallon (UK) are exact by the Weights and
// Measures Act 1985 schedule 1 and the international yard and pound agreement
// of 1959; gallon (US) is 231 cubic inches. PERT: Malcolm, Roseboom, Clark and
// Fazar, Operations Research 7 (1959) 646-669, with the beta distribution of
// shape 4 for the variance.
package quantity
