package main

import (
	"math"

	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/progression"
	"example.org/posology/progression/simulate"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

const (
	leastCount = 6  // repetitions, as where the next weight is far
	mostCount  = 20 // as simulate.Informed asks for
	usualLeft  = 3
	steadyFor  = 50 // visits, after which the width of what is known moves no more
)

// steady is what is known of a course that has lasted, whatever came out in it: how
// wide that is follows from what was asked alone.
var steady = func() (a strength.Ability) {
	for range steadyFor {
		a = a.Seen(1, usualLeft, setlog.Set{Hold: body.OneHand, Load: 5 * units.Kilogram, Reps: 10, Effort: units.Must(units.InReserve(usualLeft))})
	}
	return a
}()

// byChance knows the truth, and asks for no more than the chance allows that the module's
// doses are kept to, with what a course that has lasted leaves in doubt: the heaviest
// weight that it allows six times, else the lightest. It shows what the chance costs.
func byChance(s simulate.Scene) (progression.Decision, error) {
	d, err := simulate.Informed(s)
	if err != nil || len(s.Course.Log) == 0 {
		return d, err
	}
	lightest := s.Table.Lightest()
	for l := range s.Table.Loads() {
		count := allowed(l.Each(), s.Able(l.Each()))
		if l.Each() == lightest.Each() || count >= leastCount {
			d.Next.Load, d.Next.Count = l, max(1, min(count, mostCount))
		}
	}
	return d, nil
}

// allowed returns the most repetitions of a weight that can truly be lifted so often, read
// by Epley, as an Ability is kept.
func allowed(each units.Mass, able float64) int {
	a := strength.Ability{Log: math.Log(each.Kilograms() * (1 + able/30)), Variance: steady.Variance}
	n, _ := a.Most(strength.Prospect{Load: each, Last: each, Reserve: usualLeft}, strength.StandardChance())
	return n
}
