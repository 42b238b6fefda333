package track

import (
	"iter"
	"math"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Reliability is how alike two tests of an unchanged person are. The zero value is
// "not given".
type Reliability struct {
	// Name says of what test, such as "leg press".
	Name string `json:"name"`
	// Typical is the standard deviation of one test, as a share of its value: the typical
	// error, or coefficient of variation; 0.001 to 0.5.
	Typical units.Fraction `json:"typical"`
	// Rise is by what share the second test of a beginner lies above the first, from
	// learning alone; 0 to 50 %, 0 where nothing is learned, or it was left out.
	Rise units.Fraction `json:"rise,omitzero"`
	// People is whose it is.
	People string          `json:"people,omitzero"`
	Fact   evidence.FactID `json:"fact,omitzero"`
}

const young = "untrained young adults"

// reliabilities are those that were read or worked out. Those that span a
// range stand with its lower and its upper end.
var reliabilities = []Reliability{
	{Name: "bench press", Typical: 0.032, Rise: 0.031, People: young, Fact: factBench},
	{Name: "leg curl", Typical: 0.056, Rise: 0.094, People: young, Fact: factCurl},
	{Name: "leg press", Typical: 0.054, Rise: 0.107, People: young, Fact: factPress},
	{Name: "leg extension", Typical: 0.082, Rise: 0.081, People: young, Fact: factExtension},
	{Name: "1RM, median of studies", Typical: 0.042, People: "all ages, 32 studies", Fact: testAgain},
	{Name: "1RM, lower end", Typical: 0.042, People: "men of 60 to 87 years", Fact: factOlder},
	{Name: "1RM, upper end", Typical: 0.09, Rise: 0.066, People: "men of 60 to 87 years", Fact: factOlder},
	{Name: "bench press, lower end", Typical: 0.047, People: "75 years", Fact: factPhillips},
	{Name: "bench press, upper end", Typical: 0.073, People: "75 years", Fact: factPhillips},
	{Name: "1RM, lower end", Typical: 0.022, Rise: 0.016, People: "untrained, 51 years", Fact: factLevinger},
	{Name: "1RM, upper end", Typical: 0.101, Rise: 0.016, People: "untrained, 51 years", Fact: factLevinger},
}

// Reliabilities yields what was published, or worked out from open data. For
// dumbbells nothing was found.
func Reliabilities() iter.Seq[Reliability] { return slices.Values(reliabilities) }

// StandardReliability is for an older beginner's 1RM, where nothing nearer is known:
// an error of 6 %, between those published, and of the rises of older people the
// largest. The choice is this module's own.
func StandardReliability() Reliability {
	return Reliability{Name: "1RM", Typical: usualError, Rise: usualRise, People: "older beginners", Fact: factUsual}
}

const (
	usualError = 0.06
	usualRise  = 0.066
)

// Validate returns every bad field of r at once.
func (r Reliability) Validate() error {
	var bad field.Errors
	if r.Typical == 0 {
		bad.Add("/typical", field.Bad(nil, "0.001 to 0.5", field.ErrMissing))
	} else if !(r.Typical >= 0.001 && r.Typical <= 0.5) {
		bad.Add("/typical", field.Bad(float64(r.Typical), "0.001 to 0.5", field.ErrOutOfRange))
	}
	bad.Refuse(!(r.Rise >= 0 && r.Rise <= 0.5), "/rise", float64(r.Rise), "0 to 0.5", field.ErrOutOfRange)
	return bad.Err()
}

// FirstTry returns a reading of somebody's first test, of a logarithm, as what it would
// have been with the test learned: raised by Rise, which is held to be as uncertain as it
// is large. A track then takes no learning for strength, nor strength for learning. The
// errors are those of Validate, and of the reading below /reading.
func (r Reliability) FirstTry(reading Reading) (Reading, error) {
	var bad field.Errors
	bad.Add("", r.Validate())
	bad.Add("/reading", Model{Noise: 1}.check(reading)) // without a variance of its own it has the model's
	if err := bad.Err(); err != nil {
		return Reading{}, err
	}
	rise := math.Log1p(float64(r.Rise))
	reading.Value += rise
	reading.Variance += float64(rise * rise)
	return reading, nil
}

// SEM is the standard error of measurement, from which two tests of an unchanged person
// differ: the standard deviation between people, 0 or more, times √(1 − r), with the
// intraclass correlation r of two tests, 0 to 1. Others are a [field.ErrOutOfRange].
func SEM(between, correlation float64) (float64, error) {
	var bad field.Errors
	bad.Add("/between", checkSpread(between))
	bad.Refuse(!(correlation >= 0 && correlation <= 1), "/correlation", correlation, "0 to 1", field.ErrOutOfRange)
	if err := bad.Err(); err != nil {
		return 0, err
	}
	return between * math.Sqrt(1-correlation), nil
}

// TypicalError is the same from the standard deviation of the differences between two
// tests of each person, 0 or more: over √2.
func TypicalError(differences float64) (float64, error) {
	if err := checkSpread(differences); err != nil {
		return 0, field.At("/differences", err)
	}
	return differences / math.Sqrt2, nil
}

// SmallestWorthwhile is a fifth of the standard deviation between people, 0 or more
// (Hopkins 2000): a convention for what is worth while, not for what can be seen.
func SmallestWorthwhile(between float64) (float64, error) {
	if err := checkSpread(between); err != nil {
		return 0, field.At("/between", err)
	}
	return worthwhile * between, nil
}

const worthwhile = 0.2

func checkSpread(sd float64) error {
	if !(sd >= 0 && sd <= mostValue) {
		return field.Bad(sd, "a standard deviation, 0 to 1e150", field.ErrOutOfRange)
	}
	return nil
}

// MDC is the minimal detectable change: the smallest one that a share level of
// unchanged people, 0.5 to 0.99, do not show by chance between the mean of k tests and
// that of n, 1 to 20: z·SEM·√(1/k + 1/n).
func MDC(sem float64, level units.Fraction, k, n int) (float64, error) {
	var bad field.Errors
	bad.Add("/sem", checkSpread(sem))
	bad.Add("/level", checkLevel(level))
	bad.Add("/k", checkCount(k))
	bad.Add("/n", checkCount(n))
	if err := bad.Err(); err != nil {
		return 0, err
	}
	return detectable(sem, level, k, n), nil
}

func detectable(sem float64, level units.Fraction, k, n int) float64 {
	return normalWithin(level) * sem * math.Sqrt(1/float64(k)+1/float64(n))
}

// MDCShare is MDC for an error that is a share, 0 to 0.5, which adds up as logarithms
// do: the rise that shows, and the smaller fall that undoes it, both as shares above 0.
func MDCShare(typical, level units.Fraction, k, n int) (rise, fall units.Fraction, err error) {
	if !(typical >= 0 && typical <= 0.5) {
		return 0, 0, field.New("/typical", float64(typical), "0 to 0.5", field.ErrOutOfRange)
	}
	log, err := MDC(math.Log1p(float64(typical)), level, k, n)
	if err != nil {
		return 0, 0, err
	}
	return units.Fraction(math.Expm1(log)), units.Fraction(-math.Expm1(-log)), nil
}
