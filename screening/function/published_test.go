package function_test

import (
	"crypto/sha256"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

var (
	sexes = map[string]string{"any": "", "M": body.Male.String(), "F": body.Female.String()}
	bases = map[string]evidence.Basis{"text": evidence.Published, "secondary": evidence.Secondary, "memory": evidence.FromMemory}
)

// key is what tells one figure from another within a body.
func key(row map[string]string) string {
	value := units.Must(function.ParseAmount(row["value"] + " " + row["unit"]))
	return strings.Join([]string{row["test"], sexes[row["sex"]], row["age_min"], row["age_max"], row["statistic"], value.String()}, "|")
}

func keyOf(n function.Norm) string {
	end := func(a body.Age, ok bool) string {
		if !ok {
			return ""
		}
		return fmt.Sprint(uint8(a))
	}
	return strings.Join([]string{n.Measure.String(), n.Sex.String(), end(n.Ages.Min()), end(n.Ages.Max()), string(n.Statistic), n.Value.String()}, "|")
}

// The one source whose citation is worded otherwise elsewhere in this module.
const cdc = "CDC STEADI algorithm for fall risk screening, assessment and intervention (2019)"

// The file is the one that was checked: a change of one byte must be made in
// two places.
func TestNormsAreTheFile(t *testing.T) {
	data, err := os.ReadFile("norms.csv")
	if err != nil {
		t.Fatal(err)
	}
	sum, err := os.ReadFile("testdata/norms.csv.sha256")
	if got := fmt.Sprintf("%x  norms.csv\n", sha256.Sum256(data)); err != nil || got != string(sum) {
		t.Errorf("the norms have %q, want %q (%v)", got, sum, err)
	}
}

// ofCollection are the rows of norms.csv that are rows of the collection too.
func ofCollection(t *testing.T) []map[string]string {
	return slices.DeleteFunc(rows(t, "norms.csv"), func(row map[string]string) bool { return row["id"] == "" })
}

// Each row of the collection is a norm with the same figure, source and basis:
// those that were taken from it a second time, and what the file says of it.
func TestEveryPublishedRowIsANorm(t *testing.T) {
	again, all := rows(t, "testdata/again.csv"), ofCollection(t)
	if len(again) < 30 || len(all) != 128 {
		t.Errorf("%d rows, want 30 or more; %d rows, want 128", len(again), len(all))
	}
	for _, row := range slices.Concat(again, all) {
		found := 0
		for n := range function.Norms() {
			source, _ := evidence.LookUp(n.Source)
			if row["source"] == cdc && n.Source == "cdc2019" {
				source.Citation = cdc
			}
			if keyOf(n) != key(row) || source.Citation != row["source"] {
				continue
			}
			found++
			if n.Basis != bases[row["known"]] || source.DOI != row["doi"] {
				t.Errorf("%s: basis %v, DOI %q, known %q, %q", row["id"], n.Basis, source.DOI, row["known"], row["doi"])
			}
		}
		if found != 1 {
			t.Errorf("%s: %s: %d norms, want 1", row["id"], key(row), found)
		}
	}
}

// Each row of the digest is a norm, known no better than the digest says.
func TestEveryRowOfTheDigestIsANorm(t *testing.T) {
	for _, row := range rows(t, "testdata/digest.csv") {
		found := 0
		for n := range function.Norms() {
			if keyOf(n) != key(row) {
				continue
			}
			found++
			if evidence.Weaker(n.Basis, bases[row["known"]]) != n.Basis {
				t.Errorf("%s: basis %v, known %q", key(row), n.Basis, row["known"])
			}
		}
		if found != 1 {
			t.Errorf("%s: %d norms, want 1", key(row), found)
		}
	}
}

// No norm comes from elsewhere.
func TestEveryNormIsInATable(t *testing.T) {
	known := map[string]bool{}
	for _, row := range append(rows(t, "testdata/digest.csv"), ofCollection(t)...) {
		known[key(row)] = true
	}
	for n := range function.Norms() {
		if !known[keyOf(n)] {
			t.Errorf("%s is in no table", keyOf(n))
		}
	}
}

// The low counts of the CDC equal the 25th centiles of 1999.
func TestLowCountsAreTheCentiles(t *testing.T) {
	checked := 0
	for low := range function.Norms() {
		if low.Statistic != "below_average_if_less_than" {
			continue
		}
		for n := range function.Norms() {
			if n.Measure == low.Measure && n.Statistic == "p25" && n.Sex == low.Sex && n.Ages == low.Ages {
				checked++
				if n.Value != low.Value {
					t.Errorf("%s: %v, the centile is %v", keyOf(low), low.Value, n.Value)
				}
			}
		}
	}
	if checked != 14 {
		t.Errorf("checked %d, want 14", checked)
	}
}

// Every cut-off answers with the strictness that its code prints, at, just
// under and just over, and every figure with better, equal and worse.
func TestEveryNormAtItsBoundary(t *testing.T) {
	step := map[function.Unit]string{function.Reps: "1", function.Points: "1", function.Seconds: "0.01", function.Kilograms: "0.1", function.MetresPerSecond: "0.01"}
	for n := range function.Norms() {
		if !n.Statistic.ForResults() {
			continue
		}
		for r := range takers(n) {
			unit := r.Test.Unit()
			value := n.Value.Number()
			if n.Value.Unit().String() == "cm/s" {
				value /= 100
			}
			by := amt(step[unit] + " " + unit.String()).Number()
			for _, sign := range []float64{-1, 0, 1} {
				at := units.Must(function.NewAmount(value+float64(sign*by), unit))
				r.Value = at
				if r.Validate() != nil { // counts between two whole ones
					continue
				}
				want := expected(n, sign, r.Test.LessIsBetter())
				if got := answer(t, r, n); got != want {
					t.Errorf("%s: %v is %v, want %v", n.Fact, at, got, want)
				}
			}
		}
	}
}

// takers yields results of the tests that a norm is for.
func takers(n function.Norm) func(func(function.Result) bool) {
	return func(yield func(function.Result) bool) {
		for test := range function.Tests() {
			r := function.Result{Test: test, How: function.Done}
			if test == function.Grip {
				r.Side = body.Left
				switch n.Measure.String() {
				case "grip_strength_dominant":
					r.Hand = function.Dominant
				case "grip_strength_nondominant":
					r.Hand = function.NonDominant
				}
			}
			of := test.Measure() == n.Measure || r.Hand != 0
			if of && n.Course == "" && !yield(r) {
				return
			}
		}
	}
}

func answer(t *testing.T, r function.Result, n function.Norm) function.Position {
	t.Helper()
	age, ok := n.Ages.Min()
	if !ok {
		age = 60
	}
	all, err := function.AgainstNorms(r, n.Sex, age)
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range all {
		if s.Norm == n {
			return s.Position
		}
	}
	t.Errorf("%s does not answer", n.Fact)
	return 0
}

func expected(n function.Norm, sign float64, less bool) function.Position {
	var flagged bool
	switch {
	case strings.HasSuffix(string(n.Statistic), "_less_than"), strings.HasSuffix(string(n.Statistic), "_less_than_awgs"):
		flagged = sign < 0
	case strings.HasSuffix(string(n.Statistic), "_greater_than"):
		flagged = sign > 0
	case strings.HasSuffix(string(n.Statistic), "_le"):
		flagged = sign <= 0
	case strings.HasSuffix(string(n.Statistic), "_ge"):
		flagged = sign >= 0
	case sign == 0:
		return function.Equal
	case (sign < 0) == less:
		return function.Better
	default:
		return function.Worse
	}
	if flagged {
		return function.Flagged
	}
	return function.NotFlagged
}
