package function_test

import (
	"testing"

	"example.org/posology/screening/function"
	"example.org/posology/units/body"
)

func BenchmarkCompare(b *testing.B) {
	b.ReportAllocs()
	r := done(function.Grip, "17 kg")
	for b.Loop() {
		if _, err := function.AgainstNorms(r, body.Female, 72); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkChange(b *testing.B) {
	b.ReportAllocs()
	before := done(function.Grip, "17 kg")
	after := later(before, "20 kg")
	for b.Loop() {
		if _, err := function.ChangeBetween(before, after, body.Female, 72); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkBatteryScore(b *testing.B) {
	b.ReportAllocs()
	parts := battery("10", "10", "6", walked(function.Walk4m, "5.1"), "14.2")
	for b.Loop() {
		if _, err := parts.Score(); err != nil {
			b.Fatal(err)
		}
	}
}
