package track_test

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/strength"
	"example.org/posology/progression/track"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// refuses fails unless err has a bad field of that path and category.
func refuses(t *testing.T, what string, err error, path string, category error) {
	t.Helper()
	var all field.Errors
	var one *field.Error
	switch {
	case errors.As(err, &all):
		for _, e := range all {
			if e.Path == path && errors.Is(e, category) {
				return
			}
		}
	case errors.As(err, &one) && one.Path == path && errors.Is(one, category):
		return
	}
	t.Errorf("%s: %v, want %s: %v", what, err, path, category)
}

var nan, inf = math.NaN(), math.Inf(1)

// TestModelRefused: every bad field of a model is named.
func TestModelRefused(t *testing.T) {
	good := track.StrengthModel()
	for name, test := range map[string]struct {
		change func(*track.Model)
		path   string
		want   error
	}{
		"no kind":              {func(m *track.Model) { m.Kind = 0 }, "/kind", field.ErrMissing},
		"another kind":         {func(m *track.Model) { m.Kind = 9 }, "/kind", field.ErrOutOfRange},
		"a level below 0":      {func(m *track.Model) { m.Level = -1e-9 }, "/level", field.ErrOutOfRange},
		"a slope of NaN":       {func(m *track.Model) { m.Slope = nan }, "/slope", field.ErrOutOfRange},
		"an infinite day":      {func(m *track.Model) { m.Day = inf }, "/day", field.ErrOutOfRange},
		"noise beyond numbers": {func(m *track.Model) { m.Noise = 1e151 }, "/noise", field.ErrOutOfRange},
		"a first slope below":  {func(m *track.Model) { m.FirstSlope = -1 }, "/first_slope", field.ErrOutOfRange},
		"too firm":             {func(m *track.Model) { m.Firm = 1001 }, "/firm", field.ErrOutOfRange},
		"not firm":             {func(m *track.Model) { m.Firm = -1 }, "/firm", field.ErrOutOfRange},
		"nothing kept":         {func(m *track.Model) { m.Keep = 0 }, "/keep", field.ErrOutOfRange},
		"little kept":          {func(m *track.Model) { m.Keep = 0.49 }, "/keep", field.ErrOutOfRange},
		"all kept":             {func(m *track.Model) { m.Keep = 1 }, "/keep", field.ErrOutOfRange},
		"kept in a line":       {func(m *track.Model) { m.Kind = track.LinearTrend }, "/keep", field.ErrConflict},
		"a slope in a level":   {func(m *track.Model) { m.Kind = track.LocalLevel }, "/slope", field.ErrConflict},
		"its start in a level": {func(m *track.Model) { m.Kind = track.LocalLevel }, "/first_slope", field.ErrConflict},
	} {
		m := good
		test.change(&m)
		refuses(t, name, m.Validate(), test.path, test.want)
		_, err := track.State{}.Seen(m, track.Reading{Day: first, Value: 1, Variance: 1})
		refuses(t, name+", seen", err, "/model"+test.path, test.want)
	}
	for _, keep := range []float64{0.5, 0.9999} {
		good.Keep = keep
		if err := good.Validate(); err != nil {
			t.Error(err)
		}
	}
}

// TestReadingsRefused: one by one and in a series.
func TestReadingsRefused(t *testing.T) {
	m := track.StrengthModel()
	good := track.Reading{Day: first, Value: 3, Variance: 0.001}
	for name, test := range map[string]struct {
		change func(*track.Reading)
		path   string
		want   error
	}{
		"no day":            {func(r *track.Reading) { r.Day = 0 }, "/day", field.ErrMissing},
		"an earlier day":    {func(r *track.Reading) { r.Day-- }, "/day", field.ErrConflict},
		"NaN":               {func(r *track.Reading) { r.Value = nan }, "/value", field.ErrOutOfRange},
		"beyond numbers":    {func(r *track.Reading) { r.Value = -1e151 }, "/value", field.ErrOutOfRange},
		"variance below 0":  {func(r *track.Reading) { r.Variance = -1 }, "/variance", field.ErrOutOfRange},
		"no variance":       {func(r *track.Reading) { r.Variance = 0 }, "/variance", field.ErrOutOfRange},
		"infinite variance": {func(r *track.Reading) { r.Variance = inf }, "/variance", field.ErrOutOfRange},
	} {
		bad := good
		test.change(&bad)
		s := online(t, m, track.State{}, []track.Reading{good})[0]
		after, err := s.Seen(m, bad)
		refuses(t, name, err, "/reading"+test.path, test.want)
		if after != s {
			t.Errorf("%s: the state changed", name)
		}
		refuses(t, name+" in a series", new(track.Track).Run(m, track.State{}, []track.Reading{good, bad, good}), "/readings/1"+test.path, test.want)
	}
	refuses(t, "none", new(track.Track).Run(m, track.State{}, nil), "/readings", field.ErrMissing)
	err := new(track.Track).Run(m, track.State{}, make([]track.Reading, 20_000))
	var all field.Errors
	if !errors.As(err, &all) || len(all) < 1000 || len(all) > 1002 || len(err.Error()) > 40<<10 {
		t.Errorf("%d errors, %d bytes", len(all), len(err.Error()))
	}
}

