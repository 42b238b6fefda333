package screening_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// unsure makes a person unsure of codes on the list that holds them.
func unsure(codes ...screening.Code) func(*screening.Profile) {
	return func(p *screening.Profile) {
		for _, code := range codes {
			list := listOf(p, code)
			list.Unsure = append(list.Unsure, code)
		}
	}
}

// made is somebody well of whom some things are so.
func made(changes ...func(*screening.Profile)) screening.Profile {
	p := well()
	p.Answers = map[screening.Code]screening.Answer{}
	for _, change := range changes {
		change(&p)
	}
	return p
}

// TestLookSettlesIt holds that what no published rule asks about, and a look settles,
// holds nobody while it is not known: no looser than no, no stricter than yes, in
// every setting, with a clearance and without.
func TestLookSettlesIt(t *testing.T) {
	for _, code := range []screening.Code{"total_knee_replacement", "total_hip_replacement", "vertebral_fracture", "osteoporosis_with_vertebral_fracture"} {
		if got := assess(t, made(has(code))).Rules.Strictest(); got != screening.Silent {
			t.Errorf("%s: a published rule speaks of it: %v", code, got)
		}
		for s := screening.Alone; s <= screening.InClinic; s++ {
			for _, cleared := range []bool{false, true} {
				for _, active := range []bool{false, true} {
					p, q, r := made(), made(unsure(code)), made(has(code))
					for _, one := range []*screening.Profile{&p, &q, &r} {
						one.Setting = s
						if active {
							one.Activity = busy()
						}
						if cleared {
							one.Clearances = []screening.Clearance{clearance(code)}
						}
					}
					no, open, yes := assess(t, p), assess(t, q), assess(t, r)
					tighter(t, string(code)+" not known", 0, no, open)
					tighter(t, string(code)+" known", 0, open, yes)
					if open.Route != screening.PhysioLooks || open.Meanwhile != screening.WithinLimits || !misses(open, code) {
						t.Errorf("%s not known: %v, %v, missing %v", code, open.Route, open.Meanwhile, open.Missing)
					}
					if got := open.Findings[0].Exit; got.Who != screening.ThePhysio || got.With != screening.ALook || got.Ask != code {
						t.Errorf("%s not known: the way out is %v", code, got)
					}
				}
			}
		}
	}
	knee, spine := assess(t, made(unsure("total_knee_replacement"))).Limits, assess(t, made(unsure("vertebral_fracture"))).Limits
	if !knee.LowImpact || !spine.LowImpact || !spine.TechniqueFirst || spine.LeastCount != 8 || !spine.Avoid.Has(body.LoadedSpinalFlex) {
		t.Errorf("limits until then: %+v, %+v", knee, spine)
	}
}

// inRoom is what a published rule holds who is known to have it, and a look in the room
// settles.
var inRoom = []screening.Code{"palpitations_or_tachycardia", "known_heart_murmur", "unusual_fatigue_or_dyspnoea_usual_activity", "ankle_oedema", "intermittent_claudication",
	"low_functional_capacity", "severe_cognitive_impairment", "copd_uncontrolled", "unstable_or_injured_joint", "acute_joint_inflammation", "pain_made_worse_by_training",
	"end_stage_illness", "shoulder_replacement"}

