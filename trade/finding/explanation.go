package finding

// Explanation says what a code means in general, for "show how" and for the book of codes.
type Explanation struct {
	Code    string // a code, or the beginning of one followed by .<id>
	Meaning string // what it says, in plain words
	Why     string // why it matters
	Clear   string // what usually clears it
}
