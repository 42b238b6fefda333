package dose_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// visit is what the law is tried on: a person, and a request without the
// outcome of the screening.
type visit struct {
	profile screening.Profile
	request dose.Request
	test    *setlog.Set
}

// dose screens, estimates and prescribes.
func (v visit) dose() (dose.Prescription, error) {
	outcome, err := screening.Assess(v.profile)
	if err != nil {
		return dose.Prescription{}, err
	}
	r := v.request
	r.Screening = outcome
	if v.test != nil {
		e, err := onerm.FromSet(*v.test, r.Exercise, body.Person{Age: r.Screening.Who.Age, Sex: v.profile.Sex, Training: r.Screening.Who.Training})
		if err != nil {
			return dose.Prescription{}, err
		}
		r.Estimates = []onerm.Estimate{e}
	}
	return dose.Prescribe(r)
}

var exercises = slices.Collect(exercise.Standard().All())

func drawList(t *rapid.T, name string, kind screening.Kind) screening.Checklist {
	if rapid.IntRange(0, 9).Draw(t, name+" asked") == 9 { // zero is drawn far more often than once in ten
		return screening.Checklist{}
	}
	codes := codesOf(kind)
	drawn := rapid.SliceOfNDistinct(rapid.SampledFrom(codes), 0, 3, rapid.ID[screening.Code]).Draw(t, name)
	if len(drawn) > 1 && rapid.Bool().Draw(t, name+" unsure") {
		return screening.Checklist{Asked: true, Present: drawn[1:], Unsure: drawn[:1]}
	}
	if rapid.IntRange(0, 2).Draw(t, name+" none") < 2 {
		drawn = nil // most lists are empty, or few people would get a dose
	}
	return screening.AskedFor(drawn...)
}

func drawVisit(t *rapid.T) visit {
	age := body.Age(rapid.IntRange(18, 95).Draw(t, "age"))
	setting := rapid.SampledFrom([]screening.Setting{screening.Alone, screening.WithHelper, screening.InGroup, screening.InClinic}).Draw(t, "setting")
	v := visit{
		profile: screening.Profile{
			Day: firstDay, Age: age, Sex: body.Female, Setting: setting,
			Training:   body.Training(rapid.IntRange(1, 3).Draw(t, "training")),
			Wanted:     rapid.SampledFrom([]screening.Intensity{screening.Light, screening.Moderate, screening.Vigorous}).Draw(t, "wanted"),
			Activity:   &screening.Activity{DaysPerWeek: rapid.IntRange(0, 4).Draw(t, "days"), Minutes: 40, Intensity: screening.Moderate, Months: 6},
			Diseases:   drawList(t, "diseases", screening.Disease),
			Symptoms:   drawList(t, "symptoms", screening.Symptom),
			RedFlags:   drawList(t, "red flags", screening.RedFlag),
			Conditions: drawList(t, "conditions", screening.Condition),
		},
		request: dose.Request{
			Technique: drawTechnique(t),
			Day:       firstDay,
			Exercise:  rapid.SampledFrom(exercises).Draw(t, "exercise"), Side: body.Both,
			Goal: guideline.Goal(rapid.IntRange(1, 7).Draw(t, "goal")),
			Kit:  drawKit(t),
		},
	}
	if rapid.Bool().Draw(t, "well") { // or four in five are held, and laws of doses are hardly ever tried
		well := screening.AskedFor()
		v.profile.Diseases, v.profile.Symptoms, v.profile.RedFlags, v.profile.Conditions = well, well, well, well
	}
	if rapid.Bool().Draw(t, "pressure measured") {
		systolic := rapid.IntRange(90, 200).Draw(t, "systolic")
		v.profile.BP = &screening.BloodPressure{Systolic: systolic, Diastolic: systolic - rapid.IntRange(30, 60).Draw(t, "pulse pressure")}
	}
	if v.request.Exercise.OneSided {
		v.request.Side = body.Side(rapid.IntRange(1, 3).Draw(t, "side"))
	}
	if rapid.IntRange(0, 2).Draw(t, "restricted") == 2 {
		addRestriction(t, &v)
	}
	v.drawTest(t)
	v.drawDone(t)
	return v
}

func drawTechnique(t *rapid.T) dose.Observation {
	if rapid.Bool().Draw(t, "technique seen") {
		return dose.Observation{Who: "a colleague", Day: firstDay}
	}
	return dose.Observation{}
}

func drawKit(t *rapid.T) equipment.Kit {
	kg := rapid.SliceOfNDistinct(rapid.IntRange(1, 60), 1, 8, rapid.ID[int]).Draw(t, "half kilograms")
	kit := equipment.Kit{Stacks: []equipment.Stack{{Pins: []units.Marked{{Mass: 5 * units.Kilogram}, {Mass: 10 * units.Kilogram}}}}}
	for _, m := range kg {
		kit.Dumbbells = append(kit.Dumbbells, equipment.Dumbbell{Mass: units.Marked{Mass: units.Mass(m) * units.Kilogram / 2}, Count: 2})
	}
	return kit
}

