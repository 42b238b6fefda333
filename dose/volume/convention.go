package volume

import (
	"cmp"
	"fmt"
	"iter"
	"math"
	"strconv"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Convention is a way to count a set for the muscles that it trains
// indirectly (Pelland 2024).
type Convention uint8

// Conventions.
const (
	_              Convention = iota // not given, or not said by a source
	DirectSets                       // "direct": indirect sets do not count
	FractionalSets                   // "fractional": they count half
	TotalSets                        // "total": they count in full
)

var conventions = field.NewVocabulary[Convention]("convention", "", "direct", "fractional", "total")

// Conventions yields every convention.
func Conventions() iter.Seq[Convention] { return conventions.All() }

// String returns "direct", "fractional" or "total", and "" for not given.
func (c Convention) String() string { return conventions.Text(c) }

// Check returns nil if c is given.
func (c Convention) Check() error { return conventions.Check("", c) }

// MarshalText writes what String returns.
func (c Convention) MarshalText() ([]byte, error) { return conventions.Marshal(c) }

// UnmarshalText reads what MarshalText writes.
func (c *Convention) UnmarshalText(text []byte) error { return conventions.Unmarshal(text, c) }

// indirect is what an indirect set counts, in halves of a set; a direct set
// counts two.
var indirect = [...]struct {
	halves int64
	fact   evidence.FactID
}{
	DirectSets:     {0, "volume.indirect-direct"},
	FractionalSets: {1, "volume.indirect-fractional"},
	TotalSets:      {2, "volume.indirect-total"},
}

// Indirect returns what an indirect set counts: 0, 0.5 or 1; a direct set
// counts 1. It is a [field.ErrMissing] if no convention is given.
func (c Convention) Indirect() (float64, error) {
	if err := c.Check(); err != nil {
		return 0, err
	}
	return float64(indirect[c].halves) / 2, nil
}

// fact names the fact behind [Convention.Indirect]; none for no convention.
func (c Convention) fact() evidence.FactID {
	if c.Check() != nil {
		return ""
	}
	return indirect[c].fact
}

// Sets is a number of sets in a convention, to the half set. The zero value is
// "not given". Its text is like "4.5 fractional".
type Sets struct {
	halves     int64
	convention Convention
}

// maxSets is a ceiling against slips and overflow.
const maxSets = 1 << 40

// NewSets returns n sets in convention c. A number below zero, above a
// million million or not of whole sets (half sets if fractional) is a
// [field.ErrOutOfRange].
func NewSets(n float64, c Convention) (Sets, error) {
	if err := c.Check(); err != nil {
		return Sets{}, err
	}
	step := 1.0
	if c == FractionalSets {
		step = 0.5
	}
	if !(n >= 0 && n <= maxSets) || math.Mod(n, step) != 0 {
		return Sets{}, field.Bad(n, fmt.Sprintf("0 or more, in steps of %v", step), field.ErrOutOfRange)
	}
	return Sets{int64(n * 2), c}, nil
}

func (c Convention) sets(prime, synergist int64) Sets {
	return Sets{2*prime + indirect[c].halves*synergist, c}
}

// IsZero reports whether no number is given; zero sets in a convention are.
func (s Sets) IsZero() bool { return s.convention == 0 }

// Convention returns how s was counted.
func (s Sets) Convention() Convention { return s.convention }

// Count returns the bare number; keep its convention beside it.
func (s Sets) Count() float64 { return float64(s.halves) / 2 }

// Compare returns -1, 0 or +1 as s is less than, as many as or more than t. It
// is a [field.ErrConflict] if their conventions differ, a [field.ErrMissing]
// if one has none.
func (s Sets) Compare(t Sets) (int, error) {
	if err := s.alike(t.convention); err != nil {
		return 0, err
	}
	return cmp.Compare(s.halves, t.halves), nil
}

// Against returns -1, 0 or +1 as s lies below, within or above bound, a number
// of sets in convention c; errors are those of [Sets.Compare].
func (s Sets) Against(bound units.Range[float64], c Convention) (int, error) {
	if err := s.alike(c); err != nil {
		return 0, err
	}
	if min, ok := bound.Min(); ok && s.Count() < min {
		return -1, nil
	}
	if max, ok := bound.Max(); ok && s.Count() > max {
		return 1, nil
	}
	return 0, nil
}

func (s Sets) alike(c Convention) error {
	if err := s.convention.Check(); err != nil {
		return err
	}
	if err := c.Check(); err != nil {
		return err
	}
	if s.convention != c {
		return field.Bad(c, "sets counted by the convention "+s.convention.String(), field.ErrConflict)
	}
	return nil
}

// String prints "4.5 fractional", and "" if no number is given.
func (s Sets) String() string {
	if s.IsZero() {
		return ""
	}
	return strconv.FormatFloat(s.Count(), 'f', -1, 64) + " " + s.convention.String()
}

// MarshalText writes what [Sets.String] prints.
func (s Sets) MarshalText() ([]byte, error) { return []byte(s.String()), nil }

// UnmarshalText reads what MarshalText writes, and a comma for the point.
func (s *Sets) UnmarshalText(text []byte) error { return field.AssignText(s, text, parseSets) }

func parseSets(text string) (Sets, error) {
	number, name, _ := strings.Cut(text, " ")
	whole, frac, pointed := strings.Cut(strings.Replace(number, ",", ".", 1), ".")
	digits := strings.TrimPrefix(whole, "-") + frac
	n, err := strconv.ParseFloat(whole+"."+frac, 64)
	if err != nil || strings.TrimPrefix(whole, "-") == "" || pointed && frac == "" || strings.Trim(digits, "0123456789") != "" {
		return Sets{}, field.Bad(fmt.Sprintf("%.40q", text), `sets and their convention, such as "4.5 fractional"`, field.ErrSyntax)
	}
	c, err := conventions.Parse(name)
	if err != nil {
		return Sets{}, err
	}
	return NewSets(n, c)
}
