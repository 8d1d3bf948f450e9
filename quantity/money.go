package quantity

import (
	"regexp"
	"strings"

	"github.com/govalues/decimal"
)

// Money is an exact amount, with at most two digits after the point, in the
// build's own currency or, where Currency is not empty, in another one.
type Money struct {
	Amount   decimal.Decimal
	Currency string // three capital letters, empty for the build's own
}

var (
	moneyText = regexp.MustCompile(`^(-?[0-9]{1,12}(\.[0-9]{1,2})?)( *([A-Z]{3}))?$`)
	fineMoney = regexp.MustCompile(`^-?[0-9]+\.[0-9]{3,}( *[A-Z]{3})?$`)
	moneyTail = regexp.MustCompile(`^-?[0-9]+(\.[0-9]+)? *([^0-9 ].*)$`)
)

var moneys = Grammar{
	Name: "money", Says: "an amount of money, in the build's currency unless another is named", Number: true,
	Pattern: moneyText.String(), Examples: []string{"140", "61.50", "61.50 EUR"},
}

// ParseMoney reads a text such as `140`, `-22`, `61.50` or `61.50 EUR`; the error is a *Fault.
func ParseMoney(text string) (Money, error) {
	m := moneyText.FindStringSubmatch(text)
	if m == nil {
		return Money{}, moneyFault(text)
	}
	amount, err := decimal.Parse(m[1])
	if err != nil {
		return Money{}, moneyFault(text)
	}
	return Money{Amount: amount.Trim(0), Currency: m[4]}, nil
}

func moneyFault(text string) *Fault {
	f := &Fault{Wrong: "`" + clip(text) + "` is not an amount of money", Expected: "an amount", Examples: moneys.Examples}
	tail := moneyTail.FindStringSubmatch(text)
	switch {
	case text == "":
		f.Wrong = "nothing is written here"
	case commaGroups.MatchString(text):
		f.Wrong, f.Near = withGroups(text)
	case commaDecimal.MatchString(text):
		f.Wrong = "`" + clip(text) + "` has a comma; the decimal mark is a point"
		f.Near = commaDecimal.ReplaceAllString(text, "$1.$2")
	case fineMoney.MatchString(text):
		f.Wrong = "`" + clip(text) + "` has more than two digits after the point"
	case exponent.MatchString(text):
		f.Wrong = "`" + text + "` is written with an exponent; write it out"
	case tail != nil && len(tail[2]) == 3:
		f.Near = strings.TrimSuffix(text, tail[2]) + strings.ToUpper(tail[2])
	}
	return f
}

// String is `140`, `61.50` or `61.50 EUR`: whole, or with both digits.
func (m Money) String() string {
	amount := m.Amount.Trim(0)
	if amount.Scale() > 0 {
		amount = amount.Pad(2)
	}
	if m.Currency == "" {
		return amount.String()
	}
	return amount.String() + " " + m.Currency
}

// MarshalText writes the canonical text.
func (m Money) MarshalText() ([]byte, error) { return []byte(m.String()), nil }

// UnmarshalText reads what ParseMoney reads.
func (m *Money) UnmarshalText(text []byte) (err error) {
	got, err := ParseMoney(string(text))
	if err == nil {
		*m = got
	}
	return err
}

// Float is the amount as a number, for sums that need no cents.
func (m Money) Float() float64 {
	f, _ := m.Amount.Float64()
	return f
}

// Grammar says what is read as Money.
func (Money) Grammar() Grammar { return moneys }

// of is v in m's currency, to the cent; beyond what a decimal holds it is nought.
func (m Money) of(v float64) Money {
	d, err := decimal.NewFromFloat64(v)
	if err != nil {
		return Money{Currency: m.Currency}
	}
	return Money{Amount: d.Round(2).Trim(0), Currency: m.Currency}
}

func (Money) parse(text string) (Money, error) { return ParseMoney(text) }
