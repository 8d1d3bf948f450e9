package cables_test

import (
	"slices"
	"testing"

	"tumblehome/trade/cables"
	"tumblehome/trade/finding"
)

// 100 A are written for the main cable; a lamp of 3 A, an inverter and a kettle of 60 A each hang on it.
func TestTheMainCableIsReckonedWithAllThatHangsOnItAtOnce(t *testing.T) {
	for _, tt := range []struct {
		written, fuse float64
		want          finding.Severity
		found         bool
	}{{130, 200, 0, false}, {100, 200, finding.Close, true}, {100, 110, finding.Fault, true}} {
		in := van(circuit("lamp", cables.Light, 3, 4, section(1.5), fuse(5)), circuit("inverter", cables.Inverter, 60, 1, section(35), fuse(80)), circuit("kettle", cables.Other, 60, 1, section(35), fuse(80)))
		in.Circuits = append(in.Circuits, cables.Circuit{Way: cables.Way{ID: "main", About: "/power/circuits/main", Title: "main", Section: 50, Length: cables.Length{MM: 600, Known: cables.Measured}, Fuse: cables.Fuse{Away: -1}},
			From: "house", Current: tt.written})
		in.Banks[0].MainFuse = cables.Fuse{Said: true, Amps: tt.fuse, Kind: cables.ClassT, Away: -1, About: "/power/batteries/house/main-fuse"}
		r := cables.Work(in)
		if main := r.Cables[0]; main.Current < 123 {
			t.Errorf("%g A written: its row says %g A and loses what 123 A lose", tt.written, main.Current)
		}
		i := slices.IndexFunc(r.Findings(), func(f finding.Finding) bool { return f.Code == "power.current.low" })
		if (i >= 0) != tt.found || i >= 0 && r.Findings()[i].Severity != tt.want {
			t.Errorf("%g A written, a fuse of %g A: found at %d of %v", tt.written, tt.fuse, i, r.Findings())
		}
	}
}
