package onerm

import (
	"fmt"
	"iter"
	"math"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Formula is a published equation that predicts a one-repetition maximum from
// a load and the repetitions r done with it to failure. It is a [Relation]. The
// zero value is "not given".
type Formula uint8

// Formulas. "Studied" is what [Formula.Studied] returns; [Facts] has the basis
// of each number.
const (
	FormulaUnknown Formula = iota // not given

	// Epley is 1RM = load·(1 + r/30), for r > 0; studied 1 to 10. It comes from
	// a chart of 1985 without people or a published error, and gives 3 % more
	// than was lifted at r = 1. Coefficients from memory (epley1985).
	Epley
	// Brzycki is 1RM = load·36/(37 − r), for 0 < r < 37; studied 1 to 10. It was
	// made without a sample; the error was 3.4 % in young men's 7 to 10RM bench
	// press, the best case (nascimento2007). Coefficients from memory
	// (brzycki1993).
	Brzycki
	// Lander is 1RM = load·100/(101.3 − 2.67123 r), for r > 0 up to the pole at
	// 37.9; studied 1 to 10. Its people and error are not known here.
	// Coefficients secondary (lander1985, through a student laboratory report).
	Lander
	// Lombardi is 1RM = load·r^0.1, for r ≥ 1; studied 1 to 10, published tests
	// 4 to 10. Its error was 5.8 % over ten lower-limb exercises, the least of
	// eleven equations (simonsen2024). Its form was read in roberts2024; the
	// name is from memory (lombardi1989). Below about 80 % of the 1RM its
	// inverse is of no use: 35 repetitions at 70 %.
	Lombardi
	// Mayhew is 1RM = load·100/(52.2 + 41.9·e^(−0.055 r)), for r > 0; studied 1
	// to 10. It was made in students who did a minute of bench presses with 55 to
	// 95 % of their 1RM; its error is not known here. Its inverse is defined
	// above 52.2 and below 94.1 %. Coefficients from memory (mayhew1992).
	Mayhew
	// OConner is 1RM = load·(1 + r/40), for r > 0; studied 1 to 10. Its people
	// and error are not known here. Coefficients from memory (oconner1989).
	OConner
	// Wathen is 1RM = load·100/(48.8 + 53.8·e^(−0.075 r)), for r > 0; studied 1
	// to 10. Its people and error are not known here. Its inverse is defined
	// above 48.8 and below 102.6 %. Coefficients from memory (wathen1994).
	Wathen
	// Adams is 1RM = load/(1 − 0.02 r), for 0 < r < 50; studied 1 to 10. Its
	// people and error are not known here. Coefficients from memory (adams1994).
	Adams
	// Kemmler2006 is 1RM = load·(0.988 + 0.0104 r + 0.0019 r² − 0.0000584 r³),
	// for r > 0 up to its turning point at 24.15; studied 3 to 20. It was made in
	// 70 trained women after the menopause, 57.4 ± 3.1 years, on four machine
	// lifts; the mean absolute error was 1.5 to 3.1 % in that same sample. Its
	// inverse is defined from 65.6 to 101.2 %. Coefficients published
	// (kemmler2006, abstract).
	Kemmler2006
)

var formulas = units.NewVocabulary[Formula]("formula", "",
	"epley", "brzycki", "lander", "lombardi", "mayhew", "oconner", "wathen", "adams", "kemmler2006")

// Formulas yields every formula.
func Formulas() iter.Seq[Formula] { return formulas.All() }

// String returns the formula's code, such as "brzycki".
func (f Formula) String() string { return formulas.Text(f) }

// Check returns nil if f is given.
func (f Formula) Check() error { return formulas.Check("", f) }

// MarshalText writes what String returns.
func (f Formula) MarshalText() ([]byte, error) { return formulas.Marshal(f) }

// UnmarshalText reads what MarshalText writes.
func (f *Formula) UnmarshalText(text []byte) error { return formulas.Unmarshal(text, f) }

// equation returns the row of f; what is no formula has the empty row.
func (f Formula) equation() *equation {
	if int(f) < len(equations) {
		return &equations[f]
	}
	return &equations[FormulaUnknown]
}

// Fact names the fact that states the equation; "" for no formula. The same
// name with ".range" states the repetitions it is advised or was tested for.
func (f Formula) Fact() evidence.FactID {
	if !formulas.Valid(f) {
		return ""
	}
	return evidence.FactID("onerm." + f.String())
}

// People says in whom the equation was made, as far as it is known here.
func (f Formula) People() string { return f.equation().people.Value }

// Studied returns the repetitions to failure over which the equation may be
// relied on: 3 to 20 for [Kemmler2006], and for the others 1 to 10, the limit
// that they share here. It is "not stated" for no formula.
func (f Formula) Studied() units.Range[float64] { return f.equation().studied }

// Domain returns the repetitions over which the equation can be evaluated. Its
// ends are the first and last float64 that are accepted: 0 and the poles are
// left out. Where there is no upper end, every finite number is accepted.
func (f Formula) Domain() units.Range[float64] { return f.equation().domain }

// takes reports whether the equation can be evaluated at reps. A range
// without upper end also contains the infinite.
func (f Formula) takes(reps float64) bool {
	return formulas.Valid(f) && equations[f].domain.Contains(reps) && reps <= math.MaxFloat64
}

// checkReps is the error of reps that the equation does not take.
func (f Formula) checkReps(path string, reps float64) error {
	switch err := f.Check(); {
	case err != nil:
		return units.At("/formula", err)
	case f.takes(reps):
		return nil
	}
	return units.Field(path, reps, equations[f].domainText(), units.ErrOutOfRange)
}

// refuse gathers what is wrong with a mass and repetitions.
func (f Formula) refuse(path string, m units.Mass, reps float64) error {
	var bad units.FieldErrors
	if m <= 0 {
		bad.Add(path, units.Field("", m, "a mass above 0 kg", units.ErrOutOfRange))
	}
	bad.Add("", f.checkReps("/reps", reps))
	return bad.Err()
}

// scale returns k·m to the nearest nanogram. The product in float64 lies within
// 2^-53 of itself from the exact one, so that both round alike unless it comes
// that close to a half. Only then is the exact product worked out; from 2^51 ng
// on, some 2000 kg, that is always.
func scale(path string, m units.Mass, k float64) (units.Mass, error) {
	product := float64(float64(m) * k)
	if half := product - math.Floor(product) - 0.5; math.Abs(half) > product*0x1p-52 {
		return units.Mass(product + 0.5), nil
	}
	exact, err := m.Scale(units.Fraction(k), units.Nearest)
	if err != nil {
		return 0, units.At(path, err)
	}
	return exact, nil
}

// OneRM returns the 1RM that the equation predicts from a load lifted reps
// times to failure, to the nearest nanogram. A load of nought or less, or reps
// outside [Formula.Domain], are an [units.ErrOutOfRange], no formula is an
// [units.ErrMissing], too much an [units.ErrOverflow].
//
// It is the bare equation: at 1 repetition most give more than was lifted.
func (f Formula) OneRM(load units.Mass, reps float64) (units.Mass, error) {
	if load <= 0 || !f.takes(reps) {
		return 0, f.refuse("/load", load, reps)
	}
	return scale("/load", load, equations[f].factor(reps))
}

// Load returns the load that a person with the given 1RM can lift reps times to
// failure, to the nearest nanogram: the inverse of [Formula.OneRM] in the load,
// with the same errors.
func (f Formula) Load(oneRM units.Mass, reps float64) (units.Mass, error) {
	if oneRM <= 0 || !f.takes(reps) {
		return 0, f.refuse("/one_rm", oneRM, reps)
	}
	return scale("/one_rm", oneRM, 1/equations[f].factor(reps))
}

// Fraction returns the share of the 1RM that can be lifted reps times to
// failure. Reps outside [Formula.Domain] are an [units.ErrOutOfRange].
func (f Formula) Fraction(reps float64) (units.Fraction, error) {
	if err := f.checkReps("/reps", reps); err != nil {
		return 0, err
	}
	return units.Fraction(1 / equations[f].factor(reps)), nil
}

// Reps returns how often a share of the 1RM can be lifted to failure. A share
// that no repetitions within [Formula.Domain] belong to is an
// [units.ErrOutOfRange].
func (f Formula) Reps(share units.Fraction) (float64, error) {
	if err := f.Check(); err != nil {
		return 0, units.At("/formula", err)
	}
	q := &equations[f]
	if share > 0 {
		if reps := q.reps(float64(share)); f.takes(reps) {
			return reps, nil
		}
	}
	return 0, units.Field("/fraction", float64(share), q.shareText(), units.ErrOutOfRange)
}

// maxLoad is the most that a load may be in any unit: what [units.Mass] holds,
// in nanograms. No product overflows below it.
const maxLoad = float64(units.MaxMass)

// block is how many pairs are checked and then computed, so that the second
// look finds them in the cache.
const block = 1024

// OneRMs returns the 1RM for each load and its repetitions to failure, in the
// unit of the loads. The result takes the place of dst, which grows if it is
// too short and may be load itself. Epley is evaluated as load·(1 + reps/30),
// Brzycki as load·36/(37 − reps), in this order, so that other programs can
// match the results to the last bit.
//
// A load that is not above 0 and at most 9.22e18, or repetitions outside
// [Formula.Domain], are an [units.ErrOutOfRange] that names the first bad entry
// by its index ("/load/3", "/reps/3"); the result is then nil and what dst held
// is lost. Lists of different length are an [units.ErrConflict].
func (f Formula) OneRMs(dst, load []float64, reps []int32) ([]float64, error) {
	if err := f.Check(); err != nil {
		return nil, units.At("/formula", err)
	}
	if len(load) != len(reps) {
		return nil, units.Field("/reps", fmt.Sprintf("%d entries", len(reps)), fmt.Sprintf("%d, one for each load", len(load)), units.ErrConflict)
	}
	if cap(dst) < len(load) {
		dst = make([]float64, len(load))
	}
	dst = dst[:len(load)]
	low, high := equations[f].whole()
	factors := equations[f].table()
	for from := 0; from < len(load); from += block {
		to := min(from+block, len(load))
		if i := firstBad(load[from:to], reps[from:to], low, high); i >= 0 {
			return nil, f.badEntry(from+i, load[from+i], reps[from+i])
		}
		equations[f].fill(dst[from:to], load[from:to], reps[from:to], &factors)
	}
	return dst, nil
}

// firstBad returns the index of the first pair outside its limits, -1 if none.
func firstBad(load []float64, reps []int32, low, high int32) int {
	reps = reps[:len(load)]
	for i, x := range load {
		if !(x > 0 && x <= maxLoad) || reps[i] < low || reps[i] > high {
			return i
		}
	}
	return -1
}

func (f Formula) badEntry(i int, load float64, reps int32) error {
	var bad units.FieldErrors
	if !(load > 0 && load <= maxLoad) {
		bad.Add("", units.Field(fmt.Sprintf("/load/%d", i), load, "above 0 and at most 9.22e18", units.ErrOutOfRange))
	}
	bad.Add("", f.checkReps(fmt.Sprintf("/reps/%d", i), float64(reps)))
	return bad.Err()
}
