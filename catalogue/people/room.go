package people

import (
	"math"

	"tumblehome/quantity"
)

// Allowances on the bare body [mm].
const (
	Lying     = 15.0  // a body is longer lying down; read in university tables of body sizes
	Feet      = 100.0 // feet point and the pillow takes room, least; common practice
	FeetEasy  = 150.0 // the same, at ease
	Shoes     = 25.0  // read in university tables of body sizes
	Clearance = 35.0  // over a head, middle of 25 to 50; common practice
	Clothes   = 40.0  // heavy clothes on shoulders and belly; read in university tables of body sizes
	Turning   = 150.0 // for two side by side to turn over, middle of 100 to 200; common practice
)

// size is the dimension without its scatter.
func (b Body) size(d Dimension) quantity.Length {
	length, _ := b.Size(d)
	return length
}

// LyingLength is the least length of a bed: stature, longer when lying, feet
// and pillow. One at ease has 50 mm more.
func (b Body) LyingLength() quantity.Length { return b.Stature + Lying + Feet }

// BedWidth is the least width of a bed for one: the shoulders in a sleeping
// bag, and never below the 600 that practice calls tight.
func (b Body) BedWidth() quantity.Length {
	return quantity.Length(math.Max(600, float64(b.size(Shoulders)+Clothes)))
}

// SittingHeadroom is the least height above the compressed cushion to sit
// upright. Slumped people need 35 to 50 mm less.
func (b Body) SittingHeadroom() quantity.Length { return b.size(SittingHeight) + Clearance }

// LeaningHeadroom is the least height above the compressed cushion to sit leaning back half way, as in a deck chair: a straight back
// at 45° is as high as its length times the cosine (geometry), and the clearance.
func (b Body) LeaningHeadroom() quantity.Length {
	return quantity.Length(float64(b.size(SittingHeight))*math.Sqrt2/2) + Clearance
}

// ArmReach is how far from the back of the seat the tip of the thumb comes.
func (b Body) ArmReach() quantity.Length { return b.size(Reach) }

// StandingHeadroom is the least height to stand upright in shoes.
func (b Body) StandingHeadroom() quantity.Length { return b.Stature + Shoes + Clearance }

// SeatHeight is the range of a compressed seat above the floor: the hollow of
// the knee and the shoe, less 0 to 40.
func (b Body) SeatHeight() (low, high quantity.Length) {
	high = b.size(Popliteal) + Shoes
	return high - 40, high
}

// SeatDepth is the most a seat can be deep before it presses the calf.
func (b Body) SeatDepth() quantity.Length { return b.size(ButtockToHollow) - 30 }

// SeatWidth is the least width of a seat: the hips in clothes, and never below
// the 450 of practice.
func (b Body) SeatWidth() quantity.Length {
	return quantity.Length(math.Max(450, float64(b.size(Hips)+Clothes)))
}

// LegRoom is the least free depth before the front edge of a seat: the knees stand before the hollow behind them, and 85 to rise
// and turn. The hollow is at the edge of a seat that is deep enough; the 85 is common practice.
func (b Body) LegRoom() quantity.Length { return b.size(ButtockToKnee) - b.size(ButtockToHollow) + 85 }

// LyingHeight is how high a body lying on its back stands over the pressed mattress: the depth of the chest. Its shoulders are
// about half as high and as wide as they ever are.
func (b Body) LyingHeight() quantity.Length { return b.size(Chest) }

// KneeRoom is the least gap between seat and table top's underside.
func (b Body) KneeRoom() quantity.Length { return b.size(Thigh) + 20 }

// TableAboveSeat is how far a table top stands above the compressed seat: at
// the elbow or a little above it.
func (b Body) TableAboveSeat() quantity.Length { return b.size(ElbowRest) + 30 }

// WorktopHeight is how high a worktop stands: the elbow (63 % of stature, from
// memory) and shoes, less the 100 to 150 of practice.
func (b Body) WorktopHeight() quantity.Length { return 0.63*b.Stature + Shoes - 125 }

// Sidling is the least width of a gap to slip through sideways in clothes.
func (b Body) Sidling() quantity.Length { return b.size(Belly) + Clothes + 10 }

// SideBySide is the least width of a bed for these people: the sum of their
// shoulders, in the range nine in ten keep to, and room to turn. Scatters of
// different people are independent, so they add as squares; a sum of two wide
// people's widths would overstate it.
func SideBySide(bodies ...Body) quantity.Length {
	if len(bodies) == 1 {
		return bodies[0].BedWidth()
	}
	var sum, squares float64
	for _, b := range bodies {
		width, half := b.Size(Shoulders)
		sum += float64(width)
		squares += math.Pow(half*float64(width), 2)
	}
	if len(bodies) == 0 {
		return 0
	}
	return quantity.Length(sum + math.Sqrt(squares) + Turning)
}
