package record_test

import (
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"pgregory.net/rapid"
)

// heart is the record of somebody with a clearance of a day for heart disease, who has
// trained, and the day of the last visit.
func heart(t testing.TB, given func(last units.Day) units.Day) (record.Record, units.Day) {
	r := read(t, review)
	last := r.Visits[len(r.Visits)-1].Day
	r.Profile.Diseases = screening.AskedFor("cardiac")
	r.Profile.Conditions = screening.AskedFor("exertional_angina")
	r.Profile.Clearances = []screening.Clearance{{Who: "Doctor K", Day: given(last), Scope: []screening.Code{"cardiac", "exertional_angina"}}}
	r.Profile.Day = max(r.Profile.Day, given(last))
	return r, last
}

func isVoid(f screening.Finding) bool {
	return f.Reason.Code == "screening.clearance-not-counted" && slices.Contains(f.Reason.Facts, "progression.signs-end-clearances")
}

// A clearance from before a grave sign, a faint or an event counts no more, whoever has
// looked and however often the person is assessed; one of a later day does, and one of the
// day itself that was told anew, later, once somebody had looked.
func TestSignsEndClearances(t *testing.T) {
	sign := func(code screening.Code) func(*record.Record, units.Day) {
		return func(r *record.Record, _ units.Day) {
			r.Visits[len(r.Visits)-1].Moment = &screening.Moment{Signs: []screening.Code{code}}
		}
	}
	told := func(kind programme.HappeningKind) func(*record.Record, units.Day) {
		return func(r *record.Record, day units.Day) { r.Happened = []programme.Happening{{Kind: kind, Day: day}} }
	}
	type times struct{ given, assessed, looked units.Day } // after the visit; looked -1: nobody has
	for _, tt := range []struct {
		what  string
		spoil func(*record.Record, units.Day)
		ends  bool // at all
	}{
		{"nothing", sign("leg_cramp"), false},
		{"chest pain", sign("chest_symptom"), true},
		{"dizzy", sign("dizzy_or_swaying"), true},
		{"a faint", told(programme.Faint), true},
		{"a hospital stay", told(programme.HospitalStay), true},
		{"another medicine", told(programme.MedicineChanged), false},
		{"a knock on the head", told(programme.HeadKnock), false},
		{"pain around the chest", func(r *record.Record, _ units.Day) {
			v := &r.Visits[len(r.Visits)-1]
			v.But = []record.Exception{{Exercise: r.Asked[0].Exercise, Noted: record.Noted{Pain: &screening.Pain{Kind: screening.ChestPain}}}}
		}, true},
		{"a fall beside lifting", func(r *record.Record, day units.Day) {
			r.Practised = []beside.Practised{{Day: day, Track: "stance", Troubles: []beside.Trouble{beside.Tumbled}}}
		}, true},
	} {
		for _, at := range []struct {
			times
			counts bool
		}{
			{times{-20, -5, -1}, false}, {times{-20, 5, 2}, false}, {times{-1, 5, 2}, false},
			{times{0, 0, 0}, false}, {times{0, 5, -1}, false}, {times{0, 1, 2}, false}, {times{0, 2, 2}, true}, {times{0, 5, 2}, true},
			{times{1, 1, 2}, true}, {times{5, 5, -1}, true},
		} {
			r, last := heart(t, func(last units.Day) units.Day { return last + at.given })
			r.Profile.Day = max(last+at.assessed, r.Profile.Day)
			tt.spoil(&r, last)
			if at.looked >= 0 {
				r.Looked = []record.Look{{Observation: dose.Observation{Who: "Doctor M", Day: last + at.looked}, Visits: len(r.Visits), Happened: len(r.Happened), Practised: len(r.Practised)}}
			}
			day := last + 6
			o, err := r.Screening(day)
			if err != nil {
				t.Fatalf("%s: %v", tt.what, err)
			}
			counts := len(o.Clearances) > 0
			if counts != (at.counts || !tt.ends) || counts == slices.ContainsFunc(o.Findings, isVoid) {
				t.Errorf("%s, %+v: counts %v", tt.what, at, counts)
			}
			re, err := r.Assess(day)
			if err != nil || len(re.Screening.Clearances) != len(o.Clearances) || len(re.Profile.Clearances) != len(o.Clearances) {
				t.Errorf("%s, %+v: %v, the review has another answer: %v", tt.what, at, err, re.Screening.Clearances)
			}
			if before, err := r.Screening(max(r.Profile.Day, last-1)); r.Profile.Day < last && (err != nil || len(before.Clearances) == 0) {
				t.Errorf("%s, %+v: ended before the day of it", tt.what, at)
			}
		}
	}
	r, _ := heart(t, func(last units.Day) units.Day { return last })
	if _, err := r.Screening(0); !slices.Equal(fieldtest.Paths(err), []string{"/day"}) {
		t.Error(err)
	}
	r.Profile.Age = 0
	if _, err := r.Screening(r.Profile.Day); err == nil || fieldtest.Paths(err)[0] != "/profile/age" {
		t.Error(err)
	}
}

