package climate

import "bytes"

// ReadWeather reads an hourly year in either form, told apart by how the file begins.
func ReadWeather(file string, text []byte) (*Series, error) {
	if bytes.HasPrefix(bytes.TrimPrefix(text, []byte("\ufeff")), []byte("LOCATION,")) {
		return ReadEPW(file, text)
	}
	return ReadTypicalYear(file, text)
}
