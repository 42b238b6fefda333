package function

import (
	"fmt"
	"iter"
	"math"
	"regexp"
	"strconv"
	"strings"

	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Unit is the unit of an amount. Those in which no test is measured have a text alone:
// "min", "cm/s", "kg/m2", "cm" and "%", of people.
type Unit uint8

// Units.
const (
	_                       Unit = iota // not given
	Reps                                // "reps": repetitions, counted
	Seconds                             // "s": seconds
	minutes                             // "min": minutes
	MetresPerSecond                     // "m/s": metres a second
	centimetresPerSecond                // "cm/s": centimetres a second
	Kilograms                           // "kg": kilograms of force on a hand dynamometer, or of mass
	kilogramsPerSquareMetre             // "kg/m2": kilograms per square metre of height
	centimetres                         // "cm": centimetres
	Points                              // "points": points of a score
	Level                               // "level": number of a level
	percent                             // "%": per cent of people
)

var unitTexts = field.NewVocabulary[Unit]("unit", "", "reps", "s", "min", "m/s", "cm/s", "kg", "kg/m2", "cm", "points", "level", "%")

// Units yields every unit.
func Units() iter.Seq[Unit] { return unitTexts.All() }

// String returns the unit's symbol, such as "m/s".
func (u Unit) String() string { return unitTexts.Text(u) }

// MarshalText writes what String returns.
func (u Unit) MarshalText() ([]byte, error) { return unitTexts.Marshal(u) }

// UnmarshalText reads what MarshalText writes.
func (u *Unit) UnmarshalText(text []byte) error { return unitTexts.Unmarshal(text, u) }

// Amount is a number with its unit, in whole millionths of the unit, so that
// comparisons and differences are exact. Differences may lie below zero. The
// zero value is "not given"; zero of something is not. Its text is the number
// and the unit: "12 reps", "8.86 s", "0.8 m/s".
type Amount struct {
	millionths int64
	unit       Unit
}

const (
	perUnit   = 1_000_000
	maxAmount = 999_999_999.0 // no measure here comes near it
)

// NewAmount returns v of unit u, to the nearest millionth. A value that is no number,
// or lies beyond 999 999 999 either way, is a [field.ErrOutOfRange]; a unit not
// given is a [field.ErrMissing].
func NewAmount(v float64, u Unit) (Amount, error) {
	if err := unitTexts.Check("", u); err != nil {
		return Amount{}, err
	}
	if !(math.Abs(v) <= maxAmount) {
		return Amount{}, field.Bad(v, fmt.Sprintf("-%.0f to %.0f", maxAmount, maxAmount), field.ErrOutOfRange)
	}
	return Amount{int64(math.Round(v * perUnit)), u}, nil
}

var amountText = regexp.MustCompile(`^(-?)([0-9]{1,9})(?:[.,]([0-9]{1,6}))? (\S+)$`)

// ParseAmount reads a number, a space and a unit, such as "8.86 s", "8,86 s" or "1 rep"; at
// most six decimals behind a point or a comma, and units in small or capital letters, with
// or without the s of the plural. Another form is a [field.ErrSyntax], another unit an
// [field.ErrUnknown].
func ParseAmount(s string) (Amount, error) {
	part := amountText.FindStringSubmatch(s)
	if part == nil {
		return Amount{}, field.Bad(fmt.Sprintf("%.40q", s), `a number, at most six decimals, a space and a unit, such as "8.86 s"`, field.ErrSyntax)
	}
	u, err := parseUnit(part[4])
	if err != nil {
		return Amount{}, err
	}
	// Nine digits and six decimals fit an int64.
	n, _ := strconv.ParseInt(part[2]+part[3]+strings.Repeat("0", 6-len(part[3])), 10, 64)
	if part[1] != "" {
		n = -n
	}
	return Amount{n, u}, nil
}

// parseUnit reads a unit in any letters, in the singular or plural.
func parseUnit(text string) (Unit, error) {
	small := strings.ToLower(text)
	for u := range unitTexts.All() {
		if one := u.String(); small == one || len(one) > 2 && !strings.Contains(one, "/") && (small+"s" == one || small == one+"s") {
			return u, nil
		}
	}
	return unitTexts.Parse(text)
}

// IsZero reports whether a was not given.
func (a Amount) IsZero() bool { return a == Amount{} }

// Unit returns the unit, zero if a was not given.
func (a Amount) Unit() Unit { return a.unit }

// Number returns the number, in the unit of a.
func (a Amount) Number() float64 { return float64(a.millionths) / perUnit }

// String prints the exact number and the unit, or "" if a was not given.
func (a Amount) String() string {
	if a.IsZero() {
		return ""
	}
	sign, n := "", a.millionths
	if n < 0 {
		sign, n = "-", -n
	}
	number := fmt.Sprintf("%s%d.%06d", sign, n/perUnit, n%perUnit)
	return strings.TrimSuffix(strings.TrimRight(number, "0"), ".") + " " + a.unit.String()
}

// arg is a as a value of a reason.
func (a Amount) arg(name string) evidence.Arg {
	if a.IsZero() {
		return evidence.Text(name, "")
	}
	unit := a.unit.String()
	if n := max(a.millionths, -a.millionths); n == perUnit && (a.unit == Reps || a.unit == Points) {
		unit = strings.TrimSuffix(unit, "s") // which is said in words
	}
	return evidence.Quantity(name, a.Number(), unit)
}

// MarshalText writes what String prints.
func (a Amount) MarshalText() ([]byte, error) { return []byte(a.String()), nil }

// UnmarshalText reads what MarshalText writes.
func (a *Amount) UnmarshalText(text []byte) error {
	return field.AssignText(a, text, ParseAmount)
}

// whole reports whether a has no fraction.
func (a Amount) whole() bool { return a.millionths%perUnit == 0 }

// minus returns a − b; both have one unit.
func (a Amount) minus(b Amount) Amount { return Amount{a.millionths - b.millionths, a.unit} }

// plus returns a + b; both have one unit.
func (a Amount) plus(b Amount) Amount { return Amount{a.millionths + b.millionths, a.unit} }

// size returns a without its sign.
func (a Amount) size() Amount { return Amount{max(a.millionths, -a.millionths), a.unit} }

// roundedUp returns the least whole amount that is not below a, which is not
// below zero.
func (a Amount) roundedUp() Amount {
	return Amount{(a.millionths + perUnit - 1) / perUnit * perUnit, a.unit}
}
