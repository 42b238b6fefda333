package units

import (
	"bytes"
	"fmt"
	"math"
	"math/big"
	"math/bits"
	"strconv"
	"strings"

	"example.org/posology/units/field"
)

// Mass is an exact mass: a whole number of nanograms. The zero value is
// zero, differences may be negative, and the range is about ± 9.22 million
// kilograms.
//
// Mass forgets the unit it was given in; [Marked] keeps it. A bare number is
// nanograms: write 20*[Kilogram], not Mass(20).
type Mass int64

// Units of mass, each exact.
const (
	Gram     Mass = 1e9             // 1 g
	Kilogram Mass = 1e12            // 1 kg
	Ounce    Mass = 28_349_523_125  // 1 oz avoirdupois, a sixteenth of a pound
	Pound    Mass = 453_592_370_000 // 1 lb avoirdupois, 0.453 592 37 kg (1959 agreement)
)

// MaxMass is the largest mass, about 9.22 million kilograms.
const MaxMass Mass = math.MaxInt64

// Kilograms returns kg kilograms to the nearest nanogram, halves away from
// zero. NaN and infinities are a [field.ErrOutOfRange], too much a [field.ErrOverflow].
func Kilograms(kg float64) (Mass, error) { return fromFloat(kg, KG) }

// Pounds returns lb pounds to the nearest nanogram, as [Kilograms] does.
func Pounds(lb float64) (Mass, error) { return fromFloat(lb, LB) }

func fromFloat(x float64, u MassUnit) (Mass, error) {
	refuse := func(allowed string, category error) (Mass, error) {
		return 0, field.Bad(fmt.Sprintf("%v %s", x, u), allowed, category)
	}
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return refuse("a finite mass", field.ErrOutOfRange)
	}
	ng, ok := roundMul(x, u.Mass(), Nearest)
	if !ok {
		return refuse("a mass within 9.22 million kg", field.ErrOverflow)
	}
	return ng, nil
}

// Kilograms returns m in kilograms, correctly rounded to float64 below 9000 kg.
func (m Mass) Kilograms() float64 { return float64(m) / float64(Kilogram) }

// Pounds returns m in pounds, correctly rounded to float64 below 9000 kg.
func (m Mass) Pounds() float64 { return float64(m) / float64(Pound) }

// Add returns m + n, or a [field.ErrOverflow].
func (m Mass) Add(n Mass) (Mass, error) {
	s := m + n
	if (m^s)&(n^s) < 0 {
		return 0, field.Bad(m.String()+" + "+n.String(), "a mass within 9.22 million kg", field.ErrOverflow)
	}
	return s, nil
}

// Times returns n times m, or a [field.ErrOverflow].
func (m Mass) Times(n int) (Mass, error) {
	p := big.NewInt(int64(m))
	p.Mul(p, big.NewInt(int64(n)))
	if !p.IsInt64() {
		return 0, field.Bad(fmt.Sprintf("%d × %s", n, m), "a mass within 9.22 million kg", field.ErrOverflow)
	}
	return Mass(p.Int64()), nil
}

// Scale returns the exact product of m and f, rounded to a whole nanogram as r
// says. NaN and infinities are a [field.ErrOutOfRange], too much a [field.ErrOverflow].
func (m Mass) Scale(f Fraction, r Rounding) (Mass, error) {
	x := float64(f)
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return 0, field.Bad(x, "a finite fraction", field.ErrOutOfRange)
	}
	p, ok := roundMul(x, m, r)
	if !ok {
		return 0, field.Bad(fmt.Sprintf("%v × %s", x, m), "a mass within 9.22 million kg", field.ErrOverflow)
	}
	return p, nil
}

// Share returns m as a fraction of whole, correctly rounded to float64 below
// 9000 kg. A whole of zero or less is a [field.ErrOutOfRange].
func (m Mass) Share(whole Mass) (Fraction, error) {
	if whole <= 0 {
		return 0, field.Bad(whole, "a mass above 0 kg", field.ErrOutOfRange)
	}
	return Fraction(float64(m) / float64(whole)), nil
}

// Rounding says which way an inexact result goes. The zero value goes down, and
// so does a value that is none of the three.
type Rounding uint8

// Directions of rounding.
const (
	Down    Rounding = iota // towards less mass, below zero too
	Nearest                 // halves away from zero
	Up                      // towards more mass
)

