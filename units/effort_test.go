package units_test

import (
	"errors"
	"math"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Sources stand in the rows of the file.
func TestPublishedRIR(t *testing.T) {
	columns, rows := fieldtest.Table(t, "../testdata/published/rir-from-rpe.csv", ',')
	column := make(map[string]int)
	for i, name := range columns {
		column[name] = i
	}
	tested := 0
	for _, row := range rows {
		rest, ok := strings.CutPrefix(row[column["note"]], "input RPE ")
		want, err := strconv.ParseFloat(row[column["expected"]], 64)
		if !ok || err != nil || row[column["source"]] == "" || row[column["known"]] == "" {
			t.Errorf("row %s lacks its rating, value, source or how it is known", row[column["id"]])
			continue
		}
		ratings, _, _ := strings.Cut(rest, ";")
		for rating := range strings.SplitSeq(ratings, "-") {
			if rating == "5" && row[column["known"]] == "memory" {
				continue // the row that was read decides
			}
			checkRIR(t, row[column["id"]], row[column["quantity"]], rating, units.RIR(want))
			tested++
		}
	}
	if tested != 10 {
		t.Errorf("%d ratings tested, want 10", tested)
	}
}

func checkRIR(t *testing.T, id, quantity, rating string, want units.RIR) {
	t.Helper()
	v, err := strconv.ParseFloat(rating, 64)
	if err != nil {
		t.Errorf("%s: %v", id, err)
		return
	}
	got, err := units.Must(units.RPE(v)).RIR()
	low, hasLow := got.Min()
	high, hasHigh := got.Max()
	ok := err == nil && hasLow && hasHigh
	switch quantity {
	case "rir_from_rpe":
		ok = ok && low == want && high == want
	case "rir_from_rpe_lo":
		ok = ok && low == want
	case "rir_from_rpe_hi":
		ok = ok && high == want
	default:
		ok = false
	}
	if !ok {
		t.Errorf("%s: rpe %v is %v in reserve, %v; want %s %v", id, v, got, err, quantity, want)
	}
}

// All nineteen ratings: from 5 on each has a value, and a higher rating never
// leaves more in reserve for sure; nor at most, but for the range of 4 to 6, which
// is from memory and begins after the 5.
func TestRatings(t *testing.T) {
	lastLow, lastHigh := units.RIR(10), units.RIR(10)
	for v := 1.0; v <= 10; v += 0.5 {
		got, err := units.Must(units.RPE(v)).RIR()
		if v < 5 {
			if !errors.Is(err, units.ErrNoRIR) {
				t.Errorf("rpe %v is %v in reserve, %v, want %v", v, got, err, units.ErrNoRIR)
			}
			continue
		}
		low, _ := got.Min()
		high, _ := got.Max()
		if err != nil || low > lastLow || v != 5.5 && high > lastHigh || low < 0 {
			t.Errorf("rpe %v is %v in reserve, %v, after %v to %v", v, got, err, lastLow, lastHigh)
		}
		lastLow, lastHigh = low, high
	}
	for v, want := range map[float64]string{5: "5", 5.5: "4 to 6", 6: "4 to 6", 6.5: "3 to 6", 9.5: "0"} {
		if got, err := units.Must(units.RPE(v)).RIR(); err != nil || got.String() != want {
			t.Errorf("rpe %v is %v in reserve, %v, want %s", v, got, err, want)
		}
	}
}

func TestRatingsListed(t *testing.T) {
	last, n := 0.0, 0
	for rating, want := range units.Ratings() {
		got, err := units.Must(units.RPE(rating)).RIR()
		if err != nil || got != want || rating <= last {
			t.Errorf("rpe %v is %v in reserve, %v; listed after %v with %v", rating, got, err, last, want)
		}
		last = rating
		n++
	}
	if last != 10 || n != 9 {
		t.Errorf("%d ratings are listed up to %v, want 9 up to 10", n, last)
	}
	for rating := range units.Ratings() {
		if rating != 5 {
			t.Errorf("the first rating is %v, want 5", rating)
		}
		break
	}
}

// scaleEnds are the ends that the owners of the scales print: RIR and RPE as in
// Zourdos 2016, OMNI 0 to 10, category-ratio 0 to 10, Borg 6 to 20.
var scaleEnds = map[units.Scale][2]float64{
	units.ScaleRIR:  {0, 10},
	units.ScaleRPE:  {1, 10},
	units.ScaleOMNI: {0, 10},
	units.ScaleCR10: {0, 10},
	units.ScaleBorg: {6, 20},
}

func TestEffortScaleEnds(t *testing.T) {
	for s, ends := range scaleEnds {
		for _, v := range ends {
			if e, err := units.NewEffort(s, v); err != nil || e.Scale() != s || e.Number() != v || e.IsZero() {
				t.Errorf("NewEffort(%v, %v) = %v, %v", s, v, e, err)
			}
		}
		for _, v := range []float64{ends[0] - 0.5, ends[1] + 0.5, math.NaN(), math.Inf(1), math.Inf(-1)} {
			if e, err := units.NewEffort(s, v); !errors.Is(err, field.ErrOutOfRange) || !e.IsZero() {
				t.Errorf("NewEffort(%v, %v) = %v, %v, want %v", s, v, e, err, field.ErrOutOfRange)
			}
		}
	}
	for _, v := range []float64{8.25, 8.4999999, math.Nextafter(9, 10)} {
		if _, err := units.RPE(v); !errors.Is(err, field.ErrOutOfRange) {
			t.Errorf("RPE(%v): %v, want %v", v, err, field.ErrOutOfRange)
		}
	}
	if _, err := units.NewEffort(0, 5); !errors.Is(err, field.ErrMissing) {
		t.Errorf("a rating without scale: %v, want %v", err, field.ErrMissing)
	}
	if _, err := units.NewEffort(99, 5); !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("a rating on no scale: %v, want %v", err, field.ErrOutOfRange)
	}
}

