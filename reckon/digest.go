package reckon

import (
	"crypto/sha256"
	"encoding/binary"
	"fmt"
	"math"
	"reflect"
	"sort"
	"sync"
)

// Digest names a value by its content: equal values have equal digests, whatever their addresses.
type Digest [sha256.Size]byte

// Digested is a value that knows its own digest. Results of earlier stages are passed on this way, so that a large body or room
// is not read again at every stage.
type Digested interface{ ContentDigest() Digest }

// digestOf walks a value by reflection. Functions do not count: whatever they close over must stand in the inputs as well.
func digestOf(stage string, version int, value any) Digest {
	room := buffers.Get().(*[]byte)
	w := digester{buffer: (*room)[:0], digested: map[reflect.Type]bool{}}
	w.text(stage)
	w.number(uint64(version))
	w.value(reflect.ValueOf(value))
	digest := sha256.Sum256(w.buffer)
	*room = w.buffer
	buffers.Put(room)
	return digest
}

// buffers are used again from one digest to the next: a fresh one each time cost more than filling it.
var buffers = sync.Pool{New: func() any { return new([]byte) }}

type digester struct {
	buffer   []byte
	digested map[reflect.Type]bool // which types met so far know their own digest
}

var digestedType = reflect.TypeFor[Digested]()

// knowsItself asks once for each type: asking every value would allocate for each.
func (w *digester) knowsItself(v reflect.Value) bool {
	if k := v.Kind(); k != reflect.Struct && k != reflect.Pointer {
		return false
	}
	if v.Type().NumMethod() == 0 {
		return false
	}
	known, met := w.digested[v.Type()]
	if !met {
		known = v.Type().Implements(digestedType)
		w.digested[v.Type()] = known
	}
	return known && v.CanInterface()
}

func (w *digester) number(n uint64) { w.buffer = binary.LittleEndian.AppendUint64(w.buffer, n) }

func (w *digester) text(s string) {
	w.number(uint64(len(s)))
	w.buffer = append(w.buffer, s...)
}

func (w *digester) value(v reflect.Value) {
	if !v.IsValid() {
		w.buffer = append(w.buffer, 0)
		return
	}
	w.buffer = append(w.buffer, byte(v.Kind()))
	if w.knowsItself(v) {
		d := v.Interface().(Digested).ContentDigest()
		w.buffer = append(w.buffer, d[:]...)
		return
	}
	switch v.Kind() {
	case reflect.Float64, reflect.Float32:
		w.number(math.Float64bits(v.Float()))
	case reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64:
		w.number(uint64(v.Int()))
	case reflect.Uint, reflect.Uint8, reflect.Uint16, reflect.Uint32, reflect.Uint64:
		w.number(v.Uint())
	case reflect.Bool:
		w.number(map[bool]uint64{true: 1}[v.Bool()])
	case reflect.String:
		w.text(v.String())
	case reflect.Pointer, reflect.Interface:
		w.value(v.Elem())
	case reflect.Struct:
		for i := range v.NumField() {
			w.value(v.Field(i))
		}
	case reflect.Slice, reflect.Array:
		w.number(uint64(v.Len()))
		for i := range v.Len() {
			w.value(v.Index(i))
		}
	case reflect.Map:
		w.entries(v)
	case reflect.Func:
		// A function is how something is done; what it is done with stands beside it in the inputs.
	default:
		panic(fmt.Sprintf("reckon: a %s has no content to digest", v.Type()))
	}
}

// entries writes a map in the order of its keys, which must be texts.
func (w *digester) entries(v reflect.Value) {
	keys := v.MapKeys()
	sort.Slice(keys, func(i, j int) bool { return keys[i].String() < keys[j].String() })
	w.number(uint64(len(keys)))
	for _, k := range keys {
		w.text(k.String())
		w.value(v.MapIndex(k))
	}
}
