package guideline

import (
	"iter"

	"example.org/posology/units/field"
)

// Condition is an illness or a state that a recommendation is made for. It is
// how rows are found, not a diagnosis.
type Condition uint8

// Conditions.
const (
	_                     Condition = iota // not given
	HeartDisease                           // "heart disease"
	Osteoporosis                           // "osteoporosis": or at risk of it
	VertebralFracture                      // "vertebral fracture": by osteoporosis
	FallsRisk                              // "falls risk": of falls and fractures
	Frailty                                // "frailty": or the state before it
	Sarcopenia                             // "sarcopenia"
	Osteoarthritis                         // "osteoarthritis": of hip or knee
	InflammatoryArthritis                  // "inflammatory arthritis"
	Diabetes                               // "diabetes"
	DiabetesRisk                           // "diabetes risk": of type 2
	Cancer                                 // "cancer": survivors
	AchillesTendinopathy                   // "Achilles tendinopathy"
)

var conditionTexts = field.NewVocabulary[Condition]("condition", "", "heart disease", "osteoporosis", "vertebral fracture", "falls risk",
	"frailty", "sarcopenia", "osteoarthritis", "inflammatory arthritis", "diabetes", "diabetes risk", "cancer", "Achilles tendinopathy")

// Conditions yields every condition.
func Conditions() iter.Seq[Condition] { return conditionTexts.All() }

// String returns the condition's name, such as "heart disease".
func (c Condition) String() string { return conditionTexts.Text(c) }

// MarshalText writes what String returns.
func (c Condition) MarshalText() ([]byte, error) { return conditionTexts.Marshal(c) }

// UnmarshalText reads what MarshalText writes.
func (c *Condition) UnmarshalText(text []byte) error { return conditionTexts.Unmarshal(text, c) }