// Rounded returns the multiple of to that m is rounded to as r says, halves
// away from zero. A step of zero or less is a [field.ErrOutOfRange], a result
// that does not fit a [field.ErrOverflow].
func (m Mass) Rounded(to Mass, r Rounding) (Mass, error) {
	if to <= 0 {
		return 0, field.Bad(to, "a step above 0 kg", field.ErrOutOfRange)
	}
	rest := m % to
	if rest == 0 {
		return m, nil
	}
	far := max(rest, -rest)
	near := m - rest
	switch away := r.away(m < 0, far >= to-far); {
	case !away:
		return near, nil
	case m < 0:
		return near.Add(-to)
	}
	return near.Add(to)
}

// roundMul returns x·m rounded to a whole number, and false if it does not fit.
// A finite float64 is a whole number times a power of two, so the product is
// exact before the one rounding.
func roundMul(x float64, m Mass, r Rounding) (Mass, bool) {
	negative := (x < 0) != (m < 0)
	mant, exp := math.Frexp(math.Abs(x)) // |x| = mant·2^exp, mant in [½, 1)
	a := uint64(mant * (1 << 53))        // exact: 53 bits
	shift := 53 - exp                    // |x| = a / 2^shift
	b := uint64(m)
	if m < 0 {
		b = -b
	}
	hi, lo := bits.Mul64(a, b)
	whole, rest, half, ok := shiftRight(hi, lo, shift)
	most := uint64(MaxMass)
	if negative {
		most++
	}
	away := rest > 0 && r.away(negative, half)
	if !ok || whole > most || away && whole == most {
		return 0, false
	}
	if away {
		whole++
	}
	if negative {
		return Mass(-whole), true // on whole numbers, so that 2^63 fits
	}
	return Mass(whole), true
}

// away reports whether a result that is not whole goes away from zero.
func (r Rounding) away(negative, half bool) bool {
	switch r {
	case Nearest:
		return half
	case Up:
		return !negative
	}
	return negative
}

// shiftRight returns ⌊(hi·2^64+lo)/2^n⌋, whether anything was lost (rest > 0)
// and whether that was at least a half. It is false if the result does not fit.
func shiftRight(hi, lo uint64, n int) (whole, rest uint64, half, ok bool) {
	switch {
	case hi == 0 && lo == 0:
		return 0, 0, false, true
	case n <= 0:
		if hi != 0 || bits.LeadingZeros64(lo) < -n {
			return 0, 0, false, false
		}
		return lo << uint(-n), 0, false, true
	case n > 128:
		return 0, 1, false, true
	}
	bit := func(i int) uint64 { // i-th bit of the 128
		if i >= 64 {
			return hi >> uint(i-64) & 1
		}
		return lo >> uint(i) & 1
	}
	half = bit(n-1) == 1
	if n >= 64 {
		low := uint64(0)
		if n > 64 {
			low = hi << uint(128-n)
		}
		rest = lo | low
		return hi >> uint(n-64), rest, half, true
	}
	if hi>>uint(n) != 0 {
		return 0, 0, false, false
	}
	return hi<<uint(64-n) | lo>>uint(n), lo << uint(64-n), half, true
}

// ParseMass reads a number, a unit and nothing else: "12.5 kg", "12,5 kg",
// "27.5 lb", "5 lbs", "27.5 [lb_av]", "-250 g", in small or capital letters. The decimal sign is a point or a comma;
// there are no thousands separators and no exponents; the space is optional.
// The value is rounded to the nearest nanogram. A bare number is a
// [field.ErrMissing] for its unit, anything else that does not fit a [field.ErrSyntax] or
// [field.ErrOverflow].
func ParseMass(s string) (Mass, error) {
	m, err := ParseMarked(s)
	return m.Mass, err
}

const massForm = `a decimal number and a unit, such as "12.5 kg" or "25 lb"`

// digits splits s into the digits before and after the decimal sign, and the rest.
func digits(s string) (whole, frac, rest string) {
	notDigit := func(r rune) bool { return r < '0' || r > '9' }
	cut := func(s string) (string, string) {
		if i := strings.IndexFunc(s, notDigit); i >= 0 {
			return s[:i], s[i:]
		}
		return s, ""
	}
	whole, rest = cut(s)
	if rest != "" && (rest[0] == '.' || rest[0] == ',') {
		frac, rest = cut(rest[1:])
		if frac == "" {
			return "", "", s
		}
	}
	return whole, frac, rest
}