// drawDone gives an exercise with a mass some sets that were done.
func (v *visit) drawDone(t *rapid.T) {
	ex := v.request.Exercise
	if ex.Hold == body.Unloaded || ex.Hold == body.OnBand {
		return
	}
	for range rapid.IntRange(0, 2).Draw(t, "sets done") {
		s := setlog.Set{
			Day: firstDay, Exercise: ex.ID, Side: v.request.Side, Hold: ex.Hold, Reps: rapid.IntRange(1, 20).Draw(t, "done"),
			Load:   units.Mass(rapid.IntRange(1, 60).Draw(t, "load done")) * units.Kilogram / 2,
			Effort: units.Must(units.InReserve(float64(rapid.IntRange(0, 10).Draw(t, "left")))),
		}
		if ex.Hold == body.OneEachHand {
			s.Stated = body.PerHand
		}
		v.request.Done = append(v.request.Done, s)
	}
}

// drawTest gives an exercise that allows it a test set.
func (v *visit) drawTest(t *rapid.T) {
	ex := v.request.Exercise
	if ex.MovesBody || ex.Hold == body.Unloaded || ex.Measure != exercise.Repetitions || rapid.IntRange(0, 3).Draw(t, "tested") == 0 {
		return
	}
	if ex.OneSided {
		v.request.Side = body.Left
	}
	reps := rapid.IntRange(1, 9).Draw(t, "repetitions")
	v.test = &setlog.Set{
		Day: firstDay, Exercise: ex.ID, Side: v.request.Side, Hold: ex.Hold, Reps: reps,
		Load:   units.Mass(rapid.IntRange(1, 60).Draw(t, "test load")) * units.Kilogram / 2,
		Effort: units.Must(units.InReserve(float64(rapid.IntRange(0, min(3, 10-reps)).Draw(t, "reserve")))),
	}
	if ex.Hold == body.OneEachHand {
		v.test.Stated = body.PerHand
	}
}

// A worsening makes one thing worse.
type worsening struct {
	what string
	make func(t *rapid.T, v *visit)
}

// worsenings lists what can be made worse in v.
func worsenings(v visit) []worsening {
	p := v.profile
	all := []worsening{
		{"a fast pulse", func(_ *rapid.T, v *visit) { v.profile.RestingPulse = 120 }},
		{"activity not known", func(_ *rapid.T, v *visit) { v.profile.Activity = nil }},
		{"a heavy plan", func(_ *rapid.T, v *visit) { v.profile.PlannedFraction = 0.85 }},
		{"a restriction", addRestriction},
	}
	for _, l := range []struct {
		name string
		kind screening.Kind
		list func(*visit) *screening.Checklist
	}{
		{"disease", screening.Disease, func(v *visit) *screening.Checklist { return &v.profile.Diseases }},
		{"symptom", screening.Symptom, func(v *visit) *screening.Checklist { return &v.profile.Symptoms }},
		{"red flag", screening.RedFlag, func(v *visit) *screening.Checklist { return &v.profile.RedFlags }},
		{"condition", screening.Condition, func(v *visit) *screening.Checklist { return &v.profile.Conditions }},
	} {
		list := l.list(&v)
		if !list.Asked {
			continue
		}
		code := func(t *rapid.T) []screening.Code {
			free := func(c screening.Code) bool { return list.Of(c) == screening.No }
			return []screening.Code{rapid.SampledFrom(codesOf(l.kind)).Filter(free).Draw(t, "code")}
		}
		all = append(all,
			worsening{"one more " + l.name, func(t *rapid.T, v *visit) { l.list(v).Present = append(code(t), list.Present...) }},
			worsening{"unsure of a " + l.name, func(t *rapid.T, v *visit) { l.list(v).Unsure = append(code(t), list.Unsure...) }})
		if len(list.Present) == 0 { // what was present is no longer known once the list is not asked: not an order
			all = append(all, worsening{l.name + " list not asked", func(_ *rapid.T, v *visit) { *l.list(v) = screening.Checklist{} }})
		}
	}
	if p.BP != nil && p.BP.Systolic >= 120 { // low pressure that rises is not worse
		all = append(all, worsening{"higher pressure", func(t *rapid.T, v *visit) {
			v.profile.BP = &screening.BloodPressure{Systolic: p.BP.Systolic + rapid.IntRange(1, 20).Draw(t, "more"), Diastolic: p.BP.Diastolic}
		}})
	}
	if len(p.Restrictions) > 0 {
		all = append(all, worsening{"the side of a restriction not known", func(_ *rapid.T, v *visit) {
			v.profile.Restrictions = slices.Clone(v.profile.Restrictions)
			v.profile.Restrictions[0].Side = 0
		}})
	}
	if done := v.request.Done; len(done) > 0 {
		fewer := slices.Clone(done)
		fewer[0].Reps = max(1, fewer[0].Reps-1)
		unrated := slices.Clone(done)
		unrated[0].Effort = units.Effort{}
		all = append(all,
			worsening{"a set less known", func(_ *rapid.T, v *visit) { v.request.Done = done[1:] }},
			worsening{"fewer repetitions done", func(_ *rapid.T, v *visit) { v.request.Done = fewer }},
			worsening{"a reserve not noted", func(_ *rapid.T, v *visit) { v.request.Done = unrated }})
	}
	if v.request.Technique.Made() {
		all = append(all, worsening{"technique not seen", func(_ *rapid.T, v *visit) { v.request.Technique = dose.Observation{} }})
	}
	if v.request.Screening.Setting > screening.Alone {
		all = append(all, worsening{"alone", func(_ *rapid.T, v *visit) {
			v.request.Screening.Setting, v.profile.Setting = screening.Alone, screening.Alone
		}})
	}
	return append(all, testWorsenings(v)...)
}

