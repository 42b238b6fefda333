package cohort_test

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/cohort"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

// drawSets draws sets of some people, in any order of days.
func drawSets(t *rapid.T, least int) []setlog.Set {
	known := slices.Collect(exercise.Standard().All())
	efforts := []units.Effort{{}, units.Must(units.InReserve(0)), units.Must(units.InReserve(3)), units.Must(units.InReserve(4)), units.Must(units.RPE(8.5)), units.Must(units.RPE(6)), units.Must(units.OMNI(5))}
	return rapid.SliceOfN(rapid.Custom(func(t *rapid.T) setlog.Set {
		e := known[rapid.IntRange(0, len(known)-1).Draw(t, "exercise")]
		s := setlog.Set{Key: rapid.SampledFrom([]body.Key{"", "p1", "p2"}).Draw(t, "person"), Day: units.Day(700_000 + rapid.IntRange(0, 40).Draw(t, "day")),
			Exercise: e.ID, Side: rapid.SampledFrom(slices.Collect(body.Sides())).Draw(t, "side"), Hold: e.Hold, Reps: rapid.IntRange(1, 15).Draw(t, "reps"),
			Effort: rapid.SampledFrom(efforts).Draw(t, "effort")}
		if rapid.IntRange(0, 9).Draw(t, "many") == 0 {
			s.Reps = 1000
		}
		if e.Hold.Implements() > 0 {
			s.Load = units.Mass(rapid.SampledFrom([]int64{0, 1, 7, 2e12, 1e13, 45359237 * 1e4, 1e15}).Draw(t, "load"))
		}
		if s.Stated = body.PerHand; e.Hold != body.OneEachHand {
			s.Stated = 0
		} else if s.Load%2 == 0 && rapid.Bool().Draw(t, "total") {
			s.Stated = body.Total
		}
		return s
	}), least, 60).Draw(t, "sets")
}

var rules = []volume.Rule{{}, {Source: "invented", Reserve: units.Must(units.Between[units.RIR](0, 3))}}

// A person's weeks are those of the person's Tally.
func TestWeeksAreThoseOfTallies(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sets := drawSets(t, 0)
		rule := rapid.SampledFrom(rules).Draw(t, "rule")
		bodyMass := units.Mass(rapid.SampledFrom([]int64{0, 7e13, 812345678901234}).Draw(t, "body mass"))
		counter := units.Must(volume.NewCounter(exercise.Standard(), volume.Options{Kind: volume.Performed, Rule: rule, BodyMass: bodyMass}))
		c := units.Must(cohort.NewStudy(exercise.Standard(), cohort.Options{Rule: rule})).NewCohort()
		tallies := map[body.Key]*volume.Tally{}
		for _, s := range sets {
			if tallies[s.Key] == nil {
				tallies[s.Key] = counter.NewTally()
			}
			if err := errors.Join(tallies[s.Key].Add(s), c.Add(s)); err != nil {
				t.Fatal(err)
			}
		}
		weeks := 0
		for w := range c.Weeks() {
			weeks++
			sameWeek(t, w, tallies[w.Person].Totals(w.Week), bodyMass)
		}
		for _, tally := range tallies {
			weeks -= len(slices.Collect(tally.Weeks()))
		}
		if weeks != 0 || c.Len() != len(tallies) {
			t.Fatalf("%d weeks too many, %d people", weeks, c.Len())
		}
	})
}

