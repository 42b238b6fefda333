package record_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// What showed or was told stands until somebody has looked, and after a visit until an
// assessment has followed too; meanwhile nothing is prescribed, and the review sends where
// screening sends with it.
func TestAlarms(t *testing.T) {
	calm := read(t, review)
	last := calm.Visits[len(calm.Visits)-1].Day
	day := last + 3
	without, err := calm.Assess(day)
	if err != nil {
		t.Fatal(err)
	}
	look := record.Look{Observation: dose.Observation{Who: "Doctor M", Day: last + 1}, Visits: len(calm.Visits), Happened: 1}
	moment := func(codes ...screening.Code) func(*record.Record) {
		return func(r *record.Record) { r.Visits[len(r.Visits)-1].Moment = &screening.Moment{Signs: codes} }
	}
	hurts := func(kind screening.PainKind) func(*record.Record) {
		return func(r *record.Record) {
			v := &r.Visits[len(r.Visits)-1]
			v.But = []record.Exception{{Exercise: r.Asked[0].Exercise, Noted: record.Noted{Pain: &screening.Pain{Kind: kind}}}}
		}
	}
	told := func(kind programme.HappeningKind) func(*record.Record) {
		return func(r *record.Record) { r.Happened = []programme.Happening{{Kind: kind, Day: last}} }
	}
	for _, tt := range []struct {
		what   string
		spoil  func(*record.Record)
		route  screening.Route
		assess bool // after a look, an assessment is needed too
	}{
		{"nothing", moment(), 0, false},
		{"a cramp, which ends a set", moment("leg_cramp"), 0, false},
		{"chest pain", moment("chest_symptom"), screening.Emergency, true},
		{"dizzy", moment("dizzy_or_swaying"), screening.SameDay, true},
		{"both, the strictest", moment("dizzy_or_swaying", "chest_symptom"), screening.Emergency, true},
		{"pain around the chest in one exercise", hurts(screening.ChestPain), screening.SameDay, true},
		{"pain early after an operation", hurts(screening.PostOperativePain), screening.AskFirst, true},
		{"pain that spreads", hurts(screening.SpreadingPain), screening.AskFirst, true},
		{"pain as from a fracture of the spine", hurts(screening.SpinePain), screening.SameDay, true},
		{"pain of the bones", hurts(screening.BonePain), screening.SameDay, true},
		{"a hot joint", hurts(screening.HotJointPain), screening.SameDay, true},
		{"a faint", told(programme.Faint), screening.SameDay, true},
		{"a new symptom", told(programme.NewSymptom), screening.AskFirst, false},
		{"a new symptom that an assessment sent to be seen today", func(r *record.Record) {
			r.Happened = []programme.Happening{{Kind: programme.NewSymptom, Day: last, Unassessed: screening.No}}
		}, screening.SameDay, true},
		{"an injury", told(programme.Injury), screening.AskFirst, false},
		{"a flare of pain", told(programme.PainFlare), screening.AskFirst, false},
		{"another medicine", told(programme.MedicineChanged), screening.AskFirst, false},
		{"a knock on the head", told(programme.HeadKnock), screening.SameDay, false},
	} {
		for looked := range 2 {
			for assessed := range 2 {
				r := read(t, review)
				tt.spoil(&r)
				if looked > 0 {
					r.Looked = []record.Look{look}
					r.Looked[0].Happened = len(r.Happened)
				}
				if assessed > 0 {
					r.Profile.Day = last + 2
				}
				re, err := r.Assess(day)
				if err != nil {
					t.Fatalf("%s: %v", tt.what, err)
				}
				free := tt.route == 0 || looked > 0 && (assessed > 0 || !tt.assess)
				if stops := re.Coming == nil && !slices.ContainsFunc(re.Items, func(i record.Decided) bool { return i.Decision.Action != progression.StopAndRefer }); stops == free || (len(re.Alarms) == 0) != free {
					t.Errorf("%s, looked at %d, assessed %d: stops %v, %+v", tt.what, looked, assessed, stops, re.Alarms)
				}
				route := tt.route
				if free || looked > 0 { // nobody is sent to be looked at once more
					route = without.Screening.Route
				}
				if re.Screening.Route != route || !free && re.Screening.Meanwhile != screening.Nothing {
					t.Errorf("%s, looked at %d: %v, meanwhile %v", tt.what, looked, re.Screening.Route, re.Screening.Meanwhile)
				}
				if (len(re.Overdue) > 0) != free { // else a test of strength would be due before the doctor
					t.Errorf("%s, looked at %d: overdue %v", tt.what, looked, re.Overdue)
				}
				if !free && looked == 0 && len(r.Happened) == 0 && string(re.Alarms[0].Reasons[0].Code) != map[screening.Route]string{screening.Emergency: "progression.help-now", screening.SameDay: "progression.see-today", screening.AskFirst: "progression.look-first"}[tt.route] {
					t.Errorf("%s: %v, but %s", tt.what, tt.route, re.Alarms[0].Reasons[0].Code)
				}
				if !free && looked > 0 && re.Alarms[0].Reasons[0].Code != "progression.looked-at" {
					t.Errorf("%s, looked at: %+v", tt.what, re.Alarms[0].Reasons)
				}
				if len(r.Happened) != len(re.Told) {
					t.Errorf("%s: told %+v", tt.what, re.Told)
				}
			}
		}
	}
}

