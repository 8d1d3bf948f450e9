package catalogue

import (
	"math"
	"strconv"
	"strings"

	"tumblehome/quantity"
)

// Material is what is laid or sawn: one row, or all stock sizes that share the
// beginning of their ids. What is not known is 0.
type Material struct {
	ID        string             // as the document names it
	Title     string             // plain name, without size where there are several
	Kind      string             // of its first row
	Group     string             // of its first row
	Thick     quantity.Length    // 0 where the material does not fix it
	Wide      quantity.Length    // of the section of a batten, or of the narrowest stock
	PerArea   quantity.PerArea   // laid flat, full cover
	PerLength quantity.PerLength // of a batten, slat, profile, cable
	Spread    float64            // of its mass, either way, as a share; one error for all of it
	Density   quantity.Density
	Waste     quantity.Share
	// How it passes heat and vapour: W/mK, multiple of still air, J/kgK.
	Conducts, Vapour, HeatCapacity float64
	Insulates                      bool     // it is laid to keep heat
	Source                         string   // how its figures are known
	Stock                          []string // ids of the rows to buy it as, sorted; do not change
}

// Mass of an area of it laid flat [m2], as kg.
func (m Material) Mass(area quantity.Area) quantity.Mass {
	return quantity.Mass(float64(m.PerArea) * float64(area))
}

// materialOf is a row seen as a material. It is false for what is neither laid
// nor sawn, such as a tin of paint or a pump.
func materialOf(id string, r Row) (Material, bool) {
	m := Material{ID: id, Title: r.Name, Kind: r.Kind, Group: r.Group, Source: r.Source,
		Thick: value(r.Thick), Wide: value(r.Wide), Density: value(r.Density), Waste: value(r.Waste),
		Conducts: value(r.Conducts), Vapour: value(r.Vapour), HeatCapacity: value(r.HeatCapacity),
		Spread: MassSpread(id, r), Stock: []string{id}}
	m.Insulates = insulates(m)
	m.PerArea = perArea(r)
	m.PerLength = perLength(r)
	if r.Kind == "liquid" || r.Kind == "fixing" || r.Kind == "appliance" {
		return m, false
	}
	return m, m.PerArea > 0 || m.PerLength > 0 || laid(r.Kind)
}

// laid says whether things of a kind are laid or sawn even where nobody knows how heavy they are.
func laid(kind string) bool {
	return kind == "sheet" || kind == "board" || kind == "roll" || kind == "length"
}

// perArea is kg/m2 as said, or thickness times density, or the mass of one by
// what one covers or by its stock size. Boards that overlap (tongue and groove)
// weigh more by the area they cover than by their own.
func perArea(r Row) quantity.PerArea {
	area := value(r.Long).Float() * value(r.Wide).Float() / 1e6
	if r.Covers != nil && !r.Covers.PerLitre {
		area = 0
		if r.Covers.Of == "m2" {
			area = r.Covers.Amount
		}
	}
	solid := value(r.Thick).Float() / 1000 * value(r.Density).Float()
	switch {
	case r.Mass != nil && r.Mass.Per == quantity.SquareMetre:
		return quantity.PerArea(r.Mass.Amount)
	case solid > 0 && (r.Kind != "length" || area == 0):
		return quantity.PerArea(solid)
	case r.Mass != nil && r.Mass.Per == quantity.Each && area > 0:
		return quantity.PerArea(r.Mass.Amount / area)
	}
	return 0
}

// perLength is kg/m as said, or the mass of one by its metres, or section
// times density.
func perLength(r Row) quantity.PerLength {
	metres := 0.0
	if r.Kind == "length" || r.Kind == "cable" {
		metres = value(r.Long).Float() / 1000
	}
	if r.Covers != nil && r.Covers.Of == "m" && r.CoversHow == "" {
		metres = r.Covers.Amount
	}
	switch {
	case r.Mass != nil && r.Mass.Per == quantity.Metre:
		return quantity.PerLength(r.Mass.Amount)
	case r.Mass != nil && r.Mass.Per == quantity.Each && metres > 0:
		return quantity.PerLength(r.Mass.Amount / metres)
	case r.Mass == nil && r.Kind == "length":
		return quantity.PerLength(value(r.Thick).Float() * value(r.Wide).Float() / 1e6 * value(r.Density).Float())
	}
	return 0
}

