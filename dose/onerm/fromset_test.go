package onerm_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"github.com/google/go-cmp/cmp"
)

var day = units.Must(units.NewDay(2026, 11, 25))

// press is an exercise held in the given way.
func press(h body.Hold) exercise.Exercise {
	return exercise.Exercise{
		ID: "press", Name: "press", Pattern: exercise.HorizontalPush, Hold: h, Measure: exercise.Repetitions,
		Muscles: []exercise.Work{{Muscle: body.PectoralisMajor, Role: exercise.Prime}},
	}
}

// set is a set of the press: 20 kg on a stack.
func set(reps int, reserve float64) setlog.Set {
	return setlog.Set{
		Day: day, Exercise: "press", Side: body.Both, Hold: body.OnStack, Load: 20 * units.Kilogram,
		Stated: body.Total, Reps: reps, Effort: units.Must(units.InReserve(reserve)),
	}
}

var (
	novice  = onerm.Person{Age: 71, Sex: body.Female, Training: body.Novice}
	man     = onerm.Person{Age: 66, Sex: body.Male, Training: body.Intermediate}
	woman   = onerm.Person{Age: 58, Sex: body.Female, Training: body.Advanced}
	younger = onerm.Person{Age: 54, Sex: body.Female, Training: body.Advanced}
	someone = onerm.Person{Age: 58, Training: body.Advanced}
)

func estimate(t testing.TB, s setlog.Set, p onerm.Person) onerm.Estimate {
	t.Helper()
	e, err := onerm.FromSet(s, press(s.Hold), p)
	if err != nil {
		t.Fatal(err)
	}
	if err := e.Validate(); err != nil {
		t.Fatalf("%+v: %v", e, err)
	}
	return e
}

func codes(e onerm.Estimate) string {
	var list []string
	for _, r := range e.Reasons {
		list = append(list, strings.TrimPrefix(string(r.Code), "onerm."))
	}
	return strings.Join(list, " ")
}

