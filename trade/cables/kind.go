package cables

// Kind is how a fuse is made.
type Kind string

const (
	Unsaid  Kind = ""
	Blade   Kind = "blade" // mini and standard blade, ISO 8820-3 types F and C
	Maxi    Kind = "maxi"  // large blade, type E
	SF30    Kind = "sf30"  // bolt-down strip, ISO 8820-5, 30 mm between its bolts
	SF51    Kind = "sf51"  // bolt-down strip, ISO 8820-5, 51 mm
	Block   Kind = "block" // block on the battery's post
	ClassT  Kind = "class-t"
	Breaker Kind = "breaker" // resettable
)

// Words is a kind in the few words that a table has room for.
func (k Kind) Words() string {
	return map[Kind]string{Blade: "blade", Maxi: "large blade", SF30: "small strip", SF51: "large strip", Block: "post block", ClassT: "class T", Breaker: "breaker"}[k]
}
