package letter

import (
	"slices"
	"strings"

	"example.org/posology/examples/internal/page"
	"example.org/posology/screening"
)

// A topic is a question, and what it is asked about.
type topic struct {
	asks  string
	told  bool   // asked even where training does not wait for the answer
	to    Reader // who can say it best; the doctor is asked everything
	about []screening.Code
	help  string // what a client who is held by it reads on calling for help
}

// OfSpine asks about a spine that may have broken.
const OfSpine = "Does the back need an image to rule out a fracture of the spine, and what may it bear until then?"

const (
	seeToday = "Would you please see this person, or direct them to be seen, today?"
	takeOver = "Emergency services were called for, or are to be: would you please take over what follows?"
	ofCause  = "Do these signs need an examination or tests for a serious cause, and may weights be lifted before that?"
	general  = "Is there any reason against resistance training that builds up step by step from light loads, and are there limits that I should keep to (load, effort, positions)?"
)

// What a client reads on calling for help: first aid that everybody is taught, in our own words, and the signs that screening sends to help at once.
var (
	call      = "Call the emergency services at once (112 in Europe, elsewhere the number for emergencies there), wherever you are, if "
	heartHelp = call + "chest, arm, neck or jaw hurts or feels tight and it does not pass as you sit still, if you pass out, or if you cannot get your breath at rest. Do not wait for a visit or an answer."
	backHelp  = call + "one of these begins: " + strings.Join([]string{screening.Option("saddle_numbness"), screening.Option("new_bladder_or_bowel_dysfunction"), screening.Option("severe_or_growing_leg_deficit")}, "; ") + "."
)

