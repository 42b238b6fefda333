package record_test

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"pgregory.net/rapid"
)

// A sign that was told in a day's check stands as one at a visit does: until somebody has
// looked and an assessment of a later day has followed. A reading does not, nor does what
// is asked first.
func TestSignsOfChecksStand(t *testing.T) {
	signs := func(codes ...screening.Code) screening.Check {
		return screening.Check{New: screening.AskedFor(codes...)}
	}
	for _, tt := range []struct {
		what  string
		check screening.Check
		route screening.Route // 0: it does not stand
	}{
		{"nothing", signs(), 0},
		{"racing heart, asked first", signs("palpitations_or_tachycardia"), 0},
		{"signs of a stroke", signs("stroke_signs"), screening.Emergency},
		{"an ache of the chest", signs("ischaemic_chest_neck_jaw_arm_pain"), screening.SameDay},
		{"dizzy", signs("dizziness_or_syncope"), screening.SameDay},
		{"a numb saddle", signs("saddle_numbness"), screening.Emergency},
		{"sudden pain of the back", signs("sudden_back_pain_or_height_loss"), screening.SameDay},
		{"both, the strictest", signs("dizziness_or_syncope", "saddle_numbness"), screening.Emergency},
		{"perhaps dizzy", screening.Check{New: screening.Checklist{Asked: true, Unsure: []screening.Code{"dizziness_or_syncope"}}}, 0},
		{"pain around the chest", screening.Check{New: screening.AskedFor(), Pain: &screening.Pain{Kind: screening.ChestPain}}, screening.SameDay},
		{"plain pain", screening.Check{New: screening.AskedFor(), Pain: &screening.Pain{Kind: screening.OrdinaryPain, During: new(8.0)}}, 0},
		{"a failing heart", screening.Check{New: screening.AskedFor(), Worsening: screening.Yes}, screening.SameDay},
		{"a low that needed help", screening.Check{New: screening.AskedFor(), SevereLow: screening.Yes}, screening.SameDay},
		{"a low that was read", screening.Check{New: screening.AskedFor(), Glucose: units.Must(screening.ParseGlucose("45 mg/dL"))}, 0},
		{"a pressure", screening.Check{New: screening.AskedFor(), BP: &screening.BloodPressure{Systolic: 230, Diastolic: 120}}, 0},
	} {
		for looked := range 2 {
			for assessed := range 2 {
				r := read(t, review)
				last := r.Visits[len(r.Visits)-1].Day
				c := tt.check
				c.Day, c.Setting = last+1, r.Profile.Setting
				r.Checks = []screening.Check{c}
				if looked > 0 {
					r.Looked = []record.Look{{Observation: dose.Observation{Who: "Doctor M", Day: last + 1}, Checks: 1}}
				}
				if assessed > 0 {
					r.Profile.Day = last + 2
				}
				day := last + 3
				list, err := r.Alarms(day)
				stands := tt.route != 0 && (looked == 0 || assessed == 0)
				if err != nil || (len(list) > 0) != stands {
					t.Fatalf("%s, looked at %d, assessed %d: %v, %+v", tt.what, looked, assessed, err, list)
				}
				re, err := r.Assess(day)
				if err != nil || len(re.Alarms) != len(list) || stands && re.Coming != nil {
					t.Errorf("%s, looked at %d: %v, the review goes on", tt.what, looked, err)
				}
				if before, err := r.Alarms(last); err != nil || len(before) > 0 {
					t.Errorf("%s: stood before: %v, %+v", tt.what, err, before)
				}
				if !stands {
					continue
				}
				code := map[screening.Route]evidence.ReasonCode{screening.Emergency: "progression.help-now", screening.SameDay: "progression.see-today"}[tt.route]
				if looked > 0 {
					code = "progression.looked-at"
				}
				if a := list[0]; a.Route != tt.route || a.Open != (looked == 0) || a.Day != last+1 || a.Reasons[0].Code != code {
					t.Errorf("%s, looked at %d: %+v", tt.what, looked, a)
				}
			}
		}
	}
}

