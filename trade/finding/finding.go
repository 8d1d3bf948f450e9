package finding

import (
	"cmp"
	"encoding/json"
	"fmt"
	"slices"
)

// Severity says how bad a finding is, mildest first.
type Severity int

const (
	Note   Severity = iota // worth knowing
	Close                  // near a limit, or a limit of habit passed
	Fault                  // a limit passed: it does not work or is not allowed
	Danger                 // somebody can be hurt
)

var severityWords = [...]string{"note", "close", "fault", "danger"}

// String gives the severity's word.
func (s Severity) String() string {
	if s < Note || s > Danger {
		return fmt.Sprintf("severity(%d)", int(s))
	}
	return severityWords[s]
}

// MarshalText writes the severity's word.
func (s Severity) MarshalText() ([]byte, error) { return []byte(s.String()), nil }

// Measure is a value with its unit, both as the builder reads them.
type Measure struct {
	Value float64 `json:"value"`
	Unit  string  `json:"unit"`
}

// Source says where a limit or a formula comes from and how sure it is.
type Source struct {
	Text string `json:"text"` // standard and clause, paper, handbook; or "common practice, no source"
	Sure Sure   `json:"sure"`
}

// Sure grades a source.
type Sure string

const (
	Read     Sure = "read"            // read in the named source
	Memory   Sure = "from memory"     // believed, not looked up
	Practice Sure = "common practice" // a habit of the trade; no source
	Computed Sure = "computed"        // follows from figures of this build
)

// Proposal is an untried change that might clear a finding.
type Proposal struct {
	Words string          `json:"words"`
	Patch json.RawMessage `json:"patch"` // RFC 7396 merge patch on the document
}

// Finding is one truth about the build.
type Finding struct {
	Code      string     `json:"code"`     // such as fit.bed.length
	Severity  Severity   `json:"severity"` //
	About     []string   `json:"about"`    // JSON Pointers into the document (RFC 6901); the cause stands first
	Title     string     `json:"title"`    // one plain sentence without full stop
	Words     string     `json:"words"`    // what, why, how bad; plain words, rounded figures
	Measured  *Measure   `json:"measured,omitempty"`
	Limit     *Measure   `json:"limit,omitempty"`
	Source    Source     `json:"source"`
	Caution   string     `json:"caution,omitempty"` // the usual warning where somebody can be hurt
	Proposals []Proposal `json:"proposals,omitempty"`
	Accepted  string     `json:"accepted,omitempty"` // why the builder lives with it, if so
	Mode      string     `json:"mode,omitempty"`     // the mode of the van it appears in, if only there
}

// Key tells two findings apart: the same code about the same things.
func (f Finding) Key() string { return f.Code + fmt.Sprint(f.About) }

// Sort orders findings gravest first, then by code and by what they are about.
func Sort(all []Finding) {
	slices.SortStableFunc(all, func(a, b Finding) int {
		return cmp.Or(
			cmp.Compare(b.Severity, a.Severity),
			cmp.Compare(a.Code, b.Code),
			slices.Compare(a.About, b.About),
			cmp.Compare(a.Mode, b.Mode),
		)
	})
}

// Worst returns the gravest severity among findings nobody has accepted, and false when there are none.
func Worst(all []Finding) (Severity, bool) {
	worst, any := Note, false
	for _, f := range all {
		if f.Accepted == "" {
			worst, any = max(worst, f.Severity), true
		}
	}
	return worst, any
}
