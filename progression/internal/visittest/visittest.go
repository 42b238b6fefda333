package visittest

import (
	"slices"

	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/testdata/fieldtest"
)

// Gates returns the gates of a visit that has to be valid.
func Gates(t fieldtest.T, v visit.Visit) visit.GateReport {
	t.Helper()
	r, err := visit.Gates(v)
	if err != nil {
		t.Fatalf("Gates: %v", err)
	}
	return r
}

// Signs lists the codes of what ends an exercise that a moment may name.
func Signs() []screening.Code {
	var list []screening.Code
	for _, r := range screening.StopRows() {
		list = append(list, r.Code)
	}
	return slices.DeleteFunc(list, func(c screening.Code) bool { return (screening.Moment{Signs: []screening.Code{c}}).Validate() != nil })
}
