package draw_test

import (
	"fmt"
	"os"

	"tumblehome/draw"
)

func Example() {
	plan := draw.View{Origin: draw.Pt(40, 60), Scale: 20}
	galley := draw.Group{ID: "plan-galley", Class: "fitting", Digest: "5c1d", Title: "galley", Marks: []draw.Mark{
		draw.Area(draw.PenOutline, draw.FillTone, draw.Rectangle(plan.Box(0, 0, 1200, 540))),
		draw.Lettering{Text: "galley", At: plan.At(600, 270), Anchor: draw.Middle, Level: draw.Midline, Strong: true},
	}}
	width := draw.Dimension(plan.At(0, 540), plan.At(1200, 540), draw.Horizontal, 95, "1 200")
	scene := draw.Scene{Size: draw.A4, Title: "galley, plan"}.With(galley).With(width.Marks()...)
	fmt.Print(scene)
	fmt.Println(len(scene.Check()), "flaws")
	// Output:
	// sheet 297 × 210 mm "galley, plan"
	//   group plan-galley .fitting digest=5c1d "galley"
	//     outline on tone M40 60 L100 60 L100 87 L40 87Z
	//     "galley" 2.5 at 70,73.5 middle midline strong
	//   dimension M40 95 L100 95 M40 88.2 L40 96.5 M100 88.2 L100 96.5
	//   on ink-2 M40 95 L42.4 94.65 L42.4 95.35Z M100 95 L97.6 94.65 L97.6 95.35Z
	//   "1 200" 2.5 at 70,94.1 middle
	// 0 flaws
}

func ExampleGroup_SVG() {
	flag := draw.Flag{ID: "flag-4", Severity: draw.Danger, Number: 4, Place: draw.Pt(20, 30), At: draw.Pt(40, 20), Title: "no fuse", Href: "#note-4"}
	_ = flag.Group().SVG(os.Stdout)
	// Output:
	// <a id="flag-4" class="flag danger" href="#note-4">
	// <title>no fuse</title>
	// <path class="pen-leader" d="M40 20 L20 30"/>
	// <path class="fill-ink" d="M19.4 30 A0.6 0.6 0 0 1 20.6 30 A0.6 0.6 0 0 1 19.4 30Z"/>
	// <path class="fill-danger" d="M41.61 16.12 L43.88 18.39 L43.88 21.61 L41.61 23.88 L38.39 23.88 L36.12 21.61 L36.12 18.39 L38.39 16.12Z"/>
	// <text x="40" y="21.25" font-size="3.57" text-anchor="middle" class="strong ink-flag-ink">4</text>
	// </a>
}
