package track_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/progression/track"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
)

// A check is a row of the published checks.
type check struct {
	*testing.T
	id, rule, inputs, expected, known string
}

// here are the checks of the rows on change, trend and tracking, by rule.
var here = map[string]func(check){
	"sem_and_mdc95":                        checkSEM,
	"mdc95_percent_from_cv":                checkPercent,
	"mdc95_percent_log_scale":              checkLogScale,
	"mdc95_of_means":                       checkMeans,
	"typical_error_from_sd_of_differences": checkTypical,
	"smallest_worthwhile_change":           checkWorthwhile,
	"mann_kendall":                         checkRank,
	"sen_slope":                            checkSen,
	"ols_slope":                            checkLine,
	"local_level_mle":                      checkLikeliest,
	"local_level_diagnostics":              checkDiagnostics,
	"local_level_concentrated_loglik_path": checkPath,
	"local_level_diffuse_loglik":           checkDiffuse,
	"local_level_loglik_vague_prior":       checkVague,
	"local_level_steady_state":             checkSteady,
	"local_level_filter_smoother":          checkFilter,
	"local_level_missing_values":           checkMissing,
	"local_level_forecast":                 checkForecast,
	"local_linear_trend_filter":            checkTrend,
}

// Every row whose rule stands above is checked, and every rule has a row.
func TestPublishedChecks(t *testing.T) {
	used := map[string]int{}
	for _, row := range table(t, published+"progression-checks.csv") {
		if run, ok := here[row[1]]; ok {
			used[row[1]]++
			t.Run(row[0], func(t *testing.T) { run(check{t, row[0], row[1], row[2], row[3], row[7]}) })
		}
	}
	for rule := range here {
		if used[rule] == 0 {
			t.Errorf("no row of %s", rule)
		}
	}
}

func checkDiffuse(c check) {
	l := run(c, nileModel(), track.State{}, nile(c, nil)).State().Likelihood(nileModel())
	within(c, "log-likelihood", l.Diffuse, decode[float64](c, c.expected), 0.5e-6)
	within(c, "with every constant, of the note", everyConstant(l), -633.464564, 0.5e-6)
	if l.Readings != 100 || l.Begun != 1 {
		c.Errorf("%+v", l)
	}
}

// vague begins as the rows do: at 0 with a variance of 10⁷ on the day of the first.
func vague() track.State {
	return track.State{Before: track.Belief{Day: first, LevelVar: 1e7}}
}

func checkVague(c check) {
	l := run(c, nileModel(), vague(), nile(c, nil)).State().Likelihood(nileModel())
	within(c, "log-likelihood", l.Diffuse, decode[float64](c, c.expected), 0.5e-12*641*10)
}

func checkSteady(c check) {
	want := decode[struct{ K, P_pred, F, P_filt float64 }](c, c.expected)
	states := online(c, nileModel(), track.State{}, nile(c, nil))
	before, after := states[99].Before.LevelVar, states[99].Now(nileModel()).LevelVar
	near(c, "K", after/15099, want.K, 1e-12)
	near(c, "P", before, want.P_pred, 1e-12)
	near(c, "F", before+15099, want.F, 1e-12)
	near(c, "P filtered", after, want.P_filt, 1e-12)
}

// A row of filter and smoother. The last digit is that of ten.
type filterRow struct {
	T int
}

type filterWant struct {
	A, P, V, F, K, Filtered, Smoothed float64
	FilteredVar                       float64 `json:"filtered_var"`
	SmoothedVar                       float64 `json:"smoothed_var"`
}

const tenDigits = 1e-9

