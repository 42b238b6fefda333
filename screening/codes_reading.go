package screening

import (
	"fmt"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Codes of what a measurement showed.
const (
	pressureAbsolute Code = "hypertension_gt_180_110"
	pressureRelative Code = "hypertension_gt_160_100"
	pressureToday    Code = "bp_ge_180_or_100"
	pulseToday       Code = "hr_gt_100"
	feverToday       Code = "febrile"
	failingToday     Code = "unstable_or_acute_hf"
	unstableToday    Code = "unstable_or_uncontrolled"
	orthostatic      Code = "orthostatic_hypotension"
	glucoseVeryLow   Code = "glucose_lt_52_or_severe_hypo_24h"
	glucoseLow       Code = "glucose_52_69_treat_first"
	glucoseBelowEat  Code = "glucose_lt_90_carbohydrate_first"
	glucoseTreated   Code = "glucose_treated_lighter"
	glucoseHigh      Code = "glucose_250_349_ketone_test_no_intense"
	glucoseHighest   Code = "glucose_ge_350_ketone_test"
	ketonesHigh      Code = "ketones_moderate_or_large"
	painHigh         Code = "pain_gt_5_reduce"
	painUnsettled    Code = "pain_not_settled_reduce"
	painRising       Code = "pain_rising_week_on_week_reduce"
)

// lighter is what a check that asks for a lighter session lets go on.
var lighter = tell.with(Limits{
	MinReserve: lightReserve,
	Lighten:    Lighten{AtMostLast: true, FewerSets: lighterSets, MoreReserve: lighterReserve},
})

func today(says string) provenance {
	return said("heiw", evidence.Published, says+": no exercise that day")
}

func atStart(says string) provenance { return said("colberg2016", evidence.Published, says) }

func painModel(says string) provenance { return said("silbernagel2007", evidence.FromMemory, says) }

// readings are the thresholds that a measurement met. The numbers stand in
// numbers.go.
var readings = []entry{
	{code: pressureAbsolute, kind: Reading, meaning: "blood pressure above 180/110 mmHg", from: absolute(fmt.Sprintf("hypertension above %d/%d mmHg", absoluteSystolic, absoluteDiastolic)), effect: askNothing.with(Limits{NoBreathHolding: true}), level: Absolute},
	{code: pressureRelative, kind: Reading, meaning: "blood pressure above 160/100 mmHg", from: relative(fmt.Sprintf("hypertension above %d/%d mmHg", relativeSystolic, relativeDiastolic)), effect: askLight.with(Limits{NoBreathHolding: true}),
		released: &calmPressure, level: Relative, also: []evidence.FactID{pressureESC}},
	{code: lowCapacity, kind: Reading, meaning: "functional capacity below 4 METs", from: relative(fmt.Sprintf("functional capacity below %v METs", lowMETs)), effect: askLight, released: &tell, level: Relative},

	{code: pressureToday, kind: Reading, meaning: "resting pressure at or above 180 systolic or 100 diastolic; rest and measure again", from: today(fmt.Sprintf("systolic at or above %d or diastolic at or above %d mmHg at rest", daySystolic, dayDiastolic)), effect: askNothing, also: []evidence.FactID{dayConflict, againFact}},
	{code: pulseToday, kind: Reading, meaning: "resting pulse above 100; rest and measure again", from: today(fmt.Sprintf("resting pulse above %d a minute", dayPulse)), effect: askNothing, also: []evidence.FactID{againFact}},
	{code: feverToday, kind: Reading, meaning: "feverish illness", from: today("feverish illness"), effect: effect{Tell, Nothing, Limits{}}},
	{code: failingToday, kind: Reading, meaning: "unstable or acute heart failure", from: today("unstable or acute heart failure"), effect: seeToday},
	{code: unstableToday, kind: Reading, meaning: "unstable angina or uncontrolled arrhythmia", from: today("unstable angina, uncontrolled arrhythmia or unstable diabetes"), effect: seeToday},
	{code: orthostatic, kind: Reading, meaning: "fall of pressure on standing", effect: lighter.with(Limits{Support: true}), balance: true, also: []evidence.FactID{lyingFact, highLyingFact},
		from: said("shaw2017", evidence.Published, fmt.Sprintf("from sitting a fall of %d systolic or %d diastolic mmHg on standing is orthostatic hypotension", sittingSystolic, sittingDiastolic))},
	{code: glucoseVeryLow, kind: Reading, meaning: "glucose below 52 mg/dL or 2.9 mmol/L, or a low in the last day that needed help", effect: seeToday.with(glucoseLimits), balance: true,
		from: said("turner2019", evidence.Published, fmt.Sprintf("below %v, or a low in the last 24 h that needed help: no exercise", glucoseNone))},
	{code: glucoseLow, kind: Reading, meaning: "glucose 52 to 69 mg/dL or 2.9 to 3.9 mmol/L: treat with 15 g of carbohydrate and test again after 15 minutes; then never alone", effect: askNothing.with(glucoseLimits), balance: true, also: []evidence.FactID{treatedFact},
		from: said("turner2019", evidence.Published, fmt.Sprintf("from %v to below %v: treat first with 15 g of carbohydrate and test again after 15 min; after that never alone", glucoseNone, glucoseTreat))},
	{code: glucoseBelowEat, kind: Reading, meaning: "glucose below 90 mg/dL or 5.0 mmol/L: 15 to 30 g of carbohydrate first", effect: lighter.with(Limits{Support: true, LeastSetting: WithHelper}), balance: true, also: []evidence.FactID{eatFirstFact},
		from: atStart(fmt.Sprintf("below %v: 15 to 30 g of fast carbohydrate first", glucoseEat))},
	{code: glucoseTreated, kind: Reading, meaning: "glucose of 52 to 69 mg/dL or 2.9 to 3.9 mmol/L that has come up after 15 g of carbohydrate: a lighter session, never alone", effect: lighter.with(Limits{Support: true, LeastSetting: WithHelper}), balance: true, also: []evidence.FactID{treatedFact},
		from: said("turner2019", evidence.Published, fmt.Sprintf("from %v to below %v: treat first with 15 g of carbohydrate and test again after 15 min; after that never alone", glucoseNone, glucoseTreat))},
	{code: glucoseHigh, kind: Reading, meaning: "glucose 250 to 349 mg/dL or 13.9 to 19.3 mmol/L: ketone test, nothing intense", effect: lighter.with(Limits{MaxIntensity: Moderate}),
		from: atStart(fmt.Sprintf("from %v to below %v: ketone test; without moderate or large ketones light or moderate effort, intense work once below the first", glucoseKetones, glucoseVeryHigh))},
	{code: glucoseHighest, kind: Reading, meaning: "glucose at or above 350 mg/dL or 19.4 mmol/L: ketone test, consider insulin", effect: effect{AskFirst, WithinLimits, lighter.limits}.with(Limits{MaxIntensity: Moderate}),
		from: atStart(fmt.Sprintf("from %v up: ketone test; without moderate or large ketones consider correcting with insulin, light or moderate effort", glucoseVeryHigh))},
	{code: ketonesHigh, kind: Reading, meaning: "moderate or large ketones, or 1.5 mmol/L or more in the blood", effect: seeToday.with(glucoseLimits),
		from: atStart("moderate or large ketones: no exercise")},
	{code: painHigh, kind: Reading, meaning: "pain above 5 of 10 during or after: ease or stop what causes it", from: painModel(fmt.Sprintf("pain up to %v of 10 is allowed during and right after", painLimit)), effect: lighter, also: []evidence.FactID{zonesFact, variantFact, trialFact}},
	{code: painUnsettled, kind: Reading, meaning: "pain not settled by the next morning: ease or stop what causes it", from: painModel("pain settles by the next morning"), effect: lighter, also: []evidence.FactID{usualFact}},
	{code: painRising, kind: Reading, meaning: "pain rising from week to week: ease or stop what causes it", from: painModel("no week is worse than the one before"), effect: lighter, also: []evidence.FactID{policyFact}},
}

// calmPressure goes on above 160/100 mmHg once a doctor has agreed.
var calmPressure = tell.with(Limits{NoBreathHolding: true, MaxIntensity: Moderate})

// Codes that decide by name: what happened, and the conditions that it stands for.
const (
	fractured           Code = "fracture"
	heartAttack         Code = "heart_attack"
	stroke              Code = "stroke"
	fallen              Code = "fall"
	operated            Code = "operation"
	recentFracture      Code = "recent_fracture"
	vertebralFracture   Code = "vertebral_fracture"
	recentHeartAttack   Code = "mi_within_3_weeks"
	afterAttackOrStroke Code = "after_mi_or_stroke"
	fallsRisk           Code = "falls_risk"
)

// happenings are what an event may name besides a dated condition. They end
// clearances; a recent fall or fracture counts as the condition of that kind.
var happenings = []entry{
	{code: operated, kind: Happening, meaning: "operation", effect: askNoLoad, released: &tell, finer: healed, dated: &dated{weeks: replacementWeeks, later: nothingFound},
		from: ours("an operation ends clearances given before it; until it has healed and who operated has spoken, or enough weeks have passed, who operated is asked")},
	{code: fractured, kind: Happening, meaning: "fracture", from: ours("a fracture ends clearances given before it"), effect: nothingFound},
	{code: heartAttack, kind: Happening, meaning: "heart attack", from: ours("a heart attack ends clearances given before it"), effect: nothingFound},
	{code: stroke, kind: Happening, meaning: "stroke", from: ours("a stroke ends clearances given before it"), effect: nothingFound},
	{code: "hospital_stay", kind: Happening, meaning: "stay in hospital", from: ours("a stay in hospital ends clearances given before it"), effect: nothingFound},
	{code: fallen, kind: Happening, meaning: "fall", from: ours("a fall ends clearances given before it"), effect: nothingFound},
	{code: "new_diagnosis", kind: Happening, meaning: "new diagnosis", from: ours("a new diagnosis ends clearances given before it"), effect: nothingFound},
}

// topics are asked after by questions and stand on no list.
var topics = []entry{
	{code: "insulin_or_secretagogue", kind: Topic, meaning: "takes insulin or a medicine that makes the body give it off", from: ours("lows of glucose are possible: no lone standing, overhead or over-the-face work"), effect: tell, balance: true},
	{code: "hernia_symptomatic_or_large", kind: Topic, meaning: "hernia that is large or gives symptoms", wider: true, from: said("willey2003", evidence.Published, "a hernia that is large or gives symptoms: contraindication"),
		effect: ask.with(Limits{NoBreathHolding: true}).avoiding(body.AbdominalPressure), released: &breathe, named: []Code{"hernia"}},
	{code: "blood_pressure", kind: Topic, meaning: "blood pressure at rest, not measured", from: untaken, effect: askNothing.with(Limits{NoBreathHolding: true, MaxIntensity: Moderate, Support: true}), balance: true},
	{code: "glucose", kind: Topic, meaning: "glucose before the session, not measured", from: ours("an untaken reading counts as the worst until it is taken"), effect: askNothing.with(glucoseLimits), balance: true},
	{code: "ketones", kind: Topic, meaning: "ketones at a high glucose, not tested", from: ours("an untaken test counts as the worst until it is taken"), effect: askNothing.with(glucoseLimits)},
}

// glucoseLimits are those of every band of glucose together.
var glucoseLimits = Limits{Support: true, LeastSetting: WithHelper, MaxIntensity: Moderate, MinReserve: lightReserve, Lighten: lighter.limits.Lighten}
