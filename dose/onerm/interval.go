package onerm

import (
	"fmt"

	"example.org/posology/units"
)

// margin is how far an interval reaches below and above the estimate, as shares
// of it. The zero margin means that no interval can be given.
type margin struct{ down, up float64 }

func (m margin) given() bool { return m != margin{} }

// wider returns the wider of m and n on each side, none if one is not given.
func (m margin) wider(n margin) margin {
	if !m.given() || !n.given() {
		return margin{}
	}
	return margin{max(m.down, n.down), max(m.up, n.up)}
}

// times returns the margin with both sides c times as far.
func (m margin) times(c float64) margin { return margin{m.down * c, m.up * c} }

func both(share float64) margin { return margin{share, share} }

// A row of the interval table holds for repetitions to failure up to upTo.
type row struct {
	upTo      int
	toFailure margin // practised, done to failure
	reserve   margin // practised, with 1 to 3 in reserve
	novice    margin // novices, who read low in their first weeks
	grade     Grade
}

// intervalRows is the interval table: this module's design, for lack of a published
// one. [Facts] names the published errors that it was chosen after. It is
// symmetric but for novices, whom the classical equations underrate.
var intervalRows = [...]row{
	{upTo: 1, toFailure: both(0.08), novice: both(0.15), grade: Measured},
	{upTo: 5, toFailure: both(0.10), reserve: both(0.12), novice: margin{0.10, 0.20}, grade: Good},
	{upTo: 10, toFailure: both(0.12), reserve: both(0.15), novice: margin{0.12, 0.25}, grade: Fair},
	{upTo: 15, toFailure: both(0.20), reserve: both(0.25), novice: margin{0.20, 0.30}, grade: Poor},
	{upTo: 20, toFailure: both(0.25), grade: VeryPoor},
}

const (
	// maxReserve is the largest reserve that is counted at all.
	maxReserve = 5
	// wideReserve is the largest reserve that the table's own column is for;
	// beyond it the next row's margins hold.
	wideReserve = 3
)

// lookUp returns the row and the margin for a set of reps done and a reserve,
// and false where the table gives no interval.
func lookUp(reps, reserve int, novice bool) (row, margin, bool) {
	i := 0
	for i < len(intervalRows) && intervalRows[i].upTo < reps+reserve {
		i++
	}
	if reserve > wideReserve {
		i++
	}
	if i >= len(intervalRows) || reserve > maxReserve {
		return row{}, margin{}, false
	}
	m := intervalRows[i].toFailure
	if reserve > 0 {
		m = intervalRows[i].reserve
	}
	if novice {
		m = m.wider(intervalRows[i].novice)
	}
	return intervalRows[i], m, m.given()
}

// gradeAt returns the grade of so many repetitions to failure.
func gradeAt(toFailure int) Grade {
	for _, r := range intervalRows {
		if toFailure <= r.upTo && r.grade != Measured { // an equation measures nothing
			return r.grade
		}
	}
	return VeryPoor
}

// String prints the repetitions of the row, such as "6-10".
func (r row) String() string {
	from := 1
	for _, above := range intervalRows {
		if above.upTo < r.upTo {
			from = above.upTo + 1
		}
	}
	if from == r.upTo {
		return fmt.Sprint(from)
	}
	return fmt.Sprintf("%d-%d", from, r.upTo)
}

// String prints the margin in percent, such as "−12 to +25 %".
func (m margin) String() string {
	if !m.given() {
		return "none"
	}
	down, up := units.Fraction(m.down), units.Fraction(m.up)
	if m.down == m.up {
		return "± " + up.String()
	}
	return fmt.Sprintf("−%.4g to +%s", down.Percent(), up)
}

// outward returns the interval with its ends moved outwards to whole grams, so
// that 8 kg less 15 % ends at 6.8 kg and nobody reads nanograms. The ends given
// are to the nearest nanogram: factors carry an error of the last binary digit,
// which must not cost a gram. An upper end that does not fit any more is a
// [field.ErrOverflow].
func outward(least, most units.Mass) (units.Range[units.Mass], error) {
	high, err := most.Rounded(units.Gram, units.Up)
	if err != nil {
		return units.Range[units.Mass]{}, err
	}
	return units.Between(wholeGrams(least), high)
}

// wholeGrams rounds a mass of 0 kg or more down, which always fits.
func wholeGrams(m units.Mass) units.Mass { return units.Must(m.Rounded(units.Gram, units.Down)) }
