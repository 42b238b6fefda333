package progression

import "example.org/posology/units/evidence"

// phaseWords is what phases, the end of a programme, attendance and happenings say.
func phaseWords() evidence.Words {
	return happeningWords()
}

// happeningWords is what attendance and happenings say.
func happeningWords() evidence.Words {
	return evidence.Words{
		"progression.attendance-between": {Clinician: "{done} of {planned} sessions in {days} days: the plan is kept as it is."},
		"progression.attendance-few":     {Clinician: "{planned} sessions planned in {days} days, fewer than {least}: too few to tell from. The plan is kept."},
		"progression.attendance-full":    {Clinician: "{done} of {planned} sessions in {days} days: nothing against more load from attendance."},
		"progression.attendance-low": {
			Client:    "Let us make the plan shorter, so that it fits your week better.",
			Clinician: "{done} of {planned} sessions in {days} days: simplify the plan, with fewer exercises or sets and shorter sessions, and ask what would fit. No published rule.",
		},
	}
}
