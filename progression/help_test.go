package progression_test

import (
	"strings"

	"example.org/posology/dose/equipment"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// paths lists where the bad fields of err are.
func paths(err error) string { return strings.Join(fieldtest.Paths(err), " ") }

// held is a weight in one hand, of which no more is known.
func held(each units.Mass) equipment.Load { return units.Must(equipment.NewLoad(each, body.OneHand)) }

// lighterThanNothing is what nobody can make, and can be stored.
func lighterThanNothing(t failer) (l equipment.Load) {
	t.Helper()
	if err := l.UnmarshalJSON([]byte(`{"each": "-1 kg", "total": "-1 kg", "hold": "one hand"}`)); err != nil {
		t.Fatalf("%v", err)
	}
	return l
}
