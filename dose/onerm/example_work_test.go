package onerm_test

import (
	"fmt"
	"log"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A student checks an estimate by hand: the equation in symbols, the numbers put
// in, the result, and who says so.
func ExampleFormula_Work() {
	for _, f := range []onerm.Formula{onerm.Epley, onerm.Brzycki} {
		w, err := f.Work(6*units.Kilogram, 10)
		if err != nil {
			log.Fatal(err)
		}
		source, _ := evidence.LookUp(w.Fact.Source)
		fmt.Println(w.Fact.Value)
		fmt.Println(w)
		fmt.Printf("%s, %s: %s\n", w.Fact.ID, w.Fact.Basis, source.Citation)
	}
	// Output:
	// 1RM = load·(1 + r/30)
	// 6 kg × (1 + 10/30) = 8 kg
	// onerm.epley, from memory: Epley B. Poundage chart. Lincoln, NE: Body Enterprises; 1985
	// 1RM = load·36/(37 − r)
	// 6 kg × 36/(37 − 10) = 8 kg
	// onerm.brzycki, from memory: Brzycki M. Strength testing: predicting a one-rep max from reps-to-fatigue. J Phys Educ Recreat Dance 1993;64(1):88-90
}
