package main

import (
	"bytes"
	"fmt"
	"io"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"

	"tumblehome/solve/conduction"
)

// How the time is taken. The detail is testdata/hat.json, a folded steel hat under foam and a board. getdp solves it
// with second-order triangles on hat.msh; what gmsh takes to make that mesh is not counted. Ours is asked for an error
// of the heat flow that proves no greater than getdp's on that mesh. Each program is run as a process of its own, from
// start to end, runs times in turn, and the middle time of each is printed. Errors are against our own answer at an
// error of 2·10⁻⁴ by its own bounds; getdp on meshes ever finer falls towards it (5.2972, 5.2966 W/m).
const (
	runs           = 9
	detailAccuracy = 0.001
	judgeAccuracy  = 0.0002
)

func solveDetail(accuracy float64) (heat float64, err error) {
	var s conduction.Section
	if err := readConduction("hat.json", &s); err != nil {
		return 0, err
	}
	r, err := conduction.Solve(s, conduction.Accuracy{Coupling: accuracy})
	if err != nil {
		return 0, err
	}
	return r.Surfaces[1].Heat, nil
}

func printDetail(out io.Writer) error {
	heat, err := solveDetail(detailAccuracy)
	fmt.Fprintln(out, heat)
	return err
}

func conductionTimes(out io.Writer) error {
	fmt.Fprintln(out, "\nOne detail as a whole process")
	judge, err := solveDetail(judgeAccuracy)
	if err != nil {
		return err
	}
	if _, err := exec.LookPath("getdp"); err != nil {
		fmt.Fprintln(out, "  getdp is not installed: no comparison")
		return nil
	}
	folder, err := os.MkdirTemp("", "")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	if err := copyDetail(folder); err != nil {
		return err
	}
	both := []*contender{{name: "ours", command: ownDetail}, {name: "getdp", command: func() *exec.Cmd { return getdpDetail(folder) }}}
	for range runs {
		for _, c := range both {
			if err := c.run(); err != nil {
				return err
			}
		}
	}
	for _, c := range both {
		fmt.Fprintf(out, "  %-6s %.5f W/m, error %.5f %%, %.1f ms\n", c.name, c.heat, 100*math.Abs(c.heat/judge-1), milliseconds(c.middle()))
	}
	fmt.Fprintf(out, "  %.0f times faster (goal: 5)\n", float64(both[1].middle())/float64(both[0].middle()))
	return nil
}

// A contender is a program that solves the detail, with what it found and how long it took each time.
type contender struct {
	name    string
	command func() *exec.Cmd
	heat    float64
	times   []time.Duration
}

// run runs the program, whose first line ends in the heat flow, W/m.
func (c *contender) run() error {
	cmd := c.command()
	var answer bytes.Buffer // through a pipe: getdp would write over the beginning of a file
	cmd.Stdout = &answer
	begin := time.Now()
	if err := cmd.Run(); err != nil {
		return fmt.Errorf("%s: %w", c.name, err)
	}
	c.times = append(c.times, time.Since(begin))
	first, _, _ := strings.Cut(answer.String(), "\n")
	words := strings.Fields(first)
	if len(words) == 0 {
		return fmt.Errorf("%s printed nothing", c.name)
	}
	var err error
	c.heat, err = strconv.ParseFloat(words[len(words)-1], 64)
	return err
}

func (c *contender) middle() time.Duration {
	return slices.Sorted(slices.Values(c.times))[len(c.times)/2]
}

func ownDetail() *exec.Cmd {
	self, err := os.Executable()
	if err != nil {
		self = os.Args[0]
	}
	return exec.Command(self, "conduction", "detail")
}

func getdpDetail(folder string) *exec.Cmd {
	cmd := exec.Command("getdp", "hat.pro", "-msh", "hat.msh", "-solve", "#1", "-pos", "#1", "-v", "1")
	cmd.Dir = folder
	return cmd
}

func copyDetail(folder string) error {
	for _, name := range []string{"hat.pro", "hat.msh"} {
		text, err := os.ReadFile(conductionCases + name)
		if err != nil {
			return err
		}
		if err := os.WriteFile(filepath.Join(folder, name), text, 0o644); err != nil {
			return err
		}
	}
	return nil
}
