package climate

import "strings"

// ReadEPW reads an hourly year in EPW form: eight lines of heading, then 35 fields a line, of which month, day, hour ending, dry bulb,
// relative humidity and three irradiances are taken (fields 2, 3, 4, 7, 9, 14, 15, 16, counted from 1; from the published descriptions of
// the form). At most 5 MB and 8784 hours. A missing value in a field that is needed is an error at its place; all other fields are passed
// over. The year is not read: typical years mix them. The file is trusted about its time zone; Late says when not to.
func ReadEPW(file string, text []byte) (*Series, error) {
	l, err := linesOf(file, text)
	if err != nil {
		return nil, err
	}
	s := &Series{File: file}
	if err := s.location(l); err != nil {
		return nil, err
	}
	if err := hourly(l); err != nil {
		return nil, err
	}
	for l.next() {
		if strings.TrimSpace(l.line) == "" {
			continue
		}
		h, err := epwHour(l.cells())
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

// location reads the first line: LOCATION,city,state,country,source,number,latitude,longitude,time zone,elevation.
func (s *Series) location(l *lines) error {
	if !l.next() || !strings.HasPrefix(l.line, "LOCATION,") {
		l.number = max(l.number, 1)
		return l.fault(1, "the file does not begin with LOCATION")
	}
	c := l.cells()
	s.Name = strings.ToValidUTF8(strings.TrimSpace(c.texts[1]), "?")
	return readAll(c, []want{
		{6, "latitude", -90, 90, (*float64)(&s.Lat)}, {7, "longitude", -180, 180, (*float64)(&s.Lon)},
		{8, "time zone", -12, 14, &s.Offset}, {9, "elevation", -450, 9000, &s.Height},
	})
}

// hourly passes over the rest of the heading, which must end with one period of one record an hour.
func hourly(l *lines) error {
	for range 7 {
		if !l.next() {
			return l.fault(len(l.line)+1, "the heading ends before DATA PERIODS")
		}
	}
	if !strings.HasPrefix(l.line, "DATA PERIODS,") {
		return l.fault(1, "the eighth line is not DATA PERIODS")
	}
	c := l.cells()
	if _, err := c.number(1, "number of periods", 1, 1); err != nil {
		return err
	}
	_, err := c.number(2, "number of records an hour", 1, 1)
	return err
}

func epwHour(c cells) (Hour, error) {
	var month, day, ending float64
	if err := readAll(c, []want{{1, "month", 1, 12, &month}, {2, "day", 1, 31, &day}, {3, "hour", 1, 24, &ending}}); err != nil {
		return Hour{}, err
	}
	h := Hour{Month: int(month), Day: int(day), Hour: int(ending) - 1}
	return h, c.weather(columns{temperature: 6, humidity: 8, global: 13, beam: 14, diffuse: 15}, &h)
}
