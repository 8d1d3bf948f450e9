package cli

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

// weatherYear is an hourly year in EPW form: each day from 5 to 17 °C, in winter 10 K colder.
func weatherYear() string {
	var b strings.Builder
	b.WriteString("LOCATION,Alp: \"high\",,CHE,own,0,46.1,7.2,1.0,1400\n" + strings.Repeat("x\n", 6) + "DATA PERIODS,1,1,Data,Sunday,1/1,12/31\n")
	for m, days := range []int{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31} {
		for d := 1; d <= days; d++ {
			for h := 1; h <= 24; h++ {
				t := 5 + abs(h-12)
				if m < 3 || m > 9 {
					t -= 10
				}
				fmt.Fprintf(&b, "2001,%d,%d,%d,60,?,%d,0,70,9,9,9,9,150,0,100\n", m+1, d, h, t)
			}
		}
	}
	return b.String()
}

func abs(n int) int { return max(n, -n) }

func TestAWeatherFileBecomesAPlaceOfTheDocument(t *testing.T) {
	file := filepath.Join(t.TempDir(), "alp.epw")
	if err := os.WriteFile(file, []byte(weatherYear()), 0o600); err != nil {
		t.Fatal(err)
	}
	var out, errs bytes.Buffer
	if code := Run([]string{"weather", file, "--as", "alp"}, nil, &out, &errs); code != exitWell {
		t.Fatalf("left %d: %s", code, errs.String())
	}
	text := "tumblehome: 1\nbuild: {title: T, rules: eu, currency: EUR}\nvehicle: {wheelbase: 3000, datum: 1300}\nshell: {}\n" + out.String()
	doc, _, err := build.Decode("t.yaml", []byte(text), catalogue.Builtin())
	if err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	night, _ := reckon.NewMachine().Reckon(doc, quantity.Date{}).Figure("climate.night.usual")
	if w := doc.Use.Weather["alp"]; night.Value != -5 || w.Called != `Alp: "high"` || w.Sun[0] != 3.6 || *w.Altitude != 1400 || *w.Clock != 1 {
		t.Errorf("nights of %g °C from %+v", night.Value, w)
	}
}

func TestAWeatherFileThatIsNoneIsRefused(t *testing.T) {
	folder := t.TempDir()
	file := filepath.Join(folder, "letter.csv")
	if err := os.WriteFile(file, []byte("Dear Sir or Madam,\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	for path, want := range map[string]string{file: "letter.csv:1:1: no line begins with time(UTC)", filepath.Join(folder, "none.epw"): "there is no such file", folder: "is a folder"} {
		var out, errs bytes.Buffer
		if code := Run([]string{"weather", path}, nil, &out, &errs); code != exitUnreadable || !strings.Contains(errs.String(), want) || out.Len() > 0 {
			t.Errorf("left %d and said %q, want %q", code, errs.String(), want)
		}
	}
}
