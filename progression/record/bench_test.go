package record_test

import (
	"fmt"
	"testing"

	"example.org/posology/dose/setlog"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// long is the review's record with n visits of one exercise more, before all others.
func long(b *testing.B, n int) record.Record {
	r := read(b, review)
	first := r.Visits[0].Day
	early := r.Asked[0]
	early.From, early.Sets = first-units.Day(n), 1
	visits, done := []record.TrainingDay{}, []setlog.Set{}
	for i := range n {
		day := early.From + units.Day(i)
		visits = append(visits, record.TrainingDay{Day: day, Noted: record.Noted{PainFree: true, FormLost: screening.No}})
		set := r.Done[0]
		set.Day = day
		done = append(done, set)
	}
	if n > 0 {
		r.Asked = append([]record.Asked{early}, r.Asked...)
	}
	r.Visits, r.Done = append(visits, r.Visits...), append(done, r.Done...)
	return r
}

func BenchmarkNext(b *testing.B) {
	for _, n := range []int{0, 2000} {
		r := long(b, n)
		b.Run(fmt.Sprintf("%d visits", n+len(read(b, review).Visits)), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := r.Next(r.Review); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkDecode(b *testing.B) {
	data := file(b, stored)
	b.SetBytes(int64(len(data)))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := record.Decode(data, field.Strict); err != nil {
			b.Fatal(err)
		}
	}
}