func value[T any](p *T) (v T) {
	if p != nil {
		v = *p
	}
	return v
}

// sameAs says whether two rows may be one material: of one thickness, one
// section where they are lengths, and counted alike.
func (m Material) sameAs(o Material) bool {
	return math.Abs(float64(m.Thick-o.Thick)) < 1e-6 &&
		(m.Kind == "length") == (o.Kind == "length") && (m.Kind != "length" || m.Wide == o.Wide) &&
		(m.PerArea > 0) == (o.PerArea > 0)
}

// with is m, the leader, with another row of the same beginning: a further
// stock size if it is the same material, and in any case what m does not know.
func (m Material) with(o Material) Material {
	if m.sameAs(o) {
		m.Title = sharedName(m.Title, o.Title)
		m.Stock = append(m.Stock, o.Stock...)
	}
	if m.Group == "" {
		m.Group = o.Group
	}
	if m.Conducts == 0 {
		m.Conducts, m.Vapour, m.HeatCapacity = o.Conducts, o.Vapour, o.HeatCapacity
	}
	m.Insulates = insulates(m)
	return m
}

func insulates(m Material) bool {
	return m.Group == "insulation" && m.Conducts > 0 && m.Conducts <= 0.05
}

// sharedName is the part of two names before their sizes part.
func sharedName(a, b string) string {
	n := 0
	for n < len(a) && n < len(b) && a[n] == b[n] {
		n++
	}
	if n == len(a) && n == len(b) || n == 0 {
		return a
	}
	whole := a[:n]
	if cut := strings.LastIndex(whole, ","); cut > 0 {
		return whole[:cut]
	}
	return strings.TrimRight(whole, " ,0123456789")
}

// names are the material names a row answers to: its id, and each beginning
// of it that reaches to the end of its thickness.
func names(id string, m Material) []string {
	out := make([]string, 1, 4)
	out[0] = id
	least := endOfThickness(id, m)
	for cut := len(id); ; {
		cut = strings.LastIndexByte(id[:cut], '-')
		if cut < least || strings.IndexByte(id[:max(cut, 0)], '-') < 0 {
			return out
		}
		if !splitsNumber(id, cut) {
			out = append(out, id[:cut])
		}
	}
}

// endOfThickness is how far into the id its thickness or section reaches, as a
// part of its own or before an x or mm; 0 where the id does not name it.
func endOfThickness(id string, m Material) int {
	if m.Thick == 0 {
		return 0
	}
	thick := "-" + figure(m.Thick)
	if section := thick + "x" + figure(m.Wide); m.Kind == "length" {
		if at := strings.Index(id, section); at >= 0 {
			return at + len(section)
		}
	}
	for from := 0; ; {
		at := strings.Index(id[from:], thick)
		if at < 0 {
			return 0
		}
		end := from + at + len(thick)
		if rest := id[end:]; rest == "" || rest[0] == '-' {
			return end
		} else if strings.HasPrefix(rest, "mm") {
			return end + len("mm")
		}
		from = end
	}
}

// figure writes a length as ids do: 20.5 as 20-5.
func figure(l quantity.Length) string {
	return strings.Replace(strconv.FormatFloat(float64(l), 'f', -1, 64), ".", "-", 1)
}

// splitsNumber says whether the hyphen stands for a decimal point: between a
// digit and one or two digits, alone or with mm.
func splitsNumber(id string, at int) bool {
	next, _, _ := strings.Cut(id[at+1:], "-")
	n := 0
	for n < len(next) && next[n] >= '0' && next[n] <= '9' {
		n++
	}
	return id[at-1] >= '0' && id[at-1] <= '9' && n > 0 && n <= 2 && (n == len(next) || strings.HasPrefix(next[n:], "mm"))
}
