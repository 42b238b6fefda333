package progression

import (
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
)

// clean returns the log without the sets that are doubtful, the places of the
// visits that had any, and the doubtful sets of the last one. Where nobody watched
// a visit at which form was kept, by the person's own word, somebody's look within
// the four weeks before holds. The caller's log stays as it is; passed visits of it
// are not looked at.
func (c *Course) clean(t *equipment.Table, passed int) (log []visit.Visit, places []int, doubtful []visit.Doubt) {
	log, asked, mine := c.Log, c.Request.Technique, false
	var seen dose.Observation
	change := func() {
		if !mine {
			log, mine = slices.Clone(log), true
		}
	}
	for i := range log {
		var sets []setlog.Set
		if sets, doubtful = log[i].WithoutQueried(passed+i, t); doubtful != nil {
			change()
			log[i].Sets, places = sets, append(places, i)
		}
		v := &log[i]
		if asked.Made() && asked.Day <= v.Day && asked.Day > seen.Day {
			seen = asked
		}
		switch {
		case v.Looked():
			seen = v.Observer
		case v.FormLost == screening.No && seen.Made() && seen.Day <= v.Day && int(v.Day-seen.Day) <= visit.KnownDays:
			change()
			log[i].Observer = seen
		}
	}
	return log, places, doubtful
}

// done returns what is known to have been done, where a limit on the share of a
// maximum may rest on it: the sets of the log whose load is not doubtful.
func (c *Course) done() []setlog.Set {
	list := slices.Clip(c.Request.Done)
	if c.Request.Screening.Limits.MaxFraction <= 0 {
		return list
	}
	table, err := c.Request.Kit.CompileFor(c.Request.Exercise)
	if err != nil {
		return list // the frame says what is wrong with it
	}
	for i := range c.Log {
		sets, _ := c.Log[i].WithoutQueried(i, table)
		for _, s := range sets {
			s.Day = c.Log[i].Day
			list = append(list, s)
		}
	}
	return list
}
