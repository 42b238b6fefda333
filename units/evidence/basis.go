package evidence

import (
	"iter"

	"example.org/posology/units/field"
)

// Basis is how a fact is known.
type Basis uint8

// Bases.
const (
	_              Basis = iota // not given
	Published                   // "published": seen in the source's own text, table or abstract
	Secondary                   // "secondary": seen reported elsewhere; Fact.Via says where
	FromMemory                  // "from memory": believed, not found
	CommonPractice              // "common practice": the trade does so; no source
	Computed                    // "computed": worked out from other facts, no better known than the weakest of them
	Design                      // "design": a cautious choice of this module
)

var bases = field.NewVocabulary[Basis]("basis", "", "published", "secondary", "from memory", "common practice", "computed", "design")

// Bases yields every basis.
func Bases() iter.Seq[Basis] { return bases.All() }

// String returns the basis's name, such as "from memory".
func (b Basis) String() string { return bases.Text(b) }

// Check returns nil if b is given.
func (b Basis) Check() error { return bases.Check("", b) }

// MarshalText writes what String returns.
func (b Basis) MarshalText() ([]byte, error) { return bases.Marshal(b) }

// UnmarshalText reads what MarshalText writes.
func (b *Basis) UnmarshalText(text []byte) error { return bases.Unmarshal(text, b) }

// strength ranks bases, the best known first. Computed has no rank of its own.
var strength = [...]int{Computed: 0, Published: 1, Secondary: 2, CommonPractice: 3, FromMemory: 4, Design: 5}

func (b Basis) rank() int {
	if bases.Valid(b) {
		return strength[b]
	}
	return len(strength) // not given: the weakest
}

// Weaker returns the weaker of a and b: published before secondary before
// common practice before from memory before design before a value that is no basis.
func Weaker(a, b Basis) Basis {
	if b.rank() > a.rank() {
		return b
	}
	return a
}
