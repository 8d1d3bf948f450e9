package reckon_test

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"tumblehome/build"
)

// renamer gives every id of a document another one, the same in each place, and so that they sort the other way round. Rows of the catalogue
// keep their ids, which say what they are; so do words that look like ids: faces, weekdays, axles, bays, and the three modes there
// always are.
type renamer struct {
	to map[string]string
	at map[string]bool // dotted paths of the collections whose keys are ids; * for any key
}

func newRenamer(doc *build.Document) *renamer {
	r := &renamer{to: map[string]string{}, at: map[string]bool{}}
	r.collect("", reflect.ValueOf(doc).Elem(), "")
	ids := make([]string, 0, len(r.to))
	for id := range r.to {
		ids = append(ids, id)
	}
	slices.Sort(ids)
	for i, id := range ids {
		r.to[id] = fmt.Sprintf("n-%d", 1000+len(ids)-i)
	}
	for _, fixed := range []string{"drive", "day", "night", "rest", "full"} {
		delete(r.to, fixed)
	}
	return r
}

// kept are the keys of maps that are no ids of the builder's.
var kept = map[string]bool{"row": true, "weekday": true, "axle": true, "bay": true, "currency": true}

// isIDs says whether the keys of a map field are ids.
func isIDs(f reflect.StructField) bool {
	return f.Type.Kind() == reflect.Map && !kept[f.Tag.Get("keys")] && f.Tag.Get("doc") != "catalogue" && f.Tag.Get("doc") != "a-head"
}

func (r *renamer) collect(path string, v reflect.Value, tag reflect.StructTag) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			r.collect(path, v.Elem(), tag)
		}
	case reflect.Slice:
		for i := range v.Len() {
			r.collect(path, v.Index(i), tag)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			f := v.Type().Field(i)
			key, _, _ := strings.Cut(f.Tag.Get("doc"), ",")
			if !f.IsExported() || key == "" && f.Name != "Value" {
				continue
			}
			below := path
			if key != "" {
				below = strings.TrimPrefix(path+"."+key, ".")
			}
			if isIDs(f) {
				r.keys(below, v.Field(i))
			}
			r.collect(below, v.Field(i), f.Tag)
		}
	case reflect.Map:
		for _, k := range v.MapKeys() {
			r.collect(path+".*", v.MapIndex(k), tag)
		}
	}
}

// keys notes the ids of one collection; positions hold moves, which are ids as well.
func (r *renamer) keys(path string, v reflect.Value) {
	r.at[path] = true
	for _, k := range v.MapKeys() {
		r.to[k.String()] = ""
		if inner := v.MapIndex(k); strings.HasSuffix(path, ".positions") {
			r.keys(path+".*", inner)
		}
	}
}

// id is the new name of an id; what is none stays.
func (r *renamer) id(id string) string {
	if to, ok := r.to[id]; ok {
		return to
	}
	return id
}

// steps renames what is an id among the steps of a path from the top.
func (r *renamer) steps(steps []string) []string {
	out, path := slices.Clone(steps), ""
	for i, s := range steps {
		if r.at[path] {
			out[i], s = r.id(s), "*"
		}
		path = strings.TrimPrefix(path+"."+s, ".")
	}
	return out
}

func (r *renamer) path(dotted string) string {
	return strings.Join(r.steps(strings.Split(dotted, ".")), ".")
}

func (r *renamer) pointer(p string) string {
	return "/" + strings.Join(r.steps(strings.Split(strings.TrimPrefix(p, "/"), "/")), "/")
}

// rename changes a document in place.
func (r *renamer) rename(doc *build.Document) {
	v := reflect.ValueOf(doc).Elem()
	v.Set(r.value(v, ""))
}

// value is a value with all ids in it renamed.
func (r *renamer) value(v reflect.Value, tag reflect.StructTag) reflect.Value {
	out := reflect.New(v.Type()).Elem()
	out.Set(v)
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			out.Set(reflect.New(v.Type().Elem()))
			out.Elem().Set(r.value(v.Elem(), tag))
		}
	case reflect.Slice:
		out.Set(reflect.MakeSlice(v.Type(), v.Len(), v.Len()))
		for i := range v.Len() {
			out.Index(i).Set(r.value(v.Index(i), tag))
		}
	case reflect.Struct:
		r.fields(v, out)
	case reflect.Map:
		return r.entries(v, tag)
	case reflect.String:
		out.SetString(r.text(v.String(), tag))
	}
	if p, ok := out.Addr().Interface().(*build.Point); ok {
		p.Of = r.id(p.Of)
	}
	return out
}

func (r *renamer) fields(v, out reflect.Value) {
	for i := range v.NumField() {
		if f := v.Type().Field(i); f.IsExported() {
			tag := f.Tag
			if tag == "" { // of a choice or a rule
				tag = `doc:"-"`
			}
			out.Field(i).Set(r.value(v.Field(i), tag))
		}
	}
}

func (r *renamer) entries(v reflect.Value, tag reflect.StructTag) reflect.Value {
	if v.IsNil() {
		return v
	}
	out := reflect.MakeMap(v.Type())
	ids := isIDs(reflect.StructField{Type: v.Type(), Tag: tag})
	for _, k := range v.MapKeys() {
		to := k
		if ids {
			to = reflect.ValueOf(r.id(k.String()))
		}
		out.SetMapIndex(to, r.value(v.MapIndex(k), tag))
	}
	return out
}

// named are the fields that hold ids without saying so in a tag, since whole-document checks look after them.
var named = map[string]bool{"from": true, "to": true, "without": true, "before": true, "take": true, "climate": true}

// text renames a text where it refers to something of the document.
func (r *renamer) text(text string, tag reflect.StructTag) string {
	key, _, _ := strings.Cut(tag.Get("doc"), ",")
	switch ref := tag.Get("ref"); {
	case ref == "path":
		return r.path(text)
	case ref == "row" || ref == "material" || ref == "setting":
		return text
	case ref != "" || named[key]:
		return r.id(text)
	}
	return text
}
