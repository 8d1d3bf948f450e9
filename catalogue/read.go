package catalogue

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"strconv"
	"strings"

	"tumblehome/quantity"
)

//go:embed rows.csv
var rowsCSV string

// The columns of rows.csv in their order; README.md says what each holds.
const heading = "id,name,kind,group,length_mm,width_mm,thickness_mm,thickness_min_mm,thickness_max_mm,density_kg_m3," +
	"unit,contents_l,mass_per_unit_kg,coverage,coverage_unit,waste_pct,price_gbp,price_eur,volts,watts,amps,amp_hours," +
	"usable_pct,holds_l,heat_w,conductivity_w_mk,vapour_factor,heat_capacity_j_kgk,stands,price_status,known_from,notes"

const (
	colID = iota
	colName
	colKind
	colGroup
	colLength
	colWidth
	colThick
	colThickLeast
	colThickMost
	colDensity
	colUnit
	colContents
	colMass
	colCoverage
	colCoverageUnit
	colWaste
	colGBP
	colEUR
	colVolts
	colWatts
	colAmps
	colAmpHours
	colUsable
	colHolds
	colHeat
	colConducts
	colVapour
	colHeatCapacity
	colStands
	colPriceStatus
	colKnownFrom
	colNotes
)

// listed is a built-in row with its id and its two rough prices.
type listed struct {
	id       string
	row      Row
	gbp, eur float64
}

// readRows reads the table of rows. The error names the line.
func readRows(table string) ([]listed, error) {
	r := csv.NewReader(strings.NewReader(table))
	r.ReuseRecord = true
	cells, err := r.Read()
	if err != nil {
		return nil, fmt.Errorf("rows.csv: %w", err)
	}
	if got := strings.Join(cells, ","); got != heading {
		return nil, fmt.Errorf("rows.csv:1: the heading is %s", got)
	}
	rows := make([]listed, 0, 600)
	for line := 2; ; line++ {
		cells, err = r.Read()
		if len(cells) == 0 {
			return rows, nil
		}
		if err != nil {
			return nil, fmt.Errorf("rows.csv: %w", err)
		}
		reading := reading{cells: cells}
		row := reading.listed()
		if reading.fault != nil {
			return nil, fmt.Errorf("rows.csv:%d: %s: %w", line, row.id, reading.fault)
		}
		rows = append(rows, row)
	}
}

// reading is one line of the table while it is read; it keeps the first fault.
type reading struct {
	cells []string
	fault error
}

func (r *reading) listed() listed {
	row := Row{
		Name: r.cells[colName], Kind: r.cells[colKind], Group: r.cells[colGroup], Each: r.cells[colUnit],
		Flue: flues[r.cells[colID]], Stands: r.cells[colStands], Source: r.cells[colKnownFrom], Note: r.cells[colNotes],
		ThickLeast: number[quantity.Length](r, colThickLeast), ThickMost: number[quantity.Length](r, colThickMost),
		Density: number[quantity.Density](r, colDensity), Contents: number[quantity.Volume](r, colContents),
		Waste: percent(r, colWaste), Volts: number[quantity.Voltage](r, colVolts), Watts: number[quantity.Power](r, colWatts),
		Amps: number[quantity.Current](r, colAmps), AmpHours: number[quantity.Charge](r, colAmpHours),
		Usable: percent(r, colUsable), Holds: number[quantity.Volume](r, colHolds), Heat: number[quantity.Power](r, colHeat),
		Conducts: number[float64](r, colConducts), Vapour: number[float64](r, colVapour),
		HeatCapacity: number[float64](r, colHeatCapacity),
	}
	if mass := number[float64](r, colMass); mass != nil {
		row.Mass = &quantity.Lay{Amount: *mass}
	}
	r.cover(&row)
	r.measure(&row)
	out := listed{id: r.cells[colID], row: row}
	if gbp, eur := number[float64](r, colGBP), number[float64](r, colEUR); gbp != nil && eur != nil {
		out.gbp, out.eur = *gbp, *eur
	}
	return out
}

// cover reads what one is enough for. The unit's first word is what is counted,
// the rest says for what: m2 per litre per coat, m of 10 mm bead.
func (r *reading) cover(row *Row) {
	amount := number[float64](r, colCoverage)
	if amount == nil {
		return
	}
	of, how, _ := strings.Cut(r.cells[colCoverageUnit], " ")
	c := Coverage{Amount: *amount, Of: of, PerLitre: strings.Contains(how, "per litre")}
	switch of {
	case "litre":
		c.Of = "l"
	case "sets", "":
		c.Of = "pieces"
	}
	if how != "per "+row.Each && how != "per metre" {
		row.CoversHow = how
	}
	row.Covers = &c
}

// measure puts the three dimensions where they belong: an outside size for
// what is placed, a stock size for what is laid or sawn.
func (r *reading) measure(row *Row) {
	x, y, z := number[quantity.Length](r, colLength), number[quantity.Length](r, colWidth), number[quantity.Length](r, colThick)
	placed := row.Kind == "appliance" || row.Kind == "piece" && row.Covers == nil
	switch {
	case !placed:
		row.Long, row.Wide, row.Thick = x, y, z
	case x != nil || y != nil || z != nil:
		row.Size = &Size{X: x, Y: y, Z: z}
	}
}

// number reads a cell, nil where it is empty.
func number[T ~float64](r *reading, column int) *T {
	cell := r.cells[column]
	if cell == "" {
		return nil
	}
	v, err := strconv.ParseFloat(cell, 64)
	if err != nil && r.fault == nil {
		r.fault = err
	}
	t := T(v)
	return &t
}

func percent(r *reading, column int) *quantity.Share {
	share := number[quantity.Share](r, column)
	if share != nil {
		*share /= 100
	}
	return share
}
