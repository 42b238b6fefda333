package interview

import (
	"errors"
	"reflect"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// TestErrors holds what an answer that does not fit is called.
func TestErrors(t *testing.T) {
	at := func(own map[string]string, key string) (Interview, FormQuestion) {
		i, answer := On(visit), well(own)
		for q, more := i.Next(); more; q, more = i.Next() {
			if q.Key == key {
				return i, q
			}
			i = units.Must(i.Answer(q.Key, reply(q, answer(q))))
		}
		t.Fatalf("%s is not asked", key)
		return i, FormQuestion{}
	}
	limit := map[string]string{"areas": "joints", "joints": "musculoskeletal_limitation rotator_cuff_repair", "restriction": "yes", "today": "yes", "hurt": "yes"}
	sugar := map[string]string{"diseases": "diabetes_t1", "insulin_or_secretagogue": "yes", "today": "yes"}
	counts := map[string]string{"areas": "general", "general": "chemotherapy", "blood_counts": "yes"}
	for _, tt := range []struct {
		own   map[string]string
		key   string
		reply Reply
		path  string
		err   error
	}{
		{nil, "age", Reply{}, "/age", field.ErrSyntax},
		{nil, "age", Reply{Text: "seventy"}, "/age", field.ErrSyntax},
		{nil, "age", Reply{Text: "7 years"}, "/age", field.ErrOutOfRange},
		{nil, "age", Reply{Choice: "alone"}, "/reply/choice", field.ErrConflict},
		{nil, "setting", Reply{Choice: "at sea"}, "/reply/choice", field.ErrUnknown},
		{nil, "setting", Reply{Text: "alone"}, "/reply/text", field.ErrConflict},
		{nil, "signs", Reply{YesNo: screening.No}, "/reply/yes_no", field.ErrConflict},
		{nil, "signs", Reply{List: screening.AskedFor("renal")}, "/reply/list/present/0", field.ErrUnknown},
		{nil, "diseases", Reply{List: screening.Checklist{Asked: true, Present: []screening.Code{"renal"}, Unsure: []screening.Code{"renal"}}}, "/reply/list/unsure/0", field.ErrDuplicate},
		{nil, "diseases", Reply{List: screening.Checklist{Present: []screening.Code{"renal"}}}, "/reply/list/asked", field.ErrConflict},
		{nil, "back_at_all", Reply{YesNo: 7}, "/reply/yes_no", field.ErrUnknown},
		{nil, "back_at_all", Reply{List: screening.AskedFor()}, "/reply/list", field.ErrConflict},
		{nil, "blood_pressure", Reply{Text: "146"}, "/blood_pressure", field.ErrSyntax},
		{nil, "blood_pressure", Reply{Text: "84/146"}, "/blood_pressure", field.ErrConflict},
		{nil, "blood_pressure", Reply{Text: "900/20"}, "/profile/bp/systolic", field.ErrOutOfRange},
		{limit, "rotator_cuff_repair_day", Reply{Text: "March"}, "/rotator_cuff_repair_day", field.ErrSyntax},
		{limit, "rotator_cuff_repair_day", Reply{Text: "2027-01"}, "/profile/events/0/day", field.ErrConflict},
		{limit, "restriction_mass", Reply{Text: "5"}, "/profile/restrictions/0/max_mass", field.ErrMissing},
		{limit, "restriction_until", Reply{Text: "2026-10"}, "/restriction_until", field.ErrConflict}, // over on the day it is told
		{limit, "pain_during", Reply{Text: "a lot"}, "/pain_during", field.ErrSyntax},
		{limit, "pain_during", Reply{Text: "16"}, "/check/pain/during", field.ErrOutOfRange},
		{sugar, "glucose", Reply{Text: "82"}, "/glucose", field.ErrMissing},
		{sugar, "glucose", Reply{Text: "sweet mg/dL"}, "/check/glucose", field.ErrSyntax},
		{counts, "haemoglobin", Reply{Text: "9.8"}, "/haemoglobin", field.ErrSyntax},
	} {
		i, q := at(tt.own, tt.key)
		after, err := i.Answer(q.Key, tt.reply)
		var which *field.Error
		if !errors.As(err, &which) || which.Path != tt.path || !errors.Is(err, tt.err) || which.Allowed == "" {
			t.Errorf("%s, %+v: %v; want %s, %v", tt.key, tt.reply, err, tt.path, tt.err)
		}
		if !reflect.DeepEqual(after, i) {
			t.Errorf("%s: an error changed the interview", tt.key)
		}
	}
}

// An answer to another question, or after the last, is not taken.
func TestAnswersOfAnotherQuestion(t *testing.T) {
	i := On(visit)
	if _, err := i.Answer("setting", Reply{Choice: "alone"}); !errors.Is(err, field.ErrConflict) {
		t.Error(err)
	}
	end, _ := walk(t, well(nil))
	if _, err := end.Answer("age", Reply{Text: "70"}); !errors.Is(err, field.ErrConflict) {
		t.Error(err)
	}
	got, err := Resume(visit, []GivenReply{{"age", Reply{Text: "70"}}, {"symptoms", Reply{}}})
	if which := (*field.Error)(nil); !errors.As(err, &which) || which.Path != "/1/key" || got.Profile().Age != 70 {
		t.Errorf("%v, %+v", err, got.Profile())
	}
	if _, any := i.Back(); any {
		t.Error("there is something before the first question")
	}
	if _, err := i.Outcome(); !errors.Is(err, field.ErrMissing) {
		t.Errorf("an outcome without an age: %v", err)
	}
	if _, err := (Interview{}).Answer("age", Reply{Text: "70"}); !errors.Is(err, field.ErrMissing) {
		t.Errorf("an answer without a day: %v", err)
	}
	if q, more := (Interview{}).Next(); !more || q.Key != "age" || !q.Needed {
		t.Errorf("%+v", q)
	}
}