// Such a sign ends the clearances of its day and before.
func TestSignsOfChecksEndClearances(t *testing.T) {
	for given, counts := range map[units.Day]bool{-20: false, 0: false, 1: true} {
		r, last := heart(t, func(last units.Day) units.Day { return last + given })
		r.Profile.Day = last + 2
		r.Checks = []screening.Check{{Day: last, Setting: r.Profile.Setting, New: screening.AskedFor("ischaemic_chest_neck_jaw_arm_pain")}}
		o, err := r.Screening(last + 3)
		if err != nil || (len(o.Clearances) > 0) != counts {
			t.Errorf("given %d days after: %v, %+v", given, err, o.Clearances)
		}
	}
}

// What ends a clearance and has no day ends every one, until somebody has looked at it.
func TestEndingsWithoutADay(t *testing.T) {
	for _, kind := range []programme.HappeningKind{programme.Faint, programme.HeartAttack, programme.Fall} {
		for given, counts := range map[units.Day]bool{-20: false, 3: false, 4: true} {
			r, last := heart(t, func(last units.Day) units.Day { return last + given })
			r.Profile.Day = last + 4
			r.Happened = []programme.Happening{{Kind: kind}}
			if o, err := r.Screening(last + 5); err != nil || len(o.Clearances) > 0 {
				t.Errorf("%s, given %d days after: %v, %+v", kind, given, err, o.Clearances)
			}
			r.Looked = []record.Look{{Observation: dose.Observation{Who: "Doctor M", Day: last + 3}, Happened: 1}}
			r.Profile.Day = max(last+3, last+given)
			o, err := r.Screening(last + 5)
			if err != nil || (len(o.Clearances) > 0) != counts {
				t.Errorf("%s, given %d days after, looked at: %v, %+v", kind, given, err, o.Clearances)
			}
		}
	}
}

// Who was dizzy beside lifting is sent as who is at a visit, with a fall too: an assessment of a
// later day looks at nobody, and the fall ends once it has heard of it.
func TestDizzyBesideLifting(t *testing.T) {
	both := []beside.Trouble{beside.Tumbled, beside.Dizzied}
	for what, troubles := range map[string][]beside.Trouble{"dizzy": both[1:], "dizzy and fell": both} {
		r, last := heart(t, func(last units.Day) units.Day { return last - 20 })
		r.Profile.Day = last - 10
		r.Practised = []beside.Practised{{Day: last, Track: "stance", Troubles: troubles}}
		list, err := r.Alarms(last + 1)
		i := slices.IndexFunc(list, func(a record.Alarm) bool { return a.Told == programme.NewSymptom })
		if err != nil || len(list) != len(troubles) || i < 0 || list[i].Route != screening.SameDay || list[i].Reasons[0].Code != "progression.see-today" {
			t.Errorf("%s: %v, %+v", what, err, list)
		}
		if o, err := r.Screening(last + 1); err != nil || len(o.Clearances) > 0 {
			t.Errorf("%s: %v, %+v", what, err, o.Clearances)
		}
		for _, assessed := range []units.Day{last, last + 1} {
			r.Profile.Day = assessed
			if list, err := r.Alarms(last + 1); err != nil || len(list) != len(troubles) || !list[0].Open {
				t.Errorf("%s, assessed on %v: %v, %+v", what, assessed, err, list)
			}
		}
		r.Profile.Events = []screening.Event{{Code: "fall", Day: last}}
		r.Looked = []record.Look{{Observation: dose.Observation{Who: "Doctor M", Day: last + 1}, Practised: 1}}
		if list, err := r.Alarms(last + 1); err != nil || len(list) > 0 {
			t.Errorf("%s, looked at and heard of: %v, %+v", what, err, list)
		}
	}
}

