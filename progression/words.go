package progression

import "example.org/posology/units/evidence"

// Words returns a fresh table of what this package's reasons say.
func Words() evidence.Words {
	return evidence.Words{
		"progression.jump": {Clinician: "The next weight after {from} is {to}, a step of {share}; published guidance is 2 to 10 %."},
	}
}
