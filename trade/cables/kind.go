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
