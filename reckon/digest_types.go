package reckon

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"sync"
)

// writer writes the values of one type, each after its kind. What there is to know of a type is asked once and not of every value.
type writer func(*digester, reflect.Value)

var writers sync.Map // by reflect.Type

// writerOf is the writer of a type. A type may hold itself, so it can be asked for before it is made.
func writerOf(t reflect.Type) writer {
	if known, ok := writers.Load(t); ok {
		return known.(writer)
	}
	made := sync.OnceValue(func() writer { return newWriter(t) })
	writers.Store(t, writer(func(w *digester, v reflect.Value) { made()(w, v) }))
	writers.Store(t, made())
	return made()
}

func newWriter(t reflect.Type) writer {
	content := contentOf(t)
	if k := t.Kind(); (k == reflect.Struct || k == reflect.Pointer) && t.Implements(reflect.TypeFor[Digested]()) {
		return func(w *digester, v reflect.Value) {
			if !v.CanInterface() {
				content(w, v)
				return
			}
			d := v.Interface().(Digested).ContentDigest()
			w.buffer = append(w.buffer, d[:]...)
		}
	}
	return content
}

// contentOf writes what a value is.
func contentOf(t reflect.Type) writer {
	switch t.Kind() {
	case reflect.Float64, reflect.Float32:
		return func(w *digester, v reflect.Value) { w.bits(v.Float()) }
	case reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64:
		return func(w *digester, v reflect.Value) { w.number(uint64(v.Int())) }
	case reflect.Uint, reflect.Uint8, reflect.Uint16, reflect.Uint32, reflect.Uint64:
		return func(w *digester, v reflect.Value) { w.number(v.Uint()) }
	case reflect.Bool:
		return (*digester).truth
	case reflect.String:
		return func(w *digester, v reflect.Value) { w.text(v.String()) }
	case reflect.Interface:
		return func(w *digester, v reflect.Value) { w.value(v.Elem()) }
	case reflect.Pointer:
		return pointerWriter(writerOf(t.Elem()))
	case reflect.Struct:
		return structWriter(t)
	case reflect.Slice, reflect.Array:
		return listWriter(writerOf(t.Elem()))
	case reflect.Map:
		return mapWriter(writerOf(t.Elem()))
	case reflect.Func: // how something is done; what it is done with stands beside it in the inputs
		return func(*digester, reflect.Value) {}
	}
	return func(*digester, reflect.Value) { panic(fmt.Sprintf("reckon: a %s has no content to digest", t)) }
}

func (w *digester) truth(v reflect.Value) {
	n := uint64(0)
	if v.Bool() {
		n = 1
	}
	w.number(n)
}

func pointerWriter(elem writer) writer {
	return func(w *digester, v reflect.Value) {
		if v.IsNil() {
			w.buffer = append(w.buffer, 0)
			return
		}
		w.buffer = append(w.buffer, 1)
		elem(w, v.Elem())
	}
}

func structWriter(t reflect.Type) writer {
	fields := make([]writer, t.NumField())
	for i := range fields {
		fields[i] = writerOf(t.Field(i).Type)
	}
	return func(w *digester, v reflect.Value) {
		for i, field := range fields {
			field(w, v.Field(i))
		}
	}
}

func listWriter(elem writer) writer {
	return func(w *digester, v reflect.Value) {
		n := v.Len()
		w.number(uint64(n))
		for i := range n {
			elem(w, v.Index(i))
		}
	}
}

// mapWriter writes a map in the order of its keys, which must be texts.
func mapWriter(elem writer) writer {
	return func(w *digester, v reflect.Value) {
		if v.Len() == 0 {
			w.number(0)
			return
		}
		keys := v.MapKeys()
		slices.SortFunc(keys, func(a, b reflect.Value) int { return strings.Compare(a.String(), b.String()) })
		w.number(uint64(len(keys)))
		for _, k := range keys {
			w.text(k.String())
			elem(w, v.MapIndex(k))
		}
	}
}
