package screening

import (
	"iter"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Lifter is who can lift what a finding holds.
type Lifter uint8

// Who can lift it.
const (
	_                 Lifter = iota // nothing is held
	ThePerson                       // "the person": by answering
	ThePhysio                       // "the physiotherapist"
	TheDoctor                       // "the doctor"
	TheSurgeon                      // "the surgeon", or the clinic that operated
	TheTeam                         // "the specialist team": that looks after the illness
	EmergencyServices               // "the emergency services"
)

var lifters = field.NewVocabulary[Lifter]("who lifts it", "", "the person", "the physiotherapist", "the doctor", "the surgeon", "the specialist team", "the emergency services")

// Lifters yields everybody who can lift something.
func Lifters() iter.Seq[Lifter] { return lifters.All() }

// String returns the name, such as "the doctor", and "" where nothing is held.
func (l Lifter) String() string { return lifters.Text(l) }

// MarshalText writes what String returns.
func (l Lifter) MarshalText() ([]byte, error) { return lifters.Marshal(l) }

// UnmarshalText reads what MarshalText writes.
func (l *Lifter) UnmarshalText(text []byte) error { return lifters.Unmarshal(text, l) }

// Means is with what a hold is lifted.
type Means uint8

// Means.
const (
	_            Means = iota // nothing is held
	AnAnswer                  // "an answer": to the question of [WayOut.Ask]
	AReading                  // "a reading": that is taken, or taken again
	ALook                     // "a look": of the physiotherapist, at what the clinician's words say
	ADate                     // "a date": of what happened, once it lies far enough back
	AClearance                // "a clearance": that names it, with a name and a day
	TheirLimits               // "the limits set": by who operated, as a [Restriction], or that none are left
	BeingSettled              // "being settled": seen and treated, and then answered with no
)

var means = field.NewVocabulary[Means]("with what", "", "an answer", "a reading", "a look", "a date", "a clearance", "the limits set", "being settled")

// EveryMeans yields all that a hold is lifted with.
func EveryMeans() iter.Seq[Means] { return means.All() }

// String returns the name, such as "a clearance", and "" where nothing is held.
func (m Means) String() string { return means.Text(m) }

// MarshalText writes what String returns.
func (m Means) MarshalText() ([]byte, error) { return means.Marshal(m) }

// UnmarshalText reads what MarshalText writes.
func (m *Means) UnmarshalText(text []byte) error { return means.Unmarshal(text, m) }

// A WayOut is the way out of what a finding holds: who can lift it, and with what.
// It is zero where nothing is held and nobody is asked. It names the way and
// promises nothing: what the answer or the paper says decides.
type WayOut struct {
	Who  Lifter    `json:"who"`
	With Means     `json:"with"`
	Ask  Code      `json:"ask,omitzero"`  // question that takes it, where there is one
	From units.Day `json:"from,omitzero"` // day from which it ends by itself, if it does
}

// String says the way, such as "the doctor, with a clearance", and "" for none.
func (e WayOut) String() string {
	if e.Who == 0 {
		return ""
	}
	text := e.Who.String() + ", with " + e.With.String()
	if !e.From.IsZero() {
		text += "; by itself from " + e.From.String()
	}
	return text
}

// exit is the way out of a finding with the effect e.
func (f *Finding) exit(e effect) WayOut {
	switch {
	case e.meanwhile <= WithinLimits && e.route < PhysioLooks:
		return WayOut{}
	case e.route == Emergency:
		return WayOut{Who: EmergencyServices, With: BeingSettled}
	case f.Open && measuredAgain[f.Code] != "":
		return WayOut{Who: ThePerson, With: AReading, Ask: measuredAgain[f.Code]}
	case f.Open && f.Code == pressureUntaken:
		return WayOut{Who: ThePerson, With: AReading, Ask: askPressure}
	case f.Open && untakenReadings[f.Code]:
		return WayOut{Who: ThePerson, With: AReading, Ask: f.Code}
	case f.Open:
		return WayOut{Who: ThePerson, With: AnAnswer, Ask: f.Code}
	case f.Branch() != 0:
		return WayOut{Who: TheDoctor, With: AClearance, Ask: askClearance}
	case e.route == PhysioLooks:
		return WayOut{Who: ThePhysio, With: ALook, Ask: lookOf(f.Code)}
	}
	if en := find(f.Code); en != nil {
		return en.exit()
	}
	return WayOut{Who: TheDoctor, With: BeingSettled}
}

// lookOf is the question that takes a look at what a code stands for, "" for none.
func lookOf(code Code) Code {
	switch e := find(code); {
	case e == nil:
	case e.seen != nil:
		return e.seen.question
	case e.finer != nil:
		return e.finer.grave[0]
	}
	if findQuestion(code) != nil {
		return code
	}
	return ""
}

// exit is the way out of an entry that is present.
func (e *entry) exit() WayOut {
	who, with := TheDoctor, BeingSettled
	if e.code == glucoseLow { // treated, and read again
		return WayOut{Who: ThePerson, With: AReading, Ask: askGlucose}
	}
	switch {
	case e.released != nil:
		with = AClearance
	case e.dated != nil || e.finer != nil && e.finer.dated != nil:
		with = ADate
	}
	if own, ok := exits[e.code]; ok {
		who = own
	}
	if setLimits[e.code] {
		with = TheirLimits
	}
	x := WayOut{Who: who, With: with}
	switch with {
	case AClearance:
		x.Ask = askClearance
	case ADate:
		x.Ask = dayOf(e.code)
	case TheirLimits:
		x.Ask = askLimit
	}
	return x
}

// exits are who lifts an entry, where it is not the person's doctor.
var exits = map[Code]Lifter{
	"total_knee_replacement": TheSurgeon, "total_hip_replacement": TheSurgeon, "shoulder_replacement": TheSurgeon,
	"rotator_cuff_repair": TheSurgeon, recentFracture: TheSurgeon, "hip_fracture": TheSurgeon, eyeOperation: TheSurgeon,
	"retinal_bleed_or_detachment": TheTeam, "npdr_moderate_or_worse": TheTeam, "diabetic_retinopathy_severe": TheTeam, retinopathyHigh: TheTeam,
	operated: TheSurgeon, "unstable_prosthesis": TheSurgeon, "replacement_wound_problem": TheSurgeon, replacementLimited: TheSurgeon, otherPain[PostOperativePain]: TheSurgeon,

	heartFailure: TheTeam, "decompensated_hf": TheTeam, "heart_failure_nyha_iv": TheTeam, recentHeartAttack: TheTeam, weightGain: TheTeam,
	"aortic_or_cerebral_aneurysm": TheTeam, "severe_valve_disease": TheTeam, "recent_intracranial_bleed": TheTeam, "unstable_neurological_disease": TheTeam,
	worsening: TheTeam, pulseLying: TheTeam, "pacemaker": TheTeam, "icd": TheTeam, "marfan": TheTeam, "severe_pulmonary_hypertension": TheTeam,
	"bone_metastases": TheTeam, "chemotherapy": TheTeam, "oxygen_therapy": TheTeam, hbA1cHigh: TheTeam, noStrips: TheTeam, ketonesHigh: TheTeam,
	otherPain[BonePain]: TheTeam, lateLow: TheTeam,
}

// setLimits are entries of which only the limits of who operated say more.
var setLimits = map[Code]bool{replacementLimited: true}

// untakenReadings are topics that a reading settles.
var untakenReadings = map[Code]bool{
	askPressure: true, askGlucose: true, askKetones: true, askSaturation: true, askWeight: true, askPulse: true, askCounts: true,
}

// frees finds the one way out that would free most: without the findings that it is
// the way out of, the most may go on. Of several the one of the graver findings.
// A branch for signs only says again what its signs say.
func (o *Outcome) frees() WayOut {
	if o.Meanwhile <= WithinLimits && o.Route < PhysioLooks {
		return WayOut{}
	}
	var best WayOut
	var left Finding
	for i := range o.Findings {
		exit := o.Findings[i].Exit.way()
		if exit.Who == 0 || exit == best {
			continue
		}
		rest := o.without(exit)
		if best.Who == 0 || rest.Meanwhile < left.Meanwhile || rest.Meanwhile == left.Meanwhile && rest.Route < left.Route {
			best, left = exit, rest
		}
	}
	return best
}

// way is what two findings with one way out have in common.
func (e WayOut) way() WayOut {
	e.From = 0
	return e
}

// without is the worst of the findings that have another way out.
func (o *Outcome) without(exit WayOut) Finding {
	var worst Finding
	for i := range o.Findings {
		f := &o.Findings[i]
		if f.Code == "N3" || f.Code == "A3" || f.Exit.way() == exit {
			continue
		}
		worst.Route, worst.Meanwhile = max(worst.Route, f.Route), max(worst.Meanwhile, f.Meanwhile)
	}
	return worst
}
