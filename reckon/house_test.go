package reckon_test

import (
	"sync"
	"testing"

	"tumblehome/build"
	"tumblehome/build/begin"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/examples"
	"tumblehome/internal/faultcase"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

// The house tests hold for every build there is to try: the demonstration builds with their alternatives, each fault case, what the first
// hour makes of each outline, and the least that can be read at all. They take no day from the clock.
//
//	house_figures_test.go    every figure shows its working
//	house_pointers_test.go   everything that points somewhere points at something
//	house_words_test.go      the words are a builder's
//	house_sums_test.go       the whole is the sum of its parts
//	house_numbers_test.go    every number is a number, and the same twice
//	house_proposals_test.go  what is proposed can be done
//	house_rename_test.go     what a thing is called changes nothing
//	house_shift_test.go      where the tape began changes nothing
//	house_mirror_test.go     a van seen in a mirror gives the results seen in a mirror
//	house_lever_test.go      the lever rule on a whole build

// tried is one build and what follows from it.
type tried struct {
	name string
	doc  *build.Document
	*reckon.Reckoning
}

// demos are the demonstration builds; each is reckoned once for all tests.
var demos = sync.OnceValues(func() ([]tried, error) {
	var all []tried
	for _, name := range examples.Names {
		text, err := examples.Document(name)
		if err != nil {
			return nil, err
		}
		doc, _, err := build.Decode(name+".yaml", text, catalogue.Builtin())
		if err != nil {
			return nil, err
		}
		all = append(all, tried{name, doc, reckoned(doc)})
	}
	return all, nil
})

// faulty are the builds of the fault cases.
var faulty = sync.OnceValues(func() ([]tried, error) {
	var all []tried
	machine := quick()
	for _, c := range faultcase.All() {
		if c.Refused != "" {
			continue
		}
		doc, err := c.Document()
		if err != nil {
			return nil, err
		}
		all = append(all, tried{c.Name, doc, machine.Reckon(doc, quantity.Date{})})
	}
	return all, nil
})

// others are the alternatives of the demonstration builds, the twenty-seven starting arrangements, and the least that can be read.
var others = sync.OnceValues(func() ([]tried, error) {
	all, err := alternatives()
	if err != nil {
		return nil, err
	}
	machine := quick()
	add := func(name string, doc *build.Document) {
		all = append(all, tried{name, doc, machine.Reckon(doc, quantity.Date{})})
	}
	for _, body := range begin.Bodies() {
		answers := begin.Answers{Title: body.Name, Body: body.ID}
		for _, offer := range append(begin.Offers(answers), begin.Arrangement{}) {
			answers.Arrangement = offer.ID
			doc, _, err := begin.Document(answers)
			if err != nil {
				return nil, err
			}
			add(body.ID+" "+offer.ID, doc)
		}
	}
	least, _, err := build.Decode("least.yaml", []byte(theLeast), catalogue.Builtin())
	if err != nil {
		return nil, err
	}
	add("the least that can be read", least)
	return all, nil
})

const theLeast = `
tumblehome: 1
build: {title: Least, rules: us, currency: USD}
vehicle: {wheelbase: 3000, datum: 1300}
shell: {}
`

func alternatives() ([]tried, error) {
	known, err := demos()
	if err != nil {
		return nil, err
	}
	var all []tried
	for _, b := range known {
		for _, id := range build.SortedKeys(b.doc.Alternatives) {
			doc, err := build.TakeAlternative(b.doc, id, catalogue.Builtin())
			if err != nil {
				return nil, err
			}
			doc.Spending = nil // it may go on pointing at what an alternative takes away
			all = append(all, tried{b.name + " " + id, doc, reckoned(doc)})
		}
	}
	return all, nil
}

func reckoned(doc *build.Document) *reckon.Reckoning {
	return quick().Reckon(doc, quantity.Date{})
}

// quick is a machine for what must hold however many years of weather are gone through.
func quick() *reckon.Machine {
	m := reckon.NewMachine()
	m.Years = 10
	return m
}

// eachDemo runs a test on every demonstration build.
func eachDemo(t *testing.T, test func(*testing.T, tried)) { each(t, test, demos) }

// eachBuild runs a test on every build there is to try.
func eachBuild(t *testing.T, test func(*testing.T, tried)) { each(t, test, demos, faulty, others) }

func each(t *testing.T, test func(*testing.T, tried), lists ...func() ([]tried, error)) {
	t.Helper()
	for _, list := range lists {
		all, err := list()
		if err != nil {
			t.Fatal(err)
		}
		for _, b := range all {
			t.Run(b.name, func(t *testing.T) { test(t, b) })
		}
	}
}

// again reads a document anew from its own tree, so that a test may change the copy.
func again(t *testing.T, doc *build.Document) *build.Document {
	t.Helper()
	return read(t, build.Encode(doc))
}

func read(t *testing.T, n *tree.Node) *build.Document {
	t.Helper()
	doc, err := build.DecodeTree(n, catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	return doc
}