// While something stands no plan and no week is made, and both say what.
func TestNothingIsPlannedWhileSomethingStands(t *testing.T) {
	r := read(t, review)
	day := r.Visits[len(r.Visits)-1].Day + 3
	for looked := range 2 {
		r.Happened = []programme.Happening{{Kind: programme.HeadKnock, Day: day - 1}}
		if looked > 0 {
			r.Looked = []record.Look{{Observation: dose.Observation{Who: "Doctor M", Day: day}, Visits: len(r.Visits), Happened: 1}}
		}
		began := r
		began.Days = []units.Day{day, day + 3}
		p, err := began.Start(day)
		if err != nil {
			t.Fatal(err)
		}
		var none *dose.ConstraintError
		_, err = r.Week(day)
		if stops := p.Week == nil && p.Screening.Meanwhile == screening.Nothing && p.Screening.Route == screening.SameDay; stops != (looked == 0) || errors.As(err, &none) != stops {
			t.Errorf("looked %d: %v, %v, %v; %v", looked, p.Week != nil, p.Screening.Meanwhile, p.Screening.Route, err)
		}
		hurt := signed(t, looked > 0)
		hurt.Days = began.Days
		if p, err := hurt.Start(day); err != nil || p.Week != nil || (p.Screening.Route == screening.Emergency) != (looked == 0) {
			t.Errorf("chest pain, looked %d: %v, %v", looked, err, p.Screening.Route)
		}
		if looked == 0 && (p.Stop.Constraint.Code != "progression.happened-head" || none.Constraint.Code != p.Stop.Constraint.Code || !errors.Is(err, dose.ErrNoDose)) {
			t.Errorf("%+v, %v", p.Stop, err)
		}
	}
}

// signed is a record in which the chest hurt at the last visit, and who has looked sends nobody.
func signed(t *testing.T, looked bool) record.Record {
	r := read(t, review)
	n := len(r.Visits)
	r.Visits[n-1].Moment = &screening.Moment{Signs: []screening.Code{"chest_symptom"}}
	if looked {
		r.Looked = []record.Look{{Observation: dose.Observation{Who: "Doctor M", Day: r.Visits[n-1].Day}, Visits: n}}
	}
	return r
}

