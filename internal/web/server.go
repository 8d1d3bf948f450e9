package web

import (
	"context"
	"crypto/rand"
	"errors"
	"io/fs"
	"log/slog"
	"net"
	"net/http"
	"time"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/draw"
	"tumblehome/draw/sheet"
	"tumblehome/internal/store"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

// Keeper keeps the revisions of one build; *store.Store is one.
type Keeper interface {
	Head() (store.Revision, *build.Document)
	Save(ctx context.Context, e store.Edit) (store.Revision, error)
	UndoSeen(ctx context.Context, seen int, by string) (store.Revision, error)
	RedoSeen(ctx context.Context, seen int, by string) (store.Revision, error)
	CanUndo(ctx context.Context) (undo, redo bool, err error)
	Revisions(ctx context.Context, before, limit int) ([]store.Revision, error)
	At(ctx context.Context, n int) (*build.Document, error)
	Refresh(ctx context.Context) (changed bool, err error)
	Barred() error
}

// Options is what a server needs.
type Options struct {
	Store  Keeper
	Reckon func(doc *build.Document, today quantity.Date) *reckon.Reckoning                           // (*reckon.Machine).Reckon
	AtHand func(doc *build.Document, today quantity.Date, before *reckon.Reckoning) *reckon.Reckoning // (*reckon.Machine).AtHand, for what is not saved; nil is Reckon
	Draw   func(r *reckon.Reckoning, v sheet.View) draw.Scene                                         // the arrangement; nil is sheet.Arrangement
	Today  func() quantity.Date                                                                       // the day the build is reckoned for
	Static fs.FS                                                                                      // main.js, main.css, fonts; nil takes the bundled ones
	Log    *slog.Logger                                                                               // failures of the program; nil keeps none
}

// Server shows one build.
type Server struct {
	desk   *desk
	draw   func(*reckon.Reckoning, sheet.View) draw.Scene
	assets *assets
	pages  map[string]page
	bases  bases
	raster chan struct{} // holds one while a picture is made
	log    *slog.Logger
}

// New opens the desk on a build and works it out for the first time.
func New(o Options) (*Server, error) {
	if o.Log == nil {
		o.Log = slog.New(slog.DiscardHandler)
	}
	if o.Draw == nil {
		o.Draw = sheet.Arrangement
	}
	if o.AtHand == nil {
		o.AtHand = func(doc *build.Document, today quantity.Date, _ *reckon.Reckoning) *reckon.Reckoning {
			return o.Reckon(doc, today)
		}
	}
	shelf, err := newAssets(o.Static)
	if err != nil {
		return nil, err
	}
	d := &desk{store: o.Store, reckon: o.Reckon, atHand: o.AtHand, today: o.Today, news: newNewsroom(rand.Text()), rows: catalogue.Builtin()}
	d.notice(o.Store.Barred())
	if err := d.renew(context.Background()); err != nil {
		return nil, err
	}
	return &Server{desk: d, draw: o.Draw, assets: shelf, pages: pages(), raster: make(chan struct{}, 1), log: o.Log}, nil
}

// Handler answers every request, guarded.
func (s *Server) Handler() http.Handler { return guard(s.routes()) }

const (
	readingTime = 30 * time.Second // for a whole request, a photo from a phone included
	closingTime = 5 * time.Second  // for answers under way when the program ends
)

// Serve answers on a listener until the context ends, then lets what is under way come to its end.
func (s *Server) Serve(ctx context.Context, listener net.Listener) error {
	base, leave := context.WithCancel(context.Background())
	defer leave()
	server := &http.Server{
		Handler: s.Handler(), ReadTimeout: readingTime, ReadHeaderTimeout: readingTime, IdleTimeout: 2 * time.Minute,
		MaxHeaderBytes: 64 << 10,
		BaseContext:    func(net.Listener) context.Context { return base },
		ErrorLog:       slog.NewLogLogger(s.log.Handler(), slog.LevelWarn),
	}
	go s.desk.watch(base)
	closed := make(chan error, 1)
	go func() {
		<-ctx.Done()
		leave() // ends the streams of news, which would otherwise never be at rest
		patience, cancel := context.WithTimeout(context.Background(), closingTime)
		defer cancel()
		closed <- shut(server, patience)
	}()
	if err := server.Serve(listener); !errors.Is(err, http.ErrServerClosed) {
		return err
	}
	return <-closed
}

// shut lets answers under way come to their end, and cuts off those that take too long: the program was told to end.
func shut(server *http.Server, patience context.Context) error {
	err := server.Shutdown(patience)
	if errors.Is(err, context.DeadlineExceeded) {
		return server.Close()
	}
	return err
}
