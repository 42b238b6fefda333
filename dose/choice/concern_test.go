package choice_test

import (
	"strings"
	"testing"

	"example.org/posology/dose/choice"
	"example.org/posology/screening"
)

// concernsOf is the table again, by hand (design): what of screening bears on the choice.
var concernsOf = map[screening.Code]string{
	"total_hip_replacement": "hip", "osteoarthritis_hip": "hip", "hip_fracture": "hip falls",
	"total_knee_replacement": "knee", "osteoarthritis_knee": "knee",
	"vertebral_fracture": "spine bone", "osteoporosis_with_vertebral_fracture": "spine bone",
	"osteoporosis": "bone", "osteoporosis_uk": "bone", "osteoporosis_essa": "bone", "osteoporosis_essa_dose": "bone", "spine_not_seen": "bone",
	"frailty": "frailty", "frailty_dose": "frailty",
	"cfs_level_5": "frailty", "cfs_level_6": "frailty", "cfs_level_7": "frailty", "cfs_level_8": "frailty", "cfs_level_9": "frailty",
	"falls_risk": "falls", "parkinsons": "falls", "vertigo": "falls", "autonomic_neuropathy_postural_hypotension": "falls",
	"dizziness_on_standing": "falls", "dizziness_spinning": "falls", "poor_sight": "falls",
	"diabetes": "diabetes", "diabetes_t1": "diabetes", "diabetes_t2": "diabetes",
	"nephropathy": "diabetes", "npdr_moderate_or_worse": "diabetes", "diabetic_retinopathy_severe": "diabetes",
}

// TestConcernsOfCodes asks for every code that screening knows what it comes to, so that a
// code of the table that screening does not know fails too.
func TestConcernsOfCodes(t *testing.T) {
	met := 0
	for term := range screening.Codes() {
		o := found(screening.InGroup)
		o.Findings = []screening.Finding{{Code: term.Code, Known: true, Route: screening.Tell, Meanwhile: screening.WithinLimits}}
		var got []string
		for _, c := range choice.Choose(choice.Wish{Screening: o}).Concerns {
			got = append(got, c.String())
		}
		want, some := concernsOf[term.Code]
		if strings.Join(got, " ") != want {
			t.Errorf("%s comes to %q, want %q", term.Code, got, want)
		}
		if some {
			met++
		}
	}
	if met != len(concernsOf) {
		t.Errorf("screening knows %d of the table's %d codes", met, len(concernsOf))
	}
}
