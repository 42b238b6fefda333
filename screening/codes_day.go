package screening

import (
	"fmt"

	"example.org/posology/units/evidence"
)

// Codes of further readings and of the day's own state.
const (
	saturationSevere Code = "spo2_lt_89"
	saturationFloor  Code = "spo2_lt_90"
	saturationPassed Code = "spo2_lt_89_passed"
	plateletsLow     Code = "platelets_lt_50"
	haemoglobinLow   Code = "haemoglobin_lt_100"
	ketonesLight     Code = "blood_ketones_lt_1_5"
	hbA1cHigh        Code = "hba1c_gt_10"
	untreatedHigh    Code = "systolic_gt_170_untreated"
	exertionHigh     Code = "systolic_gt_160_today"
	noStrips         Code = "no_ketone_strips"
	sorenessLasting  Code = "soreness_lasting"
	unwellToday      Code = "unwell"
)

func countTable(says string) provenance {
	return reported("bmjopen_t1", "the table of a study protocol; the article was not identified", says+": contraindication")
}

// moreReadings are checks beside those of readings.
var moreReadings = []entry{
	{code: saturationSevere, kind: Reading, meaning: "oxygen saturation below 89 %; rest and measure again", effect: askNothing.with(lighter.limits),
		from: said("garvey2012", evidence.Published, fmt.Sprintf("below %d %%, sustained for a minute on oxygen, is severe desaturation on effort", spo2Severe)), also: []evidence.FactID{saturationFact, againFact}},
	{code: saturationFloor, kind: Reading, meaning: "oxygen saturation of 89 %", effect: lighter,
		from: said("", evidence.FromMemory, fmt.Sprintf("programmes of rehabilitation commonly keep it at or above 88 to %d %%", spo2Floor))},
	{code: saturationPassed, kind: Reading, meaning: fmt.Sprintf("oxygen saturation under %d %% at first, and %d %% or more after a rest", spo2Severe, spo2Floor), effect: tell,
		from: ours("a low reading that came up may be a cold finger or a lung that tires early: it is told, and the day goes on")},
	{code: plateletsLow, kind: Reading, meaning: "platelets below 50 × 10⁹/L", from: countTable(fmt.Sprintf("platelets below %d × 10⁹/L", lowPlatelets)), effect: askNothing},
	{code: haemoglobinLow, kind: Reading, meaning: "haemoglobin below 100 g/L", from: countTable(fmt.Sprintf("haemoglobin below %d g/L", lowHaemoglobin)), effect: askNothing},
	{code: ketonesLight, kind: Reading, meaning: "high glucose with blood ketones below 1.5 mmol/L: light effort only; stricter than light or moderate by the position of ADA 2016", effect: lighter.with(Limits{MaxIntensity: Light}),
		from: reported("riddell2017", "turner2019", fmt.Sprintf("blood ketones below %v mmol/L: light effort only; at or above it no exercise", bloodKetones))},
	{code: hbA1cHigh, kind: Reading, wider: true, meaning: "HbA1c above 10 %", effect: askNoLoad, from: wider(fmt.Sprintf("HbA1c above %v %%, as an example of disease out of control,", highHbA1c))},
	{code: untreatedHigh, kind: Reading, wider: true, meaning: "systolic pressure above 170 mmHg; the source says untreated: a clearance that names the treated pressure lifts it", effect: askNoLoad.with(Limits{NoBreathHolding: true}), released: &calmPressure, named: treated,
		from: wider(fmt.Sprintf("systolic pressure above %d mmHg untreated, as an example of disease out of control,", untreatedSystolic))},
	{code: exertionHigh, kind: Reading, meaning: "systolic pressure above 160 mmHg today", effect: calmPressure,
		from: said("pelliccia2021", evidence.FromMemory, fmt.Sprintf("systolic above %d mmHg: no high-intensity exercise until controlled", exertionSystolic))},
	{code: noStrips, kind: Reading, meaning: "high glucose, not on insulin, ketones cannot be tested: ask the diabetes team; no lasting hold", effect: askLight.with(glucoseLimits),
		from: ours("where insulin and its like are not taken, light and supervised work goes on while the team is asked about ketone strips")},
	{code: sorenessLasting, kind: Reading, meaning: "soreness of muscles past its peak and still there", effect: lighter,
		from: said("", evidence.FromMemory, fmt.Sprintf("soreness peaks at 1 to %d days and needs nothing unless it lasts", sorenessDays))},
	{code: unwellToday, kind: Reading, meaning: "ill without fever", from: ours("a lighter session, or none if the person would rather rest"), effect: lighter},

	{code: otherPain[ChestPain], kind: Reading, meaning: "pain around the chest, for which the pain model is never used", from: notModelled, effect: seeToday.with(lighter.limits)},
	{code: otherPain[SpreadingPain], kind: Reading, meaning: "pain that spreads, for which the pain model is never used", from: notModelled, effect: lookNoLoad.with(lighter.limits), sited: &lookLighter},
	{code: otherPain[SpinePain], kind: Reading, meaning: "pain as from a fracture of the spine, for which the pain model is never used", from: notModelled, effect: seeToday.with(lighter.limits), lesser: &spineAche, also: []evidence.FactID{newBackFact}},
	{code: otherPain[BonePain], kind: Reading, meaning: "pain where bone metastases are, for which the pain model is never used", from: notModelled, effect: seeToday.with(lighter.limits)},
	{code: otherPain[HotJointPain], kind: Reading, meaning: "pain of a hot joint, for which the pain model is never used", from: notModelled, effect: seeToday.with(lighter.limits)},
	{code: otherPain[PostOperativePain], kind: Reading, meaning: "pain early after an operation, for which the pain model is never used; ask the surgeon", from: notModelled, effect: askNothing.with(lighter.limits)},
}

// spineAche is new pain over a spine that breaks easily, which nobody has called a break.
var spineAche = askNothing.with(lighter.limits)

var notModelled = ours("the pain model was studied in other pain; somebody looks at this first")

// moreTopics are readings that were to be taken and were not.
var moreTopics = []entry{
	{code: askSaturation, kind: Topic, meaning: "oxygen saturation, not measured", from: untaken, effect: askNothing.with(lighter.limits)},
	{code: askWeight, kind: Topic, meaning: "change of weight in heart failure, not measured", from: untaken, effect: askNothing},
	{code: askPulse, kind: Topic, meaning: "pulse at rest, not measured", from: untaken, effect: askNothing.with(withSupport), balance: true},
	{code: askCounts, kind: Topic, meaning: "blood counts, not known", from: untaken, effect: askNothing},
	{code: askPainKind, kind: Topic, meaning: "kind of pain, not known", from: ours("pain whose kind is not known may be one that the pain model is never used for"), effect: askNothing.with(lighter.limits)},
}

var untaken = ours("an untaken reading counts as the worst until it is taken")

// moreConditions go beyond the list of the digest's conditions.
var moreConditions = []entry{
	{code: "hypertension_high_risk", kind: Condition, meaning: "controlled hypertension at high risk", effect: breathe.with(Limits{MaxIntensity: Moderate}),
		from: said("pelliccia2021", evidence.FromMemory, "controlled hypertension at high risk: high-intensity exercise discouraged")},
	{code: "sepsis", kind: Condition, wider: true, meaning: "sepsis", from: wider("sepsis, as an example of disease out of control,"), effect: emergency},
}
