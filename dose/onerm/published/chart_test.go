package published_test

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"example.org/posology/dose/onerm/published"
	"example.org/posology/units"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

func TestChartRows(t *testing.T) {
	n := 0
	for c := range published.Charts() {
		n++
		text, err := c.MarshalText()
		var back published.Chart
		if err != nil || back.UnmarshalText(text) != nil || back != c {
			t.Errorf("%v: %q reads back as %v (%v)", c, text, back, err)
		}
		last := published.ChartRow{Percent: 101}
		for r := range c.Rows() {
			if r.Reps <= last.Reps || r.Percent >= last.Percent || r.Basis == 0 {
				t.Errorf("%v: row %+v after %+v", c, r, last)
			}
			share, err := c.Fraction(float64(r.Reps))
			if err != nil || math.Abs(share.Percent()-float64(r.Percent)) > 1e-12 {
				t.Errorf("%v: %d repetitions give %v, %v", c, r.Reps, share, err)
			}
			if reps, err := c.Reps(share); err != nil || reps != float64(r.Reps) {
				t.Errorf("%v: %v gives %v, %v", c, share, reps, err)
			}
			last = r
		}
		if high, _ := c.Studied().Max(); high != float64(last.Reps) {
			t.Errorf("%v: studied %v", c, c.Studied())
		}
	}
	if n != 2 || !published.Chart(0).Studied().IsZero() || !published.Chart(99).Studied().IsZero() {
		t.Errorf("%d charts", n)
	}
}

// TestChartsDisagree: at 12 repetitions; both are kept.
func TestChartsDisagree(t *testing.T) {
	chart, book := units.Must(published.NSCALoadChart.Fraction(12)), units.Must(published.NSCATextbook.Fraction(12))
	if chart != 0.70 || book != 0.67 {
		t.Errorf("12 repetitions: %v and %v, want 70 and 67 %%", chart, book)
	}
	if reps := units.Must(published.NSCATextbook.Reps(0.7)); reps != 11 {
		t.Errorf("70 %% in the book: %v, want 11", reps)
	}
}

func TestChartErrors(t *testing.T) {
	chart, none := published.NSCALoadChart, published.Chart(0)
	tests := []struct {
		name string
		err  error
		path string
		want error
	}{
		{"no row for 11", second(chart.Fraction(11)), "/reps", field.ErrOutOfRange},
		{"between rows", second(chart.Fraction(5.5)), "/reps", field.ErrOutOfRange},
		{"not a number", second(chart.Fraction(math.NaN())), "/reps", field.ErrOutOfRange},
		{"no row for 92 %", second(chart.Reps(0.92)), "/fraction", field.ErrOutOfRange},
		{"load for 13", second(chart.Load(units.Kilogram, 13)), "/reps", field.ErrOutOfRange},
		{"no 1RM", second(chart.Load(0, 5)), "/one_rm", field.ErrOutOfRange},
		{"no chart", second(none.Fraction(5)), "/chart", field.ErrMissing},
		{"no such chart", second(published.Chart(9).Reps(0.9)), "/chart", field.ErrOutOfRange},
		{"no chart between rows", second(none.Interpolated().Reps(0.9)), "/chart", field.ErrMissing},
		{"beyond the last row", second(chart.Interpolated().Fraction(12.01)), "/reps", field.ErrOutOfRange},
		{"before the first row", second(chart.Interpolated().Fraction(0.99)), "/reps", field.ErrOutOfRange},
		{"below the last row", second(chart.Interpolated().Reps(0.69)), "/fraction", field.ErrOutOfRange},
		{"above the first row", second(chart.Interpolated().Reps(1.01)), "/fraction", field.ErrOutOfRange},
		{"share not a number", second(chart.Interpolated().Reps(units.Fraction(math.NaN()))), "/fraction", field.ErrOutOfRange},
	}
	for _, tt := range tests {
		var which *field.Error
		if !errors.As(tt.err, &which) || which.Path != tt.path || !errors.Is(tt.err, tt.want) || which.Allowed == "" {
			t.Errorf("%s: error %v, want %v at %s", tt.name, tt.err, tt.want, tt.path)
		}
	}
}

func TestInterpolated(t *testing.T) {
	between := published.NSCALoadChart.Interpolated()
	if share := units.Must(between.Fraction(11)); math.Abs(float64(share)-0.725) > 1e-15 {
		t.Errorf("11 repetitions: %v, want half-way from 75 to 70 %%", share)
	}
	if text := fmt.Sprint(between); text != "nsca-load-chart interpolated" {
		t.Errorf("it calls itself %q", text)
	}
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.SampledFrom([]published.Chart{published.NSCALoadChart, published.NSCATextbook}).Draw(t, "chart")
		last, _ := c.Studied().Max()
		r := rapid.Float64Range(1, last).Draw(t, "reps")
		share, err := c.Interpolated().Fraction(r)
		if err != nil {
			t.Fatal(err)
		}
		if back, err := c.Interpolated().Reps(share); err != nil || math.Abs(back-r) > 1e-12*r {
			t.Errorf("%v: %v → %v → %v (%v)", c, r, share, back, err)
		}
		if more, err := c.Interpolated().Fraction(min(r+0.01, last)); err != nil || r+0.01 < last && more >= share {
			t.Errorf("%v: does not fall at %v", c, r)
		}
		whole := math.Floor(r)
		if printed, err := c.Fraction(whole); err == nil && math.Abs(float64(printed-units.Must(c.Interpolated().Fraction(whole)))) > 1e-15 {
			t.Errorf("%v: printed and straight line differ at %v", c, whole)
		}
	})
}

// second returns the second result of a call.
func second[A, B any](_ A, b B) B { return b }
