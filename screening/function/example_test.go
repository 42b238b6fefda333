package function_test

import (
	"fmt"

	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A woman of 72 holds 17 kg: three bodies, three answers.
func ExampleAgainstNorms() {
	r := function.Result{Test: function.Grip, How: function.Done, Side: body.Both, Value: units.Must(function.ParseAmount("17 kg"))}
	standings, err := function.AgainstNorms(r, body.Female, 72)
	if err != nil {
		fmt.Println(err)
	}
	words := function.Words()
	for _, s := range standings {
		fmt.Println(words.Clinician(s.Reasons[0]))
	}
	// Output:
	// grip, 17 kg: not flagged by EWGSOP2: low under 16 kg (secondary).
	// grip, 17 kg: on the flagged side of SDOC: weak under 20 kg (published).
	// grip, 17 kg: on the flagged side of AWGS 2019: low under 18 kg (secondary).
	// grip at 72 years: no figure of Dodds 2014 for that age is held here, only for 26 to 42 years.
	// grip at 72 years: no figure of China 2020 for that age is held here, only for 65 to 69 years.
}

// A man of 66 after eight weeks: 1.3 s faster in the timed up and go.
func ExampleChangeBetween() {
	before := function.Result{Test: function.TimedUpAndGo, Day: units.Must(units.ParseDay("2026-03-02")), How: function.Done,
		Value: units.Must(function.ParseAmount("9.8 s")), Protocol: "seat 45 cm"}
	after := before
	after.Day, after.Value = units.Must(units.ParseDay("2026-04-27")), units.Must(function.ParseAmount("8.5 s"))
	v, err := function.ChangeBetween(before, after, body.Male, 66)
	if err != nil {
		fmt.Println(err)
	}
	fmt.Println(v.Shown)
	fmt.Println(function.Words().Clinician(v.Reasons[0]))
	fmt.Println(function.Words().Client(v.Reasons[0]))
	// Output:
	// real
	// timed up and go: a difference of -1.3 s (-2.44 s to -0.16 s) against a detectable change of 1.14 s (Alghadir 2015, published): real, for the better.
	// You did clearly better than before.
}

// With arms first and by the protocol now: further, though no number says by how much.
func ExampleHowDone_Order() {
	fmt.Println(function.Done.Order(function.UsedArms), function.Unable.Order(function.UsedArms))
	fmt.Printf("%q\n", function.Refused.Order(function.Done))
	// Output:
	// better worse
	// ""
}

// The parts of the battery (Guralnik 1994), the walk over 4 m.
func ExampleBattery_Score() {
	held := func(seconds string) function.Stand {
		return function.Stand{How: function.Done, Time: units.Must(function.ParseAmount(seconds))}
	}
	b := function.Battery{
		SideBySide: held("10 s"), SemiTandem: held("10 s"), Tandem: held("6.2 s"),
		Walk:   function.Result{Test: function.Walk4m, How: function.Done, Value: units.Must(function.ParseAmount("5.1 s"))},
		Stands: function.Result{Test: function.FiveSitToStands, How: function.Done, Value: units.Must(function.ParseAmount("14.2 s"))},
	}
	s, err := b.Score()
	fmt.Println(s.Balance, s.Walk, s.Stands, s.Total, s.Band, err)
	// Output: 3 points 3 points 2 points 8 points moderate <nil>
}
