package screening

import (
	"errors"
	"fmt"
	"iter"
	"log/slog"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Route says where the person should be sent, if anywhere. The values rise in
// urgency; the zero value means that nobody was screened.
type Route uint8

// Routes, in rising order of urgency.
const (
	_           Route = iota // not screened
	NoRoute                  // "none": no caution was found in what was answered
	Tell                     // "tell": let the doctor know; nothing waits for it
	PhysioLooks              // "physiotherapist looks": the physiotherapist looks at it at the next visit; Meanwhile goes on until then
	AskFirst                 // "ask first": ask before training goes beyond Meanwhile
	SameDay                  // "same day": to be seen by a clinician today
	Emergency                // "emergency": emergency services
)

var routes = field.NewVocabulary[Route]("route", "", "none", "tell", "physiotherapist looks", "ask first", "same day", "emergency")

// Routes yields every route.
func Routes() iter.Seq[Route] { return routes.All() }

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
	_                Meanwhile = iota // not screened
	WithinLimits                      // "within limits": training within Limits
	LightSupervised                   // "light and supervised": light loads, with somebody qualified beside the person
	UnloadedPractice                  // "unloaded practice": movements without weights
	Nothing                           // "nothing": no exercise
)

var meanwhiles = field.NewVocabulary[Meanwhile]("meanwhile", "", "within limits", "light and supervised", "unloaded practice", "nothing")

// EveryMeanwhile yields everything that may go on meanwhile.
func EveryMeanwhile() iter.Seq[Meanwhile] { return meanwhiles.All() }

// String returns its name, such as "light and supervised".
func (m Meanwhile) String() string { return meanwhiles.Text(m) }

// MarshalText writes what String returns.
func (m Meanwhile) MarshalText() ([]byte, error) { return meanwhiles.Marshal(m) }

// UnmarshalText reads what MarshalText writes.
func (m *Meanwhile) UnmarshalText(text []byte) error { return meanwhiles.Unmarshal(text, m) }

// Outcome is the answer to "may this person start, and with which limits", and
// whose it is: every dose takes person, setting and days from it.
// It never says that somebody may train without risk: NoRoute means that no
// caution was found in what was answered. The zero value means that nobody was
// screened, and no dose follows from it; it comes from [Assess], or for analyses
// from [Waived]. A caller may tighten it. What is loosened in it without its
// findings binds as before: see [Outcome.Tightest].
//
// [field.Decode] reads a stored one strictly; [encoding/json] passes over names that it
// does not know and takes the second of two.
type Outcome struct {
	Key       body.Key    `json:"key,omitzero"`       // tells whose it is; empty in a file of one person
	Who       body.Person `json:"who,omitzero"`       // as screened
	Setting   Setting     `json:"setting,omitzero"`   // that was screened for, of the day's check after one; alone where none was given
	Day       units.Day   `json:"day,omitzero"`       // of the screening
	Route     Route       `json:"route,omitzero"`     // where to send the person
	Meanwhile Meanwhile   `json:"meanwhile,omitzero"` // what may go on
	Limits    Limits      `json:"limits,omitzero"`    // what binds every dose
	Findings  []Finding   `json:"findings,omitempty"` // what was found, the gravest first
	Missing   []Question  `json:"missing,omitempty"`  // what was to be asked and was not answered
	Rules     Rules       `json:"rules,omitzero"`     // each published rule's own answer
	Plan      DayPlan     `json:"plan,omitzero"`      // what the day's check makes of the session; zero before one
	Ended     []Code      `json:"ended,omitempty"`    // what happened since the assessment; it ends clearances, estimates and the plan
	EachDay   []Code      `json:"each_day,omitempty"` // readings that every day's [Check] must bring
	// TestsFrom is the first day whose tests of strength say something: what was
	// tested before an event that ends estimates does not. 0: all do.
	TestsFrom  units.Day   `json:"tests_from,omitzero"`
	ReviewBy   units.Day   `json:"review_by,omitzero"`   // last day on which training may rest on it: 12 months on, or sooner with a clearance that counted
	Today      units.Day   `json:"today,omitzero"`       // of the day's check that tightened it, if any
	Clearances []Clearance `json:"clearances,omitempty"` // in force on the day of the screening, with a name, a day and a scope
	// Frees is the one answer or paper that would free most; zero where nobody is held.
	Frees  WayOut     `json:"frees,omitzero"`
	Policy JoinPolicy `json:"policy,omitzero"` // by which the rules were joined, with the edition
	Waived string     `json:"waived,omitzero"` // why an analysis goes without screening; never for a person
}

