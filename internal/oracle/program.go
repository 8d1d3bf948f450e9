package oracle

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"time"
)

// A Program is a reference program and how it is run on one input file.
type Program struct {
	path    string   // executable; a bare name is sought on the PATH
	version string   // argument that makes it print its version
	args    []string // before the input
	after   []string // behind the input
	further bool     // whether further files are arguments too
}

// The reference programs, each Debian's package of the day.
var (
	Python   = Program{path: "/usr/bin/python3", version: "--version"} // Debian's, which sees Debian's scipy and shapely
	NGSpice  = Program{path: "ngspice", version: "--version", args: []string{"-b"}}
	GetDP    = Program{path: "getdp", version: "-version", after: []string{"-solve", "#1", "-pos", "#1", "-v", "1"}}
	MiniZinc = Program{path: "minizinc", version: "--version", args: []string{"--solver", "gecode"}, further: true}
	GLPSol   = Program{path: "glpsol", version: "--version"}
)

// Name is the program's plain name, "python3".
func (p Program) Name() string { return filepath.Base(p.path) }

// errMissing says that the program, or a library its input asks for, is not on this machine.
var errMissing = errors.New("not installed")

const patience = 2 * time.Minute

// run copies the files into folder and runs the program there on the first.
func (p Program) run(folder string, files []string) ([]byte, error) {
	executable, err := exec.LookPath(p.path)
	if err != nil {
		return nil, errMissing
	}
	names, err := copyInto(folder, files)
	if err != nil {
		return nil, err
	}
	args, answerFile := p.arguments(names)
	ctx, stop := context.WithTimeout(context.Background(), patience)
	defer stop()
	cmd := exec.CommandContext(ctx, executable, args...)
	cmd.Dir = folder
	cmd.Env = append(os.Environ(), "LC_ALL=C.UTF-8", "PYTHONHASHSEED=0", "PYTHONDONTWRITEBYTECODE=1")
	var stdout, stderr bytes.Buffer
	cmd.Stdout, cmd.Stderr = &stdout, &stderr
	if err := cmd.Run(); err != nil {
		if strings.Contains(stderr.String(), "ModuleNotFoundError") {
			return nil, errMissing
		}
		return nil, fmt.Errorf("%s %s: %w\n%s%s", p.Name(), names[0], err, stdout.Bytes(), stderr.Bytes())
	}
	if answerFile != "" {
		return os.ReadFile(filepath.Join(folder, answerFile))
	}
	return stdout.Bytes(), nil
}

// arguments gives the command line and, where the program answers into a
// file, that file's name.
func (p Program) arguments(names []string) (args []string, answerFile string) {
	if p.Name() == GLPSol.path {
		answerFile = "answer.txt"
		if strings.HasSuffix(names[0], ".lp") {
			return []string{"--lp", names[0], "--write", answerFile}, answerFile
		}
		return []string{"--math", names[0], "--display", answerFile}, answerFile
	}
	args = append(append([]string{}, p.args...), names[0])
	if p.further {
		args = append(args, names[1:]...)
	}
	for _, name := range names[1:] {
		if strings.HasSuffix(name, ".msh") {
			args = append(args, "-msh", name)
		}
	}
	return append(args, p.after...), ""
}

// release is the first line that the program prints about its version.
func (p Program) release() string {
	text, err := exec.Command(p.path, p.version).CombinedOutput()
	if err != nil && len(text) == 0 {
		return ""
	}
	for _, line := range strings.Split(string(text), "\n") {
		if line = strings.Trim(line, "* \r"); line != "" {
			return line
		}
	}
	return ""
}

func copyInto(folder string, files []string) (names []string, err error) {
	for _, file := range files {
		content, err := os.ReadFile(file)
		if err != nil {
			return nil, err
		}
		name := filepath.Base(file)
		if err := os.WriteFile(filepath.Join(folder, name), content, 0o644); err != nil {
			return nil, err
		}
		names = append(names, name)
	}
	return names, nil
}
