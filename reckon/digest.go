package reckon

import (
	"crypto/sha256"
	"encoding/binary"
	"math"
	"reflect"
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
	w := digester{(*room)[:0]}
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

type digester struct{ buffer []byte }

func (w *digester) number(n uint64) { w.buffer = binary.AppendUvarint(w.buffer, n) }

func (w *digester) bits(f float64) {
	w.buffer = binary.LittleEndian.AppendUint64(w.buffer, math.Float64bits(f))
}

func (w *digester) text(s string) {
	w.number(uint64(len(s)))
	w.buffer = append(w.buffer, s...)
}

// value writes a value whose type is known only now, after its kind.
func (w *digester) value(v reflect.Value) {
	if !v.IsValid() {
		w.buffer = append(w.buffer, 0)
		return
	}
	w.buffer = append(w.buffer, byte(v.Kind()))
	writerOf(v.Type())(w, v)
}