// fromAssess is where an outcome comes from that lacks nothing.
const fromAssess = "the outcome of Assess, or of Waived"

// Validate returns every field that an outcome cannot do without and o lacks, each
// a [field.ErrMissing] or a [field.ErrOutOfRange]: age, setting, day, review, route
// and what may go on; and every limit outside its range, its own and those of findings.
// The training status may be unknown; a dose asks for it.
func (o Outcome) Validate() error {
	var bad field.Errors
	who := o.Who
	who.Training = max(who.Training, body.Novice)
	for _, f := range [...]struct {
		path string
		err  error
	}{
		{"/who", who.Validate()}, {"/setting", o.Setting.check()}, {"/day", o.Day.Check()}, {"/review_by", o.ReviewBy.Check()},
		{"", routes.Check("/route", o.Route)}, {"", meanwhiles.Check("/meanwhile", o.Meanwhile)},
	} {
		bad.Add(f.path, f.err)
	}
	for _, f := range bad {
		if errors.Is(f, field.ErrMissing) {
			f.Allowed = fromAssess
		}
	}
	bad.Add("/limits", o.Limits.check())
	for i := range o.Findings {
		if err := o.Findings[i].Limits.check(); err != nil {
			bad.Add(fmt.Sprintf("/findings/%d/limits", i), err)
		}
	}
	return bad.Err()
}

// Screened reports whether o came from an assessment or a waiver, and lacks nothing.
func (o Outcome) Screened() bool { return o.Validate() == nil }

// Tightest returns o with the worst of its own route, meanwhile and limits and of
// those of every finding, and with a review no later than 12 months after its day.
// An outcome of [Assess] or [Today] comes back as it is, and a tightened one stays
// so: what a caller takes out of the sum alone changes nothing. Findings, days,
// person and setting are taken as they are. An outcome with a limit outside its range
// keeps its limits: joined, the bad one could be covered, and is to be refused.
func (o Outcome) Tightest() Outcome {
	own := o.Limits
	for i := range o.Findings {
		f := &o.Findings[i]
		o.Route, o.Meanwhile = max(o.Route, f.Route), max(o.Meanwhile, f.Meanwhile)
		o.Limits = o.Limits.Join(f.Limits)
	}
	if own.check() != nil {
		o.Limits = own
	}
	if o.Day.Check() == nil && !o.withinYear() {
		o.ReviewBy = min(o.ReviewBy, renewal(o.Day))
	}
	return o
}

// withinYear reports a review that no renewal can lie before, without working it out:
// twelve months have 365 days or more, where the calendar has as many left.
func (o *Outcome) withinYear() bool {
	const year = 365
	return o.ReviewBy <= o.Day+year && (o.Day+year+1).Check() == nil
}

// A Finding is one thing that was found, with what follows from it alone.
type Finding struct {
	// Code is the entry, question or rule that it came from: a code of [Codes] or
	// [Prompts], a [Branch], or one of the findings that join or count others, such
	// as "flags-together". Empty in what was stored before there were codes.
	Code Code `json:"code,omitzero"`
	// Known says that it is so; false where it is only not known and counts as if it were.
	Known bool `json:"known,omitzero"`
	// Variant says in which state of it, where that makes another sentence.
	Variant Variant `json:"variant,omitzero"`

	Reason    evidence.Reason `json:"reason"`
	Route     Route           `json:"route"`
	Meanwhile Meanwhile       `json:"meanwhile"`
	Limits    Limits          `json:"limits,omitzero"`
	// Open says that an answer or a second reading may still lift the finding.
	Open bool `json:"open,omitzero"`
	// Exit is the way out: who can lift what is held, and with what.
	Exit WayOut `json:"exit,omitzero"`
}