// What stands on each day: a sign of a visit on its own day would not stop the next session, a
// look of tomorrow free today's, a sprain hide a faint behind it.
func TestAlarmsOfADay(t *testing.T) {
	const day = units.Day(740045) // of the last visit
	n := len(read(t, review).Visits)
	sign := func(r *record.Record) {
		r.Visits[n-1].Moment = &screening.Moment{Signs: []screening.Code{"chest_symptom"}}
		r.Profile.Day = day - 1
	}
	told := func(kinds ...programme.HappeningKind) func(*record.Record) {
		return func(r *record.Record) {
			for _, kind := range kinds {
				r.Happened = append(r.Happened, programme.Happening{Kind: kind, Day: day})
			}
			r.Profile.Day = day - 1
		}
	}
	look := func(at units.Day, happened int) func(*record.Record) {
		return func(r *record.Record) {
			r.Looked = []record.Look{{Observation: dose.Observation{Who: "Doctor M", Day: at}, Visits: n, Happened: happened}}
		}
	}
	assessed := func(at units.Day) func(*record.Record) { return func(r *record.Record) { r.Profile.Day = at } }
	fell := func(at units.Day) func(*record.Record) {
		return func(r *record.Record) {
			e, _ := programme.Happening{Kind: programme.Fall, Day: at}.Event()
			r.Checks = []screening.Check{{Day: day, Setting: r.Profile.Setting, Events: []screening.Event{e}}}
		}
	}
	fall := fell(day)
	for _, tt := range []struct {
		what string
		on   units.Day
		want string // routes, and whether nobody has looked
		of   []func(*record.Record)
	}{
		{"a sign of tomorrow", day - 1, "", []func(*record.Record){sign}},
		{"of today", day, "emergency open", []func(*record.Record){sign}},
		{"to be looked at tomorrow", day, "emergency open", []func(*record.Record){sign, look(day+1, 0)}},
		{"looked at today", day, "emergency", []func(*record.Record){sign, look(day, 0)}},
		{"and assessed before", day, "emergency", []func(*record.Record){sign, look(day, 0), assessed(day)}},
		{"and assessed later", day + 1, "", []func(*record.Record){sign, look(day, 0), assessed(day + 1)}},
		{"told tomorrow", day - 1, "", []func(*record.Record){told(programme.Faint)}},
		{"told today", day, "same day open", []func(*record.Record){told(programme.Faint)}},
		{"told before an assessment to come", day, "same day open", []func(*record.Record){told(programme.Faint), assessed(day + 1)}},
		{"told, to be looked at tomorrow", day, "same day open", []func(*record.Record){told(programme.Faint), look(day+1, 1)}},
		{"told, looked at today", day, "same day", []func(*record.Record){told(programme.Faint), look(day, 1)}},
		{"and assessed later", day + 1, "", []func(*record.Record){told(programme.Faint), look(day, 1), assessed(day + 1)}},
		{"what is no sign, looked at today", day, "", []func(*record.Record){told(programme.HeadKnock), look(day, 1)}},
		{"told since a look", day, "same day open", []func(*record.Record){told(programme.Faint), look(day, 0)}},
		{"the gravest first", day, "same day open, ask first open", []func(*record.Record){told(programme.Injury, programme.Faint)}},
		{"the gravest stays", day, "same day open, ask first open", []func(*record.Record){told(programme.Faint, programme.Injury)}},
		{"what nobody looked at before what is grave", day, "ask first open, emergency", []func(*record.Record){sign, told(programme.Injury), look(day, 0)}},
		{"a fall of a check tomorrow", day - 1, "", []func(*record.Record){assessed(day - 1), fall}},
		{"of a check today", day, "ask first", []func(*record.Record){assessed(day - 1), fall}},
		{"on the day of the assessment", day, "ask first", []func(*record.Record){assessed(day), fall}},
		{"of a day before it", day, "ask first", []func(*record.Record){assessed(day), fell(day - 3)}},
		{"told as well, and not to the assessment", day, "ask first", []func(*record.Record){told(programme.Fall), assessed(day)}},
		{"told, and not to an assessment since", day + 1, "ask first", []func(*record.Record){told(programme.Fall), assessed(day + 1)}},
		{"before the assessment", day + 1, "", []func(*record.Record){assessed(day + 1), fall}},
	} {
		r := read(t, review)
		for _, change := range tt.of {
			change(&r)
		}
		list, err := r.Alarms(tt.on)
		var got []string
		for _, a := range list {
			text := a.Route.String()
			if a.Open {
				text += " open"
			}
			got = append(got, text)
		}
		if err != nil || strings.Join(got, ", ") != tt.want {
			t.Errorf("%s: %v, %q, want %q", tt.what, err, got, tt.want)
		}
	}
}

// A milder sign after a grave one does not take its place, in whatever order they came.
func TestTheGravestIsSaid(t *testing.T) {
	for _, signs := range [][2]screening.Code{{"chest_symptom", "dizzy_or_swaying"}, {"dizzy_or_swaying", "chest_symptom"}} {
		r := read(t, review)
		n := len(r.Visits)
		for i, code := range signs {
			r.Visits[n-2+i].Moment = &screening.Moment{Signs: []screening.Code{code}}
		}
		re, err := r.Assess(r.Visits[n-1].Day + 3)
		if err != nil {
			t.Fatal(err)
		}
		for _, i := range re.Items {
			if d := i.Decision; d.Action != progression.StopAndRefer || d.Reasons[0].Code != "progression.help-now" {
				t.Errorf("%v, %s: %v, %+v", signs, i.Name, d.Action, d.Reasons)
			}
		}
	}
}

func TestDaysAsked(t *testing.T) {
	r := read(t, review)
	_, alarms := r.Alarms(0)
	_, dates := r.Dates(0)
	for what, err := range map[string]error{"alarms": alarms, "dates": dates} {
		if got := fieldtest.Paths(err); !slices.Equal(got, []string{"/day"}) {
			t.Errorf("%s: %v", what, err)
		}
	}
}