// What has ended a clearance never lets more go on, in a review either, and says so to the clinician.
func TestEndedClearancesAreNeverLooser(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r, last := heart(t, func(last units.Day) units.Day { return last + units.Day(rapid.IntRange(-30, 4).Draw(rt, "given")) })
		r.Profile.Day = max(r.Profile.Day, last+units.Day(rapid.IntRange(-10, 5).Draw(rt, "assessed")))
		day := max(r.Profile.Day, last) + 1
		plain, err := screening.Assess(r.Profile, r.Join)
		if err != nil {
			rt.Fatal(err)
		}
		r.Visits = slices.Clone(r.Visits)
		if rapid.Bool().Draw(rt, "sign") {
			r.Visits[len(r.Visits)-1].Moment = &screening.Moment{Signs: []screening.Code{rapid.SampledFrom([]screening.Code{"chest_symptom", "dizzy_or_swaying", "leg_cramp"}).Draw(rt, "code")}}
		}
		if rapid.Bool().Draw(rt, "told") {
			r.Happened = []programme.Happening{{Kind: programme.HappeningKind(rapid.IntRange(1, int(programme.HeadKnock)).Draw(rt, "kind")), Day: last + units.Day(rapid.IntRange(-9, 0).Draw(rt, "on"))}}
		}
		was, err := r.Screening(day)
		if err != nil || was.Meanwhile < plain.Meanwhile || was.Route < plain.Route || was.Limits.Join(plain.Limits).MaxIntensity != was.Limits.MaxIntensity {
			rt.Fatalf("%v: %v %v after %v %v", err, was.Route, was.Meanwhile, plain.Route, plain.Meanwhile)
		}
		r.Visits[len(r.Visits)-1].Moment = &screening.Moment{Signs: []screening.Code{"chest_symptom"}}
		if worse, err := r.Screening(day); err != nil || worse.Meanwhile < was.Meanwhile || len(worse.Clearances) > len(was.Clearances) {
			rt.Fatalf("%v: chest pain lets more go on: %v after %v", err, worse.Meanwhile, was.Meanwhile)
		}
	})
}

func TestEndedClearanceIsSaid(t *testing.T) {
	r, last := heart(t, func(last units.Day) units.Day { return last - 20 })
	r.Visits[len(r.Visits)-1].Moment = &screening.Moment{Signs: []screening.Code{"chest_symptom"}}
	o, err := r.Screening(last)
	words := units.Must(record.Words())
	at := slices.IndexFunc(o.Findings, isVoid)
	if err != nil || at < 0 {
		t.Fatal(err)
	}
	want := "Clearance by Doctor K of " + (last - 20).String() + " not counted: what showed or hurt at the visit on " + last.String() + " has ended it, until one of a later day."
	if got := words.Clinician(o.Findings[at].Reason); got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// A fall and dizziness at the work beside lifting stand as what is told does.
func TestFallsBesideStand(t *testing.T) {
	for _, tt := range []struct {
		trouble beside.Trouble
		kind    programme.HappeningKind
	}{{beside.Tumbled, programme.Fall}, {beside.Dizzied, programme.NewSymptom}, {beside.Swayed, 0}} {
		for looked := range 2 {
			r := read(t, review)
			day := r.Visits[len(r.Visits)-1].Day + 3
			r.Practised = []beside.Practised{{Day: day - 2, Track: "stance", Least: 10}, {Day: day - 1, Track: "stance", Least: 10, Troubles: []beside.Trouble{beside.SoreNextDay, tt.trouble}}}
			if looked > 0 {
				r.Looked = []record.Look{{Observation: dose.Observation{Who: "Doctor M", Day: day}, Practised: 2}}
			}
			re, err := r.Assess(day)
			if err != nil {
				t.Fatal(err)
			}
			stands := tt.kind != 0 // a look alone ends neither
			if (len(re.Alarms) > 0) != stands || stands && (re.Alarms[0].Told != tt.kind || re.Alarms[0].Day != day-1 || re.Coming != nil) || (len(re.Told) > 0) != (tt.kind != 0) {
				t.Errorf("%v, looked %d: %+v, told %+v", tt.trouble, looked, re.Alarms, re.Told)
			}
			if list, err := r.Alarms(day - 2); err != nil || len(list) > 0 {
				t.Errorf("%v: stood before: %v, %+v", tt.trouble, err, list)
			}
			e, _ := programme.Happening{Kind: programme.Fall, Day: day - 1}.Event()
			if r.Profile.Day, r.Profile.Events = day-1, []screening.Event{e}; tt.kind == programme.Fall {
				if list, err := r.Alarms(day); err != nil || len(list) > 0 {
					t.Errorf("the assessment has heard of it: %v, %+v", err, list)
				}
			}
		}
	}
	r := read(t, review)
	day := r.Visits[len(r.Visits)-1].Day
	r.Practised = []beside.Practised{{Day: day, Track: "stance"}}
	for path, l := range map[string]record.Look{"/looked/0/practised": {Practised: 2}, "/looked/0/day": {Practised: 1}} {
		l.Observation = dose.Observation{Who: "Doctor M", Day: day - 1}
		r.Looked = []record.Look{l}
		if got := fieldtest.Paths(r.Validate()); !slices.Equal(got, []string{path}) {
			t.Errorf("%+v: %v", l, got)
		}
	}
}
