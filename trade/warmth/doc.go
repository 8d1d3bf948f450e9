// Package warmth answers: will we sleep warm and dry?
//
// It takes what lies on the steel of each bay, the glass, the vents as they are set for the night, who sleeps in the van, the
// heater and the weather of each month, and says: how much heat goes through each surface, how cold it gets by morning, what the heater burns,
// how much water settles on glass and steel, how stale the air becomes, whether wet clothes dry, and whether water gathers behind the lining over a winter.
//
// # How
//
//	buildup.go   plain layers and layers of two materials: ISO 6946, combined method
//	detail.go    ribs and bows: the real section, half a rib and 250 mm of bay, by conduction in two dimensions
//	loss.go      heat lost through each surface
//	air.go       what passes the vents: stack and wind
//	fixed.go     how large openings must be that nobody can close
//	room.go      the room as one volume of air with lumps about it
//	thermostat.go what the heater gives, minute by minute
//	night.go     from six in the evening to eight in the morning in steps of a minute
//	glaser.go    vapour through layers month by month: ISO 13788
//	winter.go    behind the lining, steel outermost, with air that leaks past it
//
// # What it assumes
//
//   - A fridge runs 30 % of the time and warms the room by what it takes; the battery never fails the heater. Power takes both up from here.
//   - Ribs are hats of the skin's sheet, welded on with their feet; heat runs square to them. Layers in strips (battens, slats) are evened out where they cross a rib.
//   - Where insulation lies free between ribs it reaches them; a closed-cell sheet is glued to the steel.
//   - Doors have ribs all round, as deep as those beside them. Half of a floor with pressings lies on air.
//   - Nobody lives in the cab: it is cold, and loses 40 W/K to outside. A curtain or partition hides it; without one its air and its glass are the room's.
//   - People come in at six, cook at half past, sleep from ten to seven or as their habits have it. A hatch or door stands open while they cook, and is ajar now and then while they are up.
//   - Wind is 1.5 m/s at the vents. Seals let half the room's air through each hour; all of it where the cab is open.
//   - Furniture takes up heat, but no water: real evenings are less damp, and mornings damper.
//   - Air carries water behind a lining at 0.02 m3 an hour for each m2. This is our own extension of ISO 13788, which knows none.
//
// Air is well mixed, surfaces of one kind have one temperature, frost counts as water. Carbon monoxide is not foretold by any of this.
//
// # Sources
//
// ISO 6946 (surface resistances, air layers, combined method), ISO 10211 (thermal bridges), ISO 13788 (surface humidity, Glaser),
// BS 5925 (flow through openings), EN 721 as quoted by an inspection body. What each figure is known from stands beside it.
package warmth
