package onerm

import (
	"iter"

	"example.org/posology/dose/onerm/internal/bend"
	"example.org/posology/units/field"
)

// Form is the form of a [Curve]: the load W as a function of the repetitions r
// that can be done with it to failure. M is the 1RM, which here is always the
// load at one repetition, since that is what the word means: published
// equations that promise more than was lifted once (Epley 3.3 %, Mayhew 8.9 %)
// lend a form their shape, not that surplus. The zero value is "not given".
type Form uint8

// Forms. The shape of each is a positive number. The letters in brackets are
// the values with which a form is a published equation, up to its surplus.
const (
	_ Form = bend.Unknown // not given

	// Hyperbola is W = M/(1 + (r − 1)/k), two parameters, shape k. It contains
	// Epley (k = 31, for 1 + r/30 is 31/30 times 1 + (r − 1)/31) and O'Conner
	// (k = 41).
	Hyperbola Form = bend.Hyperbola // "hyperbola"
	// Line is W = M·(1 − (r − 1)/m), two parameters, shape m. It contains
	// Brzycki (m = 36), Lander (m = 36.92) and Adams (m = 49). It ends at
	// r = m + 1, where nothing could be lifted.
	Line Form = bend.Line // "line"
	// PowerLaw is W = M·r^(−p), two parameters, shape p. It contains Lombardi
	// (p = 0.1).
	PowerLaw Form = bend.Power // "power"
	// ExponentialFloor is W = M·(a + (1 − a)·e^(−c·(r − 1))), three parameters,
	// shape c and floor a, the share of the 1RM that W tends to. It contains
	// Mayhew (c = 0.055, a = 0.569) and Wathen (c = 0.075, a = 0.494).
	ExponentialFloor Form = bend.ExponentialFloor // "exponential-floor"
	// HyperbolaFloor is W = M·(a + (1 − a)/(1 + (r − 1)/k)), three parameters,
	// shape k and floor a. No [Formula] has this form; it contains
	// Hyperbola, as a goes to 0.
	HyperbolaFloor Form = bend.HyperbolaFloor // "hyperbola-floor"
)

var formNames = field.NewVocabulary[Form]("form", "", "hyperbola", "line", "power", "exponential-floor", "hyperbola-floor")

// Forms yields every form.
func Forms() iter.Seq[Form] { return formNames.All() }

// String returns the form's code, such as "hyperbola".
func (f Form) String() string { return formNames.Text(f) }

// Check returns nil if f is given.
func (f Form) Check() error { return formNames.Check("", f) }

// MarshalText writes what String returns.
func (f Form) MarshalText() ([]byte, error) { return formNames.Marshal(f) }

// UnmarshalText reads what MarshalText writes.
func (f *Form) UnmarshalText(text []byte) error { return formNames.Unmarshal(text, f) }

// Parameters returns how many parameters the form has, the 1RM among them; 0
// for no form.
func (f Form) Parameters() int {
	switch {
	case !formNames.Valid(f):
		return 0
	case bend.Form(f).HasFloor():
		return 3
	}
	return 2
}
