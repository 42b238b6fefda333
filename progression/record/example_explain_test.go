package record_test

import (
	"fmt"
	"log"

	"example.org/posology/progression/record"
	"example.org/posology/units/field"
)

// From a sentence on a page to its sources: what the reason rests on, and what that
// derives from.
func ExampleLedger() {
	r, err := record.Decode(fmt.Appendf(nil, client, trained), field.Strict)
	if err != nil {
		log.Fatal(err)
	}
	items, err := r.Next(r.Visits[len(r.Visits)-1].Day + 4)
	if err != nil {
		log.Fatal(err)
	}
	ledger, err := record.Ledger()
	if err != nil {
		log.Fatal(err)
	}
	words, err := record.Words()
	if err != nil {
		log.Fatal(err)
	}
	for _, why := range items[0].Decision.Reasons {
		fmt.Println(words.Clinician(why))
		for _, line := range ledger.Explain(why.Facts...) {
			fmt.Println("  ", line)
		}
	}
	// Output:
	// 11 with the same load, to work up to 15 before more load.
	//    progression.one-more: one repetition more than in the weakest set, up to the top of the range (design)
	//      progression.reps-then-load: raise the repetitions with the same load until past the range, then add 1.1 kg or more: the traditional form (published; Hostler D, Crill MT, Hagerman FC, Staron RS. The effectiveness of 0.5-lb increments in progressive resistance exercise. J Strength Cond Res 2001;15(1):86-91, and its congress abstract)
	//    progression.easy-step: 2 repetitions more where every set left more than 5 in reserve, else one; of seconds and metres 5 (design)
	//    progression.bridge-top: bridging by repetitions ends at 20 or at the end of the exercise's own range: the arithmetic is far off beyond (design)
	//      progression.bridge: to land on r repetitions after a step of the fraction p, first reach r + p × (30 + r) (computed, no better known than from memory)
	//        onerm.epley: 1RM = load·(1 + r/30) (from memory; Epley B. Poundage chart. Lincoln, NE: Body Enterprises; 1985)
	// The next weight after 2 kg is 4 kg, a step of 100 %; published guidance is 2 to 10 %.
	//    progression.step-2-to-10: add 2 to 10 % when 1 to 2 repetitions over the target can be done (published; Kraemer WJ, et al. (American College of Sports Medicine). Med Sci Sports Exerc 2002;34(2):364-380; abstract)
}
