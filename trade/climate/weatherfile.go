package climate

import (
	"fmt"
	"strconv"
	"strings"

	"tumblehome/quantity"
)

// MostBytes is how long a weather file may be; a year of hours takes about 1.5 MB.
const MostBytes = 5 << 20

const mostHours = 8784

// A FileError says where a weather file is wrong. Column counts bytes from 1.
type FileError struct {
	File         string
	Line, Column int
	Wrong        string
}

// Error is the place and what is wrong there.
func (e *FileError) Error() string {
	return fmt.Sprintf("%s:%d:%d: %s", e.File, e.Line, e.Column, e.Wrong)
}

// lines goes through a text line by line.
type lines struct {
	file, rest, line string
	number           int
}

func linesOf(file string, text []byte) (*lines, error) {
	if len(text) > MostBytes {
		return nil, &FileError{file, 1, 1, fmt.Sprintf("the file has %d bytes; a year of weather has at most %d", len(text), MostBytes)}
	}
	return &lines{file: file, rest: strings.TrimPrefix(string(text), "\ufeff")}, nil
}

// next takes the next line, without its end.
func (l *lines) next() bool {
	if l.rest == "" {
		return false
	}
	l.line, l.rest, _ = strings.Cut(l.rest, "\n")
	l.line = strings.TrimSuffix(l.line, "\r")
	l.number++
	return true
}

func (l *lines) fault(column int, format string, a ...any) error {
	return &FileError{l.file, l.number, column, fmt.Sprintf(format, a...)}
}

// cells are the fields of a line and where each begins.
type cells struct {
	of    *lines
	texts []string
}

func (l *lines) cells() cells { return cells{l, strings.Split(l.line, ",")} }

// column is where the i-th field begins, from 1.
func (c cells) column(i int) int {
	at := 1
	for _, text := range c.texts[:min(i, len(c.texts))] {
		at += len(text) + 1
	}
	return at
}

// number reads the i-th field, counted from 0, within limits.
func (c cells) number(i int, what string, low, high float64) (float64, error) {
	if i >= len(c.texts) {
		return 0, c.of.fault(len(c.of.line)+1, "the line ends before the %s", what)
	}
	text := strings.TrimSpace(c.texts[i])
	v, err := strconv.ParseFloat(text, 64)
	switch {
	case err != nil:
		return 0, c.of.fault(c.column(i), "`%s` is no number; expected the %s", clip(text), what)
	case !(v >= low && v <= high): // so that no NaN passes
		return 0, c.of.fault(c.column(i), "the %s is `%s`, which is missing or impossible; expected %g to %g", what, clip(text), low, high)
	}
	return v, nil
}

func clip(text string) string {
	if len(text) > 20 {
		text = text[:20] + "…"
	}
	return strings.ToValidUTF8(text, "?")
}

// want is a number that a line must hold.
type want struct {
	column    int
	what      string
	low, high float64
	to        *float64
}

func readAll(c cells, wanted []want) error {
	for _, w := range wanted {
		v, err := c.number(w.column, w.what, w.low, w.high)
		if err != nil {
			return err
		}
		*w.to = v
	}
	return nil
}

// columns are where a form keeps what is needed, counted from 0.
type columns struct{ temperature, humidity, global, beam, diffuse int }

// weather reads the five quantities of an hour. Instruments read a little below nought at night and a little above saturation: that is
// brought back to the limit.
func (c cells) weather(at columns, h *Hour) error {
	var temperature, humidity float64
	err := readAll(c, []want{
		{at.temperature, "air temperature", -90, 60, &temperature}, {at.humidity, "relative humidity", 0, 110, &humidity},
		{at.global, "global irradiance", -20, 1600, &h.Global}, {at.beam, "direct irradiance", -20, 1400, &h.Beam}, {at.diffuse, "diffuse irradiance", -20, 1000, &h.Diffuse},
	})
	if err != nil {
		return err
	}
	h.Temperature, h.Humidity = quantity.Temperature(temperature), quantity.Share(min(1, humidity/100))
	h.Global, h.Beam, h.Diffuse = max(0, h.Global), max(0, h.Beam), max(0, h.Diffuse)
	return nil
}
