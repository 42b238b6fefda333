package screening

import (
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Route says where the person should be sent, if anywhere. The values rise in
// urgency; the zero value means that nobody was screened.
type Route uint8

// Routes, in rising order of urgency.
const (
	RouteUnknown Route = iota // not screened
	NoRoute                   // no caution was found in what was answered
	Tell                      // let the doctor know; nothing waits for it
	AskFirst                  // ask before training goes beyond Meanwhile
	SameDay                   // to be seen by a clinician today
	Emergency                 // emergency services
)

var routes = field.NewVocabulary[Route]("route", "", "none", "tell", "ask first", "same day", "emergency")

// String returns the route's name, such as "ask first".
func (r Route) String() string { return routes.Text(r) }

// MarshalText writes what String returns.
func (r Route) MarshalText() ([]byte, error) { return routes.Marshal(r) }

// UnmarshalText reads what MarshalText writes.
func (r *Route) UnmarshalText(text []byte) error { return routes.Unmarshal(text, r) }

// Meanwhile says what training may go on until the route has been followed.
// The values rise in severity; the zero value means that nobody was screened.
type Meanwhile uint8

// What may go on, in rising order of severity.
const (
	MeanwhileUnknown Meanwhile = iota // not screened
	WithinLimits                      // training within Limits
	LightSupervised                   // light loads, with somebody qualified beside the person
	UnloadedPractice                  // movements without weights
	Nothing                           // no exercise
)

var meanwhiles = field.NewVocabulary[Meanwhile]("meanwhile", "", "within limits", "light and supervised", "unloaded practice", "nothing")

// String returns its name, such as "light and supervised".
func (m Meanwhile) String() string { return meanwhiles.Text(m) }

// MarshalText writes what String returns.
func (m Meanwhile) MarshalText() ([]byte, error) { return meanwhiles.Marshal(m) }

// UnmarshalText reads what MarshalText writes.
func (m *Meanwhile) UnmarshalText(text []byte) error { return meanwhiles.Unmarshal(text, m) }

// Outcome is the answer to "may this person start, and with which limits".
// It never says that somebody may train without risk: NoRoute means that no
// caution was found in what was answered. The zero value means that nobody was
// screened, and no dose follows from it.
type Outcome struct {
	Day       units.Day  `json:"day,omitzero"`       // of the screening
	Route     Route      `json:"route,omitzero"`     // where to send the person
	Meanwhile Meanwhile  `json:"meanwhile,omitzero"` // what may go on
	Limits    Limits     `json:"limits,omitzero"`    // what binds every dose
	Findings  []Finding  `json:"findings,omitempty"` // what was found, the gravest first
	Missing   []Question `json:"missing,omitempty"`  // what was to be asked and was not answered
	Rules     Rules      `json:"rules,omitzero"`     // each published rule's own answer
	Plan      DayPlan    `json:"plan,omitzero"`      // what the day's check makes of the session; zero before one
	Ended     []Code     `json:"ended,omitempty"`    // what happened since the assessment; it ends clearances, estimates and the plan
	EachDay   []Code     `json:"each_day,omitempty"` // readings that every day's [Check] must bring
	// TestsFrom is the first day whose tests of strength say something: what was
	// tested before an event that ends estimates does not. 0: all do.
	TestsFrom  units.Day   `json:"tests_from,omitzero"`
	ReviewBy   units.Day   `json:"review_by,omitzero"`   // last day on which training may rest on it: 12 months on, or sooner with a clearance that counted
	Today      units.Day   `json:"today,omitzero"`       // of the day's check that tightened it, if any
	Clearances []Clearance `json:"clearances,omitempty"` // in force on the day of the screening, with a name, a day and a scope
	Waived     string      `json:"waived,omitzero"`      // why an analysis goes without screening; never for a person
}

// Screened reports whether o came from an assessment or a waiver.
func (o Outcome) Screened() bool { return o.Route != RouteUnknown && o.Meanwhile != MeanwhileUnknown }

// A Finding is one thing that was found, with what follows from it alone.
type Finding struct {
	Reason    evidence.Reason `json:"reason"`
	Route     Route           `json:"route"`
	Meanwhile Meanwhile       `json:"meanwhile"`
	Limits    Limits          `json:"limits,omitzero"`
	// Open says that an answer or a second reading may still lift the finding.
	Open bool `json:"open,omitzero"`
}

// Waived returns an outcome without screening, for analyses of data. It must
// not be used for a person; the reason is kept in the outcome and reported.
func Waived(reason string) Outcome {
	return Outcome{Route: NoRoute, Meanwhile: WithinLimits, Waived: reason}
}
