package beside_test

import (
	"testing"

	"example.org/posology/dose/beside"
	"example.org/posology/dose/guideline"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// TestRowsByAge holds the age at which the WHO's row for older adults takes the place of
// those for adults: 65 years (WHO 2020, secondary). The days of balance are told apart by
// the number, the aim of minutes by the fact.
func TestRowsByAge(t *testing.T) {
	for age, want := range map[body.Age]struct{ balance, aerobic guideline.ID }{
		64: {"ukcmo2019-older", "who2020-adults"}, 65: {"who2020-older", "who2020-older"},
	} {
		s := free(t)
		s.Screening.Who.Age, s.Screening.Limits.Support = age, false
		items, _, err := beside.Start(s)
		if err != nil {
			t.Fatal(err)
		}
		met := 0
		for _, i := range items {
			for _, r := range i.Reasons {
				switch r.Code {
				case "beside.days":
					if i.Kind == beside.Balance {
						met++
						sayRow(t, age, r, want.balance, guideline.FieldBalanceDays)
					}
				case "beside.aerobic-aim":
					met++
					sayRow(t, age, r, want.aerobic, guideline.FieldAerobic)
				}
			}
		}
		if met < 2 {
			t.Errorf("%d years: %d reasons name a row", age, met)
		}
	}
}

func sayRow(t *testing.T, age body.Age, r evidence.Reason, id guideline.ID, f guideline.Field) {
	t.Helper()
	row, err := guideline.Get(id)
	if err != nil {
		t.Fatal(err)
	}
	if fact, ok := row.Fact(f); !ok || len(r.Facts) == 0 || r.Facts[0] != fact {
		t.Errorf("%d years: %s rests on %v, want %v", age, r.Code, r.Facts, fact)
	}
}
