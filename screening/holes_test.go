package screening_test

import (
	"errors"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// ordinary is a whole record of pain that settles.
func ordinary(during *float64) *screening.Pain {
	return &screening.Pain{Kind: screening.OrdinaryPain, During: during, After: score(1), SettledNextMorning: screening.Yes, WeeklyTrend: screening.StablePain}
}

// TestPainNotGiven holds that pain in training that was not given counts as the
// worst, and one that was given as it is.
func TestPainNotGiven(t *testing.T) {
	c := quiet()
	c.Pain = ordinary(nil)
	o := mustToday(t, c, assess(t, well()))
	if f, ok := finding(o, "screening.pain_gt_5_reduce.unsure"); !ok || !f.Open || !misses(o, "pain") || o.Limits.Lighten.FewerSets == 0 {
		t.Errorf("not given: %+v, missing %v", f, o.Missing)
	}
	c.Pain = ordinary(score(2))
	o = mustToday(t, c, assess(t, well()))
	if len(o.Missing) > 0 || o.Plan != screening.AsPlanned || !o.Limits.IsZero() {
		t.Errorf("2 of 10: %v, %+v, missing %v", o.Plan, o.Limits, o.Missing)
	}
}

// TestOpenQuestionsAllAsked holds that ketones that cannot be tested leave the
// other open questions of the day standing.
func TestOpenQuestionsAllAsked(t *testing.T) {
	c := quiet()
	c.Glucose, c.InsulinOrSecretagogue, c.NoKetoneStrips = glucose("15 mmol/L"), screening.No, true
	c.Pain = &screening.Pain{Kind: screening.OrdinaryPain, During: score(1)}
	o := mustToday(t, c, assess(t, well()))
	if !misses(o, "ketones") || !misses(o, "pain") {
		t.Errorf("missing %v, want ketones and pain", o.Missing)
	}
	for _, code := range []evidence.ReasonCode{"screening.no_ketone_strips", "screening.pain_gt_5_reduce.unsure", "screening.pain_not_settled_reduce.unsure", "screening.pain_rising_week_on_week_reduce.unsure"} {
		if _, plain := finding(o, code); !plain {
			if _, held := finding(o, code+".held"); !held {
				t.Errorf("no %s", code)
			}
		}
	}
}

// TestBloodKetonesAnswer holds that ketones measured in the blood leave none to
// be asked (Riddell 2017, through Turner 2019: below 1.5 mmol/L light effort).
func TestBloodKetonesAnswer(t *testing.T) {
	c := quiet()
	c.Glucose, c.InsulinOrSecretagogue, c.BloodKetones = glucose("15 mmol/L"), screening.No, score(0.1)
	o := mustToday(t, c, assess(t, well()))
	expect(t, o, screening.Tell, screening.WithinLimits)
	if len(o.Missing) > 0 || o.Limits.MaxIntensity != screening.Light {
		t.Errorf("missing %v, limits %+v", o.Missing, o.Limits)
	}
	for _, f := range o.Findings {
		if strings.HasPrefix(string(f.Reason.Code), "screening.ketones") {
			t.Errorf("found %s", f.Reason.Code)
		}
	}
}

// TestPainRuleShown holds that the day's check shows the pain model's own answer.
func TestPainRuleShown(t *testing.T) {
	c := quiet()
	c.Pain = ordinary(score(6))
	if got, want := mustToday(t, c, assess(t, well())).Rules.Pain, screening.PainModel(*c.Pain); !reflect.DeepEqual(got, want) || !got.Applies {
		t.Errorf("%+v, want %+v", got, want)
	}
}

// TestClearanceIntensity holds that an effort of no band is refused.
func TestClearanceIntensity(t *testing.T) {
	p := well()
	p.Clearances = []screening.Clearance{clearance("pacemaker")}
	p.Clearances[0].Intensity = 250
	var fields field.Errors
	if err := p.Validate(); !errors.As(err, &fields) || len(fields) != 1 || fields[0].Path != "/clearances/0/intensity" || !errors.Is(err, field.ErrOutOfRange) {
		t.Errorf("%v", err)
	}
}

// TestClearanceAnswered holds that one in force is not asked for again.
func TestClearanceAnswered(t *testing.T) {
	p := well()
	p.Diseases, p.Clearances = screening.AskedFor("renal"), []screening.Clearance{clearance("renal")}
	if o := assess(t, p); misses(o, "clearance") {
		t.Errorf("missing %v", o.Missing)
	}
}

// TestIsZeroByField sets each field alone: none of them may be forgotten.
func TestIsZeroByField(t *testing.T) {
	zero := func(v any) bool { return v.(interface{ IsZero() bool }).IsZero() }
	for _, v := range []any{screening.Rules{}, screening.Checklist{}, screening.Limits{}} {
		if !zero(v) {
			t.Errorf("%T: the zero value is not zero", v)
		}
		for name, set := range fieldsOf(reflect.TypeOf(v)) {
			if zero(set.Interface()) {
				t.Errorf("%T with %s alone is zero", v, name)
			}
		}
	}
	follow, _ := units.Between(30, 90)
	for name, a := range map[string]screening.FallsAnswer{"positive": {Positive: screening.No}, "look at": {LookAt: []screening.Code{"vision"}}, "follow-up": {FollowUp: follow}} {
		if (screening.Rules{Falls: a}).IsZero() {
			t.Errorf("rules with %s of the falls alone are zero", name)
		}
	}
	for name, set := range fieldsOf(reflect.TypeFor[screening.PainAnswer]()) {
		if (screening.Rules{Pain: set.Interface().(screening.PainAnswer)}).IsZero() {
			t.Errorf("rules with %s of the pain alone are zero", name)
		}
	}
}

// fieldsOf returns values of a struct type with one field each that is not zero.
func fieldsOf(of reflect.Type) map[string]reflect.Value {
	all := map[string]reflect.Value{}
	for i := range of.NumField() {
		v := reflect.New(of).Elem()
		fill(v.Field(i))
		all[of.Field(i).Name] = v
	}
	return all
}

func fill(v reflect.Value) {
	switch v.Kind() {
	case reflect.Struct:
		if v.NumField() > 0 && v.Field(0).CanSet() {
			fill(v.Field(0))
			return
		}
		follow, _ := units.Between(30, 90)
		v.Set(reflect.ValueOf(follow))
	case reflect.Slice:
		v.Set(reflect.MakeSlice(v.Type(), 1, 1))
	case reflect.Bool:
		v.SetBool(true)
	case reflect.Float64:
		v.SetFloat(0.5)
	default:
		v.Set(reflect.ValueOf(1).Convert(v.Type()))
	}
}

// TestStopPressureSources holds that each table's pressure is quoted from its own
// source, with its own numbers.
func TestStopPressureSources(t *testing.T) {
	l := ledger(t)
	for code, want := range map[screening.Code]struct {
		source evidence.SourceID
		says   []string
	}{
		"stop_bp_ge_250_or_115": {"hfrev2023", []string{"at or above", "250", "115"}},
		"stop_bp_gt_260_or_115": {"jssm_t7", []string{"above", "260", "115"}},
		"stop_bp_gt_250_or_120": {"pmj_t5", []string{"above", "250", "120"}},
	} {
		term, _ := screening.LookUp(code)
		f, ok := l.Fact(term.Fact)
		if !ok || f.Source != want.source {
			t.Errorf("%s: source %s, want %s", code, f.Source, want.source)
		}
		for _, part := range want.says {
			if !strings.Contains(f.Value, part) {
				t.Errorf("%s says %q, want %q in it", code, f.Value, part)
			}
		}
		if strings.Contains(f.Value, "at or above") != (code == "stop_bp_ge_250_or_115") {
			t.Errorf("%s says %q", code, f.Value)
		}
	}
}

// TestOrderOfAnswers holds that the order of answers changes nothing: of equal
// gravity the findings stand in the order of the lists.
func TestOrderOfAnswers(t *testing.T) {
	codes := []screening.Code{"glaucoma", "beta_blocker", "parkinsons", "hernia", "pacemaker", "icd", "anticoagulant", "osteoporosis"}
	p := well()
	p.Conditions = screening.AskedFor(codes...)
	want := assess(t, p)
	at := map[evidence.ReasonCode]int{}
	for term := range screening.Codes() {
		at["screening."+evidence.ReasonCode(term.Code)] = len(at)
	}
	last := -1
	for _, f := range want.Findings {
		if row, listed := at[f.Reason.Code]; listed && f.Route == screening.Tell {
			if row < last {
				t.Errorf("%s stands out of order", f.Reason.Code)
			}
			last = row
		}
	}
	r := rand.New(rand.NewPCG(50, 6))
	for range 50 {
		shuffled := slices.Clone(codes)
		r.Shuffle(len(shuffled), func(i, j int) { shuffled[i], shuffled[j] = shuffled[j], shuffled[i] })
		p.Conditions = screening.AskedFor(shuffled...)
		if got := assess(t, p); !reflect.DeepEqual(got, want) {
			t.Fatalf("%v: another outcome", shuffled)
		}
	}
}

// TestNothingFoundOnlyIfSo holds that nothing is said to have been found only
// where no finding has a route.
func TestNothingFoundOnlyIfSo(t *testing.T) {
	r := rand.New(rand.NewPCG(50, 7))
	for range usualCases / 4 {
		o := assess(t, randomProfile(r))
		for _, o := range []screening.Outcome{o, mustToday(t, checkFor(r, o), o)} {
			said := 0
			for _, f := range o.Findings {
				if f.Reason.Code == "screening.nothing-found" {
					said++
				}
			}
			if want := map[bool]int{true: 1}[o.Route == screening.NoRoute]; said != want {
				t.Fatalf("route %v: said %d times that nothing was found", o.Route, said)
			}
		}
	}
}
