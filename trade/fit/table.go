package fit

import (
	"fmt"
	"math"

	"tumblehome/catalogue/people"
	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// table judges the table one eats at from a seat: the nearest before it.
func (w *worker) table(mode *Mode, seat int, p Person, body people.Body, f facing, top float64) {
	at, best := w.tableBefore(mode, f, top)
	if at < 0 {
		return
	}
	b := mode.Standings[at].Box
	gap, need := b.MinZ-top, float64(body.KneeRoom())
	above, wanted := b.MaxZ-top, float64(body.TableAboveSeat())
	w.show(working.Figure{
		Code: "fit.table." + p.ID, Value: above, Unit: "mm", Label: "Table above the seat, " + p.name(), Words: fmt.Sprintf("%s, %s; about %.0f suits best", w.name(at), mode.Name, wanted),
	}, working.Working{
		Formula: "top of the table above the pressed seat", Source: seatSource,
		Notes: []string{fmt.Sprintf("Between seat and table there is %.0f for thighs, which need %.0f; the table begins %.0f before the seat.", max(0, gap), need, best)},
		Lines: []working.Line{{Symbol: "t", Label: "table above the seat", Value: above, Unit: "mm", Sum: fmt.Sprintf("%.1f - %.1f", b.MaxZ, top), From: working.Origin{Pointer: pointer("fittings", w.in.Fittings[at].ID)}}},
	})
	out := finding.Finding{Code: "fit.table", Mode: mode.Name, Source: seatSource,
		About: []string{pointer("fittings", w.in.Fittings[at].ID), pointer("fittings", w.in.Fittings[seat].ID), pointer("people", p.ID)}}
	switch {
	case best < kneesOut && gap < need-20:
		out.Severity, out.Measured, out.Limit = finding.Close, mm(gap), mm(need)
		out.Title = fmt.Sprintf("The legs of %s do not go under %s", p.name(), w.name(at))
		out.Words = fmt.Sprintf("Between the pressed seat and the table there is %s; thighs need about %s. Raise the table or move it away from the seat.", about(gap), about(need))
		if gap < touching {
			out.Words = fmt.Sprintf("The underside of the table is no higher than the pressed seat; thighs need about %s between. Raise the table or move it away from the seat.", about(need))
		}
		if up := need - gap; math.Abs(above+up-wanted) <= tableOff-touching {
			out.Proposals = w.nudge(at, 0, 0, up, "")
		}
		out.Proposals = append(out.Proposals, w.tried(out, (*worker).seats, moves(at, f.ahead(), kneesOut-best+touching))...)
	case edgeReach(best, f, body) > touching:
		beyond := edgeReach(best, f, body)
		out.Severity, out.Measured, out.Limit = finding.Close, mm(float64(body.ArmReach())+beyond), mm(float64(body.ArmReach()))
		out.Title = fmt.Sprintf("%s does not reach %s from %s", p.name(), w.name(at), w.name(seat))
		out.Words = fmt.Sprintf("From the back of the seat to the edge of the table it is %s; the hand comes about %s far. One would have to perch. Move the table nearer, or the back of the seat forwards.", about(float64(body.ArmReach())+beyond), about(float64(body.ArmReach())))
		out.Proposals = w.tried(out, (*worker).seats, moves(at, f.ahead()^1, beyond))
	case math.Abs(above-wanted) > tableOff:
		out.Severity, out.Measured, out.Limit = finding.Note, mm(above), mm(wanted)
		out.Title = fmt.Sprintf("%s is not at the height of the elbows of %s", w.name(at), p.name())
		out.Words = fmt.Sprintf("It is %s above the pressed seat; about %s suits best.", about(above), about(wanted))
		if above < touching {
			out.Words = fmt.Sprintf("It is no higher than the pressed seat; about %s above it suits best.", about(wanted))
		}
		out.Proposals = w.tried(out, (*worker).seats, moves(at, solid.Roof, wanted-above))
	default:
		return
	}
	w.find(out)
}

// edgeReach is how far the edge of a table is beyond the reach of one who leans on the back of the seat.
func edgeReach(away float64, f facing, body people.Body) float64 {
	return max(0, away) + min(f.depth, float64(body.SeatDepth())) - float64(body.ArmReach())
}

// tableBefore is the table one eats at from a seat, the nearest before it, and how far before the seat it begins; -1 for none.
func (w *worker) tableBefore(mode *Mode, f facing, top float64) (at int, away float64) {
	at, away = -1, math.Inf(1)
	for i := range mode.Standings {
		s := &mode.Standings[i]
		if w.in.Fittings[i].Make != "table" || len(s.Solid) == 0 || s.Moved && s.Box.MinZ <= top {
			continue // one that a mode has let down lower than the seat is not eaten at
		}
		if off := f.away(s.Box); off < away && f.beside(s.Box) {
			at, away = i, off
		}
	}
	if away > atTable {
		return -1, away
	}
	return at, away
}

// beside says whether a box lies before a seat for at least the width of one who sits.
func (f facing) beside(b solid.Bounds) bool {
	const sitter = 300
	if f.axis == 1 {
		return min(b.MaxX, f.box.MaxX)-max(b.MinX, f.box.MinX) >= sitter
	}
	return min(b.MaxY, f.box.MaxY)-max(b.MinY, f.box.MinY) >= sitter
}
