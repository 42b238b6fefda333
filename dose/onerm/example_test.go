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
	e, err := onerm.FromSet(set, press, body.Person{Age: 68, Sex: body.Male, Training: body.Intermediate})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kg %v, %v by %v; %v\n",
		e.OneRM.Kilograms(), e.Stated, e.Grade, e.Formula, e.Interval)
	words := onerm.Words()
	for _, r := range e.Reasons {
		fmt.Println("-", words.Clinician(r))
	}
	// Output:
	// 9.6 kg per hand, fair by oconner; 8.441 kg to 11.421 kg
	// - 1RM estimated from 8 repetitions to failure by oconner, which fits practised people best; Epley and Brzycki read high in them. The lower end stays with these two. Doses read the set itself, and brzycki where a guideline speaks in repetition maxima.
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
	// out of range: /reps = 37, allowed: more than 0 repetitions, below about 37
}

// Three sets of two days by a practised lifter, at 90 %: one set by itself, and
// together. Doses start from the same place whatever the level.
func ExampleCombine() {
	bench := exercise.Exercise{
		ID: "bench-press", Name: "bench press", Pattern: exercise.HorizontalPush, Hold: body.OnBar, Measure: exercise.Repetitions,
		Muscles: []exercise.Work{{Muscle: body.PectoralisMajor, Role: exercise.Prime}},
	}
	as := onerm.Options{Level: 0.9, Accuracy: onerm.OpenBench()}
	var sets []onerm.Estimate
	for i, done := range []struct {
		kg   units.Mass
		reps int
	}{{80, 9}, {90, 5}, {90, 4}} {
		e, err := as.FromSet(setlog.Set{
			Day: units.Must(units.NewDay(2026, 11, 25+i/2)), Exercise: "bench-press", Side: body.Both, Hold: body.OnBar,
			Load: done.kg * units.Kilogram, Reps: done.reps, Effort: units.Must(units.InReserve(0)),
		}, bench, body.Person{Age: 30, Sex: body.Male, Training: body.Advanced})
		if err != nil {
			fmt.Println(err)
			return
		}
		sets = append(sets, e)
	}
	all, err := onerm.Combine(sets...)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, e := range []onerm.Estimate{sets[0], all} {
		low, _ := e.Interval.Min()
		high, _ := e.Interval.Max()
		fmt.Printf("%.1f kg, %.1f to %.1f kg\n", e.OneRM.Kilograms(), low.Kilograms(), high.Kilograms())
	}
	fmt.Println(onerm.Words().Clinician(all.Reasons[0]))
	// Output:
	// 98.0 kg, 93.1 to 102.9 kg
	// 99.4 kg, 95.3 to 103.5 kg
	// 3 sets joined, each weighed by its variance; days: 2; standard deviation 2.5 %, part of it shared by all sets of the person.
}

// A curve made of its numbers, as a study printed them; these are invented.
func ExampleNewCurve() {
	curve, err := onerm.NewCurve(onerm.CurveData{
		Form: onerm.Hyperbola, OneRM: 14 * units.Kilogram, Shape: 30, Covariance: []float64{0.001, 0, 0.02},
		Freedom: 4, Noise: 0.03, Sets: 3, Studied: units.Must(units.Between(6.0, 12.0)),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	load, err := curve.Load(8)
	fmt.Printf("%v: %.1f kg for 8 to failure %v\n", curve, load.Kilograms(), err)
	// Output: hyperbola through 3 sets: 11.4 kg for 8 to failure <nil>
}

// Why a set gives no estimate, as a reason to be shown; a set with a slip in it gives none.
func ExampleWhyRefused() {
	row := exercise.Exercise{
		ID: "row", Name: "row", Pattern: exercise.Row, Hold: body.OneHand, Measure: exercise.Repetitions,
		Muscles: []exercise.Work{{Muscle: body.LatissimusDorsi, Role: exercise.Prime}},
	}
	set := setlog.Set{
		Day: units.Must(units.NewDay(2026, 11, 25)), Exercise: "row", Side: body.Right, Hold: body.OneHand,
		Load: 4 * units.Kilogram, Reps: 30, Effort: units.Must(units.InReserve(2)),
	}
	_, err := onerm.FromSet(set, row, body.Person{Age: 68, Sex: body.Male, Training: body.Novice})
	why, refused := onerm.WhyRefused(err)
	fmt.Println(refused, onerm.Words().Clinician(why))
	// Output: true 32 repetitions to failure (rir 2) lie outside what the equations for this person were studied on: done plus reserve 1 to 10.
}