// signedIn are the ways in which one sign that is seen today may be told, of a day.
var signedIn = map[string]func(r *record.Record, day units.Day){
	"check": func(r *record.Record, day units.Day) {
		r.Checks = []screening.Check{{Day: day, Setting: r.Profile.Setting, New: screening.AskedFor("dizziness_or_syncope")}}
	},
	"beside lifting": func(r *record.Record, day units.Day) {
		r.Practised = []beside.Practised{{Day: day, Track: "stance", Troubles: []beside.Trouble{beside.Dizzied}}}
	},
	"assessment": func(r *record.Record, day units.Day) {
		r.Happened = []programme.Happening{{Kind: programme.NewSymptom, Day: day, Unassessed: screening.No}}
	},
}

// Wherever a sign was told that is seen today, it stands as one at a visit does, as long, and
// ends the same clearances.
func TestOneRuleForSigns(t *testing.T) {
	base, last := heart(t, func(last units.Day) units.Day { return last - 20 })
	base.Checks = nil
	rapid.Check(t, func(rt *rapid.T) {
		calm := base
		on := func(what string, least int) units.Day {
			return last + units.Day(rapid.IntRange(least, 4).Draw(rt, what))
		}
		calm.Profile.Clearances = []screening.Clearance{{Who: "Doctor K", Day: on("given", -2), Scope: []screening.Code{"cardiac", "exertional_angina"}}}
		calm.Profile.Day = max(calm.Profile.Clearances[0].Day, on("assessed", -2))
		saw, looks := rapid.IntRange(0, 1).Draw(rt, "saw"), []dose.Observation(nil)
		if rapid.Bool().Draw(rt, "looked") {
			looks = []dose.Observation{{Who: "Doctor M", Day: on("looked at", 0)}}
		}
		look := func(seen record.Look) (list []record.Look) {
			for _, one := range looks {
				seen.Observation = one
				list = append(list, seen)
			}
			return list
		}
		day := max(calm.Profile.Day, on("day", 0))
		stands := func(r record.Record) (string, bool) {
			list, err := r.Alarms(day)
			o, failed := r.Screening(day)
			if err != nil || failed != nil || len(list) > 1 {
				rt.Fatal(err, failed, list)
			}
			text := ""
			for _, a := range list {
				text = strings.Join([]string{a.Day.String(), a.Route.String(), a.Who.String(), a.LookedAt.Who}, ", ")
			}
			return text, len(o.Clearances) > 0
		}
		visit := calm
		visit.Visits, visit.Looked = slices.Clone(calm.Visits), look(record.Look{Visits: len(calm.Visits) - 1 + saw})
		visit.Visits[len(visit.Visits)-1].Moment = &screening.Moment{Signs: []screening.Code{"dizzy_or_swaying"}}
		want, counts := stands(visit)
		for where, tell := range signedIn {
			r := calm
			r.Looked = look(map[string]record.Look{"check": {Checks: saw}, "beside lifting": {Practised: saw}, "assessment": {Happened: saw}}[where])
			tell(&r, last)
			if got, still := stands(r); got != want || still != counts {
				rt.Fatalf("%s: stands %q, clearance %v; at a visit %q, %v", where, got, still, want, counts)
			}
		}
	})
}

