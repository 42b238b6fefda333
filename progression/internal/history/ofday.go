package history

import (
	"slices"

	"example.org/posology/dose"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/units"
)

// MostOfDay is at how many visits running what a day's check changes is that day's alone.
const MostOfDay = 2

// DaysRunning counts the last visits whose plan was their day's alone.
func DaysRunning(log []visit.Visit) (n int) {
	for n < len(log) && log[len(log)-1-n].After != nil {
		n++
	}
	return n
}

// planned is the last plan that was no day's alone, or what a course goes on from after such days.
func planned(log []visit.Visit) *dose.Prescription {
	v := &log[len(log)-1]
	if v.After != nil {
		return v.After
	}
	return &v.Plan
}

// Less reports whether a dose asks for less in anything than what would be asked for without the
// day's check, and than the last plan that was no day's alone.
func Less(log []visit.Visit, p, usual *dose.Prescription) bool {
	return less(p, usual) && less(p, planned(log))
}

// less reports whether p is less than q in load, sets, reserve, or the count of the same load.
func less(p, q *dose.Prescription) bool {
	each, other := p.Load.Each(), q.Load.Each()
	return each < other || p.Sets < q.Sets || p.Reserve.Least > q.Reserve.Least || each == other && p.Count < q.Count
}

// After is what a course goes on from after a day whose check asks for less: what would be asked for
// without the check, if that is the same exercise, in nothing more than the last plan.
func After(log []visit.Visit, usual *dose.Prescription) *dose.Prescription {
	was := planned(log)
	after := *was
	if usual.Exercise == was.Exercise {
		if usual.Load.Each() <= was.Load.Each() {
			after = *usual
		}
		if after.Load.Each() == was.Load.Each() {
			after.Count = min(after.Count, was.Count)
		}
		if after.Sets, after.Reserve = min(usual.Sets, was.Sets), was.Reserve; usual.Reserve.Least > was.Reserve.Least {
			after.Reserve = usual.Reserve
		}
	}
	after.Finding, after.Feel = nil, nil
	return &after
}

// PassOver puts what the course goes on from in the place of the last visits whose plan was their day's
// alone, as of a visit with nothing done, and returns the day of the last: unless one of
// them did not go as asked, or lighter, where the present day is lighter than the last one, too.
// What they show of strength is known by then.
func (h *History) PassOver(c *Cleaned, lighter bool) units.Day {
	n := DaysRunning(h.Log)
	if n == 0 || n > MostOfDay {
		return 0
	}
	for i := len(h.Log) - n; i < len(h.Log); i++ {
		v := &h.Log[i]
		report, err := visit.Gates(*v)
		done := len(v.Sets) > 0
		if err != nil || report.Advice >= rule.Ease || given.Yes(v.Unable) || done && (lighter || !v.Met() || slices.Contains(c.Without, i)) {
			return 0
		}
	}
	last := h.Log[len(h.Log)-1]
	h.Log = append(slices.Clone(h.Log[:len(h.Log)-n]), visit.Visit{Day: last.Day, Plan: *last.After, HurtElsewhere: last.HurtElsewhere})
	c.Log, c.Open = h.Log, 0
	c.Without = append(c.Without, len(h.Log)-1) // it is no visit below the dose
	return last.Day
}
