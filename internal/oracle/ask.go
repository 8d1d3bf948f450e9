package oracle

import (
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"maps"
	"os"
	"testing"
)

var rewrite = flag.Bool("oracle.record", false, "run the reference programs and rewrite their recorded answers")

// Ask returns what the program says about the input file, a path within the
// test's package such as "testdata/overlap.py". Further files that the input
// reads lie beside it when it runs. The test fails when the program fails or the
// record does not fit the input, and is skipped at home when there is neither program nor record.
func Ask(t testing.TB, p Program, input string, further ...string) []byte {
	t.Helper()
	files := append([]string{input}, further...)
	answer, err := ask(p, t.TempDir(), files, *rewrite, os.Getenv("CI") != "")
	if errors.Is(err, errMissing) && os.Getenv("CI") == "" && !*rewrite {
		t.Skipf("%s: %s is not installed and no answer is recorded", input, p.Name())
	}
	if err != nil {
		t.Fatal(err)
	}
	return answer
}

// Decode asks, and reads the answer as JSON into v.
func Decode(t testing.TB, p Program, input string, v any, further ...string) {
	t.Helper()
	answer := Ask(t, p, input, further...)
	if err := json.Unmarshal(answer, v); err != nil {
		t.Fatalf("%s: the answer of %s is not the JSON expected: %v\n%s", input, p.Name(), err, answer)
	}
}

// ask is Ask without the test: strict is the rule of CI.
func ask(p Program, folder string, files []string, rewrite, strict bool) ([]byte, error) {
	path := recordPath(files[0])
	sums, err := digests(files)
	if err != nil {
		return nil, err
	}
	kept, found, err := load(path)
	if err != nil {
		return nil, err
	}
	if !rewrite {
		if found && !(kept.Program == p.Name() && maps.Equal(kept.Inputs, sums)) {
			return nil, fmt.Errorf("%s was recorded from another input or program: run the test with -oracle.record", path)
		}
		if !found && strict {
			return nil, fmt.Errorf("%s is missing: run the test with -oracle.record and commit it", path)
		}
	}
	answer, err := p.run(folder, files)
	if errors.Is(err, errMissing) && found && !rewrite {
		return kept.answer(), nil
	}
	if err != nil {
		return nil, fmt.Errorf("%s: %w", files[0], err)
	}
	if rewrite {
		return answer, newRecord(p, sums, answer).save(path)
	}
	return answer, nil
}
