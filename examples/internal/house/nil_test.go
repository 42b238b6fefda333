package house_test

import (
	"encoding"
	"encoding/json"
	"errors"
	"fmt"
	"reflect"
	"regexp"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/cohort"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/published"
	"example.org/posology/dose/rota"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/protocol"
	"example.org/posology/progression/record"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/track"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/screening/function"
	"example.org/posology/screening/interview"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

func of[T any]() reflect.Type { return reflect.TypeFor[*T]() }

// withPointerMethods are the exported types with an exported method on their pointer.
var withPointerMethods = []reflect.Type{
	of[cohort.Cohort](), of[cohort.Study](),
	of[choice.Concern](), of[choice.Task](), of[choice.TaskTrial](),
	of[equipment.Load](),
	of[equipment.PartKind](), of[equipment.Table](), of[equipment.TooHeavyError](),
	of[exercise.Catalogue](), of[exercise.Implement](), of[exercise.DoseUnit](),
	of[exercise.Pattern](), of[exercise.Role](), of[exercise.Thing](),
	of[guideline.Condition](), of[guideline.EffectUnit](), of[guideline.Field](),
	of[guideline.Goal](),
	of[guideline.Verdict](),
	of[published.Chart](), of[onerm.Curve](), of[onerm.Form](), of[onerm.Formula](),
	of[onerm.Grade](), of[published.Regression](),
	of[rota.Proof](),
	of[setlog.RowError](),
	of[volume.Convention](), of[volume.Counter](),
	of[volume.TallyKind](), of[volume.VolumeLoad](),
	of[volume.Sets](), of[volume.Tally](), of[volume.ISOWeek](),
	of[beside.Holding](), of[beside.ItemKind](), of[beside.Trouble](),
	of[dose.ConstraintError](), of[dose.Flag](),
	of[dose.Frame](), of[dose.Mode](), of[dose.Phase](),
	of[programme.Criterion](), of[programme.Exit](), of[programme.HappeningKind](),
	of[programme.CriterionState](), of[programme.Standing](),
	of[protocol.Scheme](),
	of[track.Track](), of[track.TrendKind](),
	of[rule.LoadAdvice](), of[rule.Name](),
	of[visit.Gate](), of[visit.GateReport](), of[visit.Summary](), of[visit.Visit](),
	of[progression.Action](), of[progression.Change](),
	of[record.Record](),
	of[function.Amount](), of[function.BatteryBand](),
	of[function.Hand](), of[function.HowDone](),
	of[function.Measure](), of[function.Position](),
	of[function.Shown](), of[function.Test](), of[function.Unit](),
	of[interview.ReplyForm](),
	of[screening.Answer](), of[screening.BloodPressure](), of[screening.Branch](),
	of[screening.DayPlan](), of[screening.Glucose](),
	of[screening.Intensity](), of[screening.Ketones](), of[screening.Kind](),
	of[screening.ContraindicationLevel](), of[screening.Meanwhile](), of[screening.Need](),
	of[screening.Lifter](), of[screening.ListChoice](), of[screening.Means](), of[screening.Strictness](),
	of[screening.PainKind](), of[screening.PainZone](), of[screening.Posture](),
	of[screening.Referral](), of[screening.Route](), of[screening.Setting](),
	of[screening.StopAction](), of[screening.Trend](), of[screening.Variant](),
	of[body.Demand](), of[body.Demands](), of[body.Hold](), of[body.Muscle](),
	of[body.Region](), of[body.Sex](), of[body.Side](), of[body.Stated](),
	of[body.Training](),
	of[evidence.Arg](), of[evidence.Basis](), of[evidence.Ledger](),
	of[field.Column[int]](), of[field.Error](), of[field.Errors](),
	of[units.Day](), of[units.Effort](), of[units.Marked](), of[units.Mass](),
	of[units.MassUnit](), of[units.Range[int]](), of[units.Scale](),
}

var pointerMethod = regexp.MustCompile(`(?m)^\S+: method \(\*[^)]+\) \w+\(`)

// A nil pointer is what a program has that forgot to make a value, or that a type
// assertion or a map gave it. Every method answers it alike: with an error or with
// what the zero value answers, and never with a panic.
func TestNilReceivers(t *testing.T) {
	listed := map[string]bool{}
	for _, typ := range withPointerMethods {
		elem := typ.Elem()
		_, path, _ := strings.Cut(elem.PkgPath(), "/posology/")
		name, _, generic := strings.Cut(elem.Name(), "[")
		if generic {
			name += "[T]"
		}
		for m := range typ.Methods() {
			if _, promoted := elem.MethodByName(m.Name); promoted {
				continue // on values, which a nil pointer does not have
			}
			at := fmt.Sprintf("%s: method (*%s) %s(", path, name, m.Name)
			listed[at] = true
			callOnNil(t, at, typ, m)
		}
	}
	for _, at := range pointerMethod.FindAllString(text(t, ".ci/api.txt"), -1) {
		if !listed[at] {
			t.Errorf("%s…) is called by no test on nil: add its type to withPointerMethods", at)
		}
		delete(listed, at)
	}
	for at := range listed {
		t.Errorf("%s…) is not in the recorded API", at)
	}
}

// callOnNil calls a method with zero arguments, or with texts that the type reads:
// those it has to refuse.
func callOnNil(t *testing.T, at string, typ reflect.Type, m reflect.Method) {
	t.Helper()
	args := []reflect.Value{reflect.Zero(typ)}
	for i := 1; i < m.Type.NumIn() && !(m.Type.IsVariadic() && i == m.Type.NumIn()-1); i++ {
		args = append(args, reflect.Zero(m.Type.In(i)))
	}
	follow(t, at, call(t, at, m.Func, args))
	if !strings.HasPrefix(m.Name, "Unmarshal") {
		return
	}
	for _, text := range ownTexts(t, typ) {
		args[1] = reflect.ValueOf(text)
		for _, result := range call(t, at, m.Func, args) {
			err, _ := result.Interface().(error)
			if !errors.Is(err, field.ErrMissing) {
				t.Errorf("%s%q) = %v, want ErrMissing", at, text, err)
			}
		}
	}
}

// ownTexts are what the zero value and, of an enumeration, the first are written as.
func ownTexts(t *testing.T, typ reflect.Type) (all [][]byte) {
	t.Helper()
	for n := range uint64(2) {
		v := reflect.New(typ.Elem())
		if v.Elem().CanUint() {
			v.Elem().SetUint(n)
		}
		var text []byte
		var err error
		switch v := v.Interface().(type) {
		case encoding.TextMarshaler:
			text, err = v.MarshalText()
		default:
			text, err = json.Marshal(v)
		}
		if err == nil {
			all = append(all, text)
		}
	}
	if len(all) == 0 {
		t.Errorf("%v: no text of its own", typ)
	}
	return all
}

// call returns the results, nil after a panic.
func call(t *testing.T, at string, f reflect.Value, args []reflect.Value) (results []reflect.Value) {
	t.Helper()
	defer func() {
		if p := recover(); p != nil {
			t.Errorf("%s…) of nil: %v", at, p)
		}
	}()
	return f.Call(args)
}

// follow runs through what a method returned: a sequence to its end, an error's text.
func follow(t *testing.T, at string, results []reflect.Value) {
	t.Helper()
	defer func() {
		if p := recover(); p != nil {
			t.Errorf("%s…) of nil, followed: %v", at, p)
		}
	}()
	for _, r := range results {
		switch {
		case r.Type().CanSeq2():
			for range r.Seq2() {
			}
		case r.Kind() == reflect.Func && r.Type().CanSeq():
			for range r.Seq() {
			}
		}
		if err, ok := r.Interface().(error); ok {
			_ = err.Error()
		}
	}
}
