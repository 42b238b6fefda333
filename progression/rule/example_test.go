package rule_test

import (
	"fmt"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// ACSM 2002: one repetition over the target of 10 with 20 kg.
func ExampleOverTarget_kraemer2002() {
	a, err := rule.OverTarget(20*units.Kilogram, 10, 11)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(a.Advice, a.Load)
	fmt.Println(rule.Words().Clinician(a.Reasons[0]))
	// Output:
	// raise 20.4 kg to 22 kg
	// The rule over-target says: raise.
}

// Three weeks without training and without a medical cause.
func ExampleReturnAfter() {
	r, err := rule.ReturnAfter(21, screening.No)
	if err != nil {
		fmt.Println(err)
		return
	}
	each, err := r.Each(10 * units.Kilogram)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(each, "and", r.Sets, "of the sets;", r.Basis)
	// Output: 9 kg and 50 % of the sets; design
}

// Published rules and a trial's on one invented course: they answer one by one and are never blended.
func ExampleTwoForTwo() {
	each := 4 * units.Kilogram
	show := func(a rule.Ruling, err error) { fmt.Println(a.Rule, "–", a.Advice, a.Load, a.Reps, err) }
	show(rule.TwoForTwo(10, []int{12, 12}))
	show(rule.RepsThenLoad(each, units.Must(units.Between(8, 12)), 13))
	show(rule.TopOfRange([]int{12, 12, 12}))
	show(rule.OMNIBelow8(units.Must(units.OMNI(6))))
	show(rule.TrialStep(rule.NameSmallSteps, each, 9))
	show(rule.Simplify(3))
	show(rule.PainGate(4, screening.No, screening.No))
	// Output:
	// two-for-two – raise not stated not stated <nil>
	// reps-then-load – raise at least 5.1 kg 8 <nil>
	// top-of-range – raise not stated 8 <nil>
	// omni-below-8 – raise not stated not stated <nil>
	// small-steps – raise 4.44 kg not stated <nil>
	// simplify – ease not stated not stated <nil>
	// pain-gate – raise not stated not stated <nil>
}

// How large a step may be, by the books, and how many repetitions bridge one that is larger.
func ExampleRepsBeforeJump() {
	fmt.Println("published:", rule.StepShare())
	step, err := rule.StepFor(body.Novice, exercise.Row, units.KG)
	fmt.Println("a textbook:", step.Low, "to", step.High, err)
	reps, why, err := rule.RepsBeforeJump(8, 0.5)
	fmt.Printf("from 4 to 6 kg: %.0f repetitions first (%s) %v\n", reps, why.Code, err)
	fmt.Println("weeks without, at most:", rule.LongestBreak()/7)
	// Output:
	// published: 2 % to 10 %
	// a textbook: 1 kg to 2 kg <nil>
	// from 4 to 6 kg: 27 repetitions first (progression.bridge) <nil>
	// weeks without, at most: 8
}

// A set that ended one repetition harder than meant: 0.4 kg less is finer than
// the next dumbbell, so one repetition fewer.
func ExampleSetChange_InKit() {
	target, reported := units.Must(units.RPE(8)), units.Must(units.RPE(9))
	c, err := rule.SetToSetPercent(10*units.Kilogram, target, reported)
	if err != nil {
		fmt.Println(err)
		return
	}
	kit := equipment.Kit{Dumbbells: []equipment.Dumbbell{
		{Mass: units.Must(units.ParseMarked("6 kg")), Count: 2}, {Mass: units.Must(units.ParseMarked("10 kg")), Count: 2},
	}}
	table, err := kit.Compile(body.OneEachHand)
	if err != nil {
		fmt.Println(err)
		return
	}
	next, err := c.InKit(table, 10*units.Kilogram)
	fmt.Println(c.Change, c.Within)
	fmt.Println(next.Load, next.ByReps, next.Reps, err)
	barbell, err := rule.SetToSetKg(reported) // a table for barbells: too coarse for dumbbells
	fmt.Println(barbell.Change, err)
	really, err := rule.TrueReserve(reported)
	fmt.Println("told 1 left, really", really, err)
	// Output:
	// -0.4 kg -0.8 kg to 0 kg
	// 10 kg dumbbell in each hand true -1 <nil>
	// -2.5 kg <nil>
	// told 1 left, really 0 to 2 <nil>
}

func BenchmarkRules(b *testing.B) {
	kit := pairs(b, 6*units.Kilogram, 8*units.Kilogram, 10*units.Kilogram)
	target, reported := rpe(8), rpe(9)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := rule.OverTarget(8*units.Kilogram, 10, 11); err != nil {
			b.Fatal(err)
		}
		c, err := rule.SetToSetPercent(8*units.Kilogram, target, reported)
		if err != nil {
			b.Fatal(err)
		}
		if _, err := c.InKit(kit, 8*units.Kilogram); err != nil {
			b.Fatal(err)
		}
	}
}
