package web

import (
	"fmt"
	"net/http"
	"sync"

	"github.com/a-h/templ"

	"tumblehome/draw/sheet"
	"tumblehome/internal/words"
	"tumblehome/trade/power"
)

// kitChart is the chart of batteries and panels, worked out when somebody asks for it.
type kitChart struct {
	mu       sync.Mutex
	revision int // that it is or will be for; 0 until somebody asked
	done, of int
	chart    *power.Chart // nil until it is done
}

// progress is how far it is.
type progress struct {
	Revision, Done, Of int
	Chart              *power.Chart
}

func (p progress) Running() bool { return p.Revision > 0 && p.Chart == nil }

func (k *kitChart) look() progress {
	k.mu.Lock()
	defer k.mu.Unlock()
	return progress{k.revision, k.done, k.of, k.chart}
}

// begin reports whether there is something to begin: not while it is under way, nor again for the same revision.
func (k *kitChart) begin(revision int) bool {
	k.mu.Lock()
	defer k.mu.Unlock()
	if k.revision > 0 && (k.chart == nil || k.revision == revision) {
		return false
	}
	k.revision, k.done, k.of, k.chart = revision, 0, 1, nil
	return true
}

func (k *kitChart) advance(done, of int) {
	k.mu.Lock()
	defer k.mu.Unlock()
	k.done, k.of = done, of
}

func (k *kitChart) finish(c power.Chart) {
	k.mu.Lock()
	defer k.mu.Unlock()
	k.chart = &c
}

// askKit sets the work on the chart going; the pages are told as it goes on.
func (s *Server) askKit(w http.ResponseWriter, r *http.Request) {
	now, err := s.desk.head(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	if s.desk.kit.begin(now.Revision.N) {
		go s.desk.drawKit(now)
	}
	http.Redirect(w, r, "/power#kit", http.StatusSeeOther)
}

// toldEvery is after how large a share of the work the pages are told again.
const toldEvery = 12

func (d *desk) drawKit(now *state) {
	told := 0
	chart := now.PowerChart(func(done, of int) {
		d.kit.advance(done, of)
		if part := done * toldEvery / of; part > told {
			told = part
			d.tellOf("kit")
		}
	})
	d.kit.finish(chart)
	d.tellOf("kit")
}

// tellOf tells the pages that more of the newest revision is worked out.
func (d *desk) tellOf(stage string) {
	d.news.tell(bulletin{Revision: d.now.Load().Revision.N, Stages: append(stagesAtHand[:len(stagesAtHand):len(stagesAtHand)], stage)})
}

func (v view) kit() progress { return v.server.desk.kit.look() }

func kitDrawing(c *power.Chart, phone bool) templ.Component {
	return svgOf(sheet.PowerKit(*c, paperWide(phone)), sized("power-kit", phone))
}

// kitAnswer says in words what the chart shows.
func kitAnswer(v view, c *power.Chart) string {
	text := fmt.Sprintf("Your %s and %s: %s of a hundred nights flat; you want %.0f at most.", words.Amount(c.Own[0], "Ah"), words.Amount(c.Own[1], "W"), nightsOf(c.OwnShare), 100*c.Promise)
	switch {
	case c.Kit == nil:
		return text + " Nothing in the catalogue is enough: use less, or drive more."
	case c.OwnShare <= c.Promise:
		return text + fmt.Sprintf(" That is enough. The cheapest that would be: %s and %s, about %s.", times(c.Kit.Batteries, c.Kit.Battery), times(c.Kit.Panels, c.Kit.Panel), words.Amount(c.Kit.Price, v.Doc.Build.Currency))
	}
	return text + fmt.Sprintf(" The cheapest that is enough: %s and %s, about %s.", times(c.Kit.Batteries, c.Kit.Battery), times(c.Kit.Panels, c.Kit.Panel), words.Amount(c.Kit.Price, v.Doc.Build.Currency))
}

func times(n int, o power.Offer) string {
	switch n {
	case 0:
		return "none"
	case 1:
		return decapital(o.Name)
	}
	return fmt.Sprintf("%d of %s", n, decapital(o.Name))
}
