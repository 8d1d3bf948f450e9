// Package front_test runs the tests of the scripts in web/src: those of web/test in Node, and pages served from testdata in a browser.
package front_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/evanw/esbuild/pkg/api"

	"tumblehome/internal/browser"
)

const root = ".."

func TestMain(m *testing.M) { browser.Main(m) }

// Every *.test.ts is bundled and given to Node's own test runner. Files it reads are named from the repository's root.
func TestTheScriptsKeepTheirWordInNode(t *testing.T) {
	node, err := exec.LookPath("node")
	switch {
	case err != nil && os.Getenv("CI") == "":
		t.Skip("no node on the PATH: scripts not tested")
	case err != nil:
		t.Fatalf("CI needs node: %v", err)
	}
	sources, err := filepath.Glob("test/*.test.ts")
	if err != nil || len(sources) == 0 {
		t.Fatalf("no tests found: %v", err)
	}
	folder := t.TempDir()
	result := api.Build(api.BuildOptions{
		EntryPoints: sources, Outdir: folder, Bundle: true, Write: true, Platform: api.PlatformNode, Format: api.FormatESModule,
		OutExtension: map[string]string{".js": ".mjs"}, Sourcemap: api.SourceMapInline,
	})
	for _, e := range result.Errors {
		t.Fatalf("%s: %s", e.Location.File, e.Text)
	}
	for _, source := range sources {
		name := strings.TrimSuffix(filepath.Base(source), ".ts")
		t.Run(strings.TrimSuffix(name, ".test"), func(t *testing.T) {
			run := exec.Command(node, "--enable-source-maps", "--test", "--test-reporter=spec", filepath.Join(folder, name+".mjs"))
			run.Dir = root
			out, err := run.CombinedOutput()
			if err != nil {
				t.Fatalf("%v\n%s", err, out)
			}
			if !strings.Contains(string(out), "pass ") || strings.Contains(string(out), "pass 0") {
				t.Fatalf("nothing was tested:\n%s", out)
			}
		})
	}
}
