package circuit

// Which nodes there are, and which of them conductors and sources join to the reference. Loads do not count as a way:
// they draw, they do not feed.

// A plan numbers the nodes in the order in which they are named: sources, conductors, loads.
type plan struct {
	names  []string
	number map[string]int // by name
	live   []bool         // joined to the reference by closed conductors and sources
}

func (n Network) plan() (plan, error) {
	p := plan{number: map[string]int{}}
	p.add(n.Reference)
	for _, s := range n.Sources {
		p.add(s.From, s.To)
	}
	for _, c := range n.Conductors {
		p.add(c.From, c.To)
	}
	for _, l := range n.Loads {
		p.add(l.From, l.To)
	}
	p.live = p.reached(n, false)
	for k, ok := range p.reached(n, true) {
		if !ok {
			return p, &Fault{"node " + p.names[k], "neither conductor nor source leads from it to the reference " + n.Reference + ", so nothing feeds it"}
		}
	}
	return p, nil
}

func (p *plan) add(names ...string) {
	for _, name := range names {
		if _, known := p.number[name]; !known {
			p.number[name] = len(p.names)
			p.names = append(p.names, name)
		}
	}
}

// reached marks what is joined to the reference, by open conductors too where asked for.
func (p plan) reached(n Network, byOpen bool) []bool {
	ways := make([][]int, len(p.names))
	join := func(from, to string) {
		a, b := p.number[from], p.number[to]
		ways[a], ways[b] = append(ways[a], b), append(ways[b], a)
	}
	for _, s := range n.Sources {
		join(s.From, s.To)
	}
	for _, c := range n.Conductors {
		if byOpen || !c.Open {
			join(c.From, c.To)
		}
	}
	reached, queue := make([]bool, len(p.names)), []int{0}
	reached[0] = true
	for len(queue) > 0 {
		k := queue[0]
		queue = queue[1:]
		for _, next := range ways[k] {
			if !reached[next] {
				reached[next] = true
				queue = append(queue, next)
			}
		}
	}
	return reached
}

// alive says whether both ends of a part are joined to the reference.
func (p plan) alive(from, to string) bool { return p.live[p.number[from]] && p.live[p.number[to]] }
