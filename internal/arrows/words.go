package arrows

import (
	"fmt"
	"strings"
	"unicode"
)

// TradeWords are the words that mathematics does without. Words with a plain
// meaning in mathematics or physics ("arch", "battery", "board", "shell") are not among them.
var TradeWords = words(`
	axle axles bed beds bench builder builders bulkhead bunk bunks cabin camper campers carpet cupboard
	cushion drawer drawers fitting fittings fridge furniture galley kitchen lining linings locker
	mattress motorhome payload plywood rib ribs seat seats settle sleeper sleepers tyre tyres van
	vans vehicle vehicles wardrobe weekend wheel wheels wheelbase windscreen worktop`)

func words(text string) map[string]bool {
	set := map[string]bool{}
	for _, w := range strings.Fields(text) {
		set[w] = true
	}
	return set
}

// TradeTalk lists every trade word of a source text with its line, also
// within names such as bedWidth.
func TradeTalk(source string) (found []string) {
	for i, line := range strings.Split(source, "\n") {
		for _, w := range split(line) {
			if TradeWords[w] {
				found = append(found, fmt.Sprintf("line %d: %q", i+1, w))
			}
		}
	}
	return found
}

// split gives the lower-case words of a line, names in camel case taken apart.
func split(line string) (parts []string) {
	var word []rune
	end := func() {
		if len(word) > 0 {
			parts = append(parts, strings.ToLower(string(word)))
		}
		word = word[:0]
	}
	for _, r := range line {
		switch {
		case !unicode.IsLetter(r):
			end()
			continue
		case unicode.IsUpper(r) && len(word) > 0 && unicode.IsLower(word[len(word)-1]):
			end()
		}
		word = append(word, r)
	}
	end()
	return parts
}