func sameWeek(t *rapid.T, w cohort.PersonWeek, want volume.Totals, bodyMass units.Mass) {
	got, wanted := "", ""
	done := 0
	for x := range w.Exercises(bodyMass) {
		got += fmt.Sprintln(x.Exercise, x.Measure, x.Left, x.Right, x.Held, x.BodyLeast, x.BodyMost)
		done += x.Done
	}
	for _, e := range want.Exercises {
		wanted += fmt.Sprintln(e.Exercise, e.Measure, e.Left, e.Right, e.Held, e.BodyLeast, e.BodyMost)
	}
	lines := func(text string) []string { return slices.Sorted(strings.Lines(text)) } // catalogues order by listing
	if !slices.Equal(lines(got), lines(wanted)) || done != want.Done {
		t.Fatalf("%s %s: %d sets, want %d\n%s", w.Person, w.Week, done, want.Done, cmp.Diff(wanted, got))
	}
	for c := range volume.Conventions() {
		got, wanted := "", ""
		for m, sets := range w.Muscles(c) {
			got += fmt.Sprintln(m, sets)
		}
		for _, m := range want.Muscles {
			wanted += fmt.Sprintln(m.Muscle, m.Sets(c))
		}
		if got != wanted {
			t.Fatalf("%s %s: %s", w.Person, w.Week, cmp.Diff(wanted, got))
		}
	}
	for range w.Muscles(0) {
		t.Fatal("muscles of no convention")
	}
}

