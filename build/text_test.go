package build_test

import (
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/catalogue"
)

func decodeFault(t *testing.T, text string) string {
	t.Helper()
	doc, _, err := build.Decode("van.yaml", []byte(text), catalogue.Builtin())
	if err == nil || doc != nil {
		t.Fatalf("taken, or half loaded:\n%s", text)
	}
	return err.Error()
}

func TestFaultsNameFileLineColumnAndPath(t *testing.T) {
	tests := []struct{ name, text, want string }{
		{"an unknown key stands at the key", base + "gaz: none\n", "van.yaml:14:1: unknown key `gaz`; did you mean `gas`?"},
		{"what refers into a misspelt section is not at fault", strings.Replace(base, "fittings:", "fitings:", 1) + "modes: {day: {take: {galley: rest}}}\n",
			"van.yaml:8:1: unknown key `fitings`; did you mean `fittings`?"},
		{"a wrong value stands at the value", strings.Replace(base, "3350", "wide", 1),
			"van.yaml:5:22: vehicle.wheelbase: `wide` is not a length; expected a length such as `3350`, `3.35 m` or `7 ft 2 in`"},
		{"a missing key stands at its map", strings.Replace(base, "wheelbase: 3350, ", "", 1), "van.yaml:5:10: vehicle: `wheelbase` is missing; expected front axle to rear axle"},
		{"a syntax fault has no path", base + "gas: [\n", "van.yaml:14:6: the list opened with [ is not closed"},
		{"a document that is no map", "just words\n", "van.yaml:1:1: `just words` stands alone; expected {tumblehome, build, people, use, …}"},
		{"a ring stands at its first fitting", strings.Replace(base, "{x: 40,", "{x: settle.rear,", 1),
			"van.yaml:9:11: fittings.galley: fittings stand on one another in a ring: galley → settle → galley"},
	}
	for _, tt := range tests {
		text := tt.text
		if strings.Contains(tt.name, "ring") {
			text = strings.Replace(text, "1010..2910", "galley.rear", 1)
		}
		if got := decodeFault(t, text); got != tt.want {
			t.Errorf("%s:\n got %s\nwant %s", tt.name, got, tt.want)
		}
	}
}

func TestAllFaultsAreReportedTogetherKindByKind(t *testing.T) {
	text := strings.NewReplacer("1830", "18 m", "mass: 84", "mas: 84", "own-lamp,", "own-lomp,", "950", "1 kg").Replace(base)
	want := strings.Join([]string{
		"van.yaml:4:32: people.tall: unknown key `mas`; expected called, stature, mass, stature-in, free, skills or note; did you mean `mass`?",
		"van.yaml:4:16: people.tall: `mass` is missing; expected mass with clothes",
		"van.yaml:9:60: fittings.galley.size.x: `1 kg` has the unknown unit `kg`; expected a length such as `3350`, `3.35 m` or `7 ft 2 in`",
		"van.yaml:11:15: fittings.lamp.buy: `own-lomp` is no row of the catalogue; did you mean `own-lamp`?",
		"van.yaml:4:26: people.tall.stature: `18 m` is too much; expected 400 to 2300",
	}, "\n")
	if got := decodeFault(t, text); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

func TestTwentyFaultsOfAKindAreEnough(t *testing.T) {
	var keys strings.Builder
	for i := range 60 {
		keys.WriteString("    wrong-" + string(rune('a'+i%26)) + string(rune('a'+i/26)) + ": 1\n")
	}
	_, _, err := build.Decode("f", []byte(base+"jobs:\n  cut:\n"+keys.String()), catalogue.Builtin())
	faults, ok := err.(build.Faults)
	if !ok || len(faults) != 20 {
		t.Errorf("got %d faults", len(faults))
	}
}

func TestCommentsThatAreNotKeptAreCounted(t *testing.T) {
	_, report, err := build.Decode("f", []byte("# one\n"+base+"gas: none # two\n"), catalogue.Builtin())
	if err != nil || report.Comments != 2 {
		t.Errorf("got %+v, %v", report, err)
	}
}

func TestTextsOfYAMLAreReadByThePlaceTheyStandIn(t *testing.T) {
	doc, _, err := build.Decode("f", []byte(strings.Replace(base, "title: Base", `title: 007, today: "2026-09-19", contingency: 12%`, 1)), catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	if doc.Build.Title != "007" || doc.Build.Today.String() != "2026-09-19" || doc.Build.Contingency.String() != "12 %" {
		t.Errorf("got %+v", doc.Build)
	}
	if yaml := string(build.WriteYAML(doc)); !strings.Contains(yaml, `title: "007"`) || !strings.Contains(yaml, "today: 2026-09-19") {
		t.Errorf("written:\n%s", yaml)
	}
}
