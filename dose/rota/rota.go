package rota

import (
	"iter"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Class is a group that trains at one time and shares one kit.
type Class struct {
	Clients []Client      `json:"clients"` // 1 to 50
	Kit     equipment.Kit `json:"kit"`

	// RestApart leaves the rests between sets out of the slot's length, for a
	// leader who counts them apart. Else they are taken at the station.
	RestApart bool `json:"rest_apart,omitzero"`
	// Shared lets two take turns with one weight within a slot, one lifting while
	// the other rests, where the slot is long enough for both, with their rests
	// and the time to hand it over. With RestApart nothing is shared.
	Shared bool `json:"shared,omitzero"`
	// Staggered lets clients come later than the first slot: the slots before
	// a client's first exercise are then no waiting. Else all start together.
	Staggered bool `json:"staggered,omitzero"`
}

// A Client is one person of a class with the exercises of the day, in
// their usual order, such as those of a [week.Session].
type Client struct {
	Name  string              `json:"name"`  // or a number; each once; at most 100 bytes
	Items []dose.Prescription `json:"items"` // 1 to 30, each at most an hour
}

// Proof says how much of a rota is known to be the best there is.
type Proof uint8

// Proofs, the strongest last.
const (
	_            Proof = iota // not given
	BestFound                 // "best found": the best that a bounded search met; the bounds say how far off it can be
	LeastWaiting              // "least waiting": no rota has less waiting and, with as little, fewer slots
	BestOfAll                 // "best of all": every other rota was ruled out
)

var proofs = field.NewVocabulary[Proof]("proof", "", "best found", "least waiting", "best of all")

// Proofs yields every proof.
func Proofs() iter.Seq[Proof] { return proofs.All() }

// String returns the proof's name, such as "least waiting".
func (p Proof) String() string { return proofs.Text(p) }

// MarshalText writes what String returns.
func (p Proof) MarshalText() ([]byte, error) { return proofs.Marshal(p) }

// UnmarshalText reads what MarshalText writes.
func (p *Proof) UnmarshalText(text []byte) error { return proofs.Unmarshal(text, p) }

// A Timetable says who does what in which slot, and with which weight.
type Timetable struct {
	Clients []ClientTurns `json:"clients"` // in the order of the class

	Slots   int `json:"slots"`   // of equal length, numbered from 1
	Seconds int `json:"seconds"` // length of one slot, rounded up
	Change  int `json:"change"`  // seconds from one slot to the next
	Minutes int `json:"minutes"` // all slots and changes, without warm-up, rounded up

	Waiting int `json:"waiting"` // slots spent waiting, all clients together
	Turned  int `json:"turned"`  // pairs of exercises done in other than their usual order

	Proof        Proof `json:"proof"`
	WaitingBound int   `json:"waiting_bound"` // no rota has less waiting
	SlotsBound   int   `json:"slots_bound"`   // no rota with as little waiting has fewer slots

	Reasons []evidence.Reason `json:"reasons,omitempty"`
}

// ClientTurns are one client's exercises in the order of the slots.
type ClientTurns struct {
	Name  string `json:"name"`
	Turns []Turn `json:"turns"`
	Waits []int  `json:"waits,omitempty"` // slots spent waiting
}

// A Turn is one exercise in one slot.
type Turn struct {
	Slot     int            `json:"slot"` // from 1
	Item     int            `json:"item"` // index in the client's items
	Exercise exercise.ID    `json:"exercise"`
	Load     equipment.Load `json:"load,omitzero"`   // as put together for this slot; zero without load
	Remade   bool           `json:"remade,omitzero"` // the prescribed mass, put together otherwise than prescribed
	With     string         `json:"with,omitzero"`   // the name of whoever shares the weight in this slot
	// AheadOf lists the exercises that usually come first and here come later.
	AheadOf []exercise.ID `json:"ahead_of,omitempty"`
}

// Schedule gives each client of a class an order of exercises in slots of equal
// length, so that in no slot more is in use than the kit has: dumbbells by
// mass, handles, plates, bars, stacks. A weight is in use for the whole slot, by one
// client or, where Shared, by two.
//
// A slot is as long as the longest exercise of the class by the rules of [week.MinutesOf].
// A weight may be put together otherwise than prescribed, at the same mass,
// where that frees a clash.
//
// The best rota has, in this order of importance:
//
//  1. the fewest slots spent waiting, summed over clients, before each one's
//     last exercise; with Staggered only those after the first
//  2. the fewest slots in all
//  3. the fewest pairs of exercises that a client does in other than the usual
//     order
//  4. read slot by slot, clients by the order of their names (as bytes), the
//     earlier exercise of each, waiting last
//
// Small classes are searched through ([BestOfAll]). For others a bounded search
// returns the best that it met: often its waiting and slots reach what must be
// at least ([LeastWaiting]), else the bounds stand in the result ([BestFound]).
// It is never worse than one client after the other. The result does not
// depend on the order in which the clients are given.
//
// The weights of later steps up while a load is looked for are not kept free,
// and plates are changed in the time from one slot to the next.
//
// Bad fields come back all at once as [field.Errors]: no clients, a name
// that is missing or given twice, a session without items, a length that cannot
// be worked out; a load that the kit does not make is a [field.ErrConflict].
func Schedule(c Class) (Timetable, error) {
	p, err := newRotaProblem(c)
	if err != nil {
		return Timetable{}, err
	}
	return p.timetable(p.solve(nil)), nil
}
