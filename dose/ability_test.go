package dose_test

import (
	"math"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/strength"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// strong is a request of somebody practised, watched, who lifts about so many
// kilograms once in the one-arm row.
func strong(t *testing.T, kg float64) dose.Request {
	r := seen(t)
	r.Screening.Who.Training, r.Technique.Day = body.Intermediate, firstDay
	r.Ability = strength.Ability{Log: math.Log(kg), Variance: 0.0064}
	return r
}

// What is known comes from the request, else from the test, else from the set that was
// done; of what lifts the body there is nothing.
func TestWhatIsKnown(t *testing.T) {
	given := strong(t, 10)
	set := row(t)
	s := doneSet(5, 10, units.Must(units.InReserve(2)))
	set.Performed = &s
	lifts := strong(t, 10)
	lifts.Exercise, lifts.Side = exerciseOf(t, "goblet-squat"), body.Both
	for name, tt := range map[string]struct {
		r    dose.Request
		want float64
	}{
		"given":         {given, 10},
		"given, tested": {tested(t, given, 5, 8, 2), 10},
		"tested":        {tested(t, row(t), 6, 8, 2), 6 * (1 + 11.0/30)},
		"done":          {set, 5 * (1 + 13.0/30)},
		"nothing":       {row(t), 0},
		"the body":      {lifts, 0},
	} {
		f := frameOf(t, tt.r)
		oneRM, known := f.Ability().OneRM()
		if known != (tt.want > 0) || math.Abs(oneRM.Kilograms()-tt.want) > 0.001 {
			t.Errorf("%s: %v, want %v kg", name, oneRM, tt.want)
		}
		if n, ok := f.Allows(units.Kilogram, 0); ok != known || known != (n > 0) {
			t.Errorf("%s: %d, %v", name, n, ok)
		}
	}
	none := &dose.Frame{}
	if n, ok := none.Allows(units.Kilogram, 0); n != 0 || ok || none.Ability().Known() || none.Chance() != (strength.Chance{}) {
		t.Error("a frame of nothing allows something")
	}
}

// Counts under 6 and more than 80 % of the 1RM are for those who have learnt the movement
// and whom nothing asks to be spared; and for nobody else is the next weight felt. 7 kg are
// 70 % of 10 kg, 8 kg 80 %.
func TestSparing(t *testing.T) {
	for name, tt := range map[string]struct {
		spoil func(r *dose.Request)
		heavy bool
	}{
		"nothing":                   {func(*dose.Request) {}, true},
		"learning":                  {func(r *dose.Request) { r.Phase = dose.Familiarise }, false},
		"seen long ago":             {func(r *dose.Request) { r.Technique.Day = firstDay - 29 }, false},
		"seen four weeks ago":       {func(r *dose.Request) { r.Technique.Day = firstDay - 28 }, true},
		"breath":                    {func(r *dose.Request) { r.Screening.Limits.NoBreathHolding = true }, false},
		"moderate effort":           {func(r *dose.Request) { r.Screening.Limits.MaxIntensity = screening.Moderate }, false},
		"vigorous effort":           {func(r *dose.Request) { r.Screening.Limits.MaxIntensity = screening.Vigorous }, true},
		"a lighter day":             {func(r *dose.Request) { r.Screening.Limits.Lighten.MoreReserve = 1 }, false},
		"frailty":                   {found("frailty", 0), false},
		"a fracture, undated":       {found("vertebral_fracture", 0), false},
		"a fracture long ago":       {found("vertebral_fracture", screening.LongAgo), true},
		"a joint replaced long ago": {found("total_hip_replacement", screening.LongAgo), true},
		"a joint replaced":          {found("total_hip_replacement", 0), false},
		"another thing":             {found("glaucoma", 0), true},
	} {
		r := strong(t, 10)
		r.Kit = pairs(1, 7.5)
		tt.spoil(&r)
		f := frameOf(t, r)
		n, _ := f.Allows(7500*units.Gram, 7*units.Kilogram)
		if heavy := n > 0; heavy != tt.heavy || n >= 6 {
			t.Errorf("%s: %d times 75 %%", name, n)
		}
		if _, felt := f.Feelable(units.Kilogram); felt != tt.heavy {
			t.Errorf("%s: felt %v", name, felt)
		}
	}
	over := strong(t, 10)
	over.Exercise, over.Side = exerciseOf(t, "dumbbell-shoulder-press"), body.Both
	over.Kit = pairs(1, 7.5)
	for setting, heavy := range map[screening.Setting]bool{screening.Alone: false, screening.WithHelper: true} {
		over.Screening.Setting = setting
		if n, _ := frameOf(t, over).Allows(7500*units.Gram, 7*units.Kilogram); heavy != (n > 0) {
			t.Errorf("overhead, %v: %d", setting, n)
		}
	}
}

func found(code screening.Code, variant screening.Variant) func(*dose.Request) {
	return func(r *dose.Request) {
		r.Screening.Findings = []screening.Finding{{Code: code, Known: true, Variant: variant, Meanwhile: screening.WithinLimits}}
	}
}

// The lightest weight is never too heavy for a band nor while learning: for what it
// allows, and three at least where four can be done.
func TestTheLightestWeight(t *testing.T) {
	for kg, want := range map[float64]int{10: 25, 4.4: 5, 4: 3, 3.42: 3, 3.4: 0} {
		r := strong(t, kg)
		r.Kit, r.Phase = pairs(3), dose.Familiarise
		r.Technique = dose.Observation{}
		n, _ := frameOf(t, r).Allows(3*units.Kilogram, 0)
		p, err := dose.Prescribe(r)
		if n != want || (err == nil) != (want > 0) || err == nil && (p.Count != min(want, 15) || has(p.Reasons, "dose.only-lightest") != (want < 10)) {
			t.Errorf("3 kg of %v: %d, want %d; %d, %v", kg, n, want, p.Count, err)
		}
		r.Screening.Limits.NoBreathHolding = true
		if n, _ := frameOf(t, r).Allows(3*units.Kilogram, 0); n != 0 && n < 6 {
			t.Errorf("3 kg of %v without breath-holding: %d", kg, n)
		}
	}
}

// Without breath-holding no long set goes to its end, and 3 stay in reserve.
func TestLongSetsWithoutBreathHolding(t *testing.T) {
	r := strong(t, 10)
	r.Kit = pairs(1, 4, 5)
	free, _ := frameOf(t, r).Allows(5*units.Kilogram, 5*units.Kilogram)
	r.Screening.Limits.NoBreathHolding = true
	f := frameOf(t, r)
	calm, _ := f.Allows(5*units.Kilogram, 5*units.Kilogram)
	r.Screening.Limits.NoBreathHolding, r.Screening.Limits.MinReserve = false, 5
	far, _ := frameOf(t, r).Allows(5*units.Kilogram, 5*units.Kilogram)
	if calm >= free || calm != max(12, far) || f.Outline().Reserve.Least != 3 {
		t.Errorf("%d, with 5 in reserve %d, without breath-holding %d with %v", free, far, calm, f.Outline().Reserve)
	}
}

// A feel is one of the sets, watched, and only what is nearly known to be liftable.
func TestFeel(t *testing.T) {
	s := dose.Step{Load: 6 * units.Kilogram, Last: 6 * units.Kilogram, Count: 8, Sets: 3, Feel: 5}
	r := strong(t, 9.6)
	r.Kit = pairs(2, 6, 10)
	p := continued(t, r, s)
	if p.Feel == nil || p.Feel.Count != 5 || p.Feel.Load.Each() != 10*units.Kilogram || p.Load.Each() != 6*units.Kilogram || p.Sets != 3 ||
		!strings.Contains(told(p), "take 10 kg") {
		t.Errorf("%+v\n%s", p.Feel, told(p))
	}
	for name, spoil := range map[string]func(r *dose.Request){
		"alone":        func(r *dose.Request) { r.Screening.Setting = screening.Alone },
		"not seen":     func(r *dose.Request) { r.Technique = dose.Observation{} },
		"too far":      func(r *dose.Request) { r.Ability.Log = math.Log(9.4) },
		"nothing more": func(r *dose.Request) { r.Kit = pairs(2, 6) },
		"a limit":      func(r *dose.Request) { restrict(r, 9*units.Kilogram) },
		"unknown":      func(r *dose.Request) { r.Ability = strength.Ability{} },
	} {
		r := r
		spoil(&r)
		if p := continued(t, r, s); p.Feel != nil || has(p.Reasons, "dose.feel") {
			t.Errorf("%s: %+v", name, p.Feel)
		}
	}
	carry := r
	carry.Exercise.Pattern = exercise.Hinge
	found("osteoporosis", 0)(&carry)
	if p := continued(t, carry, s); p.Feel != nil {
		t.Error("a hinge is felt in osteoporosis")
	}
}

// A dose that goes on keeps to the chance: its count falls, or the weight where that
// allows nothing.
func TestContinueKeepsToTheChance(t *testing.T) {
	s := dose.Step{Load: 6 * units.Kilogram, Last: 6 * units.Kilogram, Count: 12, Sets: 3}
	r := strong(t, 9)
	r.Kit = pairs(2, 4, 6)
	p := continued(t, r, s)
	most, _ := frameOf(t, r).Allows(6*units.Kilogram, s.Last)
	if p.Load.Each() != 6*units.Kilogram || p.Count != most || most >= 12 || p.Chance != strength.StandardChance() || !has(p.Reasons, "dose.chance") {
		t.Errorf("%v × %d, want %d", p.Load.Each(), p.Count, most)
	}
	r.Chance = strength.Chance{Reserve: 0.2, Finish: 0.1}
	if bold := continued(t, r, s); bold.Count <= p.Count || bold.Chance != r.Chance {
		t.Errorf("%d with a greater chance, %d before", bold.Count, p.Count)
	}
	r.Missed = 300
	if away := continued(t, r, s); away.Load.Each() >= 6*units.Kilogram {
		t.Errorf("%v after long away", away.Load.Each())
	}
	r.Chance.Reserve = 0.5
	r.Missed, r.Ability.Variance = -1, 2
	if _, err := dose.NewFrame(r); strings.Join(paths(err), " ") != "/ability/variance /chance/reserve /missed" {
		t.Errorf("%v", paths(err))
	}
}

// Four steps up in a visit where each is small, else two.
func TestSmallSteps(t *testing.T) {
	for name, tt := range map[string]struct {
		kg    []float64
		steps int
	}{
		"small ones":       {[]float64{4, 5, 6, 7, 8, 9}, 4},
		"one too large":    {[]float64{4, 5, 6, 9, 10}, 2},
		"the first large":  {[]float64{4, 6, 7, 8, 9}, 2},
		"the fourth large": {[]float64{4, 5, 6, 7, 10}, 3},
	} {
		r := seen(t)
		r.Kit = pairs(tt.kg...)
		if p := prescribe(t, r); p.Finding == nil || p.Finding.MaxSteps != tt.steps {
			t.Errorf("%s: %+v, want %d", name, p.Finding, tt.steps)
		}
	}
}

// The weaker side is the one whose test shows less by what doses go by.
func TestWeakerByWhatIsKnown(t *testing.T) {
	r := row(t)
	r.Side = body.Both
	one := doneSet(8, 1, units.Must(units.InReserve(0)))
	one.Side = body.Left
	measured, err := onerm.FromSet(one, r.Exercise, r.Screening.Who)
	if err != nil {
		t.Fatal(err)
	}
	right := estimateOf(t, row(t), 6, 8, 2) // of 8 kg too, and one repetition more than told
	r.Estimates = []onerm.Estimate{measured, right}
	oneRM, _ := frameOf(t, r).Ability().OneRM()
	if oneRM != 8*units.Kilogram {
		t.Errorf("%v, want the measured 8 kg", oneRM)
	}
}
