package catalogue

import "testing"

func BenchmarkBuiltin(b *testing.B) {
	for b.Loop() {
		if _, err := load(); err != nil {
			b.Fatal(err)
		}
	}
}
