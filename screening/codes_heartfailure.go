package screening

import (
	"fmt"

	"example.org/posology/units/evidence"
)

const (
	heartFailure Code = "heart_failure"
	weightGain   Code = "hf_weight_gain"
	worsening    Code = "hf_worsening"
	pulseLying   Code = "hf_supine_hr"
)

// inFailure is a row of the list for chronic heart failure.
func inFailure(says, grade string) provenance {
	return said("err_chf", evidence.Published, "in chronic heart failure "+says+": "+grade+" contraindication to training")
}

// failureEntries are chronic heart failure and its own list. A heart attack of
// the last weeks and new atrial fibrillation count in everybody.
var failureEntries = []entry{
	{code: heartFailure, kind: Condition, meaning: "chronic heart failure, stable", effect: askLight, released: &tellModerate,
		from: said("err_chf", evidence.Published, "a list of contraindications of its own, read on each day")},
	{code: recentHeartAttack, kind: Condition, meaning: "heart attack in the last 3 weeks", failure: Absolute, effect: askNothing,
		from: inFailure(fmt.Sprintf("a heart attack in the last %d weeks", infarctionWeeks), "absolute")},
	{code: "new_atrial_fibrillation", kind: Condition, meaning: "new atrial fibrillation", failure: Absolute, effect: seeToday, balance: true,
		from: inFailure("new atrial fibrillation", "absolute")},
	{code: weightGain, kind: Reading, meaning: "weight up fast in heart failure", failure: Relative, effect: askNothing, also: []evidence.FactID{gainRateFact},
		from: inFailure(fmt.Sprintf("body mass up by %v or more over %d to %d days", gainMass, gainMinDays, gainMaxDays), "relative")},
	{code: worsening, kind: Reading, meaning: "breath or stamina getting worse in heart failure", failure: Absolute, effect: seeToday,
		from: inFailure(fmt.Sprintf("stamina or breath worse over %d to %d days", worseMinDays, worseMaxDays), "absolute")},
	{code: pulseLying, kind: Reading, meaning: "fast pulse lying at rest in heart failure", failure: Relative, effect: askNothing,
		from: inFailure(fmt.Sprintf("a pulse of %d or more a minute lying at rest", supinePulse), "relative")},
}

// triggerEntries make a reading necessary that nobody else is asked for.
var triggerEntries = []entry{
	{code: "lung_disease", kind: Condition, meaning: "lung disease with breathlessness", from: ours("oxygen saturation is read before each session; nobody else is asked for it"), effect: tell},
	{code: "oxygen_therapy", kind: Condition, meaning: "breathes oxygen", from: ours("oxygen saturation is read before each session; nobody else is asked for it"), effect: ask, released: &tell},
	{code: "blood_disease", kind: Condition, meaning: "disease of the blood", from: ours("the latest blood counts are asked for; an anticoagulant alone does not ask for them, since it does not lower them"), effect: tell},
	{code: "chemotherapy", kind: Condition, meaning: "chemotherapy now or lately", from: ours("the latest blood counts are asked for; the medical team is asked"), effect: ask, released: &tell},
}
