package onerm

import (
	"errors"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// WhyRefused returns why a set gives no estimate, for an error of [FromSet] that
// says nothing else: the set is in order, and the equations have no answer for
// it. It is false for nil and where a field is malformed or contradicts another.
// Where a set is refused for several reasons, it is the first.
func WhyRefused(err error) (evidence.Reason, bool) {
	var all field.Errors
	all.Add("", err)
	var first *refusal
	for _, f := range all {
		var r *refusal
		if !errors.As(f, &r) {
			return evidence.Reason{}, false
		}
		if first == nil {
			first = r
		}
	}
	if first == nil {
		return evidence.Reason{}, false
	}
	return first.why, true
}

// A refusal is the category of a field error with the reason for the two readers.
type refusal struct {
	why      evidence.Reason
	category error
}

func (r *refusal) Error() string { return r.category.Error() }
func (r *refusal) Unwrap() error { return r.category }

// refuse gives a field error its reason.
func refuse(f *field.Error, why evidence.Reason) error {
	f.Err = &refusal{why, f.Err}
	return f
}

// noReserve says why an effort has no reserve.
func noReserve(e units.Effort, err error) error {
	why := evidence.Because("onerm.none-rating", factToFailure).With(evidence.Effort("effort", e))
	if e.IsZero() {
		why = evidence.Because("onerm.none-effort", factToFailure)
	}
	var f *field.Error
	if !errors.As(err, &f) {
		return err
	}
	return refuse(f, why)
}

// refusalWords are for sets without an estimate.
func refusalWords() evidence.Words {
	const tellMore = "Please tell us next time how many more you could have done; then that set tells us more."
	return evidence.Words{
		"onerm.none-moves-body": {
			Client:    "Here you lift a part of your own body too, so we count repetitions instead.",
			Clinician: "The body, or a long limb, is most of what is lifted: a 1RM of the held weight alone would mislead. Repetitions at this load are counted instead.",
		},
		"onerm.none-measure": {
			Client:    "This exercise goes by time or distance, so that is what we count.",
			Clinician: "The exercise is counted in {measure}; a 1RM is estimated from repetitions.",
		},
		"onerm.none-reserve": {
			Client:    "That set ended with many left, more than anybody can count. It was good practice, and we look again later.",
			Clinician: "{effort} was told: more than {most} in reserve cannot be counted, and no estimate rests on it.",
		},
		"onerm.none-rating": {Client: tellMore, Clinician: "The rating {effort} does not tell repetitions in reserve."},
		"onerm.none-effort": {Client: tellMore, Clinician: "No effort was recorded, so that the repetitions to failure are not known."},
		"onerm.none-range": {
			Client:    "That many repetitions do not tell us how strong you are. It was good practice, and we look again later.",
			Clinician: "{reps} repetitions to failure ({effort}) lie outside what the equations for this person were studied on: {allowed}.",
		},
		"onerm.none-accuracy": {
			Client:    "That many repetitions do not tell us how strong you are. It was good practice, and we look again later.",
			Clinician: "{reps} repetitions to failure ({effort}): the accuracy given has no band, or no margin for this person, there.",
		},
		"onerm.none-sex": {
			Clinician: "{reps} repetitions to failure: only an equation for women is left there, and the sex was not given.",
		},
	}
}
