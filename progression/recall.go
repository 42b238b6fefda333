package progression

import (
	"slices"

	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/internal/history"
	"example.org/posology/progression/rule"
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
		sets := v.SetsWith(func(m units.Mass) bool { return m == each })
		age += n.h.GapAfter(i)
		switch {
		case !lately && age > visit.KnownDays:
			return false, false
		case given.Yes(v.Unable) && v.Plan.Load.Each() == each: // a failed lift leaves no set to find
			return false, lately
		case len(sets) > 0:
			shows := v.FormLost == screening.No && n.h.ShowsItself(v.With(sets), n.bottom(), n.out.Reserve.Least)
			return shows && age <= visit.KnownDays && n.calm(), !shows && lately
		}
	}
	return false, false
}

// calm reports whether the last two visits were done with the present weight and
// without trouble.
func (n *now) calm() bool {
	log := n.c.Log
	for i := max(0, len(log)-calmVisits); i < len(log); i++ {
		v := &log[i]
		_, other := v.OtherLoad()
		if v.Plan.Load.Each() != n.seen.Base || other || len(n.clean.Asked) > 0 || v.Done() == 0 || v.Below() || !v.MayFind() {
			return false
		}
	}
	return len(log) >= calmVisits
}

const calmVisits = 2 // in a row

// ratedTwice reports whether the last two visits went through the range of what counts
// no repetitions with the present weight, every set rated as less than hard.
func (n *now) ratedTwice() bool {
	log := n.c.Log
	for i := max(0, len(log)-calmVisits); i < len(log); i++ {
		v := &log[i]
		if v.Plan.Load.Each() != n.seen.Base || v.Repetitions().Advice != rule.Raise || slices.ContainsFunc(v.Sets, history.NotBelowHard) {
			return false
		}
	}
	return !n.counts() && n.calm()
}

// longEasy reports whether up to double the weight may be taken without a trial, which was
// neither in vain nor left untried within eight visits, all clearly easy: whoever tries nothing
// would else never carry more. Alone such a step is barred.
func (n *now) longEasy(j Jump) bool {
	return j.External > 0 && j.External <= 1 && !n.h.Declined(n.seen.Base, feelEvery) && n.h.LongEasy(n.seen.Base, feelEvery)
}

// lifted reports whether the last eight visits have a set with a weight.
func (n *now) lifted(each units.Mass) bool { return n.h.Lifted(each, feelEvery) }
