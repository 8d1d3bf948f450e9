// Package climate answers: what is the weather like, month by month, at places where people go camping?
//
// places.csv holds 56 places: 34 weather stations of Europe, North America and New Zealand, and the 22 rows of Great Britain and
// Northern Ireland used in the energy assessment of dwellings there (SAP 2012, Appendix U). Each has the month's mean temperature, the
// mean of each day's lowest and highest, relative humidity, irradiation on level ground, and how far daily means stray from the month's.
// README.md says where each came from and what may be done with it.
//
// The British rows give means and irradiation only. Their daily range, humidity and spread follow one pattern for the whole country
// (britain.go), from memory.
//
// Most weather years are older than 2005: take temperatures as good to 1 K (today is warmer, by 0.5 to 1.5 K), irradiation to 10 %,
// in a northern December to 20 %. A place says nothing about wind, rain or snow.
package climate
