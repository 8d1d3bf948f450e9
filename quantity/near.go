package quantity

// Near returns the candidate that word was most probably meant to be, or ""
// when none is close: at most one slip in a word of up to six letters, two in
// longer ones, three from eleven letters on, and never in half of the letters.
// A slip is a letter missing, extra, wrong, or two neighbours swapped (optimal
// string alignment distance, Damerau 1964). A candidate that continues the
// word, or that the word continues, is taken when no slip explains it. The first
// candidate wins a tie.
func Near(word string, candidates []string) string {
	best, bestSlips := "", slipsAllowed(word)+1
	for _, c := range candidates {
		if d := len(c) - len(word); d >= bestSlips || -d >= bestSlips {
			continue
		}
		if s := slips(word, c); s < bestSlips && 2*s < max(len(word), len(c)) {
			best, bestSlips = c, s
		}
	}
	if best != "" || len(word) < 4 {
		return best
	}
	for _, c := range candidates {
		if len(c) >= 4 && (hasPrefix(c, word) || hasPrefix(word, c)) {
			return c
		}
	}
	return ""
}

func hasPrefix(s, p string) bool { return len(s) >= len(p) && s[:len(p)] == p }

func slipsAllowed(word string) int {
	switch n := len(word); {
	case n <= 6:
		return 1
	case n <= 10:
		return 2
	}
	return 3
}

// slips is the optimal string alignment distance of a and b, in bytes.
func slips(a, b string) int {
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}
