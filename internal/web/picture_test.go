package web_test

import (
	"context"
	"net"
	"net/http"
	"sync"
	"testing"
	"time"
)

func TestPicturesAreMadeOneAfterTheOther(t *testing.T) {
	if testing.Short() {
		t.Skip("three pictures take a while")
	}
	w := open(t, dipper)
	var all sync.WaitGroup
	for range 3 {
		all.Go(func() {
			if got := w.answer(get("/sheet.png?mode=day")); got.Code != http.StatusOK || got.Body.Len() < 1000 {
				t.Errorf("a picture answers %d with %d bytes", got.Code, got.Body.Len())
			}
		})
	}
	all.Wait()
}

func TestWhoLeavesTheQueueIsNotWaitedFor(t *testing.T) {
	w := open(t, dipper)
	gone, leave := context.WithCancel(context.Background())
	leave()
	w.answer(get("/sheet.png").WithContext(gone)) // whichever way it goes, the next one gets its turn
	if got := w.answer(get("/sheet.png")); got.Code != http.StatusOK {
		t.Errorf("the next picture answers %d", got.Code)
	}
}

// A request whose body never comes keeps no program from ending.
func TestServingEndsThoughARequestNeverDoes(t *testing.T) {
	if testing.Short() {
		t.Skip("it is given five seconds")
	}
	w := open(t, dipper)
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	ctx, stop := context.WithCancel(context.Background())
	ended := make(chan error, 1)
	go func() { ended <- w.server.Serve(ctx, listener) }()
	slow, err := net.Dial("tcp", listener.Addr().String())
	if err != nil {
		t.Fatal(err)
	}
	defer func() { _ = slow.Close() }()
	_, err = slow.Write([]byte("POST /edit HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: 99\r\n\r\npath="))
	if err != nil {
		t.Fatal(err)
	}
	time.Sleep(200 * time.Millisecond) // until it is under way
	stop()
	select {
	case err := <-ended:
		if err != nil {
			t.Errorf("it ended with %v", err)
		}
	case <-time.After(10 * time.Second):
		t.Error("a request that never ends keeps the server from ending")
	}
}
