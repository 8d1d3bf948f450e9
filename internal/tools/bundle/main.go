// Command bundle builds the front end: web/src/main.ts and web/style/main.css
// with all they import become internal/web/static/main.js and main.css,
// minified, for browsers of the last years. Run it at the repository's root,
// after npm ci.
//
// A style sheet names a font by its npm package, and the file is copied beside it:
//
//	src: url("@fontsource/barlow/files/barlow-latin-400-normal.woff2")
//
// Addresses that begin with /static/ are left as they are.
package main

import (
	"fmt"
	"os"
	"path/filepath"

	"github.com/evanw/esbuild/pkg/api"
)

const (
	target = "internal/web/static"
	kept   = "README.txt" // marks the folder in a clean clone
)

func main() {
	if err := bundle(); err != nil {
		fmt.Fprintln(os.Stderr, "bundle:", err)
		os.Exit(1)
	}
}

func bundle() error {
	if err := sweep(); err != nil {
		return err
	}
	result := api.Build(options())
	for _, w := range result.Warnings {
		fmt.Fprint(os.Stderr, describe(w, api.WarningMessage))
	}
	if len(result.Errors) > 0 {
		for _, e := range result.Errors {
			fmt.Fprint(os.Stderr, describe(e, api.ErrorMessage))
		}
		return fmt.Errorf("%d errors", len(result.Errors))
	}
	for _, file := range result.OutputFiles {
		fmt.Printf("%8d bytes  %s\n", len(file.Contents), filepath.Join(target, filepath.Base(file.Path)))
	}
	return nil
}

func options() api.BuildOptions {
	return api.BuildOptions{
		EntryPointsAdvanced: []api.EntryPoint{
			{InputPath: "web/src/main.ts", OutputPath: "main"},
			{InputPath: "web/style/main.css", OutputPath: "main"},
		},
		Outdir:            target,
		Bundle:            true,
		Write:             true,
		Format:            api.FormatESModule,
		Target:            api.ES2023,
		Engines:           []api.Engine{{Name: api.EngineChrome, Version: "120"}, {Name: api.EngineFirefox, Version: "121"}, {Name: api.EngineSafari, Version: "17"}},
		MinifyWhitespace:  true,
		MinifySyntax:      true,
		MinifyIdentifiers: true,
		LegalComments:     api.LegalCommentsEndOfFile,
		Loader:            map[string]api.Loader{".woff2": api.LoaderFile, ".svg": api.LoaderFile},
		AssetNames:        "[name]",
		External:          []string{"/static/*"},
	}
}

// sweep removes what an earlier bundle left, so that a file no longer made is no longer embedded.
func sweep() error {
	old, err := os.ReadDir(target)
	if err != nil {
		return err
	}
	for _, entry := range old {
		if entry.Name() == kept {
			continue
		}
		if err := os.RemoveAll(filepath.Join(target, entry.Name())); err != nil {
			return err
		}
	}
	return nil
}

func describe(m api.Message, kind api.MessageKind) string {
	return api.FormatMessages([]api.Message{m}, api.FormatMessagesOptions{Kind: kind})[0]
}
