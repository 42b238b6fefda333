package function_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening/function"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// rows reads a table.
func rows(t testing.TB, path string) []map[string]string {
	t.Helper()
	return fieldtest.Rows(t, path, ',')
}

// amt reads an amount of a test's own.
func amt(text string) function.Amount { return units.Must(function.ParseAmount(text)) }

// done is a result that was done, on the n-th of March 2026.
func done(t function.Test, value string) function.Result {
	r := function.Result{Test: t, Day: units.Must(units.ParseDay("2026-03-02")), How: function.Done, Value: amt(value)}
	if t == function.Grip {
		r.Side = body.Right
	}
	return r
}

// wants reports a missing field error at path of the given category.
func wants(t *testing.T, err error, path string, category error) {
	t.Helper()
	var all field.Errors
	var one *field.Error
	switch {
	case errors.As(err, &all):
	case errors.As(err, &one):
		all = field.Errors{one}
	}
	if !slices.ContainsFunc(all, func(f *field.Error) bool { return f.Path == path && errors.Is(f, category) }) {
		t.Errorf("got %v, want %s at %q", err, category, path)
	}
}

// bodies are the answers of one body.
func bodies(all []function.NormAnswer, who string) []function.NormAnswer {
	return slices.DeleteFunc(slices.Clone(all), func(s function.NormAnswer) bool { return !strings.HasPrefix(s.Body, who) })
}
