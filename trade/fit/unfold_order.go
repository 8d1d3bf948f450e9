package fit

import "slices"

// shortestOrder is the shortest order of moves after which every mover stands where it should, with some things taken away; breadth first over which have
// moved. A mover may go and come back to let another pass. One that is taken away itself need not move, if only other movers bar it.
func shortestOrder(movers []mover, away map[int]bool) ([]int, bool) {
	free := make([]bool, len(movers))
	var gone uint64
	for i, m := range movers {
		free[i] = !slices.ContainsFunc(m.walls, func(m meeting) bool { return !away[m.fitting] })
		if away[m.fitting] && free[i] {
			gone |= 1 << i
		}
	}
	goal := uint64(1)<<len(movers) - 1
	type step struct {
		from  uint64
		mover int8
	}
	came := map[uint64]step{gone: {mover: -1}}
	for queue := []uint64{gone}; len(queue) > 0; queue = queue[1:] {
		state := queue[0]
		if state == goal {
			return backFrom(goal, func(s uint64) (uint64, int) { return came[s].from, int(came[s].mover) }), true
		}
		for i, m := range movers {
			next := state ^ 1<<i
			barred := (m.fromBar&^state | m.toBar&state) &^ gone
			if _, seen := came[next]; seen || !free[i] || barred != 0 {
				continue
			}
			came[next] = step{state, int8(i)}
			queue = append(queue, next)
		}
	}
	return nil, false
}

// backFrom follows the steps back to where none was taken.
func backFrom(state uint64, step func(uint64) (uint64, int)) []int {
	var order []int
	for {
		from, mover := step(state)
		if mover < 0 {
			slices.Reverse(order)
			return order
		}
		order, state = append(order, mover), from
	}
}

// firstOrder lets each mover go as soon as it can, in turn; none goes back.
func firstOrder(movers []mover) ([]int, bool) {
	var order []int
	var state uint64
	for went := true; went; {
		went = false
		for i, m := range movers {
			if state>>i&1 == 0 && len(m.walls) == 0 && m.fromBar&^state|m.toBar&state == 0 {
				state |= 1 << i
				order, went = append(order, i), true
			}
		}
	}
	return order, len(order) == len(movers)
}

// mostSuspects is how many things are tried in turn as what bars the way.
const mostSuspects = 14

// smallestBar is the smallest set of things without which there is an order, at most three; empty if taking away fittings does not help.
func smallestBar(movers []mover) []int {
	suspects := suspectsOf(movers)
	for size := 1; size <= min(3, len(suspects)); size++ {
		if set := firstSet(suspects, size, map[int]bool{}, func(away map[int]bool) bool {
			_, ok := shortestOrder(movers, away)
			return ok
		}); set != nil {
			return set
		}
	}
	return nil
}

// suspectsOf are the things that anything meets on its way, those that do not move first.
func suspectsOf(movers []mover) []int {
	var suspects []int
	add := func(f int) {
		if f >= 0 && !slices.Contains(suspects, f) && len(suspects) < mostSuspects {
			suspects = append(suspects, f)
		}
	}
	for _, m := range movers {
		for _, wall := range m.walls {
			add(wall.fitting)
		}
	}
	for _, m := range movers {
		for j := range movers {
			if (m.fromBar|m.toBar)>>j&1 == 1 {
				add(movers[j].fitting)
			}
		}
	}
	return suspects
}

// firstSet is the first set of a size, in order, that helps.
func firstSet(from []int, size int, chosen map[int]bool, helps func(map[int]bool) bool) []int {
	if size == 0 {
		if !helps(chosen) {
			return nil
		}
		return []int{}
	}
	for i, f := range from {
		chosen[f] = true
		if rest := firstSet(from[i+1:], size-1, chosen, helps); rest != nil {
			return append([]int{f}, rest...)
		}
		delete(chosen, f)
	}
	return nil
}