// TestStateRefused: what no series of readings leaves.
func TestStateRefused(t *testing.T) {
	m := track.StrengthModel()
	good := online(t, m, track.State{}, []track.Reading{{Day: first, Value: 3, Variance: 0.001}, {Day: first + 1, Value: 3, Variance: 0.001}})[1]
	for name, test := range map[string]struct {
		change func(*track.State)
		path   string
		want   error
	}{
		"a level of NaN":        {func(s *track.State) { s.Before.Level = nan }, "/before/level", field.ErrOutOfRange},
		"a slope of NaN":        {func(s *track.State) { s.Before.Slope = nan }, "/before/slope", field.ErrOutOfRange},
		"a variance below 0":    {func(s *track.State) { s.Before.LevelVar = -1 }, "/before/level_var", field.ErrOutOfRange},
		"a slope's below 0":     {func(s *track.State) { s.Before.SlopeVar = -1 }, "/before/slope_var", field.ErrOutOfRange},
		"too large together":    {func(s *track.State) { s.Before.Covariance = 1 }, "/before/covariance", field.ErrConflict},
		"free by NaN":           {func(s *track.State) { s.Before.Free[0] = nan }, "/before/free/0", field.ErrOutOfRange},
		"free below 0":          {func(s *track.State) { s.Before.Free[0] = -1 }, "/before/free/0", field.ErrOutOfRange},
		"free by infinity":      {func(s *track.State) { s.Before.Free[1] = inf }, "/before/free/1", field.ErrOutOfRange},
		"an impossible day":     {func(s *track.State) { s.Before.Day = -5 }, "/before/day", field.ErrOutOfRange},
		"a weight below 0":      {func(s *track.State) { s.Weight = -1 }, "/weight", field.ErrOutOfRange},
		"a weight of none":      {func(s *track.State) { s.Count = 0 }, "/weight", field.ErrConflict},
		"a count below 0":       {func(s *track.State) { s.Count = -1 }, "/count", field.ErrOutOfRange},
		"a mean of NaN":         {func(s *track.State) { s.Mean = nan }, "/mean", field.ErrOutOfRange},
		"squares below 0":       {func(s *track.State) { s.Within = -1 }, "/within", field.ErrOutOfRange},
		"past squares below 0":  {func(s *track.State) { s.Past.Squares = -1 }, "/past/squares", field.ErrOutOfRange},
		"an endless likelihood": {func(s *track.State) { s.Past.Diffuse = inf }, "/past/diffuse", field.ErrOutOfRange},
		"more begun than read":  {func(s *track.State) { s.Past.Begun = 9 }, "/count", field.ErrOutOfRange},
	} {
		s := good
		test.change(&s)
		refuses(t, name, s.Validate(), test.path, test.want)
		r := track.Reading{Day: first + 2, Value: 3, Variance: 1}
		_, err := s.Seen(m, r)
		refuses(t, name+", seen", err, "/state"+test.path, test.want)
		refuses(t, name+", run", new(track.Track).Run(m, s, []track.Reading{r}), "/from"+test.path, test.want)
		_, err = s.Forecast(m, first+2)
		refuses(t, name+", ahead", err, "/state"+test.path, test.want)
	}
}

