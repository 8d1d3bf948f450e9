package browser

import (
	"context"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
)

// Slow makes the page's processor so many times slower, to measure as on an old laptop.
func (p *Page) Slow(times float64) {
	p.t.Helper()
	p.do("slow the processor", chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
		_, err := cdp.Call(ctx, t, emulation.SetCPUThrottlingRate, emulation.SetCPUThrottlingRateParams{Rate: times})
		return err
	}))
}

// Offline cuts the page off the network, as in a field, or joins it again.
func (p *Page) Offline(cut bool) {
	p.t.Helper()
	p.do("cut the network", chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
		if _, err := cdp.Call(ctx, t, network.EmulateNetworkConditionsByRule, network.EmulateNetworkConditionsByRuleParams{
			MatchedNetworkConditions: []*network.Conditions{{Offline: cut, DownloadThroughput: -1, UploadThroughput: -1}},
		}); err != nil {
			return err
		}
		_, err := cdp.Call(ctx, t, network.OverrideNetworkState, network.OverrideNetworkStateParams{
			Offline: cut, DownloadThroughput: -1, UploadThroughput: -1,
		})
		return err
	}))
}
