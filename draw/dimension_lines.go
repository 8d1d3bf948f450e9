package draw

// lines draws the dimension line, its ends, the extension lines and the small leaders.
func (set *setChain) lines() []Mark {
	at := set.axes.paper
	path := Line(at(set.from, set.line), at(set.to, set.line))
	for _, p := range set.stops {
		path = path.And(set.extension(p))
	}
	for i, p := range set.places {
		if p.raised {
			path = path.And(set.smallLeader(i))
		}
	}
	heads := Shape{Fill: FillQuiet}
	for i, s := range set.s {
		if set.Ends == Oblique {
			r := obliqueReach
			path = path.And(Line(at(s-r, set.line-r), at(s+r, set.line+r)))
			continue
		}
		if i > 0 {
			heads.Path = heads.Path.And(set.arrow(s, -1))
		}
		if i < len(set.s)-1 {
			heads.Path = heads.Path.And(set.arrow(s, 1))
		}
	}
	out := []Mark{Stroke(set.Pen, path)}
	if !heads.Path.Empty() {
		out = append(out, heads)
	}
	return out
}

// extension runs from a gap beside the thing to a little beyond the dimension line.
func (set *setChain) extension(p Point) Path {
	s, t := set.axes.local(p)
	side := 1.0
	if t > set.line {
		side = -1
	}
	start := t + side*extensionGap
	if (set.line-start)*side < 0 {
		start = set.line - side*extensionOver
	}
	return Line(set.axes.paper(s, start), set.axes.paper(s, set.line+side*extensionOver))
}

// arrow is a closed head with its tip at s, its body towards the given side.
func (set *setChain) arrow(s, side float64) Path {
	at := set.axes.paper
	return Polygon(at(s, set.line), at(s+side*arrowLength, set.line+arrowWidth/2), at(s+side*arrowLength, set.line-arrowWidth/2))
}

// smallLeader climbs from the middle of a piece past the lower row to a raised text.
func (set *setChain) smallLeader(i int) Path {
	p := set.places[i]
	s := set.middleOf(i)
	top := set.line + set.rowHeight()
	return Polyline(set.axes.paper(s, set.line), set.axes.paper(s, top-set.Size*0.15), set.axes.paper(p.s, top+textLift*0.6))
}

// middleOf is the middle of the piece that the i-th placed text belongs to.
func (set *setChain) middleOf(i int) float64 {
	seen := -1
	for k := range set.Texts {
		if set.Texts[k] == "" || k+1 >= len(set.s) {
			continue
		}
		if seen++; seen == i {
			return (set.s[k] + set.s[k+1]) / 2
		}
	}
	return set.places[i].s
}
