package exercise

import (
	"iter"
	"slices"
	"strconv"

	"example.org/posology/units/field"
)

// Thing is what has to stand in the room for an exercise, beside what is held. A wall,
// a floor and a mat are taken as there.
type Thing uint8

// Things.
const (
	_         Thing = iota // not given
	Chair                  // "chair": firm, and cannot slide
	ArmChair               // "chair with arms"
	Worktop                // "counter": or a table or a rail, firm, to hold on to or lean on
	LowStep                // "step": low and firm, for the whole foot
	Staircase              // "stairs": with a rail
	Bench                  // "bench": firm, to lie on or put a foot on
	FirmBed                // "firm bed": or a treatment table
	FixedBar               // "fixed bar": to hang from
	Anchor                 // "anchor": where a band is fixed, and which does not give way
)

var things = field.NewVocabulary[Thing]("thing", "", "chair", "chair with arms", "counter", "step", "stairs", "bench",
	"firm bed", "fixed bar", "anchor")

// Things yields every thing.
func Things() iter.Seq[Thing] { return things.All() }

// String returns the thing's name, such as "chair with arms".
func (t Thing) String() string { return things.Text(t) }

// MarshalText writes what String returns.
func (t Thing) MarshalText() ([]byte, error) { return things.Marshal(t) }

// UnmarshalText reads what MarshalText writes.
func (t *Thing) UnmarshalText(text []byte) error { return things.Unmarshal(text, t) }

// serves lists what a thing serves as beside itself.
var serves = map[Thing][]Thing{
	ArmChair:  {Chair},
	Staircase: {LowStep, Worktop},
}

// Lacks returns which of its needs nothing of what is there serves, in order: a thing
// serves as itself, a chair with arms as a chair, stairs as a step and, by their rail,
// as a counter (exercise.things-serve).
func (e Exercise) Lacks(there ...Thing) []Thing {
	return slices.DeleteFunc(slices.Clone(e.Needs), func(want Thing) bool {
		return slices.ContainsFunc(there, func(t Thing) bool { return t == want || slices.Contains(serves[t], want) })
	})
}

func (e *Exercise) checkNeeds() error {
	var bad field.Errors
	for i, t := range e.Needs {
		if err := things.Check("", t); err != nil {
			bad.Add("/"+strconv.Itoa(i), err)
		}
		if slices.Contains(e.Needs[:i], t) {
			bad.Add("/"+strconv.Itoa(i), field.Bad(t, "each thing once", field.ErrDuplicate))
		}
	}
	return bad.Err()
}
