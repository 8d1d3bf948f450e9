package fit

import "slices"

// crossing is where one passes on foot or crawling in a mode: every cell has the number of the part of the floor within which one gets about, 0
// where one does not pass.
type crossing struct {
	pass []bool
	part []int32
}

// crawlAt is a mode, as it will be or with only what is in the van today.
type crawlAt struct {
	mode  string
	today bool
}

// crossing of a mode, worked out once, and not again while nothing changes that one crawls over or around.
func (w *worker) crossing(mode *Mode, today bool) *crossing {
	at := crawlAt{mode.Name, today}
	if c := w.now.crawls[at]; c != nil {
		return c
	}
	c := w.was.crawls[at]
	i0, i1 := w.rowsChanged(mode, func(i int) bool { return w.hard(i) || w.in.Fittings[i].Rests })
	if c == nil {
		i0, i1 = 0, w.ground().nx-1
	}
	if i0 <= i1 {
		pass := w.passable(mode, today, c, i0, i1)
		if c == nil || !slices.Equal(pass, c.pass) {
			c = &crossing{pass, connected(pass, w.ground().nx, w.ground().ny)}
		}
	}
	w.now.crawls[at] = c
	return c
}

// connected numbers the parts of a grid that hang together by sides or corners, from 1; 0 is shut. Each run of open cells in a row joins the runs
// it touches in the row before: Hoshen and Kopelman's way, Physical Review B 14 (1976) 3438-3445 (from memory).
func connected(open []bool, nx, ny int) []int32 {
	part, root := make([]int32, len(open)), []int32{0}
	find := func(a int32) int32 {
		for root[a] != a {
			root[a] = root[root[a]]
			a = root[a]
		}
		return a
	}
	for i := range nx {
		for j := range ny {
			c := i*ny + j
			if !open[c] {
				continue
			}
			if j > 0 && open[c-1] {
				part[c] = part[c-1]
			} else {
				part[c] = int32(len(root))
				root = append(root, part[c])
			}
			for k := max(0, j-1); i > 0 && k <= min(ny-1, j+1); k++ {
				if other := part[c-ny-j+k]; other != 0 && other != part[c] {
					root[find(part[c])] = find(other)
				}
			}
		}
	}
	for c, p := range part {
		part[c] = find(p)
	}
	return part
}

// comes says whether one who gets about on some parts of the floor comes to an opening: to its step, or beneath or onto it.
func (c *crossing) comes(g *Ground, parts []int32, o Opening) bool {
	x0, x1, y0, y1 := g.step(o)
	for i := x0; i <= x1; i++ {
		for j := y0; j <= y1; j++ {
			if p := c.part[i*g.ny+j]; p != 0 && slices.Contains(parts, p) {
				return true
			}
		}
	}
	return false
}
