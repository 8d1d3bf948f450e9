package web_test

import (
	"net/url"
	"strconv"
)

// form writes names and values as a form sends them.
func form(pairs ...string) string {
	values := url.Values{}
	for i := 0; i+1 < len(pairs); i += 2 {
		values.Add(pairs[i], pairs[i+1])
	}
	return values.Encode()
}

func count(n int) string { return strconv.Itoa(n) }
