package quantity

import (
	"regexp"
	"strings"
)

// A Grammar says which texts are read as a quantity, for schemas and help.
type Grammar struct {
	Name     string   // "length"
	Says     string   // "a length in mm, or with one of the units mm, cm, m …"
	Pattern  string   // regular expression of the text (ECMA 262 and RE2 alike)
	Number   bool     // a bare number is read as well
	Examples []string // texts that are read
}

const (
	numberPattern   = `[0-9]+(\.[0-9]+)?`
	fractionPattern = `([0-9]+ +)?[0-9]{1,4}/[0-9]{1,4}`
)

// Grammar made from the units; it is a little wider than parse, which also
// holds the number to its size.
func (k *kind) grammar() Grammar {
	says := k.says
	if k.bare {
		says += ", a bare number is " + k.units[0].name
	}
	return Grammar{
		Name: k.name, Number: k.bare, Examples: k.examples,
		Says:    says + "; units " + strings.Join(k.unitNames(), ", "),
		Pattern: "^" + k.pattern() + "$",
	}
}

func (k *kind) pattern() string {
	names, fractions, forms := []string{}, []string{}, []string{}
	for _, u := range k.units {
		names = append(names, regexp.QuoteMeta(u.name))
		if u.halves {
			fractions = append(fractions, u.name)
		}
	}
	with := numberPattern + " *(" + strings.Join(names, "|") + ")"
	if k.bare {
		with = numberPattern + "( *(" + strings.Join(names, "|") + "))?"
	}
	forms = append(forms, with)
	if len(fractions) > 0 {
		forms = append(forms, fractionPattern+" *("+strings.Join(fractions, "|")+")")
	}
	for _, u := range k.units {
		if u.then != "" {
			forms = append(forms, k.pairPattern(u))
		}
	}
	return "-?(" + strings.Join(forms, "|") + ")"
}

func (k *kind) pairPattern(u unit) string {
	one := numberPattern
	if u.halves {
		one = "(" + numberPattern + "|" + fractionPattern + ")"
	}
	return one + " *" + u.name + " *" + one + " *" + u.then
}
