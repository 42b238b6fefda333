package progression

import (
	"example.org/posology/progression/internal/history"
	"example.org/posology/units"
)

// calm reports whether the last two visits were done with the present weight and
// without trouble.
func (n *now) calm() bool {
	return len(n.clean.Asked) == 0 && n.h.Calm(n.seen.Base, calmVisits)
}

const calmVisits = history.AskedAgain // in a row, with no doubtful set

// ratedTwice reports whether the last two visits went through the range of what counts
// no repetitions with the present weight, every set rated as less than hard.
func (n *now) ratedTwice() bool {
	return !n.counts() && n.h.RatedEasy(n.seen.Base, calmVisits) && n.calm()
}

// longEasy reports whether, with somebody there, up to double the weight may be taken without
// a trial, which was neither in vain nor left untried within eight visits, all clearly easy:
// whoever tries nothing would else never carry more.
func (n *now) longEasy(j *Jump) bool {
	return !n.alone() && j.External > 0 && j.External <= 1 && !n.h.Declined(n.seen.Base, feelEvery) && n.h.LongEasy(n.seen.Base, feelEvery)
}

// lifted reports whether the last eight visits have a set with a weight.
func (n *now) lifted(each units.Mass) bool { return n.h.Lifted(each, feelEvery) }
