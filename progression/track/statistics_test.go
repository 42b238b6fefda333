package track_test

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/stat"
	"pgregory.net/rapid"

	"example.org/posology/progression/track"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
)

// z is the level whose normal quantile the rows take for 1.96 exactly.
var z = units.Fraction(math.Erf(1.96 / math.Sqrt2))

const sixDecimals = 0.5e-6

type errorRow struct {
	SD, ICC, SEM float64
	CV           float64 `json:"cv_percent"`
	Differences  float64 `json:"sd_diff"`
	Between      float64 `json:"between_subject_sd"`
	K1, K2       int
}

func checkSEM(c check) {
	in, want := decode[errorRow](c, c.inputs), decode[struct{ SEM, MDC95 float64 }](c, c.expected)
	sem := units.Must(track.SEM(in.SD, in.ICC))
	within(c, "SEM", sem, want.SEM, sixDecimals)
	within(c, "MDC", units.Must(track.MDC(sem, z, 1, 1)), want.MDC95, sixDecimals)
}

func checkPercent(c check) {
	within(c, "MDC", units.Must(track.MDC(decode[errorRow](c, c.inputs).CV, z, 1, 1)), decode[float64](c, c.expected), sixDecimals)
}

func checkLogScale(c check) {
	cv := units.Fraction(decode[errorRow](c, c.inputs).CV / 100)
	rise, fall, err := track.MDCShare(cv, z, 1, 1)
	if err != nil {
		c.Fatal(err)
	}
	within(c, "MDC", rise.Percent(), decode[float64](c, c.expected), sixDecimals)
	within(c, "up and down again", float64((1+rise)*(1-fall)), 1, 1e-14)
}

func checkMeans(c check) {
	in := decode[errorRow](c, c.inputs)
	within(c, "MDC", units.Must(track.MDC(in.SEM, z, in.K1, in.K2)), decode[float64](c, c.expected), sixDecimals)
}

func checkTypical(c check) {
	within(c, "typical error", units.Must(track.TypicalError(decode[errorRow](c, c.inputs).Differences)), decode[float64](c, c.expected), sixDecimals)
}

func checkWorthwhile(c check) {
	within(c, "SWC", units.Must(track.SmallestWorthwhile(decode[errorRow](c, c.inputs).Between)), decode[float64](c, c.expected), 1e-12)
}

type seriesRow struct {
	Y      []float64
	Series string
}

// values are those of a row, with the years of the Nile or else counted from 1.
func (r seriesRow) values(c check) (x, y []float64) {
	if r.Series != "" {
		for _, row := range table(c, published+r.Series) {
			x, y = append(x, fieldtest.Number(c, row[0])), append(y, fieldtest.Number(c, row[1]))
		}
		return x, y
	}
	for i := range r.Y {
		x = append(x, float64(i+1))
	}
	return x, r.Y
}

func checkRank(c check) {
	_, y := decode[seriesRow](c, c.inputs).values(c)
	want := decode[struct {
		S      int
		Var, Z float64
		Ties   []int `json:"tie_groups"`
	}](c, c.expected)
	got, err := track.MannKendall(y)
	if err != nil || got.S != want.S {
		c.Errorf("%+v, %v", got, err)
	}
	zDigits := 5e-10
	if c.id == "MK-01" {
		zDigits = 0.0005
		slices.Sort(got.Ties)
		slices.Reverse(got.Ties)
		if !slices.Equal(got.Ties, want.Ties) {
			c.Errorf("ties %v, want %v", got.Ties, want.Ties)
		}
		within(c, "one-sided p, of the note", got.P/2, 0.045999, sixDecimals)
		within(c, "variance", got.Variance, want.Var, 0.005)
	} else if want.Var != 0 {
		near(c, "variance", got.Variance, want.Var, 1e-12)
	}
	within(c, "Z", got.Z, want.Z, zDigits)
}

