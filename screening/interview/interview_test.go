package interview

import (
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

var visit = units.Must(units.ParseDay("2026-11-25"))

// reply makes a reply of a word: a text, yes or no, a choice, or codes with "?"
// behind those that are not sure; "" is not known.
func reply(q FormQuestion, word string) (r Reply) {
	switch {
	case word == "":
	case q.Form == YesNo:
		r.YesNo = map[string]screening.Answer{"yes": screening.Yes, "no": screening.No}[word]
	case q.Form == OneOf:
		r.Choice = screening.Code(word)
	case q.Form == SeveralOf:
		r.List.Asked = true
		for _, code := range strings.Fields(strings.TrimPrefix(word, "none")) {
			if name, doubtful := strings.CutSuffix(code, "?"); doubtful {
				r.List.Unsure = append(r.List.Unsure, screening.Code(name))
			} else {
				r.List.Present = append(r.List.Present, screening.Code(name))
			}
		}
	default:
		r.Text = word
	}
	return r
}

// walk answers every question until none is left, and returns the keys in the
// order of asking.
func walk(t *testing.T, answer func(q FormQuestion) string) (Interview, []string) {
	t.Helper()
	i := On(visit)
	var keys []string
	for q, more := i.Next(); more; q, more = i.Next() {
		if len(keys) > 200 || slices.Contains(keys, q.Key) {
			t.Fatalf("%s is asked again, or no end: %v", q.Key, keys)
		}
		after, err := i.Answer(q.Key, reply(q, answer(q)))
		if err != nil {
			t.Fatalf("%s: %q: %v", q.Key, answer(q), err)
		}
		keys, i = append(keys, q.Key), after
	}
	return i, keys
}

// well answers as somebody with nothing to tell, except the answers given.
func well(own map[string]string) func(q FormQuestion) string {
	plain := map[string]string{"age": "66", "activity": "0", "blood_pressure": "128/78", "pulse": "66"}
	return func(q FormQuestion) string {
		switch {
		case own[q.Key] != "":
			return strings.TrimPrefix(own[q.Key], "-")
		case q.Form == YesNo:
			return "no"
		case q.Form == SeveralOf:
			return "none"
		}
		return plain[q.Key]
	}
}

// unknown is the answer to a question that [well] would answer otherwise.
const unknown = "-"

func outcome(t *testing.T, i Interview) screening.Outcome {
	t.Helper()
	o, err := i.Outcome()
	if err != nil || !o.Screened() {
		t.Fatalf("%v", err)
	}
	return o
}

// Somebody well is asked this and nothing more.
func TestOnlyWhatIsTriggered(t *testing.T) {
	i, keys := walk(t, well(map[string]string{"setting": "in a group", "wanted": "moderate", "today": "yes", "setting_today": "in a group"}))
	want := []string{"age", "setting", "signs", "symptoms", "more_signs", "lasting_signs", "lasting_symptoms", "back_at_all", "diseases", "areas", "wanted", "activity", "blood_pressure", "pulse", "falls", "falls_unsteady", "falls_afraid", "today", "setting_today", "hurt", "unwell", "febrile"}
	for _, key := range keys {
		if !slices.Contains(want, key) && !strings.HasPrefix(key, "other_") {
			t.Errorf("%s is asked of somebody well", key)
		}
	}
	for _, key := range want {
		if !slices.Contains(keys, key) {
			t.Errorf("%s is not asked", key)
		}
	}
	if o := outcome(t, i); o.Route != screening.NoRoute || len(o.Missing) > 0 || o.Today != visit || i.Trains() != screening.Yes {
		t.Errorf("%v, %+v", o.Route, o.Missing)
	}
}

// What is answered arrives where the library looks for it.
func TestChoices(t *testing.T) {
	own := map[string]string{"setting": "in a group", "wanted": "moderate", "activity": "3 days", "activity_minutes": "30 min", "activity_months": "6", "activity_effort": "vigorous", "today": "yes", "setting_today": "in a clinic"}
	i, _ := walk(t, well(own))
	p, c := i.Profile(), i.Check()
	if p.Age != 66 || p.Day != visit || p.Setting != screening.InGroup || p.Wanted != screening.Moderate || p.RestingPulse != 66 || *p.BP != (screening.BloodPressure{Systolic: 128, Diastolic: 78}) {
		t.Errorf("%+v", p)
	}
	if c.Setting != screening.InClinic || c.Unwell != screening.No || *c.BP != *p.BP || c.Febrile != screening.No || !c.New.Asked || c.Pain != nil {
		t.Errorf("%+v", c)
	}
	want := screening.Activity{DaysPerWeek: 3, Minutes: 30, Intensity: screening.Vigorous, Months: 6}
	if a := p.Activity; a == nil || *a != want {
		t.Errorf("%+v, want %+v", a, want)
	}
	delete(own, "activity_months")
	if i, _ = walk(t, well(own)); i.Profile().Activity != nil {
		t.Errorf("half a record counts: %+v", i.Profile().Activity)
	}
}

// A limit on the weight of a limb is asked for its side, and is on that side alone; not known it is on both. What has
// no side, or no weight, is not asked.
func TestLimitOfOneSide(t *testing.T) {
	for _, tt := range []struct {
		region, mass, side string
		asked              bool
		want               body.Side
	}{
		{"shoulder", "2 kg", "left", true, body.Left}, {"shoulder", "2 kg", "right", true, body.Right}, {"shoulder", "2 kg", "both", true, body.Both}, {"shoulder", "2 kg", "", true, body.Both},
		{"knee", "2 kg", "right", true, body.Right}, {"lower back", "2 kg", "left", false, body.Both}, {"", "2 kg", "left", false, body.Both}, {"shoulder", "none", "left", false, 0},
	} {
		i, keys := walk(t, well(map[string]string{"areas": "joints", "joints": "musculoskeletal_limitation", "restriction": "yes", "restriction_who": "surgeon B",
			"restriction_region": tt.region, "restriction_mass": tt.mass, "restriction_side": tt.side, "today": "no"}))
		o, err := i.Outcome()
		if err != nil || slices.Contains(keys, "restriction_side") != tt.asked {
			t.Fatalf("%+v: %v, asked %v", tt, err, keys)
		}
		side := body.Side(0)
		for _, m := range o.Limits.Masses {
			side = m.Side
		}
		if side != tt.want {
			t.Errorf("%+v: %v", tt, o.Limits.Masses)
		}
	}
}

// TestRecords walks the records that an answer opens: pain, counts, a limit, a
// second reading, heart failure, sugar.
func TestRecords(t *testing.T) {
	i, keys := walk(t, well(map[string]string{
		"areas": "joints general heart lungs", "joints": "musculoskeletal_limitation rotator_cuff_repair", "rotator_cuff_repair_day": "2026-10", "general": "chemotherapy", "heart": "heart_failure", "lungs": "lung_disease",
		"restriction": "yes", "restriction_who": "surgeon B", "restriction_region": "shoulder", "restriction_mass": "5 lb", "restriction_until": "2027-01", "restriction_note": "not above the shoulder",
		"blood_counts": "yes", "platelets": "140", "haemoglobin": "9,8 g/dL", "blood_pressure": "164/96", "blood_pressure_again": "150/84 mmHg", "pulse": "120 bpm", "resting_pulse_again": "88",
		"today": "yes", "hurt": "yes", "pain_kind": "ordinary", "pain_during": "6", "pain_after": "2,5", "pain_settled": "yes", "pain_trend": "rising", "oxygen_saturation": "86 %", "oxygen_saturation_again": "91 %", "hf_worsening": "no",
	}))
	p, c := i.Profile(), i.Check()
	r := p.Restrictions[0]
	if r.Author != "surgeon B" || r.Region.String() != "shoulder" || r.MaxMass.String() != "2.26796185 kg" || r.Until.String() != "2027-01-31" || r.Note == "" {
		t.Errorf("%+v of %v", r, keys)
	}
	if p.Counts == nil || *p.Counts != (screening.BloodCounts{Platelets: 140, Haemoglobin: 98}) || len(p.Events) != 1 || p.Events[0].Day.String() != "2026-10-31" {
		t.Errorf("%+v, %+v", p.Counts, p.Events)
	}
	if c.Pain == nil || c.Pain.Kind != screening.OrdinaryPain || *c.Pain.During != 6 || *c.Pain.After != 2.5 || c.Pain.SettledNextMorning != screening.Yes || c.Pain.WeeklyTrend != screening.RisingPain {
		t.Errorf("%+v", c.Pain)
	}
	if c.SpO2 != 86 || c.SpO2Again != 91 || c.Worsening != screening.No || c.BPAgain == nil || c.RestingPulse != 120 || c.RestingPulseAgain != 88 {
		t.Errorf("%+v", c)
	}
	i, _ = walk(t, well(map[string]string{"diseases": "diabetes_t1", "insulin_or_secretagogue": "yes", "restriction_mass": "none", "today": "yes", "glucose": "16.0 mmol/L", "ketones": "small", "severe_low_24h": "yes"}))
	if c := i.Check(); c.Glucose.String() != "16 mmol/L" && c.Glucose.IsZero() || c.Ketones != screening.SmallKetones || c.SevereLow != screening.Yes || c.InsulinOrSecretagogue != screening.Yes {
		t.Errorf("%+v", c)
	}
}

// Nobody is asked when something was that may not have been; who is not sure of
// a gate goes through it.
func TestNotSure(t *testing.T) {
	_, keys := walk(t, well(map[string]string{"back_at_all": unknown, "areas": "bones", "bones": "osteoporosis", "vertebral_fracture": unknown}))
	if !slices.Contains(keys, "back") || !slices.Contains(keys, "vertebral_fracture") || slices.Contains(keys, "vertebral_fracture_day") {
		t.Errorf("asked %v", keys)
	}
	_, keys = walk(t, well(map[string]string{"areas": "joints", "joints": "rotator_cuff_repair?"}))
	if slices.Contains(keys, "rotator_cuff_repair_day") {
		t.Errorf("asked %v", keys)
	}
	_, keys = walk(t, well(map[string]string{"areas": "bones", "bones": "osteoporosis recent_fracture", "vertebral_fracture": "yes", "fracture_region": "knee"}))
	if !slices.Contains(keys, "vertebral_fracture_day") || !slices.Contains(keys, "fracture_region") {
		t.Errorf("asked %v", keys)
	}
}

// Who is held and could be let go on by a doctor's word is asked for it, and the
// answer counts.
func TestClearanceIsAccepted(t *testing.T) {
	for _, tt := range []struct{ area, group, code string }{
		{"heart", "heart", "pacemaker"}, {"", "symptoms", "ankle_oedema"}, {"joints", "joints", "shoulder_replacement"},
	} {
		own := map[string]string{tt.group: tt.code, "clearance": "yes", "clearance_who": "doctor A", "clearance_when": "2026-11-01", "clearance_scope": tt.code, "clearance_effort": "moderate"}
		if tt.area != "" {
			own["areas"] = tt.area
		}
		i, keys := walk(t, well(own))
		if !slices.Contains(keys, "clearance_scope") {
			t.Fatalf("%s: asked %v", tt.code, keys)
		}
		if o := outcome(t, i); o.Route > screening.Tell || o.Meanwhile != screening.WithinLimits {
			t.Errorf("%s, with a doctor's agreement: %v, %v", tt.code, o.Route, o.Meanwhile)
		}
	}
}

// Who stops before the lists are through does nothing meanwhile.
func TestStoppingEarlyForbids(t *testing.T) {
	answer, i, lists := well(map[string]string{"today": "yes"}), On(visit), true
	for q, more := i.Next(); more; q, more = i.Next() {
		if lists = lists && q.Key != "wanted"; lists && q.Key != "age" {
			if o := outcome(t, i); q.Form == SeveralOf && o.Meanwhile != screening.Nothing {
				t.Errorf("stopped before %s: %v", q.Key, o.Meanwhile)
			}
		}
		i = units.Must(i.Answer(q.Key, reply(q, answer(q))))
	}
}

// An emergency ends the interview at once.
func TestEmergencyEnds(t *testing.T) {
	i, keys := walk(t, well(map[string]string{"signs": "stroke_signs"}))
	if o := outcome(t, i); o.Route != screening.Emergency || keys[len(keys)-1] != "signs" {
		t.Errorf("%v, asked %v", o.Route, keys)
	}
}

// withCode answers a group by the one code, and opens what leads to it.
func withCode(g group, code screening.Code) map[string]string {
	own := map[string]string{g.key: string(code), g.key + "_at_all": "yes"}
	if g.area != "" {
		own["areas"] = g.key
	}
	return own
}

// askable reports whether the interview has a way of asking for a prompt.
func askable(p screening.Prompt) bool { return p.YesNo || fields[p.Code] != nil }

// onlyIfHeld are questions asked of a code only as long as its other answers, here
// all no, leave something held, once its day or place is known, or with a second sign of the spine.
var onlyIfHeld = map[screening.Code][]screening.Code{
	"clearance":            {"dizziness_or_syncope", "intermittent_claudication", "major_chd_risk_factors", "total_knee_replacement", "total_hip_replacement"},
	"cancer_active":        {"cancer_history"},
	"hip_fracture_unseen":  {"hip_fracture"},
	"worse_pain_unseen":    {"pain_made_worse_by_training"},
	"chronic_pain_changed": {"back_pain_not_better_at_a_month", "pain_in_many_places"},
}

// Every question of the library that a code triggers is asked of those who have
// the code, and of nobody else; and it names the code that triggers it.
func TestTriggers(t *testing.T) {
	triggered := 0
	for _, g := range groups() {
		for _, code := range g.codes {
			i, keys := walk(t, well(withCode(g, code)))
			if outcome(t, i).Route == screening.Emergency {
				continue // ends at once
			}
			for _, prompt := range prompts() {
				is, does := slices.Contains(keys, string(prompt.Code)), slices.Contains(prompt.Triggers, code)
				gated := slices.ContainsFunc(groups(), func(g group) bool { return g.gated == prompt.Code })
				switch {
				case len(prompt.Triggers) == 0 || gated:
				case is && !does:
					t.Errorf("%s makes %s necessary, which it does not trigger", code, prompt.Code)
				case does && !is && slices.Contains(onlyIfHeld[prompt.Code], code):
				case does && !is && askable(prompt):
					t.Errorf("%s does not lead to %s", code, prompt.Code)
				case is:
					triggered++
				}
			}
		}
	}
	if triggered < 20 {
		t.Errorf("only %d triggered questions were asked", triggered)
	}
}

// A question says for what it is asked.
func TestQuestionsExplainThemselves(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 3))
	seen := map[string]screening.Code{}
	joints := map[string]string{"areas": "joints belly", "joints": "rotator_cuff_repair", "belly": "hernia"}
	for n := range 60 {
		answer := anything(r)
		if n == 0 {
			answer = well(joints)
		}
		walk(t, func(q FormQuestion) string {
			seen[q.Key] = max(seen[q.Key], q.Because)
			if q.Client == "" || q.Clinician == "" || (len(q.Choices) > 0) != (q.Form == OneOf || q.Form == SeveralOf) || (q.Most > 0) != (q.Form == Whole) || !forms.Valid(q.Form) {
				t.Fatalf("%+v", q)
			}
			for _, c := range q.Choices {
				if c.Code == "" || c.Client == "" || c.Clinician == "" {
					t.Fatalf("%s: %+v", q.Key, c)
				}
			}
			return answer(q)
		})
	}
	for key, because := range map[string]screening.Code{"hernia_symptomatic_or_large": "hernia", "rotator_cuff_repair_day": "rotator_cuff_repair", "age": "", "falls": ""} {
		if got, asked := seen[key]; !asked || got != because {
			t.Errorf("%s is asked because of %q", key, got)
		}
	}
}

// What was answered on a list is not asked again: a fall that was told leads to which of
// the three points it was, and eyes that were looked at to no second question.
func TestListsAnswerQuestions(t *testing.T) {
	i, keys := walk(t, well(map[string]string{"areas": "nerves eyes", "nerves": "falls_risk", "eyes": "none", "diseases": "diabetes_t2", "falls": "yes"}))
	for _, key := range []string{"falls", "falls_unsteady", "falls_afraid"} {
		if !slices.Contains(keys, key) {
			t.Errorf("%s is not asked: %v", key, keys)
		}
	}
	if slices.Contains(keys, "retinopathy_moderate_or_worse") || i.Profile().Answers["retinopathy_moderate_or_worse"] != screening.No {
		t.Errorf("the eyes are asked about again: %v", keys)
	}
}
