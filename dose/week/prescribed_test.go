package week_test

import (
	"encoding/json"
	"errors"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/volume"
	"example.org/posology/dose/week"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

func prescribed(t failer, w week.Week) guideline.AuditedWeek {
	t.Helper()
	got, err := w.Prescribed(exercise.Catalogue{}, volume.Options{})
	if err != nil {
		t.Fatalf("Prescribed: %v", err)
	}
	return got
}

// Weekly sets of an exercise are sessions times sets, of each side, and the
// totals say that they are prescribed.
func TestPrescribedSets(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := weekOf(rapid.SliceOfNDistinct(rapid.IntRange(0, 6), 1, 7, rapid.ID[int]).Draw(t, "days")...)
		r.Screening.Who.Training = rapid.SampledFrom([]body.Training{body.Novice, body.Intermediate}).Draw(t, "training")
		r.Minutes = rapid.SampledFrom([]int{0, 20, 35}).Draw(t, "minutes")
		w := firstWeek(t, r)
		got := prescribed(t, w)
		if got.Totals.Kind != volume.Prescribed || len(got.Totals.Days) != len(w.Sessions) || len(got.Minutes) != len(w.Sessions) {
			t.Fatalf("%v, %d days, %d sessions long for %d sessions", got.Totals.Kind, len(got.Totals.Days), len(got.Minutes), len(w.Sessions))
		}
		for _, e := range got.Totals.Exercises {
			i := slices.IndexFunc(w.Sessions[0].Items, func(p dose.Prescription) bool { return p.Exercise == e.Exercise })
			want := len(w.Sessions) * w.Sessions[0].Items[i].Sets
			if e.Left != want || e.Right != want {
				t.Fatalf("%s: %d left, %d right, want %d sets a week", e.Exercise, e.Left, e.Right, want)
			}
		}
		if len(got.Totals.Exercises) != len(w.Sessions[0].Items) {
			t.Fatalf("%d exercises, want %d", len(got.Totals.Exercises), len(w.Sessions[0].Items))
		}
	})
}

// A week from Thursday to Monday is counted in the calendar week of its Monday,
// in which the plan's Thursday and Saturday come again.
func TestPrescribedAcrossMonday(t *testing.T) {
	got := prescribed(t, firstWeek(t, weekOf(3, 5, 7)))
	if diff := cmp.Diff([]units.Day{plus(7), plus(10), plus(12)}, got.Totals.Days); diff != "" {
		t.Error(diff)
	}
	w := firstWeek(t, weekOf(3, 5, 7))
	slices.Reverse(w.Sessions) // as a plan read from elsewhere may have them
	if diff := cmp.Diff(got.Totals, prescribed(t, w).Totals, cmp.AllowUnexported(volume.VolumeLoad{}), cmp.Comparer(func(a, b units.Range[int]) bool { return a == b }), cmp.Comparer(func(a, b units.Range[units.RIR]) bool { return a == b })); diff != "" {
		t.Error(diff)
	}
	got = prescribed(t, firstWeek(t, weekOf(0, 2, 6)))
	if diff := cmp.Diff([]units.Day{plus(0), plus(2)}, got.Totals.Days); diff != "" {
		t.Error(diff)
	}
}

// What is known of each set goes with it: repetitions, pace, the least reserve
// where it can be counted, and the share of 1RM.
func TestPrescribedDose(t *testing.T) {
	r := weekOf(0, 3)
	r.Screening.Who.Training, r.Exercises = body.Intermediate, []exercise.ID{"one-arm-dumbbell-row", "goblet-squat", "suitcase-carry"}
	base := row(t)
	base.Screening.Who.Training = r.Screening.Who.Training
	for _, side := range []body.Side{body.Left, body.Right} {
		base.Side = side
		r.Estimates = append(r.Estimates, estimateOf(t, base, 10, 8, 1))
	}
	w := firstWeek(t, r)
	for _, e := range prescribed(t, w).Totals.Exercises {
		i := slices.IndexFunc(w.Sessions[0].Items, func(p dose.Prescription) bool { return p.Exercise == e.Exercise })
		item := w.Sessions[0].Items[i]
		if !e.Span.Contains(item.Count) || e.Measure != item.Measure {
			t.Errorf("%s: %v %v, want %d", e.Exercise, e.Span, e.Measure, item.Count)
		}
		if e.Measure == exercise.Repetitions && e.Untimed != 0 || !item.Reserve.Countable && e.Rated != 0 || item.Reserve.Countable && e.Reserve != units.Exactly(item.Reserve.Least) {
			t.Errorf("%s: %d untimed, reserve %v of %d sets, want %v", e.Exercise, e.Untimed, e.Reserve, e.Rated, item.Reserve)
		}
		if off := float64(e.Share - item.Share); off < -1e-6 || off > 1e-6 {
			t.Errorf("%s: %v of 1RM, want %v", e.Exercise, e.Share, item.Share)
		}
		if e.Exercise == "one-arm-dumbbell-row" && (item.Share == 0 || e.Reps != int64(2*2*item.Sets*item.Count)) {
			t.Errorf("%s: share %v, %d repetitions of both sides", e.Exercise, item.Share, e.Reps)
		}
	}
}

