package progression

import (
	"math"

	"example.org/posology/dose/strength"
	"example.org/posology/progression/rule"
	"example.org/posology/units"
)

// An allowed is a count, false where nothing is known.
type allowed struct {
	count int
	known bool
}

// allows returns the most repetitions of a weight that the chance allows with the
// reserve asked for today, within every limit; false where nothing is known. Where the
// body moves too, of a weight that was done what was done with it tells more than what
// is known of the body, which is little: the count goes on from it.
func (n *now) allows(each units.Mass) (int, bool) {
	if n.jump != nil && each == n.jump.To.Each() {
		return n.next.count, n.next.known
	}
	return n.allowsAnew(each)
}

// ofNext is allows for the next weight, of which many rows ask.
func (n *now) ofNext() (a allowed) {
	if n.jump != nil {
		a.count, a.known = n.allowsAnew(n.jump.To.Each())
	}
	return a
}

func (n *now) allowsAnew(each units.Mass) (int, bool) {
	if !n.c.Request.Exercise.MovesBody {
		return n.f.Allows(each, n.lastFor(each))
	}
	if each <= n.seen.Base {
		return 0, false
	}
	count, ok := n.mostBy(n.strength, each)
	if each > n.most {
		count = 0
	}
	return min(count, n.bridgeEnd()), ok
}

// counted is allows for the count of a weight that is taken.
func (n *now) counted(each units.Mass) (int, bool) {
	if each == n.seen.Base {
		return n.here.count, n.here.known
	}
	return n.allows(each)
}

// countHere is counted for the weight to go on from. A count that was done stays
// where no reserve was told, as far as what was told before allows it, and where the
// policy's rule took a rating for it one more may come.
func (n *now) countHere() allowed {
	each := n.seen.Base
	count, ok := n.allows(each)
	if !ok || count < 1 {
		return allowed{count, ok}
	}
	count = max(count, n.kept())
	if n.strength == n.forCounts || n.c.Request.Screening.Limits.NoBreathHolding {
		return allowed{count, ok}
	}
	plan := &n.last().Plan
	held := plan.Count - int(math.Ceil(float64(max(0, n.out.Reserve.Least-plan.Reserve.Least))))
	if most, told := n.mostBy(n.forCounts, each); told {
		held = min(held, most)
	} else if n.c.Policy.Rule == rule.NameOMNIBelow8 && !n.strength.Untold {
		held++
	}
	return allowed{max(count, held), true}
}

// lastFor returns the load from which a weight is looked at: the last one, or itself
// where it was lifted.
func (n *now) lastFor(each units.Mass) units.Mass {
	if each > n.seen.Base && n.lifted(each) {
		return each
	}
	return n.seen.Base
}

// mostBy returns the most repetitions by what is known alone.
func (n *now) mostBy(a strength.Ability, each units.Mass) (int, bool) {
	return a.Most(n.prospect(each), n.f.Chance())
}

func (n *now) prospect(each units.Mass) strength.Prospect {
	return strength.Prospect{Load: n.h.WithBody(each), Last: n.h.WithBody(n.lastFor(each)), Reserve: n.out.Reserve.Least, Missed: n.c.Request.Missed}
}

// near reports whether what is known of strength comes near a weight, so that it can be
// tried.
func (n *now) near(a strength.Ability, each units.Mass) bool {
	one, ok := a.OneRM()
	if !ok {
		return !n.counts()
	}
	share, err := n.h.WithBody(each).Share(one)
	return err == nil && share*nearlyAll <= 1
}

const nearlyAll units.Fraction = 0.95 // of a weight, from which on it may be tried
