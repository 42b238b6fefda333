package field_test

import (
	"encoding/json"
	"testing"

	"example.org/posology/units/field"
)

var benchLog = []byte(`{"ID":"a","day":"2026-11-25","sets":[
	{"reps":5,"load":"100 kg","rir":{"min":2,"max":3},"rpe":"rpe 8","tempo":[3,0,1]},
	{"reps":8,"load":"185 lb","rir":{"min":1},"rpe":"rpe 8.5","tempo":[3,0,1]},
	{"reps":12,"load":"60 kg","tags":["back off"],"tempo":[2,0,1]}],
	"share":0.75,"done":true,"rack":{"left":"25 lb","right":"25 lb"}}`)

func BenchmarkDecode(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		var l log
		if err := field.Decode(benchLog, &l, field.Strict); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkStandardJSON reads the same text with encoding/json.
func BenchmarkStandardJSON(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		var l log
		if err := json.Unmarshal(benchLog, &l); err != nil {
			b.Fatal(err)
		}
	}
}
