package people

import (
	_ "embed"
	"strconv"
	"strings"
)

//go:embed survey.csv
var surveyCSV string

//go:embed published.csv
var publishedCSV string

// A Dimension is a measure of the body. All are in mm but BodyMass in kg.
type Dimension string

// The dimensions of the survey.
const (
	Stature         Dimension = "stature"
	SittingHeight   Dimension = "sitting_height"
	EyeSitting      Dimension = "eye_height_sitting"
	ElbowRest       Dimension = "elbow_rest_height_sitting" // above the seat
	Popliteal       Dimension = "popliteal_height"          // hollow of the knee above the floor, barefoot
	ButtockToKnee   Dimension = "buttock_knee_length"
	ButtockToHollow Dimension = "buttock_popliteal_length" // depth a seat can have
	KneeSitting     Dimension = "knee_height_sitting"
	Thigh           Dimension = "thigh_clearance"            // above the seat
	Shoulders       Dimension = "shoulder_breadth_bideltoid" // over the muscles
	Elbows          Dimension = "elbow_to_elbow_breadth"
	Hips            Dimension = "hip_breadth_sitting"
	ShoulderHeight  Dimension = "acromial_height_standing"
	Chest           Dimension = "chest_depth"
	Belly           Dimension = "abdominal_depth_sitting"
	ReachUpSitting  Dimension = "overhead_reach_sitting"
	Reach           Dimension = "thumb_tip_reach"
	BodyMass        Dimension = "body_mass_kg"
)

// Sex says which part of the survey is meant.
type Sex string

// The two parts of the survey.
const (
	Men   Sex = "M"
	Women Sex = "F"
)

// A Measure is how one dimension is spread among the people surveyed, in mm
// (kg for BodyMass). The tails of girths and of mass are longer than a normal
// distribution's, so take a percentile from here and not from mean and Dev.
type Measure struct {
	Count                 int
	Mean, Dev             float64
	P1, P5, P50, P95, P99 float64
}

type key struct {
	dimension Dimension
	sex       Sex
}

var survey = readSurvey(surveyCSV)

// Survey is the measure of a dimension among the men or the women of the
// survey. It is false for a dimension the survey does not have.
func Survey(d Dimension, s Sex) (Measure, bool) {
	m, ok := survey[key{d, s}]
	return m, ok
}

// readSurvey takes the table as it is embedded: dimension, sex, n, mean, sd,
// p01, p05, p50, p95, p99. A heading or a broken row has no count and is left
// out; the test of the table finds it.
func readSurvey(text string) map[key]Measure {
	all := make(map[key]Measure, 40)
	for line := range strings.Lines(text) {
		cell := strings.Split(strings.TrimSpace(line), ",")
		if len(cell) < 10 {
			continue
		}
		var v [8]float64
		for i := range v {
			v[i], _ = strconv.ParseFloat(cell[2+i], 64)
		}
		if v[0] > 0 {
			all[key{Dimension(cell[0]), Sex(cell[1])}] = Measure{
				Count: int(v[0]), Mean: v[1], Dev: v[2], P1: v[3], P5: v[4], P50: v[5], P95: v[6], P99: v[7]}
		}
	}
	return all
}

// A Published figure is one row of what others print, in mm.
type Published struct {
	Dimension    Dimension
	Population   string
	Sex          Sex
	P5, P50, P95 float64
	Source       string
}

// PublishedFigures are the rows of published.csv in their order.
func PublishedFigures() []Published {
	var all []Published
	for line := range strings.Lines(publishedCSV) {
		cell := strings.SplitN(strings.TrimSpace(line), ",", 8)
		if len(cell) < 8 || cell[0] == "dimension" {
			continue
		}
		p := Published{Dimension: Dimension(cell[0]), Population: cell[1], Sex: Sex(cell[2]), Source: strings.Trim(cell[7], `"`)}
		for i, to := range []*float64{&p.P5, &p.P50, &p.P95} {
			*to, _ = strconv.ParseFloat(cell[3+i], 64)
		}
		all = append(all, p)
	}
	return all
}
