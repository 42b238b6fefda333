package interview

import (
	"encoding/json"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/field"
)

// Whatever was told before, and wherever somebody stops: what was not reached is as it was,
// and the assessment takes it.
func TestStoppingLosesNothing(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 5))
	stopped := 0
	for range 40 {
		was, _ := walk(t, anything(r))
		before := was.Profile()
		got, _ := json.Marshal(On(visit + 7).Since(before))
		if want, _ := json.Marshal(before); string(got) != string(want) {
			t.Fatalf("stopped at once:\n%s\n%s", got, want)
		}
		i, answer := On(visit+7), anything(r)
		for q, more := i.Next(); more && r.IntN(30) > 0; q, more = i.Next() {
			after, err := i.Answer(q.Key, reply(q, answer(q)))
			if err != nil {
				t.Fatal(err)
			}
			i = after
			keeps(t, i, before)
		}
		if _, more := i.Next(); more {
			stopped++
		}
	}
	if stopped < 10 {
		t.Errorf("%d stopped", stopped)
	}
}

// keeps holds that nothing of before is lost that was not asked about.
func keeps(t *testing.T, i Interview, before screening.Profile) {
	t.Helper()
	p := i.Since(before)
	if _, err := screening.Assess(p); err != nil {
		t.Fatal(err)
	}
	s := i.now
	_, more := i.Next()
	through := true
	for _, g := range groups() {
		if s.asked[g.key] {
			if is := listIn(&p, g.kind); is.Asked && !s.lists[g.key].Asked && is.Of(g.codes[0]) != screening.Unknown {
				t.Fatalf("%s: not known, and %v", g.codes[0], is.Of(g.codes[0]))
			}
			continue
		}
		through = false
		was, is := *listIn(&before, g.kind), *listIn(&p, g.kind)
		for _, code := range g.codes {
			if was.Asked && is.Of(code) != was.Of(code) {
				t.Fatalf("%s: %v, was %v", code, is.Of(code), was.Of(code))
			}
		}
	}
	if want := visit + 7; more && !through && p.Day != visit || (!more || through) && p.Day != want {
		t.Fatalf("of %s, through %t, more %t", p.Day, through, more)
	}
	if !s.asked["clearance"] && !s.asked["today"] && len(p.Clearances) < len(before.Clearances) {
		t.Fatal("a clearance is gone")
	}
	if !s.asked["today"] && len(p.Events) < len(before.Events) {
		t.Fatal("an event is gone")
	}
}

// What an emergency ends, and what is begun and not told to its end, leaves the rest.
func TestEndedEarly(t *testing.T) {
	own := map[string]string{"diseases": "diabetes_t2", "insulin_or_secretagogue": "yes", "areas": "heart joints general", "heart": "pacemaker", "joints": "musculoskeletal_limitation", "general": "chemotherapy",
		"clearance": "yes", "clearance_who": "doctor A", "clearance_when": "2026-11", "clearance_scope": "diabetes_t2 pacemaker", "clearance_effort": "moderate",
		"restriction": "yes", "restriction_who": "surgeon B", "restriction_mass": "2 kg", "blood_counts": "yes", "platelets": "140", "haemoglobin": "98 g/L", "falls": "no", "today": "yes"}
	was, _ := walk(t, well(own))
	before := was.Profile()
	hba1c := 7.1
	before.Sex, before.HbA1c, before.Conditions.Present = 1, &hba1c, append(before.Conditions.Present, "cfs_level_5", "osteoporosis_uk")
	until := func(end string, own map[string]string) Interview {
		i, answer := On(visit+7), well(own)
		for q, more := i.Next(); more && q.Key != end; q, more = i.Next() {
			after, err := i.Answer(q.Key, reply(q, answer(q)))
			if err != nil {
				t.Fatal(err)
			}
			i = after
		}
		return i
	}
	grave := map[string]string{"signs": "stroke_signs"}
	p := until("", grave).Since(before)
	if o, err := screening.Assess(p); err != nil || o.Route != screening.Emergency || p.Day != visit+7 || p.Diseases.Of("diabetes_t2") != screening.Yes || len(p.Clearances) != 1 ||
		p.Answers["insulin_or_secretagogue"] != screening.Yes || p.Sex != 1 || p.HbA1c == nil || p.BP == nil {
		t.Errorf("%v, %v, %+v", o.Route, err, p)
	}
	for end, isKept := range map[string]bool{"clearance_who": true, "clearance_effort": true, "today": false} {
		if p := until(end, own).Since(before); (p.Clearances[0].Day == before.Clearances[0].Day) != (isKept || end == "today") || p.Day != visit+7 {
			t.Errorf("%s: %+v", end, p.Clearances)
		}
	}
	if p := until("restriction_mass", own).Since(before); len(p.Restrictions) != 2 {
		t.Errorf("%+v", p.Restrictions)
	}
	if p := until("haemoglobin", own).Since(before); p.Counts.Platelets != 140 || p.Counts.Haemoglobin != 98 {
		t.Errorf("%+v", p.Counts)
	}
	if p := until("general", own).Since(before); !slices.Contains(p.Conditions.Present, "osteoporosis_uk") && p.Conditions.Of("cfs_level_5") != screening.Yes {
		t.Errorf("%+v", p.Conditions)
	}
	if p := until("", own).Since(before); p.Conditions.Of("cfs_level_5") != screening.Yes || p.Conditions.Of("osteoporosis_uk") == screening.Yes {
		t.Errorf("to the end: %+v", p.Conditions)
	}
}

