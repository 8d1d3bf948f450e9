// Package trips answers: who is in the van in which hour, asleep, at the stove, at the wheel or out on the hill?
//
// A trip of n nights counts as n days of 24 hours. From the trips of a year follow nights, hours at the wheel and nights on the mains, month
// by month; they are sums and nothing else. For each trip and month there is one typical day, hour by hour from midnight of standard time:
//
//	asleep                      everybody aboard, at the temperature kept at night
//	up                          breakfast
//	at the wheel                the day's share of the driving, from the hour after getting up
//	away                        out of doors until 16:00 from October to March, 18:00 from April to September
//	in the van                  wet clothes hung up, supper, sitting
//
// Everybody aboard does the same. The hours and temperatures are those of a way of living, frugal, usual or cosy (habits.go): common
// practice, no source. Warmth, water and power all read the same day.
//
// Not covered: days of rain spent in the van, children put to bed earlier, a first day that begins in the afternoon.
package trips
