package power

import "math"

// panel is what is on the roof as the hours see it: output = light·scale·(1 + slope·(air + rise·light − 25)), in W.
type panel struct {
	scale, slope, rise float64
	pwm                float64 // battery voltage over the panel's best at 25 °C; 0 with a controller that follows the panel
	clip               float64 // W that the controller can pass
}

// Of panels. The slope of power and voltage are middles of the usual range for silicon; the temperature rises are those of NOCT 47 °C with air behind,
// and 58 °C glued down (52 to 64 usual): from memory.
const (
	powerSlope   = -0.0037 // per K
	voltageSlope = -0.0035 // per K
	roofRise     = (47.0 - 20) / 800
	gluedRise    = (58.0 - 20) / 800
	tracking     = 0.95 // of a controller that follows the panel, conversion and search (0.92 to 0.98)
	bestVolts    = 18.0
	pwmVolts     = 13.3
)

// CellTemperature is that of a panel [°C] in air of a temperature [°C] and light [W/m2]: Ta + (NOCT − 20)/800·G.
func CellTemperature(air, light, noct float64) float64 { return air + (noct-20)/800*light }

// Losses as NREL/TP-6A20-62641 lists them (read). A flat panel sheds less dirt than a tilted one: 3 to 8 % in rainy Europe (from memory), where the list has 2.
const (
	soiled     = 0.05
	shaded     = 0.03
	mismatched = 0.02 // with more than one panel
	wiring     = 0.02
	joints     = 0.005
	firstLight = 0.015
	nameplate  = 0.01
)

// Kept is what is left after losses that do not know of one another: Π(1 − L).
func Kept(losses ...float64) float64 {
	kept := 1.0
	for _, l := range losses {
		kept *= 1 - l
	}
	return kept
}

func (s *Source) losses() []float64 {
	shade := shaded
	if s.Shade != nil {
		shade = *s.Shade
	}
	all := []float64{soiled, shade, wiring, joints, firstLight, nameplate}
	if s.Panels > 1 {
		all = append(all, mismatched)
	}
	return all
}

func (s *Source) noct() float64 {
	if s.Bonded {
		return 58
	}
	return 47
}

// tooFewVolts says whether panels never reach the volts at which a battery takes charge; of those of which nobody says it is not known.
func (s *Source) tooFewVolts(takes float64) bool { return s.PanelVolts > 0 && s.PanelVolts < takes }

// panelOf is a source as the hours see it, charging a battery of a chemistry at 12 V times series.
func panelOf(s *Source, takes float64) panel {
	p := panel{scale: s.Watts / 1000 * Kept(s.losses()...), slope: powerSlope, rise: (s.noct() - 20) / 800, clip: math.Inf(1)}
	if s.tooFewVolts(takes) {
		p.scale = 0
		return p
	}
	if s.Amps > 0 {
		p.clip = s.Amps * takes
	}
	if !s.PWM {
		p.scale *= tracking
		return p
	}
	best := s.PanelVolts
	if best <= 0 {
		best = bestVolts
	}
	p.pwm = pwmVolts / best
	return p
}

// gives is the output [W] in light [W/m2] and air [°C].
func (p *panel) gives(light, air float64) float64 {
	warm := air + p.rise*light - 25
	out := light * p.scale * (1 + p.slope*warm)
	if p.pwm > 0 {
		out *= min(1, p.pwm/(1+voltageSlope*warm))
	}
	return max(0, min(out, p.clip))
}

// Output is what panels give [W] in light [W/m2] square to them and air [°C], behind their controller.
func (s *Source) Output(light, air float64) float64 {
	p := panelOf(s, natures[Lithium].takes)
	return p.gives(light, air)
}

// Kept is what losses and controller leave of a panel that follows the sun's voltage, but for heat.
func (s *Source) Kept() float64 { return Kept(s.losses()...) * tracking }
