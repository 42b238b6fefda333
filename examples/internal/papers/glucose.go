package papers

import (
	"slices"
	"strings"

	"example.org/posology/examples/internal/document"
	"example.org/posology/examples/internal/page"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// bands are the published rows on glucose before a session, the lowest first. Their
// figures are those of the row, never typed here.
var (
	bands = slices.Concat([]screening.Code{"glucose_lt_52_or_severe_hypo_24h"}, sweet, []screening.Code{firstHigh, "glucose_ge_350_ketone_test", "ketones_moderate_or_large", "blood_ketones_lt_1_5"})
	// sweet are those of which the client reads how much to eat.
	sweet = []screening.Code{"glucose_52_69_treat_first", "glucose_lt_90_carbohydrate_first"}
)

const firstHigh screening.Code = "glucose_250_349_ketone_test_no_intense"

// glucose is for whom insulin, or tablets like it, can bring too low. What it says
// beside the table is common practice.
func (v Visit) glucose() document.Document {
	d := document.Document{Title: "Your sugar and training", Under: page.Under(v.day, v.note), Large: true}
	d.Say("This is for you because your medicine can bring your sugar too low. What your diabetes team told you comes first: show them this page.")
	d.Section("Before")
	near := "Have somebody near who knows what to do."
	if v.profile.Setting <= screening.Alone {
		near = "You train alone: ask your diabetes team first, and tell somebody when you begin and when you are through."
	}
	d.Points("Measure right before you begin, and write it down.", "Keep the meter and something sweet within reach.", near)
	t := document.Table{Caption: "What the meter shows, and what to do", Head: []string{"It shows", "What to do"}}
	for _, code := range bands {
		term, _ := screening.LookUp(code)
		shows, rule, _ := strings.Cut(strings.TrimPrefix(term.Meaning, "glucose "), ": ")
		says := screening.Words().Client(evidence.Because(evidence.ReasonCode("screening." + string(code))))
		if slices.Contains(sweet, code) {
			says += " The rule: " + rule + "."
		}
		if code == firstHigh {
			t.Rows = append(t.Rows, []string{"between those above and below", "Train as planned, if you feel well."})
		}
		t.Rows = append(t.Rows, []string{shows, says})
	}
	t.Rows = append(t.Rows, []string{"high, and ketones not tested", "No exercise until they are tested. If you cannot test for them, ask your diabetes team today."})
	d.Table(t)
	d.Section("During")
	d.Points("Shaky, sweaty, muddled, suddenly tired or hungry? Stop, sit down and measure. If you cannot measure, take it as low.",
		"Low: take sugar, wait and measure again, as the table says. Do not train on alone that day.",
		"For whoever is with you: if the person cannot swallow or does not answer, call the emergency services, and give nothing by mouth.")
	d.Section("After, and at night")
	d.Points("A low can come hours later, and in your sleep. Measure after training and before you go to bed.",
		"Ask your diabetes team about insulin, food and your bedtime figure on days of training. Please change no medicine because of this page alone.",
		"Had one at night, or hours after training? "+screening.Words().Client(evidence.Because("screening.late_hypoglycaemia")))
	d.Say(asTold, noDevice)
	return d
}
