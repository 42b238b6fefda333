package units_test

import (
	"encoding/json"
	"testing"

	"example.org/posology/units"
)

func BenchmarkParseMass(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := units.ParseMass("27.5 lb"); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkMassText(b *testing.B) {
	b.ReportAllocs()
	m := 55 * units.Pound / 2
	for b.Loop() {
		if m.Text(units.KG) != "12.473790175 kg" {
			b.Fatal(m)
		}
	}
}

func BenchmarkMassScale(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := units.MaxMass.Scale(0.725, units.Down); err != nil {
			b.Fatal(err)
		}
	}
}

var benchLog = []byte(`{"ID":"a","day":"2026-11-25","sets":[
	{"reps":5,"load":"100 kg","rir":{"min":2,"max":3},"rpe":"rpe 8","tempo":[3,0,1]},
	{"reps":8,"load":"185 lb","rir":{"min":1},"rpe":"rpe 8.5","tempo":[3,0,1]},
	{"reps":12,"load":"60 kg","tags":["back off"],"tempo":[2,0,1]}],
	"share":0.75,"done":true,"rack":{"left":"25 lb","right":"25 lb"}}`)

func BenchmarkDecodeJSON(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		var l log
		if err := units.DecodeJSON(benchLog, &l); err != nil {
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
