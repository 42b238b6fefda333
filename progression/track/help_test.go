package track_test

import (
	"encoding/json"
	"math"

	"example.org/posology/progression/track"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
)

type failer = fieldtest.T

const published = "../../testdata/published/"

// table reads the rows below the names of the columns.
func table(t failer, path string) [][]string {
	t.Helper()
	_, rows := fieldtest.Table(t, path, ',')
	return rows
}

func decode[T any](t failer, text string) (v T) {
	t.Helper()
	if err := json.Unmarshal([]byte(text), &v); err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return v
}

// near compares with a tolerance that is a share of what is wanted.
func near(t failer, what string, got, want, share float64) {
	t.Helper()
	if !(math.Abs(got-want) <= share*math.Max(math.Abs(want), 1e-3)) {
		t.Errorf("%s: got %.12g, want %.12g", what, got, want)
	}
}

// within compares with a tolerance.
func within(t failer, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: got %.12g, want %.12g within %g", what, got, want, tolerance)
	}
}

const first = units.Day(700_000)

// nile are the annual flows, a year for a day; those of which missing holds are left
// out, counted from 1.
func nile(t failer, missing func(i int) bool) []track.Reading {
	t.Helper()
	var all []track.Reading
	for i, row := range table(t, published+"nile.csv") {
		if missing == nil || !missing(i+1) {
			all = append(all, track.Reading{Day: first + units.Day(i), Value: fieldtest.Number(t, row[1])})
		}
	}
	return all
}

// nileModel is the local level at the published variances.
func nileModel() track.Model {
	return track.Model{Kind: track.LocalLevel, Noise: 15099, Level: 1469.1}
}

// run runs a series from a state.
func run(t failer, m track.Model, from track.State, readings []track.Reading) *track.Track {
	t.Helper()
	all := new(track.Track)
	if err := all.Run(m, from, readings); err != nil {
		t.Fatal(err)
	}
	return all
}

// online runs a series one reading at a time, and returns the state after each.
func online(t failer, m track.Model, from track.State, readings []track.Reading) (states []track.State) {
	t.Helper()
	for _, r := range readings {
		s, err := from.Seen(m, r)
		if err != nil {
			t.Fatal(err)
		}
		states = append(states, s)
		from = s
	}
	return states
}

// same compares what two states know, and how well their series was foreseen.
func same(t failer, what string, m track.Model, got, want track.State, tolerance float64) {
	t.Helper()
	a, b := got.Now(m), want.Now(m)
	for _, v := range [][2]float64{{a.Level, b.Level}, {a.Slope, b.Slope}, {a.LevelVar, b.LevelVar}, {a.Covariance, b.Covariance}, {a.SlopeVar, b.SlopeVar}, {a.Free[1], b.Free[1]},
		{got.Likelihood(m).Diffuse, want.Likelihood(m).Diffuse}, {got.Likelihood(m).Squares, want.Likelihood(m).Squares}} {
		within(t, what, v[0], v[1], tolerance*math.Max(1, math.Abs(v[1])))
	}
	if a.Day != b.Day || got.Likelihood(m).Readings != want.Likelihood(m).Readings || got.Likelihood(m).Begun != want.Likelihood(m).Begun {
		t.Errorf("%s: %+v, want %+v", what, got, want)
	}
}

// everyConstant is the log-likelihood as the library counts it: with ½·ln 2π for
// those readings too that begin level and slope.
func everyConstant(l track.Likelihood) float64 {
	return l.Diffuse - float64(l.Begun)*math.Log(2*math.Pi)/2
}