// encoded returns the bytes of a cohort.
func encoded(t testing.TB, c *cohort.Cohort) string {
	t.Helper()
	var b bytes.Buffer
	if err := c.Encode(&b); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// In whatever order sets come, and however they are shared out, merged, stored and read
// back, the cohort is the same to the byte.
func TestMergeInAnyOrder(t *testing.T) {
	study := units.Must(cohort.NewStudy(exercise.Standard(), cohort.Options{Formula: onerm.Epley}))
	rapid.Check(t, func(rt *rapid.T) {
		sets := drawSets(rt, 1)
		whole := study.NewCohort()
		parts := []*cohort.Cohort{study.NewCohort(), study.NewCohort(), study.NewCohort()}
		for _, s := range sets {
			if err := errors.Join(whole.Add(s), parts[rapid.IntRange(0, 2).Draw(rt, "part")].Add(s)); err != nil {
				rt.Fatal(err)
			}
		}
		sum, shuffled := study.NewCohort(), study.NewCohort()
		for i, order := range rapid.Permutation([]int{0, 1, 2}).Draw(rt, "order") {
			part := parts[order]
			if i > 0 {
				part = units.Must(study.Decode(strings.NewReader(encoded(t, part))))
			}
			if err := sum.Merge(part); err != nil {
				rt.Fatal(err)
			}
		}
		for _, s := range rapid.Permutation(sets).Draw(rt, "sets") {
			if err := shuffled.Add(s); err != nil {
				rt.Fatal(err)
			}
		}
		if want := encoded(t, whole); encoded(t, sum) != want || encoded(t, shuffled) != want {
			rt.Fatalf("another order of %d sets gives another cohort", len(sets))
		}
	})
}

// The best is the greatest there is, the latest the greatest of the last day.
func TestEstimates(t *testing.T) {
	c := units.Must(cohort.NewStudy(exercise.Standard(), cohort.Options{Formula: onerm.Epley})).NewCohort()
	add := func(id exercise.ID, day units.Day, load units.Mass, reps int) {
		e, _ := exercise.Standard().Get(id)
		s := setlog.Set{Key: "p", Day: 700_000 + day, Exercise: id, Side: body.Both, Hold: e.Hold, Load: load, Reps: reps}
		if e.Hold == body.OneEachHand {
			s.Stated = body.Total
		}
		if err := c.Add(s); err != nil {
			t.Fatal(err)
		}
	}
	add("biceps-curl", 9, 12*units.Kilogram, 10) // 6 kg in each hand: 8 kg
	add("biceps-curl", 7, 12*units.Kilogram, 10)
	add("biceps-curl", 12, 12*units.Kilogram, 5) // 7 kg
	add("biceps-curl", 12, 10*units.Kilogram, 1)
	add("biceps-curl", 8, 100*units.Kilogram, 11) // more than the formula was studied for
	add("biceps-curl", 13, 0, 5)
	add("goblet-squat", 9, 12*units.Kilogram, 10) // moves the body
	got := slices.Collect(c.Estimates())
	want := []cohort.PersonalBest{{Person: "p", Exercise: "biceps-curl", Best: 8 * units.Kilogram, BestOn: 700_007, Latest: 7 * units.Kilogram, LatestOn: 700_012}}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}

func TestMisuse(t *testing.T) {
	study := units.Must(cohort.NewStudy(exercise.Standard(), cohort.Options{}))
	other := units.Must(cohort.NewStudy(exercise.Standard(), cohort.Options{Formula: onerm.Epley}))
	good := setlog.Set{Day: 700_000, Exercise: "biceps-curl", Side: body.Both, Hold: body.OneHand, Load: units.Kilogram, Reps: 10}
	noDay, unknown, bad := good, good, good
	noDay.Day, unknown.Exercise, bad.Reps = 0, "zumba", 0
	lastDay := good
	lastDay.Day = 3652059
	c := study.NewCohort()
	_, badOptions := cohort.NewStudy(exercise.Standard(), cohort.Options{Formula: 250, Rule: volume.Rule{Source: "x"}})
	_, decodeNil := study.Decode(nil)
	var none *cohort.Cohort
	for _, test := range []struct {
		err, want error
		path      string
	}{
		{c.Add(noDay), field.ErrMissing, "/day"},
		{c.Add(lastDay), field.ErrOutOfRange, "/day"},
		{c.Add(unknown), field.ErrUnknown, "/exercise"},
		{c.Add(bad), field.ErrOutOfRange, "/reps"},
		{none.Add(good), field.ErrMissing, ""},
		{new(cohort.Cohort).Add(good), field.ErrMissing, ""},
		{none.Merge(c), field.ErrConflict, ""},
		{c.Merge(nil), field.ErrConflict, ""},
		{c.Merge(c), field.ErrConflict, ""},
		{c.Merge(other.NewCohort()), field.ErrConflict, ""},
		{none.Encode(io.Discard), field.ErrMissing, ""},
		{c.Encode(nil), field.ErrMissing, ""},
		{decodeNil, field.ErrMissing, ""},
		{badOptions, field.ErrMissing, "/rule/reserve"},
	} {
		var all field.Errors
		all.Add("", test.err)
		if !errors.Is(test.err, test.want) || len(all) == 0 || all[0].Path != test.path {
			t.Errorf("%v, want %v at %s", test.err, test.want, test.path)
		}
	}
	for range none.Weeks() {
		t.Error("weeks of nobody")
	}
	for range new(cohort.Cohort).Estimates() {
		t.Error("estimates of nobody")
	}
	for _, err := range none.Read(setlog.Reader{}, strings.NewReader(""), 0, 1) {
		if !errors.Is(err, field.ErrMissing) {
			t.Error(err)
		}
	}
	if c.Len() != 0 || none.Len() != 0 {
		t.Errorf("%d people", c.Len())
	}
}

// A cell has room for the heaviest sets, and for no more of them.
func TestTooManySets(t *testing.T) {
	study := units.Must(cohort.NewStudy(exercise.Standard(), cohort.Options{}))
	c := study.NewCohort()
	s := setlog.Set{Day: 700_000, Exercise: "one-arm-dumbbell-row", Side: body.Both, Hold: body.OneEachHand, Stated: body.PerHand, Load: 1000 * units.Kilogram, Reps: 1000}
	const most = 1 << 18
	for range most {
		if err := c.Add(s); err != nil {
			t.Fatal(err)
		}
	}
	if err := c.Add(s); !errors.Is(err, field.ErrOverflow) {
		t.Errorf("%v", err)
	}
	one := study.NewCohort()
	if err := one.Add(s); err != nil {
		t.Fatal(err)
	}
	before := encoded(t, one)
	if err := one.Merge(c); !errors.Is(err, field.ErrOverflow) || encoded(t, one) != before {
		t.Errorf("%v", err)
	}
	for w := range c.Weeks() {
		for x := range w.Exercises(0) {
			if want := 1000.0 * 2 * 2000 * most; math.Abs(x.Held.Kilograms()-want) > 0 || x.Done != most {
				t.Errorf("%s, want %v", x.Held, want)
			}
		}
	}
}