// topics are what a physiotherapist commonly asks about a finding, from memory;
// whatever stands in none of them is asked about by the general question.
var topics = []topic{
	{asks: OfSpine, help: backHelp, about: []screening.Code{
		"sudden_back_pain_or_height_loss", "fracture_after_minor_trauma_with_osteoporosis", "sudden_back_pain_after_major_injury",
		"severe_midline_back_pain", "spinal_deformity", "pain_spinal_fracture"}},
	{asks: ofCause, help: backHelp, about: []screening.Code{together, "flags-chronic-past", "flags-chronic-followed",
		"cancer_history_with_new_unremitting_back_pain", "fever_with_severe_back_pain", "unremitting_night_pain", "back_pain_not_better_at_a_month"}},
	{asks: ofCause, about: []screening.Code{"unexplained_weight_loss", "pain_in_many_places", "recent_infection_or_injected_drugs", "fever_or_shivering"}},
	{help: heartHelp, asks: "With these signs of the heart, may training begin or go on, and with which limits of effort, pulse and pressure?", about: []screening.Code{
		"ischaemic_chest_neck_jaw_arm_pain", "palpitations_or_tachycardia", "known_heart_murmur", "dyspnoea_rest_or_mild_exertion",
		"orthopnoea_or_pnd", "unusual_fatigue_or_dyspnoea_usual_activity", "ankle_oedema", "cardiac", "unstable_chd", "exertional_angina",
		"major_chd_risk_factors", "uncontrolled_arrhythmia", "new_atrial_fibrillation", "pacemaker", "icd",
		"severe_valve_disease", "severe_symptomatic_aortic_stenosis", "low_functional_capacity", "mi_within_3_weeks", "heart_attack", "hr_gt_100", "capacity_lt_4_mets",
		"unstable_or_uncontrolled", "pain_chest", "acute_myocarditis", "acute_endocarditis", "acute_pericarditis", "left_main_disease_untreated", "training_provokes_angina_hypotension_or_arrhythmia"}},
	{help: heartHelp, asks: "After a stroke or heart attack, or with diseased vessels of the brain, may training begin or go on, and with which limits of effort, pulse and pressure?", about: []screening.Code{
		"after_mi_or_stroke", "stroke", "cerebrovascular"}},
	{help: heartHelp, asks: "Is the heart failure stable, or does its treatment need a change before training goes on?", about: []screening.Code{
		"heart_failure", "decompensated_hf", "heart_failure_nyha_iv", "hf_weight_gain", "hf_worsening", "hf_supine_hr", "unstable_or_acute_hf"}},
	{asks: "What lies behind the dizziness, do medicines have a part in it, and may this person train, sitting or standing?", about: []screening.Code{
		"dizziness_or_syncope", "symptomatic_low_pressure", "autonomic_neuropathy_postural_hypotension", "vertigo", "orthostatic_hypotension", "dizziness_on_standing", "dizziness_spinning", "spinning_with_new_signs"}},
	{to: FallsService, told: true, asks: "Would you look at what may lie behind a fall, unsteadiness or the fear of falling: medicines, the blood pressure lying and standing, and whether treatment for the bones is due?", about: []screening.Code{
		"falls_risk", "fall"}},
	{asks: "Is treatment of the blood pressure to begin or to change, and up to which pressure at rest may this person train?", about: []screening.Code{
		"blood_pressure", "hypertension", "uncontrolled_hypertension", "hypertension_high_risk", "hypertension_gt_180_110", "hypertension_gt_160_100",
		"bp_ge_180_or_100", "systolic_gt_170_untreated", "systolic_gt_160_today"}},
	{asks: "Which glucose should this person begin and end training with, do medicines or meals change on days of training, and what is known of eyes, kidneys and the feeling in the feet?", about: []screening.Code{
		"diabetes", "diabetes_t1", "diabetes_t2", "insulin_or_secretagogue", "glucose", "ketones", "late_hypoglycaemia", "hba1c_gt_10", "no_ketone_strips",
		"glucose_lt_52_or_severe_hypo_24h", "glucose_52_69_treat_first", "glucose_ge_350_ketone_test", "ketones_moderate_or_large", "blood_ketones_lt_1_5"}},
	{to: Surgeon, asks: "Which movements, positions and loads are still to be left after the operation, and until when?", about: []screening.Code{
		"total_knee_replacement", "total_hip_replacement", "shoulder_replacement", "replacement_limited", "rotator_cuff_repair", "recent_eye_operation",
		"unstable_prosthesis", "replacement_wound_problem", "operation", "pain_early_post_operative"}},
	{asks: "Has the fracture united, what may it bear, and is treatment for the bones under way?", about: []screening.Code{
		"recent_fracture", "hip_fracture", "spine_not_seen", "vertebral_fracture", "osteoporosis_with_vertebral_fracture", "fracture"}},
	{asks: "Is a clot to be ruled out?", about: []screening.Code{"clot_signs", "acute_dvt", "acute_pulmonary_embolism"}},
	{asks: "What is wrong with the joint or tendon, and what may it bear meanwhile?", about: []screening.Code{
		"hot_swollen_joint", "pain_hot_joint", "acute_joint_inflammation", "unstable_or_injured_joint", "tendon_pop", "new_groin_pain_or_instability", "pain_made_worse_by_training"}},
	{help: backHelp, asks: "What lies behind the pain that spreads, and which movements and loads does it allow?", about: []screening.Code{"pain_spreading"}},
	{asks: "Above which oxygen saturation should this person stay, and may training begin?", about: []screening.Code{
		"lung_disease", "oxygen_therapy", "copd_uncontrolled", "oxygen_saturation", "spo2_lt_89"}},
	{asks: "What do the eyes allow of effort, straining and a low head?", about: []screening.Code{
		"diabetic_retinopathy_severe", "retinopathy_high_intensity", "npdr_moderate_or_worse", "retinal_bleed_or_detachment"}},
	{asks: "Are there limits on lifting and straining?", about: []screening.Code{
		"pelvic_heaviness", "hernia_symptomatic_or_large", "haemorrhoids_symptomatic_or_large"}},
	{asks: "What may the bones bear, and what do the counts of the blood allow?", about: []screening.Code{
		"bone_metastases", "pain_bone_metastasis", "platelets_lt_50", "haemoglobin_lt_100", "chemotherapy", "blood_disease", "blood_counts"}},
}

