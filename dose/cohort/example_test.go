package cohort_test

import (
	"fmt"
	"log"
	"strings"

	"example.org/posology/dose/cohort"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// An invented log of two people, read by two workers: their weekly sets by muscle, and
// what the equation makes of their best sets.
func ExampleNewStudy() {
	text := `who,date,exercise,kg,reps
p2,2026-11-23,biceps-curl,6,10
p1,2026-11-24,biceps-curl,5,12
p1,2026-11-24,biceps-curl,7,8
p1,2026-11-26,biceps-curl,7,x
`
	reader := setlog.Reader{
		Columns: map[string]string{"person": "who", "day": "date", "exercise": "exercise", "load": "kg", "reps": "reps"},
		Unit:    units.KG, Stated: body.PerHand, Catalogue: exercise.Standard(),
	}
	study, err := cohort.NewStudy(exercise.Standard(), cohort.Options{Formula: onerm.Epley})
	if err != nil {
		log.Fatal(err)
	}
	c := study.NewCohort()
	for row, err := range c.Read(reader, strings.NewReader(text), int64(len(text)), 2) {
		fmt.Println("to look at:", row.Line, err)
	}
	for w := range c.Weeks() {
		for muscle, sets := range w.Muscles(volume.FractionalSets) {
			fmt.Println(w.Person, w.Week, muscle, sets)
		}
	}
	for e := range c.Estimates() {
		fmt.Println(e.Person, e.Exercise, e.Best.Short(units.Down), "on", e.BestOn)
	}
	// Output:
	// to look at: 0 line 5, column 29 (reps): malformed: /reps = "x", allowed: a whole number of repetitions
	// p1 2026-W48 biceps_brachii 2 fractional
	// p1 2026-W48 brachialis_brachioradialis 1 fractional
	// p2 2026-W48 biceps_brachii 1 fractional
	// p2 2026-W48 brachialis_brachioradialis 0.5 fractional
	// p1 biceps-curl 8.8 kg on 2026-11-24
	// p2 biceps-curl 8 kg on 2026-11-23
}
