package web

import (
	"encoding/json"
	"fmt"
	"net/http"
	"sync"
	"time"
)

// bulletin is all that is ever sent as news: which revision there is, which stages of it are worked out, and which run of the program says so.
type bulletin struct {
	Revision int      `json:"revision"`
	Stages   []string `json:"stages"`
	Run      string   `json:"run"`
	Told     int      `json:"told"` // how many were told up to this one: a page that was drawn later knows it already
}

// newsroom tells every open page that there is something newer. A reader that is slow misses bulletins, never blocks one:
// the next says all there is to know.
type newsroom struct {
	run     string // differs each time the program is started
	mu      sync.Mutex
	readers map[chan bulletin]bool
	last    bulletin
}

func newNewsroom(run string) *newsroom {
	return &newsroom{run: run, readers: map[chan bulletin]bool{}}
}

func (n *newsroom) tell(b bulletin) {
	n.mu.Lock()
	defer n.mu.Unlock()
	b.Run, b.Told = n.run, n.last.Told+1
	n.last = b
	for reader := range n.readers {
		select {
		case <-reader: // the older bulletin has not been read: replace it
		default:
		}
		reader <- b
	}
}

func (n *newsroom) join() (news chan bulletin, leave func()) {
	news = make(chan bulletin, 1)
	n.mu.Lock()
	defer n.mu.Unlock()
	n.readers[news] = true
	if n.last.Revision > 0 {
		news <- n.last
	}
	return news, func() {
		n.mu.Lock()
		defer n.mu.Unlock()
		delete(n.readers, news)
	}
}

// told is how many bulletins there were.
func (n *newsroom) told() int {
	n.mu.Lock()
	defer n.mu.Unlock()
	return n.last.Told
}

// heard reports whether any page listens.
func (n *newsroom) heard() bool {
	n.mu.Lock()
	defer n.mu.Unlock()
	return len(n.readers) > 0
}

// heartbeat keeps a silent stream from being taken for a dead one.
const heartbeat = 20 * time.Second

// ServeHTTP streams bulletins until the page leaves.
func (n *newsroom) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	out := http.NewResponseController(w)
	// The server's write time-out would end the stream; this one is meant to last.
	_ = out.SetWriteDeadline(time.Time{})
	w.Header().Set("Content-Type", "text/event-stream")
	w.Header().Set("Cache-Control", "no-store")
	news, leave := n.join()
	defer leave()
	beat := time.NewTicker(heartbeat)
	defer beat.Stop()
	for {
		if err := out.Flush(); err != nil {
			return
		}
		select {
		case <-r.Context().Done():
			return
		case b := <-news:
			text, _ := json.Marshal(b)
			fmt.Fprintf(w, "data: %s\n\n", text)
		case <-beat.C:
			fmt.Fprint(w, ": still here\n\n")
		}
	}
}
