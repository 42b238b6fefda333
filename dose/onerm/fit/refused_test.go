package fit_test

import (
	"errors"
	"math"
	"slices"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/fit"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// TestRefused: what cannot be fitted is refused, with the error that says why.
func TestRefused(t *testing.T) {
	good := samples[0].points(3, 6, 9, 12)
	rising := []fit.Point{{Load: kg(10), Reps: 2}, {Load: kg(11), Reps: 5}, {Load: kg(12), Reps: 9}, {Load: kg(13), Reps: 12}}
	alone := func(f onerm.Form) fit.Options { return fit.Options{Form: f, Alone: true} }
	for name, test := range map[string]struct {
		points []fit.Point
		o      fit.Options
		want   []error // any of them
		path   string
	}{
		"no set":                    {nil, fit.Options{Form: onerm.PowerLaw}, []error{field.ErrMissing}, "/points"},
		"no form":                   {good, fit.Options{}, []error{field.ErrMissing}, "/options/form"},
		"two sets alone":            {good[:2], alone(onerm.Hyperbola), []error{field.ErrOutOfRange}, "/points"},
		"one count alone":           {samples[0].points(5, 5, 5, 5), alone(onerm.Hyperbola), []error{field.ErrOutOfRange}, "/points"},
		"three sets alone, floor":   {good[:3], alone(onerm.ExponentialFloor), []error{field.ErrOutOfRange}, "/points"},
		"two counts, floor":         {good[:2], fit.Options{Form: onerm.ExponentialFloor}, []error{field.ErrOutOfRange}, "/points"},
		"one count, floor":          {samples[0].points(5, 5, 5), fit.Options{Form: onerm.HyperbolaFloor}, []error{field.ErrOutOfRange}, "/points"},
		"rising loads, hyperbola":   {rising, alone(onerm.Hyperbola), []error{onerm.ErrNotFalling, fit.ErrNoConvergence, field.ErrConflict}, "/points"},
		"rising loads, power":       {rising, alone(onerm.PowerLaw), []error{onerm.ErrNotFalling, fit.ErrNoConvergence, field.ErrConflict}, "/points"},
		"too steep for a hyperbola": {[]fit.Point{{Load: kg(100), Reps: 2}, {Load: kg(20), Reps: 5}, {Load: kg(2), Reps: 9}, {Load: kg(1), Reps: 12}}, alone(onerm.Hyperbola), []error{onerm.ErrNotFalling, fit.ErrNoConvergence, field.ErrConflict}, "/points"},
		"no load":                   {[]fit.Point{{Reps: 5}}, fit.Options{Form: onerm.Line}, []error{field.ErrOutOfRange}, "/points/0/load"},
		"half a repetition":         {[]fit.Point{{Load: kg(5), Reps: 0.5}}, fit.Options{Form: onerm.Line}, []error{field.ErrOutOfRange}, "/points/0/reps"},
		"NaN repetitions":           {[]fit.Point{{Load: kg(5), Reps: math.NaN()}}, fit.Options{Form: onerm.Line}, []error{field.ErrOutOfRange}, "/points/0/reps"},
		"31 repetitions":            {[]fit.Point{{Load: kg(5), Reps: 31}}, fit.Options{Form: onerm.Line}, []error{field.ErrOutOfRange}, "/points/0/reps"},
		"error of nothing":          {[]fit.Point{{Load: kg(5), Reps: 5, SD: 0.0009}}, fit.Options{Form: onerm.Line}, []error{field.ErrOutOfRange}, "/points/0/sd"},
		"error of all":              {[]fit.Point{{Load: kg(5), Reps: 5, SD: 0.51}}, fit.Options{Form: onerm.Line}, []error{field.ErrOutOfRange}, "/points/0/sd"},
		"no such day":               {[]fit.Point{{Load: kg(5), Reps: 5, Day: -1}}, fit.Options{Form: onerm.Line}, []error{field.ErrOutOfRange}, "/points/0/day"},
		"expected, alone":           {good, fit.Options{Form: onerm.Line, Alone: true, Expected: 1, ExpectedSD: 0.1}, []error{field.ErrConflict}, "/options/alone"},
		"expected without an error": {good, fit.Options{Form: onerm.Line, Expected: 1}, []error{field.ErrOutOfRange}, "/options/expected_sd"},
		"an error of nothing":       {good, fit.Options{Form: onerm.Line, ExpectedSD: 0.1}, []error{field.ErrOutOfRange}, "/options/expected"},
		"no mass holds the 1RM":     {[]fit.Point{{Load: units.MaxMass, Reps: 20}}, fit.Options{Form: onerm.Line}, []error{field.ErrOverflow}, "/points"},
	} {
		c, err := fit.Fit(test.points, test.o)
		var which *field.Error
		switch {
		case !slices.ContainsFunc(test.want, func(want error) bool { return errors.Is(err, want) }):
			t.Errorf("%s: %v, %v", name, c, err)
		case !errors.As(err, &which) || which.Path != test.path:
			t.Errorf("%s: path of %v, want %s", name, err, test.path)
		case c.OneRM() != 0:
			t.Errorf("%s: %v beside %v", name, c, err)
		}
	}
	_, err := fit.Fit([]fit.Point{{}, {Load: kg(5), Reps: 40}}, fit.Options{})
	var all field.Errors
	if !errors.As(err, &all) || len(all) != 4 {
		t.Errorf("four bad fields at once: %v", err)
	}
}