func TestEffortRIR(t *testing.T) {
	if got, err := units.Must(units.InReserve(2.5)).RIR(); got != units.Exactly[units.RIR](2.5) || err != nil {
		t.Errorf("rir 2.5 is %v in reserve, %v", got, err)
	}
	for _, e := range []units.Effort{
		units.Must(units.OMNI(6)),
		units.Must(units.NewEffort(units.ScaleCR10, 6)),
		units.Must(units.NewEffort(units.ScaleBorg, 15)),
		units.Must(units.RPE(4.5)),
	} {
		if got, err := e.RIR(); !errors.Is(err, units.ErrNoRIR) || !got.IsZero() {
			t.Errorf("%v is %v in reserve, %v, want %v", e, got, err, units.ErrNoRIR)
		}
	}
	if _, err := (units.Effort{}).RIR(); !errors.Is(err, field.ErrMissing) {
		t.Errorf("no effort: %v, want %v", err, field.ErrMissing)
	}
}

func TestEffortTextRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := units.Scale(rapid.IntRange(1, 5).Draw(t, "scale"))
		ends := scaleEnds[s]
		v := rapid.Float64Range(ends[0], ends[1]).Draw(t, "v")
		if s == units.ScaleRPE {
			v = math.Round(2*v) / 2
		}
		roundTrip(t, units.Must(units.NewEffort(s, v)))
	})
	roundTrip(t, units.Effort{})
	if got := units.Must(units.InReserve(math.Copysign(0, -1))).String(); got != "rir 0" {
		t.Errorf("minus nought in reserve prints %q, want rir 0", got)
	}
}

func TestEffortTextErrors(t *testing.T) {
	tests := []struct {
		in   string
		want error
	}{
		{"8.5", field.ErrSyntax},
		{"rpe", field.ErrSyntax},
		{"rpe ", field.ErrSyntax},
		{"rpe  8", field.ErrSyntax},
		{"rpe 8 ", field.ErrSyntax},
		{"rpe eight", field.ErrSyntax},
		{"rir 1e999", field.ErrSyntax},
		{"RPEE 8", field.ErrUnknown},
		{"effort 8", field.ErrUnknown},
		{" 8", field.ErrMissing},
		{"rpe 8.25", field.ErrOutOfRange},
		{"rir NaN", field.ErrSyntax},
		{"rir -1", field.ErrOutOfRange},
		{"borg 5", field.ErrOutOfRange},
	}
	for _, tt := range tests {
		e := units.Must(units.RPE(7))
		if err := e.UnmarshalText([]byte(tt.in)); !errors.Is(err, tt.want) || e.String() != "rpe 7" {
			t.Errorf("UnmarshalText(%q): %v, effort %v; want %v and the old effort", tt.in, err, e, tt.want)
		}
	}
}

func TestScaleText(t *testing.T) {
	for s := units.Scale(0); s <= units.ScaleBorg; s++ {
		text, err := s.MarshalText()
		var got units.Scale
		if err != nil || got.UnmarshalText(text) != nil || got != s || s.String() != string(text) {
			t.Errorf("%v by way of %q gives %v, %v", s, text, got, err)
		}
	}
	if _, err := units.Scale(99).MarshalText(); !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("Scale(99).MarshalText: %v, want %v", err, field.ErrOutOfRange)
	}
}

func TestFractionText(t *testing.T) {
	for f, want := range map[units.Fraction]string{0: "0 %", 0.7: "70 %", 0.725: "72.5 %", 1: "100 %", 0.3333: "33.3 %"} {
		if got := f.String(); got != want {
			t.Errorf("Fraction(%v) prints %q, want %q", float64(f), got, want)
		}
	}
	if got := units.Fraction(0.75).Percent(); got != 75 {
		t.Errorf("0.75 is %v percent", got)
	}
}
