package track_test

import (
	"math"
	"testing"

	"example.org/posology/progression/track"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
)

// libraryModels are those of testdata/series-fit.csv, with their likelihood.
func libraryModels(t failer) (names []string, models map[string]track.Model, likelihood map[string]float64) {
	t.Helper()
	models, likelihood = map[string]track.Model{}, map[string]float64{}
	for _, row := range table(t, "testdata/series-fit.csv") {
		m := track.Model{Level: fieldtest.Number(t, row[2]), Slope: fieldtest.Number(t, row[3]), Keep: fieldtest.Number(t, row[4]), FirstSlope: fieldtest.Number(t, row[5]), Day: fieldtest.Number(t, row[6])}
		if err := m.Kind.UnmarshalText([]byte(row[1])); err != nil {
			t.Fatal(err)
		}
		names = append(names, row[0])
		models[row[0]], likelihood[row[0]] = m, fieldtest.Number(t, row[7])
	}
	return names, models, likelihood
}

// TestAgainstLibrary: level, slope and variances on every day of a grid with gaps equal
// those of a statistics library that steps through all days; likelihoods too.
func TestAgainstLibrary(t *testing.T) {
	var readings []track.Reading
	for _, row := range table(t, "testdata/series.csv") {
		readings = append(readings, track.Reading{Day: first + units.Day(fieldtest.Number(t, row[0])), Value: fieldtest.Number(t, row[1]), Variance: fieldtest.Number(t, row[2])})
	}
	names, models, likelihood := libraryModels(t)
	rows := table(t, "testdata/series-days.csv")
	for _, name := range names {
		m := models[name]
		all := run(t, m, track.State{}, readings)
		within(t, name+", likelihood", everyConstant(all.State().Likelihood(m)), likelihood[name], 1e-8)
		filtered, seen := track.State{}, 0
		compared := 0
		for _, row := range rows {
			if row[0] != name {
				continue
			}
			day := first + units.Day(fieldtest.Number(t, row[1]))
			for ; seen < len(readings) && readings[seen].Day <= day; seen++ {
				filtered = online(t, m, filtered, readings[seen:seen+1])[0]
			}
			f, err := filtered.Forecast(m, day)
			if err != nil {
				t.Fatal(err)
			}
			b, err := all.On(day)
			if err != nil {
				t.Fatal(err)
			}
			for i, got := range []float64{f.Level, f.Slope, f.LevelVar, b.Level, b.Slope, b.LevelVar, b.Covariance, b.SlopeVar} {
				if text := row[i+2]; text != "" {
					compared++
					want := fieldtest.Number(t, text)
					within(t, name+", "+day.String()+", column "+string(rune('0'+i+2)), got, want, 1e-9*math.Max(math.Abs(want), 1e-3))
				}
			}
		}
		if compared < 500 {
			t.Errorf("%s: compared %d numbers", name, compared)
		}
	}
}
