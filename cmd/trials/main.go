// Command trials answers: how good and how fast are the solvers, on cases that anybody can look up, beside programs
// that anybody can install?
//
//	go run ./cmd/trials conduction
//	go run ./cmd/trials sky -hourly FOLDER
//
// It is run from the root of the sources, where the cases lie. Each subject has a file of its own; without one all
// subjects are listed. What is not installed is left out and said to be.
package main

import (
	"fmt"
	"io"
	"os"
)

// A trial prints how one solver does. Further words of the command line are its own.
type trial struct {
	name, question string
	run            func(out io.Writer, args []string) error
}

var trials = []trial{
	{"conduction", "heat through sections: cases of ISO 10211 and others; time beside getdp", conductionTrial},
	{"sky", "the sun beside PyEphem; drawn years beside hourly ones: -hourly folder", skyTrial},
	{"power", "the yield of a flat panel: drawn years beside hourly ones, and time: -hourly folder", powerTrial},
	{"circuit", "direct-current networks: a branched one and random trees; time beside ngspice", circuitTrial},
}

func main() {
	if err := run(os.Stdout, os.Args[1:]); err != nil {
		fmt.Fprintln(os.Stderr, "trials:", err)
		os.Exit(1)
	}
}

func run(out io.Writer, args []string) error {
	if len(args) == 0 {
		for _, t := range trials {
			fmt.Fprintf(out, "%-12s %s\n", t.name, t.question)
		}
		return nil
	}
	for _, t := range trials {
		if t.name == args[0] {
			return t.run(out, args[1:])
		}
	}
	return fmt.Errorf("no trial is called %q; without a name they are listed", args[0])
}