// An agreement of a day that has not come is refused when it is typed.
func TestClearanceOfTheFuture(t *testing.T) {
	own := map[string]string{"areas": "heart", "heart": "pacemaker", "clearance": "yes"}
	i, answer := On(visit), well(own)
	for q, more := i.Next(); more; q, more = i.Next() {
		if q.Key == "clearance_when" {
			for text, want := range map[string]error{"2026-11-26": field.ErrOutOfRange, "2026-12": field.ErrOutOfRange, "2026-11": nil, "2026-11-25": nil} {
				_, err := i.Answer(q.Key, Reply{Text: text})
				checkError(t, text, err, want, "/clearance_when")
			}
			return
		}
		i = mustAnswer(t, i, q, answer(q))
	}
	t.Error("nobody asks when")
}

// A check hears of what is new, and of a list that nobody knew as a whole: the day is never
// looser than with the list not asked, or with nothing new.
func TestCheckSince(t *testing.T) {
	was := screening.Profile{Day: visit - 7, Age: 66, Symptoms: screening.AskedFor("ankle_oedema"), RedFlags: screening.AskedFor(), Diseases: screening.AskedFor(), Conditions: screening.AskedFor(),
		BP: &screening.BloodPressure{Systolic: 120, Diastolic: 70}, RestingPulse: 60}
	o, err := screening.Assess(was)
	if err != nil {
		t.Fatal(err)
	}
	for own, want := range map[string]struct {
		asked           bool
		present, unsure int
		meanwhile       screening.Meanwhile
	}{
		"symptoms=ankle_oedema":                   {true, 0, 0, o.Meanwhile},
		"symptoms=dyspnoea_rest_or_mild_exertion": {true, 1, 0, screening.Nothing},
		"symptoms=dizziness_or_syncope?":          {true, 0, 1, o.Meanwhile},
		"signs=stroke_signs":                      {true, 1, 0, screening.Nothing},
		"symptoms=-":                              {false, 0, 0, screening.Nothing},
	} {
		key, word, _ := strings.Cut(own, "=")
		i, _ := walk(t, well(map[string]string{key: word, "today": "yes"}))
		c := i.CheckSince(was)
		now, err := screening.Today(c, o)
		if err != nil || c.New.Asked != want.asked || len(c.New.Present) != want.present || key == "symptoms" && len(c.New.Unsure) != want.unsure || now.Meanwhile < want.meanwhile {
			t.Errorf("%s: %+v, %v, %v", own, c.New, now.Meanwhile, err)
		}
		if key == "signs" && now.Route != screening.Emergency {
			t.Errorf("%s: %v", own, now.Route)
		}
	}
}
