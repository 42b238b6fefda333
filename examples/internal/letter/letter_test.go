package letter_test

import (
	"regexp"
	"strings"
	"testing"

	"example.org/posology/examples/internal/letter"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

var day = units.Must(units.NewDay(2026, 11, 25))

// well returns an invented person of whom everything was asked and nothing found.
func well() screening.Profile {
	return screening.Profile{
		Day: day, Age: 68, Sex: body.Female, Wanted: screening.Moderate, Setting: screening.InClinic,
		Activity: &screening.Activity{DaysPerWeek: 3, Minutes: 30, Intensity: screening.Moderate, Months: 6},
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(),
		BP: &screening.BloodPressure{Systolic: 128, Diastolic: 78}, RestingPulse: 66,
		Falls:   &screening.FallsScreen{Afraid: screening.No, Fell: screening.No, Unsteady: screening.No},
		Answers: map[screening.Code]screening.Answer{"vertebral_fracture": screening.No, "insulin_or_secretagogue": screening.No},
	}
}

// written returns the letter about a person, on one line.
func written(t *testing.T, p screening.Profile, c *screening.Check, to ...letter.Reader) string {
	t.Helper()
	o, err := screening.Assess(p)
	if err == nil && c != nil {
		o, err = screening.Today(*c, o)
	}
	if err != nil {
		t.Fatal(err)
	}
	var out strings.Builder
	l := letter.Letter{Client: "Client A", Opening: "I saw Client A.", Task: "get out of my chair", Day: max(o.Day, o.Today), Profile: p, Check: c, Outcome: o}
	for _, reader := range to {
		l.To = reader
	}
	d, err := l.Document()
	if err != nil {
		t.Fatal(err)
	}
	if err := d.Text(&out); err != nil {
		t.Fatal(err)
	}
	return strings.Join(strings.Fields(out.String()), " ")
}

// What is asked fits what was found.
func TestQuestionsFit(t *testing.T) {
	for _, tt := range []struct {
		name   string
		change func(*screening.Profile)
		want   string
	}{
		{"height lost", func(p *screening.Profile) { p.RedFlags = screening.AskedFor("sudden_back_pain_or_height_loss") }, "need an image to rule out a fracture"},
		{"a fall", func(p *screening.Profile) { p.Conditions = screening.AskedFor("falls_risk") }, "medicines, the blood pressure lying and standing, and whether treatment for the bones is due"},
		{"high pressure", func(p *screening.Profile) {
			p.BP = &screening.BloodPressure{Systolic: 172, Diastolic: 96}
			p.BPAgain = &screening.BloodPressure{Systolic: 170, Diastolic: 94}
		}, "up to which pressure at rest may this person train"},
		{"the heart", func(p *screening.Profile) { p.Symptoms = screening.AskedFor("ischaemic_chest_neck_jaw_arm_pain") }, "signs of the heart, may training begin"},
		{"a new hip", func(p *screening.Profile) {
			p.Conditions = screening.AskedFor("total_hip_replacement")
			p.Events = []screening.Event{{Code: "total_hip_replacement", Day: day - 60, Side: body.Right}}
		}, "still to be left after the operation"},
		{"what has no question of its own", func(p *screening.Profile) { p.Conditions = screening.AskedFor("uncontrolled_systemic_disease") }, "Is there any reason against resistance training"},
		{"a kidney, of which an agreement alone is asked", func(p *screening.Profile) {
			p.Diseases, p.Activity.Intensity = screening.AskedFor("renal"), screening.Idle
		}, "Training waits for your agreement about"},
	} {
		p := well()
		tt.change(&p)
		got := written(t, p, nil)
		if strings.Contains(tt.name, "alone") && strings.Contains(got, "Is there any reason against") {
			t.Errorf("%s: asked twice in\n%s", tt.name, got)
		}
		if strings.Count(got, tt.want) != 1 || !strings.Contains(got, "MY QUESTIONS") {
			t.Errorf("%s: no single %q in\n%s", tt.name, tt.want, got)
		}
	}
}

// A letter that asks nothing says so, and waits for nothing.
func TestNothingToAsk(t *testing.T) {
	p := well()
	p.Conditions = screening.AskedFor("hypertension_treated")
	got := written(t, p, nil)
	for _, no := range []string{"Until I hear", "MY QUESTIONS", "?"} {
		if strings.Contains(got, no) {
			t.Errorf("%q in\n%s", no, got)
		}
	}
	if !strings.Contains(got, "for your information, and training does not wait") {
		t.Error(got)
	}
}

// Readings, days, sides, masses and authors stand in the letter, and what was
// found today stands under today.
func TestLetterBringsWhatItHas(t *testing.T) {
	p := well()
	mass := units.Must(units.ParseMass("1 kg"))
	p.Conditions = screening.AskedFor("osteoporosis")
	p.Restrictions = []screening.Restriction{{Author: "Surgeon B", Day: day - 20, Side: body.Right, Region: body.Shoulder, MaxMass: &mass}}
	p.Events = []screening.Event{{Code: "total_hip_replacement", Day: day - 400, Side: body.Left}}
	c := &screening.Check{Day: day + 14, New: screening.AskedFor("sudden_back_pain_or_height_loss"), Setting: screening.InClinic, Febrile: screening.No,
		SpO2: 86, SpO2Again: 91, BP: &screening.BloodPressure{Systolic: 151, Diastolic: 88}, Glucose: units.Must(screening.ParseGlucose("4.6 mmol/L")), InsulinOrSecretagogue: screening.No}
	got := written(t, p, c)
	if month := "Hip replacement, left side, in October 2025."; !strings.Contains(letterWith(t, p, screening.Event{Code: "total_hip_replacement", Day: units.Must(units.ParseDay("2025-10-31")), Side: body.Left}), month) {
		t.Errorf("a month that was told for the last of its days: no %q", month)
	}
	for _, want := range []string{
		"128/78 mmHg", "66 a minute", "151/88 mmHg", "oxygen saturation 86 %; after a rest 91 %", "glucose 4.6 mmol/L", "medicines: no list", "Wednesday 9 December 2026",
		"Hip replacement, left side, on Tuesday 21 October 2025", "Surgeon B, Thursday 5 November 2026, until further notice: shoulder, right: at most 1 kg in a hand",
		"in their own words: “get out of my chair”",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("no %q in\n%s", want, got)
		}
	}
	_, found, _ := strings.Cut(got, "FOUND TODAY, WEDNESDAY 9 DECEMBER 2026")
	now, before, ok := strings.Cut(found, "FOUND AT THE ASSESSMENT ON WEDNESDAY 25 NOVEMBER 2026")
	if !ok || !strings.Contains(now, "Sudden back pain") || strings.Contains(now, "Osteoporosis") || !strings.Contains(before, "Osteoporosis") {
		t.Errorf("found today %q, before %q", now, before)
	}
}

