package quantity

import (
	"fmt"
	"regexp"
	"strconv"
	"time"
)

// A Date is a day of the calendar between 1900 and 2199. The zero Date is no
// day. Dates may be compared with ==.
type Date struct {
	Year  int
	Month int // 1 to 12
	Day   int // 1 to 31
}

var dateText = regexp.MustCompile(`^(19|20|21)[0-9]{2}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$`)

var dates = Grammar{
	Name: "date", Says: "a date as year, month and day",
	Pattern: dateText.String(), Examples: []string{"2026-03-07", "2025-11-30"},
}

// ParseDate reads a text such as `2026-03-07`; the error is a *Fault.
func ParseDate(text string) (Date, error) {
	if d := dateFrom(text); d != (Date{}) && dateOf(d.midnight()) == d {
		return d, nil
	}
	fault := &Fault{Wrong: "`" + clip(text) + "` is not a date", Expected: "a date", Examples: dates.Examples}
	if !dateText.MatchString(text) {
		if t, err := time.Parse("2006-1-2", text); err == nil && t.Year() >= 1900 && t.Year() < 2200 {
			fault.Near = t.Format(time.DateOnly)
		}
		return Date{}, fault
	}
	fault.Wrong = "`" + text + "` is not in the calendar"
	return Date{}, fault
}

// dateFrom reads yyyy-mm-dd, perhaps of a day the calendar does not have; the
// zero Date when the text is no such thing.
func dateFrom(text string) Date {
	if len(text) != 10 || text[4] != '-' || text[7] != '-' {
		return Date{}
	}
	if digits(text[:4]) != 4 || digits(text[5:7]) != 2 || digits(text[8:]) != 2 {
		return Date{}
	}
	year, _ := strconv.Atoi(text[:4])
	month, _ := strconv.Atoi(text[5:7])
	day, _ := strconv.Atoi(text[8:])
	if year < 1900 || year > 2199 {
		return Date{}
	}
	return Date{year, month, day}
}

func dateOf(t time.Time) Date { return Date{t.Year(), int(t.Month()), t.Day()} }

// String is the canonical text, empty for the zero Date.
func (d Date) String() string {
	if d.IsZero() {
		return ""
	}
	return string([]byte{
		digit(d.Year / 1000), digit(d.Year / 100), digit(d.Year / 10), digit(d.Year), '-',
		digit(d.Month / 10), digit(d.Month), '-', digit(d.Day / 10), digit(d.Day),
	})
}

func digit(n int) byte { return byte('0' + n%10) }

// MarshalText writes the canonical text.
func (d Date) MarshalText() ([]byte, error) { return []byte(d.String()), nil }

// UnmarshalText reads what ParseDate reads.
func (d *Date) UnmarshalText(text []byte) error {
	got, err := ParseDate(string(text))
	if err == nil {
		*d = got
	}
	return err
}

// IsZero tells whether d is no day.
func (d Date) IsZero() bool { return d == Date{} }

// Compare is -1, 0 or 1 as d is before, on or after other.
func (d Date) Compare(other Date) int {
	a, b := d.number(), other.number()
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	}
	return 0
}

func (d Date) number() int { return d.Year*10000 + d.Month*100 + d.Day }

// Before tells whether d is an earlier day than other.
func (d Date) Before(other Date) bool { return d.Compare(other) < 0 }

// DaysSince is the number of days from earlier to d, negative if d is the earlier.
func (d Date) DaysSince(earlier Date) int {
	return int(d.midnight().Sub(earlier.midnight()).Hours() / 24)
}

// AddDays is the day n days after d.
func (d Date) AddDays(n int) Date { return dateOf(d.midnight().AddDate(0, 0, n)) }

// Weekday is the day of the week.
func (d Date) Weekday() time.Weekday { return d.midnight().Weekday() }

func (d Date) midnight() time.Time {
	return time.Date(d.Year, time.Month(d.Month), d.Day, 0, 0, 0, 0, time.UTC)
}

// Grammar says what is read as a Date.
func (Date) Grammar() Grammar { return dates }

// A Clock is a time of day in minutes after midnight, 0 to 1439.
type Clock int

var clockText = regexp.MustCompile(`^([01]?[0-9]|2[0-3]):[0-5][0-9]$`)

var clocks = Grammar{
	Name: "clock", Says: "a time of day",
	Pattern: clockText.String(), Examples: []string{"19:00", "07:30"},
}

// ParseClock reads a text such as `19:00`; the error is a *Fault.
func ParseClock(text string) (Clock, error) {
	if !clockText.MatchString(text) {
		return 0, &Fault{Wrong: "`" + clip(text) + "` is not a time of day", Expected: "a time of day", Examples: clocks.Examples}
	}
	colon := len(text) - 3
	h, _ := strconv.Atoi(text[:colon])
	m, _ := strconv.Atoi(text[colon+1:])
	return Clock(60*h + m), nil
}

// String is the canonical text with two digits each.
func (c Clock) String() string { return fmt.Sprintf("%02d:%02d", int(c)/60, int(c)%60) }

// MarshalText writes the canonical text.
func (c Clock) MarshalText() ([]byte, error) { return []byte(c.String()), nil }

// UnmarshalText reads what ParseClock reads.
func (c *Clock) UnmarshalText(text []byte) error {
	got, err := ParseClock(string(text))
	if err == nil {
		*c = got
	}
	return err
}

// Hours is the time of day in hours after midnight.
func (c Clock) Hours() Duration { return Duration(float64(c) / 60) }

// Grammar says what is read as a Clock.
func (Clock) Grammar() Grammar { return clocks }
