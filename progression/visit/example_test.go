package visit_test

import (
	"fmt"

	"example.org/posology/progression/visit"
	"example.org/posology/screening"
)

// An invented visit after which nothing was asked about the technique: more
// repetitions, but no more load.
func ExampleGates() {
	v := goodVisit()
	v.Sets[1].Reps = 11
	v.FormLost = screening.Unknown
	r, err := visit.Gates(v)
	if err != nil {
		fmt.Println(err)
		return
	}
	words := visit.Words()
	for _, g := range r.Gates {
		fmt.Println(g.Advice, "-", words.Clinician(g.Reasons[0]))
	}
	fmt.Println(r.Advice, "- aim at", r.Aim)
	// Output:
	// raise - Nothing against more load from: events.
	// raise - Nothing against more load from: pain.
	// raise - Nothing against more load from: range.
	// keep - Not recorded, or not enough: technique. What is not known keeps the load.
	// raise - Nothing against more load from: effort.
	// raise - Nothing against more load from: repetitions.
	// keep - aim at 12
}
