package progression_test

import (
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/units/evidence"
)

// A step compares the next dose with the last one.
type stepOf struct{ was, is dose.Prescription }

func (s stepOf) lighter() bool { return s.is.Load.Each() < s.was.Load.Each() }
func (s stepOf) heavier() bool { return s.is.Load.Each() > s.was.Load.Each() }
func (s stepOf) alike() bool   { return s.is.Load.Each() == s.was.Load.Each() }
func (s stepOf) fewer() bool   { return s.alike() && s.is.Count < s.was.Count }
func (s stepOf) more() bool    { return s.alike() && s.is.Count > s.was.Count }

func (s stepOf) easier() bool {
	return s.lighter() || s.is.Sets < s.was.Sets || s.fewer() || s.is.Reserve.Least > s.was.Reserve.Least
}

func (s stepOf) notHarder() bool {
	slow := s.is.Tempo.Lowering > max(2, s.was.Tempo.Lowering) || s.is.Tempo.Pausing > s.was.Tempo.Pausing
	return !s.heavier() && s.is.Sets <= s.was.Sets && !s.more() && !slow && s.is.Feel == nil
}

// claims are the reasons that say which way the dose goes, or that it stays. What an eased
// day or gate asks for stands under a condition in its words, and is not among them.
var claims = map[evidence.ReasonCode]func(stepOf) bool{
	"progression.return": stepOf.easier, "progression.below-three": stepOf.easier, "progression.too-much": stepOf.easier,
	"progression.lighter-for-reserve": stepOf.lighter, "progression.above-limit": stepOf.lighter,
	"progression.return-kept":   func(s stepOf) bool { return !s.easier() },
	"progression.reps-for-load": func(s stepOf) bool { return s.is.Count < s.was.Count },
	"progression.range-ends":    func(s stepOf) bool { return s.is.Count < s.was.Count },
	"progression.shown":         stepOf.heavier, "progression.done-before": stepOf.heavier, "progression.rated-twice": stepOf.heavier,
	"progression.one-more-set": func(s stepOf) bool { return s.is.Sets > s.was.Sets && !s.heavier() },
	"progression.extra-set":    func(s stepOf) bool { return s.is.Sets > s.was.Sets && s.alike() },
	"progression.more-reps":    stepOf.more, "progression.more-of-it": stepOf.more,
	"progression.slower":  func(s stepOf) bool { return s.is.Tempo.Lowering > s.was.Tempo.Lowering },
	"progression.pause":   func(s stepOf) bool { return s.is.Tempo.Pausing > s.was.Tempo.Pausing },
	"progression.find-on": func(s stepOf) bool { return s.is.Finding != nil && s.is.Finding.MaxSteps > 0 },
	"progression.feel":    func(s stepOf) bool { return s.is.Feel != nil },
	"progression.hold":    stepOf.notHarder, "progression.maintain": stepOf.notHarder, "progression.nothing-done": stepOf.notHarder,
	"progression.ask-first": stepOf.notHarder, "progression.tried": stepOf.notHarder, "progression.familiarising": stepOf.notHarder,
	"progression.as-allowed": stepOf.notHarder, "progression.set-nearest": stepOf.notHarder, "progression.lighter-day": stepOf.notHarder,
	"progression.fewer-reps": func(s stepOf) bool { return !s.more() }, "progression.eased": func(s stepOf) bool { return !s.heavier() && s.is.Sets <= s.was.Sets },
}

// What a decision says of its direction is what the numbers do. A visit at which the load
// was looked for has no one dose to compare with, and another phase has other ranges.
func TestNextWordsAgreeWithNumbers(t *testing.T) {
	tried(t, func(t *rapid.T) bool {
		c, d, ok := decidedToday(t)
		if !ok {
			return false
		}
		if was := last(&c).Plan; was.Finding != nil || was.Phase != d.Next.Phase {
			return false
		}
		s := stepOf{last(&c).Plan, *d.Next}
		all := append(append(d.Reasons[:len(d.Reasons):len(d.Reasons)], d.Next.Reasons...), d.Next.Cautions...)
		for _, g := range d.Gates {
			all = append(all, g.Reasons...)
		}
		for _, r := range all {
			if fits, some := claims[r.Code]; some && !fits(s) {
				t.Fatalf("%s, after %v × %d × %d, reserve %v, tempo %v: %s", r, s.was.Load.Each(), s.was.Sets, s.was.Count, s.was.Reserve, s.was.Tempo, tell(d))
			}
		}
		return true
	})
}