func TestFromSet(t *testing.T) {
	tests := []struct {
		name      string
		set       setlog.Set
		person    onerm.Person
		oneRM     float64 // kg
		low, high float64 // kg, each to the gram
		formula   onerm.Formula
		grade     onerm.Grade
		codes     string
	}{
		// The load itself, ± 8 and ± 15 %.
		{"one, practised", set(1, 0), man, 20, 18.4, 21.6, 0, onerm.Measured, "measured interval"},
		{"one, novice", set(1, 0), novice, 20, 17, 23, 0, onerm.Measured, "measured interval"},
		// 20·36/32 = 22.5, − 10 %; + 10 % = 24.75, above Epley's 23.333.
		{"5 to failure", set(5, 0), man, 22.5, 20.25, 24.75, onerm.Brzycki, onerm.Good, "lower-of-two interval"},
		// 22.5, − 10 and + 20 %.
		{"5 to failure, novice", set(5, 0), novice, 22.5, 20.25, 27, onerm.Brzycki, onerm.Good, "lower-of-two interval likely-low"},
		// 20·36/27 = 26.667, ± 15 %.
		{"8 and 2 left", set(8, 2), man, 26.666667, 22.666667, 30.666667, onerm.Epley, onerm.Fair, "lower-of-two reserve-added interval"},
		// 20·36/28 = 25.714, the wider of − 15/+15 and − 12/+25 %.
		{"7 and 2 left, novice", set(7, 2), novice, 25.714286, 21.857143, 32.142857, onerm.Brzycki, onerm.Fair, "lower-of-two reserve-added interval likely-low"},
		// 20·36/30 = 24; below, no less than 6 to failure: 20·36/31 − 12 %.
		{"6 and 1 left", set(6, 1), man, 24, 20.438710, 27.6, onerm.Brzycki, onerm.Fair, "lower-of-two reserve-added interval lower-end"},
		// 20·(0.988 + 0.104 + 0.19 − 0.0584) = 24.472; its lower end is moved to
		// that of 11 repetitions, 25.0913·0.8.
		{"10, trained woman", set(10, 0), woman, 24.472, 20.073, 27.40864, onerm.Kemmler2006, onerm.Fair, "kemmler2006 interval lower-end"},
		// 20·1.4888, ± 25 %.
		{"20, trained woman", set(20, 0), woman, 29.776, 22.332, 37.22, onerm.Kemmler2006, onerm.VeryPoor, "kemmler2006 interval"},
		// 20·36/35, − 10 %; below Kemmler's 3 repetitions.
		{"2, trained woman", set(2, 0), woman, 20.571429, 18.514286, 22.628571, onerm.Brzycki, onerm.Good, "lower-of-two interval"},
		{"10, trained woman of 54", set(10, 0), younger, 26.666667, 23.466667, 29.866667, onerm.Epley, onerm.Fair, "lower-of-two interval"},
		{"10, sex not given", set(10, 0), someone, 24.472, 20.073, 27.40864, onerm.Kemmler2006, onerm.Fair, "kemmler2006 interval lower-end sex-not-given"},
		// 4 left: 20·36/31, + 25 % of the next row; below, no less than 2 with 3 left.
		{"2 and 4 left", set(2, 4), man, 23.225806, 19.8, 29.032258, onerm.Brzycki, onerm.Poor, "lower-of-two reserve-added reserve-wide interval lower-end"},
	}
	for _, tt := range tests {
		e := estimate(t, tt.set, tt.person)
		low, _ := e.Interval.Min()
		high, _ := e.Interval.Max()
		for _, v := range []struct {
			what      string
			got, want float64
		}{{"1RM", e.OneRM.Kilograms(), tt.oneRM}, {"lower end", low.Kilograms(), tt.low}, {"upper end", high.Kilograms(), tt.high}} {
			if math.Abs(v.got-v.want) > 1e-3 {
				t.Errorf("%s: %s %v kg, want %v", tt.name, v.what, v.got, v.want)
			}
		}
		if e.Formula != tt.formula || e.Grade != tt.grade || codes(e) != tt.codes || e.Cautious() != low {
			t.Errorf("%s: %v, %v, %q, want %v, %v, %q", tt.name, e.Formula, e.Grade, codes(e), tt.formula, tt.grade, tt.codes)
		}
		if e.Day != day || e.Exercise != "press" || e.Side != body.Both || e.Hold != body.OnStack || e.Stated != body.Total {
			t.Errorf("%s: belongs to %+v", tt.name, e)
		}
	}
}

func TestHalfPoints(t *testing.T) {
	s := set(6, 0)
	s.Effort = units.Must(units.RPE(8.5)) // 1 to 2 in reserve
	e := estimate(t, s, man)
	if e.ToFailure != units.Must(units.Between(7.0, 8)) || e.OneRM != estimate(t, set(6, 1), man).OneRM {
		t.Errorf("%v to failure, %v", e.ToFailure, e.OneRM)
	}
	wantHigh, _ := estimate(t, set(6, 2), man).Interval.Max()
	if high, _ := e.Interval.Max(); high != wantHigh || e.Cautious() != estimate(t, set(6, 1), man).Cautious() {
		t.Errorf("interval %v, want up to %v", e.Interval, wantHigh)
	}
	if codes(e) != "lower-of-two reserve-added half-point interval lower-end" {
		t.Errorf("reasons %s", codes(e))
	}
	half := estimate(t, set(6, 1.5), man)
	if half.OneRM != e.OneRM || half.Interval != e.Interval {
		t.Errorf("1.5 in reserve: %v %v, want as 1 to 2: %v %v", half.OneRM, half.Interval, e.OneRM, e.Interval)
	}
	s.Effort = units.Must(units.RPE(9.5)) // 0 in reserve
	if got := estimate(t, s, man); got.OneRM != estimate(t, set(6, 0), man).OneRM || codes(got) != "lower-of-two interval" {
		t.Errorf("9.5: %v, %s", got.OneRM, codes(got))
	}
	// One repetition with perhaps one left is no measurement.
	if got := estimate(t, set(1, 0.5), man); got.Grade != onerm.Good || got.OneRM != 20*units.Kilogram {
		t.Errorf("1 with half a repetition left: %v, %v", got.Grade, got.OneRM)
	}
}

