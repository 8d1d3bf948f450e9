// Package sky answers: where does the sun stand, and how much of its light falls on a surface?
//
//	sun := sky.At(t)                              // on the celestial sphere
//	place := sun.From(latitude, longitude)        // above the horizon
//	kt := sky.Clearness(global, outside)          // how clear the hour was
//	light := sky.Split(global, sun.Normal(), place.Elevation)
//	on := light.On(plane, place, albedo)          // what falls on a tilted plane
//
// # Units and conventions
//
// Angles are in radians. Latitude is north positive, longitude east positive, azimuth runs from north through east,
// tilt is nought for a level plane that looks up. Hour angles are nought at the sun's noon and positive after it.
// Irradiance is in W/m², irradiation in J/m², distance in astronomical units, pressure in Pa, temperature in °C.
// "Global", "diffuse" and "outside" are on a level plane, "normal" faces the sun. Time is an instant; its zone is of
// no account, and civil time (UTC) stands in for the time of the Earth's turning, from which it differs by at most 0.9 s.
//
// # Method and validity
//
// Position: the low-precision series of Meeus, Astronomical Algorithms, 2nd edition, chapter 25, with apparent sidereal
// time after chapter 12. Stated accuracy 0.01° (from memory); the tests hold that against VSOP87 positions for 2000 to
// 2050. Far from there the difference of dynamical from civil time, held at 69 s, costs 0.0008° for each further 69 s.
// Parallax is included, refraction only in [Refraction] and, as the customary 34' and half disc of 16', in [DayOf].
//
// Light: solar constant 1367 W/m² (WMO 1981), which the correlations for clearness and diffuse light were made with;
// later measurements say 1361. Diffuse share: Erbs, Klein and Duffie, Solar Energy 28 (1982) 293-302; fitted to hours
// at five places in the United States, with a scatter of about 0.1 in a single hour. Tilted planes: Hay and Davies
// (1980), and Liu and Jordan (1963) as the plain alternative. Air mass: Kasten and Young, Applied Optics 28 (1989).
// Nothing here knows of mountains or of shade.
package sky
