package onerm

import (
	"iter"
	"math"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Formula is a published equation that predicts a one-repetition maximum from
// a load and the repetitions r done with it to failure. It is a [Relation]. The
// zero value is "not given".
type Formula uint8

// Formulas. "Studied" is what [Formula.Studied] returns; [Facts] has the basis
// of each number.
const (
	_ Formula = iota // not given

	// Epley is 1RM = load·(1 + r/30), for r > 0; studied 1 to 10. It comes from
	// a chart of 1985 without people or a published error, and gives 3 % more
	// than was lifted at r = 1. Coefficients from memory (epley1985).
	Epley // "epley"
	// Brzycki is 1RM = load·36/(37 − r), for 0 < r < 37; studied 1 to 10. It was
	// made without a sample; the error was 3.4 % in young men's 7 to 10RM bench
	// press, the best case (nascimento2007). Coefficients from memory
	// (brzycki1993).
	Brzycki // "brzycki"
	// Lander is 1RM = load·100/(101.3 − 2.67123 r), for r > 0 up to the pole at
	// 37.9; studied 1 to 10. Its people and error are not known here.
	// Coefficients secondary (lander1985, through a student laboratory report).
	Lander // "lander"
	// Lombardi is 1RM = load·r^0.1, for r ≥ 1; studied 1 to 10, published tests
	// 4 to 10. Its error was 5.8 % over ten lower-limb exercises, the least of
	// eleven equations (simonsen2024). Its form was read in roberts2024; the
	// name is from memory (lombardi1989). Below about 80 % of the 1RM its
	// inverse is of no use: 35 repetitions at 70 %.
	Lombardi // "lombardi"
	// Mayhew is 1RM = load·100/(52.2 + 41.9·e^(−0.055 r)), for r > 0; studied 1
	// to 10. It was made in students who did a minute of bench presses with 55 to
	// 95 % of their 1RM; its error is not known here. Its inverse is defined
	// above 52.2 and below 94.1 %. Coefficients from memory (mayhew1992).
	Mayhew // "mayhew"
	// OConner is 1RM = load·(1 + r/40), for r > 0; studied 1 to 10. Its people
	// and error are not known here; in 60 sets of ten trained young lifters it
	// was out by 2.5 % up to 10 repetitions, the least of the classical equations
	// (see [OpenBench]). Coefficients from memory (oconner1989).
	OConner // "oconner"
	// Wathen is 1RM = load·100/(48.8 + 53.8·e^(−0.075 r)), for r > 0; studied 1
	// to 10. Its people and error are not known here. Its inverse is defined
	// above 48.8 and below 102.6 %. Coefficients from memory (wathen1994).
	Wathen // "wathen"
	// Adams is 1RM = load/(1 − 0.02 r), for 0 < r < 50; studied 1 to 10. Its
	// people and error are not known here. Coefficients from memory (adams1994).
	Adams // "adams"
	// Kemmler2006 is 1RM = load·(0.988 + 0.0104 r + 0.0019 r² − 0.0000584 r³),
	// for r > 0 up to its turning point at 24.15; studied 3 to 20. It was made in
	// 70 trained women after the menopause, 57.4 ± 3.1 years, on four machine
	// lifts; the mean absolute error was 1.5 to 3.1 % in that same sample. Its
	// inverse is defined from 65.6 to 101.2 %. Coefficients published
	// (kemmler2006, abstract).
	Kemmler2006 // "kemmler2006"

	// Kemmler2024LatPulls is 1RM = load·(0.987542505 + 0.0152700149 r +
	// 0.00278487038 r² − 0.000115638888 r³), on its rising branch up to 18.4;
	// studied 5 to 16. Like the five below it was made in 40 well-trained women
	// and men of 73 ± 8 years with osteopenia or osteoporosis, on a machine. The
	// errors were not seen. The coefficients are published (kemmler2024); that
	// they make a cubic in this order, and the exercise they belong to, is
	// inferred. [FromSet] therefore asks none of the six.
	Kemmler2024LatPulls // "kemmler2024-lat-pulls"
	// Kemmler2024TricepsDips is 1RM = load·(0.973559954 + 0.0271642658 r +
	// 0.000930880743 r² − 0.0000477453474 r³), up to 21.7; studied 5 to 16. For
	// people, errors and basis see [Kemmler2024LatPulls].
	Kemmler2024TricepsDips // "kemmler2024-triceps-dips"
	// Kemmler2024TrunkExtension is 1RM = load·(1.01565994 − 0.0130808261 r +
	// 0.00601883266 r² − 0.0002286238 r³), from 1.2 up to 16.4; studied 5 to 16.
	// For people, errors and basis see [Kemmler2024LatPulls].
	Kemmler2024TrunkExtension // "kemmler2024-trunk-extension"
	// Kemmler2024TrunkFlexion is 1RM = load·(0.994961852 + 0.00731240752 r +
	// 0.00293967456 r² − 0.00010510901 r³), up to 19.8; studied 5 to 16. For
	// people, errors and basis see [Kemmler2024LatPulls].
	Kemmler2024TrunkFlexion // "kemmler2024-trunk-flexion"
	// Kemmler2024LegExtension is 1RM = load·(0.999714613 + 0.00184050532 r +
	// 0.00390281962 r² − 0.000128405344 r³), up to 20.5; studied 5 to 16. For
	// people, errors and basis see [Kemmler2024LatPulls].
	Kemmler2024LegExtension // "kemmler2024-leg-extension"
	// Kemmler2024LegFlexion is 1RM = load·(0.994637813 + 0.00715193846 r +
	// 0.00333621122 r² − 0.000109143358 r³), up to 21.4; studied 5 to 16. For
	// people, errors and basis see [Kemmler2024LatPulls].
	Kemmler2024LegFlexion // "kemmler2024-leg-flexion"
	// Reynolds2006ChestPress is 1RM = load·100/(48.47 + 55.51·e^(−0.0723 r)), for
	// r > 0; studied 5 to 10. It was made in 70 men and women of 18 to 69 years
	// who bench pressed a barbell; the curve missed the groups' means by 0.2 kg
	// (published), which says little of one person. Coefficients from memory
	// (reynolds2006). The line through their 5RM is in package published.
	Reynolds2006ChestPress // "reynolds2006-chest-press"
	// Reynolds2006LegPress is 1RM = load·100/(26.41 + 78.17·e^(−0.0569 r)), for
	// r > 0; studied 5 to 10, as [Reynolds2006ChestPress] but on a plate-loaded
	// leg press, where the curve missed the groups' means by 2.6 kg. It gives
	// fewer repetitions than on the bench at the same percentage, which is the
	// contrary of what others found: doubt it. Coefficients from memory.
	Reynolds2006LegPress // "reynolds2006-leg-press"
	// BaechleGroves is 1RM = load·(1 + 0.033 r), for r > 0; studied 1 to 10: a
	// rounding of [Epley] that is tested under its own name. In 31 trained men's
	// 4 to 10RM bench press six equations with this one missed by 2.7 to 3.2 kg
	// (lacio2010). Coefficients from memory (baechle2000).
	BaechleGroves // "baechle-groves"
)

var formulas = field.NewVocabulary[Formula]("formula", "",
	"epley", "brzycki", "lander", "lombardi", "mayhew", "oconner", "wathen", "adams", "kemmler2006",
	"kemmler2024-lat-pulls", "kemmler2024-triceps-dips", "kemmler2024-trunk-extension",
	"kemmler2024-trunk-flexion", "kemmler2024-leg-extension", "kemmler2024-leg-flexion",
	"reynolds2006-chest-press", "reynolds2006-leg-press", "baechle-groves")

// Formulas yields every formula.
func Formulas() iter.Seq[Formula] { return formulas.All() }

// String returns the formula's code, such as "brzycki".
func (f Formula) String() string { return formulas.Text(f) }

// check returns nil if f is given.
func (f Formula) check() error { return formulas.Check("", f) }

// MarshalText writes what String returns.
func (f Formula) MarshalText() ([]byte, error) { return formulas.Marshal(f) }

// UnmarshalText reads what MarshalText writes.
func (f *Formula) UnmarshalText(text []byte) error { return formulas.Unmarshal(text, f) }

// equation returns the row of f; a value that is no formula has the empty row.
func (f Formula) equation() *equation {
	if int(f) < len(equations) {
		return &equations[f]
	}
	return &equations[0]
}

// Fact names the fact that states the equation; "" for no formula. The same
// name with ".range" states the repetitions it is advised or was tested for.
func (f Formula) Fact() evidence.FactID {
	if !formulas.Valid(f) {
		return ""
	}
	return evidence.FactID("onerm." + f.String())
}

// Studied returns the repetitions to failure over which the equation may be
// relied on: 3 to 20 for [Kemmler2006], 5 to 16 for the six of 2024, 5 to 10
// for the two of Reynolds 2006, and for the others 1 to 10, the limit that they
// share here. It is "not stated" for no formula.
func (f Formula) Studied() units.Range[float64] { return f.equation().studied }

// Domain returns the repetitions over which the equation can be evaluated. Its
// ends are the first and last float64 that are accepted: 0 and the poles are
// left out. Where there is no upper end, every finite number is accepted. They print in
// all their digits; what an error allows is said for people.
func (f Formula) Domain() units.Range[float64] { return f.equation().Domain }

// takes reports whether the equation can be evaluated at reps. A range
// without upper end also contains the infinite.
func (f Formula) takes(reps float64) bool {
	return formulas.Valid(f) && equations[f].Domain.Contains(reps) && reps <= math.MaxFloat64
}

// checkReps is the error of reps that the equation does not take.
func (f Formula) checkReps(path string, reps float64) error {
	switch err := f.check(); {
	case err != nil:
		return field.At("/formula", err)
	case f.takes(reps):
		return nil
	}
	return field.New(path, reps, equations[f].DomainText(), field.ErrOutOfRange)
}

// refuse gathers what is wrong with a mass and repetitions.
func (f Formula) refuse(path string, m units.Mass, reps float64) error {
	var bad field.Errors
	bad.Refuse(m <= 0, path, m, "a mass above 0 kg", field.ErrOutOfRange)
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
		return 0, field.At(path, err)
	}
	return exact, nil
}

