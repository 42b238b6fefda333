package track

import (
	"math"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Odds are how probably a level rose, held or fell between two days of a track, each
// by more than a margin; together they are one. All three may be small: then the
// readings do not tell yet.
type Odds struct {
	From units.Day `json:"from"`
	To   units.Day `json:"to"`
	// Rose, Held, which is a plateau, and Fell, which is a dip.
	Rose units.Fraction `json:"rose"`
	Held units.Fraction `json:"held"`
	Fell units.Fraction `json:"fell"`
	// Change is the change itself, as a share, with the interval at the level asked for.
	Change  units.Fraction    `json:"change"`
	Low     units.Fraction    `json:"low"`
	High    units.Fraction    `json:"high"`
	Reasons []evidence.Reason `json:"reasons"`
}

// Since compares the last day of a track of logarithms with the last reading on a day
// or before it. A change counts from margin on, a share of 0 to 0.5. The one reason says which of
// the three has at least the probability level, 0.5 to 0.99, and no clear change where none
// has. A day before the first reading, or from the last one on, is a
// [field.ErrOutOfRange], a track whose slope was never told a [field.ErrMissing].
func (t *Track) Since(day units.Day, margin, level units.Fraction) (Odds, error) {
	var bad field.Errors
	i, last := -1, t.Len()-1
	if last >= 0 {
		i = t.place(day)
	}
	if i < 0 || i >= last {
		bad.Add("/day", field.Bad(day, "a day from the first reading to before the last", field.ErrOutOfRange))
	} else if !t.Smoothed(last).Known() {
		bad.Add("/day", field.Bad(day, "a track whose slope is known", field.ErrMissing))
	}
	bad.Refuse(!(margin >= 0 && margin <= 0.5), "/margin", float64(margin), "0 to 0.5", field.ErrOutOfRange)
	bad.Add("/level", checkLevel(level))
	if err := bad.Err(); err != nil {
		return Odds{}, err
	}
	change, variance := t.change(i)
	w, sd := t.Width(), math.Sqrt(variance)
	up, down := math.Log1p(float64(margin)), -math.Log1p(float64(margin))
	o := Odds{From: t.days[i], To: t.days[last]}
	o.Rose, o.Fell = units.Fraction(w.below((change-up)/sd)), units.Fraction(w.below((down-change)/sd))
	o.Held = 1 - o.Rose - o.Fell
	half := w.times(level) * sd
	o.Change, o.Low, o.High = units.Fraction(math.Expm1(change)), units.Fraction(math.Expm1(change-half)), units.Fraction(math.Expm1(change+half))
	o.Reasons = []evidence.Reason{o.reason(margin, level)}
	return o, nil
}

// change returns by how much the level moved from the day at a place to the last one,
// with its variance: what is known of the one reaches the other through all days
// between.
func (t *Track) change(i int) (change, variance float64) {
	last := t.Len() - 1
	from, to := t.Smoothed(i), t.Smoothed(last)
	chain := matrix{1, 0, 0, 1}
	for k := i; k < last; k++ {
		chain = chain.times(t.Filtered(k).back(t.model.gap(daysFrom(t.days[k], t.days[k+1]))))
	}
	across := float64(chain.a*to.LevelVar) + float64(chain.b*to.Covariance)
	return to.Level - from.Level, math.Max(math.SmallestNonzeroFloat64, to.LevelVar+from.LevelVar-float64(2*across))
}

func (o Odds) reason(margin, level units.Fraction) evidence.Reason {
	code := evidence.ReasonCode("track.unclear")
	switch {
	case o.Rose >= level:
		code = "track.rose"
	case o.Fell >= level:
		code = "track.fell"
	case o.Held >= level:
		code = "track.held"
	}
	return evidence.Because(code, factModel, factErrors, factFirm).With(
		evidence.Day("from", o.From), evidence.Day("to", o.To), evidence.Share("change", o.Change), evidence.Share("low", o.Low), evidence.Share("high", o.High),
		evidence.Share("margin", margin), evidence.Share("level", level), evidence.Share("rose", o.Rose), evidence.Share("held", o.Held), evidence.Share("fell", o.Fell))
}