// ParseMarked reads a mass as [ParseMass] does and keeps its unit.
func ParseMarked(s string) (Marked, error) {
	text, negative := strings.CutPrefix(strings.TrimSpace(s), "-")
	whole, frac, rest := digits(text)
	rest = strings.TrimSpace(rest)
	switch {
	case whole == "" || len(whole)+len(frac) > 60:
		return Marked{}, field.Bad(fmt.Sprintf("%.80q", s), massForm, field.ErrSyntax)
	case rest == "":
		return Marked{}, field.Bad(fmt.Sprintf("%.80q", s), massForm, field.ErrMissing)
	}
	u, err := ParseMassUnit(rest)
	if err != nil {
		return Marked{}, field.Bad(fmt.Sprintf("%.80q", s), massForm, field.ErrSyntax)
	}
	ng, _ := new(big.Int).SetString(whole+frac, 10)
	ng.Mul(ng, big.NewInt(int64(u.Mass())))
	scale := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(len(frac))), nil)
	half := new(big.Int).Rsh(scale, 1)
	ng.Quo(ng.Add(ng, half), scale) // to the nearest nanogram
	if negative {
		ng.Neg(ng)
	}
	if !ng.IsInt64() {
		return Marked{}, field.Bad(fmt.Sprintf("%.80q", s), "a mass within 9.22 million kg", field.ErrOverflow)
	}
	return Marked{Mass(ng.Int64()), u}, nil
}

// Text prints m in unit u with the fewest decimals that [ParseMass] reads back
// as the same mass, such as "22.5 kg". In kilograms and grams that is the exact
// value. An unknown unit prints kilograms.
func (m Mass) Text(u MassUnit) string {
	var room [40]byte
	text, abs := room[:0], uint64(m)
	if m < 0 {
		text, abs = append(text, '-'), -abs // on whole numbers, so that -2^63 fits
	}
	if u == LB || u == OZ {
		text = append(text, shortest(abs, u.Mass())...)
	} else {
		text = appendExact(text, abs, uint64(u.Mass()))
	}
	text = append(text, ' ')
	return string(append(text, u.String()...))
}

// appendExact appends ng nanograms in a unit that is a power of ten of them.
func appendExact(text []byte, ng, unit uint64) []byte {
	text = strconv.AppendUint(text, ng/unit, 10)
	rest := ng % unit
	if rest == 0 {
		return text
	}
	point := len(text)
	text = strconv.AppendUint(text, unit+rest, 10) // a 1, so that the zeros behind the point stay
	text[point] = '.'
	return bytes.TrimRight(text, "0")
}

// shortest prints ng nanograms in a unit in which their decimals need not end.
func shortest(ng uint64, u Mass) string {
	unit, abs := big.NewInt(int64(u)), new(big.Int).SetUint64(ng)
	ten := big.NewInt(10)
	scale := big.NewInt(1)
	for decimals := 0; ; decimals++ {
		n := new(big.Int).Mul(abs, scale)
		n.Add(n.Lsh(n, 1), unit)
		n.Quo(n, new(big.Int).Lsh(unit, 1)) // abs·10^decimals/unit, to the nearest
		back := new(big.Int).Mul(n, unit)
		back.Add(back, new(big.Int).Rsh(scale, 1))
		if back.Quo(back, scale).Cmp(abs) == 0 {
			return point(n.String(), decimals)
		}
		scale.Mul(scale, ten)
	}
}

// point sets the decimal point so that decimals digits follow it.
func point(digits string, decimals int) string {
	if decimals == 0 {
		return digits
	}
	if short := decimals + 1 - len(digits); short > 0 {
		digits = strings.Repeat("0", short) + digits
	}
	i := len(digits) - decimals
	return digits[:i] + "." + digits[i:]
}

// String prints the shortest exact decimal in kilograms, such as "12.5 kg".
func (m Mass) String() string { return m.Text(KG) }

const (
	tenth  = Kilogram / 10 // no more is said of a mass that was worked out
	marked = tenth / 2     // weights are made in steps that print short as they are
)

// Shortened is m as it is said to people: rounded to a tenth of a kilogram as r says,
// such as 2.2 kg, since no more is known of a mass that was worked out. A multiple of
// 50 g, as weights are made, stays as it is, and what is less than a tenth goes to whole
// grams. Round a ceiling down, the ends of an interval outwards and a best estimate
// to the nearest. What does not fit stays too.
func (m Mass) Shortened(r Rounding) Mass {
	if m%marked == 0 {
		return m
	}
	step := tenth
	if -tenth < m && m < tenth {
		step = Gram
	}
	short, err := m.Rounded(step, r)
	if err != nil {
		return m
	}
	return short
}

// Short prints what [Mass.Shortened] gives, such as "2.2 kg".
func (m Mass) Short(r Rounding) string { return m.Shortened(r).String() }

// MarshalText writes what [Mass.String] prints.
func (m Mass) MarshalText() ([]byte, error) { return []byte(m.String()), nil }

// UnmarshalText reads what [ParseMass] reads.
func (m *Mass) UnmarshalText(text []byte) error {
	v, err := ParseMass(string(text))
	return field.Assign(m, v, err)
}