// OneRM returns the 1RM that the equation predicts from a load lifted reps
// times to failure, to the nearest nanogram. A load of zero or less, or reps
// outside [Formula.Domain], are a [field.ErrOutOfRange], no formula is a
// [field.ErrMissing], too much a [field.ErrOverflow].
//
// It is the bare equation: at 1 repetition most give more than was lifted.
func (f Formula) OneRM(load units.Mass, reps float64) (units.Mass, error) {
	if load <= 0 || !f.takes(reps) {
		return 0, f.refuse("/load", load, reps)
	}
	return scale("/load", load, equations[f].Factor(reps))
}

// Load returns the load that a person with the given 1RM can lift reps times to
// failure, to the nearest nanogram: the inverse of [Formula.OneRM] in the load,
// with the same errors.
func (f Formula) Load(oneRM units.Mass, reps float64) (units.Mass, error) {
	if oneRM <= 0 || !f.takes(reps) {
		return 0, f.refuse("/one_rm", oneRM, reps)
	}
	return scale("/one_rm", oneRM, 1/equations[f].Factor(reps))
}

// Fraction returns the share of the 1RM that can be lifted reps times to
// failure. Reps outside [Formula.Domain] are a [field.ErrOutOfRange].
func (f Formula) Fraction(reps float64) (units.Fraction, error) {
	if err := f.checkReps("/reps", reps); err != nil {
		return 0, err
	}
	return units.Fraction(1 / equations[f].Factor(reps)), nil
}

// Reps returns how often a share of the 1RM can be lifted to failure. A share
// that no repetitions within [Formula.Domain] belong to is a
// [field.ErrOutOfRange].
func (f Formula) Reps(share units.Fraction) (float64, error) {
	if err := f.check(); err != nil {
		return 0, field.At("/formula", err)
	}
	q := &equations[f]
	if share > 0 {
		if reps := q.Reps(float64(share)); f.takes(reps) {
			return reps, nil
		}
	}
	return 0, field.New("/fraction", float64(share), q.ShareText(), field.ErrOutOfRange)
}