func checkFilter(c check) {
	at, want := decode[filterRow](c, c.inputs).T-1, decode[filterWant](c, c.expected)
	readings := nile(c, nil)
	s := online(c, nileModel(), vague(), readings)[at]
	b, now := s.Before, s.Now(nileModel())
	within(c, "a", b.Level, want.A, tenDigits*1000)
	near(c, "P", b.LevelVar, want.P, tenDigits)
	near(c, "v", readings[at].Value-b.Level, want.V, tenDigits*30)
	near(c, "F", b.LevelVar+15099, want.F, tenDigits)
	near(c, "K", b.LevelVar/(b.LevelVar+15099), want.K, tenDigits)
	near(c, "filtered", now.Level, want.Filtered, tenDigits)
	near(c, "filtered variance", now.LevelVar, want.FilteredVar, tenDigits)
	all := run(c, nileModel(), vague(), readings)
	near(c, "smoothed", all.Smoothed(at).Level, want.Smoothed, tenDigits)
	near(c, "smoothed variance", all.Smoothed(at).LevelVar, want.SmoothedVar, tenDigits)
	near(c, "filtered in the series", all.Filtered(at).Level, now.Level, 1e-14)
}

// Missing years have no reading, and so no place in the series: a look ahead from the
// one before says what is known of them, and what later ones add is between the two.
func checkMissing(c check) {
	at, want := decode[filterRow](c, c.inputs).T, decode[filterWant](c, c.expected)
	missing := func(i int) bool { return i >= 21 && i <= 40 || i >= 61 && i <= 80 }
	readings := nile(c, missing)
	day := first + units.Day(at-1)
	i := slices.IndexFunc(readings, func(r track.Reading) bool { return r.Day >= day })
	states := online(c, nileModel(), vague(), readings)
	all := run(c, nileModel(), vague(), readings)
	before, now := states[i-1].Now(nileModel()), all.Smoothed(i)
	ahead := before.LevelVar + float64(day-before.Day)*1469.1
	near(c, "a", before.Level, want.A, tenDigits)
	near(c, "P", ahead, want.P, tenDigits)
	if readings[i].Day == day {
		near(c, "smoothed", now.Level, want.Smoothed, tenDigits)
		near(c, "smoothed variance", now.LevelVar, want.SmoothedVar, tenDigits)
		return
	}
	gap, err := all.On(day)
	if err != nil {
		c.Fatal(err)
	}
	near(c, "smoothed", gap.Level, want.Smoothed, tenDigits)
	near(c, "smoothed variance", gap.LevelVar, want.SmoothedVar, tenDigits)
}

func checkForecast(c check) {
	want := decode[struct {
		Mean   float64
		VarObs float64 `json:"var_obs"`
	}](c, c.expected)
	s := run(c, nileModel(), vague(), nile(c, nil)).State()
	f, err := s.Forecast(nileModel(), first+100)
	if err != nil {
		c.Fatal(err)
	}
	near(c, "mean", f.Level, want.Mean, tenDigits)
	near(c, "variance of a reading", f.LevelVar+f.Reading, want.VarObs, tenDigits)
}

func checkTrend(c check) {
	in := decode[struct {
		Y      []float64
		H      float64
		QLevel float64 `json:"Q_level"`
		QSlope float64 `json:"Q_slope"`
		T      int
	}](c, c.inputs)
	want := decode[struct{ V, F, Level, Slope, P11, P12, P22 float64 }](c, c.expected)
	m := track.Model{Kind: track.LinearTrend, Noise: in.H, Level: in.QLevel, Slope: in.QSlope}
	var readings []track.Reading
	for i, y := range in.Y {
		readings = append(readings, track.Reading{Day: first + units.Day(i), Value: y})
	}
	from := track.State{Before: track.Belief{Day: first, LevelVar: 1e7, SlopeVar: 1e7}}
	s := online(c, m, from, readings)[in.T-1]
	now := s.Now(m)
	const digits = 1e-8 // a start of 10⁷ leaves no more
	near(c, "v", in.Y[in.T-1]-s.Before.Level, want.V, digits)
	near(c, "F", s.Before.LevelVar+in.H, want.F, digits)
	near(c, "level", now.Level, want.Level, digits)
	near(c, "slope", now.Slope, want.Slope, digits)
	near(c, "P11", now.LevelVar, want.P11, digits)
	near(c, "P12", now.Covariance, want.P12, digits)
	near(c, "P22", now.SlopeVar, want.P22, digits)
	if strings.TrimSpace(c.known) != "computed" {
		c.Errorf("known %q", c.known)
	}
}