// TestBounds sits on the bounds of age and of the wide interval.
func TestBounds(t *testing.T) {
	first := onerm.Person{Age: 55, Sex: body.Female, Training: body.Intermediate}
	if e := estimate(t, set(5, 0), first); e.Formula != onerm.Kemmler2006 {
		t.Errorf("at 55 years: %v", e.Formula)
	}
	if e := estimate(t, set(5, 0), younger); e.Formula != onerm.Brzycki {
		t.Errorf("at 54 years: %v", e.Formula)
	}
	// 2 to 3 to failure begins below what Kemmler 2006 was tested on.
	if e := estimate(t, set(1, 1.5), first); e.Formula != onerm.Brzycki || len(e.Answers) != 2 {
		t.Errorf("2 to 3 repetitions: %v of %v", e.Formula, e.Answers)
	}
	for reserve, wide := range map[float64]bool{3: false, 3.5: true, 4: true, 5: true} {
		if got := strings.Contains(codes(estimate(t, set(3, reserve), man)), "reserve-wide"); got != wide {
			t.Errorf("%v in reserve: wide %v, want %v", reserve, got, wide)
		}
	}
}

// TestRounding: 7 ng for 5 give 7.0875 to 8.6625 ng; the ends go outwards.
func TestRounding(t *testing.T) {
	s := set(5, 0)
	s.Load = 7
	if e := estimate(t, s, man); e.Interval != units.Must(units.Between[units.Mass](7, 9)) || e.OneRM != 8 {
		t.Errorf("%d ng in %v", e.OneRM, e.Interval)
	}
}

func TestPerHand(t *testing.T) {
	s := set(8, 0)
	s.Hold, s.Load, s.Stated = body.OneEachHand, 8*units.Kilogram, body.PerHand
	each := estimate(t, s, man)
	s.Load, s.Stated = 16*units.Kilogram, body.Total
	total := estimate(t, s, man)
	if each.OneRM != total.OneRM || each.Interval != total.Interval || each.Stated != body.PerHand || total.Stated != body.PerHand {
		t.Errorf("8 kg per hand: %v (%v), 16 kg in all: %v (%v)", each.OneRM, each.Stated, total.OneRM, total.Stated)
	}
	if !strings.HasSuffix(codes(each), "no-dumbbells") {
		t.Errorf("reasons %s do not say that no equation was made with dumbbells", codes(each))
	}
}

func TestDumbbells(t *testing.T) {
	for h := range body.Holds() {
		if h == body.Unloaded {
			continue
		}
		s := set(10, 0)
		s.Hold = h
		e := estimate(t, s, woman)
		dumbbell := h == body.OneHand || h == body.OneEachHand || h == body.BothHandsOnOne
		if strings.Contains(codes(e), "no-dumbbells") != dumbbell {
			t.Errorf("%v: reasons %s", h, codes(e))
		}
		if kemmler := e.Formula == onerm.Kemmler2006; kemmler != (h == body.OnStack) {
			t.Errorf("%v: formula %v", h, e.Formula)
		}
	}
}

func TestAnswers(t *testing.T) {
	e := estimate(t, set(5, 0), woman)
	want := []onerm.Answer{
		{onerm.Epley, units.Must(onerm.Epley.OneRM(20*units.Kilogram, 5))},
		{onerm.Brzycki, units.Must(onerm.Brzycki.OneRM(20*units.Kilogram, 5))},
		{onerm.Kemmler2006, units.Must(onerm.Kemmler2006.OneRM(20*units.Kilogram, 5))},
	}
	if diff := cmp.Diff(want, e.Answers); diff != "" {
		t.Error(diff)
	}
	if e.Relation() != onerm.Relation(onerm.Kemmler2006) {
		t.Errorf("relation %v", e.Relation())
	}
	measured := estimate(t, set(1, 0), man)
	if measured.Relation() != onerm.Relation(onerm.Epley) || len(measured.Answers) != 0 {
		t.Errorf("measured: relation %v, answers %v", measured.Relation(), measured.Answers)
	}
}

