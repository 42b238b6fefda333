package main

import (
	"slices"
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
	w.step(0, "2027-01-06", "review", "new: none\n"+looked)
	w.says(w.step(0, "2027-01-06", "list", ""), "not TO BE SEEN TODAY", "not "+lately)
}

// What an assessment heard and sent to be seen today stands as a sign of a check does, on a day
// of training, on another, and beside a check that knew nothing of it: whatever the next one
// hears, until somebody has looked and an assessment of a later day has followed.
func TestSignOfAnAssessmentStands(t *testing.T) {
	const ache, sign = "ischaemic_chest_neck_jaw_arm_pain", "TO BE SEEN TODAY: ache"
	from := begun(t)
	for _, tt := range []struct{ what, check, lines, want string }{
		{"another day", "", "symptoms: " + ache + "\nblood_pressure: 130/80\npulse: 66\ntoday: no\n", sign},
		{"a day of training", "", "signs: none\nsymptoms: " + ache + "\nmore_signs: none\ntoday: yes\nblood_pressure: 130/80\npulse: 66\nhurt: no\nfebrile: no\n", sign},
		{"an emergency", "", "signs: stroke_signs\n", "CALL FOR HELP NOW"},
		{"beside a check", well + "blood_pressure: 130/80\npulse: 66\ntoday: yes\nhurt: no\nfebrile: no\n", "symptoms: " + ache + "\nblood_pressure: 130/80\npulse: 66\n", "TO BE SEEN TODAY: new symptom"},
	} {
		w := copied(t, from)
		if tt.check != "" {
			w.step(0, "2027-01-05", "check", tt.check)
		}
		w.step(0, "2027-01-05", "ask", tt.lines)
		w.step(0, "2027-01-06", "ask", asked+"no_longer: "+ache+" stroke_signs\n")
		if r := recordOf(t, w.folder); r.Profile.Symptoms.Of(ache) != screening.No || r.Profile.RedFlags.Of("stroke_signs") != screening.No || len(r.Checks) != 1 {
			t.Fatalf("%s: %+v", tt.what, r.Profile)
		}
		w.says(w.step(0, "2027-01-06", "list", ""), tt.want, lately)
		one := copied(t, w.folder)
		one.step(0, "2027-01-07", "review", "new: none\n"+looked)
		one.says(one.step(0, "2027-01-07", "list", ""), "not "+lately) // and the assessment was of a later day
		w = copied(t, from)
		if tt.check != "" {
			w.step(0, "2027-01-05", "check", tt.check)
		}
		w.step(0, "2027-01-05", "ask", tt.lines)
		w.step(0, "2027-01-06", "review", "new: none\n"+looked)
		w.says(w.step(0, "2027-01-06", "list", ""), "not "+lately, "What came up on Tuesday 5 January 2027 was looked at by Doctor M", "Next: ask")
	}
}

// What was never done yet is decided on for a day whose check found something: it is not asked
// for with its weight on a day for practice without weights. Where nothing was found it is as it was.
func TestNeverDoneIsDecidedOn(t *testing.T) {
	w := tryer{t, begun(t)}
	loaded := func() (n int) {
		p, err := w.folder.Read("hall")
		if err != nil {
			t.Fatal(err)
		}
		list, paused := p.Record.AskedOn(dayOf(t, "2027-01-08"))
		for _, a := range list {
			if a.Load > 0 && !paused[a.Exercise] {
				n++
			}
		}
		return n
	}
	w.step(0, "2027-01-05", "log", calm)
	before := loaded()
	w.step(0, "2027-01-06", "review", "new: none\n")
	if n := loaded(); n != before {
		t.Errorf("%d with a weight after a calm visit, want %d", n, before)
	}
	w.step(0, "2027-01-08", "check", well+"blood_pressure: 172/98\nblood_pressure_again: 172/98\npulse: 70\ntoday: yes\nhurt: no\nfebrile: no\n")
	w.step(0, "2027-01-08", "review", "new: none\n")
	if n := loaded(); before == 0 || n != 0 {
		t.Errorf("%d of %d with a weight on a day for practice without", n, before)
	}
}

// What ends is not brought back with what was never done.
func TestNeverDoneEnds(t *testing.T) {
	const press = "dumbbell-floor-press"
	w := tryer{t, begun(t)}
	w.step(0, "2027-01-05", "log", calm)
	w.step(0, "2027-01-06", "review", "new: none\n")
	w.step(0, "2027-01-07", "change", "ends: "+press+"\nbody_mass: 70 kg\n")
	if got := askedFor(recordOf(t, w.folder), ever); slices.Contains(got, press) || len(got) < 2 {
		t.Errorf("%v", got)
	}
	w.step(0, "2027-01-07", "replay", "")
}
