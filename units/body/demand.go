package body

import (
	"encoding/json"
	"iter"
	"math/bits"
	"slices"
	"strings"

	"example.org/posology/units/field"
)

// Demand is something that an exercise asks of the body and that a condition
// may rule out.
type Demand uint8

// Demands.
const (
	_                 Demand = iota // not given
	SpinalCompression               // "spinal compression": load carried through the spine
	LoadedSpinalFlex                // "loaded spinal flexion": bending the spine forward under load or to the end of its range
	SpinalTwist                     // "spinal twist": turning the spine under load or to the end of its range
	FloorTransfer                   // "floor transfer": getting down to the floor and up again
	PickUpFromFloor                 // "pick up from floor": lifting the weight from the floor
	Overhead                        // "overhead": hands or weight above the shoulders
	OverFace                        // "over the face": weight above the face
	LyingSupine                     // "lying supine": lying on the back
	HeadDown                        // "head down": head below the heart
	FreeStanding                    // "free standing": standing without a hand on a support
	SingleLegStance                 // "single-leg stance": weight on one leg
	DeepKneeBend                    // "deep knee bend": knees bent to a right angle or more under load
	ShoulderResisted                // "resisted shoulder": resisted work of the shoulder
	ElbowResisted                   // "resisted elbow": resisted work of the elbow
	WristResisted                   // "resisted wrist": loaded grip or wrist
	HipResisted                     // "resisted hip": resisted work of the hip
	KneeResisted                    // "resisted knee": resisted work of the knee
	AnkleResisted                   // "resisted ankle": resisted work of the ankle
	FirmGrip                        // "firm grip": holding on hard
	Impact                          // "impact": landing or stamping
	AbdominalPressure               // "abdominal pressure": straining of the abdomen
	FastMovement                    // "fast movement": moved as fast as possible
)

var demands = field.NewVocabulary[Demand]("demand", "",
	"spinal compression", "loaded spinal flexion", "spinal twist", "floor transfer", "pick up from floor",
	"overhead", "over the face", "lying supine", "head down", "free standing", "single-leg stance",
	"deep knee bend", "resisted shoulder", "resisted elbow", "resisted wrist", "resisted hip",
	"resisted knee", "resisted ankle", "firm grip", "impact", "abdominal pressure", "fast movement")

// EveryDemand yields every demand.
func EveryDemand() iter.Seq[Demand] { return demands.All() }

// String returns the demand's name, such as "loaded spinal flexion".
func (d Demand) String() string { return demands.Text(d) }

// MarshalText writes what String returns.
func (d Demand) MarshalText() ([]byte, error) { return demands.Marshal(d) }

// UnmarshalText reads what MarshalText writes.
func (d *Demand) UnmarshalText(text []byte) error { return demands.Unmarshal(text, d) }

// Demands is a set of demands. The zero value is the empty set. Its JSON is a
// list of names.
type Demands uint64

// DemandSet returns the set of ds; a value that is no demand is left out.
func DemandSet(ds ...Demand) Demands {
	var s Demands
	for _, d := range ds {
		if demands.Valid(d) {
			s |= 1 << d
		}
	}
	return s
}

// Has reports whether d is in s.
func (s Demands) Has(d Demand) bool { return demands.Valid(d) && s&(1<<d) != 0 }

// Union returns what is in s or t.
func (s Demands) Union(t Demands) Demands { return s | t }

// Both returns what is in s and in t.
func (s Demands) Both(t Demands) Demands { return s & t }

// count returns how many demands are in s.
func (s Demands) count() int { return bits.OnesCount64(uint64(s)) }

// All yields the demands in s, in their order.
func (s Demands) All() iter.Seq[Demand] {
	return func(yield func(Demand) bool) {
		for d := range demands.All() {
			if s.Has(d) && !yield(d) {
				return
			}
		}
	}
}

// String joins the names with commas; the empty set gives "none".
func (s Demands) String() string {
	if s == 0 {
		return "none"
	}
	names := make([]string, 0, s.count())
	for d := range s.All() {
		names = append(names, d.String())
	}
	return strings.Join(names, ", ")
}

// MarshalJSON writes the names in their order.
func (s Demands) MarshalJSON() ([]byte, error) {
	return json.Marshal(s.list())
}

func (s Demands) list() []Demand { return slices.AppendSeq(make([]Demand, 0, s.count()), s.All()) }

// UnmarshalJSON reads a list of names; a name that stands twice is a
// [field.ErrDuplicate].
func (s *Demands) UnmarshalJSON(data []byte) error {
	var list []Demand
	if err := field.Decode(data, &list, field.Strict); err != nil {
		return err
	}
	set := DemandSet(list...)
	if set.count() != len(list) {
		return field.Bad(string(data), "each demand once, by name", field.ErrDuplicate)
	}
	return field.Assign(s, set, nil)
}
