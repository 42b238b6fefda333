package interview

import (
	"errors"
	"slices"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/field"
)

func mustAnswer(t *testing.T, i Interview, q FormQuestion, word string) Interview {
	t.Helper()
	after, err := i.Answer(q.Key, reply(q, word))
	if err != nil {
		t.Fatal(err)
	}
	return after
}

// checkError holds that an error is another's, at a path; nil is none.
func checkError(t *testing.T, text string, err, want error, path string) {
	t.Helper()
	var which *field.Error
	if !errors.Is(err, want) || want != nil && (!errors.As(err, &which) || which.Path != path) {
		t.Errorf("%q: %v, want %v at %s", text, err, want, path)
	}
}

// everything is a profile in which all was told that a list asks for.
func everything() (told screening.Profile, codes []screening.Code) {
	for _, g := range groups() {
		list := listIn(&told, g.kind)
		list.Asked, list.Present = true, append(list.Present, g.codes...)
		if g.kind != screening.RedFlag || g.lasts {
			codes = append(codes, g.codes...)
		}
	}
	return told, codes
}

// Whatever was told of what holds or limits is asked back about, by no the reply that is kept says what was told
// before, and takes away nothing that was told now; by yes and by not known nothing goes.
func TestForgets(t *testing.T) {
	asked := map[screening.Code]bool{}
	told, all := everything()
	for _, g := range groups() {
		own := map[string]string{g.key + "_at_all": "yes", "diseases": "cerebrovascular", "areas": "bones"}
		if g.area != "" {
			own["areas"] = g.key
		}
		if g.key == "bones" {
			own["bones"] = "osteoporosis"
		}
		i, answer := On(visit), well(own)
		for q, more := i.Next(); more; q, more = i.Next() {
			gone, kept := i.Forgets(reply(q, map[ReplyForm]string{YesNo: "no", SeveralOf: "none"}[q.Form]), told)
			for _, code := range gone {
				asked[code] = true
				if q.Key != "areas" && q.Form == SeveralOf && kept.List.Of(code) != screening.Yes || q.Form == YesNo && kept.YesNo != screening.Yes {
					t.Errorf("%s: %s is not kept: %+v", q.Key, code, kept)
				}
			}
			if again, _ := i.Forgets(kept, told); len(again) > 0 {
				t.Errorf("%s: what is kept forgets %v", q.Key, again)
			}
			for _, word := range []string{"", map[ReplyForm]string{YesNo: "yes"}[q.Form]} {
				if gone, kept := i.Forgets(reply(q, word), told); len(gone) > 0 || !slices.Equal(kept.List.Present, reply(q, word).List.Present) {
					t.Errorf("%s: %q forgets %v", q.Key, word, gone)
				}
			}
			if gone, _ := i.Forgets(reply(q, map[ReplyForm]string{YesNo: "no", SeveralOf: "none"}[q.Form]), told, all...); len(gone) > 0 {
				t.Errorf("%s: %v is known to be gone", q.Key, gone)
			}
			i = mustAnswer(t, i, q, answer(q))
		}
	}
	for _, code := range all {
		if !asked[code] {
			t.Errorf("%s is asked back about nowhere", code)
		}
	}
}

// An area that held something is kept; what was told in the words of another country is told.
func TestForgetsAreas(t *testing.T) {
	i, answer := On(visit), well(nil)
	for q, more := i.Next(); more; q, more = i.Next() {
		if q.Key == "areas" {
			gone, kept := i.Forgets(Reply{List: screening.AskedFor("heart")}, screening.Profile{Conditions: screening.AskedFor("osteoporosis_uk", "hernia", "pacemaker"), Answers: map[screening.Code]screening.Answer{"stroke_before": screening.No}})
			if !slices.Equal(gone, []screening.Code{"osteoporosis", "hernia"}) || !slices.Equal(kept.List.Present, []screening.Code{"heart", "bones", "belly"}) {
				t.Errorf("%v, %+v", gone, kept)
			}
		}
		i = mustAnswer(t, i, q, answer(q))
	}
	// The sources of what these hold stand beside their entries in package screening.
	none := On(visit)
	for q, more := none.Next(); more && q.Key != "areas"; q, more = none.Next() {
		none = mustAnswer(t, none, q, answer(q))
	}
	lost := []screening.Code{"exertional_angina", "hypertension_treated", "hernia", "falls_risk", "beta_blocker", "anticoagulant"}
	if gone, _ := none.Forgets(Reply{List: screening.AskedFor()}, screening.Profile{Conditions: screening.AskedFor(lost...)}); !slices.Equal(gone, lost) {
		t.Errorf("none of the areas takes away all but %v", gone)
	}
	if gone, _ := i.Forgets(Reply{}, screening.Profile{}); gone != nil {
		t.Errorf("after the last: %v", gone)
	}
}
