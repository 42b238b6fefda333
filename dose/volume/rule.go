package volume

import (
	"iter"
	"math"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// TallyKind says what a tally holds: sets that were done, or sets that were asked for.
type TallyKind uint8

// Kinds.
const (
	_          TallyKind = iota // not given
	Performed                   // "performed"
	Prescribed                  // "prescribed"
)

var kinds = field.NewVocabulary[TallyKind]("kind", "", "performed", "prescribed")

// TallyKinds yields every kind of tally.
func TallyKinds() iter.Seq[TallyKind] { return kinds.All() }

// String returns "performed" or "prescribed", and "" for not given.
func (k TallyKind) String() string { return kinds.Text(k) }

// Check returns nil if k is given.
func (k TallyKind) Check() error { return kinds.Check("", k) }

// MarshalText writes what String returns.
func (k TallyKind) MarshalText() ([]byte, error) { return kinds.Marshal(k) }

// UnmarshalText reads what MarshalText writes.
func (k *TallyKind) UnmarshalText(text []byte) error { return kinds.Unmarshal(text, k) }

// A Rule says which sets count, by their reserve. The zero Rule counts every
// set. Use another only where the source of the bound at hand defines it.
type Rule struct {
	Source  string                 `json:"source,omitzero"`  // who defines it
	Reserve units.Range[units.RIR] `json:"reserve,omitzero"` // repetitions in reserve of a set that counts
}

// Validate asks for a source wherever a reserve is asked for, and the other
// way round.
func (r Rule) Validate() error {
	var bad field.Errors
	bad.Refuse(!r.Reserve.IsZero() && r.Source == "", "/source", nil, "the source that defines which sets count", field.ErrMissing)
	bad.Refuse(r.Reserve.IsZero() && r.Source != "", "/reserve", nil, "the reserve of a set that counts", field.ErrMissing)
	return bad.Err()
}

// Counts reports whether a set of effort e counts. One whose reserve is not known counts
// only where the rule asks for none.
func (r Rule) Counts(e units.Effort) bool {
	low, high, known := reserve(e)
	return r.judge(low, high, known) == counts
}

// A verdict is what a rule says of one set.
type verdict uint8

const (
	counts verdict = iota
	leftOut
	noReserve // the rule asks for a reserve, and the log has none
)

// judge takes the ends of the set's reserve. A rating that stands for two
// counts must lie within the rule with both.
func (r Rule) judge(low, high units.RIR, known bool) verdict {
	switch {
	case r.Reserve.IsZero():
		return counts
	case !known:
		return noReserve
	case r.Reserve.Contains(low) && r.Reserve.Contains(high):
		return counts
	}
	return leftOut
}

// lowestRating is the lowest rating on the scale of RPE that stands for a reserve.
var lowestRating = func() float64 {
	least := math.Inf(1)
	for rating := range units.Ratings() {
		least = min(least, rating)
	}
	return least
}()

// reserve returns the ends of an effort's repetitions in reserve, if it has
// any. It asks first, since an error would be made on the heap.
func reserve(e units.Effort) (low, high units.RIR, known bool) {
	if e.Scale() != units.ScaleRIR && (e.Scale() != units.ScaleRPE || e.Number() < lowestRating) {
		return 0, 0, false
	}
	r, err := e.RIR()
	low, _ = r.Min()
	high, _ = r.Max()
	return low, high, err == nil
}