// TestQuestionsRefused: days, levels and margins that cannot be asked for.
func TestQuestionsRefused(t *testing.T) {
	m := track.StrengthModel()
	two := []track.Reading{{Day: first, Value: 3, Variance: 0.001}, {Day: first + 7, Value: 3.1, Variance: 0.001}}
	all := run(t, m, track.State{}, two)
	s, b, w := all.State(), all.Smoothed(0), all.Width()
	line := track.Model{Kind: track.LinearTrend, Noise: 1}
	one := run(t, line, track.State{}, two[:1])
	interval := func(b track.Belief, level units.Fraction, w track.Width) error {
		_, err := b.Interval(level, w)
		return err
	}
	since := func(all *track.Track, day units.Day, margin, level units.Fraction) error {
		_, err := all.Since(day, margin, level)
		return err
	}
	ahead := func(s track.State, day units.Day) error { _, err := s.Forecast(m, day); return err }
	on := func(day units.Day) error { _, err := all.On(day); return err }
	_, noReading := track.Forecast{Belief: b}.ReadingInterval(0.9, w, -1)
	_, _, heavy := track.Belief{Day: first, Level: 40, LevelVar: 1}.OneRM(0.9, w)
	for name, test := range map[string]struct {
		err  error
		path string
		want error
	}{
		"a level of 49 %":           {interval(b, 0.49, w), "/level", field.ErrOutOfRange},
		"a level of 99.1 %":         {interval(b, 0.991, w), "/level", field.ErrOutOfRange},
		"a factor below 0":          {interval(b, 0.9, track.Width{Factor: -1}), "/width", field.ErrOutOfRange},
		"a factor above 1e150":      {interval(b, 0.9, track.Width{Factor: 1.01e150}), "/width", field.ErrOutOfRange},
		"a freedom above 1e150":     {interval(b, 0.9, track.Width{Factor: 1, Freedom: 1.01e150}), "/width", field.ErrOutOfRange},
		"a freedom below 0":         {interval(b, 0.9, track.Width{Factor: 1, Freedom: -1}), "/width", field.ErrOutOfRange},
		"a visit without a set":     {reason(track.FromVisit(first, strength.Ability{})), "/alone", field.ErrMissing},
		"a visit of a lower bound":  {reason(track.FromVisit(first, strength.Ability{Log: 2, Variance: 0.01, AtLeast: true})), "/alone", field.ErrMissing},
		"a visit with nothing told": {reason(track.FromVisit(first, strength.Ability{Log: 2, Variance: 0.01, Untold: true})), "/alone", field.ErrMissing},
		"a visit of no strength":    {reason(track.FromVisit(first, strength.Ability{Log: nan, Variance: 0.01})), "/alone/log", field.ErrOutOfRange},
		"a visit on no day":         {reason(track.FromVisit(0, strength.Ability{Log: 2, Variance: 0.01})), "/day", field.ErrMissing},
		"nothing known":             {interval(track.Belief{}, 0.9, w), "/belief", field.ErrMissing},
		"own below 0":               {noReading, "/own", field.ErrOutOfRange},
		"no mass":                   {heavy, "/belief", field.ErrOverflow},
		"since before the first":    {since(all, first-1, 0, 0.9), "/day", field.ErrOutOfRange},
		"since the last":            {since(all, first+7, 0, 0.9), "/day", field.ErrOutOfRange},
		"since, of an empty track":  {since(new(track.Track), first, 0, 0.9), "/day", field.ErrOutOfRange},
		"since, of one reading":     {since(one, first, 0, 0.9), "/day", field.ErrOutOfRange},
		"a margin below 0":          {since(all, first, -0.01, 0.9), "/margin", field.ErrOutOfRange},
		"a margin above a half":     {since(all, first, 0.51, 0.9), "/margin", field.ErrOutOfRange},
		"an answer at 100 %":        {since(all, first, 0, 1), "/level", field.ErrOutOfRange},
		"ahead of nothing":          {ahead(track.State{}, first), "/state", field.ErrMissing},
		"behind":                    {ahead(s, first+6), "/day", field.ErrOutOfRange},
		"367 days ahead":            {ahead(s, first+7+367), "/day", field.ErrOutOfRange},
		"on a day before":           {on(first - 1), "/day", field.ErrOutOfRange},
		"on a day after":            {on(first + 8), "/day", field.ErrOutOfRange},
		"lags of a short series":    {reason(track.Diagnose(m, two, 1)), "/readings", field.ErrOutOfRange},
		"no lags":                   {reason(track.Diagnose(nileModel(), nile(t, nil), 0)), "/lags", field.ErrOutOfRange},
		"as many lags as errors":    {reason(track.Diagnose(nileModel(), nile(t, nil), 99)), "/lags", field.ErrOutOfRange},
		"no estimate":               {reason(track.FromEstimate(onerm.Estimate{}, 10)), "/estimate/one_rm", field.ErrOutOfRange},
		"usual of 31":               {reason(track.FromEstimate(onerm.Estimate{}, 31)), "/usual", field.ErrOutOfRange},
		"no reliability":            {reason(track.Reliability{}.FirstTry(two[0])), "/typical", field.ErrMissing},
		"a reliability of 51 %":     {track.Reliability{Typical: 0.51}.Validate(), "/typical", field.ErrOutOfRange},
		"a rise of 51 %":            {track.Reliability{Typical: 0.1, Rise: 0.51}.Validate(), "/rise", field.ErrOutOfRange},
		"nothing to find":           {reason(track.MostLikely(nileModel(), track.Unknowns{}, nile(t, nil))), "/find", field.ErrMissing},
		"a slope of a level":        {reason(track.MostLikely(nileModel(), track.Unknowns{Slope: true}, nile(t, nil))), "/find/slope", field.ErrConflict},
		"day and noise":             {reason(track.MostLikely(nileModel(), track.Unknowns{Day: true, Noise: true}, nile(t, nil))), "/find", field.ErrConflict},
		"variances of three days":   {reason(track.MostLikely(nileModel(), track.Unknowns{Level: true, Noise: true}, nile(t, nil)[:3])), "/readings", field.ErrOutOfRange},
		"a start far away":          {reason(track.MostLikely(track.Model{Kind: track.LocalLevel, Noise: 1e-40}, track.Unknowns{Noise: true}, nile(t, nil))), "/readings", track.ErrNoConvergence},
		"variances of equal values": {reason(track.MostLikely(track.Model{Kind: track.LocalLevel}, track.Unknowns{Noise: true}, []track.Reading{{Day: first, Value: 1}, {Day: first + 1, Value: 1}, {Day: first + 2, Value: 1}})), "/readings", track.ErrNoConvergence},
	} {
		refuses(t, name, test.err, test.path, test.want)
	}
}

