package progression

import "example.org/posology/units/evidence"

// Words returns a fresh table of what this package's reasons say.
func Words() evidence.Words {
	return evidence.Words{
		"progression.bridge": {Clinician: "To land on {low} repetitions after a step of {share}, first reach {reps}: arithmetic on the linear form, tested by no trial."},
		"progression.jump":   {Clinician: "The next weight after {from} is {to}, a step of {share}; published guidance is 2 to 10 %."},
	}
}
