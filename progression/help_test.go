package progression_test

import (
	"errors"
	"strings"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

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

// paths lists where the bad fields of err are.
func paths(err error) string {
	var many field.Errors
	var one *field.Error
	var all []string
	switch {
	case errors.As(err, &many):
		for _, f := range many {
			all = append(all, f.Path)
		}
	case errors.As(err, &one):
		all = append(all, one.Path)
	}
	return strings.Join(all, " ")
}
