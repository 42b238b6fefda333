package onerm

import (
	"example.org/posology/dose/onerm/internal/shape"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// A Working is an equation worked out on one set, to be checked by hand.
type Working struct {
	Formula Formula       `json:"formula"`
	Fact    evidence.Fact `json:"fact"`    // the equation in symbols, where from, and how it is known
	Numbers string        `json:"numbers"` // with load and repetitions put in, such as "6 kg × (1 + 10/30)"
	Result  units.Mass    `json:"result"`  // exactly that of [Formula.OneRM]
}

// Work works the equation out on a load lifted reps times to failure. It has
// the result and the errors of [Formula.OneRM].
func (f Formula) Work(load units.Mass, reps float64) (Working, error) {
	result, err := f.OneRM(load, reps)
	if err != nil {
		return Working{}, err
	}
	return Working{f, f.stated(), f.equation().Put(load.String(), shape.Number(reps), " × "), result}, nil
}

// stated is the fact that states the equation.
func (f Formula) stated() evidence.Fact {
	q := f.equation()
	fact := q.known
	fact.ID, fact.Value = f.Fact(), q.Text()
	return fact
}

// String prints numbers and result, such as "6 kg × (1 + 10/30) = 8 kg"; a result
// that is no whole number of grams is rounded to one, behind "≈"; "" where nothing was
// worked out.
func (w Working) String() string {
	short, err := w.Result.Rounded(units.Gram, units.Nearest)
	switch {
	case w.Numbers == "":
		return ""
	case err != nil || short == w.Result || short == 0:
		return w.Numbers + " = " + w.Result.String()
	}
	return w.Numbers + " ≈ " + short.String()
}