// TestSettledInTheRoom holds that such a thing is looked at while it is not known, no
// looser than no and no stricter than yes, whatever was answered of it, with every
// clearance and its place; that no rule's own answer counts it; and that all else that
// a rule asks about, alarm signs and absolute entries first, holds as its yes does.
func TestSettledInTheRoom(t *testing.T) {
	finer := []screening.Code{"palpitations_new", "heart_murmur_new", "fatigue_new", "ankle_oedema_new", "claudication_new"}
	for _, code := range inRoom {
		for effort := screening.Intensity(0); effort <= screening.Vigorous; effort++ {
			for answer := range screening.Answers() {
				for _, place := range []body.Region{0, body.Knee} {
					p, q, r := made(), made(unsure(code)), made(has(code))
					for _, one := range []*screening.Profile{&p, &q, &r} {
						says(answer, finer)(one)
						one.Activity, one.Wanted = busy(), screening.Vigorous
						if effort > screening.Idle {
							c := clearance(code)
							c.Intensity = effort
							one.Clearances = []screening.Clearance{c}
						}
						if place != 0 && slices.Contains(sitedCodes, code) {
							at(code, place)(one)
						}
					}
					no, open, yes := assess(t, p), assess(t, q), assess(t, r)
					tighter(t, string(code)+" not known", int(effort), no, open)
					tighter(t, string(code)+" known", int(effort), open, yes)
					expect(t, open, screening.PhysioLooks, screening.WithinLimits)
					want := screening.Light
					if slices.Contains(symptomCodes, code) {
						want = screening.Moderate // as ACSM 2015 lets who is not active begin
					}
					if effort == 0 && place == 0 && open.Limits.MaxIntensity != want {
						t.Errorf("%s: effort up to %v, want %v", code, open.Limits.MaxIntensity, want)
					}
					if place == 0 && (open.Limits.MaxIntensity == 0 || open.Limits.MaxIntensity > max(effort, want)) {
						t.Errorf("%s, agreed up to %v: %v", code, effort, open.Limits.MaxIntensity)
					}
					if got := open.Findings[0].Exit; got.Who != screening.ThePhysio || got.With != screening.ALook || got.Ask != code || !misses(open, code) {
						t.Errorf("%s: the way out is %v, missing %v", code, got, open.Missing)
					}
					if open.Rules.Strictest() != no.Rules.Strictest() {
						t.Errorf("%s: a rule counts what is not known", code)
					}
				}
			}
		}
	}
	held := 0
	for term := range screening.Codes() {
		if term.Kind > screening.Condition || slices.Contains(inRoom, term.Code) || term.Code == "uncontrolled_hypertension" {
			continue
		}
		yes := assess(t, made(has(term.Code)))
		if yes.Rules.Strictest() == screening.Silent || yes.Meanwhile == screening.WithinLimits {
			continue
		}
		held++
		if open := assess(t, made(unsure(term.Code))); open.Meanwhile != yes.Meanwhile {
			t.Errorf("%s: %v not known, %v present", term.Code, open.Meanwhile, yes.Meanwhile)
		}
	}
	if held < 45 {
		t.Errorf("%d of them", held)
	}
}

// TestUntilLookedAt holds what else binds until the look: some in reserve, somebody there
// for a memory that may fail; and that an agreement for a disease counts all the same.
func TestUntilLookedAt(t *testing.T) {
	memory, joint := assess(t, made(unsure("severe_cognitive_impairment"))).Limits, assess(t, made(unsure("unstable_or_injured_joint"))).Limits
	if memory.LeastSetting != screening.WithHelper || memory.MinReserve != 4 || joint.MinReserve != 4 || joint.LeastSetting != 0 {
		t.Errorf("%+v, %+v", memory, joint)
	}
	shoulder := assess(t, made(unsure("shoulder_replacement"))).Limits // which nobody loads before the surgeon said how far
	if !shoulder.Avoid.Has(body.ShoulderResisted) || !shoulder.Avoid.Has(body.Overhead) || shoulder.MaxIntensity != screening.Light {
		t.Errorf("%+v", shoulder)
	}
	renal := func(p *screening.Profile) { p.Diseases = screening.AskedFor("renal") }
	expect(t, assess(t, made(renal, agreed("renal"), unsure("ankle_oedema"))), screening.PhysioLooks, screening.WithinLimits)
}

// TestReadingSaysIt holds that who is not sure whether a pressure is under control is
// held by the reading: not at all below 160/100 mmHg (Williams 2007), and as the
// absolute entry without one.
func TestReadingSaysIt(t *testing.T) {
	const code = "uncontrolled_hypertension"
	for systolic, want := range map[int]screening.Meanwhile{150: screening.WithinLimits, 160: screening.WithinLimits, 161: screening.LightSupervised, 181: screening.Nothing} {
		if o := assess(t, made(unsure(code), reads(systolic, 85))); o.Meanwhile != want || !misses(o, code) {
			t.Errorf("%d: %v, missing %v", systolic, o.Meanwhile, o.Missing)
		}
	}
	expect(t, assess(t, made(unsure(code), unmeasured)), screening.AskFirst, screening.Nothing)
}

// TestNoSignIsLookedAtInHeartFailure holds that of who has heart failure no sign that is
// not known is left to a look, whatever a doctor agreed to.
func TestNoSignIsLookedAtInHeartFailure(t *testing.T) {
	for _, code := range []screening.Code{"ankle_oedema", "unusual_fatigue_or_dyspnoea_usual_activity", "palpitations_or_tachycardia"} {
		expect(t, assess(t, made(unsure(code))), screening.PhysioLooks, screening.WithinLimits)
		expect(t, assess(t, made(unsure(code), has("heart_failure"), agreed("heart_failure"))), screening.AskFirst, screening.Nothing)
	}
}