// Branch returns the branch of the preparticipation rule that f states, and
// zero for every other finding.
func (f Finding) Branch() Branch {
	for b := N1; b <= A3; b++ {
		if string(f.Code) == b.String() {
			return b
		}
	}
	return 0
}

// Variant is the state of what a finding is of, where its words depend on it.
type Variant uint8

// Variants.
const (
	_             Variant = iota // as it stands
	FirstReading                 // "first reading": read once, and to be read again
	LongAgo                      // "long ago": its day lies far enough back
	Agreed                       // "agreed": with a clearance in force that names it
	LookedAt                     // "looked at": known, looked at and unchanged, as the finer questions say
	LookedAtLater                // "looked at, long ago": both
	LookedAtPast                 // "looked at, long past": both
	LongPast                     // "long past": its day lies so far back that little is left of it
	ByNewerList                  // "by the newer list": an older list would hold it, see [JoinPolicy]
	ItsPlace                     // "its place": only its place in the body is held
	ForVigorous                  // "for vigorous effort": for the vigorous effort that is wanted
	Lesser                       // "lesser": with nothing beside that makes it grave
)

var variants = field.NewVocabulary[Variant]("variant", "", "first reading", "long ago", "agreed", "looked at", "looked at, long ago", "looked at, long past", "long past", "by the newer list", "its place", "for vigorous effort", "lesser")

// Variants yields every variant.
func Variants() iter.Seq[Variant] { return variants.All() }

// String returns the variant's name, such as "long ago", and "" for what it is as it stands.
func (v Variant) String() string { return variants.Text(v) }

// MarshalText writes what String returns.
func (v Variant) MarshalText() ([]byte, error) { return variants.Marshal(v) }

// UnmarshalText reads what MarshalText writes.
func (v *Variant) UnmarshalText(text []byte) error { return variants.Unmarshal(text, v) }

// Waived returns an outcome without screening, for analyses of data: of somebody
// who trains in a setting, from day on for 12 months. It must not be used for a
// person; the reason is kept in the outcome, and every dose and decision repeats
// it. Without a reason there is only the zero value.
func Waived(reason string, who body.Person, setting Setting, day units.Day) Outcome {
	if reason == "" {
		return Outcome{}
	}
	return Outcome{Who: who, Setting: setting, Day: day, ReviewBy: renewal(day), Route: NoRoute, Meanwhile: WithinLimits, Waived: reason}
}

// LogValue gives the outcome in a line of a log: route, what may go on, the days,
// and how much was found or is missing. Whose it is and what was found are left
// out: that belongs in the record.
func (o Outcome) LogValue() slog.Value {
	list := []slog.Attr{
		slog.String("route", o.Route.String()), slog.String("meanwhile", o.Meanwhile.String()), slog.String("day", o.Day.String()),
		slog.String("review_by", o.ReviewBy.String()), slog.Int("findings", len(o.Findings)), slog.Int("missing", len(o.Missing)),
	}
	if o.Today != 0 {
		list = append(list, slog.String("today", o.Today.String()), slog.String("plan", o.Plan.String()))
	}
	if o.Waived != "" {
		list = append(list, slog.Bool("waived", true))
	}
	return slog.GroupValue(list...)
}

// LogValue gives the day, and how much was brought beside answers, in a line of a log.
// Whose they are and the answers are left out.
func (p Profile) LogValue() slog.Value {
	return slog.GroupValue(slog.String("day", p.Day.String()), slog.Int("events", len(p.Events)),
		slog.Int("clearances", len(p.Clearances)), slog.Int("restrictions", len(p.Restrictions)))
}

// LogValue gives the day in a line of a log, without the answers and readings.
func (c Check) LogValue() slog.Value {
	return slog.GroupValue(slog.String("day", c.Day.String()), slog.Int("events", len(c.Events)))
}
