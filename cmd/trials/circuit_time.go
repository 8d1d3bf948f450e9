package main

import (
	"fmt"
	"io"
	"os"
	"os/exec"
	"slices"
	"time"

	"tumblehome/solve/circuit"
)

// How the time is taken. The network is a tree of fifty nodes, fifty.json for us and fifty.cir for ngspice. Each program is run as a process of its own, from start to end,
// runs times in turn, and the middle time of each is printed. What one solution takes within a process that runs is
// printed apart: the goal is 1 ms.

func fiftyNodes() (n circuit.Network, err error) {
	err = readCircuit("fifty.json", &n)
	return n, err
}

func printFifty(out io.Writer) error {
	n, err := fiftyNodes()
	if err != nil {
		return err
	}
	r, err := circuit.Solve(n)
	if err != nil {
		return err
	}
	last := r.Nodes[len(r.Nodes)-1]
	_, err = fmt.Fprintf(out, "v(%s) = %.12f\n", last.Name, last.Voltage)
	return err
}

func circuitTimes(out io.Writer) error {
	n, err := fiftyNodes()
	if err != nil {
		return err
	}
	var within []time.Duration
	for range 101 {
		begin := time.Now()
		if _, err := circuit.Solve(n); err != nil {
			return err
		}
		within = append(within, time.Since(begin))
	}
	fmt.Fprintf(out, "\nA tree of %d nodes, within a process: %.2f ms (goal: 1)\n", len(n.Conductors)+1, milliseconds(middleOf(within)))
	fmt.Fprintln(out, "The same as a whole process")
	if _, err := exec.LookPath("ngspice"); err != nil {
		fmt.Fprintln(out, "  ngspice is not installed: no comparison")
		return nil
	}
	return circuitRace(out)
}

func circuitRace(out io.Writer) error {
	self, err := os.Executable()
	if err != nil {
		return err
	}
	names, times := []string{"ours", "ngspice"}, [2][]time.Duration{}
	for range runs {
		for k, cmd := range []*exec.Cmd{exec.Command(self, "circuit", "fifty"), exec.Command("ngspice", "-b", circuitCases+"fifty.cir")} {
			begin := time.Now()
			if err := cmd.Run(); err != nil {
				return fmt.Errorf("%s: %w", names[k], err)
			}
			times[k] = append(times[k], time.Since(begin))
		}
	}
	for k, name := range names {
		fmt.Fprintf(out, "  %-8s %.1f ms\n", name, milliseconds(middleOf(times[k])))
	}
	fmt.Fprintf(out, "  %.1f times faster\n", float64(middleOf(times[1]))/float64(middleOf(times[0])))
	return nil
}

func middleOf(times []time.Duration) time.Duration {
	return slices.Sorted(slices.Values(times))[len(times)/2]
}
