package protocol

import (
	"iter"

	"example.org/posology/units/field"
)

// Scheme is a published scheme. The zero value is "not given".
type Scheme uint8

// Schemes, in the order of their years.
const (
	_                   Scheme = iota // not given
	DeLorme                           // "delorme": DeLorme & Watkins 1948: rising to the 10RM
	OxfordThreeSet                    // "oxford-three-set": falling from the 10RM, as usually taught
	OxfordTenSetPound                 // "oxford-ten-set-pound": Zinovieff 1951 with a step of 1 lb a set
	OxfordTenSetTenth                 // "oxford-ten-set-tenth": Zinovieff 1951 with a step of a tenth of the 10RM a set
	MacQueenHypertrophy               // "macqueen-hypertrophy": MacQueen 1954 for bulk: each set at the 10RM
	MacQueenPower                     // "macqueen-power": MacQueen 1954 for power: load rises as repetitions fall
	DAPRE                             // "dapre": Knight 1979, 1985: daily adjustable
	APRE10                            // "apre-10": its later form on the 10RM (Mann 2010)
	APRE6                             // "apre-6": its later form on the 6RM
	APRE3                             // "apre-3": its later form on the 3RM
)

var schemes = field.NewVocabulary[Scheme]("scheme", "", "delorme", "oxford-three-set", "oxford-ten-set-pound", "oxford-ten-set-tenth",
	"macqueen-hypertrophy", "macqueen-power", "dapre", "apre-10", "apre-6", "apre-3")

// Schemes yields every scheme.
func Schemes() iter.Seq[Scheme] { return schemes.All() }

// String returns the scheme's code, such as "oxford-three-set".
func (s Scheme) String() string { return schemes.Text(s) }

// check returns nil if s is given.
func (s Scheme) check() error { return schemes.Check("", s) }

// MarshalText writes what String returns.
func (s Scheme) MarshalText() ([]byte, error) { return schemes.Marshal(s) }

// UnmarshalText reads what MarshalText writes.
func (s *Scheme) UnmarshalText(text []byte) error { return schemes.Unmarshal(text, s) }

// Base returns what the masses of the scheme are shares of, as a repetition
// maximum: 10 for the 10RM; 6 for the daily adjustable scheme, whose working
// weight starts there. It is 0 for no scheme.
func (s Scheme) Base() int { return s.layout().rm }

// layout returns the scheme's sets; the zero one for no scheme.
func (s Scheme) layout() layout {
	if schemes.Valid(s) {
		return layouts[s]
	}
	return layout{}
}
