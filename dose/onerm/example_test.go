package onerm_test

import (
	"fmt"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Two dumbbells of 8 kg, six repetitions, two left in reserve.
func ExampleFromSet() {
	press := exercise.Exercise{
		ID: "seated-press", Name: "seated press", Pattern: exercise.OverheadPush,
		Hold: body.OneEachHand, Measure: exercise.Repetitions,
		Muscles: []exercise.Work{{Muscle: body.AnteriorDeltoid, Role: exercise.Prime}},
	}
	set := setlog.Set{
		Day: units.Must(units.NewDay(2026, 11, 25)), Exercise: "seated-press", Side: body.Both,
		Hold: body.OneEachHand, Load: 8 * units.Kilogram, Stated: body.PerHand,
		Reps: 6, Effort: units.Must(units.InReserve(2)),
	}
	e, err := onerm.FromSet(set, press, onerm.Person{Age: 68, Sex: body.Male, Training: body.Intermediate})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kg %v, %v by %v; doses start from %.1f kg\n",
		e.OneRM.Kilograms(), e.Stated, e.Grade, e.Formula, e.Cautious().Kilograms())
	words := onerm.Words()
	for _, r := range e.Reasons {
		fmt.Println("-", words.Clinician(r))
	}
	// Output:
	// 9.9 kg per hand, fair by brzycki; doses start from 8.4 kg
	// - 1RM estimated from 8 repetitions to failure by Epley and Brzycki; the lower, brzycki, was taken.
	// - 6 repetitions done at rir 2 make 8 to failure. Most people have about one more in reserve than they say; this was not corrected, so that the estimate errs downwards.
	// - Interval of row 6-10 repetitions to failure: ± 15 %, fair. The margins are this module's own choice after published errors, not a published interval.
	// - None of these equations is known to have been made with dumbbells or in people with pain; Kemmler 2006, made on machines, was not asked.
}

// The bare equations disagree more and more as the repetitions rise.
func ExampleFormula_OneRM() {
	for _, f := range []onerm.Formula{onerm.Epley, onerm.Brzycki, onerm.Kemmler2006} {
		five, _ := f.OneRM(20*units.Kilogram, 5)
		fifteen, _ := f.OneRM(20*units.Kilogram, 15)
		fmt.Printf("%v: %.1f kg from 5, %.1f kg from 15 (studied %v)\n", f, five.Kilograms(), fifteen.Kilograms(), f.Studied())
	}
	// Output:
	// epley: 23.3 kg from 5, 30.0 kg from 15 (studied 1 to 10)
	// brzycki: 22.5 kg from 5, 32.7 kg from 15 (studied 1 to 10)
	// kemmler2006: 21.6 kg from 5, 27.5 kg from 15 (studied 3 to 20)
}

// Outside its domain an equation refuses; nothing is clamped.
func ExampleFormula_Fraction() {
	share, _ := onerm.Brzycki.Fraction(8)
	fmt.Println(share)
	_, err := onerm.Brzycki.Fraction(37)
	fmt.Println(err)
	// Output:
	// 80.6 %
	// units: out of range: /reps = 37, allowed: more than 0 repetitions, below about 37
}