// TestRefused: each row changes one thing in a good set.
func TestRefused(t *testing.T) {
	tests := []struct {
		name   string
		change func(*setlog.Set, *exercise.Exercise, *onerm.Person)
		path   string
		want   error
	}{
		{"effort not recorded", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Effort = units.Effort{} }, "/set/effort", units.ErrMissing},
		{"OMNI", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Effort = units.Must(units.OMNI(8)) }, "/set/effort", units.ErrNoRIR},
		{"CR10", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) {
			s.Effort = units.Must(units.NewEffort(units.ScaleCR10, 5))
		}, "/set/effort", units.ErrNoRIR},
		{"Borg", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) {
			s.Effort = units.Must(units.NewEffort(units.ScaleBorg, 13))
		}, "/set/effort", units.ErrNoRIR},
		{"RPE below 5", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Effort = units.Must(units.RPE(4)) }, "/set/effort", units.ErrNoRIR},
		{"6 in reserve", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { *s = set(2, 6) }, "/set/effort", onerm.ErrNotStudied},
		{"5.1 in reserve", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { *s = set(2, 5.1) }, "/set/effort", onerm.ErrNotStudied},
		{"RPE 6, 4 to 6 in reserve", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Effort = units.Must(units.RPE(6)) }, "/set/effort", units.ErrOutOfRange},
		{"11 to failure", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { *s = set(11, 0) }, "/set/reps", onerm.ErrNotStudied},
		{"10 and 1", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { *s = set(10, 1) }, "/set/reps", units.ErrOutOfRange},
		{"9 and 1 to 2", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) {
			*s = set(9, 0)
			s.Effort = units.Must(units.RPE(8.5))
		}, "/set/reps", onerm.ErrNotStudied},
		{"reps 0", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Reps = 0 }, "/set/reps", units.ErrOutOfRange},
		{"reps below 0", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Reps = -5 }, "/set/reps", units.ErrOutOfRange},
		{"no day", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Day = 0 }, "/set/day", units.ErrMissing},
		{"no load", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Load = 0 }, "/set/load", units.ErrOutOfRange},
		{"load below 0", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Load = -1 }, "/set/load", units.ErrOutOfRange},
		{"load too large", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Load = units.MaxMass }, "/set/load", units.ErrOverflow},
		{"load near the end", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Load = units.MaxMass / 100 * 80 }, "/set/load", units.ErrOverflow},
		{"bare mass for two", func(s *setlog.Set, e *exercise.Exercise, _ *onerm.Person) {
			s.Hold, e.Hold, s.Stated = body.OneEachHand, body.OneEachHand, 0
		}, "/set/stated", units.ErrMissing},
		{"no side", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Side = 0 }, "/set/side", units.ErrMissing},
		{"no exercise", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Exercise = "" }, "/set/exercise", units.ErrMissing},
		{"another exercise", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Exercise = "row" }, "/set/exercise", units.ErrConflict},
		{"another hold", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Hold = body.OnBar }, "/set/hold", units.ErrConflict},
		{"no hold", func(s *setlog.Set, _ *exercise.Exercise, _ *onerm.Person) { s.Hold = 0 }, "/set/hold", units.ErrMissing},
		{"moves the body", func(_ *setlog.Set, e *exercise.Exercise, _ *onerm.Person) { e.MovesBody = true }, "/exercise/moves_body", onerm.ErrMovesBody},
		{"seconds", func(_ *setlog.Set, e *exercise.Exercise, _ *onerm.Person) { e.Measure = exercise.Seconds }, "/exercise/measure", units.ErrConflict},
		{"no measure", func(_ *setlog.Set, e *exercise.Exercise, _ *onerm.Person) { e.Measure = 0 }, "/exercise/measure", units.ErrMissing},
		{"no age", func(_ *setlog.Set, _ *exercise.Exercise, p *onerm.Person) { p.Age = 0 }, "/person/age", units.ErrMissing},
		{"no training", func(_ *setlog.Set, _ *exercise.Exercise, p *onerm.Person) { p.Training = 0 }, "/person/training", units.ErrMissing},
		{"no such sex", func(_ *setlog.Set, _ *exercise.Exercise, p *onerm.Person) { p.Sex = 7 }, "/person/sex", units.ErrOutOfRange},
		{"12, sex not given", func(s *setlog.Set, _ *exercise.Exercise, p *onerm.Person) { *s, *p = set(12, 0), someone }, "/person/sex", units.ErrMissing},
		{"21, trained woman", func(s *setlog.Set, _ *exercise.Exercise, p *onerm.Person) { *s, *p = set(21, 0), woman }, "/set/reps", onerm.ErrNotStudied},
		{"15 and 1, trained woman", func(s *setlog.Set, _ *exercise.Exercise, p *onerm.Person) { *s, *p = set(15, 1), woman }, "/set/reps", onerm.ErrNotStudied},
		{"7 and 4, trained woman", func(s *setlog.Set, _ *exercise.Exercise, p *onerm.Person) { *s, *p = set(7, 4), woman }, "/set/reps", onerm.ErrNotStudied},
		{"12, novice woman", func(s *setlog.Set, _ *exercise.Exercise, p *onerm.Person) { *s, *p = set(12, 0), novice }, "/set/reps", onerm.ErrNotStudied},
		{"12, woman of 54", func(s *setlog.Set, _ *exercise.Exercise, p *onerm.Person) { *s, *p = set(12, 0), younger }, "/set/reps", onerm.ErrNotStudied},
	}
	for _, tt := range tests {
		s, e, p := set(6, 1), press(body.OnStack), man
		tt.change(&s, &e, &p)
		got, err := onerm.FromSet(s, e, p)
		var all units.FieldErrors
		var one *units.FieldError
		switch {
		case errors.As(err, &all):
			if len(all) != 1 {
				t.Errorf("%s: %d errors:\n%v", tt.name, len(all), err)
			}
			one = all[0]
		case !errors.As(err, &one):
			t.Errorf("%s: no field error: %v", tt.name, err)
			continue
		}
		if one.Path != tt.path || !errors.Is(err, tt.want) || one.Allowed == "" {
			t.Errorf("%s: %v, want %v at %s", tt.name, err, tt.want, tt.path)
		}
		if !cmp.Equal(got, onerm.Estimate{}, cmp.AllowUnexported(units.Range[units.Mass]{}, units.Range[float64]{})) {
			t.Errorf("%s: an estimate beside the error: %+v", tt.name, got)
		}
	}
}

func TestEveryErrorAtOnce(t *testing.T) {
	_, err := onerm.FromSet(setlog.Set{Load: -1}, exercise.Exercise{MovesBody: true, Measure: exercise.Metres}, onerm.Person{Sex: 9})
	var all units.FieldErrors
	if !errors.As(err, &all) {
		t.Fatal(err)
	}
	got := map[string]int{}
	for _, f := range all {
		got[f.Path]++
	}
	want := map[string]int{
		"/set/exercise": 1, "/set/side": 1, "/set/hold": 1, "/set/load": 1, "/set/reps": 1, "/set/day": 1, "/set/effort": 1,
		"/exercise/id": 1, "/exercise/name": 1, "/exercise/pattern": 1, "/exercise/hold": 1, "/exercise/muscles": 1,
		"/exercise/measure": 1, "/exercise/moves_body": 1, "/person/age": 1, "/person/sex": 1, "/person/training": 1,
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}
