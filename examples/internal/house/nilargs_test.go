package house_test

import (
	"errors"
	"io"
	"iter"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/cohort"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/progression"
	"example.org/posology/progression/protocol"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// takesNil finds what takes a pointer, a function, a sequence, a reader or a writer.
var takesNil = regexp.MustCompile(`(?m)^(\S+: (?:func|method \(\S+\)) \w+)(?:\[[^\]]*\])?\([^)]*(?:\w (?:\.\.\.)?(?:\*|iter\.Seq|io\.)|func\()[^)]*\)`)

// firstError returns the error that a sequence of sets begins with.
func firstError[T any](sets iter.Seq2[T, error]) error {
	for _, err := range sets {
		return err
	}
	return nil
}

func someCohort() *cohort.Cohort {
	return units.Must(cohort.NewStudy(exercise.Standard(), cohort.Options{})).NewCohort()
}

// onNil calls each of those with nil, the other arguments good. True: that has to be
// an error; else it answers as if nothing were there.
var onNil = map[string]struct {
	refused bool
	call    func() error
}{
	"dose: func FrameOf":                   {true, func() error { _, err := dose.FrameOf(nil); return err }},
	"dose/cohort: method (*Cohort) Encode": {true, func() error { return someCohort().Encode(nil) }},
	"dose/cohort: method (*Cohort) Merge":  {true, func() error { return someCohort().Merge(nil) }},
	"dose/cohort: method (*Cohort) Read": {true, func() error {
		return firstError(someCohort().Read(setlog.Reader{}, nil, 0, 1))
	}},
	"dose/cohort: method (*Study) Decode": {true, func() error {
		_, err := units.Must(cohort.NewStudy(exercise.Standard(), cohort.Options{})).Decode(nil)
		return err
	}},
	"dose/setlog: method (Reader) CSV":       {true, func() error { return firstError(setlog.Reader{}.CSV(nil)) }},
	"dose/setlog: method (Reader) JSONLines": {true, func() error { return firstError(setlog.Reader{}.JSONLines(nil)) }},
	"dose/setlog: method (Reader) Scan": {true, func() error {
		return neither(firstError(setlog.Reader{}.Scan(nil, 0, 1, func(int) []func(setlog.Set) error { return nil })),
			firstError(setlog.Reader{}.Scan(strings.NewReader(""), 0, 1, nil)))
	}},
	"dose/setlog: func ReadCSV":       {true, func() error { return firstError(setlog.ReadCSV(nil)) }},
	"dose/setlog: func ReadJSONLines": {true, func() error { return firstError(setlog.ReadJSONLines(nil)) }},
	"dose/setlog: func WriteCSV": {true, func() error {
		return neither(setlog.WriteCSV(nil, slices.Values([]setlog.Set(nil))), setlog.WriteCSV(io.Discard, nil))
	}},
	"dose/setlog: func WriteJSONLines": {true, func() error {
		return neither(setlog.WriteJSONLines(nil, slices.Values([]setlog.Set(nil))), setlog.WriteJSONLines(io.Discard, nil))
	}},
	"dose/volume: method (*Counter) Decode": {true, func() error {
		_, err := units.Must(volume.NewCounter(exercise.Standard(), volume.Options{Kind: volume.Performed})).Decode(nil)
		return err
	}},
	"dose/volume: method (*Tally) Encode": {true, func() error {
		return units.Must(volume.NewCounter(exercise.Standard(), volume.Options{Kind: volume.Performed})).NewTally().Encode(nil)
	}},
	"dose/volume: method (*Tally) Merge": {true, func() error {
		counter, _ := volume.NewCounter(exercise.Standard(), volume.Options{})
		return counter.NewTally().Merge(nil)
	}},
	"progression/protocol: method (Adjustment) Fourth": {false, func() error {
		_, err := protocol.Adjustment{}.Fourth(units.Must(units.ParseMarked("20 kg")), nil)
		return err
	}},
	"progression/protocol: method (Scheme) Plan": {false, func() error {
		for scheme := range protocol.Schemes() {
			if _, err := scheme.Plan(units.Must(units.ParseMarked("20 kg")), nil); err != nil {
				return err
			}
		}
		return nil
	}},
	"dose/volume: method (Totals) PatternSets": {false, func() error { volume.Totals{}.PatternSets(nil); return nil }},
	"progression/rule: method (SetChange) InKit": {true, func() error {
		change, err := rule.SetToSetKg(units.Must(units.InReserve(3)))
		if err != nil {
			return nil
		}
		_, err = change.InKit(nil, 10*units.Kilogram)
		return err
	}},
	"progression/visit: method (*Visit) Read": {true, func() error {
		_, err := (&visit.Visit{}).Read(visit.Trial{}, nil)
		return err
	}},
	"progression/visit: method (*Visit) Refers": {false, func() error {
		(&visit.Visit{Pain: &screening.Pain{}}).Refers(nil)
		return nil
	}},
	"progression/visit: method (*Visit) SetsWith": {false, func() error {
		(&visit.Visit{Sets: make([]setlog.Set, 2)}).SetsWith(nil)
		return nil
	}},
	"progression/visit: method (*Visit) WithoutQueried": {false, func() error {
		(&visit.Visit{Sets: []setlog.Set{{Hold: body.OneHand, Load: units.Kilogram, Reps: 1}}}).WithoutQueried(0, nil)
		return nil
	}},
	"progression: func NextJump": {false, func() error {
		_, _, err := progression.NextJump(nil, units.Kilogram, 0)
		return err
	}},
	"units/evidence: func NewLedger": {true, func() error {
		_, err := evidence.NewLedger(evidence.UnitFacts(), nil)
		return err
	}},
	"units/field: func DidYouMean": {false, func() error { field.DidYouMean("lift", nil); return nil }},
	"units/field: func OrZero":     {false, func() error { *field.OrZero[int](nil)++; return nil }},
	"units/field: func Assign":     {true, func() error { return field.Assign(nil, 1, nil) }},
	"units/field: func AssignText": {true, func() error { return field.AssignText(nil, nil, units.ParseDay) }},
	"units/field: func DecodeChecked": {true, func() error {
		var n int
		if err := field.DecodeChecked([]byte("1"), &n, field.Strict, nil); err != nil || n != 1 {
			return nil // no check is no error
		}
		return field.DecodeChecked([]byte("1"), (*int)(nil), field.Strict, func(int) error { return nil })
	}},
	"units/field: method (Vocabulary[E]) Unmarshal": {true, func() error {
		return field.NewVocabulary[body.Side]("side", "", "left").Unmarshal([]byte("left"), nil)
	}},
}

// neither is nil if one of two calls that have to be refused was not.
func neither(one, other error) error {
	if one == nil || other == nil {
		return nil
	}
	return errors.Join(one, other)
}

func TestNilArguments(t *testing.T) {
	found := map[string]bool{}
	for _, match := range takesNil.FindAllStringSubmatch(text(t, ".ci/api.txt"), -1) {
		found[match[1]] = true
		if _, ok := onNil[match[1]]; !ok {
			t.Errorf("%s is called by no test with nil: add it to onNil", match[1])
		}
	}
	for name, tt := range onNil {
		if !found[name] {
			t.Errorf("%s is not in the recorded API, or takes nothing that may be nil", name)
		}
		t.Run(name, func(t *testing.T) {
			var bad *field.Error
			if err := tt.call(); tt.refused != (err != nil) || tt.refused && !errors.As(err, &bad) {
				t.Errorf("%v; a *field.Error: %v", err, tt.refused)
			}
		})
	}
}
