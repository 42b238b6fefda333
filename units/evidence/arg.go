package evidence

import (
	"math"
	"strings"

	"example.org/posology/units"
)

// Arg is a named value in a reason. It keeps the value with its kind and unit, and
// prints it when it is read. The zero Arg is an empty text; Args compare with ==.
//
// In JSON stand its name, the text that it prints, and beside a plain text its kind,
// unit, and number or ends. What prints another text than the stored one, or is of
// a kind not known, is read back as that text: what was said stays.
type Arg struct {
	Name string

	text      string // of a text, code or term; else the unit or scale that prints
	low, high int64  // whole numbers, nanograms, or the bits of a float64
	kind      argKind
	ends      ends
}

// ends are those that a range has; a single value has both, and they are equal.
type ends uint8

const (
	lowEnd ends = 1 << iota
	highEnd
)

// between stands between several terms.
const between = ", "

// Text is a value in words, which prints as it is.
func Text(name, text string) Arg { return Arg{Name: name, text: text} }

// ID is a code or an ID, the same in every language.
func ID[S ~string](name string, id S) Arg { return Arg{Name: name, text: string(id), kind: isCode} }

// Term is the text of a value of an enumeration.
func Term(name, text string) Arg { return Arg{Name: name, text: text, kind: isTerm} }

// Terms are several, printed with commas between them.
func Terms(name string, texts ...string) Arg {
	return Arg{Name: name, text: strings.Join(texts, between), kind: isTerms}
}

// Count is a whole number, or a range, of what the sentence names.
func Count[N int | units.Range[int]](name string, n N) Arg { return whole(isCount, name, n) }

// Seconds is a whole number or a range of seconds. As with the other spans of time,
// the sentence names the unit.
func Seconds[N int | units.Range[int]](name string, n N) Arg { return whole(isSeconds, name, n) }

// Minutes is a whole number or a range of minutes.
func Minutes[N int | units.Range[int]](name string, n N) Arg { return whole(isMinutes, name, n) }

// Days is a whole number or a range of days.
func Days[N int | units.Range[int]](name string, n N) Arg { return whole(isDays, name, n) }

func whole[N int | units.Range[int]](k argKind, name string, n N) Arg {
	if r, ok := any(n).(units.Range[int]); ok {
		return spanned(Arg{Name: name, kind: k}, r, func(n int) int64 { return int64(n) })
	}
	return single(Arg{Name: name, kind: k}, int64(any(n).(int)))
}

// Change is what a whole number changes by; it prints with its sign.
func Change(name string, n int) Arg { return whole(isChange, name, n) }

// Day is a day of the calendar; one not given prints nothing.
func Day(name string, d units.Day) Arg {
	if d != 0 && d.Check() != nil {
		return Text(name, d.String())
	}
	return single(Arg{Name: name, kind: isDay}, int64(d))
}

// Mass is a mass as it is said to people, by [units.Mass.Shortened]: down, since most
// masses in reasons are ceilings.
func Mass(name string, m units.Mass) Arg { return mass(name, m.Shortened(units.Down)) }

// NearMass is a mass that is no ceiling, said to the nearest.
func NearMass(name string, m units.Mass) Arg { return mass(name, m.Shortened(units.Nearest)) }

// Marked is a mass as it is, in the unit marked on it.
func Marked(name string, m units.Marked) Arg {
	a := mass(name, m.Mass)
	a.text = m.Unit.String()
	return a
}

func mass(name string, m units.Mass) Arg {
	return single(Arg{Name: name, kind: isMass, text: units.KG.String()}, int64(m))
}

// Masses is a range of masses, each as it is.
func Masses(name string, r units.Range[units.Mass]) Arg {
	return spanned(mass(name, 0), r, func(m units.Mass) int64 { return int64(m) })
}

// Number is a number without a unit, of repetitions in reserve too, or a range.
func Number[N float64 | units.RIR | units.Range[float64]](name string, x N) Arg {
	switch x := any(x).(type) {
	case float64:
		return ofFloat(isNumber, name, "", x)
	case units.RIR:
		return ofFloat(isNumber, name, "", float64(x))
	}
	return spanned(Arg{Name: name, kind: isNumber}, any(x).(units.Range[float64]), bits)
}

// Tenths is a number that is said to one decimal.
func Tenths(name string, x float64) Arg { return ofFloat(isTenths, name, "", x) }

// Share is a share of a whole, or a range, printed in per cent to one decimal.
func Share[N units.Fraction | units.Range[units.Fraction]](name string, x N) Arg {
	if r, ok := any(x).(units.Range[units.Fraction]); ok {
		return spanned(Arg{Name: name, kind: isShare}, r, bits)
	}
	return ofFloat(isShare, name, "", float64(any(x).(units.Fraction)))
}

// Quantity is a number that prints in decimals, with its unit.
func Quantity(name string, x float64, unit string) Arg { return ofFloat(isQuantity, name, unit, x) }

// Reserve is the least number of repetitions to leave undone; where that cannot be
// counted it prints as more than least.
func Reserve(name string, least units.RIR, countable bool) Arg {
	a := ofFloat(isUncounted, name, "", float64(least))
	if countable {
		a.kind = isReserve
	}
	a.high, a.ends = 0, lowEnd
	return a
}

// Effort is a rating of effort; one that was not recorded prints nothing.
func Effort(name string, e units.Effort) Arg {
	if e.IsZero() {
		return Arg{Name: name, kind: isEffort}
	}
	return ofFloat(isEffort, name, e.Scale().String(), e.Number())
}

func ofFloat(k argKind, name, unit string, x float64) Arg {
	return single(Arg{Name: name, text: unit, kind: k}, bits(x)).finite()
}

// finite is a, as a text where JSON has no such number.
func (a Arg) finite() Arg {
	if !a.kind.whole() && (endless(a.low) || endless(a.high)) {
		return Text(a.Name, a.Value())
	}
	return a
}

// endless reports the bits of an infinity or of what is no number: those with the largest exponent.
func endless(bits int64) bool { return bits>>52&0x7ff == 0x7ff }

func bits[T ~float64](x T) int64 { return int64(math.Float64bits(float64(x))) }

func real(n int64) float64 { return math.Float64frombits(uint64(n)) }

func single(a Arg, n int64) Arg {
	a.low, a.high, a.ends = n, n, lowEnd|highEnd
	return a
}

// spanned puts the ends of r into a.
func spanned[T int | float64 | units.Fraction | units.Mass](a Arg, r units.Range[T], number func(T) int64) Arg {
	a.low, a.high, a.ends = 0, 0, 0
	if low, ok := r.Min(); ok {
		a.low, a.ends = number(low), lowEnd
	}
	if high, ok := r.Max(); ok {
		a.high, a.ends = number(high), a.ends|highEnd
	}
	return a.finite()
}
