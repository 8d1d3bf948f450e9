package web

import (
	"context"
	"errors"
	"time"

	"tumblehome/internal/store"
)

// lookEvery is how often the file is looked at while a page is open: another program may write to it.
const lookEvery = time.Second

// watch looks at the file until the context ends.
func (d *desk) watch(ctx context.Context) {
	for tick := time.NewTicker(lookEvery); ; {
		select {
		case <-ctx.Done():
			tick.Stop()
			return
		case <-tick.C:
			if d.news.heard() {
				d.look(ctx)
			}
		}
	}
}

// look finds what another program has written, works it out, and notices when the file can no longer be used.
func (d *desk) look(ctx context.Context) {
	if d.store.Barred() != nil {
		return // what can not be written to was said when it was opened
	}
	changed, err := d.store.Refresh(ctx)
	if changed {
		_, err = d.head(ctx)
	}
	if ctx.Err() == nil && d.notice(err) {
		now := d.now.Load()
		d.news.tell(bulletin{Revision: now.Revision.N, Stages: append(stagesAtHand[:len(stagesAtHand):len(stagesAtHand)], "notice")})
	}
}

// notice keeps in sight what stands in the way of saving, and tells whether that is new. No error takes it away.
func (d *desk) notice(err error) (changed bool) {
	var trouble *store.Trouble
	says := ""
	switch {
	case errors.As(err, &trouble):
		says = trouble.Says
	case err != nil:
		says = "The build's file can not be read; what is shown may not be the newest."
	}
	before := d.bar.Swap(&says)
	return before == nil && says != "" || before != nil && *before != says
}

// noticed is what stands in the way of saving, or "".
func (d *desk) noticed() string {
	if says := d.bar.Load(); says != nil {
		return *says
	}
	return ""
}