func reason[A any](_ A, err error) error { return err }

// TestTestsRefused: of RealChange, and of what works without a model.
func TestTestsRefused(t *testing.T) {
	good, r := track.MeanTest{Mean: kg(10), Count: 1}, track.StandardReliability()
	change := func(a, b track.MeanTest, r track.Reliability, level units.Fraction) error {
		_, err := track.RealChange(a, b, r, level)
		return err
	}
	x, y := []float64{1, 2, 3}, []float64{1, 3, 2}
	share := func(typical, level units.Fraction) error {
		_, _, err := track.MDCShare(typical, level, 1, 1)
		return err
	}
	sen := func(x, y []float64, level units.Fraction) error { _, _, err := track.Sen(x, y, level); return err }
	for name, test := range map[string]struct {
		err  error
		path string
		want error
	}{
		"no mass":              {change(track.MeanTest{Count: 1}, good, r, 0.95), "/before/mean", field.ErrOutOfRange},
		"no test":              {change(good, track.MeanTest{Mean: kg(1)}, r, 0.95), "/after/count", field.ErrOutOfRange},
		"21 tests":             {change(good, track.MeanTest{Mean: kg(1), Count: 21}, r, 0.95), "/after/count", field.ErrOutOfRange},
		"first after":          {change(good, track.MeanTest{Mean: kg(1), Count: 1, Novel: true}, r, 0.95), "/after/novel", field.ErrConflict},
		"no reliability":       {change(good, good, track.Reliability{}, 0.95), "/reliability/typical", field.ErrMissing},
		"no level":             {change(good, good, r, 0), "/level", field.ErrOutOfRange},
		"two values":           {reason(track.MannKendall(x[:2])), "/y", field.ErrOutOfRange},
		"5001 values":          {reason(track.MannKendall(make([]float64, 5001))), "/y", field.ErrOutOfRange},
		"a value of NaN":       {reason(track.MannKendall([]float64{1, nan, 2})), "/y/1", field.ErrOutOfRange},
		"times without values": {sen(x, y[:2], 0.9), "/y", field.ErrOutOfRange},
		"more times":           {sen(append(x, 4), y, 0.9), "/y", field.ErrConflict},
		"one time":             {sen([]float64{2, 2, 2}, y, 0.9), "/x", field.ErrConflict},
		"slope at 100 %":       {sen(x, y, 1), "/level", field.ErrOutOfRange},
		"a spread below 0":     {reason(track.SEM(-1, 0.5)), "/between", field.ErrOutOfRange},
		"a correlation of 1.1": {reason(track.SEM(1, 1.1)), "/correlation", field.ErrOutOfRange},
		"differences of NaN":   {reason(track.TypicalError(nan)), "/differences", field.ErrOutOfRange},
		"an infinite spread":   {reason(track.SmallestWorthwhile(inf)), "/between", field.ErrOutOfRange},
		"an error below 0":     {reason(track.MDC(-1, 0.95, 1, 1)), "/sem", field.ErrOutOfRange},
		"of no test":           {reason(track.MDC(1, 0.95, 0, 1)), "/k", field.ErrOutOfRange},
		"of 21 tests":          {reason(track.MDC(1, 0.95, 1, 21)), "/n", field.ErrOutOfRange},
		"at 100 %":             {reason(track.MDC(1, 1, 1, 1)), "/level", field.ErrOutOfRange},
		"a share of 51 %":      {share(0.51, 0.95), "/typical", field.ErrOutOfRange},
		"a share at 100 %":     {share(0.5, 1), "/level", field.ErrOutOfRange},
	} {
		refuses(t, name, test.err, test.path, test.want)
	}
}

