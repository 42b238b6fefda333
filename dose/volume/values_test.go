package volume_test

import (
	"encoding"
	"encoding/json"
	"errors"
	"math"
	"math/big"
	"slices"
	"strings"
	"testing"
	"time"

	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

func TestSets(t *testing.T) {
	tests := []struct {
		n    float64
		c    volume.Convention
		text string
		want error
	}{
		{9, volume.DirectSets, "9 direct", nil},
		{4.5, volume.FractionalSets, "4.5 fractional", nil},
		{0, volume.TotalSets, "0 total", nil},
		{4.5, volume.TotalSets, "", field.ErrOutOfRange},
		{4.25, volume.FractionalSets, "", field.ErrOutOfRange},
		{-1, volume.DirectSets, "", field.ErrOutOfRange},
		{math.NaN(), volume.DirectSets, "", field.ErrOutOfRange},
		{math.Inf(1), volume.DirectSets, "", field.ErrOutOfRange},
		{1 << 40, volume.DirectSets, "1099511627776 direct", nil},
		{1<<40 + 1, volume.DirectSets, "", field.ErrOutOfRange},
		{1, 0, "", field.ErrMissing},
		{1, 9, "", field.ErrOutOfRange},
	}
	for _, tt := range tests {
		s, err := volume.NewSets(tt.n, tt.c)
		if s.String() != tt.text || !errors.Is(err, tt.want) {
			t.Errorf("NewSets(%v, %v) = %v, %v, want %s, %v", tt.n, tt.c, s, err, tt.text, tt.want)
		}
		if err == nil && s.Convention() != tt.c {
			t.Errorf("%v is in convention %v", s, s.Convention())
		}
		text, _ := s.MarshalText()
		var back volume.Sets
		if err := back.UnmarshalText(text); err != nil || back != s {
			t.Errorf("%s reads back as %v, %v", text, back, err)
		}
	}
	for _, bad := range []string{"9", "direct", "9 whole", "0.5 direct", "-1 total", "x fractional", "1_0 direct", "0x1p1 total", "1e0 total", "+1 total", ".5 fractional", "5. total", "- total", "NaN total", "1 Total"} {
		if err := new(volume.Sets).UnmarshalText([]byte(bad)); err == nil {
			t.Errorf("%q is taken", bad)
		}
	}
}

// TestNeverAcross: numbers of two conventions are never compared.
func TestNeverAcross(t *testing.T) {
	all := []volume.Convention{0, volume.DirectSets, volume.FractionalSets, volume.TotalSets}
	nine := func(c volume.Convention) volume.Sets { s, _ := volume.NewSets(9, c); return s }
	bound := units.Must(units.Between(9.0, 10.0))
	for _, a := range all {
		for _, b := range all {
			_, err := nine(a).Compare(nine(b))
			_, against := nine(a).Against(bound, b)
			want := a == b && a != 0
			if (err == nil) != want || (against == nil) != want {
				t.Errorf("%v and %v: %v, %v", a, b, err, against)
			}
			if a != 0 && b != 0 && a != b && !(errors.Is(err, field.ErrConflict) && errors.Is(against, field.ErrConflict)) {
				t.Errorf("%v and %v: %v, %v, want ErrConflict", a, b, err, against)
			}
		}
	}
	for n, want := range map[float64]int{8.5: -1, 9: 0, 10: 0, 10.5: 1} {
		s := units.Must(volume.NewSets(n, volume.FractionalSets))
		got, err := s.Against(bound, volume.FractionalSets)
		order, _ := s.Compare(nine(volume.FractionalSets))
		if got != want || err != nil || order != map[float64]int{8.5: -1, 9: 0, 10: 1, 10.5: 1}[n] {
			t.Errorf("%v: %d %d, %v", s, got, order, err)
		}
	}
}

func TestSchemes(t *testing.T) {
	facts := map[evidence.FactID]bool{}
	for f := range volume.Facts() {
		facts[f.ID] = true
	}
	for s := range volume.Classifications() {
		nine, half := units.Must(volume.NewSets(9, volume.TotalSets)), units.Must(volume.NewSets(9.5, volume.FractionalSets))
		if _, err := s.Class(nine); !errors.Is(err, field.ErrMissing) || s.Assumed {
			t.Errorf("%s in no convention: %v", s.ID, err)
		}
		if _, err := s.Assuming(volume.DirectSets).Class(nine); !errors.Is(err, field.ErrConflict) {
			t.Errorf("%s across conventions: %v", s.ID, err)
		}
		if a := s.Assuming(volume.DirectSets); !a.Assumed || a.Assuming(volume.TotalSets).Convention != volume.DirectSets || s.Assuming(0).Assumed {
			t.Errorf("%s: %+v", s.ID, a)
		}
		if _, err := s.Assuming(volume.FractionalSets).Class(half); s.ID == "schoenfeld2017" && !errors.Is(err, field.ErrOutOfRange) {
			t.Errorf("%s at 9.5 sets: %v, want none of the classes", s.ID, err)
		}
		low, err := s.Assuming(volume.FractionalSets).Class(units.Must(volume.NewSets(4.5, volume.FractionalSets)))
		if low.Name != "low" || err != nil || !facts[s.Fact] {
			t.Errorf("%s at 4.5 sets: %v, %v", s.ID, low, err)
		}
		text, _ := json.Marshal(s)
		var back volume.Classification
		if err := field.Decode(text, &back, field.Strict); err != nil || back.ID != s.ID || !slices.Equal(back.Bands, s.Bands) {
			t.Errorf("%s: %s, %v", s.ID, text, err)
		}
		s.Bands[0].Name = "spoilt"
	}
	for s := range volume.Classifications() {
		if s.Bands[0].Name != "low" {
			t.Errorf("%s was changed from outside", s.ID)
		}
		break
	}
}

func TestLoad(t *testing.T) {
	tests := []struct {
		mass units.Mass
		reps int64
		text string
		want error
	}{
		{65 * units.Kilogram, 24, "1560 kg", nil},
		{units.Pound, 3, "1.36077711 kg", nil},
		{1, 1, "0.000000000001 kg", nil},
		{0, 0, "0 kg", nil},
		{units.MaxMass, 1000, "9223372036.854775807 kg", nil},
		{units.MaxMass, math.MaxInt64 >> 24, "5070602400903694233.400202231809 kg", nil},
		{units.MaxMass, 1e12, "9223372036854775807 kg", nil},
		{units.MaxMass, 1e12 + 1, "", field.ErrOverflow},
		{units.MaxMass, math.MaxInt64, "", field.ErrOverflow},
		{-1, 1, "", field.ErrOutOfRange},
		{1, -1, "", field.ErrOutOfRange},
	}
	for _, tt := range tests {
		reps := int(tt.reps)
		if int64(reps) != tt.reps {
			continue // no int on this machine
		}
		l, err := volume.Lifted(tt.mass, reps)
		if !errors.Is(err, tt.want) || err == nil && l.String() != tt.text {
			t.Errorf("%d × %v = %v, %v, want %s, %v", tt.reps, tt.mass, l, err, tt.text, tt.want)
		}
	}
	for _, bad := range []string{"", "kg", "1", "1kg", "-1 kg", "1. kg", ".5 kg", "1.0000000000001 kg", "1e3 kg", "9223372036854775808 kg", "1 lb", "1,5,5 kg", "1, kg", "1_0 kg", "1  kg", "1 kg "} {
		if l, err := read[volume.VolumeLoad](bad); err == nil {
			t.Errorf("%q is taken for %v", bad, l)
		}
	}
	for text, want := range map[string]string{"1,5 kg": "1.5 kg", "1560 KG": "1560 kg", "2 kgs": "2 kg"} {
		if l, err := read[volume.VolumeLoad](text); err != nil || l.String() != want {
			t.Errorf("%q: %v, %v", text, l, err)
		}
	}
	if s, err := read[volume.Sets]("4,5 fractional"); err != nil || s.String() != "4.5 fractional" {
		t.Errorf("4,5 fractional: %v, %v", s, err)
	}
	if err := new(volume.VolumeLoad).UnmarshalText([]byte("1 lb")); !errors.Is(err, field.ErrSyntax) {
		t.Errorf("1 lb: %v", err)
	}
	most, err := read[volume.VolumeLoad]("9223372036854775807.999999999999 kg")
	if err != nil {
		t.Fatal(err)
	}
	if _, err := most.Add(units.Must(volume.Lifted(1, 1))); !errors.Is(err, field.ErrOverflow) {
		t.Errorf("one nanogram above the most: %v", err)
	}
}

// TestLoadIsExact compares sums with those of big numbers, kg and lb mixed.
func TestLoadIsExact(t *testing.T) {
	unit := rapid.SampledFrom([]units.Mass{1, units.Gram, units.Ounce, units.Pound, units.Kilogram})
	rapid.Check(t, func(rt *rapid.T) {
		var sum volume.VolumeLoad
		want := new(big.Int)
		for range rapid.IntRange(0, 20).Draw(rt, "n") {
			mass := unit.Draw(rt, "unit") * units.Mass(rapid.IntRange(0, 1_000_000).Draw(rt, "mass"))
			reps := rapid.IntRange(0, 1000).Draw(rt, "reps")
			one, err := volume.Lifted(mass, reps)
			if err != nil {
				rt.Fatal(err)
			}
			if sum, err = sum.Add(one); err != nil {
				rt.Fatal(err)
			}
			want.Add(want, new(big.Int).Mul(big.NewInt(int64(mass)), big.NewInt(int64(reps))))
			if sum.Compare(one) < 0 {
				rt.Fatalf("%v is less than its part %v", sum, one)
			}
		}
		kg, rest := sum.Parts()
		got := new(big.Int).Add(new(big.Int).Mul(big.NewInt(kg), big.NewInt(1e12)), big.NewInt(int64(rest)))
		if got.Cmp(want) != 0 {
			rt.Fatalf("%v, want %v ng", sum, want)
		}
		text, _ := sum.MarshalText()
		var back volume.VolumeLoad
		if err := back.UnmarshalText(text); err != nil || back != sum || back.Compare(sum) != 0 {
			rt.Fatalf("%s reads back as %v, %v", text, back, err)
		}
	})
}

func TestRelativeRefuses(t *testing.T) {
	for _, share := range []units.Fraction{0, -0.1, 2.01, units.Fraction(math.NaN())} {
		if got, err := volume.RelativeVolume(0, 0, share); got != 0 || paths(t, err) != "/sets /reps /share" {
			t.Errorf("%v: %v, %v", share, got, err)
		}
	}
	if got, err := volume.RelativeVolume(1, 1, 2); got != 2 || err != nil {
		t.Errorf("%v, %v", got, err)
	}
}

func TestWeek(t *testing.T) {
	dense := units.Must(units.ParseDay("2020-12-20"))
	for day := units.Day(1); day.Check() == nil; day += step(day, dense) {
		w, err := volume.ISOWeekOf(day)
		if day > 3652054 {
			if err == nil {
				t.Errorf("%v lies in %v, which does not end", day, w)
			}
			continue
		}
		year, n := day.ISOWeek()
		backYear, backN := w.Monday().ISOWeek()
		if err != nil || w.Monday().Weekday() != time.Monday || day-w.Monday() > 6 || day < w.Monday() || year != backYear || n != backN {
			t.Fatalf("%v lies in %v, %v", day, w, err)
		}
		if back, err := read[volume.ISOWeek](w.String()); err != nil || back != w {
			t.Fatalf("%v reads back as %v, %v", w, back, err)
		}
	}
	for day, valid := range map[units.Day]bool{0: false, 1: true, 3652054: true, 3652055: false, -1: false, 3652060: false} {
		if w, err := volume.ISOWeekOf(day); (err == nil) != valid {
			t.Errorf("WeekOf(%d) = %v, %v", day, w, err)
		}
	}
	for _, bad := range []string{"2026", "2026-W54", "2025-W53", "2026-W00", "2026-w01", "0000-W01", "9999-W52", "26-W01", " 2026-W01"} {
		if w, err := read[volume.ISOWeek](bad); err == nil {
			t.Errorf("%q is taken for %v", bad, w)
		}
	}
	var none volume.ISOWeek
	if err := none.UnmarshalText(nil); err != nil || none.String() != "" || none.Monday() != 0 || !errors.Is(none.Check(), field.ErrMissing) {
		t.Errorf("no week: %v, %q", err, none)
	}
	if err := none.UnmarshalText([]byte("x")); err == nil {
		t.Error("x is taken for a week")
	}
	if _, err := volume.ISOWeek(-1).MarshalText(); !errors.Is(err, field.ErrOutOfRange) || volume.ISOWeek(-1).String() != "Week(-1)" {
		t.Errorf("week -1: %v", err)
	}
	var read volume.ISOWeek
	if err := read.UnmarshalText([]byte("2026-W53")); err != nil || read.Monday().String() != "2026-12-28" {
		t.Errorf("2026-W53: %v, %v", read.Monday(), err)
	}
	if text, err := none.MarshalText(); err != nil || len(text) != 0 {
		t.Errorf("%q, %v", text, err)
	}
}

// step goes day by day through the twelve years from dense, else in strides.
func step(day, dense units.Day) units.Day {
	if day >= dense && day < dense+12*366 {
		return 1
	}
	return 89
}

// TestMonotonySaysNothing: of n equal sessions it is fixed, whatever the load.
func TestMonotonySaysNothing(t *testing.T) {
	for n := 1; n <= 6; n++ {
		for _, load := range []float64{1, 240, 9999.5} {
			daily := make([]float64, 7)
			for i := range n {
				daily[i] = load
			}
			got, _, err := volume.SpreadOf(daily)
			want := math.Sqrt(6 * float64(n) / (7 * float64(7-n)))
			if err != nil || math.Abs(got.Monotony-want) > 1e-12 || !got.EqualSessions || got.Strain != got.Weekly*got.Monotony {
				t.Errorf("%d × %v: %+v, %v, want %v", n, load, got, err, want)
			}
		}
	}
	if _, got, err := volume.SpreadOf([]float64{1, 2, 0, 0, 0, 0, 0}); err != nil || got.EqualSessions {
		t.Errorf("%+v, %v", got, err)
	}
}

func TestSpreadRefuses(t *testing.T) {
	tests := []struct {
		name  string
		daily []float64
		paths string
		want  error
	}{
		{"all equal", []float64{5, 5, 5}, "/daily", field.ErrConflict},
		{"all rest", make([]float64, 7), "/daily", field.ErrConflict},
		{"one day", []float64{5}, "/daily", field.ErrConflict},
		{"no day", nil, "/daily", field.ErrMissing},
		{"numbers", []float64{-1, math.NaN(), math.Inf(1), 1e12}, "/daily/0 /daily/1 /daily/2", field.ErrOutOfRange},
	}
	for _, tt := range tests {
		if got, all, err := volume.SpreadOf(tt.daily); got != (volume.Spread{}) || got != all || !errors.Is(err, tt.want) || paths(t, err) != tt.paths {
			t.Errorf("%s: %+v, %v", tt.name, got, err)
		}
	}
	for _, bad := range [][2]float64{{1, 0}, {0, 0}, {1e308, 1e-308}} {
		if _, err := volume.Monotony(bad[0], bad[1]); !errors.Is(err, field.ErrConflict) {
			t.Errorf("%v: %v", bad, err)
		}
	}
	if _, _, err := volume.SpreadOf([]float64{0, 1e-200}); !errors.Is(err, field.ErrConflict) {
		t.Errorf("a deviation too small to square: %v", err)
	}
}

func TestSessionLoad(t *testing.T) {
	six := units.Must(units.NewEffort(units.ScaleCR10, 6))
	tests := []struct {
		rating  units.Effort
		minutes float64
		want    float64
		paths   string
	}{
		{six, 40, 240, ""}, {six, 0, 0, ""}, {six, 1440, 8640, ""},
		{six, 1440.5, 0, "/minutes"}, {six, -1, 0, "/minutes"}, {six, math.NaN(), 0, "/minutes"},
		{units.Effort{}, -1, 0, "/rating /minutes"}, {units.Must(units.RPE(6)), 40, 0, "/rating"}, {units.Must(units.OMNI(6)), 40, 0, "/rating"},
	}
	for _, tt := range tests {
		if got, err := volume.SessionLoad(tt.rating, tt.minutes); got != tt.want || paths(t, err) != tt.paths {
			t.Errorf("%v for %v min: %v, %v", tt.rating, tt.minutes, got, err)
		}
	}
}

// read reads a value from its text.
func read[T any, P interface {
	*T
	encoding.TextUnmarshaler
}](text string) (T, error) {
	var v T
	err := P(&v).UnmarshalText([]byte(text))
	return v, err
}

// The days behind the last whole week are refused as days, not as weeks.
func TestLastWeek(t *testing.T) {
	last := units.Must(units.NewDay(9999, 12, 26))
	if w, err := volume.ISOWeekOf(last); err != nil || w.String() != "9999-W51" {
		t.Errorf("%v, %v", w, err)
	}
	for d := last + 1; d.Check() == nil; d++ {
		if _, err := volume.ISOWeekOf(d); !errors.Is(err, field.ErrOutOfRange) || !strings.Contains(err.Error(), d.String()) {
			t.Errorf("%v: %v", d, err)
		}
	}
}