// Each look saw no more than there was; what comes later stands, on the same day too.
func TestLooks(t *testing.T) {
	r := read(t, review)
	n := len(r.Visits)
	r.Visits[n-1].Moment = &screening.Moment{Signs: []screening.Code{"chest_symptom"}}
	r.Profile.Day = r.Visits[n-1].Day + 1
	r.Looked = []record.Look{{Observation: dose.Observation{Who: "Physiotherapist H", Day: r.Visits[n-1].Day}, Visits: n - 1}}
	if list, err := r.Alarms(r.Profile.Day); err != nil || len(list) != 1 || list[0].LookedAt.Made() {
		t.Errorf("looked at before the visit: %v, %+v", err, list)
	}
	for at, spoil := range map[string]func(*record.Record){
		"/looked/0/who":      func(r *record.Record) { r.Looked[0].Who = "" },
		"/looked/0/day":      func(r *record.Record) { r.Looked[0].Day = 0 },
		"/looked/0/day ":     func(r *record.Record) { r.Looked[0].Visits, r.Looked[0].Day = n, r.Visits[n-1].Day-1 },
		"/looked/0/visits":   func(r *record.Record) { r.Looked[0].Visits = n + 1 },
		"/looked/0/happened": func(r *record.Record) { r.Looked[0].Happened = 1 },
		"/happened/0/kind":   func(r *record.Record) { r.Happened = []programme.Happening{{Day: r.Profile.Day}} },
	} {
		bad := r
		bad.Looked = slices.Clone(r.Looked)
		spoil(&bad)
		if err := bad.Validate(); err == nil || !strings.Contains(err.Error(), strings.TrimSpace(at)) {
			t.Errorf("%s: %v", at, err)
		}
	}
	r.Looked[0].Day += 100
	if _, err := r.Assess(r.Profile.Day); err == nil || !strings.Contains(err.Error(), "/looked/0/day") {
		t.Errorf("a look of the future: %v", err)
	}
	older := strings.Replace(string(file(t, before)), `"visits": [`, `"looked": [{"who": "E", "day": "2027-03-01"}], "visits": [`, 1)
	if _, err := record.Decode([]byte(older), field.Strict); err == nil || !strings.Contains(err.Error(), "/looked") {
		t.Errorf("an older version had no looks: %v", err)
	}
}

// An event stands, with a look too, until an assessment has heard of it.
func TestEventsStand(t *testing.T) {
	r := read(t, review)
	day := r.Visits[len(r.Visits)-1].Day + 3
	fall := programme.Happening{Kind: programme.Fall, Day: day - 1}
	e, _ := fall.Event()
	told, checked := r, r
	told.Happened = []programme.Happening{fall}
	checked.Checks = []screening.Check{{Day: day - 1, Setting: r.Profile.Setting, Events: []screening.Event{e}}}
	for what, r := range map[string]record.Record{"told": told, "checked": checked} {
		for looked := range 2 {
			if looked > 0 {
				r.Looked = []record.Look{{Observation: dose.Observation{Who: "Doctor M", Day: day}, Visits: len(r.Visits), Happened: len(r.Happened)}}
			}
			for heard := range 2 {
				r.Profile.Day, r.Profile.Events = day-2, nil
				if heard > 0 {
					r.Profile.Day, r.Profile.Events = day-1, []screening.Event{e}
				}
				re, err := r.Assess(day)
				if err != nil || (len(re.Alarms) == 0) != (heard > 0) || heard == 0 && (re.Coming != nil || re.Alarms[0].Open || re.Screening.Route < screening.AskFirst) {
					t.Errorf("%s, looked %d, heard %d: %v, %+v", what, looked, heard, err, re.Alarms)
				}
			}
		}
	}
}

// What was decided before something was told, or looked at, comes out again as it was.
func TestAlarmsReplay(t *testing.T) {
	r := read(t, review)
	day := r.Visits[len(r.Visits)-1].Day + 3
	decide := func() {
		t.Helper()
		entry := units.Must(r.Decide(day))
		r.Entries = append(r.Entries, entry)
	}
	decide()
	r.Happened = []programme.Happening{{Kind: programme.HeadKnock, Day: day}}
	decide()
	r.Looked = []record.Look{{Observation: dose.Observation{Who: "Doctor M", Day: day}, Visits: len(r.Visits), Happened: 1}}
	decide()
	for i, one := range r.Replay() {
		stops := one.Now.Items[0].Decision.Action == progression.StopAndRefer
		if one.Err != nil || stops != (i == 1) {
			t.Errorf("%d: %v, stops %v", i, one.Err, stops)
		}
	}
}
