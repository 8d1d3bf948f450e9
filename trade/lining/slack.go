package lining

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

// slackBoard is one thin board that goes too far without a batten, with all the surfaces on which it does.
type slackBoard struct {
	name     string
	about    []string
	surfaces []string
	span     float64 // mm, the widest of them
	where    string
}

// slack finds thin boards that go from rib to rib without a batten, one finding for a board: on three surfaces it is one mistake.
func (l *laid) slack() []finding.Finding {
	var boards []*slackBoard
	for _, surface := range []string{Left, Right, Roof} {
		for i := range l.in.Layers[surface] {
			layer := &l.in.Layers[surface][i]
			if layer.Of.Kind != Board || layer.thick() <= 0 || layer.thick() > thinBoard || battened(l.in.Layers[surface][:i]) {
				continue
			}
			if span, where := l.widest(surface); span > boardSpan {
				boards = slackOn(boards, layer, surface, span, where)
			}
		}
	}
	var found []finding.Finding
	for _, b := range boards {
		found = append(found, b.finding())
	}
	return found
}

// widest is the bay of a surface with the farthest ribs, and how far they are apart [mm].
func (l *laid) widest(surface string) (span float64, where string) {
	for _, f := range l.fields[surface] {
		if clear := f.bay.To - f.bay.From - f.bay.Steel; clear > span && f.bay.Depth > 0 {
			span, where = clear, f.bay.ID
		}
	}
	return span, where
}

// slackOn notes a board of a surface with those of its kind.
func slackOn(boards []*slackBoard, layer *Layer, surface string, span float64, where string) []*slackBoard {
	i := slices.IndexFunc(boards, func(b *slackBoard) bool { return b.name == layer.Of.name() })
	if i < 0 {
		i = len(boards)
		boards = append(boards, &slackBoard{name: layer.Of.name()})
	}
	b := boards[i]
	if !slices.Contains(b.about, layer.Pointer) {
		b.about = append(b.about, layer.Pointer)
	}
	if !slices.Contains(b.surfaces, surface) {
		b.surfaces = append(b.surfaces, surface)
	}
	if span > b.span {
		b.span, b.where = span, where
	}
	return boards
}

func (b *slackBoard) finding() finding.Finding {
	goes, on := "goes", b.surfaces[0]
	if n := len(b.surfaces); n > 1 {
		goes, on = "goes up to", strings.Join(b.surfaces[:n-1], ", the ")+" and the "+b.surfaces[n-1]
	}
	return finding.Finding{Code: "lining.board-slack", Severity: finding.Note, About: b.about,
		Title:    fmt.Sprintf("%s %s %s mm from rib to rib on the %s without a batten", b.name, goes, quantity.Parted(math.Round(b.span/5)*5), on),
		Words:    fmt.Sprintf("The widest is %s. Boards of 3.6 to 6 mm want a batten every 300 to 400 mm, or they drum and bulge.", b.where),
		Measured: &finding.Measure{Value: b.span, Unit: "mm"}, Limit: &finding.Measure{Value: boardSpan, Unit: "mm"}, Source: practice}
}

// battened says whether one of the layers is or holds battens.
func battened(layers []Layer) bool {
	return slices.ContainsFunc(layers, func(l Layer) bool { return l.Of.Kind == Batten || l.Between != nil })
}
