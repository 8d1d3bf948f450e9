# Where the sun stands, and when it rises, passes and sets, by PyEphem 4.1.4 (VSOP87; Debian python3-ephem 4.1.4).
# Columns: seconds since 1970 UTC, latitude, longitude, then elevation, azimuth (degrees, no refraction, with parallax),
# distance (AU); and for days: noon asked for, latitude, longitude, rise, noon, set (seconds; centre of disc at -0.8333).
import datetime, json, math, random
import ephem

ZERO = datetime.datetime(1970, 1, 1)
rnd = random.Random(7)


def seconds(d):
    return round((ephem.Date(d).datetime() - ZERO).total_seconds(), 1)


def observer(lat, lon, when):
    o = ephem.Observer()
    o.pressure, o.elevation = 0, 0
    o.lat, o.lon = math.radians(lat), math.radians(lon)
    o.date = ephem.Date(ZERO + datetime.timedelta(seconds=when))
    return o


def moment():
    return rnd.randrange(946684800, 2524608000)


positions, days = [], []
for _ in range(400):
    lat, lon, t = round(rnd.uniform(-89, 89), 3), round(rnd.uniform(-180, 180), 3), moment()
    s = ephem.Sun(observer(lat, lon, t))
    positions.append([t, lat, lon, round(math.degrees(s.alt), 5), round(math.degrees(s.az), 5), round(s.earth_distance, 6)])
for _ in range(60):
    lat, lon = round(rnd.uniform(-62, 62), 3), round(rnd.uniform(-180, 180), 3)
    t = moment() // 86400 * 86400 + 43200 - round(lon * 240)
    o = observer(lat, lon, t - 43200 // 2)
    o.horizon = "-0.8333"
    sun = ephem.Sun()
    noon = o.next_transit(sun)
    o.date = noon
    rise, down = o.previous_rising(sun, use_center=True), o.next_setting(sun, use_center=True)
    days.append([t, lat, lon, seconds(rise), seconds(noon), seconds(down)])
json.dump({"positions": positions, "days": days}, open("positions.answer.json", "w"), indent=None, separators=(",", ":"))