func addRestriction(t *rapid.T, v *visit) {
	most := units.Mass(rapid.IntRange(0, 20).Draw(t, "limit")) * units.Kilogram / 2
	region := rapid.SampledFrom(slices.Collect(body.Regions())).Draw(t, "region")
	side := body.Side(rapid.IntRange(0, 3).Draw(t, "restricted side"))
	avoid := rapid.SliceOfN(rapid.SampledFrom(slices.Collect(body.EveryDemand())), 0, 2).Draw(t, "avoid")
	v.profile.Restrictions = append(slices.Clone(v.profile.Restrictions), screening.Restriction{Author: "a surgeon", Day: firstDay, Side: side, Region: region, MaxMass: &most, Avoid: body.DemandSet(avoid...)})
}

// The two ways in which a test set is worse by itself.
const (
	fewerReps   = "fewer repetitions in the test"
	lessReserve = "less in reserve in the test"
)

func testWorsenings(v visit) []worsening {
	var all []worsening
	if v.test != nil && v.test.Reps > 1 {
		all = append(all, worsening{fewerReps, func(_ *rapid.T, v *visit) {
			fewer := *v.test
			fewer.Reps--
			v.test = &fewer
		}})
	}
	if v.test != nil && v.test.Effort.Number() >= 1 {
		all = append(all, worsening{lessReserve, func(_ *rapid.T, v *visit) {
			less := *v.test
			less.Effort = units.Must(units.InReserve(v.test.Effort.Number() - 1))
			v.test = &less
		}})
	}
	return all
}

// The law: for one exercise and hold, one thing worse never raises load or
// sets, never lowers the reserve, and never gives a dose where there was none;
// with the same estimate it never raises the share either.
func TestMonotoneSafety(t *testing.T) {
	dosed := 0
	rapid.Check(t, func(t *rapid.T) {
		before := drawVisit(t)
		all := worsenings(before)
		i := rapid.IntRange(0, len(all)-1).Draw(t, "worsening")
		after, how := before, all[i].what
		all[i].make(t, &after)
		was, errBefore := before.dose()
		is, errAfter := after.dose()
		switch {
		case errAfter != nil:
			return // nothing is prescribed any more
		case errBefore != nil:
			t.Fatalf("%s gives a dose where there was none: %v", how, errBefore)
		}
		dosed++
		check := func(holds bool, what string) {
			if !holds {
				t.Fatalf("%s: %s\nbefore %v × %d, %v of 1RM, reserve %v, %+v\nafter  %v × %d, %v of 1RM, reserve %v, %+v", how, what,
					was.Load.Each(), was.Sets, was.Share, was.Reserve, was.Finding, is.Load.Each(), is.Sets, is.Share, is.Reserve, is.Finding)
			}
		}
		check(is.Load.Each() <= was.Load.Each(), "load rises")
		check(is.Sets <= was.Sets && is.BuildTo <= was.BuildTo, "sets rise")
		check(is.Reserve.Least >= was.Reserve.Least, "reserve falls")
		if how != fewerReps && how != lessReserve {
			check(is.Share <= was.Share, "share rises")
		}
		if was.Finding != nil && is.Finding != nil {
			table, err := after.request.Kit.Compile(after.request.Exercise.Hold)
			check(err == nil && heaviest(table, is) <= heaviest(table, was), "steps lead to more")
			check(ceiling(*is.Finding) <= ceiling(*was.Finding), "ceiling rises")
		}
	})
	if dosed == 0 {
		t.Error("no visit had a dose both before and after: the law was not tried")
	}
}

func ceiling(f dose.Search) units.Mass {
	if f.Ceiling == 0 {
		return units.MaxMass
	}
	return f.Ceiling
}
