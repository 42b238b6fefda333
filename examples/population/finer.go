package main

import (
	"slices"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A split is the invented share, among people with any of some codes, of those
// who answer a finer question with yes, where the answer is known.
type split struct {
	question screening.Code
	of       []screening.Code
	known    float64
	yes      float64
}

// Every number below is invented. Of each code only the share is split; nobody
// gets or loses a code by it. They were frozen before the joining of the rules
// used any of them.
var splits = []split{
	{"dizziness_faint", codes("dizziness_or_syncope"), 0.95, 0.10},
	{"dizziness_new", codes("dizziness_or_syncope"), 0.95, 0.30},
	{"dizziness_on_standing", codes("dizziness_or_syncope"), 0.95, 0.35},
	{"dizziness_spinning", codes("dizziness_or_syncope"), 0.95, 0.35},
	{"ankle_oedema_new", codes("ankle_oedema"), 0.95, 0.30},
	{"heart_murmur_new", codes("known_heart_murmur"), 0.95, 0.15},
	{"palpitations_new", codes("palpitations_or_tachycardia"), 0.95, 0.45},
	{"dyspnoea_new", codes("dyspnoea_rest_or_mild_exertion"), 0.95, 0.35},
	{"fatigue_new", codes("unusual_fatigue_or_dyspnoea_usual_activity"), 0.95, 0.50},
	{"claudication_new", codes("intermittent_claudication"), 0.95, 0.35},
	{"cancer_active", codes("cancer_history"), 0.97, 0.25},
	{"chronic_pain_changed", codes("back_pain_not_better_at_a_month", "pain_in_many_places"), 0.95, 0.20},
	{"eye_operation_not_cataract", codes("recent_eye_operation"), 0.95, 0.15},
	{"replacement_limited", codes("total_knee_replacement", "total_hip_replacement", "shoulder_replacement"), 0.85, 0.10},
}

// An ago is how long ago something was, evenly from today on, where it is known.
type ago struct {
	code  screening.Code
	known float64
	days  int // at most
}

var agos = []ago{
	{"recent_eye_operation", 0.95, 365},
	{"pacemaker", 0.90, 3650},
	{"icd", 0.90, 3650},
	{"after_mi_or_stroke", 0.90, 5475},
	{"hip_fracture", 0.95, 3650},
}

// finerRates are of conditions met daily.
var finerRates = []rate{
	{code: "osteoarthritis_knee", at55: 0.12, at85: 0.30, women: 1.2, men: 0.8},
	{code: "osteoarthritis_hip", at55: 0.05, at85: 0.14},
	{code: "osteoarthritis_hand", at55: 0.08, at85: 0.25, women: 1.3, men: 0.7},
	{code: "shoulder_pain", at55: 0.10, at85: 0.14},
	{code: "tendon_pain_hip", at55: 0.03, at85: 0.05, women: 1.4, men: 0.6},
	{code: "tendon_pain_heel", at55: 0.02, at85: 0.02},
	{code: "tendon_pain_elbow", at55: 0.02, at85: 0.01},
	{code: "hip_fracture", at55: 0.004, at85: 0.06, women: 1.3, men: 0.7},
	{code: "arthritis_quiet", at55: 0.015, at85: 0.03},
	{code: "lymphoedema_stable", at55: 0.004, at85: 0.012, women: 1.8, men: 0.2},
	{code: "high_weight", at55: 0.28, at85: 0.20},
	{code: "hard_of_hearing", at55: 0.15, at85: 0.55},
	{code: "poor_sight", at55: 0.03, at85: 0.20},
}

// alarms are red flags beside those of rates.
var alarms = []rate{{code: "spinning_with_new_signs", at55: 0.0003, at85: 0.0008}}

// sited are what has a place in the body. siteKnown is the share of people who say
// where, evenly over the regions.
var sited = codes("pain_made_worse_by_training", "unstable_or_injured_joint", "acute_joint_inflammation", "musculoskeletal_limitation")

const siteKnown = 0.95

func codes(list ...screening.Code) []screening.Code { return list }

// finely draws what is finer than the lists. What screening does not know yet is
// drawn and left out, so that the same people were drawn before it did.
func (d drawing) finely(p *screening.Profile, age, burden float64) {
	d.Rand = d.finer
	d.add(&p.Conditions, finerRates, p.Sex, age, burden)
	d.add(&p.RedFlags, alarms, p.Sex, age, burden)
	asked := yesNo()
	for _, s := range splits {
		answer := d.yes(s.known, s.yes)
		if slices.Contains(asked, s.question) && has(everything(*p), s.of...) {
			p.Answers[s.question] = answer
		}
	}
	for _, a := range agos {
		day, known := visit-units.Day(d.IntN(a.days)), d.chance(d.known(a.known))
		if known && slices.Contains(asked, a.code+"_day") && has(p.Conditions, a.code) {
			p.Events = append(p.Events, screening.Event{Code: a.code, Day: day})
		}
	}
	at := d.places()
	for _, code := range sited {
		if region := at[code]; region != 0 && slices.Contains(asked, code+"_site") && has(p.Conditions, code) {
			p.Sites = append(p.Sites, screening.Site{Code: code, Region: region})
		}
	}
}

// places draws where what has a place is, for everybody.
func (d drawing) places() map[screening.Code]body.Region {
	list := map[screening.Code]body.Region{}
	for _, code := range sited {
		region, known := body.Region(1+d.IntN(places)), d.chance(d.known(siteKnown))
		if known {
			list[code] = region
		}
	}
	return list
}

// places are the regions but the whole body.
const places = 10

// add draws further codes of a list.
func (d drawing) add(list *screening.Checklist, rates []rate, sex body.Sex, age, burden float64) {
	for _, code := range d.present(rates, sex, age, burden) {
		if _, known := screening.LookUp(code); known {
			list.Present = append(list.Present, code)
		}
	}
}

// everything is all that is present, as one list.
func everything(p screening.Profile) screening.Checklist {
	return screening.AskedFor(slices.Concat(p.Symptoms.Present, p.RedFlags.Present, p.Conditions.Present)...)
}

// yesNo lists the questions that screening knows of.
func yesNo() []screening.Code {
	var list []screening.Code
	for prompt := range screening.Prompts() {
		list = append(list, prompt.Code)
	}
	return list
}
