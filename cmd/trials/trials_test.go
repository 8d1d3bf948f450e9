package main

import (
	"fmt"
	"math"
	"os"
	"strings"
	"testing"
)

func TestTrialsAreListedAndUnknownOnesRefused(t *testing.T) {
	var out strings.Builder
	if err := run(&out, nil); err != nil || !strings.Contains(out.String(), "conduction") {
		t.Errorf("got %q, %v, want a list", out.String(), err)
	}
	if err := run(&out, []string{"alchemy"}); err == nil || !strings.Contains(err.Error(), "alchemy") {
		t.Errorf("got %v, want an error that names alchemy", err)
	}
}

func TestTheConductionTrialFindsNoFigureTooFarOff(t *testing.T) {
	t.Chdir("../..")
	var out strings.Builder
	if err := printCases(&out); err != nil {
		t.Fatal(err)
	}
	if strings.Contains(out.String(), "TOO FAR") || strings.Count(out.String(), "ISO 10211 case") < 2 {
		t.Error(out.String())
	}
}

func TestTheSkyTrialFindsNoFigureTooFarOffAndSaysWhatIsMissing(t *testing.T) {
	t.Chdir("../..")
	var out strings.Builder
	if err := run(&out, []string{"sky"}); err != nil {
		t.Fatal(err)
	}
	if err := run(&out, []string{"sky", "-hourly", t.TempDir()}); err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"elevation", "sunset", "drawn years are not compared", "hot-las-vegas.csv is not there"} {
		if !strings.Contains(out.String(), want) {
			t.Errorf("the trial lacks %q:\n%s", want, out.String())
		}
	}
	if strings.Contains(out.String(), "TOO FAR") {
		t.Error(out.String())
	}
}

func TestTheSkyTrialReadsAnHourlyYearAndDrawsBesideIt(t *testing.T) {
	folder := t.TempDir()
	var file strings.Builder
	fmt.Fprintln(&file, "month,day,hour_ending,t_c,rh_pct,ghi_w_m2")
	outside := outsideYear(36.08, -115.15, -8)
	for h, o := range outside {
		fmt.Fprintf(&file, "1,1,1,%d,50,%.1f\n", h%24, 0.5*o)
	}
	if err := os.WriteFile(folder+"/hot-las-vegas.csv", []byte(file.String()), 0o644); err != nil {
		t.Fatal(err)
	}
	found, err := readHourly(folder + "/hot-las-vegas.csv")
	if err != nil || math.Abs(average(found.Temperature)-11.5) > 1e-9 || math.Abs(average(found.Sunlight)/average(outside)-0.5) > 1e-3 {
		t.Fatalf("read %d hours of temperature, %v", len(found.Temperature), err)
	}
	if got := portraitOf(found, outside); got[1].value > 1e-3 || got[10].value != 23 {
		t.Errorf("a year of even days has the portrait %v", got)
	}
}
func TestTheCircuitTrialFindsNoFigureTooFarOff(t *testing.T) {
	t.Chdir("../..")
	var out strings.Builder
	if err := printNetworks(&out); err != nil {
		t.Fatal(err)
	}
	if strings.Contains(out.String(), "TOO FAR") || strings.Count(out.String(), "\ntree ") != 50 || strings.Count(out.String(), "\nbranched network") != 5 {
		t.Error(out.String())
	}
}

func TestThePowerTrialPrintsEveryPlace(t *testing.T) {
	t.Chdir("../..")
	var out strings.Builder
	if err := run(&out, []string{"power", "-hourly", t.TempDir()}); err != nil {
		t.Fatal(err)
	}
	if strings.Count(out.String(), "left out") != 3 || !strings.Contains(out.String(), "Seattle") {
		t.Error(out.String())
	}
}
