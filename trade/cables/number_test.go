package cables_test

import (
	"encoding/json"
	"testing"

	"tumblehome/trade/cables"
)

func numbers(r cables.Result) map[string]string {
	out := map[string]string{}
	for _, c := range r.Cables {
		out[string(c.Role)+" "+c.ID] = c.Number
	}
	return out
}

func TestNumbersThatAreWrittenStandAndNewCablesTakeTheNextFreeOne(t *testing.T) {
	with := func(ids ...string) cables.Inputs {
		in := van()
		for _, id := range ids {
			in.Circuits = append(in.Circuits, circuit(id, cables.Light, 3, 4, section(1.5), fuse(5)))
		}
		return in
	}
	before := cables.Work(with("fridge", "lamp"))
	kept := with("aerial", "fridge", "lamp")
	kept.Banks[0].Number, kept.Banks[0].BondNumber = 1, 4
	kept.Circuits[1].Number, kept.Circuits[2].Number = 2, 3
	after := numbers(cables.Work(kept))
	for name, number := range numbers(before) {
		if after[name] != number {
			t.Errorf("%s was %s and is %s", name, number, after[name])
		}
	}
	if after["feed aerial"] != "W5" {
		t.Errorf("the new cable has the number %s", after["feed aerial"])
	}
}

func TestWhatKeepsTheNumbersWritesThoseOfAllCables(t *testing.T) {
	in := charged(cables.Engine, cables.Load{ID: "converter", Amps: 20})
	var patch, want any
	if err := json.Unmarshal(cables.Work(in).Kept(), &patch); err != nil {
		t.Fatal(err)
	}
	text := `{"power":{"batteries":{"house":{"number":1,"bond-number":5}},"circuits":{"lamp":{"number":2}},"sources":{"one":{"number":3,"lead":{"number":4}}}}}`
	if err := json.Unmarshal([]byte(text), &want); err != nil {
		t.Fatal(err)
	}
	if got, _ := json.Marshal(patch); string(got) != marshalled(want) {
		t.Errorf("it writes %s", got)
	}
	in.Banks[0].Number, in.Banks[0].BondNumber, in.Circuits[0].Number, in.Sources[0].Number, in.Sources[0].Lead.Number = 1, 5, 2, 3, 4
	if again := cables.Work(in).Kept(); again != nil {
		t.Errorf("all numbers are written, and it would write %s", again)
	}
}

func marshalled(v any) string {
	text, err := json.Marshal(v)
	if err != nil {
		return err.Error()
	}
	return string(text)
}
