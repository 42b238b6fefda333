package screening_test

import (
	"cmp"
	"fmt"
	"slices"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// listOf is the list that holds a code.
func listOf(p *screening.Profile, code screening.Code) *screening.Checklist {
	term, _ := screening.LookUp(code)
	return map[screening.Kind]*screening.Checklist{screening.Disease: &p.Diseases, screening.Symptom: &p.Symptoms, screening.RedFlag: &p.RedFlags, screening.Condition: &p.Conditions}[term.Kind]
}

// has gives a person codes on the list that holds them.
func has(codes ...screening.Code) func(*screening.Profile) {
	return func(p *screening.Profile) {
		for _, code := range codes {
			list := listOf(p, code)
			list.Present = append(list.Present, code)
		}
	}
}

func no(questions ...screening.Code) func(*screening.Profile) { return says(screening.No, questions) }

func yes(questions ...screening.Code) func(*screening.Profile) {
	return says(screening.Yes, questions)
}

func says(a screening.Answer, questions []screening.Code) func(*screening.Profile) {
	return func(p *screening.Profile) {
		for _, q := range questions {
			p.Answers[q] = a
		}
	}
}

func ago(code screening.Code, days units.Day) func(*screening.Profile) {
	return func(p *screening.Profile) {
		p.Events = append(p.Events, screening.Event{Code: code, Day: visit - days})
	}
}

func at(code screening.Code, r body.Region) func(*screening.Profile) {
	return func(p *screening.Profile) { p.Sites = append(p.Sites, screening.Site{Code: code, Region: r}) }
}

func reads(systolic, diastolic int) func(*screening.Profile) {
	return func(p *screening.Profile) {
		p.BP, p.BPAgain = pressure(systolic, diastolic), pressure(systolic, diastolic)
	}
}

func agreed(scope ...screening.Code) func(*screening.Profile) {
	return func(p *screening.Profile) { p.Clearances = append(p.Clearances, clearance(scope...)) }
}

func unmeasured(p *screening.Profile) { p.BP, p.RestingPulse = nil, 0 }

// everyday is a person over 50 of whom everything else was asked, measured and
// found well; the case is invented. Outcomes are route and what may go on; active is
// empty where it is as for the inactive. Verdict is the strictest published rule.
type everyday struct {
	who              string
	is               []func(*screening.Profile)
	inactive, active string
	verdict          [2]screening.Strictness // inactive, active
	exit             string                  // of what would free most, inactive; "" nobody is held or asked
	why              string
}

type and = []func(*screening.Profile)

var everydays = []everyday{
	{who: "well at 66", inactive: "none, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "nothing was found"},
	{who: "treated hypertension, 134/82", is: and{has("hypertension_treated"), reads(134, 82)}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "ACSM counts no risk factor; ADA encourages resistance without breath-holding"},
	{who: "treated hypertension, 148/88", is: and{has("hypertension_treated"), reads(148, 88)}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "below 160/100 no list asks anything"},
	{who: "treated hypertension, 165/92 twice", is: and{has("hypertension_treated"), reads(165, 92)}, inactive: "ask first, light and supervised", verdict: [2]screening.Strictness{screening.DecideFirst, screening.DecideFirst}, exit: "the doctor, with a clearance",
		why: "AHA: above 160/100 a doctor decides first; light meanwhile"},
	{who: "the same, the doctor agreed", is: and{has("hypertension_treated"), reads(165, 92), agreed("hypertension_gt_160_100")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.DecideFirst, screening.DecideFirst},
		why: "the list lets the doctor decide, and the doctor has"},
	{who: "treated, 174/92 twice, agreed for the treated pressure", is: and{has("hypertension_treated"), reads(174, 92), agreed("hypertension_treated", "hypertension_gt_160_100")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.DecideFirst, screening.DecideFirst},
		why: "Willey speaks of the untreated; AHA lets the doctor decide"},
	{who: "treated hypertension, pressure not measured", is: and{has("hypertension_treated"), unmeasured}, inactive: "ask first, light and supervised", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the person, with a reading",
		why: "no looser than 160/100 gives; a cuff settles it"},
	{who: "not measured, nothing else", is: and{unmeasured}, inactive: "none, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "no rule needs it before the day; it is named as missing"},
	{who: "osteoarthritis of the knee", is: and{has("osteoarthritis_knee")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "EULAR: the general guidance fits; NICE: exercise for all"},
	{who: "osteoarthritis of the hand", is: and{has("osteoarthritis_hand")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "few harms in the trials; no limit of grip found"},
	{who: "cancer long past", is: and{has("cancer_history"), no("cancer_active")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "IFOMPT: one sign says little"},
	{who: "cancer long past and back pain of years", is: and{has("cancer_history", "back_pain_not_better_at_a_month"), no("cancer_active", "chronic_pain_changed")}, inactive: "ask first, within limits", verdict: [2]screening.Strictness{screening.ReferUrgent, screening.ReferUrgent}, exit: "the doctor, with being settled",
		why: "the pair asks and does not stop; the published flags call it an urgent referral, and the file says so"},
	{who: "cancer followed and back pain of ten years", is: and{has("cancer_history", "back_pain_not_better_at_a_month"), yes("cancer_active"), no("chronic_pain_changed")}, inactive: "ask first, unloaded practice", verdict: [2]screening.Strictness{screening.ReferUrgent, screening.ReferUrgent}, exit: "the doctor, with being settled",
		why: "pain of ten years and the same is no sign of a new illness: who looks after the cancer is asked, and movements are practised (edition 3; it stopped before)"},
	{who: "back newly out of its shape, nothing else", is: and{has("spinal_deformity")}, inactive: "physiotherapist looks, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the physiotherapist, with a look",
		why: "IFOMPT: one sign says little; nothing presses on the spine until it is looked at (edition 3; it held before)"},
	{who: "the same with osteoporosis", is: and{has("spinal_deformity", "osteoporosis")}, inactive: "ask first, unloaded practice", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the doctor, with being settled",
		why: "IFOMPT: the setting counts; with brittle bones it may be a break"},
	{who: "not sure whether a knee was replaced", is: and{unsure("total_knee_replacement")}, inactive: "physiotherapist looks, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the physiotherapist, with a look",
		why: "no published rule asks, and a scar tells (edition 3; it held before)"},
	{who: "not sure whether a bone of the spine ever broke", is: and{unsure("vertebral_fracture")}, inactive: "physiotherapist looks, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the physiotherapist, with a look",
		why: "as in osteoporosis with the spine not known: the height is measured (edition 3; it held before)"},
	{who: "not sure whether the ankles swell", is: and{unsure("ankle_oedema")}, inactive: "physiotherapist looks, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the physiotherapist, with a look",
		why: "ACSM counts a sign that is there; a thumb on the shin settles it, and effort stays at most moderate until then (edition 4; it stopped before)"},
	{who: "not sure whether breath fails lying flat", is: and{unsure("orthopnoea_or_pnd")}, inactive: "ask first, nothing", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the person, with an answer",
		why: "a sign of a failing heart that no look in the room rules out"},
	{who: "not sure whether the pressure is under control, 138/82", is: and{unsure("uncontrolled_hypertension"), reads(138, 82)}, inactive: "none, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "the reading says it: AHA asks above 160/100 (edition 4; it held before)"},
	{who: "bad pain over the spine, nothing beside", is: and{has("severe_midline_back_pain")}, inactive: "physiotherapist looks, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the physiotherapist, with a look",
		why: "IFOMPT: one sign says little; looked at, and nothing presses on the spine until then (edition 4; it held before)"},
	{who: "low sugar at night, insulin", is: and{has("late_hypoglycaemia", "diabetes_t2"), yes("insulin_or_secretagogue")}, inactive: "ask first, unloaded practice", active: "ask first, within limits", verdict: [2]screening.Strictness{screening.AskAny, screening.DecideFirst}, exit: "the doctor, with a clearance",
		why: "Turner stops the day after a low that needed help, and no source read here more: the team is asked, the meter read before each session, somebody near (edition 4; it stopped before)"},
	{who: "cancer followed and back pain for two months", is: and{has("cancer_history", "back_pain_not_better_at_a_month"), yes("cancer_active", "chronic_pain_changed")}, inactive: "same day, nothing", verdict: [2]screening.Strictness{screening.ReferUrgent, screening.ReferUrgent}, exit: "the doctor, with being settled",
		why: "IFOMPT: signs together; seen the same day"},
	{who: "low back pain of ten years", is: and{has("back_pain_not_better_at_a_month"), no("chronic_pain_changed")}, inactive: "physiotherapist looks, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the physiotherapist, with a look",
		why: "one sign says little; lifting is among the best kinds; the physiotherapist looks"},
	{who: "pain in many places and back pain, of years", is: and{has("back_pain_not_better_at_a_month", "pain_in_many_places"), no("chronic_pain_changed")}, inactive: "physiotherapist looks, within limits", verdict: [2]screening.Strictness{screening.ReferUrgent, screening.ReferUrgent}, exit: "the physiotherapist, with a look",
		why: "two of the commonest complaints: looked at in the room; flags stay visible"},
	{who: "cataract operation last year", is: and{has("recent_eye_operation"), no("eye_operation_not_cataract"), ago("recent_eye_operation", 365)}, inactive: "none, within limits", verdict: [2]screening.Strictness{screening.ListedWider, screening.ListedWider},
		why: "nothing is left after four weeks; Willey's undated entry stays visible"},
	{who: "cataract operation last month", is: and{has("recent_eye_operation"), no("eye_operation_not_cataract"), ago("recent_eye_operation", 30)}, inactive: "none, within limits", verdict: [2]screening.Strictness{screening.ListedWider, screening.ListedWider},
		why: "RCS: normal exercise from day 7 to 10; free from four weeks on"},
	{who: "cataract operation three weeks ago", is: and{has("recent_eye_operation"), no("eye_operation_not_cataract"), ago("recent_eye_operation", 21)}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.ListedWider, screening.ListedWider},
		why: "no straining and no low head for two weeks more"},
	{who: "cataract operation last week", is: and{has("recent_eye_operation"), no("eye_operation_not_cataract"), ago("recent_eye_operation", 7)}, inactive: "ask first, nothing", verdict: [2]screening.Strictness{screening.ListedWider, screening.ListedWider}, exit: "the surgeon, with a clearance",
		why: "under two weeks the eye clinic is asked; it frees itself in a week"},
	{who: "eye operation, which and when not known", is: and{has("recent_eye_operation")}, inactive: "ask first, nothing", verdict: [2]screening.Strictness{screening.ListedWider, screening.ListedWider}, exit: "the person, with an answer",
		why: "the more careful reading: one answer settles it"},
	{who: "dizzy: fainted last week", is: and{has("dizziness_or_syncope"), yes("dizziness_faint", "dizziness_new"), no("dizziness_on_standing", "dizziness_spinning")}, inactive: "same day, nothing", verdict: [2]screening.Strictness{screening.AskAny, screening.StopOrNotNow}, exit: "the doctor, with being settled",
		why: "a blackout is seen the same day, and no clearance lifts it"},
	{who: "dizzy on standing, known", is: and{has("dizziness_or_syncope"), no("dizziness_faint", "dizziness_new", "dizziness_spinning"), yes("dizziness_on_standing")}, inactive: "physiotherapist looks, within limits", verdict: [2]screening.Strictness{screening.AskAny, screening.StopOrNotNow}, exit: "the physiotherapist, with a look",
		why: "seated work stays open; pressure lying and standing is measured; ACSM's sign stays visible"},
	{who: "spinning in bed, known", is: and{has("dizziness_or_syncope"), no("dizziness_faint", "dizziness_new", "dizziness_on_standing"), yes("dizziness_spinning")}, inactive: "physiotherapist looks, within limits", verdict: [2]screening.Strictness{screening.AskAny, screening.StopOrNotNow}, exit: "the physiotherapist, with a look",
		why: "tested and treated in the room; no lying flat and no low head until then"},
	{who: "dizzy years ago, looked at", is: and{has("dizziness_or_syncope"), no("dizziness_faint", "dizziness_new", "dizziness_on_standing", "dizziness_spinning")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.AskAny, screening.StopOrNotNow},
		why: "no change and looked at: training goes on"},
	{who: "dizzy, not asked further", is: and{has("dizziness_or_syncope")}, inactive: "same day, nothing", verdict: [2]screening.Strictness{screening.AskAny, screening.StopOrNotNow}, exit: "the person, with an answer",
		why: "older records read as the graver kind"},
	{who: "dizzy and new, the doctor agreed", is: and{has("dizziness_or_syncope"), no("dizziness_faint", "dizziness_on_standing", "dizziness_spinning"), yes("dizziness_new"), agreed("dizziness_or_syncope")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.AskAny, screening.StopOrNotNow},
		why: "ACSM: with a clearance the way back"},
	{who: "dizzy and new, no faint, no doctor asked", is: and{has("dizziness_or_syncope"), no("dizziness_faint", "dizziness_on_standing", "dizziness_spinning"), yes("dizziness_new")}, inactive: "ask first, nothing", verdict: [2]screening.Strictness{screening.AskAny, screening.StopOrNotNow}, exit: "the doctor, with a clearance",
		why: "ACSM: a clearance first, so nothing goes on; without a faint it is not seen the same day (edition 3), as NICE NG127 finds such spells unlikely to be serious"},
	{who: "sudden lasting spinning with deafness", is: and{has("spinning_with_new_signs")}, inactive: "emergency, nothing", verdict: [2]screening.Strictness{screening.ReferNow, screening.ReferNow}, exit: "the emergency services, with being settled",
		why: "NICE NG127: at once to hospital"},
	{who: "murmur, looked at", is: and{has("known_heart_murmur"), no("heart_murmur_new")}, inactive: "ask first, light and supervised", verdict: [2]screening.Strictness{screening.AskAny, screening.StopOrNotNow}, exit: "the doctor, with a clearance",
		why: "ACSM asks for clearance; light and beside the person while the letter is out"},
	{who: "ankles newly swollen", is: and{has("ankle_oedema"), yes("ankle_oedema_new")}, inactive: "ask first, nothing", verdict: [2]screening.Strictness{screening.AskAny, screening.StopOrNotNow}, exit: "the doctor, with a clearance",
		why: "ACSM: a sign; clearance before any exercise"},
	{who: "pacemaker of five years", is: and{has("pacemaker"), ago("pacemaker", 1800)}, inactive: "ask first, unloaded practice", active: "ask first, within limits", verdict: [2]screening.Strictness{screening.DecideFirst, screening.DecideFirst}, exit: "the doctor, with a clearance",
		why: "AHA: relative, so the clinic is asked; the wound has healed. Inactive: known heart disease from memory"},
	{who: "pacemaker of four weeks", is: and{has("pacemaker"), ago("pacemaker", 28)}, inactive: "ask first, unloaded practice", active: "ask first, light and supervised", verdict: [2]screening.Strictness{screening.DecideFirst, screening.DecideFirst}, exit: "the doctor, with a clearance",
		why: "the arms rest while the wound heals; legs go on beside somebody"},
	{who: "anticoagulant", is: and{has("anticoagulant")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "no limit of load was found"},
	{who: "hip of one year", is: and{has("total_hip_replacement"), ago("total_hip_replacement", 370), no("replacement_limited")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "no limit of load was found; impact stays low"},
	{who: "hip of ten years, surgeon not asked", is: and{has("total_hip_replacement"), ago("total_hip_replacement", 3650)}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "not asked about every year"},
	{who: "hip of five months", is: and{has("total_hip_replacement"), ago("total_hip_replacement", 150)}, inactive: "physiotherapist looks, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the physiotherapist, with a look",
		why: "after the surgeon's time the physiotherapist looks"},
	{who: "type 2 diabetes, tablets", is: and{has("diabetes_t2")}, inactive: "ask first, unloaded practice", active: "tell, within limits", verdict: [2]screening.Strictness{screening.AskAny, screening.DecideFirst}, exit: "the doctor, with a clearance",
		why: "active: ACSM A2 and ADA ask nothing, AHA 2007 stays visible; inactive: ACSM N2"},
	{who: "type 2 diabetes, insulin", is: and{has("diabetes_t2"), yes("insulin_or_secretagogue")}, inactive: "ask first, unloaded practice", active: "tell, within limits", verdict: [2]screening.Strictness{screening.AskAny, screening.DecideFirst}, exit: "the doctor, with a clearance",
		why: "as with tablets; lows are guarded against by limits"},
	{who: "one fall", is: and{func(p *screening.Profile) {
		p.Falls = &screening.FallsScreen{Fell: screening.Yes, Unsteady: screening.No, Afraid: screening.No}
	}}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "CDC: a positive screen leads to balance and strength work"},
	{who: "weak hearing", is: and{has("hard_of_hearing")}, inactive: "none, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "nothing is limited"},
	{who: "body weight, and a doctor called the risk of heart disease high", is: and{has("high_weight", "major_chd_risk_factors")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.DecideFirst, screening.DecideFirst},
		why: "ACSM 2015 dropped risk factors; AHA 2007 stays visible"},
	{who: "atrial fibrillation or a stent, known", is: and{has("cardiac")}, inactive: "ask first, unloaded practice", active: "tell, within limits", verdict: [2]screening.Strictness{screening.AskAny, screening.Silent}, exit: "the doctor, with a clearance",
		why: "ACSM N2 and A2"},
	{who: "heart attack eight years ago", is: and{has("after_mi_or_stroke"), ago("heart_attack", 2900)}, inactive: "ask first, unloaded practice", active: "tell, within limits", verdict: [2]screening.Strictness{screening.AskAny, screening.Silent}, exit: "the doctor, with a clearance",
		why: "active: ACSM A2, moderate effort goes on; inactive: N2"},
	{who: "osteoporosis, spine never looked at", is: and{has("osteoporosis")}, inactive: "physiotherapist looks, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the physiotherapist, with a look",
		why: "every rule is silent and the guidelines ask for strength work: spine limits, no low counts, height measured"},
	{who: "hip fracture of six years", is: and{has("hip_fracture"), ago("hip_fracture", 2200)}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "long past, it holds nobody"},
	{who: "shoulder replaced three years ago", is: and{has("shoulder_replacement"), ago("shoulder_replacement", 1100), no("restriction")}, inactive: "ask first, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent}, exit: "the surgeon, with a clearance",
		why: "always the surgeon's own figure; the rest trains"},
	{who: "a knee that training makes worse", is: and{has("pain_made_worse_by_training"), at("pain_made_worse_by_training", body.Knee)}, inactive: "physiotherapist looks, within limits", verdict: [2]screening.Strictness{screening.ListedWider, screening.ListedWider}, exit: "the physiotherapist, with a look",
		why: "Willey bars the region, not the person"},
	{who: "quiet arthritis and stable lymphoedema", is: and{has("arthritis_quiet", "lymphoedema_stable")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.Silent, screening.Silent},
		why: "training stirs up neither"},
	{who: "claudication, looked at", is: and{has("intermittent_claudication"), no("claudication_new")}, inactive: "tell, within limits", verdict: [2]screening.Strictness{screening.AskAny, screening.StopOrNotNow},
		why: "AHA/ACC: walking to the pain is the treatment; ACSM's sign stays visible"},
}

func lived(e everyday, active bool, s screening.Setting) screening.Profile {
	p := well()
	p.Age, p.Setting, p.Wanted, p.Answers = 66, s, screening.Moderate, map[screening.Code]screening.Answer{"floor_and_up": screening.Yes, "insulin_or_secretagogue": screening.No, "retinopathy_moderate_or_worse": screening.No}
	if active {
		p.Activity = busy()
	}
	for _, change := range e.is {
		change(&p)
	}
	return p
}

func outcomeOf(o screening.Outcome) string { return fmt.Sprintf("%v, %v", o.Route, o.Meanwhile) }

// TestEverydayPeople holds the table line by line, inactive and active, alone and in
// a clinic: less company limits more and holds no more people. Who has no known disease, which
// is who is held while inactive and goes on while active, and is sent to nobody is asked for no
// clearance.
func TestEverydayPeople(t *testing.T) {
	if len(everydays) < 40 {
		t.Errorf("%d people", len(everydays))
	}
	for _, e := range slices.Concat(everydays, moreEverydays) {
		for i, active := range []bool{false, true} {
			alone, clinic := assess(t, lived(e, active, screening.Alone)), assess(t, lived(e, active, screening.InClinic))
			want := e.inactive
			if active {
				want = cmp.Or(e.active, e.inactive)
			}
			if got := outcomeOf(clinic); got != want || outcomeOf(alone) != want {
				t.Errorf("%s, active %v: %s, alone %s; want %s: %s", e.who, active, got, outcomeOf(alone), want, e.why)
			}
			if !alone.Limits.AsTightAs(clinic.Limits) {
				t.Errorf("%s: alone is limited less than in a clinic", e.who)
			}
			asked := slices.ContainsFunc(clinic.Missing, func(q screening.Question) bool { return q.Code == "clearance" })
			if known := e.active != ""; asked && clinic.Route < screening.AskFirst && !known {
				t.Errorf("%s, active %v: asked for a clearance that nothing needs", e.who, active)
			}
			if got := clinic.Rules.Strictest(); got != e.verdict[i] {
				t.Errorf("%s, active %v: strictest rule %v, want %v", e.who, active, got, e.verdict[i])
			}
		}
		if got := assess(t, lived(e, false, screening.InClinic)).Frees.String(); got != e.exit {
			t.Errorf("%s: frees most %q, want %q", e.who, got, e.exit)
		}
		if e.why == "" {
			t.Errorf("%s is not defended", e.who)
		}
	}
}
