// Package browser answers: does a page work in a real browser, without a
// single complaint, for a mouse, a finger, a keyboard and a screen reader?
//
// One headless Chromium serves all tests of a package; its TestMain starts with
//
//	func TestMain(m *testing.M) { browser.Main(m) }
//
// and a test opens pages in it, each with storage of its own:
//
//	page := browser.Open(t, server.URL, browser.Desk)
//	page.Click("#add-galley")
//	page.WaitFor(`document.querySelectorAll(".fitting").length == 3`)
//	page.Axe(t)
//	page.Screenshot(t, "arrangement-desk")
//
// At the end of the test every console error, uncaught exception, failed
// request and content policy report fails it, unless Allow foresaw it. The
// browser asks every server for /favicon.ico too.
//
// Steps wait up to a minute for what they need and stop the test when it does not
// come. They belong to the test that opened the page; Axe and
// Screenshot may be given a subtest. Pictures are written to pictures/ at the
// repository's root, which git ignores, where TUMBLEHOME_PICTURES is set, as
// "make gallery" does.
//
// Without Chromium a test is skipped at home and fails in CI (environment
// variable CI). With -short every test that opens a page is skipped.
package browser
