package exercise

import (
	"iter"

	"example.org/posology/units/field"
)

// Pattern is the kind of movement.
type Pattern uint8

// Patterns, in the order in which a session takes them: large before small.
const (
	_                   Pattern = iota // not given
	Squat                              // "squat"
	Hinge                              // "hinge": bends or straightens the hips most: bridges and hip extensions too
	Lunge                              // "lunge"
	HorizontalPush                     // "horizontal push"
	Row                                // "row"
	VerticalPull                       // "vertical pull"
	OverheadPush                       // "overhead push"
	DownwardPush                       // "downward push": lifts the body by straightening the arms downwards
	ShoulderExtension                  // "shoulder extension"
	KneeExtension                      // "knee extension"
	KneeFlexion                        // "knee flexion"
	HipAbduction                       // "hip abduction"
	HipAdduction                       // "hip adduction"
	HipFlexion                         // "hip flexion"
	HorizontalAbduction                // "horizontal abduction": opens the arms backwards
	ShoulderRaise                      // "shoulder raise"
	ScapularElevation                  // "scapular elevation": shrugs
	ShoulderRotation                   // "shoulder rotation"
	ElbowFlexion                       // "elbow flexion"
	ElbowExtension                     // "elbow extension"
	WristFlexion                       // "wrist flexion"
	WristExtension                     // "wrist extension"
	Calf                               // "calf"
	Dorsiflexion                       // "dorsiflexion": lifts the front of the foot
	Trunk                              // "trunk"
	Carry                              // "carry"
)

var patterns = field.NewVocabulary[Pattern]("pattern", "", "squat", "hinge", "lunge", "horizontal push", "row",
	"vertical pull", "overhead push", "downward push", "shoulder extension", "knee extension", "knee flexion",
	"hip abduction", "hip adduction", "hip flexion", "horizontal abduction", "shoulder raise", "scapular elevation",
	"shoulder rotation", "elbow flexion", "elbow extension", "wrist flexion", "wrist extension", "calf",
	"dorsiflexion", "trunk", "carry")

// Patterns yields every pattern, in the order in which a session takes them.
func Patterns() iter.Seq[Pattern] { return patterns.All() }

// String returns the pattern's name, such as "horizontal push".
func (p Pattern) String() string { return patterns.Text(p) }

// MarshalText writes what String returns.
func (p Pattern) MarshalText() ([]byte, error) { return patterns.Marshal(p) }

// UnmarshalText reads what MarshalText writes.
func (p *Pattern) UnmarshalText(text []byte) error { return patterns.Unmarshal(text, p) }

// Legs reports whether the pattern trains mainly the hips and legs.
func (p Pattern) Legs() bool {
	switch p {
	case Squat, Hinge, Lunge, KneeExtension, KneeFlexion, HipAbduction, HipAdduction, HipFlexion, Calf, Dorsiflexion:
		return true
	}
	return false
}

// Pushes reports whether the pattern pushes away from the body, overhead or down.
func (p Pattern) Pushes() bool {
	return p == HorizontalPush || p == OverheadPush || p == DownwardPush
}

// Pulls reports whether the pattern is a row or a vertical pull.
func (p Pattern) Pulls() bool { return p == Row || p == VerticalPull }
