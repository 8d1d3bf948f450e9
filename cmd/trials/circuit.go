package main

import (
	"encoding/json"
	"fmt"
	"io"
	"math"
	"os"
	"regexp"
	"strconv"
	"text/tabwriter"

	"tumblehome/solve/circuit"
)

const circuitCases = "solve/circuit/testdata/"

// circuitAllowed is the greatest difference to ngspice, V and A.
const circuitAllowed = 1e-6

// circuitTrial prints how far the networks are from what ngspice recorded, then the time beside it. With the word "fifty"
// it only solves the tree of fifty nodes, which is how it times itself as a whole process.
func circuitTrial(out io.Writer, args []string) error {
	if len(args) == 1 && args[0] == "fifty" {
		return printFifty(out)
	}
	if len(args) > 0 {
		return fmt.Errorf("circuit takes no word but fifty, not %q", args)
	}
	if err := printNetworks(out); err != nil {
		return err
	}
	return circuitTimes(out)
}

type circuitCase struct {
	Name string
	circuit.Network
}

func readCircuit(name string, v any) error {
	text, err := os.ReadFile(circuitCases + name)
	if err != nil {
		return fmt.Errorf("%w (trials are run from the root of the sources)", err)
	}
	return json.Unmarshal(text, v)
}

// printNetworks prints one line for each network: its greatest differences in voltage and current, and what is lost.
func printNetworks(out io.Writer) error {
	var cases []circuitCase
	if err := readCircuit("networks.json", &cases); err != nil {
		return err
	}
	recorded, err := recordedFigures()
	if err != nil {
		return err
	}
	table := tabwriter.NewWriter(out, 0, 0, 2, ' ', 0)
	fmt.Fprintln(table, "network\tnodes\tvoltages off by, V\tcurrents off by, A\tbalance off by, W\t")
	for k, c := range cases {
		r, err := circuit.Solve(c.Network)
		if err != nil {
			return fmt.Errorf("%s: %w", c.Name, err)
		}
		volts, amperes := farthest(k, r, recorded)
		mark := ""
		if !(max(volts, amperes) <= circuitAllowed) {
			mark = "TOO FAR"
		}
		fmt.Fprintf(table, "%s\t%d\t%.1e\t%.1e\t%.1e\t%s\n", c.Name, len(r.Nodes), volts, amperes, math.Abs(r.Unbalanced.Power), mark)
	}
	return table.Flush()
}

var circuitFigure = regexp.MustCompile(`([vi]\(\w+\)) = ([-+.e0-9]+)`)

// recordedFigures are the figures of ngspice by the name it prints: v(x7_p3) is node p3 of network 7.
func recordedFigures() (map[string]float64, error) {
	text, err := os.ReadFile(circuitCases + "networks.answer.json")
	if err != nil {
		return nil, err
	}
	figures := map[string]float64{}
	for _, line := range circuitFigure.FindAllSubmatch(text, -1) {
		v, err := strconv.ParseFloat(string(line[2]), 64)
		if err != nil {
			return nil, err
		}
		figures[string(line[1])] = v
	}
	return figures, nil
}

// farthest gives the greatest differences to what is recorded of network k; a figure that is missing is endlessly far.
func farthest(k int, r circuit.Result, recorded map[string]float64) (volts, amperes float64) {
	off := func(key string, got float64) float64 {
		if want, found := recorded[key]; found {
			return math.Abs(got - want)
		}
		return math.Inf(1)
	}
	for _, node := range r.Nodes[1:] {
		volts = max(volts, off(fmt.Sprintf("v(x%d_%s)", k, node.Name), node.Voltage))
	}
	for j, s := range r.Sources {
		amperes = max(amperes, off(fmt.Sprintf("i(vx%d_%d)", k, j), -s.Current))
	}
	return volts, amperes
}
