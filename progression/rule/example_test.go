package rule_test

import (
	"fmt"
	"testing"

	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
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

// A set that ended one repetition harder than meant: 0.4 kg less is finer than
// the next dumbbell, so one repetition fewer.
func ExampleSetChange_InKit() {
	target, reported := units.Must(units.RPE(8)), units.Must(units.RPE(9))
	c, err := rule.SetToSetPercent(10*units.Kilogram, target, reported)
	if err != nil {
		fmt.Println(err)
		return
	}
	kit := pairs(quiet{}, 6*units.Kilogram, 10*units.Kilogram)
	next, err := c.InKit(kit, 10*units.Kilogram)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(c.Change, c.Within)
	fmt.Println(next.Load, next.ByReps, next.Reps)
	// Output:
	// -0.4 kg -0.8 kg to 0 kg
	// 10 kg dumbbell in each hand true -1
}

// quiet stands in for a test where there is none.
type quiet struct{}

func (quiet) Fatal(v ...any) { panic(fmt.Sprint(v...)) }

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