// TestLateLow holds that a low of glucose hours after training holds the sessions to what
// a low asks for, with the meter before each, and ends the day on which it is first told.
func TestLateLow(t *testing.T) {
	for _, tell := range []func(*screening.Profile){has("late_hypoglycaemia"), unsure("late_hypoglycaemia")} {
		o := assess(t, made(tell))
		expect(t, o, screening.AskFirst, screening.WithinLimits)
		if l := o.Limits; l.LeastSetting < screening.WithHelper || l.MaxIntensity != screening.Moderate || l.Lighten.FewerSets == 0 || !slices.Contains(o.EachDay, "glucose") {
			t.Errorf("%+v, each day %v", l, o.EachDay)
		}
		c := quiet()
		c.InsulinOrSecretagogue = screening.Yes
		if day := mustToday(t, c, o); day.Meanwhile != screening.Nothing || !misses(day, "glucose") {
			t.Errorf("without a reading: %v", day.Meanwhile)
		}
	}
	c := quiet()
	c.InsulinOrSecretagogue = screening.No // a slip: a low that came late was told
	told := assess(t, made(has("late_hypoglycaemia")))
	if day := mustToday(t, c, told); day.Meanwhile != screening.Nothing {
		t.Errorf("the day of the assessment that heard of it: %v", day.Meanwhile)
	}
	if c.Day++; mustToday(t, c, told).Meanwhile == screening.Nothing {
		t.Error("nothing on the next day")
	}
	c = quiet()
	c.New = screening.AskedFor("late_hypoglycaemia")
	if day := mustToday(t, c, assess(t, made())); day.Meanwhile != screening.Nothing {
		t.Errorf("told today: %v", day.Meanwhile)
	}
}

// TestQuestionNeedsNoClearance holds that what only a question leaves open needs no
// clearance of its own: who has severe disease of the eye, and agreement for it, is not
// better off than who is not sure of having it.
func TestQuestionNeedsNoClearance(t *testing.T) {
	const eye = "diabetic_retinopathy_severe"
	for effort := range screening.Intensities() {
		for _, active := range []bool{false, true} {
			p, q := made(unsure(eye), agreed(eye)), made(has(eye), agreed(eye))
			for _, one := range []*screening.Profile{&p, &q} {
				one.Wanted = effort
				if active {
					one.Activity = busy()
				}
			}
			if effort == screening.Idle {
				continue
			}
			tighter(t, "unsure to present", int(effort), assess(t, p), assess(t, q))
		}
	}
}

// TestShapeAlone holds that a new shape of the spine, or severe pain over it, by itself is
// looked at, since one sign says little (Finucane 2020), and holds with anything that
// breaks bones.
func TestShapeAlone(t *testing.T) {
	const shape, pain = "spinal_deformity", "severe_midline_back_pain"
	fell := func(p *screening.Profile) {
		p.Falls = &screening.FallsScreen{Fell: screening.Yes, Unsteady: screening.No, Afraid: screening.No}
	}
	wrist := func(p *screening.Profile) {
		p.Events = append(p.Events, screening.Event{Code: "fracture", Day: visit - 40, Region: body.WristHand})
	}
	for _, sign := range []screening.Code{shape, pain} {
		alone := assess(t, made(has(sign)))
		expect(t, alone, screening.PhysioLooks, screening.WithinLimits)
		if o := assess(t, made(unsure(sign))); o.Meanwhile != screening.WithinLimits || !alone.Limits.AsTightAs(o.Limits) {
			t.Errorf("%s not known: %v", sign, o.Meanwhile)
		}
		for _, d := range []body.Demand{body.SpinalCompression, body.LoadedSpinalFlex, body.SpinalTwist, body.PickUpFromFloor, body.Overhead, body.Impact, body.FastMovement} {
			if !alone.Limits.Avoid.Has(d) {
				t.Errorf("%s: %v is not avoided", sign, d)
			}
		}
		for name, beside := range map[string]func(*screening.Profile){
			"osteoporosis": has("osteoporosis"), "not known": unsure("osteoporosis"), "an old break": has("vertebral_fracture"), "a broken hip": has("hip_fracture"),
			"a fracture": has("recent_fracture"), "a broken wrist": wrist, "a fall": fell, "a fall told as an event": ago("fall", 40),
			"a cancer": has("cancer_history"), "a weakened immune system": has("weakened_immune_system"),
			"bone metastases, agreed": func(p *screening.Profile) { has("bone_metastases")(p); agreed("bone_metastases")(p) },
		} {
			if o := assess(t, made(has(sign), beside)); o.Route < screening.AskFirst || o.Meanwhile < screening.UnloadedPractice || !o.Limits.AsTightAs(alone.Limits) {
				t.Errorf("%s, %s: %v, %v", sign, name, o.Route, o.Meanwhile)
			}
		}
	}
	expect(t, assess(t, made(has(shape, pain))), screening.SameDay, screening.Nothing)
}