// Another's maximum counts where the plan states no share.
func TestPrescribedWithOneRM(t *testing.T) {
	r := weekOf(0)
	r.Exercises = []exercise.ID{"biceps-curl"}
	w := firstWeek(t, r)
	item := w.Sessions[0].Items[0]
	lift := volume.Lift{Exercise: item.Exercise, Side: body.Both, Hold: item.Hold}
	o := volume.Options{OneRM: map[volume.Lift]units.Mass{lift: 4 * item.Load.Each()}}
	got, err := w.Prescribed(exercise.Standard(), o)
	if err != nil || got.Totals.Exercises[0].Share != 0.25 || len(o.OneRM) != 1 {
		t.Errorf("%v of 1RM, %v", got.Totals.Exercises, err)
	}
}

func TestPrescribedBeside(t *testing.T) {
	r := weekOf(0, 3)
	r.Goal = guideline.Bone
	r.Known.Brisk = new(100)
	got := prescribed(t, firstWeek(t, r))
	if got.BalanceDays == nil || *got.BalanceDays != 3 || got.Impacts == nil || *got.Impacts != 10 || got.AerobicMinutes == nil || *got.AerobicMinutes != 100 || got.Proposed != nil {
		t.Errorf("balance %v, impacts %v, aerobic %v, proposed %v", got.BalanceDays, got.Impacts, got.AerobicMinutes, got.Proposed)
	}
	r.Screening.Who.Age = 40
	r.Goal = guideline.Strength
	if got := prescribed(t, firstWeek(t, r)); got.BalanceDays != nil || got.Impacts != nil || got.Proposed != nil {
		t.Errorf("at 40: balance %v, impacts %v", got.BalanceDays, got.Impacts)
	}
}

// A plan of before there were doses, as it was stored: it only proposes.
func TestPrescribedProposed(t *testing.T) {
	w := firstWeek(t, weekOf(0, 3))
	var old week.Week
	text := `{"beside":[{"kind":"balance","days":{"min":2},"reasons":[]},{"kind":"aerobic","reasons":[]},{"kind":"impact","amount":{"min":50},"reasons":[]}]}`
	if err := field.Decode([]byte(text), &old, field.Strict); err != nil {
		t.Fatal(err)
	}
	w.Beside = old.Beside
	got := prescribed(t, w)
	if got.BalanceDays != nil || got.Impacts != nil || got.AerobicMinutes != nil || len(got.Proposed) != 3 {
		t.Errorf("%+v", got)
	}
	report := units.Must(guideline.Audit(got, units.Must(guideline.Get("ukcmo2019-older"))))
	for _, f := range report.Findings {
		if f.Item == guideline.FieldBalanceDays && f.Verdict != guideline.Proposed {
			t.Errorf("balance is %v", f.Verdict)
		}
	}
}

// The result is audited as it is, and survives JSON.
func TestPrescribedIsAudited(t *testing.T) {
	got := prescribed(t, firstWeek(t, weekOf(0, 2, 4)))
	report, err := guideline.Audit(got, units.Must(guideline.Get("who2020-older")))
	if err != nil || report.Kind != volume.Prescribed {
		t.Fatalf("%v, %v", report.Kind, err)
	}
	for _, f := range report.Findings {
		if f.Item == guideline.FieldBalanceDays && f.Verdict != guideline.Met {
			t.Errorf("balance on 3 days against 3: %v", f.Verdict)
		}
		if f.Item == guideline.FieldDays && f.Verdict != guideline.Met {
			t.Errorf("3 days against 2: %v", f.Verdict)
		}
	}
	first := units.Must(json.Marshal(got))
	var back guideline.AuditedWeek
	if err := field.Decode(first, &back, field.Strict); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(first), string(units.Must(json.Marshal(back)))); diff != "" {
		t.Error(diff)
	}
}

