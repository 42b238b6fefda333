package body

import (
	"iter"

	"example.org/posology/units/field"
)

// Side is the side of the body that works.
type Side uint8

// Sides.
const (
	_     Side = iota // not given
	Left              // "left"
	Right             // "right"
	Both              // "both": both at once
)

var sides = field.NewVocabulary[Side]("side", "", "left", "right", "both")

// Sides yields every side.
func Sides() iter.Seq[Side] { return sides.All() }

// String returns "left", "right" or "both", and "" for not given.
func (s Side) String() string { return sides.Text(s) }

// Check returns nil if s is given.
func (s Side) Check() error { return sides.Check("", s) }

// MarshalText writes what String returns.
func (s Side) MarshalText() ([]byte, error) { return sides.Marshal(s) }

// UnmarshalText reads what MarshalText writes.
func (s *Side) UnmarshalText(text []byte) error { return sides.Unmarshal(text, s) }

// Region is a part of the body that a restriction, a pain or an operation is in.
type Region uint8

// Regions.
const (
	_         Region = iota // not given
	WholeBody               // "whole body"
	Neck                    // "neck"
	Shoulder                // "shoulder"
	Elbow                   // "elbow"
	WristHand               // "wrist and hand"
	UpperBack               // "upper back"
	LowerBack               // "lower back"
	Abdomen                 // "abdomen": with the pelvic floor
	Hip                     // "hip"
	Knee                    // "knee"
	AnkleFoot               // "ankle and foot"
)

var regions = field.NewVocabulary[Region]("region", "", "whole body", "neck", "shoulder", "elbow", "wrist and hand",
	"upper back", "lower back", "abdomen", "hip", "knee", "ankle and foot")

// Regions yields every region.
func Regions() iter.Seq[Region] { return regions.All() }

// String returns the region's name, and "" for not given.
func (r Region) String() string { return regions.Text(r) }

// Check returns nil if r is given.
func (r Region) Check() error { return regions.Check("", r) }

// MarshalText writes what String returns.
func (r Region) MarshalText() ([]byte, error) { return regions.Marshal(r) }

// UnmarshalText reads what MarshalText writes.
func (r *Region) UnmarshalText(text []byte) error { return regions.Unmarshal(text, r) }

// Muscle is a muscle or muscle group that training volume is counted for.
type Muscle uint8

// Muscles, from the head down.
const (
	_                         Muscle = iota // not given
	LevatorScapulae                         // "levator_scapulae"
	TrapeziusUpper                          // "trapezius_upper"
	TrapeziusMiddleLower                    // "trapezius_middle_lower"
	Rhomboids                               // "rhomboids"
	RotatorCuff                             // "rotator_cuff"
	AnteriorDeltoid                         // "anterior_deltoid"
	LateralDeltoid                          // "lateral_deltoid"
	PosteriorDeltoid                        // "posterior_deltoid"
	PectoralisMajor                         // "pectoralis_major"
	SerratusAnterior                        // "serratus_anterior"
	LatissimusDorsi                         // "latissimus_dorsi"
	BicepsBrachii                           // "biceps_brachii"
	BrachialisBrachioradialis               // "brachialis_brachioradialis"
	TricepsBrachii                          // "triceps_brachii"
	WristFlexors                            // "wrist_flexors"
	WristExtensors                          // "wrist_extensors"
	ForearmGrip                             // "forearm_grip"
	RectusAbdominis                         // "rectus_abdominis"
	Obliques                                // "obliques"
	QuadratusLumborum                       // "quadratus_lumborum"
	ErectorSpinae                           // "erector_spinae"
	HipFlexors                              // "hip_flexors"
	GluteusMaximus                          // "gluteus_maximus"
	GluteusMedius                           // "gluteus_medius"
	TensorFasciaeLatae                      // "tensor_fasciae_latae"
	DeepHipRotators                         // "deep_hip_rotators"
	Adductors                               // "adductors"
	Quadriceps                              // "quadriceps"
	Hamstrings                              // "hamstrings"
	Gastrocnemius                           // "gastrocnemius"
	Soleus                                  // "soleus"
	TibialisAnterior                        // "tibialis_anterior"
	TibialisPosterior                       // "tibialis_posterior"
	ToeExtensors                            // "toe_extensors"
)

var muscles = field.NewVocabulary[Muscle]("muscle", "",
	"levator_scapulae", "trapezius_upper", "trapezius_middle_lower", "rhomboids", "rotator_cuff",
	"anterior_deltoid", "lateral_deltoid", "posterior_deltoid", "pectoralis_major", "serratus_anterior",
	"latissimus_dorsi", "biceps_brachii", "brachialis_brachioradialis", "triceps_brachii",
	"wrist_flexors", "wrist_extensors", "forearm_grip", "rectus_abdominis", "obliques", "quadratus_lumborum",
	"erector_spinae", "hip_flexors", "gluteus_maximus", "gluteus_medius", "tensor_fasciae_latae",
	"deep_hip_rotators", "adductors", "quadriceps", "hamstrings", "gastrocnemius", "soleus",
	"tibialis_anterior", "tibialis_posterior", "toe_extensors")

// Muscles yields every muscle, from the head down.
func Muscles() iter.Seq[Muscle] { return muscles.All() }

// String returns the muscle's code, such as "gluteus_maximus".
func (m Muscle) String() string { return muscles.Text(m) }

// MarshalText writes what String returns.
func (m Muscle) MarshalText() ([]byte, error) { return muscles.Marshal(m) }

// UnmarshalText reads what MarshalText writes.
func (m *Muscle) UnmarshalText(text []byte) error { return muscles.Unmarshal(text, m) }

var resisted = [...]Demand{
	WholeBody: 0, Neck: SpinalCompression, Shoulder: ShoulderResisted, Elbow: ElbowResisted, WristHand: WristResisted,
	UpperBack: SpinalCompression, LowerBack: SpinalCompression, Abdomen: AbdominalPressure,
	Hip: HipResisted, Knee: KneeResisted, AnkleFoot: AnkleResisted,
}

// Resisted returns the demand that loaded work of the region makes, and
// whether there is one: [WholeBody] has none of its own.
func (r Region) Resisted() (Demand, bool) {
	if !regions.Valid(r) {
		return 0, false
	}
	return resisted[r], resisted[r] != 0
}