// TestDizzyWithoutFaint holds that new spells without a faint wait for a doctor, as
// ACSM 2015 asks, and that only a faint, or one not ruled out, is seen the same day.
func TestDizzyWithoutFaint(t *testing.T) {
	const dizzy = "dizziness_or_syncope"
	for _, active := range []bool{false, true} {
		for _, is := range []screening.Answer{screening.Yes, screening.Unknown} {
			p := made(has(dizzy), no("dizziness_faint", "dizziness_on_standing", "dizziness_spinning"), says(is, []screening.Code{"dizziness_new"}))
			if active {
				p.Activity = busy()
			}
			o := assess(t, p)
			expect(t, o, screening.AskFirst, screening.Nothing)
			i := slices.IndexFunc(o.Findings, func(f screening.Finding) bool { return f.Code == dizzy })
			if f := o.Findings[i]; f.Variant != screening.Lesser || f.Meanwhile != screening.Nothing || strings.Contains(screening.Words().Client(f.Reason), "today;") {
				t.Errorf("%v, %q", f.Variant, screening.Words().Client(f.Reason))
			}
			for _, faint := range []screening.Answer{screening.Yes, screening.Unknown} {
				p.Answers["dizziness_faint"] = faint
				expect(t, assess(t, p), screening.SameDay, screening.Nothing)
			}
		}
	}
}

// TestOldPainWithCancer holds that pain of years and the same is asked about with any
// cancer and stops with none, and that new pain, or any other sign, stops.
func TestOldPainWithCancer(t *testing.T) {
	for _, pain := range []screening.Code{"back_pain_not_better_at_a_month", "pain_in_many_places"} {
		for answer, want := range map[screening.Answer]screening.Meanwhile{screening.No: screening.WithinLimits, screening.Unknown: screening.UnloadedPractice, screening.Yes: screening.UnloadedPractice} {
			followed := says(answer, []screening.Code{"cancer_active"})
			o := assess(t, made(has("cancer_history", pain), no("chronic_pain_changed"), followed))
			expect(t, o, screening.AskFirst, want)
			if !o.Limits.Avoid.Has(body.LoadedSpinalFlex) || !o.Limits.Avoid.Has(body.SpinalTwist) || !o.Limits.Avoid.Has(body.PickUpFromFloor) {
				t.Errorf("%s: the spine is not spared: %v", pain, o.Limits.Avoid)
			}
			if o.Rules.RedFlags != screening.UrgentReferral { // the rule's own answer, which stands beside
				t.Errorf("%s: the rule says %v", pain, o.Rules.RedFlags)
			}
			for _, changed := range []screening.Answer{screening.Yes, screening.Unknown} {
				expect(t, assess(t, made(has("cancer_history", pain), followed, says(changed, []screening.Code{"chronic_pain_changed"}))), screening.SameDay, screening.Nothing)
			}
			more := assess(t, made(has("cancer_history", pain, "unexplained_weight_loss"), no("chronic_pain_changed"), followed))
			expect(t, more, screening.SameDay, screening.Nothing)
			tighter(t, "a further sign", 0, o, more)
		}
	}
	perhaps := assess(t, made(has("pain_in_many_places", "back_pain_not_better_at_a_month"), unsure("cancer_history"), no("chronic_pain_changed")))
	expect(t, perhaps, screening.AskFirst, screening.UnloadedPractice)
}

// TestOpenBranchAsks holds that who is held by the preparticipation rule for want of an answer
// is asked what may free them, and not what a look in the room settles.
func TestOpenBranchAsks(t *testing.T) {
	for ask, open := range map[screening.Code]func(*screening.Profile){
		"symptoms":                       func(p *screening.Profile) { p.Symptoms = screening.Checklist{} },
		"diseases":                       func(p *screening.Profile) { p.Diseases = screening.Checklist{} },
		"dyspnoea_rest_or_mild_exertion": unsure("palpitations_or_tachycardia", "dyspnoea_rest_or_mild_exertion"),
		"renal":                          unsure("renal"),
		"heart_failure":                  unsure("heart_failure"),
	} {
		o := assess(t, made(open))
		i := slices.IndexFunc(o.Findings, func(f screening.Finding) bool { return f.Branch() != 0 })
		if f := o.Findings[i]; f.Known || f.Exit.Who != screening.ThePerson || f.Exit.Ask != ask {
			t.Errorf("%s is open: %+v", ask, f.Exit)
		}
	}
}

// TestEachDayOnce holds that no reading is asked for twice, whatever asks for it.
func TestEachDayOnce(t *testing.T) {
	p := made(has("diabetes_t2", "late_hypoglycaemia", "heart_failure", "lung_disease", "copd_uncontrolled"), says(screening.Yes, []screening.Code{"insulin_or_secretagogue"}))
	p.HomeReadings = []screening.Code{"oxygen_saturation", "blood_pressure"}
	each := assess(t, p).EachDay
	if slices.Sort(each); len(each) < 4 || len(slices.Compact(slices.Clone(each))) < len(each) {
		t.Errorf("%v", each)
	}
}
