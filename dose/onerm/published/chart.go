package published

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Chart is a published table of repetitions to failure and percent of 1RM. It
// is a [onerm.Relation] at its printed rows and nowhere else; [Chart.Interpolated] is
// one between them. The zero value is "not given".
//
// The two charts are kept apart: at 12 repetitions one prints 70 %, the other
// 67. Both are convention; no curve reproduces them.
type Chart uint8

// Charts.
const (
	_ Chart = iota // not given
	// NSCALoadChart prints 1 to 10 and 12 repetitions, 100 to 70 %. Published
	// (nscachart, a hosted copy). No people and no error were published with it.
	NSCALoadChart // "nsca-load-chart"
	// NSCATextbook prints 1 to 12 and 15 repetitions, 100 to 65 %. Its rows for 11
	// and 15 are secondary, the others from memory (nscatextbook). The book says
	// that training moves the percentages by 0.5 to 2 points.
	NSCATextbook // "nsca-textbook"
)

var charts = field.NewVocabulary[Chart]("chart", "", "nsca-load-chart", "nsca-textbook")

// Charts yields every chart.
func Charts() iter.Seq[Chart] { return charts.All() }

// String returns the chart's code, such as "nsca-load-chart".
func (c Chart) String() string { return charts.Text(c) }

// check returns nil if c is given.
func (c Chart) check() error { return charts.Check("", c) }

// MarshalText writes what String returns.
func (c Chart) MarshalText() ([]byte, error) { return charts.Marshal(c) }

// UnmarshalText reads what MarshalText writes.
func (c *Chart) UnmarshalText(text []byte) error { return charts.Unmarshal(text, c) }

// A ChartRow is one printed pair.
type ChartRow struct {
	Reps    int             `json:"reps"`    // to failure
	Percent int             `json:"percent"` // of the 1RM
	Basis   evidence.Basis  `json:"basis"`   // how this pair is known
	Fact    evidence.FactID `json:"fact"`    // that states it
}

// upToTen are the percents for 1 to 10 repetitions, on which the charts agree.
var upToTen = [...]int{100, 95, 93, 90, 87, 85, 83, 80, 77, 75}

var chartRows = [...][]ChartRow{
	NSCALoadChart: append(firstTen(NSCALoadChart, evidence.Published),
		chartRow(NSCALoadChart, 12, 70, evidence.Published)),
	NSCATextbook: append(firstTen(NSCATextbook, evidence.FromMemory),
		chartRow(NSCATextbook, 11, 70, evidence.Secondary),
		chartRow(NSCATextbook, 12, 67, evidence.FromMemory),
		chartRow(NSCATextbook, 15, 65, evidence.Secondary)),
}

func chartRow(c Chart, reps, percent int, b evidence.Basis) ChartRow {
	return ChartRow{reps, percent, b, evidence.FactID(fmt.Sprintf("published.%s.%d", c, reps))}
}

func firstTen(c Chart, b evidence.Basis) []ChartRow {
	var rows []ChartRow
	for i, percent := range upToTen {
		rows = append(rows, chartRow(c, i+1, percent, b))
	}
	return rows
}

func (c Chart) rows() []ChartRow {
	if int(c) < len(chartRows) {
		return chartRows[c]
	}
	return nil
}

// Rows yields the printed pairs by rising repetitions.
func (c Chart) Rows() iter.Seq[ChartRow] { return slices.Values(c.rows()) }

// Studied returns the repetitions from the first row to the last.
func (c Chart) Studied() units.Range[float64] {
	rows := c.rows()
	if len(rows) == 0 {
		return units.Range[float64]{}
	}
	return units.Must(units.Between(float64(rows[0].Reps), float64(rows[len(rows)-1].Reps)))
}

// Fraction returns the share of the 1RM printed for reps. Repetitions without
// a row are a [field.ErrOutOfRange], no chart is a [field.ErrMissing].
func (c Chart) Fraction(reps float64) (units.Fraction, error) {
	for _, r := range c.rows() {
		if float64(r.Reps) == reps {
			return r.share(), nil
		}
	}
	return 0, c.refuse("/reps", reps)
}

// Reps returns the repetitions printed for a share of the 1RM. A share without
// a row is a [field.ErrOutOfRange], no chart is a [field.ErrMissing].
func (c Chart) Reps(share units.Fraction) (float64, error) {
	for _, r := range c.rows() {
		if r.share() == share {
			return float64(r.Reps), nil
		}
	}
	return 0, c.refuse("/fraction", float64(share))
}

func (r ChartRow) share() units.Fraction { return units.Fraction(r.Percent) / 100 }

func (c Chart) refuse(path string, got float64) error {
	if err := c.check(); err != nil {
		return field.At("/chart", err)
	}
	allowed := "one of"
	for _, r := range c.rows() {
		allowed += fmt.Sprintf(" %d (%d %%)", r.Reps, r.Percent)
	}
	return field.New(path, got, allowed+" repetitions; values between rows only when asked for", field.ErrOutOfRange)
}

// Load returns the load for so many repetitions to failure: the plain product
// of the 1RM and the printed percent, to the nearest nanogram. A 1RM of zero
// or less is a [field.ErrOutOfRange]; other errors are those of
// [Chart.Fraction].
func (c Chart) Load(oneRM units.Mass, reps float64) (units.Mass, error) {
	share, err := c.Fraction(reps)
	if err != nil {
		return 0, err
	}
	if oneRM <= 0 {
		return 0, field.New("/one_rm", oneRM, "a mass above 0 kg", field.ErrOutOfRange)
	}
	return scaled("/one_rm", oneRM, share)
}

// Interpolated returns the relation that runs straight from row to row of the
// chart. What lies between the rows was not published; beyond the first and the
// last row there is nothing.
func (c Chart) Interpolated() onerm.Relation { return interpolated{c} }

type interpolated struct{ Chart }

// String says which chart it is.
func (p interpolated) String() string { return p.Chart.String() + " interpolated" }

// Fraction returns the share of the 1RM on the straight line at reps.
func (p interpolated) Fraction(reps float64) (units.Fraction, error) {
	rows := p.rows()
	for i := 1; i < len(rows); i++ {
		a, b := rows[i-1], rows[i]
		if from, to := float64(a.Reps), float64(b.Reps); reps >= from && reps <= to {
			return units.Fraction(between(reps, from, to, float64(a.Percent), float64(b.Percent)) / 100), nil
		}
	}
	return 0, p.outside("/reps", reps)
}

// Reps returns the repetitions on the straight line at a share.
func (p interpolated) Reps(share units.Fraction) (float64, error) {
	rows := p.rows()
	for i := 1; i < len(rows); i++ {
		a, b := rows[i-1], rows[i]
		if share <= a.share() && share >= b.share() {
			return between(float64(share)*100, float64(a.Percent), float64(b.Percent), float64(a.Reps), float64(b.Reps)), nil
		}
	}
	return 0, p.outside("/fraction", float64(share))
}

// between returns where y stands between y0 and y1 when x stands so between x0
// and x1.
func between(x, x0, x1, y0, y1 float64) float64 { return y0 + float64((y1-y0)*((x-x0)/(x1-x0))) }

func (p interpolated) outside(path string, got float64) error {
	if err := p.check(); err != nil {
		return field.At("/chart", err)
	}
	rows := p.rows()
	first, last := rows[0], rows[len(rows)-1]
	return field.New(path, got, fmt.Sprintf("%d to %d repetitions, %d to %d %%", first.Reps, last.Reps, last.Percent, first.Percent), field.ErrOutOfRange)
}