// letterWith is the letter of somebody of whom one event alone was told.
func letterWith(t *testing.T, p screening.Profile, e screening.Event) string {
	t.Helper()
	p.Events = []screening.Event{e}
	return written(t, p, nil)
}

var coded = regexp.MustCompile(`\w_\w|\b(screening|dose|progression|onerm)\.\w|Here: |branch [NA]\d|route \w`)

// No code of the library stands in a letter, whatever was found.
func TestNoCodes(t *testing.T) {
	kinds := map[screening.Kind]func(*screening.Profile, screening.Code){
		screening.Disease:   func(p *screening.Profile, c screening.Code) { p.Diseases = screening.AskedFor(c) },
		screening.Symptom:   func(p *screening.Profile, c screening.Code) { p.Symptoms = screening.AskedFor(c) },
		screening.RedFlag:   func(p *screening.Profile, c screening.Code) { p.RedFlags = screening.AskedFor(c) },
		screening.Condition: func(p *screening.Profile, c screening.Code) { p.Conditions = screening.AskedFor(c) },
		screening.Happening: func(p *screening.Profile, c screening.Code) { p.Events = []screening.Event{{Code: c, Day: day - 3}} },
	}
	for term := range screening.Codes() {
		set := kinds[term.Kind]
		if set == nil {
			continue
		}
		for _, cleared := range []bool{false, true} {
			p := well()
			set(&p, term.Code)
			if cleared && term.Kind != screening.Happening && term.Kind != screening.RedFlag {
				p.Clearances = []screening.Clearance{{Who: "Doctor C", Day: day - 1, Scope: []screening.Code{term.Code}}}
			}
			for _, to := range []letter.Reader{letter.Doctor, letter.Surgeon, letter.FallsService} {
				if found := coded.FindString(written(t, p, nil, to)); found != "" {
					t.Errorf("%s, cleared %v, to the %s: %q", term.Code, cleared, to, found)
				}
			}
		}
	}
}

// What each rule says by itself does not speak against what was found: one sign of the
// spine is named, pain that no check is for is, and diabetes has one type.
func TestRulesFitWhatWasFound(t *testing.T) {
	p := well()
	p.Activity, p.Diseases, p.RedFlags = &screening.Activity{Intensity: screening.Idle}, screening.AskedFor("diabetes_t2"), screening.AskedFor("back_pain_not_better_at_a_month")
	got := written(t, p, &screening.Check{Day: day, New: screening.AskedFor(), Setting: screening.InClinic, Febrile: screening.No, Pain: &screening.Pain{Kind: screening.ChestPain}})
	for _, want := range []string{"(IFOMPT 2020): no referral for what was found, by itself: back pain no better", "no session today: pain around the chest", "relative: diabetes -"} {
		if !strings.Contains(got, want) {
			t.Errorf("no %q in\n%s", want, got)
		}
	}
	if strings.Contains(got, "type not stated") {
		t.Error("a type that was stated")
	}
}

// Who fell is said to have fallen, and a risk that was told among the conditions has the
// list of what is looked at, as the screen has.
func TestLetterSaysWhoFell(t *testing.T) {
	p := well()
	p.Conditions, p.Falls = screening.AskedFor("falls_risk"), nil
	if got := written(t, p, nil, letter.FallsService); !strings.Contains(got, "WHAT A POSITIVE FALLS SCREEN HAS LOOKED AT - other illnesses") {
		t.Error(got)
	}
	p.Falls = &screening.FallsScreen{Fell: screening.Yes, Unsteady: screening.Yes}
	if got := written(t, p, nil, letter.FallsService); !strings.Contains(got, "- A fall in the last 12 months; unsteady, standing or walking.") {
		t.Error(got)
	}
}

// A doctor reads what is not known, and not how it is counted here.
func TestWhatIsNotKnownReadsPlainly(t *testing.T) {
	p := well()
	p.Symptoms.Unsure, p.Conditions.Unsure = []screening.Code{"dizziness_or_syncope"}, []screening.Code{"total_hip_replacement"}
	if got := written(t, p, nil); strings.Contains(got, "meanwhile nothing") || strings.Contains(got, "Until it is looked at") || strings.Contains(got, "route ") {
		t.Error(got)
	}
}
