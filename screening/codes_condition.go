package screening

import (
	"fmt"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Codes of the published cautions.
const (
	noSpinalFlexion  Code = "avoid_loaded_or_end_range_spinal_flexion"
	lowImpact        Code = "impact_up_to_brisk_walking"
	techniqueFirst   Code = "technique_before_load"
	noBreathHolding  Code = "no_breath_holding"
	noEarlyResisting Code = "no_resisted_strengthening_before_week_12"
	effortNotPulse   Code = "use_rpe_not_heart_rate"
)

// Limits that conditions share.
var (
	breathe       = tell.with(Limits{NoBreathHolding: true})
	supported     = tell.with(Limits{Support: true})
	spine         = tell.avoiding(body.LoadedSpinalFlex, body.SpinalTwist, body.PickUpFromFloor)
	brokenSpine   = spine.with(Limits{TechniqueFirst: true, LowImpact: true, LeastCount: spineLeastCount})
	earlyFracture = askNoLoad.with(brokenSpine.limits)
	stepGently    = tell.avoiding(body.Impact)
	tellImpact    = tell.with(Limits{LowImpact: true})
	earlyImpact   = askLight.with(Limits{LowImpact: true})
	shoulderRest  = ask.avoiding(body.ShoulderResisted, body.Overhead)
)

func said(source evidence.SourceID, basis evidence.Basis, says string) provenance {
	return provenance{says: says, source: source, basis: basis}
}

func reported(source evidence.SourceID, via, says string) provenance {
	return provenance{says: says, source: source, via: via, basis: evidence.Secondary}
}

// guideTable is where the Canadian dose was read.
const guideTable = "pmc5101068"

// What the Canadian consensus says of movements, in our own words.
const (
	canadaMovements = "change how the spine bends and twists, so that no weight, haste, long series or end of its range comes with it"
	canadaLifting   = "weights are neither taken from the floor nor put down on it"
	canadaFracture  = "repetitions as before; more load only with good posture and technique; no more than moderate aerobic work; a physiotherapist advises"
)

// conditionEntries change how a person trains. Where no limit was published, the
// outcome names whom to ask and gives no number.
var conditionEntries = []entry{
	{code: "osteoporosis", kind: Condition, meaning: "osteoporosis", effect: spine, cautions: []Code{noSpinalFlexion},
		from: reported("giangregorio2014", guideTable, "strength on 2 or more days a week, 1 to 3 sets of 8 to 12 at 8 to 12 RM; "+canadaMovements+"; "+canadaLifting+"; a lighter start for the inactive, for beginners and at high risk")},
	{code: "osteoporosis_uk", kind: Condition, meaning: "osteoporosis, by the UK consensus", effect: spine, cautions: []Code{noSpinalFlexion},
		from: said("brookewavell2022", evidence.Published, "build up to a load liftable 8 to 12 times, up to 3 sets; no deep forward bending of the spine; after a vertebral fracture, or several from little force, impact no higher than brisk walking; who tends to fall trains balance and strength first")},
	{code: "osteoporosis_essa", kind: Condition, meaning: "osteoporosis, by the Australian statement", effect: spine, cautions: []Code{noSpinalFlexion},
		from: said("beck2017", evidence.Published, "advises against bending the spine under load; with osteoarthritis or frailty the impact may have to be altered")},
	{code: "osteoporosis_essa_dose", kind: Condition, meaning: "osteoporosis, dose of the Australian statement", effect: spine, cautions: []Code{noSpinalFlexion},
		from: said("beck2017", evidence.FromMemory, "twice a week, 2 to 3 sets of 8 at 80 to 85 % of the 1RM, lower at the start in high risk")},
	{code: "vertebral_fracture", kind: Condition, meaning: "vertebral fracture", effect: earlyFracture, notKnown: &lookBroken,
		dated: &dated{months: fractureMonths, later: brokenSpine, test: true}, also: []evidence.FactID{spineCountFact, unsureFact}, cautions: []Code{noSpinalFlexion, techniqueFirst, lowImpact},
		from: said("brookewavell2022", evidence.Published, "after a vertebral fracture impact no higher than brisk walking")},
	{code: "osteoporosis_with_vertebral_fracture", kind: Condition, meaning: "osteoporosis with vertebral fracture", effect: earlyFracture, notKnown: &lookBroken,
		dated: &dated{months: fractureMonths, later: brokenSpine, test: true}, also: []evidence.FactID{spineCountFact, unsureFact}, cautions: []Code{noSpinalFlexion, techniqueFirst, lowImpact},
		from: reported("giangregorio2014", guideTable, canadaFracture)},
	{code: "total_knee_replacement", kind: Condition, meaning: "knee replacement; ask the surgeon for limits", effect: earlyImpact, notKnown: &lookImpact,
		also: []evidence.FactID{replacedFact, replacedLongFact, unsureFact}, finer: freeOfSurgeon, released: &tellImpact,
		dated: &dated{weeks: replacementWeeks, later: lookImpact, test: true, next: &dated{months: replacementMonths, later: tellImpact}},
		from:  reported("jette2020", "guideline digest", "high-intensity strength training under a therapist within 7 days; impact is kept low afterwards; no load limit found")},
	{code: "total_hip_replacement", kind: Condition, meaning: "hip replacement; ask the surgeon for limits", effect: earlyImpact.avoiding(body.DeepKneeBend), notKnown: &lookImpact,
		also: []evidence.FactID{replacedFact, replacedLongFact, hipFact, unsureFact}, finer: hipFreeOfSurgeon, released: &tellImpact,
		dated: &dated{weeks: replacementWeeks, later: lookImpact.avoiding(body.DeepKneeBend), test: true, next: &dated{months: replacementMonths, later: tellImpact}},
		from:  said("fortier2021", evidence.FromMemory, "the surgeon's limits of position while they last; no load limit found")},
	{code: "shoulder_replacement", kind: Condition, meaning: "shoulder replacement; ask the surgeon for limits", effect: askLight.with(shoulderRest.limits), notKnown: &lookArms,
		also: []evidence.FactID{replacedFact, shoulderFact, unsureFact}, dated: &dated{weeks: replacementWeeks, later: shoulderRest, test: true}, released: &tell,
		from: said("", evidence.FromMemory, "the surgeon's protocol; no load limit found")},
	{code: "rotator_cuff_repair", kind: Condition, meaning: "rotator cuff repair", effect: shoulderRest,
		dated: &dated{weeks: repairWeeks, later: tell, test: true}, cautions: []Code{noEarlyResisting},
		from: said("thigpen2016", evidence.Published, fmt.Sprintf("at rest to week 2, moved by others to week 6, then by the person; no resisted strengthening before week %d", repairWeeks))},
	{code: recentFracture, kind: Condition, meaning: "fracture in the last 6 months or slow to unite", effect: ask, released: &tell, wider: true,
		from: said("willey2003", evidence.Published, fmt.Sprintf("a fracture in the last %d months, or one slow to unite: contraindication for that region", fractureMonths))},
	{code: "hernia", kind: Condition, meaning: "hernia", effect: tell.with(Limits{NoBreathHolding: true}),
		from: said("willey2003", evidence.Published, "a hernia that is large or gives symptoms: contraindication until reviewed")},
	{code: "pelvic_organ_prolapse", kind: Condition, meaning: "pelvic organ prolapse", effect: breathe,
		from: reported("bo2022", "later reviews", "training of the pelvic floor has good support; it is contracted before and during effort; no load ceiling found and no ground for a ban on lifting")},
	{code: "glaucoma", kind: Condition, meaning: "glaucoma", effect: breathe.avoiding(body.HeadDown), cautions: []Code{noBreathHolding},
		from: said("vieira2006", evidence.Published, "breath-holding under load raised the pressure of the eye by 4.3 mmHg, breathing out by 2.2")},
	{code: "glaucoma_breathing", kind: Condition, meaning: "glaucoma, by the study of breathing", effect: breathe.avoiding(body.HeadDown), cautions: []Code{noBreathHolding},
		from: said("vera2019", evidence.Published, "breathing out on the effort raised the pressure of the eye less than holding the breath")},
	{code: "diabetic_retinopathy_severe", kind: Condition, meaning: "severe diabetic retinopathy", level: Absolute, as: retinopathyHigh, also: []evidence.FactID{belowFact},
		effect: severeEyes, released: &severeEyesTold, cautions: []Code{noBreathHolding},
		from: said("colberg2016", evidence.FromMemory, "the breath flows, the head stays up, and nothing is very hard or jolts")},
	{code: "hypertension", kind: Condition, meaning: "hypertension", effect: breathe, cautions: []Code{noBreathHolding},
		from: said("colberg2016", evidence.Published, "resistance exercise is encouraged without breath-holding")},
	{code: "hypertension_treated", kind: Condition, meaning: "treated hypertension", effect: breathe, cautions: []Code{noBreathHolding},
		from: said("colberg2016", evidence.Published, "resistance exercise is encouraged without breath-holding; some medicines cause low pressure afterwards")},
	{code: "exertional_angina", kind: Condition, meaning: "angina on effort", effect: askLight, released: &tellModerate,
		from: said("colberg2016", evidence.Published, "pulse at least 10 a minute below the onset of angina")},
	{code: afterAttackOrStroke, kind: Condition, meaning: "after a heart attack or stroke", effect: askLight, released: &tellModerate,
		also: []evidence.FactID{pastFact}, dated: &dated{months: pastMonths, later: tellModerate},
		from: said("colberg2016", evidence.Published, "the way back leads through supervised rehabilitation, from low to moderate effort; resistance may be part of it")},
	{code: "nephropathy", kind: Condition, meaning: "diabetic kidney disease", effect: breathe.with(Limits{MaxIntensity: Moderate}), cautions: []Code{noBreathHolding},
		from: reported("pmc4254543", "the article's table 4, found without its source", "no heavy lifting or breath-holding, systolic pressure not above 180 mmHg")},
	{code: "foot_ulcer_neuropathy", kind: Condition, meaning: "foot ulcer, or loss of feeling in the feet", effect: ask.avoiding(body.FreeStanding, body.SingleLegStance, body.Impact), released: &stepGently,
		from: said("colberg2016", evidence.Published, "no weight on an ulcer that has not healed; feet looked at daily")},
	{code: "autonomic_neuropathy_postural_hypotension", kind: Condition, meaning: "autonomic neuropathy or low pressure on standing", effect: supported.avoiding(body.FloorTransfer, body.HeadDown), balance: true,
		from: said("colberg2016", evidence.Published, "avoid quick changes of posture")},
	{code: "beta_blocker", kind: Condition, meaning: "takes a beta-blocker", effect: tell.with(Limits{EffortNotPulse: true}), cautions: []Code{effortNotPulse},
		from: said("", evidence.FromMemory, "the pulse is blunted: use perceived exertion")},
	{code: "anticoagulant", kind: Condition, meaning: "takes an anticoagulant", effect: tell,
		from: said("", evidence.FromMemory, "no load limit found; care with bleeding and falls")},
	{code: "steroid_tablets", kind: Condition, meaning: "takes steroid tablets, for months or again and again", effect: tell,
		from: spineFlag("a small injury with osteoporosis or steroids", brokenBone, evidence.Secondary)},
	{code: "epilepsy", kind: Condition, meaning: "epilepsy, or seizures of another kind", effect: tell, balance: true,
		from: ours("a seizure comes without warning: treated as a risk of falling where nobody is near")},
	{code: "parkinsons", kind: Condition, meaning: "Parkinson's disease", effect: supported, balance: true, also: []evidence.FactID{timingFact},
		from: said("jpd2023", evidence.Published, "the same guidance as for age peers, resistance with it")},
	{code: "frailty", kind: Condition, meaning: "frailty", effect: supported, balance: true,
		from: said("izquierdo2021", evidence.Published, "its main signs lessen with planned resistance exercise; everybody gets a dose of their own")},
	{code: "frailty_dose", kind: Condition, meaning: "frailty, by the dose of the consensus", effect: supported, balance: true,
		from: said("izquierdo2021", evidence.FromMemory, "start near 30 % of the 1RM, build towards 70 to 80 %, 1 to 3 sets of 6 to 12, 2 to 3 days a week")},
	{code: fallsRisk, kind: Condition, meaning: "fear of falling, a fall in the last 12 months, or poor steadiness", effect: supported, balance: true, also: []evidence.FactID{fallFact, fallsFact, followUpFact},
		from: reported("cdc2019", "summaries of the algorithm", "each of the three by itself makes the screen positive; balance, strength and walking are then tested")},
	{code: "vertigo", kind: Condition, meaning: "vertigo", effect: supported.avoiding(body.HeadDown), balance: true,
		from: said("", evidence.FromMemory, "seated or supported work; treated as a risk of falling")},
	{code: "severe_cognitive_impairment", kind: Condition, meaning: "severe cognitive impairment or disturbed behaviour", wider: true, effect: askNoLoad, released: &besideLight, notKnown: &lookBeside, also: []evidence.FactID{inRoomFact},
		from: said("willey2003", evidence.Published, "dementia of severe degree or disturbed behaviour: contraindication")},
	{code: "bone_metastases", kind: Condition, meaning: "bone metastases", effect: askNoLoad.with(bones.limits), released: &bones,
		from: said("campbell2022", evidence.Published, "not an automatic bar: the medical team weighs the risk; posture and controlled movement")},
	{code: "aortic_or_cerebral_aneurysm", kind: Condition, meaning: "aortic aneurysm, large or growing, or an aneurysm of a brain artery", wider: true, effect: askNothing,
		from: said("willey2003", evidence.Published, "contraindication")},
	{code: "copd_asymptomatic", kind: Condition, meaning: "lung disease without symptoms", effect: tell,
		from: provenance{says: "lung disease by itself no longer sends a person for clearance", source: "riebe2015", locator: "opening of chapter 2 of the guideline's 10th edition", basis: evidence.Published}},
}

// severeEyes are what severe retinopathy leaves, and severeEyesTold once the eye clinic has agreed.
var (
	severeEyes     = retinopathy.with(Limits{MaxIntensity: Moderate, LowImpact: true}).avoiding(body.HeadDown, body.Impact)
	severeEyesTold = tell.with(severeEyes.limits)
)

// bones are the limits with bone metastases once the medical team has spoken.
var bones = spine.with(Limits{TechniqueFirst: true, LowImpact: true}).avoiding(body.Impact, body.FastMovement)
