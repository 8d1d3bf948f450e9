package draw

// Pen names how a line is drawn. An empty pen draws no line.
type Pen string

// The pens of a drawing, after ISO 128: wide lines for what is cut, narrow ones for the rest,
// dashes for what is hidden, chains for centre lines.
const (
	NoPen        Pen = ""
	PenCut       Pen = "cut"       // the body where it is cut
	PenOutline   Pen = "outline"   // edges of fittings
	PenFine      Pen = "fine"      // lining, inner edges
	PenHidden    Pen = "hidden"    // behind or below
	PenCentre    Pen = "centre"    // centre lines
	PenRib       Pen = "rib"       // ribs and frames
	PenWater     Pen = "water"     // fresh water
	PenWaste     Pen = "waste"     // waste water
	PenGas       Pen = "gas"       // gas pipe
	PenCable     Pen = "cable"     // cables
	PenDuct      Pen = "duct"      // warm air
	PenLaid      Pen = "laid"      // ways along which something is led
	PenFollowed  Pen = "followed"  // where it is taken to go between them
	PenPerson    Pen = "person"    // people to scale
	PenAttention Pen = "attention" // what needs attention
	PenGhost     Pen = "ghost"     // where it was, where it folds to
	PenSweep     Pen = "sweep"     // the space that moving things pass through
	PenIsotherm  Pen = "isotherm"  // a line of one temperature
	PenHeat      Pen = "heat"      // a way that heat takes
	PenDimension Pen = "dimension" // dimension and extension lines
	PenLeader    Pen = "leader"    // from a flag to its place
	PenHatch     Pen = "hatch"     // hatching
	PenHairline  Pen = "hairline"  // rules, slats, grids
	PenBorder    Pen = "border"    // the sheet's inner border
	PenEdge      Pen = "edge"      // the sheet's outer border, cells of the title block
)

// Pens lists every pen in the order of the stylesheet.
var Pens = [...]Pen{
	PenCut, PenOutline, PenFine, PenHidden, PenCentre, PenRib, PenWater, PenWaste, PenGas, PenCable, PenDuct, PenLaid, PenFollowed,
	PenPerson, PenAttention, PenGhost, PenSweep, PenIsotherm, PenHeat, PenDimension, PenLeader, PenHatch, PenHairline, PenBorder, PenEdge,
}

// Nib is what a pen lays down: width and dashes in millimetres, colour by token.
type Nib struct {
	Width  float64
	Dashes []float64
	Colour Token
}

// Nib gives what the pen lays down. Widths are of the series of ISO 128-2 (0.13, 0.18, 0.25,
// 0.35, 0.5, 0.7; from memory). An unknown pen is PenFine; NoPen has no width.
func (p Pen) Nib() Nib {
	switch p {
	case NoPen:
		return Nib{}
	case PenCut:
		return Nib{0.5, nil, TokenInk}
	case PenOutline:
		return Nib{0.25, nil, TokenInk}
	case PenHidden:
		return Nib{0.18, []float64{2, 1}, TokenQuiet}
	case PenCentre:
		return Nib{0.18, []float64{6, 1, 1, 1}, TokenQuiet}
	case PenRib:
		return Nib{0.35, nil, TokenQuiet}
	case PenWater:
		return Nib{0.35, nil, TokenWater}
	case PenWaste:
		return Nib{0.35, []float64{3, 1.2}, TokenWater}
	case PenGas:
		return Nib{0.35, []float64{4, 1, 0.5, 1}, TokenInk}
	case PenCable:
		return Nib{0.35, nil, TokenInk}
	case PenDuct:
		return Nib{0.5, []float64{2, 1.2}, TokenQuiet}
	case PenLaid:
		return Nib{0.5, nil, TokenGood}
	case PenFollowed:
		return Nib{0.25, []float64{1.2, 0.8}, TokenGood}
	case PenPerson:
		return Nib{0.25, nil, TokenWater}
	case PenAttention:
		return Nib{0.5, nil, TokenLead}
	case PenGhost:
		return Nib{0.18, []float64{1.2, 1}, TokenQuiet}
	case PenSweep:
		return Nib{0.25, []float64{2.4, 1}, TokenGood}
	case PenIsotherm:
		return Nib{0.25, nil, TokenWater}
	case PenHeat:
		return Nib{0.25, []float64{1.6, 1}, TokenInk}
	case PenHatch:
		return Nib{0.13, nil, TokenQuiet}
	case PenHairline:
		return Nib{0.18, nil, TokenHairline}
	case PenBorder:
		return Nib{0.5, nil, TokenInk}
	case PenEdge:
		return Nib{0.18, nil, TokenInk}
	case PenDimension, PenLeader:
		return Nib{0.18, nil, TokenQuiet}
	}
	return Nib{0.18, nil, TokenQuiet}
}
