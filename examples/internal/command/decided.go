package command

import (
	"cmp"
	"slices"

	"example.org/posology/progression/record"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Plan returns the last plan that was decided on and kept in a record, where there were
// visits since or it was for another day; else what follows on the record's last day.
func Plan(r record.Record) (record.Plan, error) {
	for _, e := range slices.Backward(r.Entries) {
		if e.Plan != nil && (len(r.Visits) > 0 || e.Day != r.LastDay()) {
			return *e.Plan, nil
		}
	}
	return r.Start(r.LastDay())
}

// Review returns the last review that was decided on and kept in a record, where the
// next one was agreed for another day; else that of the day that was agreed.
func Review(r record.Record) (record.Review, error) {
	for _, e := range slices.Backward(r.Entries) {
		if e.Plan == nil && e.Day != r.Review {
			return Kept(r, e)
		}
	}
	if err := r.Review.Check(); err != nil {
		return record.Review{}, field.At("/review", err)
	}
	return r.Assess(r.Review)
}

// Kept returns the review that an entry keeps, as it was told then.
func Kept(r record.Record, e record.Entry) (record.Review, error) {
	re, err := r.AsOf(e).Assess(e.Day)
	return Told(re, cmp.Or(e.Decided, e.Day)), err
}

// Told returns a review for the day of a visit as it is told on the day on which it was
// made: it stands on the papers, and by it dates are over.
func Told(re record.Review, day units.Day) record.Review {
	if re.Day = day; !re.Expired {
		re.Overdue = re.InForce.Overdue(day)
	}
	return re
}
