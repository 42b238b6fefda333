package rule

import (
	"cmp"
	"math"
	"slices"

	"example.org/posology/dose/equipment"
	"example.org/posology/progression/internal/given"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Numbers of the adjustment from one set to the next; the facts print them.
const (
	perHalfPoint = 0.02 // of the load
	halvesAPoint = 2
	topRating    = 10.0

	farError = 2 // repetitions, typical and more, beyond what can be counted
)

// nearError is how well a reserve that can be counted is told, in repetitions (Hackett 2017).
const nearError = 1

// tableTarget is the rating that the table of kilograms aims at.
var tableTarget = units.Must(units.RPE(8))

// A reserveRow is a row of the printed table: so many in reserve, that change.
type reserveRow struct {
	low, high units.RIR
	change    units.Mass
}

// reserveRows are the table's rows, the easiest sets last. For accessory lifts
// with a barbell by trained young men.
var reserveRows = []reserveRow{
	{0, 0, -5 * units.Kilogram},
	{1, 1, -units.Kilogram * 5 / 2},
	{2, 2, 0},
	{3, 3, units.Kilogram * 5 / 2},
	{4, 6, 5 * units.Kilogram},
}

// A SetChange is what one set's rating says of the next set of the exercise.
// Load and repetitions are two ways to correct: one is taken, not both.
type SetChange struct {
	Rule     Name         `json:"rule"`
	Target   units.Effort `json:"target"`
	Reported units.Effort `json:"reported"`
	Change   units.Mass   `json:"change"` // of the load per implement; below zero means lighter
	// Within is Change with the typical error of telling one's reserve: it has no
	// upper end where the reserve is beyond counting. It is no bound.
	Within units.Range[units.Mass] `json:"within"`
	// Reps is the same correction in repetitions with the load unchanged, the
	// lower count where the rating stands for two; RepsWithin is it with the error.
	Reps       int              `json:"reps"`
	RepsWithin units.Range[int] `json:"reps_within"`
	// ByReps, after [SetChange.InKit], says that repetitions are what changes,
	// and Load is the present one; otherwise Load is the next set's.
	ByReps  bool              `json:"by_reps,omitzero"`
	Load    *equipment.Load   `json:"load,omitempty"`
	Reasons []evidence.Reason `json:"reasons,omitempty"`
}

// TrueReserve returns the range that a reported reserve may really be, by the
// typical error of telling it (Hackett 2017): 1 repetition with up to 5 in
// reserve, more than 2 beyond, where the range has no upper end. Typical means
// that a single set may be further off.
//
// It is an [units.ErrNoRIR] for scales without a value in reserve, a
// [field.ErrMissing] without a rating.
func TrueReserve(e units.Effort) (units.Range[units.RIR], error) {
	told, err := e.RIR()
	if err != nil {
		return units.Range[units.RIR]{}, err
	}
	low, _ := told.Min()
	high, _ := told.Max()
	return band(max(0, low-reserveError(low)), high+reserveError(high), high <= given.Countable)
}

// reserveError returns the usual error of telling a reserve, in repetitions.
func reserveError(r units.RIR) units.RIR {
	if r > given.Countable {
		return farError
	}
	return nearError
}

// SetToSetKg returns the change that a published table gives for a set aimed at
// a rating of 8, 2 in reserve: +5 kg at 4 to 6 in reserve, +2.5 at 3, none at 2,
// -2.5 at 1, -5 at none. It was made for barbell lifts of trained young men, so
// its rises are far too large for most dumbbells: see [SetChange.InKit]. A
// reserve between its rows, such as a rating of 7.5, or above 6 is a
// [field.ErrOutOfRange]; a scale without reserve an [units.ErrNoRIR].
func SetToSetKg(reported units.Effort) (SetChange, error) {
	real, err := TrueReserve(reported)
	if err != nil {
		return SetChange{}, field.At("/reported", err)
	}
	row, found := rowOf(reported)
	if !found {
		return SetChange{}, field.New("/reported", reported, "0, 1, 2, 3 or 4 to 6 in reserve", field.ErrOutOfRange)
	}
	c := SetChange{Rule: NameSetToSetKg, Target: tableTarget, Reported: reported, Change: row.change}
	if c.Within, err = changesOf(real); err != nil {
		return SetChange{}, field.At("/reported", err)
	}
	return c.withReps(real, factTableKg)
}

func rowOf(reported units.Effort) (reserveRow, bool) {
	told, err := reported.RIR()
	low, _ := told.Min()
	high, _ := told.Max()
	for _, row := range reserveRows {
		if err == nil && low >= row.low && high <= row.high {
			return row, true
		}
	}
	return reserveRow{}, false
}

// changesOf returns what the rows say that a true reserve touches; between two
// rows, both.
func changesOf(real units.Range[units.RIR]) (units.Range[units.Mass], error) {
	low, _ := real.Min()
	high, bounded := real.Max()
	least, most := reserveRows[0].change, reserveRows[len(reserveRows)-1].change
	for _, row := range reserveRows {
		if row.low <= low {
			least = row.change
		}
	}
	for _, row := range slices.Backward(reserveRows) {
		if bounded && row.high >= high {
			most = row.change
		}
	}
	return band(least, most, bounded)
}

// SetToSetPercent returns the change of 2 % of the load for each half point that
// the rating was off the target, 4 % a repetition: more load where it was easier
// than meant. Both ratings are on the scales rpe or rir; each is the present
// load per implement. The rule is remembered and was not seen, so that it may
// lighten and not permit.
func SetToSetPercent(each units.Mass, target, reported units.Effort) (SetChange, error) {
	_, aimErr := target.RIR()
	real, toldErr := TrueReserve(reported)
	var bad field.Errors
	bad.Add("/each", checkLoad(each))
	bad.Add("/target", aimErr)
	bad.Add("/reported", toldErr)
	if err := bad.Err(); err != nil {
		return SetChange{}, err
	}
	aim, told := points(target), points(reported)
	change := func(rating float64) units.Mass {
		m, err := each.Scale(units.Fraction((aim-rating)*halvesAPoint*perHalfPoint), units.Nearest)
		bad.Add("/each", err)
		return m
	}
	c := SetChange{Rule: NameSetToSetPercent, Target: target, Reported: reported, Change: change(told)}
	low := change(min(topRating, told+float64(reserveError(units.RIR(topRating-told)))))
	high := change(told - nearError)
	_, bounded := real.Max()
	within, err := band(low, high, bounded)
	bad.Add("/each", err)
	if err := bad.Err(); err != nil {
		return SetChange{}, err
	}
	c.Within = within
	return c.withReps(real, factPercent)
}

// points returns a rating that has a reserve on the scale from 1 to 10; a
// reserve of n is 10 − n.
func points(e units.Effort) float64 {
	if e.Scale() == units.ScaleRIR {
		return topRating - e.Number()
	}
	return e.Number()
}

// band returns the range from low, to high if there is an upper end.
func band[T cmp.Ordered](low, high T, bounded bool) (units.Range[T], error) {
	if !bounded {
		return units.AtLeast(low), nil
	}
	return units.Between(low, high)
}

// withReps adds the correction in repetitions and the reason. Both ratings have
// a reserve; real is the reported one with its error.
func (c SetChange) withReps(real units.Range[units.RIR], fact evidence.FactID) (SetChange, error) {
	aim, err := c.Target.RIR()
	if err != nil {
		return SetChange{}, field.At("/target", err)
	}
	told, err := c.Reported.RIR()
	if err != nil {
		return SetChange{}, field.At("/reported", err)
	}
	aimLow, _ := aim.Min()
	aimHigh, _ := aim.Max()
	toldLow, _ := told.Min()
	least, _ := real.Min()
	most, bounded := real.Max()
	c.Reps = whole(toldLow - aimHigh)
	if c.RepsWithin, err = band(whole(least-aimHigh), whole(most-aimLow), bounded); err != nil {
		return SetChange{}, field.At("/reported", err)
	}
	c.Reasons = []evidence.Reason{evidence.Because("progression.set-to-set", fact, factReserve, factReserveGap).With(
		evidence.Term("rule", c.Rule.String()), evidence.Effort("reported", c.Reported), evidence.Mass("change", c.Change), evidence.Masses("within", c.Within), evidence.Change("reps", c.Reps))}
	return c, nil
}

// whole rounds towards fewer repetitions.
func whole(r units.RIR) int { return int(math.Floor(float64(r))) }

// InKit returns c for a kit and the present load each, which the kit must have.
// Where the step to the next weight is coarser than the correction, the
// repetitions are corrected instead. A rise never exceeds the published 10 % of
// the load, and a rule known from memory never raises load: it adds repetitions.
// A fall goes to the heaviest weight at or below the corrected load, or to the
// lightest there is. Whether fewer than one repetition would be left is for the
// caller to see.
//
// A load that the kit does not have is a [field.ErrUnknown].
func (c SetChange) InKit(t *equipment.Table, each units.Mass) (SetChange, error) {
	present, ok := t.Find(each)
	if !ok {
		return SetChange{}, field.New("/each", each, "a weight of the kit", field.ErrUnknown)
	}
	next, changed := present, false
	switch {
	case c.Change > 0:
		next, changed = c.heavier(t, each)
	case c.Change < 0:
		next, changed = c.lighter(t, each)
	}
	c.Load, c.ByReps = &next, !changed && c.Change != 0
	if c.ByReps {
		c.Load = &present
		reasons := make([]evidence.Reason, len(c.Reasons), len(c.Reasons)+1)
		copy(reasons, c.Reasons)
		c.Reasons = append(reasons, evidence.Because("progression.set-by-reps", factCoarse).With(evidence.Change("reps", c.Reps), evidence.Mass("change", c.Change)))
	}
	return c, nil
}

// heavier returns the heaviest load that the correction and the published size
// of a step both allow, if it is heavier than the present one.
func (c SetChange) heavier(t *equipment.Table, each units.Mass) (equipment.Load, bool) {
	most, _ := guidance.Max()
	limit, err := given.Plus(each, most)
	corrected, tooMuch := each.Add(c.Change)
	if c.Rule != NameSetToSetKg || err != nil || tooMuch != nil {
		return equipment.Load{}, false
	}
	load, err := t.Nearest(min(limit, corrected), equipment.RoundingRule{})
	return load, err == nil && load.Each() > each
}

// lighter returns the heaviest load at or below the corrected one, unless the
// first step down is larger than the correction.
func (c SetChange) lighter(t *equipment.Table, each units.Mass) (equipment.Load, bool) {
	down := equipment.RoundingRule{}
	first, err := t.Nearest(each-1, down) // the next lighter: each is above 0 or nothing is lighter
	if err != nil || each-first.Each() > -c.Change {
		return equipment.Load{}, false
	}
	load, err := t.Nearest(max(t.Lightest().Each(), each+c.Change), down)
	return load, err == nil
}