// Who has to look at least, and whose look counts: a physiotherapist looks at what has no
// graver way out, a doctor at what sends to help now or today, who operated or treats an
// illness at what is theirs; no look at more than one thing needs less.
func TestWhoHasToLook(t *testing.T) {
	for kind, want := range map[programme.HappeningKind]screening.Lifter{
		programme.Injury: screening.ThePhysio, programme.MedicineChanged: screening.ThePhysio,
		programme.Faint: screening.TheDoctor, programme.HeadKnock: screening.TheDoctor, programme.HospitalStay: 0,
	} {
		r := read(t, review)
		last := r.Visits[len(r.Visits)-1].Day
		r.Happened = []programme.Happening{{Kind: kind, Day: last}}
		if list, err := r.Alarms(last); err != nil || len(list) != 1 || list[0].Who != want {
			t.Errorf("%s: %v, %+v", kind, err, list)
		}
	}
	for kind, want := range map[screening.PainKind]screening.Lifter{screening.ChestPain: screening.TheDoctor, screening.PostOperativePain: screening.TheSurgeon, screening.BonePain: screening.TheTeam} {
		r := read(t, review)
		v := &r.Visits[len(r.Visits)-1]
		v.Noted = record.Noted{Pain: &screening.Pain{Kind: kind}}
		if list, err := r.Alarms(v.Day); err != nil || len(list) != 1 || list[0].Who != want {
			t.Errorf("%s: %v, %+v", kind, err, list)
		}
	}
	for l := range screening.Lifters() {
		for who := screening.ThePhysio; who <= screening.TheTeam; who++ {
			a := record.Alarm{Who: who}
			counts := map[screening.Lifter]bool{screening.ThePhysio: l >= screening.ThePhysio, screening.TheDoctor: l >= screening.TheDoctor, screening.TheSurgeon: l == screening.TheSurgeon || l == screening.TheTeam, screening.TheTeam: l == screening.TheTeam}[who]
			if a.Counts(l) != counts || a.Counts(l) && !(record.Alarm{Who: who - 1}).Counts(l) {
				t.Errorf("%s for %s: %v", l, who, a.Counts(l))
			}
		}
	}
	open := signed(t, false)
	if list, err := open.Alarms(open.Visits[len(open.Visits)-1].Day); err != nil || !list[0].Open || list[0].Who != screening.TheDoctor || list[0].Counts(0) || list[0].Counts(screening.ThePhysio) {
		t.Errorf("%v, %+v", err, list)
	}
}

// A look saw no more checks than there are, and none of a later day.
func TestLooksAtChecks(t *testing.T) {
	r := read(t, review)
	day := r.Visits[len(r.Visits)-1].Day
	r.Checks = []screening.Check{{Day: day, Setting: r.Profile.Setting}}
	for path, n := range map[string]int{"/looked/0/checks": 2, "/looked/0/day": 1} {
		r.Looked = []record.Look{{Observation: dose.Observation{Who: "Doctor M", Day: day - 1}, Checks: n}}
		if got := fieldtest.Paths(r.Validate()); !slices.Equal(got, []string{path}) {
			t.Errorf("%d: %v", n, got)
		}
	}
}

// One sign more in a check never takes an alarm away, nor sends anywhere milder, nor lets somebody
// look who could not before.
func TestSignsOfChecksOnlyAdd(t *testing.T) {
	var codes []screening.Code
	for term := range screening.Codes() {
		if term.Kind == screening.Symptom || term.Kind == screening.RedFlag {
			codes = append(codes, term.Code)
		}
	}
	base := read(t, review)
	rapid.Check(t, func(rt *rapid.T) {
		r := base
		last := r.Visits[len(r.Visits)-1].Day
		list := rapid.SliceOfNDistinct(rapid.SampledFrom(codes), 1, 4, rapid.ID).Draw(rt, "codes")
		r.Profile.Day = last + units.Day(rapid.IntRange(0, 3).Draw(rt, "assessed"))
		if rapid.Bool().Draw(rt, "looked") {
			r.Looked = []record.Look{{Observation: dose.Observation{Who: "Doctor M", Day: last + 2}, Checks: 1}}
		}
		at := func(n int) (screening.Route, screening.Lifter, int) {
			r.Checks = []screening.Check{{Day: last + 1, Setting: r.Profile.Setting, New: screening.AskedFor(list[:n]...)}}
			alarms, err := r.Alarms(last + 4)
			if err != nil {
				rt.Fatal(err)
			}
			route, who := screening.Route(0), screening.Lifter(0)
			for _, a := range alarms {
				route, who = max(route, a.Route), max(who, a.Who)
			}
			return route, who, len(alarms)
		}
		was, before, few := at(len(list) - 1)
		if is, who, more := at(len(list)); is < was || more < few || who < before {
			rt.Fatalf("%v: %v by %v after %v by %v, %d after %d", list, is, who, was, before, more, few)
		}
	})
}
