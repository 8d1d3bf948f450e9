package web

import (
	"cmp"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue/settings"
)

// takeEntries are the fittings that can stand otherwise than at rest, each with the position it takes in the mode shown.
func takeEntries(v view) []entry {
	var out []entry
	for _, id := range build.SortedKeys(v.Doc.Fittings) {
		f := v.Doc.Fittings[id]
		if len(f.Positions) == 0 {
			continue
		}
		e := entry{Path: "/modes/" + v.Mode + "/take/" + id, Label: v.name(id), Choices: []choice{{"", "at rest"}}}
		for _, position := range build.SortedKeys(f.Positions) {
			e.Choices = append(e.Choices, choice{position, unhyphen(position)})
		}
		out = append(out, e)
	}
	return out
}

// poseView is where one person is in the mode shown.
type poseView struct {
	Person, Path string
	Name         string   // what they are called
	Now          string   // what the choices say of it now; "" for nowhere in particular
	Choices      []choice // every thing that somebody can lie, sit, stand or cook at
	Lies         bool
	Head         entry
}

// posesOf lists the people with all that they could be doing.
func posesOf(v view) []poseView {
	var out []poseView
	for _, id := range build.SortedKeys(v.Doc.People) {
		p := poseView{Person: id, Name: cmp.Or(v.Doc.People[id].Called, unhyphen(id)), Path: "/modes/" + v.Mode + "/people/" + id, Choices: v.uses()}
		pose := v.Doc.Modes[v.Mode].People[id]
		for verb, at := range map[string]string{"lies": pose.Lies, "sits": pose.Sits, "stands": pose.Stands, "cooks": pose.Cooks} {
			if at != "" {
				p.Now = poseText(verb, at)
				p.Choices = withChoice(p.Choices, choice{p.Now, poseWords(verb) + " " + v.name(at)})
			}
		}
		p.Lies = pose.Lies != ""
		p.Head = entry{Path: p.Path + "/head", Label: "head towards", Choices: append([]choice{{"", "anywhere"}}, wordsAllowed("front", "rear", "left", "right")...)}
		out = append(out, p)
	}
	return out
}

// uses are what people can do at the fittings, by what these are.
func (v view) uses() []choice {
	out := []choice{{"", "in the cab, or nowhere in particular"}}
	verbs := []struct {
		use  settings.Use
		verb string
	}{{settings.Lies, "lies"}, {settings.Sits, "sits"}, {settings.Stands, "stands"}, {settings.Cooks, "cooks"}}
	for _, id := range build.SortedKeys(v.Doc.Fittings) {
		f := v.Doc.Fittings[id]
		setting, ok := settings.Get(f.Make)
		for _, u := range verbs {
			if ok && setting.Does(u.use) && !v.idle(u.use, id) {
				out = append(out, choice{poseText(u.verb, id), poseWords(u.verb) + " " + v.name(id)})
			}
		}
	}
	return out
}

// idle reports whether nobody does that there: one lies on the mattress, not on the bed below it, and cooks while the van stands.
func (v view) idle(use settings.Use, id string) bool {
	switch use {
	case settings.Cooks:
		return v.Mode == "drive"
	case settings.Lies:
		for over, f := range v.Doc.Fittings {
			setting, ok := settings.Get(f.Make)
			on := cmp.Or(f.In, f.Upon) == id
			if f.Upon = id; ok && on && setting.Does(settings.Lies) && v.liesUpon(over, f) {
				return true
			}
		}
	}
	return false
}

// poseText is a pose in the document's grammar.
func poseText(verb, at string) string {
	return string(tree.JSON(tree.MapOf(tree.Entry{Key: verb, Value: tree.Plain(at)})))
}

func poseWords(verb string) string {
	return map[string]string{"lies": "lies on", "sits": "sits on", "stands": "stands at", "cooks": "cooks at"}[verb]
}

func withChoice(all []choice, one choice) []choice {
	for _, c := range all {
		if c.Value == one.Value {
			return all
		}
	}
	return append(all, one)
}
