package interview

import (
	"slices"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// TestFinerQuestions holds that what tells the people of one code apart is asked, with
// its day and place, and that the answers count.
func TestFinerQuestions(t *testing.T) {
	for name, tt := range map[string]struct {
		own   map[string]string
		asked []string
		route screening.Route
	}{
		"dizzy on standing": {map[string]string{"symptoms": "dizziness_or_syncope", "dizziness_on_standing": "yes"},
			[]string{"dizziness_faint", "dizziness_new", "dizziness_on_standing", "dizziness_spinning"}, screening.PhysioLooks},
		"dizzy and faint": {map[string]string{"symptoms": "dizziness_or_syncope", "dizziness_faint": "yes"},
			[]string{"dizziness_faint"}, screening.SameDay},
		"cataract": {map[string]string{"areas": "eyes", "eyes": "recent_eye_operation", "recent_eye_operation_day": "2026-11-01"},
			[]string{"eye_operation_not_cataract", "recent_eye_operation_day"}, screening.Tell},
		"pacemaker": {map[string]string{"areas": "heart", "heart": "pacemaker", "pacemaker_day": "2020-05"},
			[]string{"pacemaker_day"}, screening.AskFirst},
		"a knee": {map[string]string{"areas": "joints", "joints": "pain_made_worse_by_training", "pain_made_worse_by_training_site": "knee", "worse_pain_unseen": "yes"},
			[]string{"pain_made_worse_by_training_site", "worse_pain_unseen"}, screening.PhysioLooks},
		"a knee that was looked at": {map[string]string{"areas": "joints", "joints": "pain_made_worse_by_training", "pain_made_worse_by_training_site": "knee"},
			[]string{"worse_pain_unseen"}, screening.Tell},
		"a hip that broke": {map[string]string{"areas": "bones", "bones": "hip_fracture", "hip_fracture_day": "2026-06-20", "hip_fracture_unseen": "yes"},
			[]string{"hip_fracture_day", "hip_fracture_unseen"}, screening.PhysioLooks},
		"a new hip": {map[string]string{"areas": "joints", "joints": "total_hip_replacement", "total_hip_replacement_day": "2026-10-20"},
			[]string{"total_hip_replacement_day", "replacement_limited"}, screening.PhysioLooks},
	} {
		i, keys := walk(t, well(tt.own))
		for _, key := range tt.asked {
			if !slices.Contains(keys, key) {
				t.Errorf("%s: %s is not asked: %v", name, key, keys)
			}
		}
		o := outcome(t, i)
		if o.Route != tt.route {
			t.Errorf("%s: %v, %v; want %v: %+v", name, o.Route, o.Meanwhile, tt.route, o.Missing)
		}
		if name == "a knee" && !slices.Equal(i.Profile().Sites, []screening.Site{{Code: "pain_made_worse_by_training", Region: body.Knee}}) {
			t.Errorf("%s: %+v", name, i.Profile().Sites)
		}
	}
}
