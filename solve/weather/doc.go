// Package weather answers: what could the weather of a year be, hour by hour, where only the means of its months are
// known?
//
//	maker, err := weather.New(climate)
//	year := maker.Year(seed, 17) // the seventeenth of as many years as are wanted
//
// A year is 365 days of 24 hours, without 29 February, in the order of the calendar; hour 0 is the first of 1 January.
// Hours should be those of a clock whose noon is within some four hours of the sun's. A year depends on the seed and its
// number alone, so years can be made in any order, and no year knows of the one before.
//
// # Sunlight
//
// Days: the clearness of a day follows that of the day before by the Markov matrices of Aguiar, Collares-Pereira and
// Conde, Solar Energy 40 (1988) 269-279, chosen by the month's mean clearness and scaled so that their long run has it.
// So a month differs from year to year as chance has it: by 5 % (standard deviation) where the sky is mostly clear, 8 to
// 10 % at middling clearness, 17 % in the dullest. If Steady, a month is drawn again, at most 50 times, until its mean
// is within 1 % of the wanted one, and then scaled to it, as the paper does; that takes 0.05 off the correlation from day
// to day and shortens the longest dull spells. Whole seasons that are good or bad are not made.
// Hours: TAG, Aguiar and Collares-Pereira, Solar Energy 49 (1992) 167-174: the hour's clearness has a mean by the height
// of the sun and the clearness of the day, and a noise that remembers the hour before; scaled to the day's sum. Its
// coefficients agree in several public programs; the paper itself was not seen.
//
// # Temperature
//
// A smooth course through the year whose monthly means are those given; a daily wave, coldest at sunrise and warmest 2.5
// hours after the sun's noon (common practice, no source); and noise that fades over days, so that the correlation of
// daily means from day to day is 0.75. The noise alone gives a day some range; the wave has what is wanting to the range
// given, by the sum of squares. Temperature and clearness are drawn apart: that clear winter nights are colder is lost.
//
// # How near it comes
//
// Beside hourly years of four places (`go run ./cmd/trials sky`): within a month the clearness of days has a deviation of
// 0.12 to 0.16 where those have 0.11 to 0.19, and a correlation of 0.16 to 0.23 where those have 0.20 to 0.35. Months
// of clearness up to 0.30 follow a matrix whose days hang together more (0.39) than counted ones (0.15 to 0.21), so their
// dull spells are on the long side. Within a day the clearness of hours varies a fifth to a third too little, and forgets
// too soon: 0.25 to 0.3 from hour to hour where hourly years have 0.4 to 0.6. Sums of days are not touched by that.
//
// # Units and validity
//
// Irradiance W/m², temperature °C, differences K; means over the hour. Months with under 12.5 W/m² outside the
// atmosphere are given at most 0.8 of that, and what their twilight had beyond is lost. Wind, rain and moisture are not
// made.
package weather
