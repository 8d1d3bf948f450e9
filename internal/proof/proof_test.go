package proof_test

import (
	"math"
	"os"
	"strings"
	"testing"

	"tumblehome/internal/proof"
)

// spy stands in for a test so that a failing case can be watched failing.
type spy struct {
	testing.TB
	errors []string
}

func (s *spy) Helper()        {}
func (s *spy) Name() string   { return "TestSpy" }
func (s *spy) Error(a ...any) { s.errors = append(s.errors, a[0].(string)) }

func good() proof.Case {
	return proof.Case{
		Name:   "rear axle gains from a locker behind it",
		Source: "a vehicle handbook's worked example, 100 kg at 450 cm on a wheelbase of 325 cm",
		Inputs: "m 100 kg, x 450 cm, L 325 cm", Expected: 138.5, Got: 100 * 450.0 / 325,
		Tolerance: 0.05, Unit: "kg",
	}
}

func TestACaseHoldsOnlyWhenItIsCompleteAndCloseEnough(t *testing.T) {
	tests := []struct {
		name  string
		spoil func(*proof.Case)
		fault string
	}{
		{"a figure within the tolerance holds", func(*proof.Case) {}, ""},
		{"a figure at the tolerance holds", func(c *proof.Case) { c.Expected, c.Got, c.Tolerance = 1, 1.5, 0.5 }, ""},
		{"a figure beyond the tolerance fails with both figures", func(c *proof.Case) { c.Got = 138.6 }, "got 138.6 kg"},
		{"a case without a source fails", func(c *proof.Case) { c.Source = "" }, "no source"},
		{"a case without a name fails", func(c *proof.Case) { c.Name = "" }, "no name"},
		{"a case without a unit fails", func(c *proof.Case) { c.Unit = "" }, "no unit"},
		{"a figure that is no number fails", func(c *proof.Case) { c.Got = math.NaN() }, "not all are usable"},
		{"an endless tolerance fails", func(c *proof.Case) { c.Tolerance = math.Inf(1) }, "not all are usable"},
		{"a negative tolerance fails", func(c *proof.Case) { c.Tolerance = -1 }, "not all are usable"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			c := good()
			tt.spoil(&c)
			s := &spy{TB: t}
			t.Setenv(proof.Folder, "")
			proof.Check(s, c)
			got := strings.Join(s.errors, "; ")
			if (tt.fault == "") != (got == "") || !strings.Contains(got, tt.fault) {
				t.Errorf("got fault %q, want one with %q", got, tt.fault)
			}
		})
	}
}

func TestCasesAreWrittenAndPrintedAsOneTable(t *testing.T) {
	folder := t.TempDir()
	t.Setenv(proof.Folder, folder)
	bad := good()
	bad.Name, bad.Got = "a figure far off", math.NaN()
	s := &spy{TB: t}
	large := good()
	large.Name, large.Expected, large.Got, large.Tolerance = "a large area", 2156214, 2156216, 21.6
	proof.Check(s, good())
	proof.Check(s, bad)
	proof.Check(s, large)

	records, err := proof.Read(folder)
	if err != nil {
		t.Fatal(err)
	}
	if len(records) != 3 || records[0].Package != "internal/proof" || records[0].Test != "TestSpy" {
		t.Fatalf("read back %+v", records)
	}
	var table strings.Builder
	failed, err := proof.Table(&table, records)
	if err != nil || failed != 1 {
		t.Errorf("failed %d, error %v; want 1 and none", failed, err)
	}
	for _, want := range []string{"internal/proof", "138.462", "2156210", "0.05", "FAILS", "a vehicle handbook", "3 figures checked", "1 do not hold"} {
		if !strings.Contains(table.String(), want) {
			t.Errorf("the table lacks %q:\n%s", want, table.String())
		}
	}
}

func TestABrokenLineIsNamedByFileAndLine(t *testing.T) {
	folder := t.TempDir()
	if err := os.WriteFile(folder+"/x.jsonl", []byte("{}\n{\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	if _, err := proof.Read(folder); err == nil || !strings.Contains(err.Error(), "x.jsonl:2") {
		t.Errorf("got %v, want an error naming x.jsonl:2", err)
	}
}
