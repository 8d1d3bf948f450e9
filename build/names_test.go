package build_test

import (
	"maps"
	"testing"

	"tumblehome/build"
)

func TestThingsOfOneNameAreToldApart(t *testing.T) {
	got := build.Names(map[string]build.Fitting{
		"locker-2": {Called: "tall open locker"}, "locker-10": {Called: "tall open locker"}, "side-galley": {}, "bed": {Called: "fixed bed"},
	})
	want := map[string]string{"locker-2": "tall open locker", "locker-10": "tall open locker (2)", "side-galley": "side galley", "bed": "fixed bed"}
	if !maps.Equal(got, want) {
		t.Errorf("%v, want %v", got, want)
	}
}
