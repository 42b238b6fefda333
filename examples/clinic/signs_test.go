package main

import (
	"testing"

	"example.org/posology/screening"
)

// A day's check stays whatever is asked on that day after it: a high pressure, a sign and
// what they stop; ask says so.
func TestCheckOutlastsAnAssessment(t *testing.T) {
	const stays = "The check of 2027-01-05 stays as it is"
	from := begun(t)
	w := copied(t, from)
	w.step(0, "2027-01-05", "check", well+"blood_pressure: 184/104\nblood_pressure_again: 184/104\npulse: 70\ntoday: yes\nhurt: no\nfebrile: no\n")
	w.says(w.step(0, "2027-01-05", "ask", well+"blood_pressure: 150/90\npulse: 70\ntoday: yes\nhurt: no\nfebrile: no\n"), stays)
	if r := recordOf(t, w.folder); len(r.Checks) != 1 || r.Checks[0].BP.Systolic != 184 || r.Profile.Day != r.Checks[0].Day {
		t.Errorf("%+v", r.Checks)
	}
	w = copied(t, from)
	w.step(0, "2027-01-05", "check", "signs: none\nsymptoms: ischaemic_chest_neck_jaw_arm_pain\nmore_signs: none\ntoday: yes\nblood_pressure: 134/82\npulse: 70\nhurt: no\nfebrile: no\n")
	w.step(0, "2027-01-05", "ask", asked)
	w.step(0, "2027-01-06", "ask", asked)
	w.says(w.step(0, "2027-01-06", "list", ""), "TO BE SEEN TODAY: ache", lately, "Next: review")
	w.step(0, "2027-01-06", "review", "new: none\nlooked: Doctor M\n")
	w.says(w.step(0, "2027-01-06", "list", ""), "not TO BE SEEN TODAY", "not "+lately)
}

// What an assessment heard and sent to be seen today stands, whatever the next one hears,
// until somebody has looked.
func TestSignOfAnAssessmentStands(t *testing.T) {
	w := copied(t, begun(t))
	w.step(0, "2027-01-05", "ask", "symptoms: ischaemic_chest_neck_jaw_arm_pain\nblood_pressure: 130/80\npulse: 66\ntoday: no\n")
	w.step(0, "2027-01-06", "ask", asked+"no_longer: ischaemic_chest_neck_jaw_arm_pain\n")
	if r := recordOf(t, w.folder); len(r.Happened) != 1 || r.Profile.Symptoms.Of("ischaemic_chest_neck_jaw_arm_pain") != screening.No {
		t.Fatalf("%+v", r.Happened)
	}
	w.says(w.step(0, "2027-01-06", "list", ""), "new symptom", lately)
	w.step(0, "2027-01-06", "review", "new: none\nlooked: Doctor M\n")
	w.says(w.step(0, "2027-01-06", "list", ""), "not "+lately)
}