// TestKinds: texts there and back, and none for what is no kind.
func TestKinds(t *testing.T) {
	for k := range track.TrendKinds() {
		text, err := json.Marshal(k)
		var back track.TrendKind
		if err != nil || json.Unmarshal(text, &back) != nil || back != k || !strings.Contains(string(text), k.String()) {
			t.Errorf("%v: %s, %v", k, text, err)
		}
		v, err := k.Value()
		var stored track.TrendKind
		if err != nil || stored.Scan(v) != nil || stored != k {
			t.Errorf("%v: %v, %v", k, v, err)
		}
	}
	if err := new(track.TrendKind).UnmarshalText([]byte("parabola")); !errors.Is(err, field.ErrUnknown) {
		t.Error(err)
	}
}

// TestSearch: a variance that the readings do not show comes out as nothing, with no error of
// its own; several a day tell the day from the noise; a slope is found.
func TestSearch(t *testing.T) {
	var still []track.Reading
	for i := range 30 {
		still = append(still, track.Reading{Day: first + units.Day(i), Value: float64(i % 2)})
	}
	found, err := track.MostLikely(track.Model{Kind: track.LocalLevel}, track.Unknowns{Level: true, Noise: true}, still)
	if err != nil || found.Model.Level != 0 || found.Errors.Level != 0 || found.Errors.Noise == 0 {
		t.Errorf("%+v, %v", found, err)
	}
	near(t, "noise about the mean", found.Model.Noise, 0.25*30/29, 1e-4)
	var twice []track.Reading
	for i, r := range nile(t, nil) {
		r.Value += float64(i%7) * 40
		twice = append(twice, r, track.Reading{Day: r.Day, Value: r.Value + float64(i%5)*20})
	}
	found, err = track.MostLikely(track.Model{Kind: track.LinearTrend}, track.Unknowns{Level: true, Slope: true, Day: true, Noise: true}, twice)
	if err != nil || found.Model.Day < 1000 || found.Model.Noise <= 0 {
		t.Fatalf("%+v, %v", found, err)
	}
	for _, worse := range []float64{0.8, 1.25} {
		m := found.Model
		m.Noise *= worse
		if run(t, m, track.State{}, twice).State().Likelihood(m).Diffuse >= found.Likelihood.Diffuse {
			t.Errorf("likelier with %v of the noise", worse)
		}
	}
}

// What is no number comes back as an error, or as nothing known.
func TestNoNumbers(t *testing.T) {
	for _, v := range []float64{nan, inf, -inf, 1e151} {
		_, err := track.StandardReliability().FirstTry(track.Reading{Day: 1, Value: v})
		refuses(t, "a first try", err, "/reading/value", field.ErrOutOfRange)
		_, err = track.StandardReliability().FirstTry(track.Reading{Day: 1, Value: 3, Variance: v})
		refuses(t, "its variance", err, "/reading/variance", field.ErrOutOfRange)
	}
	for _, tt := range []struct {
		l    track.Likelihood
		firm float64
	}{{track.Likelihood{Readings: -1}, nan}, {track.Likelihood{Readings: -9}, 2}, {track.Likelihood{}, -3}, {track.Likelihood{Readings: 5, Squares: nan}, 2}, {track.Likelihood{Readings: 5, Squares: -9}, 2}, {track.Likelihood{}, inf}} {
		if w := tt.l.Width(track.Model{Firm: tt.firm}); w != (track.Width{}) {
			t.Errorf("%+v with %v: %+v", tt.l, tt.firm, w)
		}
	}
}
