// Package examples holds three invented builds, complete enough to try everything on.
package examples

import "embed"

// Files are the documents dipper.yaml, twite.yaml and godwit.yaml.
//
//go:embed *.yaml
var Files embed.FS

// Names lists the builds, the one to begin with first.
var Names = []string{"dipper", "twite", "godwit"}

// Document returns the text of a build.
func Document(name string) ([]byte, error) { return Files.ReadFile(name + ".yaml") }
