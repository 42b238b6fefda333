package equipment

// Limits that a table and a list of ways keep.
const (
	MaxLoads = maxLoads
	MaxWays  = maxWays
)

// Candidates that Advise takes when it is given none.
var (
	InBetween = inBetween
	Reaching  = reaching
)

// Plates is the count that ways of one load are compared by.
func (l Load) Plates() int { return l.plates() }

// Len is the number of loads.
func (t *Table) Len() int { return t.size() }

// In tells whether s is a stall with k.
func (s Stall) In(k Kit) (bool, error) {
	left, err := stalled(k, []Stall{s})
	return err == nil && left[0], err
}