// HelpAtOnce says when to call for help, to whom a sign of the heart or of the back holds; in an emergency all else says so.
func HelpAtOnce(o screening.Outcome) (lines []string) {
	for _, f := range o.Findings {
		help := about(f.Code).help
		if term, _ := screening.LookUp(f.Code); term.Kind == screening.Symptom {
			help = heartHelp
		}
		if f.Exit.Who != 0 && o.Route < screening.Emergency && help != "" && !slices.Contains(lines, help) {
			lines = append(lines, help)
		}
	}
	return lines
}

// Questions are those that follow from what was found, each once, and then the
// letter's own. What the person can answer, or a second reading, is not asked.
func (l Letter) Questions() []string {
	var asks []string
	ask := func(text string) {
		if !slices.Contains(asks, text) {
			asks = append(asks, text)
		}
	}
	if l.To != Doctor {
		for _, code := range l.asked() {
			if t := about(code); t.to == l.To {
				ask(t.asks)
			}
		}
		return asks
	}
	switch l.Outcome.Route {
	case screening.Emergency:
		return []string{takeOver} // the rest comes later
	case screening.SameDay:
		ask(seeToday)
	}
	var rest []screening.Code
	for _, code := range l.asked() {
		switch t := about(code); {
		case t.asks != general:
			ask(t.asks)
		case !slices.Contains(rest, code):
			rest = append(rest, code)
		}
	}
	cleared := l.clearance()
	for _, text := range l.Asks {
		ask(text)
	}
	rest = slices.DeleteFunc(rest, func(c screening.Code) bool { return slices.Contains(cleared, c) })
	switch {
	case len(rest) > 0 && len(asks)+len(cleared) > 0: // beside others it says of what
		ask(general + " I ask for" + page.Named(rest) + ".")
	case len(rest) > 0:
		ask(general)
	}
	if len(cleared) > 0 {
		ask("Do you agree that this person trains, and how hard at most: light, moderate or vigorous? Training waits for your agreement about" + page.Named(cleared) + ".")
	}
	return asks
}

// clearance are the codes that an agreement has to name to lift what holds the person.
func (l Letter) clearance() []screening.Code {
	var codes []screening.Code
	for _, f := range l.Outcome.Findings {
		switch {
		case f.Exit.With != screening.AClearance:
		case f.Branch() != 0:
			codes = slices.Concat(codes, l.Profile.Diseases.Present, l.Profile.Symptoms.Present)
		default:
			codes = append(codes, f.Code)
		}
	}
	slices.Sort(codes)
	return slices.Compact(codes)
}

// asked are the codes that the doctor is asked about. The branch of the
// preparticipation rule stands for the diseases and symptoms behind it.
func (l Letter) asked() []screening.Code {
	var codes []screening.Code
	for _, f := range l.Outcome.Findings {
		switch {
		case f.Open || f.Route < screening.AskFirst && !about(f.Code).told:
		case f.Branch() != 0:
			codes = append(append(codes, l.Profile.Diseases.Present...), l.Profile.Symptoms.Present...)
		default:
			codes = append(codes, f.Code)
		}
	}
	if l.Check != nil {
		for _, e := range l.Check.Events {
			codes = append(codes, e.Code)
		}
	}
	return codes
}

// Due reports whether there is something to ask that others cannot say better.
func (l Letter) Due() bool {
	others := 0
	if l.To == Doctor {
		l.To = Surgeon
		others = len(l.Questions())
		l.To = Doctor
	}
	return len(l.Questions()) > others
}

// about returns the question about a code, the general one if there is no other.
func about(code screening.Code) topic {
	for _, t := range topics {
		if slices.Contains(t.about, code) {
			return t
		}
	}
	return topic{asks: general}
}
