// Package climate answers: what weather will the van stand in, on a usual night and on a bad one?
//
// It is the one weather of all trades. A place (package catalogue/climate, or the document's own) gives twelve months. From them:
//
//	a higher camp    6.5 K colder for each kilometre (International Standard Atmosphere, ICAO Doc 7488; altitude.go)
//	damp             the day's vapour pressure stays as it is while the air warms and cools (humidity.go)
//	a usual night    the mean of the lowest of each day
//	a cold night     one in ten is colder: 1.28 standard deviations of the days' means below it (night.go)
//	hour by hour     a sine by day, an exponential fall by night: Parton and Logan (course.go)
//
// Hours count from midnight of local standard time; summer time, which moves people by an hour and not the sun, is left out.
//
// A builder may also bring a weather file: an hourly year in EPW form or a European solar-service table. ReadEPW and ReadTypicalYear give a
// Series, which yields the same months.
//
// Not covered: wind, rain, snow, frost hollows (a valley floor may be 5 K colder than its station), what a town adds, years to come.
package climate
