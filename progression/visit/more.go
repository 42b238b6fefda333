package visit

import (
	"cmp"
	"maps"
	"slices"
	"strings"

	"example.org/posology/dose/setlog"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// LastReps returns the repetitions of the last set, the fewer where each side has
// its own, and 0 without a set.
func (v *Visit) LastReps() int {
	v = field.OrZero(v)
	last := map[body.Side]int{}
	for _, s := range v.Sets {
		last[s.Side] = s.Reps
	}
	if len(last) == 0 {
		return 0
	}
	return slices.Min(slices.Collect(maps.Values(last)))
}

// Below reports whether a visit stayed below its dose: too few sets or none, fewer
// Repetitions than the range begins with in a set that its reserve did not end, or
// nearer to failure than planned. A
// visit in which the load was looked for has no dose to stay below.
func (v *Visit) Below() bool {
	v = field.OrZero(v)
	if given.Searches(&v.Plan) {
		return false
	}
	return v.Done() < v.Plan.Sets || v.someFellShort() || v.countsReserve() && v.leastLeft(v.Plan.Reserve.Least) < v.Plan.Reserve.Least
}

// fellShort reports whether a set was done less often than the range begins with, or than
// was asked below it, and did not end by its reserve, or was worth none.
func (v *Visit) fellShort(s *setlog.Set) bool {
	low, _ := v.Plan.Span.Min()
	least := min(low, v.Plan.Count)
	if told, known := given.Told(s.Effort); known && v.countsReserve() && told >= v.Plan.Reserve.Least {
		least = min(least, given.WorthASet)
	}
	return s.Reps < least
}

func (v *Visit) someFellShort() bool {
	for i := range v.Sets {
		if v.fellShort(&v.Sets[i]) {
			return true
		}
	}
	return false
}

// Refers returns what of the visit is for somebody else: events, or pain of a
// kind that the pain model is never used for or, by the screening, of a spine that may
// have broken. The first reason says what to do now.
func (v *Visit) Refers(o *screening.Outcome) []evidence.Reason {
	if v == nil || (v.Moment == nil || quiet(v.Moment)) && (v.Pain == nil || v.Pain.Kind <= screening.OrdinaryPain && o == nil) {
		return nil // as of most visits of a long log
	}
	return v.refers(o)
}

func (v *Visit) refers(o *screening.Outcome) []evidence.Reason {
	var why []evidence.Reason
	if v.Moment != nil && !quiet(v.Moment) {
		if events, err := v.events(); err == nil && events.Advice == rule.Refer {
			why = append(why, events.Reasons...)
		}
	}
	switch {
	case v.Pain == nil:
	case v.Pain.Kind > screening.OrdinaryPain:
		why = append(why, v.pain().Reasons...)
	case o != nil && o.MayBeFracture(*v.Pain):
		why = append(why, because("progression.pain-back"))
	}
	if len(why) == 0 {
		return nil
	}
	return append([]evidence.Reason{v.sends()}, why...)
}

// sends says where the person is to be sent, by the strictest route: somebody is asked
// first at least.
func (v *Visit) sends() evidence.Reason {
	var what []string
	route := screening.AskFirst
	if v.Moment != nil {
		d, _ := screening.During(*v.Moment)
		slices.SortStableFunc(d.Findings, func(a, b screening.Finding) int { return cmp.Compare(b.Route, a.Route) })
		for _, f := range d.Findings {
			if term, ok := screening.LookUp(f.Code); ok && f.Route > screening.Tell {
				what = append(what, term.Meaning)
			}
		}
		route = max(route, d.Route)
	}
	if v.Pain != nil && v.Pain.Kind > screening.OrdinaryPain {
		what, route = append(what, "pain of kind "+v.Pain.Kind.String()), max(route, screening.PainModel(*v.Pain).Route)
	} else if len(what) == 0 {
		what = append(what, "new pain in the back")
	}
	code := evidence.ReasonCode("progression.look-first")
	switch route {
	case screening.Emergency:
		code = "progression.help-now"
	case screening.SameDay:
		code = "progression.see-today"
	}
	return because(code).With(evidence.Text("what", strings.Join(what, "; ")), evidence.Day("day", v.Day))
}

// quiet reports a moment in which nothing showed and nothing was measured.
func quiet(m *screening.Moment) bool {
	return len(m.Signs) == 0 && m.BP == nil && m.SystolicFall == 0 && m.SpO2 == 0 && m.Pain == nil
}
