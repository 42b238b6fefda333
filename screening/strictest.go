package screening

import (
	"iter"

	"example.org/posology/units/field"
)

// Strictness is what the strictest of the published rules says of a person, on one
// scale, so that it can be held against the joined outcome. The scale is this
// module's own; the rules do not use it. Above [Silent] it rises from "ask before vigorous"
// effort, "lighter today", "a doctor decides" (a relative contraindication),
// "ask before any" exercise, "on the wider list" (which is not graded), "stop" (or not
// today) and "no resistance exercise" (an absolute contraindication) to
// "urgent referral" and "emergency".
type Strictness uint8

// Degrees, rising.
const (
	_            Strictness = iota // no rule could say
	Silent                         // "silent": every rule that speaks finds nothing
	askVigorous                    // "ask before vigorous": a clearance before vigorous effort
	lighterNow                     // "lighter today": the checks of the day
	decideFirst                    // "a doctor decides": a relative contraindication
	askAny                         // "ask before any": a clearance before any exercise
	listedWider                    // "on the wider list": a contraindication that is not graded
	stopOrNotNow                   // "stop": stop and ask, or not today
	noResistance                   // "no resistance exercise": an absolute contraindication
	referUrgent                    // "urgent referral"
	referNow                       // "emergency"
)

var verdicts = field.NewVocabulary[Strictness]("strictness", "", "silent", "ask before vigorous", "lighter today", "a doctor decides", "ask before any", "on the wider list", "stop", "no resistance exercise", "urgent referral", "emergency")

// EveryStrictness yields every degree of it.
func EveryStrictness() iter.Seq[Strictness] { return verdicts.All() }

// String returns its name, such as "silent", and "" where no rule could say.
func (v Strictness) String() string { return verdicts.Text(v) }

// MarshalText writes what String returns.
func (v Strictness) MarshalText() ([]byte, error) { return verdicts.Marshal(v) }

// UnmarshalText reads what MarshalText writes.
func (v *Strictness) UnmarshalText(text []byte) error { return verdicts.Unmarshal(text, v) }

// Strictest returns what the strictest of the published rules says. A rule that could
// not say is passed over.
func (r Rules) Strictest() Strictness {
	worst := Strictness(0)
	says := func(is bool, v Strictness) {
		if is {
			worst = max(worst, v)
		}
	}
	p := r.Preparticipation
	says(p.Clearance == NotNeeded || r.Contraindications.Level == NoContraindication || r.RedFlags == NoReferral || r.SessionDay.Plan == AsPlanned, Silent)
	says(p.Clearance == BeforeVigorous, askVigorous)
	says(p.Clearance == BeforeAny, askAny)
	says(p.Clearance == StopFirst || r.SessionDay.Plan == NotToday, stopOrNotNow)
	says(r.SessionDay.Plan == Lighter, lighterNow)
	says(r.Contraindications.Level == Relative || r.HeartFailure.Level == Relative, decideFirst)
	says(r.Contraindications.Level == Absolute || r.HeartFailure.Level == Absolute, noResistance)
	says(len(r.Wider) > 0, listedWider)
	says(r.RedFlags == UrgentReferral, referUrgent)
	says(r.RedFlags == EmergencyReferral, referNow)
	return worst
}