// The rests between sets are held against a guideline too: from the shortest to
// the longest of the plan, of items with more than one set.
func TestPrescribedRest(t *testing.T) {
	w := firstWeek(t, weekOf(0, 2))
	for i := range w.Sessions {
		for j := range w.Sessions[i].Items {
			w.Sessions[i].Items[j].Sets, w.Sessions[i].Items[j].Rest = 2, units.Must(units.Between(60, 90))
		}
	}
	last := &w.Sessions[1].Items[0]
	tests := []struct {
		name string
		sets int
		rest units.Range[int]
		want units.Range[float64]
		says guideline.Verdict // of 60 to 180 seconds
	}{
		{"alike", 2, units.Exactly(75), units.Must(units.Between(60.0, 90.0)), guideline.Met},
		{"a shorter one", 2, units.Must(units.Between(30, 60)), units.Must(units.Between(30.0, 90.0)), guideline.Short},
		{"a longer one", 2, units.Must(units.Between(90, 240)), units.Must(units.Between(60.0, 240.0)), guideline.Over},
		{"no upper end", 2, units.AtLeast(75), units.AtLeast(60.0), guideline.Met},
		{"not stated", 2, units.Range[int]{}, units.Must(units.Between(60.0, 90.0)), guideline.Met},
		{"one set has no rest", 1, units.Exactly(240), units.Must(units.Between(60.0, 90.0)), guideline.Met},
	}
	for _, tt := range tests {
		last.Sets, last.Rest = tt.sets, tt.rest
		got := prescribed(t, w)
		report := units.Must(guideline.Audit(got, units.Must(guideline.Get("acsm2009-older-strength"))))
		at := slices.IndexFunc(report.Findings, func(f guideline.AuditLine) bool { return f.Item == guideline.FieldRest })
		if f := report.Findings[at]; got.Rest != tt.want || f.Found != tt.want || f.Verdict != tt.says {
			t.Errorf("%s: %v, found %v, %v, want %v, %v", tt.name, got.Rest, f.Found, f.Verdict, tt.want, tt.says)
		}
	}
}

func TestPrescribedRefuses(t *testing.T) {
	fine := func() week.Week { return firstWeek(t, weekOf(0, 2)) }
	tests := []struct {
		name  string
		spoil func(w *week.Week)
		path  string
		want  error
	}{
		{"no session", func(w *week.Week) { w.Sessions = nil }, "/sessions", field.ErrMissing},
		{"no day", func(w *week.Week) { w.Sessions[1].Day = 0 }, "/sessions/1/day", field.ErrMissing},
		{"no sets", func(w *week.Week) { w.Sessions[1].Items[0].Sets = 0 }, "/sessions/1/items/0/sets", field.ErrOutOfRange},
		{"too many sets", func(w *week.Week) { w.Sessions[1].Items[0].Sets = 101 }, "/sessions/1/items/0/sets", field.ErrOutOfRange},
		{"unknown exercise", func(w *week.Week) { w.Sessions[0].Items[1].Exercise = "nothing" }, "/sessions/0/items/1/exercise", field.ErrUnknown},
		{"no repetitions", func(w *week.Week) { w.Sessions[0].Items[1].Count = 0 }, "/sessions/0/items/1/reps", field.ErrOutOfRange},
		{"a reserve below nought", func(w *week.Week) {
			w.Sessions[0].Items[1].Reserve = dose.Reserve{Least: -1, Countable: true}
		}, "/sessions/0/items/1/reserve/least", field.ErrOutOfRange},
	}
	for _, tt := range tests {
		w := fine()
		for i := range w.Sessions {
			w.Sessions[i].Items = slices.Clone(w.Sessions[i].Items)
		}
		tt.spoil(&w)
		_, err := w.Prescribed(exercise.Catalogue{}, volume.Options{})
		if !errors.Is(err, tt.want) || !slices.Contains(paths(err), tt.path) {
			t.Errorf("%s: %v, want %s, %v", tt.name, err, tt.path, tt.want)
		}
	}
	w := fine()
	for i := range w.Sessions {
		w.Sessions[i].Items = slices.Clone(w.Sessions[i].Items)
		w.Sessions[i].Items[0].Sets = 100
	}
	prescribed(t, w)
	for path, o := range map[string]volume.Options{"/kind": {Kind: volume.Performed}, "/body_mass": {BodyMass: -1}} {
		if _, err := fine().Prescribed(exercise.Catalogue{}, o); !slices.Contains(paths(err), path) {
			t.Errorf("%+v: %v, want %s", o, err, path)
		}
	}
}
