package proof

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"runtime"
	"sort"
	"strconv"
	"strings"
	"sync"
)

// Folder is the environment variable that names where cases are written.
const Folder = "TUMBLEHOME_PROOF"

// A Record is a case as it was checked. Figures are kept as text because JSON
// has no word for a figure that is no number.
type Record struct {
	Package   string `json:"package"`
	Test      string `json:"test"`
	Name      string `json:"name"`
	Source    string `json:"source"`
	Inputs    string `json:"inputs"`
	Expected  string `json:"expected"`
	Got       string `json:"got"`
	Tolerance string `json:"tolerance"`
	Unit      string `json:"unit"`
	OK        bool   `json:"ok"`
}

func record(c Case, pkg, test string, ok bool) Record {
	return Record{
		Package: pkg, Test: test, Name: c.Name, Source: c.Source, Inputs: c.Inputs,
		Expected: figure(c.Expected, 6), Got: figure(c.Got, 6), Tolerance: figure(c.Tolerance, 2),
		Unit: c.Unit, OK: ok,
	}
}

// figure prints the significant digits asked for: six are as many as any
// source here gives. Powers of ten are left to figures that nobody reads otherwise.
func figure(v float64, digits int) string {
	text := strconv.FormatFloat(v, 'g', digits, 64)
	if size := math.Abs(v); size < 1e-4 || size >= 1e10 || math.IsNaN(v) {
		return text
	}
	rounded, err := strconv.ParseFloat(text, 64)
	if err != nil {
		return text
	}
	return strconv.FormatFloat(rounded, 'f', -1, 64)
}

// callerPackage names the package whose test called Check, from the module's
// root: "solve/beam" for a function tumblehome/solve/beam_test.TestSag.
func callerPackage() string {
	pc, _, _, _ := runtime.Caller(2)
	name := runtime.FuncForPC(pc).Name()
	slash := strings.LastIndexByte(name, '/')
	if dot := strings.IndexByte(name[slash+1:], '.'); dot >= 0 {
		name = name[:slash+1+dot]
	}
	return strings.TrimSuffix(strings.TrimPrefix(name, "tumblehome/"), "_test")
}

// out is this process's file, opened when the first case is written. Test
// processes run side by side, so each has a file of its own.
var out struct {
	sync.Mutex
	file *os.File
}

func write(r Record) error {
	folder := os.Getenv(Folder)
	if folder == "" {
		return nil
	}
	line, err := json.Marshal(r)
	if err != nil {
		return err
	}
	out.Lock()
	defer out.Unlock()
	if out.file == nil {
		if out.file, err = os.CreateTemp(folder, "*.jsonl"); err != nil {
			return err
		}
	}
	_, err = out.file.Write(append(line, '\n'))
	return err
}

// Read gathers all records of a folder, sorted by package, test and name.
func Read(folder string) ([]Record, error) {
	files, err := filepath.Glob(filepath.Join(folder, "*.jsonl"))
	if err != nil {
		return nil, err
	}
	var all []Record
	for _, name := range files {
		text, err := os.ReadFile(name)
		if err != nil {
			return nil, err
		}
		for i, line := range strings.Split(strings.TrimSpace(string(text)), "\n") {
			var r Record
			if err := json.Unmarshal([]byte(line), &r); err != nil {
				return nil, fmt.Errorf("%s:%d: %w", name, i+1, err)
			}
			all = append(all, r)
		}
	}
	sort.SliceStable(all, func(i, j int) bool {
		a, b := all[i], all[j]
		if a.Package != b.Package {
			return a.Package < b.Package
		}
		if a.Test != b.Test {
			return a.Test < b.Test
		}
		return a.Name < b.Name
	})
	return all, nil
}
