package web

import (
	"fmt"
	"strconv"

	"tumblehome/build"
	"tumblehome/internal/words"
	"tumblehome/trade/arrangement"
)

// whereabouts says where a fitting is in the mode shown, from the finished front, as a person with a tape would.
func (v view) whereabouts(id string, f build.Fitting) string {
	s := v.standing(id)
	frame := v.frameWords(f)
	switch {
	case s == nil:
		return frame
	case s.Undecided != "":
		return capital(s.Undecided) + "."
	case s.Off:
		return "Out of the van in this mode."
	case !s.Placed():
		return frame
	}
	text := boxWords(s.Box, v.acrossWords(s.Box))
	if frame != "" {
		text = frame + "; " + text
	}
	if s.Moved {
		text += ", not where it rests"
	}
	text = capital(text) + "."
	if why := v.keptOff(f, s.Box); why != "" && !s.Moved {
		text += " " + why
	}
	return text
}

func (v view) frameWords(f build.Fitting) string {
	switch {
	case f.In != "":
		return "in " + v.name(f.In)
	case f.Upon != "":
		return "upon " + v.name(f.Upon)
	case f.For != "":
		return "at " + pathWords(f.For)
	case f.Where != "":
		return map[string]string{"outside": "outside", "under": "under the floor", "cab": "in the cab"}[f.Where]
	}
	return ""
}

// boxWords says where a box is as a tape would: "1000 to 2900 from the front, 640 wide on the right, 0 to 430 up".
func boxWords(b arrangement.Box, across string) string {
	return fmt.Sprintf("%s to %s from the front, %s wide %s, %s to %s up",
		tapeWordsOf(b.MinX), tapeWordsOf(b.MaxX), tapeWordsOf(b.MaxY-b.MinY), across, tapeWordsOf(b.MinZ), tapeWordsOf(b.MaxZ))
}

func tapeWordsOf(v float64) string { return strconv.FormatFloat(words.Round(v, "mm"), 'f', 0, 64) }

// acrossWords says where a box is across: on one side, at a wall, or so far from the left wall as it is at half the box's height.
func (v view) acrossWords(b arrangement.Box) string {
	switch {
	case b.MinY >= 0:
		return "on the right"
	case b.MaxY <= 0:
		return "on the left"
	}
	x, z := (b.MinX+b.MaxX)/2, (b.MinZ+b.MaxZ)/2
	room := v.Reckoning.Lining.Room
	left, right := b.MinY-room.Left(x, z), room.Right(x, z)-b.MaxY
	switch {
	case left <= atWall && right <= atWall:
		return "from wall to wall"
	case left <= atWall:
		return "at the left wall"
	case right <= atWall:
		return "at the right wall"
	}
	return tapeWordsOf(left) + " from the left wall"
}

// atWall is how near a wall a thing stands at it: a panel that is not quite straight leaves as much [mm].
const atWall = 50.0
