package onerm_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
)

// TestRefused: each row changes one thing in a good set.
func TestRefused(t *testing.T) {
	tests := []struct {
		name   string
		change func(*setlog.Set, *exercise.Exercise, *body.Person)
		path   string
		want   error
	}{
		{"effort not recorded", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Effort = units.Effort{} }, "/set/effort", field.ErrMissing},
		{"OMNI", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Effort = units.Must(units.OMNI(8)) }, "/set/effort", units.ErrNoRIR},
		{"CR10", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) {
			s.Effort = units.Must(units.NewEffort(units.ScaleCR10, 5))
		}, "/set/effort", units.ErrNoRIR},
		{"Borg", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) {
			s.Effort = units.Must(units.NewEffort(units.ScaleBorg, 13))
		}, "/set/effort", units.ErrNoRIR},
		{"RPE below 5", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Effort = units.Must(units.RPE(4)) }, "/set/effort", units.ErrNoRIR},
		{"6 in reserve", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { *s = set(2, 6) }, "/set/effort", onerm.ErrNotStudied},
		{"5.1 in reserve", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { *s = set(2, 5.1) }, "/set/effort", onerm.ErrNotStudied},
		{"RPE 6, 4 to 6 in reserve", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Effort = units.Must(units.RPE(6)) }, "/set/effort", field.ErrOutOfRange},
		{"11 to failure", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { *s = set(11, 0) }, "/set/reps", onerm.ErrNotStudied},
		{"10 and 1", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { *s = set(10, 1) }, "/set/reps", field.ErrOutOfRange},
		{"9 and 1 to 2", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) {
			*s = set(9, 0)
			s.Effort = units.Must(units.RPE(8.5))
		}, "/set/reps", onerm.ErrNotStudied},
		{"reps 0", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Reps = 0 }, "/set/reps", field.ErrOutOfRange},
		{"reps below 0", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Reps = -5 }, "/set/reps", field.ErrOutOfRange},
		{"no day", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Day = 0 }, "/set/day", field.ErrMissing},
		{"no load", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Load = 0 }, "/set/load", field.ErrOutOfRange},
		{"load below 0", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Load = -1 }, "/set/load", field.ErrOutOfRange},
		{"load too large", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Load = units.MaxMass }, "/set/load", field.ErrOutOfRange},
		{"load that nobody lifts", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Load = 90_000 * units.Kilogram }, "/set/load", field.ErrOutOfRange},
		{"bare mass for two", func(s *setlog.Set, e *exercise.Exercise, _ *body.Person) {
			s.Hold, e.Hold, s.Stated = body.OneEachHand, body.OneEachHand, 0
		}, "/set/stated", field.ErrMissing},
		{"no side", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Side = 0 }, "/set/side", field.ErrMissing},
		{"no exercise", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Exercise = "" }, "/set/exercise", field.ErrMissing},
		{"another exercise", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Exercise = "row" }, "/set/exercise", field.ErrConflict},
		{"another hold", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Hold = body.OnBar }, "/set/hold", field.ErrConflict},
		{"no hold", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person) { s.Hold = 0 }, "/set/hold", field.ErrMissing},
		{"moves the body", func(_ *setlog.Set, e *exercise.Exercise, _ *body.Person) { e.MovesBody = true }, "/exercise/moves_body", field.ErrConflict},
		{"seconds", func(_ *setlog.Set, e *exercise.Exercise, _ *body.Person) { e.Measure = exercise.Seconds }, "/exercise/measure", field.ErrConflict},
		{"no measure", func(_ *setlog.Set, e *exercise.Exercise, _ *body.Person) { e.Measure = 0 }, "/exercise/measure", field.ErrMissing},
		{"no age", func(_ *setlog.Set, _ *exercise.Exercise, p *body.Person) { p.Age = 0 }, "/person/age", field.ErrMissing},
		{"no training", func(_ *setlog.Set, _ *exercise.Exercise, p *body.Person) { p.Training = 0 }, "/person/training", field.ErrMissing},
		{"no such sex", func(_ *setlog.Set, _ *exercise.Exercise, p *body.Person) { p.Sex = 7 }, "/person/sex", field.ErrOutOfRange},
		{"12, sex not given", func(s *setlog.Set, _ *exercise.Exercise, p *body.Person) { *s, *p = set(12, 0), someone }, "/person/sex", field.ErrMissing},
		{"21, trained woman", func(s *setlog.Set, _ *exercise.Exercise, p *body.Person) { *s, *p = set(21, 0), woman }, "/set/reps", onerm.ErrNotStudied},
		{"15 and 1, trained woman", func(s *setlog.Set, _ *exercise.Exercise, p *body.Person) { *s, *p = set(15, 1), woman }, "/set/reps", onerm.ErrNotStudied},
		{"7 and 4, trained woman", func(s *setlog.Set, _ *exercise.Exercise, p *body.Person) { *s, *p = set(7, 4), woman }, "/set/reps", onerm.ErrNotStudied},
		{"12, novice woman", func(s *setlog.Set, _ *exercise.Exercise, p *body.Person) { *s, *p = set(12, 0), novice }, "/set/reps", onerm.ErrNotStudied},
		{"12, woman of 54", func(s *setlog.Set, _ *exercise.Exercise, p *body.Person) { *s, *p = set(12, 0), younger }, "/set/reps", onerm.ErrNotStudied},
	}
	for _, tt := range tests {
		s, e, p := set(6, 1), press(body.OnStack), man
		tt.change(&s, &e, &p)
		got, err := onerm.FromSet(s, e, p)
		var all field.Errors
		var one *field.Error
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

// A set that is in order and gives no estimate says why, to both readers; one
// with a bad field says nothing but that.
func TestRefusal(t *testing.T) {
	ledger := units.Must(evidence.NewLedger(evidence.UnitFacts(), onerm.Facts()))
	words, named := onerm.Words().Copy(), map[evidence.ReasonCode]bool{}
	tests := []struct {
		code   evidence.ReasonCode
		change func(*setlog.Set, *exercise.Exercise, *body.Person, *onerm.Options)
	}{
		{"onerm.none-effort", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person, _ *onerm.Options) {
			s.Effort = units.Effort{}
		}},
		{"onerm.none-rating", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person, _ *onerm.Options) {
			s.Effort = units.Must(units.OMNI(8))
		}},
		{"onerm.none-rating", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person, _ *onerm.Options) {
			s.Effort = units.Must(units.RPE(4))
		}},
		{"onerm.none-reserve", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person, _ *onerm.Options) { *s = set(2, 6) }},
		{"onerm.none-range", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person, _ *onerm.Options) { *s = set(10, 1) }},
		{"onerm.none-sex", func(s *setlog.Set, _ *exercise.Exercise, p *body.Person, _ *onerm.Options) {
			*s, *p = set(12, 0), someone
		}},
		{"onerm.none-moves-body", func(_ *setlog.Set, e *exercise.Exercise, _ *body.Person, _ *onerm.Options) { e.MovesBody = true }},
		{"onerm.none-moves-body", func(s *setlog.Set, e *exercise.Exercise, _ *body.Person, _ *onerm.Options) {
			*s, e.MovesBody = set(2, 6), true
		}},
		{"onerm.none-measure", func(_ *setlog.Set, e *exercise.Exercise, _ *body.Person, _ *onerm.Options) {
			e.Measure = exercise.Seconds
		}},
		{"onerm.none-accuracy", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person, o *onerm.Options) {
			*s, o.Accuracy = set(30, 0), onerm.OpenBench()
		}},
		{"", func(s *setlog.Set, _ *exercise.Exercise, _ *body.Person, _ *onerm.Options) { s.Reps = 0 }},
		{"", func(s *setlog.Set, e *exercise.Exercise, _ *body.Person, _ *onerm.Options) {
			s.Side, e.MovesBody = 0, true
		}},
		{"", func(_ *setlog.Set, _ *exercise.Exercise, _ *body.Person, _ *onerm.Options) {}},
	}
	for _, tt := range tests {
		s, e, p, o := set(6, 1), press(body.OnStack), man, onerm.Options{}
		tt.change(&s, &e, &p, &o)
		_, err := o.FromSet(s, e, p)
		why, refused := onerm.WhyRefused(err)
		if why.Code != tt.code || refused != (tt.code != "") {
			t.Errorf("%v: %v, %v; want %q", err, why, refused, tt.code)
			continue
		}
		if named[why.Code] = true; !refused {
			continue
		}
		client, clinician := words.Client(why), words.Clinician(why)
		if words[why.Code].Clinician == "" || strings.ContainsAny(client+clinician, "{}") || len(why.Facts) == 0 {
			t.Errorf("%s reads %q, %q, facts %v", why.Code, client, clinician, why.Facts)
		}
		for _, id := range why.Facts {
			if _, ok := ledger.Fact(id); !ok {
				t.Errorf("%s names no fact: %q", why.Code, id)
			}
		}
	}
	for code := range words {
		if strings.HasPrefix(string(code), "onerm.none-") && !named[code] {
			t.Errorf("wording %s is never used", code)
		}
	}
}

func TestEveryErrorAtOnce(t *testing.T) {
	_, err := onerm.FromSet(setlog.Set{Load: -1}, exercise.Exercise{MovesBody: true, Measure: exercise.Metres}, body.Person{Sex: 9})
	var all field.Errors
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
