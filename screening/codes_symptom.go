package screening

import "example.org/posology/units/evidence"

// signsList is where the signs and symptoms were read.
const signsList = "table of signs and symptoms in an earlier edition of the guideline"

func symptomFrom(says string, basis evidence.Basis) provenance {
	return provenance{says: says, source: "riebe2015", locator: signsList, basis: basis}
}

// symptomEntries are the signs and symptoms of the preparticipation rule.
// Those of a heart short of blood and blackouts are seen the same day, and no
// clearance lifts them, since none can have known of them; for the others one
// that names them may, and dizziness once it is known to be no faint. What a
// clinician has looked at and has not changed is told apart by finer questions. Of what
// the person is not sure of a look in the room settles some; what may be the heart's
// own alarm, a faint or a failing heart is not among them, nor any sign beside heart failure.
var symptomEntries = []entry{
	{code: "ischaemic_chest_neck_jaw_arm_pain", kind: Symptom, meaning: "ache that may come from the heart, in arm, jaw, neck or chest",
		from: symptomFrom("whatever a heart short of blood may make arm, jaw, neck or chest feel is on the list", evidence.FromMemory), effect: seeToday},
	{code: "palpitations_or_tachycardia", kind: Symptom, meaning: "racing or pounding heart",
		also: []evidence.FactID{lookedFact, inRoomFact}, from: symptomFrom("palpitations or tachycardia are on the list", evidence.Published), effect: askNothing, notKnown: &lookModerate, finer: looked(palpitationsNew), released: &tellModerate},
	{code: "known_heart_murmur", kind: Symptom, meaning: "known heart murmur",
		also: []evidence.FactID{lookedFact, inRoomFact}, from: symptomFrom("a known heart murmur is on the list", evidence.Published), effect: askNothing, notKnown: &lookModerate, finer: looked(murmurNew), released: &tellModerate},
	{code: "dyspnoea_rest_or_mild_exertion", kind: Symptom, meaning: "breathlessness on very little effort, or none",
		also: []evidence.FactID{lookedFact}, from: symptomFrom("breathlessness on very little effort, or none, is on the list", evidence.FromMemory), effect: askNothing, finer: looked(breathNew), released: &tellModerate},
	{code: "orthopnoea_or_pnd", kind: Symptom, meaning: "breathlessness lying flat or waking at night",
		from: symptomFrom("orthopnoea or paroxysmal nocturnal dyspnoea is on the list", evidence.FromMemory), effect: askNothing, released: &tellModerate},
	{code: "unusual_fatigue_or_dyspnoea_usual_activity", kind: Symptom, meaning: "everyday tasks that tire the person, or take the breath, more than they should",
		also: []evidence.FactID{lookedFact, inRoomFact}, from: symptomFrom("everyday tasks that are harder than they should be, for want of strength or breath, are on the list", evidence.Published), effect: askNothing, notKnown: &lookModerate, finer: looked(fatigueNew), released: &tellModerate},
	{code: "dizziness_or_syncope", kind: Symptom, meaning: "dizzy spells or blackouts",
		also: []evidence.FactID{lookedFact, newDizzyFact}, from: symptomFrom("dizziness or syncope is on the list", evidence.FromMemory), effect: seeToday, finer: dizzyFiner, lesser: &askNothing, released: &tellModerate, balance: true},
	{code: "ankle_oedema", kind: Symptom, meaning: "swelling of both ankles",
		also: []evidence.FactID{lookedFact, inRoomFact}, from: symptomFrom("ankle oedema is on the list", evidence.Published), effect: askNothing, notKnown: &lookModerate, finer: looked(anklesNew), released: &tellModerate},
	{code: "intermittent_claudication", kind: Symptom, meaning: "cramp of the legs on a walk, gone after a rest",
		also: []evidence.FactID{lookedFact, inRoomFact}, from: symptomFrom("intermittent claudication is on the list", evidence.Published), effect: askNothing, notKnown: &lookModerate, finer: claudicationFiner, released: &tellModerate},
}

// tellModerate is what goes on after clearance from the branches that ask for
// it: light or moderate effort at the start.
var tellModerate = tell.with(Limits{MaxIntensity: Moderate})
