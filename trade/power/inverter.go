package power

// InverterInput is what an inverter takes from the battery [W] while it gives so much [W]: P_idle + a·P + b·P². For one of 1000 W: 10 W, 1.06 and
// 4·10⁻⁵ /W; others in proportion to their size. Common practice, no source; cheap ones of 60 to 700 W were measured at 1.5 to 12 W idle (read).
func InverterInput(gives, size float64) float64 {
	if size <= 0 {
		return 0
	}
	return idleShare*size + inverterA*gives + inverterB/size*gives*gives
}

const (
	idleShare = 0.01
	inverterA = 1.06
	inverterB = 0.04
)

// What is plugged into an inverter: a laptop or what charges from a mains plug. Hours a day by habit: common practice, no source.
const laptop = 60.0 // W

var inverterHours = [3]float64{0.5, 1, 3}
