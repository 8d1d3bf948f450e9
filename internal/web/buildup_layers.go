package web

import (
	"strconv"
	"strings"

	"tumblehome/build"
	"tumblehome/internal/words"
)

// layerView is one layer as the document has it, with what it comes to.
type layerView struct {
	Path, Name   string
	Area, Mass   string
	Entries      []entry
	Swap         []change // the changes that bring it nearer the steel; none for the first
	Choice, Last bool
}

func (v view) layer(key string, i int, layers []build.Choice[build.Layer]) layerView {
	at := "/lining/" + key + "/" + strconv.Itoa(i)
	l := layerView{Path: at, Name: v.materialName(layers[i].Value.Lay), Last: i == len(layers)-1}
	if layers[i].Undecided {
		l.Choice = true
		l.Name += ", not decided yet"
		l.Entries = []entry{fieldOf(at, "choices", "")}
	} else {
		l.Entries = layerEntries(at, key, layers[i].Value)
	}
	var net, mass float64
	unit := "m2"
	for _, line := range v.Lining.Lines {
		if line.Pointer == at {
			net, unit = net+line.Net, line.Unit
		}
		if line.IsAbout(at) {
			mass += line.Mass
		}
	}
	l.Area, l.Mass = words.Amount(net, unit), kilograms(mass)
	if i > 0 {
		above := "/lining/" + key + "/" + strconv.Itoa(i-1)
		l.Swap = []change{{Path: pointerOf(above), Value: valueText(v.Node, pointerOf(at))}, {Path: pointerOf(at), Value: valueText(v.Node, pointerOf(above))}}
	}
	return l
}

func layerEntries(at, key string, l build.Layer) []entry {
	out := []entry{fieldOf(at+"/lay", "material", ""), fieldOf(at+"/thick", "thickness, if the material does not fix it", "mm"), fieldOf(at+"/cover", "covers", "")}
	if l.Times != nil {
		out = append(out, fieldOf(at+"/times", "how many times", ""))
	}
	if key == "sides" || key == "left" || key == "right" {
		out = append(out, fieldOf(at+"/z", "between which heights", ""))
	}
	if l.Between != nil {
		out = append(out, fieldOf(at+"/between/batten", "between battens of", ""), fieldOf(at+"/between/every", "every", "mm"))
	}
	return append(out,
		entry{Path: at + "/ribs", Label: "at the ribs", Choices: []choice{{"free", "stops at them"}, {"bridged", "a strip goes over them"}, {"filled", "fills them too"}}},
		fieldOf(at+"/fitted", "laid on", ""))
}

// materialName is the plain name of a material, without what only its shop needs to know.
func (v view) materialName(id string) string {
	if m, ok := v.Rows.Material(id); ok && m.Title != "" {
		name, _, _ := strings.Cut(m.Title, ", ")
		return capital(name)
	}
	return capital(unhyphen(id))
}