// The likelihood is checked at the published variances: what was found may be no less
// likely, and prints as they do.
func checkLikeliest(c check) {
	want := decode[struct {
		Eps float64 `json:"sigma2_eps"`
		Eta float64 `json:"sigma2_eta"`
	}](c, c.expected)
	m := track.Model{Kind: track.LocalLevel}
	found, err := track.MostLikely(m, track.Unknowns{Level: true, Noise: true}, nile(c, nil))
	if err != nil {
		c.Fatal(err)
	}
	m.Noise, m.Level = want.Eps, want.Eta
	published := run(c, m, track.State{}, nile(c, nil)).State().Likelihood(m)
	if found.Likelihood.Diffuse < published.Diffuse {
		c.Errorf("found %v, less likely than the published %v", found.Likelihood.Diffuse, published.Diffuse)
	}
	within(c, "found", found.Likelihood.Diffuse, published.Diffuse, 1e-6)
	within(c, "noise, of the note", found.Model.Noise, 15098.52, 0.05)
	within(c, "level, of the note", found.Model.Level, 1469.18, 0.05)
	library := table(c, "testdata/nile-fit.csv")[0]
	near(c, "error of the noise", found.Errors.Noise, fieldtest.Number(c, library[2]), 1e-5)
	near(c, "error of the level", found.Errors.Level, fieldtest.Number(c, library[3]), 1e-5)
	within(c, "likelihood of the library", everyConstant(found.Likelihood), fieldtest.Number(c, library[4]), 1e-6)
}

func checkDiagnostics(c check) {
	want := decode[struct {
		Q9, Skew, Normality, H33 float64
		Kurtosis                 float64 `json:"excess_kurtosis"`
	}](c, c.expected)
	d, err := track.Diagnose(nileModel(), nile(c, nil), 9)
	if err != nil {
		c.Fatal(err)
	}
	for _, v := range []struct {
		what      string
		got, want float64
	}{{"Q(9)", d.Together, want.Q9}, {"skew", d.Skewness, want.Skew}, {"kurtosis", d.Kurtosis, want.Kurtosis}, {"normality", d.Normality, want.Normality}, {"H(33)", d.Later, want.H33}} {
		within(c, v.what, v.got, v.want, 0.005)
	}
	if d.Days != 99 || d.Third != 33 || d.Lags != 9 {
		c.Errorf("%+v", d)
	}
	// Days that are no multiple of three leave the middle ones over.
	if short, err := track.Diagnose(nileModel(), nile(c, nil)[:12], 2); err != nil || short.Days != 11 || short.Third != 3 {
		c.Errorf("%+v, %v", short, err)
	}
}

// The book drops constants, so that only differences between entries can be compared,
// each with half a unit of the last digit of both.
func checkPath(c check) {
	want := decode[[]float64](c, c.expected)
	var got []float64
	for _, q := range decode[struct{ Q []float64 }](c, c.inputs).Q {
		m := track.Model{Kind: track.LocalLevel, Noise: 1, Level: q}
		l := run(c, m, track.State{}, nile(c, nil)).State().Likelihood(m)
		scale := l.Squares / 99 // the likeliest common factor of both variances
		m.Noise, m.Level = scale, q*scale
		got = append(got, run(c, m, track.State{}, nile(c, nil)).State().Likelihood(m).Diffuse)
	}
	for i := range want[1:] {
		within(c, "step", got[i+1]-got[i], want[i+1]-want[i], 0.01)
	}
}
