package quantity

// YesNo is an answer: yes or no, true or false.
type YesNo bool

var yesNos = Grammar{
	Name: "yes-no", Says: "yes or no",
	Pattern: "^(yes|no|true|false)$", Examples: []string{"yes", "no"},
}

// ParseYesNo reads `yes`, `no`, `true` and `false`; the error is a *Fault.
func ParseYesNo(text string) (YesNo, error) {
	switch text {
	case "yes", "true":
		return true, nil
	case "no", "false":
		return false, nil
	}
	return false, &Fault{
		Wrong: "`" + clip(text) + "` is neither yes nor no", Expected: "yes or no",
		Near: Near(text, []string{"yes", "no", "true", "false"}),
	}
}

// String is `yes` or `no`.
func (y YesNo) String() string {
	if y {
		return "yes"
	}
	return "no"
}

// MarshalText writes the canonical text.
func (y YesNo) MarshalText() ([]byte, error) { return []byte(y.String()), nil }

// UnmarshalText reads what ParseYesNo reads.
func (y *YesNo) UnmarshalText(text []byte) error {
	got, err := ParseYesNo(string(text))
	if err == nil {
		*y = got
	}
	return err
}

// Grammar says what is read as a YesNo.
func (YesNo) Grammar() Grammar { return yesNos }
