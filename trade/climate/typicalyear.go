package climate

import (
	"slices"
	"strconv"
	"strings"
)

// ReadTypicalYear reads the table of a typical year as the solar service of the European Commission hands it out: lines
// with latitude, longitude and elevation, which month was taken from which year, then a heading that begins with time(UTC) and a line an
// hour. Columns are found by their names: T2m, RH, G(h), Gb(n), Gd(h) are needed. Times are UTC and stay so; days are cut at midnight UTC.
// Radiation is that of a moment within the hour, which newer files name, and is taken as its mean. At most 5 MB and 8784 hours.
func ReadTypicalYear(file string, text []byte) (*Series, error) {
	l, err := linesOf(file, text)
	if err != nil {
		return nil, err
	}
	s := &Series{File: file}
	at, err := s.table(l)
	if err != nil {
		return nil, err
	}
	for l.next() && strings.TrimSpace(l.line) != "" {
		h, err := typicalHour(l.cells(), at)
		if err != nil {
			return nil, err
		}
		if len(s.Hours) == mostHours {
			return nil, l.fault(1, "there are more than %d hours", mostHours)
		}
		s.Hours = append(s.Hours, h)
	}
	return s, s.complete()
}

// table reads down to the heading of the hours and finds the columns.
func (s *Series) table(l *lines) (columns, error) {
	given := map[string]bool{}
	for l.next() {
		if strings.HasPrefix(l.line, "time(UTC),") {
			if !given["Latitude"] || !given["Longitude"] {
				return columns{}, l.fault(1, "latitude and longitude do not stand above the hours")
			}
			return findColumns(l)
		}
		if err := s.heading(l, given); err != nil {
			return columns{}, err
		}
	}
	l.number = max(l.number, 1)
	return columns{}, l.fault(1, "no line begins with time(UTC)")
}

// heading takes what a line above the table says of the place.
func (s *Series) heading(l *lines, given map[string]bool) error {
	name, value, _ := strings.Cut(l.line, ":")
	word, _, _ := strings.Cut(name, " ")
	for _, w := range []want{{0, "Latitude", -90, 90, (*float64)(&s.Lat)}, {0, "Longitude", -180, 180, (*float64)(&s.Lon)}, {0, "Elevation", -450, 9000, &s.Height},
		{0, "Irradiance", 0, 1, &s.Moment}} {
		if word != w.what {
			continue
		}
		v, err := strconv.ParseFloat(strings.TrimSpace(value), 64)
		if err != nil || !(v >= w.low && v <= w.high) {
			return l.fault(len(name)+2, "`%s` is no %s; expected %g to %g", clip(strings.TrimSpace(value)), strings.ToLower(w.what), w.low, w.high)
		}
		*w.to, given[word] = v, true
		if word == "Irradiance" { // counted from the beginning of the hour
			s.Moment -= 0.5
		}
	}
	return nil
}

func findColumns(l *lines) (at columns, err error) {
	names := l.cells().texts
	for i := range names {
		names[i] = strings.TrimSpace(names[i])
	}
	for _, c := range []struct {
		name string
		to   *int
	}{{"T2m", &at.temperature}, {"RH", &at.humidity}, {"G(h)", &at.global}, {"Gb(n)", &at.beam}, {"Gd(h)", &at.diffuse}} {
		if *c.to = slices.Index(names, c.name); *c.to < 0 {
			return at, l.fault(1, "there is no column %s", c.name)
		}
	}
	return at, nil
}

// typicalHour reads a line; its time is written 20230131:2300.
func typicalHour(c cells, at columns) (Hour, error) {
	var h Hour
	time := strings.TrimSpace(c.texts[0])
	ok := len(time) == 13 && time[8] == ':'
	for _, part := range []struct {
		from, to, low, high int
		into                *int
	}{{4, 6, 1, 12, &h.Month}, {6, 8, 1, 31, &h.Day}, {9, 11, 0, 23, &h.Hour}} {
		if ok {
			v, err := strconv.Atoi(time[part.from:part.to])
			ok, *part.into = err == nil && v >= part.low && v <= part.high, v
		}
	}
	if !ok {
		return h, c.of.fault(1, "`%s` is no time; expected year, month, day, a colon, hour and minute, as in 20230131:2300", clip(time))
	}
	return h, c.weather(at, &h)
}
