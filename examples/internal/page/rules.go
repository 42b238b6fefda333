package page

import (
	"cmp"
	"slices"
	"strings"

	"example.org/posology/screening"
)

// branches are those of the preparticipation rule.
var branches = map[screening.Branch]string{
	screening.N1: "not regularly active, no known disease, no symptoms", screening.A1: "regularly active, no known disease, no symptoms",
	screening.N2: "not regularly active, known disease, no symptoms", screening.A2: "regularly active, known disease, no symptoms",
	screening.N3: "not regularly active, symptoms", screening.A3: "regularly active, symptoms",
}

var needs = map[screening.Need]string{
	screening.NotNeeded: "no clearance asked for", screening.BeforeVigorous: "clearance before vigorous exercise",
	screening.BeforeAny: "clearance before any exercise", screening.StopFirst: "stop, then clearance",
}

var levels = map[screening.ContraindicationLevel]string{
	screening.NoContraindication: "none in what was answered", screening.Relative: "relative", screening.Absolute: "absolute",
}

var referrals = map[screening.Referral]string{
	screening.NoReferral: "none in what was answered", screening.UrgentReferral: "urgent referral", screening.EmergencyReferral: "emergency",
}

var plans = map[screening.DayPlan]string{
	screening.AsPlanned: "nothing by themselves", screening.Lighter: "a lighter session", screening.SettleFirst: "measure or ask again first",
	screening.NotToday: "no session today", screening.HelpNow: "emergency services",
}

// RuleLines says in words what each published rule answers by itself. That of
// the day is left out where nobody checked the day.
func RuleLines(r screening.Rules, p screening.Profile, checked bool) []string {
	const unsaid = "could not say, from what was answered"
	word := func(text string) string { return cmp.Or(text, unsaid) }
	prep := unsaid
	if a := r.Preparticipation; a.Branch != 0 {
		prep = branches[a.Branch] + ": " + word(needs[a.Clearance])
	}
	listed := strings.ReplaceAll(Named(r.Contraindications.Reasons), ", type not stated", "") // the list's diabetes is of any
	lines := []string{
		"preparticipation screening (ACSM 2015): " + prep,
		"contraindications to resistance training (AHA 2007): " + word(levels[r.Contraindications.Level]) + listed,
		"signs of serious disease of the spine (IFOMPT 2020): " + spine(r.RedFlags, p, word),
	}
	if checked && r.SessionDay.Plan != 0 {
		lines = append(lines, "checks of the day: "+word(plans[r.SessionDay.Plan])+Named(r.SessionDay.Reasons))
	}
	if !r.Pain.Applies && len(r.Pain.Reasons) > 0 {
		lines = append(lines, "pain in training (Thomee 1997): "+word(plans[r.Pain.Plan])+Named(r.Pain.Reasons))
	}
	if r.Falls.Positive == screening.Yes {
		lines = append(lines, "falls (CDC 2019): positive")
	}
	if len(r.Cautions) > 0 {
		lines = append(lines, "cautions by condition"+Named(r.Cautions))
	}
	return lines
}

// spine says what the rule for the spine answers; one sign alone refers nobody, and is named.
func spine(answer screening.Referral, p screening.Profile, word func(string) string) string {
	for prompt := range screening.Prompts() {
		alone := slices.DeleteFunc(slices.Clone(p.RedFlags.Present), func(c screening.Code) bool { return !slices.Contains(prompt.Triggers, c) })
		if prompt.Code == "back_pain" && answer == screening.NoReferral && len(alone) > 0 {
			return "no referral for what was found, by itself" + Named(alone)
		}
	}
	return word(referrals[answer])
}

// Named puts the words of codes behind a colon.
func Named(codes []screening.Code) string {
	if len(codes) == 0 {
		return ""
	}
	return ": " + strings.Join(AllInWords(codes), "; ")
}

// AllInWords says what codes stand for.
func AllInWords(codes []screening.Code) []string {
	texts := make([]string, len(codes))
	for i, c := range codes {
		texts[i] = InWords(c)
	}
	return texts
}

// Meaning is what a term stands for, without what the module makes of it.
func Meaning(t screening.Term) string {
	text, _, _ := strings.Cut(t.Meaning, ";")
	text, _, _ = strings.Cut(text, ": ")
	return text
}

// cautions are by condition, and stand on no list of terms either.
var cautions = map[screening.Code]string{
	"avoid_loaded_or_end_range_spinal_flexion": "no bending of the spine under load or to the end of its range", "technique_before_load": "technique before load",
	"impact_up_to_brisk_walking": "impact no higher than brisk walking", "no_breath_holding": "no breath-holding", "use_rpe_not_heart_rate": "go by rated effort, not by the pulse",
	"no_resisted_strengthening_before_week_12": "no work against resistance before week 12",
}

// looked are what a positive falls screen has looked at, which stands on no list of terms.
var looked = map[screening.Code]string{
	"comorbidity": "other illnesses", "medicines": "medicines that make falls likelier", "orthostatic_pressure": "blood pressure lying and standing",
	"vitamin_d": "vitamin D", "vision": "sight", "feet_and_footwear": "feet and shoes", "chair_stand_30s": "standing up from a chair for 30 seconds",
	"four_stage_balance": "balance in four stances", "timed_up_and_go": "the timed walk from a chair and back", "home_hazards": "what could make somebody trip at home",
}

// InWords says what a code stands for; of one that is on no list, its own words.
func InWords(code screening.Code) string {
	if term, ok := screening.LookUp(code); ok {
		return Meaning(term)
	}
	if text := cmp.Or(looked[code], cautions[code]); text != "" {
		return text
	}
	return strings.ReplaceAll(string(code), "_", " ")
}
