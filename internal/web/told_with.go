package web

import (
	"fmt"
	"math"
	"strings"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/internal/words"
	"tumblehome/reckon"
	"tumblehome/trade/arrangement"
	"tumblehome/trade/finding"
)

const (
	noticed  = 5.0 // a smaller move or stretch is not told [mm]
	mostWith = 3   // things named in one sentence: more are counted
)

// withIt names the things that nobody touched and that changed all the same, since they are tied to one that was: "galley 865 mm → 1 585 mm
// long". A change of the body or the lining moves everything, and goes without saying; so does what is carried along.
func withIt(from, to *reckon.Reckoning) string {
	was, is := from.Written(), to.Written()
	if !tree.Equal(was.Get("shell"), is.Get("shell")) || !tree.Equal(was.Get("lining"), is.Get("lining")) {
		return ""
	}
	var told []string
	names := build.Names(to.Document.Fittings)
	for _, id := range build.SortedKeys(to.Document.Fittings) {
		at := tree.PointerTo("fittings", id)
		if !tree.Equal(was.At(at), is.At(at)) {
			continue
		}
		f, a, b := to.Document.Fittings[id], from.Places.Find(id), to.Places.Find(id)
		if a == nil || b == nil || !a.Placed() || !b.Placed() {
			continue
		}
		if text := changedWords(a.Box, b.Box, f.In != "" || f.Upon != "" || f.For != ""); text != "" {
			told = append(told, finding.SetOff(names[id])+" "+text)
		}
	}
	if n := len(told); n > mostWith {
		told = append(told[:mostWith-1:mostWith-1], count(n-mostWith+1)+" more things")
	}
	return strings.Join(told, ", ")
}

// changedWords say how a box has changed: its sizes, else where it went, unless it was carried there.
func changedWords(a, b arrangement.Box, carried bool) string {
	var sizes []string
	for _, one := range []struct {
		was, is float64
		word    string
	}{{a.MaxX - a.MinX, b.MaxX - b.MinX, "long"}, {a.MaxY - a.MinY, b.MaxY - b.MinY, "wide"}, {a.MaxZ - a.MinZ, b.MaxZ - b.MinZ, "high"}} {
		if math.Abs(one.is-one.was) >= noticed {
			sizes = append(sizes, fmt.Sprintf("%s → %s %s", words.Amount(one.was, "mm"), words.Amount(one.is, "mm"), one.word))
		}
	}
	if len(sizes) > 0 || carried {
		return strings.Join(sizes, " and ")
	}
	var ways []string
	say := func(by float64, more, less string) {
		if math.Abs(by) >= noticed {
			ways = append(ways, wholeMM(math.Abs(by))+" "+map[bool]string{true: more, false: less}[by > 0])
		}
	}
	say(b.MinX-a.MinX, "rearwards", "forwards")
	say(b.MinY-a.MinY, "to the right", "to the left")
	say(b.MinZ-a.MinZ, "up", "down")
	return strings.Join(ways, " and ")
}
