package weight

// LiftedHeight is how high the middle of a van's mass lies above the ground [mm], from lifting one axle: h = r + L·ΔF/(W·tan θ).
// radius is the loaded radius of a wheel [mm], wheelbase in mm, gain what the axle on the ground gained [kg], mass the van's
// [kg], and tangent that of the angle it was lifted by. Without mass or lift it is 0. ISO 10392; the suspension must be blocked, and
// 10 kg misread move the answer by some 75 mm.
func LiftedHeight(radius, wheelbase, gain, mass, tangent float64) float64 {
	if !(mass > 0) || !(tangent > 0) {
		return 0
	}
	return radius + wheelbase*gain/(mass*tangent)
}
