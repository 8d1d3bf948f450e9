package reckon

import (
	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/catalogue/settings"
	"tumblehome/quantity"
	"tumblehome/trade/arrangement"
)

// thing is a fitting with what the catalogue and the settings-out add to it.
type thing struct {
	build.Fitting
	row     *catalogue.Row    // what is bought
	setting *settings.Setting // what is made
	board   *catalogue.Material
	size    [3]float64 // along its own axes [mm]; 0 where only its place tells
}

// completed fills in, for every fitting, the size and the board that the document leaves to the catalogue.
func completed(doc *build.Document, rows *catalogue.Catalogue) map[string]thing {
	all, names := make(map[string]thing, len(doc.Fittings)), build.Names(doc.Fittings)
	for id, f := range doc.Fittings {
		f.Called = names[id]
		t := thing{Fitting: f}
		if row, ok := rows.Row(f.Buy); ok {
			t.row = &row
		}
		if setting, ok := settings.Get(f.Make); ok {
			t.setting = &setting
		}
		if m, ok := rows.Material(t.material()); ok {
			t.board = &m
		}
		t.size = t.measure()
		all[id] = t
	}
	return all
}

// material is the board a made thing is of: what the builder chose, else what such things are usually made of.
func (t thing) material() string {
	if t.Of != nil && t.Of.Known() {
		return t.Of.Value
	}
	if t.setting != nil {
		return t.setting.Board
	}
	return ""
}

// measure gives each axis the document's size, else the catalogue's, else the usual size of such a thing unless its place gives it.
func (t thing) measure() [3]float64 {
	size := t.usual()
	if t.Size != nil {
		for axis, given := range []*quantity.Length{t.Size.X, t.Size.Y, t.Size.Z} {
			if given != nil {
				size[axis] = given.Float()
			}
		}
	}
	return size
}

func (t thing) usual() [3]float64 {
	switch {
	case t.row != nil && t.row.Size != nil:
		return [3]float64{valueOf(t.row.Size.X).Float(), valueOf(t.row.Size.Y).Float(), valueOf(t.row.Size.Z).Float()}
	case t.setting != nil:
		return [3]float64{t.setting.X.Likely.Float(), t.setting.Y.Likely.Float(), t.setting.Z.Likely.Float()}
	}
	return [3]float64{}
}

func (t thing) boardThickness() float64 {
	if t.setting == nil || t.board == nil {
		return 0
	}
	return t.board.Thick.Float()
}

// does reports whether people can do this at a thing: sit, lie, stand, cook.
func (t thing) does(use settings.Use) bool { return t.setting != nil && t.setting.Does(use) }

// placeable are the fittings as the arrangement wants them.
func placeable(all map[string]thing) map[string]arrangement.Thing {
	out := make(map[string]arrangement.Thing, len(all))
	for id, t := range all {
		out[id] = t.placeable()
	}
	return out
}

func (t *thing) placeable() arrangement.Thing {
	return arrangement.Thing{Fitting: t.Fitting, Size: t.size, Board: t.boardThickness()}
}
