package tested

import (
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/internal/given"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Facts that package tested states.
const (
	factTestAge evidence.FactID = "dose.test-age"
	factQueried evidence.FactID = "dose.queried-tests"
)

// Lists are tests of strength and sets that were really done, of any exercises.
type Lists struct {
	Estimates []onerm.Estimate
	Performed []setlog.Set
}

// For returns those of an exercise in its hold.
func (t Lists) For(ex exercise.Exercise) Lists {
	var mine Lists
	for _, e := range t.Estimates {
		if isOf(ex, e.Exercise, e.Hold) {
			mine.Estimates = append(mine.Estimates, e)
		}
	}
	for _, s := range t.Performed {
		if isOf(ex, s.Exercise, s.Hold) {
			mine.Performed = append(mine.Performed, s)
		}
	}
	return mine
}

func isOf(ex exercise.Exercise, id exercise.ID, h body.Hold) bool { return id == ex.ID && h == ex.Hold }

// Usable returns those that say something of the day decided on, and lists the others, as
// the Usable of a week's request says. From is the first day whose tests say something, not
// given for no such day; a kit that makes nothing leaves out no set. All are taken to be
// valid, and the lists are not changed.
func (t Lists) Usable(day, from units.Day, kit equipment.Kit) (Lists, []strength.Unused) {
	s := sieve{day: day, from: from, kit: kit, given: t.Estimates, done: t.Performed, doubtful: map[test]evidence.Reason{}}
	s.outdated()
	s.notInKit()
	s.sameDay()
	s.otherDays()
	return Lists{s.estimates, s.sets}, s.unused
}

// lift is what a test of strength is of, test is the lift on a day.
type (
	lift struct {
		exercise exercise.ID
		side     body.Side
		hold     body.Hold
	}
	test struct {
		lift
		day units.Day
	}
)

func liftOf(e onerm.Estimate) lift { return lift{e.Exercise, e.Side, e.Hold} }
func testOf(e onerm.Estimate) test { return test{liftOf(e), e.Day} }
func testIn(s setlog.Set) test     { return test{lift{s.Exercise, s.Side, s.Hold}, s.Day} }

// A sieve sorts tests and sets into those that can be used and the others.
type sieve struct {
	day, from units.Day // decided on, and whose tests are the first that say something
	kit       equipment.Kit
	given     []onerm.Estimate
	done      []setlog.Set

	estimates []onerm.Estimate
	sets      []setlog.Set
	doubtful  map[test]evidence.Reason
	unused    []strength.Unused
}

func (s *sieve) drop(t test, load, oneRM units.Mass, why evidence.Reason) {
	s.unused = append(s.unused, strength.Unused{Exercise: t.exercise, Side: t.side, Hold: t.hold, Day: t.day, Load: load, OneRM: oneRM, Reason: why})
}

// outdated takes what says something of the day decided on.
func (s *sieve) outdated() {
	for _, e := range s.given {
		if why, out := outdated(s.day, s.from, e.Day); out {
			s.drop(testOf(e), 0, e.OneRM, why)
			continue
		}
		s.estimates = append(s.estimates, e)
	}
	for _, set := range s.done {
		if why, out := outdated(s.day, s.from, set.Day); out {
			s.drop(testIn(set), set.Load, 0, why)
			continue
		}
		s.sets = append(s.sets, set)
	}
}

// notInKit leaves out sets with a weight that the kit does not make, and the
// estimates that may come from one.
func (s *sieve) notInKit() {
	if len(s.sets) == 0 {
		return
	}
	kit := s.kit.Once(s.kit)
	var kept []setlog.Set
	for _, set := range s.sets {
		table, _ := kit.Compile(set.Hold) // without one the kit is to be doubted, not the set
		each, err := set.Each()
		if err != nil || each == 0 || table == nil {
			kept = append(kept, set)
			continue
		}
		if _, made := table.Find(each); made {
			kept = append(kept, set)
			continue
		}
		why := evidence.Because("dose.test-not-in-kit", factQueried).With(evidence.Mass("load", set.Load))
		s.drop(testIn(set), set.Load, 0, why)
		s.doubtful[testIn(set)] = why
	}
	s.sets = kept
	s.leaveDoubtful()
}

// leaveDoubtful leaves out the estimates of a doubtful test.
func (s *sieve) leaveDoubtful() {
	var kept []onerm.Estimate
	for _, e := range s.estimates {
		if why, doubtful := s.doubtful[testOf(e)]; doubtful {
			s.drop(testOf(e), 0, e.OneRM, why)
			continue
		}
		kept = append(kept, e)
	}
	s.estimates = kept
}

// extremes are the least and the most of some estimates.
type extremes struct {
	least, most         units.Mass
	highestLow, leastUp units.Mass // of the ends of their intervals
}

func (x extremes) with(e onerm.Estimate) extremes {
	low, _ := e.Interval.Min()
	up, _ := e.Interval.Max()
	if x.most == 0 {
		return extremes{e.OneRM, e.OneRM, low, up}
	}
	return extremes{min(x.least, e.OneRM), max(x.most, e.OneRM), max(x.highestLow, low), min(x.leastUp, up)}
}

func twice(less, more units.Mass) bool { return float64(more) >= given.AboutTwice*float64(less) }

// sameDay leaves out the tests of a day that disagree.
func (s *sieve) sameDay() {
	by := map[test]extremes{}
	for _, e := range s.estimates {
		by[testOf(e)] = by[testOf(e)].with(e)
	}
	query := map[test]evidence.Reason{}
	for t, x := range by {
		if twice(x.least, x.most) || x.highestLow > x.leastUp {
			query[t] = evidence.Because("dose.tests-disagree", factQueried).With(evidence.NearMass("least", x.least), evidence.NearMass("most", x.most))
		}
	}
	s.query(query)
}

// otherDays leaves out tests that are about a slip's multiple of one of another day.
func (s *sieve) otherDays() {
	by := map[lift]extremes{}
	for _, e := range s.estimates {
		by[liftOf(e)] = by[liftOf(e)].with(e)
	}
	query := map[test]evidence.Reason{}
	for _, e := range s.estimates {
		x := by[liftOf(e)]
		if twice(x.least, e.OneRM) || twice(e.OneRM, x.most) {
			query[testOf(e)] = evidence.Because("dose.tests-far-apart", factQueried).With(evidence.NearMass("least", x.least), evidence.NearMass("most", x.most))
		}
	}
	s.query(query)
}

// query leaves out the estimates and the sets of doubtful tests.
func (s *sieve) query(doubtful map[test]evidence.Reason) {
	s.doubtful = doubtful
	s.leaveDoubtful()
	var kept []setlog.Set
	for _, set := range s.sets {
		if why, bad := doubtful[testIn(set)]; bad {
			s.drop(testIn(set), set.Load, 0, why)
			continue
		}
		kept = append(kept, set)
	}
	s.sets = kept
}
