package progression

import (
	"fmt"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Phase is a phase of the return after covid-19.
type Phase struct {
	Number int               `json:"number"` // from 1
	Days   int               `json:"days"`   // at least
	Effort units.Range[int]  `json:"effort"` // on the scale from 6 to 20
	Facts  []evidence.FactID `json:"facts"`
}

const (
	symptomFree = 7  // days without symptoms before anything begins
	veryLow     = 14 // days at very low effort after them
	phaseDays   = 7  // of each phase, at least
)

// phaseEfforts are the bands of the phases, rising, on the scale from 6 to 20.
var phaseEfforts = [...]units.Range[int]{
	between(6, 8),
	between(6, 11),
	between(12, 14),
}

// CovidPhases returns the phases that are known, in a list of the caller's own:
// the first two make up the two weeks of very low effort.
func CovidPhases() []Phase {
	var list []Phase
	for i, effort := range phaseEfforts {
		list = append(list, Phase{Number: i + 1, Days: phaseDays, Effort: effort, Facts: []evidence.FactID{factCovid, factCovidEffort}})
	}
	return list
}

// A Recovery is what is known of a person after covid-19.
type Recovery struct {
	SymptomFree int              `json:"symptom_free"`     // days without symptoms up to today, 0 or more
	Since       int              `json:"since,omitzero"`   // days since the return began; 0 before and on its first day
	Severe      screening.Answer `json:"severe,omitzero"`  // the course was severe
	Lasting     screening.Answer `json:"lasting,omitzero"` // symptoms last
	Heart       screening.Answer `json:"heart,omitzero"`   // there were signs from the heart
}

// Resumption is whether training may be taken up again after an illness.
type Resumption uint8

// Resumptions, from the least to the most cautious.
const (
	ResumptionUnknown Resumption = iota // not given
	InPhase                             // train, at the effort of the phase
	NotYet                              // wait
	AskFirst                            // something that must be known was not asked
	AssessFirst                         // assessment by a clinician comes first
)

var resumptions = field.NewVocabulary[Resumption]("resumption", "", "in phase", "not yet", "ask first", "assess first")

// String returns "in phase", "not yet", "ask first" or "assess first", and ""
// for not given.
func (r Resumption) String() string { return resumptions.Text(r) }

// MarshalText writes what String returns.
func (r Resumption) MarshalText() ([]byte, error) { return resumptions.Marshal(r) }

// UnmarshalText reads what MarshalText writes.
func (r *Resumption) UnmarshalText(text []byte) error { return resumptions.Unmarshal(text, r) }

// A RecoveryAnswer is what the ramp says today. It says nothing of load.
type RecoveryAnswer struct {
	Resume  Resumption        `json:"resume"`
	Phase   *Phase            `json:"phase,omitempty"` // nil unless in phase
	Last    bool              `json:"last,omitzero"`   // the last phase that is known, and its days are over
	Reasons []evidence.Reason `json:"reasons"`
}

// AfterCovid is the one published return after illness (Salman 2021): at least 7
// days without symptoms, then phases of at least 7 days each, two weeks of them
// at very low effort. A severe course, symptoms that last, or signs from the
// heart are assessed first, and what is not known is asked first. No such numbers were
// found for other illness, and none of load.
//
// Days below nought are an [field.ErrOutOfRange], a return that began before 7
// days without symptoms had passed an [field.ErrConflict].
func AfterCovid(r Recovery) (RecoveryAnswer, error) {
	if err := r.check(); err != nil {
		return RecoveryAnswer{}, err
	}
	switch grave := max(r.Severe.Severity(), r.Lasting.Severity(), r.Heart.Severity()); {
	case grave > screening.Unknown.Severity():
		return RecoveryAnswer{Resume: AssessFirst, Reasons: because("progression.covid-assess", factCovidAssess)}, nil
	case grave == screening.Unknown.Severity():
		return RecoveryAnswer{Resume: AskFirst, Reasons: because("progression.covid-ask", factCovidAssess)}, nil
	case r.SymptomFree < symptomFree:
		return RecoveryAnswer{Resume: NotYet, Reasons: because("progression.covid-wait", factCovid)}, nil
	}
	phases := CovidPhases()
	i := min(r.Since/phaseDays, len(phases)-1)
	a := RecoveryAnswer{Resume: InPhase, Phase: &phases[i], Last: r.Since >= phaseDays*len(phases)}
	a.Reasons = []evidence.Reason{evidence.Because("progression.covid-phase", phases[i].Facts...).
		With("phase", phases[i].Number).With("effort", phases[i].Effort)}
	return a, nil
}

func because(code evidence.Code, fact evidence.FactID) []evidence.Reason {
	return []evidence.Reason{evidence.Because(code, fact)}
}

func (r Recovery) check() error {
	var bad field.Errors
	if r.SymptomFree < 0 {
		bad.Add("/symptom_free", field.Bad(r.SymptomFree, "0 days or more", field.ErrOutOfRange))
	}
	if r.Since < 0 {
		bad.Add("/since", field.Bad(r.Since, "0 days or more", field.ErrOutOfRange))
	} else if r.Since > 0 && r.Since > r.SymptomFree-symptomFree {
		bad.Add("/since", field.Bad(r.Since, fmt.Sprintf("at most the days without symptoms less %d", symptomFree), field.ErrConflict))
	}
	return bad.Err()
}
