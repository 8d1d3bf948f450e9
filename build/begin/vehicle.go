package begin

import "tumblehome/build"

// Parts of a vehicle that are typical until they are read, as they stand in its note.
const (
	typicalWheelbase = "wheelbase"
	typicalOutside   = "size outside"
	typicalGross     = "gross plate"
	typicalFront     = "front plate"
	typicalRear      = "rear plate"
	typicalSeats     = "seats"
	typicalTank      = "fuel tank"
)

// vehicle is the van as a vehicle: what was said, and what is typical of its body.
func (a Answers) vehicle() build.Vehicle {
	b := a.body()
	axle := b.axleAt(a.length())
	v := build.Vehicle{
		Wheelbase: orElse(a.Wheelbase, tens(axle+b.datum)),
		Overhang:  &build.Overhang{Front: b.front, Rear: a.length() + b.rear + b.axle - b.Length - axle},
		Width:     &b.width, Height: &b.tall,
		Plate: build.Plate{Gross: a.Plate.Gross, Front: a.Plate.Front, Rear: a.Plate.Rear, Train: a.Plate.Train},
		Tank:  &build.FuelTank{Holds: b.tank, X: tens(axle - 900), Fuel: "diesel"},
	}
	v.Datum = v.Wheelbase - axle // the rear axle lies under the middle of the arches
	seat := build.Seat{X: 1050 - v.Datum, Y: tens(share(b.width, 0.22))}
	v.Seats = map[string]build.Seat{"driver": seat, "passenger": {X: seat.X, Y: -seat.Y}}
	if a.rules() != "gb" {
		v.Seats["driver"], v.Seats["passenger"] = v.Seats["passenger"], seat
	}
	typical := a.plate(&v.Plate, b)
	if a.Wheelbase == nil {
		typical = append([]string{typicalWheelbase}, typical...)
	}
	v.Note = noted(assumedIn, append(typical, typicalOutside, typicalSeats, typicalTank))
	return v
}

// plate fills in the three limits that bind the van itself, and names those it filled in. A gross limit that was read gives the
// typical shares of the axles.
func (a Answers) plate(p *build.Plate, b Body) []string {
	var typical []string
	if p.Gross == nil {
		p.Gross = &b.gross
		typical = append(typical, typicalGross)
	}
	if p.Front == nil {
		front := tens(frontShare * *p.Gross)
		p.Front = &front
		typical = append(typical, typicalFront)
	}
	if p.Rear == nil {
		rear := tens(rearShare * *p.Gross)
		p.Rear = &rear
		typical = append(typical, typicalRear)
	}
	return typical
}
