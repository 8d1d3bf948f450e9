package web

import (
	"bytes"
	"crypto/sha256"
	"embed"
	"encoding/hex"
	"fmt"
	"io/fs"
	"net/http"
	"path"
	"time"

	"tumblehome/draw"
)

// bundled is what internal/tools/bundle makes: main.js, main.css, fonts.
//
//go:embed all:static
var bundled embed.FS

//go:embed mark.svg
var mark []byte

// assets are the files that pages load, each under a digest of its content so that browsers keep it until it changes.
type assets struct {
	files   map[string][]byte
	digests map[string]string
}

func newAssets(from fs.FS) (*assets, error) {
	if from == nil {
		from, _ = fs.Sub(bundled, "static") // the folder is embedded above
	}
	a := &assets{files: map[string][]byte{"mark.svg": mark, "drawing.css": []byte(draw.Stylesheet())}, digests: map[string]string{}}
	err := fs.WalkDir(from, ".", func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		content, err := fs.ReadFile(from, name)
		a.files[path.Base(name)] = content
		return err
	})
	if err != nil {
		return nil, fmt.Errorf("static files: %w", err)
	}
	for name, content := range a.files {
		a.digests[name] = digest(content)
	}
	return a, nil
}

func digest(content []byte) string {
	sum := sha256.Sum256(content)
	return hex.EncodeToString(sum[:6])
}

// address is where a page finds a file.
func (a *assets) address(name string) string { return "/static/" + name + "?v=" + a.digests[name] }

// ServeHTTP sends a file: for good when the address carries its digest, else to be asked for again each time.
func (a *assets) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	name := r.PathValue("file")
	content, ok := a.files[name]
	if !ok {
		http.NotFound(w, r)
		return
	}
	w.Header().Set("Cache-Control", "no-cache")
	if r.FormValue("v") == a.digests[name] {
		w.Header().Set("Cache-Control", "public, max-age=31536000, immutable")
	}
	w.Header().Set("ETag", `"`+a.digests[name]+`"`)
	http.ServeContent(w, r, name, time.Time{}, bytes.NewReader(content))
}
