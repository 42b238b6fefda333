package screening

import (
	"fmt"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Codes of questions that split the people of one code.
const (
	dizzyFaint         Code = "dizziness_faint"
	dizzyNew           Code = "dizziness_new"
	dizzyStanding      Code = "dizziness_on_standing"
	dizzySpinning      Code = "dizziness_spinning"
	anklesNew          Code = "ankle_oedema_new"
	murmurNew          Code = "heart_murmur_new"
	palpitationsNew    Code = "palpitations_new"
	breathNew          Code = "dyspnoea_new"
	fatigueNew         Code = "fatigue_new"
	crampNew           Code = "claudication_new"
	cancerActive       Code = "cancer_active"
	painChanged        Code = "chronic_pain_changed"
	notCataract        Code = "eye_operation_not_cataract"
	replacementLimited Code = "replacement_limited"
	eyeOperation       Code = "recent_eye_operation"
	dizziness          Code = "dizziness_or_syncope"
	cancerBefore       Code = "cancer_history"
	backUnseen         Code = "back_pain_unseen"
	placesUnseen       Code = "many_pains_unseen"
	pelvisUnseen       Code = "pelvic_heaviness_unseen"
	hipUnseen          Code = "hip_fracture_unseen"
	shapeUnseen        Code = "spine_shape_unseen"
	midlineUnseen      Code = "midline_pain_unseen"
	worseUnseen        Code = "worse_pain_unseen"
	unhealed           Code = "operation_unhealed"
)

// The finer rows. A sign that a clinician has looked at and that has not changed is
// asked about again, with light and supervised work until the answer is there.
var (
	lookedAtSign = &finer{settled: askLight, explained: true}

	dizzyFiner        = &finer{grave: []Code{dizzyFaint, dizzyNew}, settled: tell, explained: true, kept: []Code{dizzyFaint}}
	claudicationFiner = &finer{grave: []Code{crampNew}, settled: tellModerate, explained: true}
	cataract          = &finer{grave: []Code{notCataract}, settled: askNothing.with(eyeSpared.limits),
		dated: &dated{weeks: eyeWeeks, later: eyeSpared, next: &dated{weeks: eyeFreeWeeks, later: nothingFound}}}
	freeOfSurgeon    = &finer{grave: []Code{replacementLimited}, settled: lookImpact, dated: &dated{weeks: replacementWeeks, later: tellImpact}}
	hipFreeOfSurgeon = &finer{grave: []Code{replacementLimited}, settled: lookImpact.avoiding(body.DeepKneeBend), dated: &dated{weeks: replacementWeeks, later: tellImpact}}
)

// seenBy is of what a physiotherapist looks at: once that was done, with nothing left
// against loading it, training goes on as it is told.
func seenBy(look Code) *finer { return &finer{grave: []Code{look}, settled: tell} }

// pelvisSeen keeps to breathing out, whatever the look said.
var pelvisSeen = &finer{grave: []Code{pelvisUnseen}, settled: tell.with(Limits{NoBreathHolding: true})}

// looked is lookedAtSign for the sign that one question is about.
func looked(by Code) *finer {
	f := *lookedAtSign
	f.grave = []Code{by}
	return &f
}

// healed is of an operation that nothing is left of.
var healed = &finer{grave: []Code{unhealed}, settled: tell, dated: &dated{weeks: replacementWeeks, later: nothingFound}}

// Effects of finer rows.
var (
	look       = effect{PhysioLooks, WithinLimits, Limits{}}
	lookImpact = look.with(Limits{LowImpact: true})
	lookSpine  = look.avoiding(body.LoadedSpinalFlex, body.SpinalTwist, body.PickUpFromFloor)
	lookBroken = look.with(brokenSpine.limits)
	// lookShape spares a spine that may have broken lately, arms and legs go on.
	lookShape = lookBroken.avoiding(body.SpinalCompression, body.Overhead, body.Impact, body.FastMovement)
	// Until it is looked at whether something is there at all, effort stays where its
	// kind would let it begin: moderate of a sign, light of what is heavier.
	lookModerate = look.with(Limits{MaxIntensity: Moderate})
	lookLight    = look.with(Limits{MaxIntensity: Light})
	lookGently   = lookLight.with(Limits{MinReserve: lightReserve})
	lookBeside   = lookGently.with(Limits{LeastSetting: WithHelper})
	lookArms     = lookLight.avoiding(body.ShoulderResisted, body.Overhead)

	eyeSpared  = tell.with(Limits{NoBreathHolding: true}).avoiding(body.HeadDown)
	seatedWork = tell.with(Limits{Support: true}).avoiding(body.FreeStanding, body.SingleLegStance, body.FloorTransfer, body.HeadDown)
)

// finerTopics are kinds that limit by themselves.
var finerTopics = []entry{
	{code: dizzyStanding, kind: Topic, meaning: "dizzy on standing up", effect: effect{PhysioLooks, WithinLimits, seatedWork.limits}, balance: true,
		from: said("ohtable2007", evidence.Published, "pressure that drops on standing: rise in stages, march or pump the feet first, no straining or breath-holding, exercise fitted to the person")},
	{code: dizzySpinning, kind: Topic, meaning: "spinning on turning in bed or moving the head", effect: look.avoiding(body.LyingSupine, body.HeadDown), balance: true,
		from: reported("bppv2017", "a national adaptation of the guideline", "positional vertigo is tested by lying back with the head turned and treated by repositioning; the risk of falling is looked at; seen again within a month")},
	{code: replacementLimited, kind: Topic, meaning: "replaced joint with limits of the surgeon that are left", effect: ask.with(Limits{LowImpact: true}),
		from: ours("the surgeon's limits hold as long as the surgeon says so; they come in as a restriction, with who set it and what it binds; until one stands for each replaced joint the surgeon is asked, after that it is told")},
	{code: pressureUntaken, kind: Topic, meaning: "blood pressure that was to be measured and was not", effect: untakenPressure, balance: true, also: []evidence.FactID{untakenFact},
		from: ours(fmt.Sprintf("an untaken pressure counts as one above %d/%d mmHg until it is taken", relativeSystolic, relativeDiastolic))},
	{code: spineNotSeen, kind: Topic, meaning: "osteoporosis, and not known whether a bone of the spine has broken", effect: lookBroken, also: []evidence.FactID{spineCountFact},
		from: ours("many breaks of the spine are silent: until its height and shape are looked at the limits are those of an old break, and no low counts")},
}

// finerFlags are red flags that one code of the lists hid.
var finerFlags = []entry{
	{code: "spinning_with_new_signs", kind: RedFlag, meaning: "sudden lasting spinning with new unsteadiness, new deafness or odd eye movements", effect: emergency, flag: EmergencyReferral, balance: true,
		from: said("ng127", evidence.Published, "sudden lasting vertigo with an unsteady walk: an eye test by a trained person, else at once to hospital")},
}

// spinalDeformity is a spine newly out of its shape.
const spinalDeformity Code = "spinal_deformity"

// breaksBones are what makes a new shape of the spine, or bad pain over it, a likely
// break; steroids, which thin bones, weaken the immune system too, where nobody told them.
var breaksBones = append([]Code{recentFracture, fallsRisk, cancerBefore, "weakened_immune_system"}, weakBones...)

// weakBones are osteoporosis in whatever words, a bone of the spine or a hip that broke,
// bones with cancer in them, and steroids.
var weakBones = []Code{"osteoporosis", "osteoporosis_uk", "osteoporosis_essa", "osteoporosis_essa_dose", "osteoporosis_with_vertebral_fracture", vertebralFracture, "hip_fracture", "bone_metastases", "steroid_tablets"}

// spineNotSeen stands for a fracture of the spine that is not known in osteoporosis.
const spineNotSeen Code = "spine_not_seen"

// pressureUntaken stands for the pressure that an assessment goes without.
const pressureUntaken Code = "pressure_not_measured"

const spineCountFact = factPrefix + "spine-count"

// finerQuestions are asked where an answer would matter; a yes is the grave one.
var finerQuestions = []question{
	{code: dizzyFaint, yesNo: true, triggers: []Code{dizziness}, client: "About the dizzy spells: have you passed out or nearly so, or do they come while you exert yourself?",
		clinician: "Faint, blackout or dizziness on effort: seen the same day; no clearance lifts a yes."},
	{code: dizzyNew, yesNo: true, triggers: []Code{dizziness}, client: "Are the dizzy spells new or changed, or has no doctor looked at them yet?",
		clinician: "Dizziness that is new, changed or not looked at."},
	{code: dizzyStanding, yesNo: true, triggers: []Code{dizziness}, means: dizzyStanding, client: "Do they come when you stand up?",
		clinician: "Dizziness on standing: pressure lying and after 1 and 3 minutes of standing."},
	{code: dizzySpinning, yesNo: true, triggers: []Code{dizziness}, means: dizzySpinning, client: "Does everything spin, as on turning over in bed or looking up?",
		clinician: "Spinning by position: test and treat by repositioning."},
	{code: anklesNew, yesNo: true, triggers: []Code{"ankle_oedema"}, client: "Is the swelling of the ankles new or growing, or has no doctor looked at it yet?",
		clinician: "Swelling that is new, growing or not looked at; if known, since when and by whom."},
	{code: murmurNew, yesNo: true, triggers: []Code{"known_heart_murmur"}, client: "Was the murmur found only lately, or has no picture of the heart been taken since?",
		clinician: "Murmur newly found, or never looked at by echo; if known, when."},
	{code: palpitationsNew, yesNo: true, triggers: []Code{"palpitations_or_tachycardia"}, client: "Is the racing heart new or changed, or has no doctor looked at it yet?",
		clinician: "Palpitations that are new, changed or not looked at."},
	{code: breathNew, yesNo: true, triggers: []Code{"dyspnoea_rest_or_mild_exertion"}, client: "Is the breathlessness new or growing, or has no doctor looked at it yet?",
		clinician: "Breathlessness that is new, growing or not looked at; known and stable, which illness explains it."},
	{code: fatigueNew, yesNo: true, triggers: []Code{"unusual_fatigue_or_dyspnoea_usual_activity"}, client: "Is that tiredness new or growing, or has no doctor looked at it yet?",
		clinician: "Fatigue that is new, growing or not looked at."},
	{code: crampNew, yesNo: true, triggers: []Code{"intermittent_claudication"}, client: "Is the cramp new or coming sooner, or has no doctor looked at your legs yet?",
		clinician: "Claudication that is new, coming sooner or not looked at."},
	{code: backUnseen, yesNo: true, triggers: chronicSigns[:1], client: "About the back pain that lasts: is it still to be looked at by your physiotherapist, or did the look leave something against weights?",
		clinician: "Back pain that lasts, not looked at by the physiotherapist, or with something left against loading the spine: no, once neither is so."},
	{code: placesUnseen, yesNo: true, triggers: chronicSigns[1:], client: "About the pain in many places: is it still to be looked at by your physiotherapist, or did the look leave something against weights?",
		clinician: "Pain in many places, not looked at by the physiotherapist, or with something left against weights: no, once neither is so."},
	{code: pelvisUnseen, yesNo: true, triggers: []Code{"pelvic_heaviness"}, client: "About the heaviness below: is it still to be looked at, or did the look leave something against effort?",
		clinician: "Pelvic heaviness, not looked at, or with something left against effort: no, once neither is so."},
	{code: hipUnseen, yesNo: true, triggers: []Code{"hip_fracture"}, client: "About the hip that broke: is it still to be looked at by your physiotherapist, or did the look leave something against weights?",
		clinician: "Broken hip, not looked at by the physiotherapist, or with something left against weights: no, once neither is so."},
	{code: shapeUnseen, yesNo: true, triggers: []Code{spinalDeformity}, client: "About the shape of your back: is it still to be looked at by your physiotherapist, or did the look leave something against weights?",
		clinician: "Spine newly out of its shape, not looked at by the physiotherapist, or with something left against loading it: no, once neither is so."},
	{code: midlineUnseen, yesNo: true, triggers: []Code{"severe_midline_back_pain"}, client: "About the pain in the middle of your back: is it still to be looked at by your physiotherapist, or did the look leave something against weights?",
		clinician: "Severe pain in the midline of the back, not looked at by the physiotherapist, or with something left against loading it: no, once neither is so."},
	{code: worseUnseen, yesNo: true, triggers: []Code{"pain_made_worse_by_training"}, client: "About the pain that training made worse: is it still to be looked at by your physiotherapist, or did the look leave something against weights?",
		clinician: "Pain that training made worse, not looked at by the physiotherapist, or with something left against weights: no, once neither is so."},
	{code: unhealed, yesNo: true, triggers: []Code{operated}, client: "About the operation: is anything of it still healing, or have you not been told yet that you may train?",
		clinician: "Operation that has not healed, or of which nobody responsible has said that training may begin: no, once neither is so."},
	{code: cancerActive, yesNo: true, triggers: []Code{cancerBefore}, client: "Is the cancer still being treated, or checked for?",
		clinician: "Cancer under treatment or follow-up; without either it counts as long past."},
	{code: painChanged, yesNo: true, triggers: chronicSigns, client: "Is that pain new within the last months, or has it changed?",
		clinician: "Pain that is new or has changed; of years and the same it is chronic."},
	{code: notCataract, yesNo: true, triggers: []Code{eyeOperation}, client: "Was it another operation than for a cataract, such as for pressure in the eye or the retina?",
		clinician: "Eye operation other than for cataract: the surgeon says when."},
	{code: replacementLimited, yesNo: true, triggers: []Code{"total_knee_replacement", "total_hip_replacement"}, client: "Does your surgeon still limit what the new joint may do?",
		clinician: "Whether limits of the surgeon are left; if so, the restriction itself."},
}

// chronicSigns are red flags that years of the same pain explain.
var chronicSigns = []Code{"back_pain_not_better_at_a_month", "pain_in_many_places"}

// Facts of the finer rows.
var finerFacts = []evidence.Fact{
	{ID: lookedFact, Value: "a sign that a clinician has looked at and that has not changed is told or asked about again, with light and supervised work meanwhile; the preparticipation rule counts it as a sign all the same, and its answer stands beside", Basis: evidence.Design},
	{ID: successorFact, Value: "where an older list is stricter than one that came after it the newer one is followed unless the policy says otherwise: risk factors and diabetes by themselves are relative contraindications of AHA 2007 and none of ACSM 2015", Basis: evidence.Design},
	{ID: untakenFact, Value: fmt.Sprintf("a pressure that was not measured lets no more go on than one above %d/%d mmHg and is taken within %d days", relativeSystolic, relativeDiastolic, pressureDays), Basis: evidence.Design, From: []evidence.FactID{factPrefix + evidence.FactID(pressureRelative)}},
	{ID: chronicFact, Value: "signs of the spine that are pain of years and the same, or a cancer that is neither treated nor followed, are looked at or asked about together; with any other sign they stop", Basis: evidence.Design, From: []evidence.FactID{togetherFact}},
	{ID: replacedLongFact, Value: fmt.Sprintf("a hip or knee replaced %d months ago is asked about no more; impact stays low", replacementMonths), Basis: evidence.Design, From: []evidence.FactID{hipFact, factPrefix + "total_knee_replacement"}},
	{ID: hipFact, Value: "after the posterior approach usual precautions last 6 to 12 weeks, by some surgeons for life", Source: "eannucci2019", Basis: evidence.Published},
	{ID: shoulderFact, Value: "of 99 surgeons weights are not allowed after a reverse replacement of the shoulder, and undecided after an anatomic one: always the surgeon's own figure", Source: "magnussen2011", Basis: evidence.Published},
	{ID: deviceFact, Value: fmt.Sprintf("for %d weeks or more no strength work that pulls at the wound; legs go on", deviceWeeks), Source: "acsmdevice2010", Basis: evidence.Published},
	{ID: cataractFact, Value: fmt.Sprintf("after a cataract operation gentle exercise from day 3 to 7, normal exercise from day 7 to 10; here asked within %d weeks, and nothing is left from %d weeks on unless told otherwise", eyeWeeks, eyeFreeWeeks), Source: "rcscataract", Basis: evidence.Published},
	{ID: eyeFact, Value: "drainage for glaucoma: no heavy lifting for 2 weeks; retina or gas: 2 weeks at least; always the eye surgeon", Source: "eyeleaflets", Via: "single leaflets", Basis: evidence.Secondary},
	{ID: shapeFact, Value: "a spine newly out of its shape, or severe pain in its midline, with nothing else that points to a break (no osteoporosis, no broken bone, no fall, no cancer, no weakened immune system), is one sign alone: the physiotherapist looks, and until then nothing presses on the spine", Basis: evidence.Design, From: []evidence.FactID{togetherFact}},
	{ID: unsureFact, Value: "whether a hip, knee or shoulder was replaced or a bone of the spine ever broke, where the person does not know: no published rule of this package asks, so the physiotherapist looks (scar, gait, height, shape of the back), and until then what an old one bars is left out", Basis: evidence.Design},
	{ID: inRoomFact, Value: "where a published rule counts only who is known to have it, the person is not sure, and asking further, a look or a measure in the room settles it: the physiotherapist looks, and until then effort is no harder than light or moderate, or the place is spared; absolute entries, alarm signs, signs beside heart failure and what only a doctor can tell hold as if they were there, save pressure out of control where a reading says what it is", Basis: evidence.Design},
	{ID: newDizzyFact, Value: "dizzy spells that are new or not looked at, without a faint and not on effort, wait for a doctor's agreement, as the preparticipation rule has it; they are not seen the same day", Basis: evidence.Design, From: []evidence.FactID{factPrefix + evidence.FactID(dizziness)}},
	{ID: newBackFact, Value: "pain told as ordinary, at the back or at no place told, in a higher zone of the pain model than the usual one, of somebody with osteoporosis, a spine or hip that broke or cancer in the bones, may be a fracture: a doctor is asked before training goes on", Basis: evidence.Design, From: []evidence.FactID{factPrefix + "sudden_back_pain_or_height_loss"}},
	{ID: seenFact, Value: "what the physiotherapist looks at is held as long as nobody looked, or the look left something against weights; after that it is told", Basis: evidence.Design},
	{ID: followedFact, Value: "pain of years and the same, with a cancer that is treated or followed: a doctor is asked, movements are practised without weight and the spine is spared until the answer", Basis: evidence.Design, From: []evidence.FactID{chronicFact}},
	{ID: pastFact, Value: fmt.Sprintf("a heart attack or stroke counts as past after %d months without another", pastMonths), Basis: evidence.Design},
	{ID: spineCountFact, Value: fmt.Sprintf("sets of at least %d repetitions, the low end of the published 8 to 12", spineLeastCount), Source: "giangregorio2014", Via: guideTable, Basis: evidence.Secondary},
}

// Facts behind the finer rows.
const (
	lookedFact       = factPrefix + "looked-at"
	successorFact    = factPrefix + "newer-list"
	untakenFact      = factPrefix + "pressure-untaken"
	chronicFact      = factPrefix + "chronic-signs"
	replacedLongFact = factPrefix + "replaced-long-ago"
	hipFact          = factPrefix + "hip-precautions"
	shoulderFact     = factPrefix + "shoulder-figure"
	deviceFact       = factPrefix + "device-side"
	cataractFact     = factPrefix + "cataract"
	eyeFact          = factPrefix + "eye-surgeon"
	pastFact         = factPrefix + "long-past"
	shapeFact        = factPrefix + "shape-alone"
	unsureFact       = factPrefix + "not-known-looked-at"
	inRoomFact       = factPrefix + "not-known-in-the-room"
	newBackFact      = factPrefix + "back-pain-weak-bones"
	seenFact         = factPrefix + "seen-by-physio"
	newDizzyFact     = factPrefix + "dizzy-no-faint"
	followedFact     = factPrefix + "chronic-signs-cancer-followed"
)

// What follows from pain that spreads without a sign of a serious cause: the place is
// spared until it is looked at.
var (
	lookNoLoad  = effect{PhysioLooks, UnloadedPractice, Limits{}}
	lookLighter = lookSpine.with(lighter.limits)
)

// byNewer is what follows from what a newer list has dropped.
var byNewer = tell

// untakenPressure is what a pressure that was not measured lets go on.
var untakenPressure = askLight.with(Limits{NoBreathHolding: true, MaxIntensity: Moderate, Support: true})
