package cables

import (
	"fmt"

	"tumblehome/quantity"
)

// assumed says what was taken for want of a word in the document.
func (r *Result) assumed() []string {
	if len(r.Cables) == 0 {
		return nil
	}
	out := []string{
		fmt.Sprintf("Losses are told at %.1f V (14 V from an engine of 12 V, a panel's own from the roof) and with copper at %.0f °C, everything on at once, with the largest resistance that the standard allows; sold cable is a little better.", r.Supplies[0].Volts, warmCopper),
		fmt.Sprintf("Cables stand %.0f °C and lie in air of %.0f °C, or of %.0f °C beside an engine or under the roof, unless you say otherwise.", usualInsulation, usualAir, hotAir),
	}
	for _, s := range r.in.Sources {
		if i := r.supplyOf(s.To); i >= 0 && s.Starter == 0 && (s.Kind == Engine || s.Kind == Split) && s.starter(r.Supplies[i]) > 1 {
			out = append(out, fmt.Sprintf("The vehicle's own battery is taken to be of %.0f V, as the battery that it charges; write the vehicle's volts if it is not.", 12*s.starter(r.Supplies[i])))
			break
		}
	}
	for _, c := range r.Cables {
		if c.Length.Known == Assumed && c.Role != Bond {
			out = append(out, fmt.Sprintf("%s (%s): nobody has measured it yet; %.1f m are taken one way.", c.Number, c.Title, c.Length.MM/1000))
		}
	}
	for _, c := range r.Cables {
		if c.Role == Lead && c.Source == Split {
			out = append(out, fmt.Sprintf("%s and %s lead plus only: a relay has two plus studs, and its own minus is one thin wire to the body. The minus goes back through the body, to which both batteries are joined; it is taken to lose as much as a second core.", c.FedBy, c.Number))
		}
	}
	for _, s := range r.Supplies {
		if s.FaultSaid == 0 && s.Trunk != "" {
			out = append(out, fmt.Sprintf("Into a short the battery is taken to give about %s A, from its kind and size; its label or sheet knows better.", quantity.Parted(roundTo(s.Fault, 100))))
		}
	}
	return out
}

func roundTo(v, step float64) float64 { return step * float64(int(v/step+0.5)) }
