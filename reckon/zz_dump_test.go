package reckon_test

import (
	"fmt"
	"os"
	"testing"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

func TestDump(t *testing.T) {
	for _, n := range []string{"dipper", "twite", "godwit"} {
		text, _ := os.ReadFile("../examples/" + n + ".yaml")
		doc, _, err := build.Decode(n, text, catalogue.Builtin())
		if err != nil {
			fmt.Println(n, err)
			continue
		}
		r := reckon.NewMachine().Reckon(doc, quantity.Date{})
		fmt.Println("==", n, len(r.Figures))
		for _, f := range r.Findings {
			fmt.Println(f.Severity, f.Code, f.About, f.Mode, "|", f.Title, "|", f.Accepted, len(f.Proposals))
		}
	}
}
