package volume

import (
	"cmp"
	"fmt"
	"math/big"
	"math/bits"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// factLoad is the published formula: repetitions times load, summed over sets.
const factLoad evidence.FactID = "volume.load"

// A VolumeLoad is an exact sum of mass over repetitions: whole kilograms and
// nanograms, since a [units.Mass] ends at 9.2 million kg. It is zero or more;
// the zero value is zero. Its text is like "1560 kg".
type VolumeLoad struct {
	kg, ng int64 // ng below one kilogram
}

// Lifted returns reps times m. Either below zero is a
// [field.ErrOutOfRange], too much a [field.ErrOverflow].
func Lifted(m units.Mass, reps int) (VolumeLoad, error) {
	if m < 0 || reps < 0 {
		return VolumeLoad{}, field.Bad(fmt.Sprintf("%d × %s", reps, m), "0 or more of 0 kg or more", field.ErrOutOfRange)
	}
	hi, lo := bits.Mul64(uint64(m), uint64(reps))
	if hi >= uint64(units.Kilogram)/2 { // the quotient would reach 2^63
		return VolumeLoad{}, field.Bad(fmt.Sprintf("%d × %s", reps, m), loadLimit, field.ErrOverflow)
	}
	kg, ng := bits.Div64(hi, lo, uint64(units.Kilogram))
	return VolumeLoad{int64(kg), int64(ng)}, nil
}

const loadLimit = "a load within 9.2 million million million kg"

// Add returns l + m, or a [field.ErrOverflow].
func (l VolumeLoad) Add(m VolumeLoad) (VolumeLoad, error) {
	sum := l.plus(m)
	if sum.kg < 0 {
		return VolumeLoad{}, field.Bad(l.String()+" + "+m.String(), loadLimit, field.ErrOverflow)
	}
	return sum, nil
}

// plus is Add where the sum is known to fit.
func (l VolumeLoad) plus(m VolumeLoad) VolumeLoad {
	l.kg, l.ng = l.kg+m.kg, l.ng+m.ng
	if l.ng >= int64(units.Kilogram) {
		l.kg, l.ng = l.kg+1, l.ng-int64(units.Kilogram)
	}
	return l
}

// Parts returns whole kilograms and the nanograms beyond them.
func (l VolumeLoad) Parts() (kg int64, rest units.Mass) { return l.kg, units.Mass(l.ng) }

// Compare returns -1, 0 or +1 as l is less than, the same as or more than m.
func (l VolumeLoad) Compare(m VolumeLoad) int {
	return cmp.Or(cmp.Compare(l.kg, m.kg), cmp.Compare(l.ng, m.ng))
}

// Kilograms returns l in kilograms, as near as a float64 comes.
func (l VolumeLoad) Kilograms() float64 { return float64(l.kg) + float64(l.ng)/float64(units.Kilogram) }

// String prints the exact decimal in kilograms, such as "1560.5 kg".
func (l VolumeLoad) String() string {
	if l.ng == 0 {
		return fmt.Sprintf("%d kg", l.kg)
	}
	return fmt.Sprintf("%d.%s kg", l.kg, strings.TrimRight(fmt.Sprintf("%012d", l.ng), "0"))
}

// MarshalText writes what [VolumeLoad.String] prints.
func (l VolumeLoad) MarshalText() ([]byte, error) { return []byte(l.String()), nil }

func parseVolumeLoad(s string) (VolumeLoad, error) {
	number, unit, _ := strings.Cut(strings.Replace(s, ",", ".", 1), " ")
	whole, frac, pointed := strings.Cut(number, ".")
	digits := whole + frac
	u, _ := units.ParseMassUnit(unit)
	if u != units.KG || whole == "" || len(frac) > 12 || len(digits) > 60 || pointed && frac == "" || strings.Trim(digits, "0123456789") != "" {
		return VolumeLoad{}, field.Bad(fmt.Sprintf("%.80q", s), `kilograms such as "1560.5 kg"`, field.ErrSyntax)
	}
	ng, _ := new(big.Int).SetString(digits+strings.Repeat("0", 12-len(frac)), 10)
	kg, rest := ng.QuoRem(ng, big.NewInt(int64(units.Kilogram)), new(big.Int))
	if !kg.IsInt64() {
		return VolumeLoad{}, field.Bad(fmt.Sprintf("%.80q", s), loadLimit, field.ErrOverflow)
	}
	return VolumeLoad{kg.Int64(), rest.Int64()}, nil
}

// UnmarshalText reads what [VolumeLoad.String] prints: a decimal number of kilograms
// with at most twelve decimals behind a point or a comma. Another form is a [field.ErrSyntax], too much
// a [field.ErrOverflow].
func (l *VolumeLoad) UnmarshalText(text []byte) error {
	v, err := parseVolumeLoad(string(text))
	return field.Assign(l, v, err)
}

// maxShare is the highest share of 1RM taken, against percents for shares.
const maxShare = 2

// RelativeVolume returns the relative volume sets × reps × share, in repetitions of
// one-repetition maxima (Kraft 2014). Zeros and numbers below, and a share
// above 2, are a [field.ErrOutOfRange].
func RelativeVolume(sets, reps int, share units.Fraction) (float64, error) {
	var bad field.Errors
	bad.Refuse(sets < 1, "/sets", sets, "1 or more", field.ErrOutOfRange)
	bad.Refuse(reps < 1, "/reps", reps, "1 or more", field.ErrOutOfRange)
	bad.Refuse(!(share > 0 && share <= maxShare), "/share", float64(share), "above 0, up to 2", field.ErrOutOfRange)
	if len(bad) > 0 {
		return 0, bad
	}
	return float64(sets) * float64(reps) * float64(share), nil
}
