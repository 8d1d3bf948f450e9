package oracle

import (
	"bytes"
	"crypto/sha256"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// record is an answer kept beside its input. An answer that is JSON is kept
// as JSON, so that a change of it reads well; any other is kept as text.
type record struct {
	Program string            `json:"program"`
	Release string            `json:"release"`
	Inputs  map[string]string `json:"sha256"` // of each file by name
	JSON    json.RawMessage   `json:"answer,omitempty"`
	Text    string            `json:"text,omitempty"`
}

func (r record) answer() []byte {
	if r.JSON != nil {
		return bytes.TrimSpace(r.JSON)
	}
	return []byte(r.Text)
}

func newRecord(p Program, inputs map[string]string, answer []byte) record {
	r := record{Program: p.Name(), Release: p.release(), Inputs: inputs}
	if json.Valid(answer) {
		r.JSON = bytes.TrimSpace(answer)
	} else {
		r.Text = string(answer)
	}
	return r
}

// recordPath is testdata/name.answer.json for testdata/name.py.
func recordPath(input string) string {
	return strings.TrimSuffix(input, filepath.Ext(input)) + ".answer.json"
}

// digests gives the SHA-256 of each file by its name.
func digests(files []string) (map[string]string, error) {
	sums := map[string]string{}
	for _, file := range files {
		content, err := os.ReadFile(file)
		if err != nil {
			return nil, err
		}
		sums[filepath.Base(file)] = fmt.Sprintf("%x", sha256.Sum256(content))
	}
	return sums, nil
}

// load reads the record at path. found is false when there is none.
func load(path string) (r record, found bool, err error) {
	text, err := os.ReadFile(path)
	if errors.Is(err, fs.ErrNotExist) {
		return r, false, nil
	}
	if err != nil {
		return r, false, err
	}
	if err := json.Unmarshal(text, &r); err != nil {
		return r, false, fmt.Errorf("%s: %w", path, err)
	}
	return r, true, nil
}

func (r record) save(path string) error {
	var text bytes.Buffer
	encoder := json.NewEncoder(&text)
	encoder.SetEscapeHTML(false)
	encoder.SetIndent("", " ")
	if err := encoder.Encode(r); err != nil {
		return err
	}
	return os.WriteFile(path, text.Bytes(), 0o644)
}