func checkSen(c check) {
	x, y := decode[seriesRow](c, c.inputs).values(c)
	slope, interval, err := track.Sen(x, y, 0.9)
	if err != nil {
		c.Fatal(err)
	}
	within(c, "slope", slope, decode[float64](c, c.expected), 1e-14)
	if !interval.Contains(slope) {
		c.Errorf("interval %v", interval)
	}
}

// checkLine holds the line that callers are sent to for to the rows.
func checkLine(c check) {
	x, y := decode[seriesRow](c, c.inputs).values(c)
	want := decode[struct{ Intercept, Slope float64 }](c, c.expected)
	intercept, slope := stat.LinearRegression(x, y, nil, false)
	near(c, "intercept", intercept, want.Intercept, 1e-11)
	near(c, "slope", slope, want.Slope, 1e-11)
}

// TestRankProperties: turned round in time or in value the trend changes its sign; a
// change of scale that keeps the order changes nothing; Sen's slope follows a line.
func TestRankProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		y := rapid.SliceOfN(rapid.Float64Range(-9, 9).Filter(func(v float64) bool { return v != 0 }), 4, 12).Draw(t, "y")
		for i := range y {
			y[i] = math.Round(y[i]) // so that there are ties
		}
		a := units.Must(track.MannKendall(y))
		turned, less, scaled := slices.Clone(y), slices.Clone(y), slices.Clone(y)
		slices.Reverse(turned)
		x := make([]float64, len(y))
		for i := range y {
			less[i], scaled[i], x[i] = -y[i], math.Exp(y[i]), float64(i*i)
		}
		b, c, d := units.Must(track.MannKendall(turned)), units.Must(track.MannKendall(less)), units.Must(track.MannKendall(scaled))
		if b.S != -a.S || c.S != -a.S || d.S != a.S || b.Variance != a.Variance || c.P != a.P || d.Z != a.Z || a.P < 0 || a.P > 1 {
			t.Errorf("%+v, turned %+v, less %+v, scaled %+v", a, b, c, d)
		}
		slope, _, err := track.Sen(x, y, 0.95)
		if err != nil {
			t.Fatal(err)
		}
		for i := range y {
			y[i] += 3 * x[i]
		}
		steeper, interval, err := track.Sen(x, y, 0.95)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "steeper by 3", steeper, slope+3, 1e-9)
		narrow := units.Must(second(track.Sen(x, y, 0.5)))
		if !interval.Contains(steeper) || !narrow.Contains(steeper) {
			t.Errorf("%v lies outside %v or %v", steeper, interval, narrow)
		}
		low, _ := interval.Min()
		inner, hasInner := narrow.Min()
		if _, hasLow := interval.Min(); hasLow && (!hasInner || inner < low) {
			t.Errorf("at 50 %% %v, at 95 %% %v", narrow, interval)
		}
	})
}

func second[A, B any](_ A, b B, err error) (B, error) { return b, err }

// TestSenAgainstLibrary: slopes are the library's, and ends of intervals lie within one
// rank of its.
func TestSenAgainstLibrary(t *testing.T) {
	for _, row := range table(t, "testdata/sen.csv") {
		x, y := seriesRow{Series: "nile.csv"}.values(check{T: t})
		if row[0] == "epa" {
			x, y = seriesRow{Y: []float64{10, 10, 10, 5, 10, 20, 18, 17, 15, 24, 15}}.values(check{T: t})
		}
		slope, interval, err := track.Sen(x, y, units.Fraction(fieldtest.Number(t, row[1])))
		if err != nil {
			t.Fatal(err)
		}
		low, _ := interval.Min()
		high, _ := interval.Max()
		within(t, "slope", slope, fieldtest.Number(t, row[2]), 1e-12)
		within(t, "lower end", low, fieldtest.Number(t, row[3]), 0.002)
		within(t, "upper end", high, fieldtest.Number(t, row[4]), 0.002)
	}
}
