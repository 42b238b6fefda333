package papers

import (
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// The set that feels the next weight is one of those asked for, and is said apart.
func TestAFeltSetIsSaid(t *testing.T) {
	light, err := equipment.NewLoad(6*units.Kilogram, body.OneHand)
	if err != nil {
		t.Fatal(err)
	}
	next, err := equipment.NewLoad(10*units.Kilogram, body.OneHand)
	if err != nil {
		t.Fatal(err)
	}
	var out strings.Builder
	s, err := newSheet(0, "", screening.Profile{})
	if err != nil {
		t.Fatal(err)
	}
	s.item(1, part{dose: dose.Prescription{
		Name: "row", Load: light, Sets: 3, Measure: exercise.Repetitions, Count: 12, Reserve: dose.Reserve{Least: 3, Countable: true},
		Feel: &dose.Feel{Load: next, Count: 5},
	}}, nil)
	if err := s.Text(&out); err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"2 sets of 12", "at most 5 with " + next.String() + ", with somebody beside you."} {
		if !strings.Contains(out.String(), want) {
			t.Errorf("no %q in\n%s", want, out.String())
		}
	}
}
