package dose

import (
	"sync"

	"example.org/posology/dose/guideline"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A tableRow is a recommendation, with what is asked of it for each dose worked out.
type tableRow struct {
	guideline.Recommendation
	stated     [guideline.FieldSides + 1]stated // by field
	rest, days units.Range[int]                 // the usual ones where the row states none
	times      [2]evidence.Reason               // for these
	named      []evidence.Arg                   // which row it is
	superseded []evidence.Reason                // by another row; none by most
}

// A stated is the fact behind a field of a row, "" where it states nothing, and its basis.
type stated struct {
	fact  evidence.FactID
	basis evidence.Basis
}

// rows are all recommendations, copied once: nothing here changes one.
var rows = sync.OnceValue(func() map[guideline.ID]*tableRow {
	byID := map[guideline.ID]*tableRow{}
	for rec := range guideline.All() {
		r := &tableRow{Recommendation: rec}
		for f := range guideline.Fields() {
			if id, states := rec.Fact(f); states {
				r.stated[f] = stated{id, rec.BasisOf(f)}
			}
		}
		r.fillTimes()
		r.named = []evidence.Arg{evidence.ID("row", rec.ID), evidence.Text("population", rec.Population)}
		if len(rec.SupersededBy) > 0 {
			r.superseded = []evidence.Reason{evidence.Because("dose.superseded").With(evidence.ID("row", rec.ID), evidence.ID("by", rec.SupersededBy[0]))}
		}
		byID[rec.ID] = r
	}
	return byID
})

// rowOf returns the row of a valid request, or of this package's own tables: it is there.
func rowOf(id guideline.ID) *tableRow { return rows()[id] }

// fact returns the fact behind a field, "" where there is none.
func (r *tableRow) fact(f guideline.Field) evidence.FactID { return r.stated[f].fact }

// fillTimes takes rest and days from the row, else the usual ones.
func (r *tableRow) fillTimes() {
	r.rest, r.days = r.Rest, r.Days
	rest, days := r.fact(guideline.FieldRest), r.fact(guideline.FieldDays)
	if r.rest.IsZero() {
		r.rest, rest = usualRest, factRest
	}
	if r.days.IsZero() {
		r.days, days = usualDays, factDays
	}
	r.times = [...]evidence.Reason{
		evidence.Because("dose.rest", rest).With(evidence.Seconds("seconds", r.rest)),
		evidence.Because(daysCode, days).With(evidence.Days("days", r.days)),
	}
}
