package progression

import (
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/internal/history"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// recall looks in the log for sets with a weight; the latest tell. Within four weeks
// they show it again, after two calm visits in a row with the present one, as after an
// easier spell or a trial that asked for more reserve; or, within eight visits however
// long ago, it was tried in vain. Pain says nothing of strength, and the calm visits are
// for it; lost form does.
func (n *now) recall(each units.Mass) (again, vain bool) {
	age := 0
	for i := len(n.c.Log) - 1; i >= 0; i-- {
		v, lately := &n.c.Log[i], len(n.c.Log)-i <= feelEvery
		age += n.h.GapAfter(i)
		switch {
		case !lately && age > visit.KnownDays:
			return false, false
		case given.Yes(v.Unable) && v.Plan.Load.Each() == each: // a failed lift leaves no set to find
			return false, lately
		case history.Lifts(v, each):
			sets := v.SetsWith(func(m units.Mass) bool { return m == each })
			shows := v.FormLost == screening.No && n.h.ShowsItself(v.With(sets), n.bottom(), n.out.Reserve.Least)
			return shows && age <= visit.KnownDays && n.calm(), !shows && lately
		}
	}
	return false, false
}

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
