package tree

// A document of all a builder owns has some thousands of values. What is far beyond is no build, and would cost whoever reads it minutes and
// gigabytes: the YAML library takes the square of the keys in one map, and two things in one spot are held against each other.
const (
	mostEntries = 5_000  // keys of one map, items of one list
	mostValues  = 60_000 // keys and items of a whole text
)

const (
	tooManyEntries = "more than 5000 entries in one map or list; no van holds so much"
	tooManyValues  = "more than 60 000 values in one document; no van holds so much"
)

// Marks are what stands between the values of a text. Values need at most five each; as many more may stand in sentences and comments.
const mostMarks = 10 * mostValues

var isMark = [256]bool{'\n': true, '\r': true, ',': true, ':': true, '[': true, ']': true, '{': true, '}': true, '&': true}

// refuseMarks counts before anything is read, since cutting some megabytes of nothing but marks into tokens alone takes seconds.
func refuseMarks(text []byte, faults *faultList) (ok bool) {
	count, line := 0, 1
	for _, c := range text {
		if c == '\n' {
			line++
		}
		if isMark[c] {
			count++
		}
		if count > mostMarks {
			faults.add(line, 1, tooManyValues)
			return false
		}
	}
	return true
}

func marksIn(text string) (count int) {
	for i := range len(text) {
		if isMark[text[i]] {
			count++
		}
	}
	return count
}

// TooMuch is where a tree holds more than a text may, and what to say of it; "" where it does not. What it lets pass can be written and
// read again.
func TooMuch(n *Node) (at *Node, says string) {
	values, marks := 0, 0
	return n.tooMuch(&values, &marks)
}

func (n *Node) tooMuch(values, marks *int) (at *Node, says string) {
	if n == nil {
		return nil, ""
	}
	if len(n.Entries) > mostEntries || len(n.Items) > mostEntries {
		return n, tooManyEntries
	}
	*values += len(n.Entries) + len(n.Items)
	if *marks += marksIn(n.Text); *values > mostValues || *marks > mostMarks/2 {
		return n, tooManyValues
	}
	for _, item := range n.Items {
		if at, says := item.tooMuch(values, marks); says != "" {
			return at, says
		}
	}
	for _, e := range n.Entries {
		*marks += marksIn(e.Key)
		if at, says := e.Value.tooMuch(values, marks); says != "" {
			return at, says
		}
	}
	return nil, ""
}
