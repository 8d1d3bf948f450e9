package web

import (
	"net"
	"net/http"
	"strconv"
	"strings"
)

// contentPolicy lets pages use only what this server sends, and nothing inline.
const contentPolicy = "default-src 'self'; style-src 'self'; img-src 'self' data: blob:; object-src 'none'; " +
	"base-uri 'none'; form-action 'self'; frame-ancestors 'none'"

// Largest bodies taken: of forms and patches, and of photos.
const (
	largestForm  = 1 << 20
	largestPhoto = 20 << 20
)

// guard refuses what does not come from a page of this server on this machine. Any web page can send a form to a local port, and a name
// may be made to point at this machine, so both the Host and the Origin of a request are checked.
func guard(next http.Handler) http.Handler {
	crossOrigin := http.NewCrossOriginProtection()
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		h := w.Header()
		h.Set("Content-Security-Policy", contentPolicy)
		h.Set("X-Content-Type-Options", "nosniff")
		h.Set("Referrer-Policy", "same-origin") // no-referrer would make browsers send plain forms with "Origin: null"
		h.Set("Cross-Origin-Opener-Policy", "same-origin")
		h.Set("Cross-Origin-Resource-Policy", "same-origin")
		if !loopbackHost(r.Host) {
			http.Error(w, "This workspace answers only on this computer: open it at http://127.0.0.1.", http.StatusMisdirectedRequest)
			return
		}
		if changes(r.Method) && !sameOrigin(r) {
			http.Error(w, "This request came from another site and was refused.", http.StatusForbidden)
			return
		}
		if err := crossOrigin.Check(r); err != nil {
			http.Error(w, "This request came from another site and was refused.", http.StatusForbidden)
			return
		}
		r.Body = http.MaxBytesReader(w, r.Body, largestBody(r))
		next.ServeHTTP(w, r)
	})
}

func changes(method string) bool { return method != http.MethodGet && method != http.MethodHead }

// loopbackHost reports whether a Host header names this machine itself.
func loopbackHost(host string) bool {
	name, port, err := net.SplitHostPort(host)
	if err != nil {
		name = host
	} else if _, err := strconv.ParseUint(port, 10, 16); err != nil {
		return false
	}
	if strings.EqualFold(name, "localhost") {
		return true
	}
	ip := net.ParseIP(strings.Trim(name, "[]"))
	return ip != nil && ip.IsLoopback()
}

// sameOrigin reports whether a changing request names this server as its origin. Browsers always send Origin with one; a program on this
// machine that sends none is no web page.
func sameOrigin(r *http.Request) bool {
	origin := r.Header.Get("Origin")
	return origin == "" || origin == "http://"+r.Host
}

func largestBody(r *http.Request) int64 {
	if strings.HasPrefix(r.Header.Get("Content-Type"), "multipart/form-data") {
		return largestPhoto
	}
	return largestForm
}
