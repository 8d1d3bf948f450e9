package shell

import "tumblehome/trade/working"

// figures are the figures of the bare body. The finished headroom is the lining's.
func (b *Body) figures() []working.Figure {
	state := working.Current
	if b.Assumed {
		state = working.Assumed
	}
	figure := func(code, label string, value float64, unit string) working.Figure {
		return working.Figure{Code: code, Label: label, Value: value, Unit: unit, State: state}
	}
	return []working.Figure{
		figure("shell.length", "Bare length inside", b.Length(), "mm"),
		figure("shell.width", "Bare width between the skins at its widest", b.width(), "mm"),
		figure("shell.height", "Bare height in the middle", b.height(), "mm"),
		figure("shell.floor-area", "Bare floor between the wheel arches and skins", b.Areas(Floor).Net, "m2"),
		figure("shell.volume", "Bare room inside", b.Volume(), "m3"),
	}
}

// widest is where the body is widest, looked for every 100 along and 20 up: the
// sides bulge so little that this finds the width to a millimetre.
func (b *Body) widest() (x, z float64) {
	best := -1.0
	for at := b.Start(); at <= b.End(); at += 100 {
		for up := b.Floor(); up <= b.Eaves(); up += 20 {
			if y := b.Half(at, up); y > best {
				x, z, best = at, up, y
			}
		}
	}
	return x, z
}

func (b *Body) width() float64 { x, z := b.widest(); return 2 * b.Half(x, z) }

// middle is half way along the body.
func (b *Body) middle() float64 { return (b.Start() + b.End()) / 2 }

func (b *Body) height() float64 { return b.Roof(b.middle(), 0) - b.Floor() }
