package guideline

import (
	"fmt"
	"iter"

	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Verdict is the result of one finding of an audit.
type Verdict uint8

// Verdicts.
const (
	_             Verdict = iota // not given
	Met                          // "met"
	Short                        // "short": below the bound
	Over                         // "over": above the bound
	NotStated                    // "not stated": the recommendation says nothing about it
	NotRecorded                  // "not recorded": it does, but what was done is not known
	NotComparable                // "not comparable": both are known, but not counted alike, or not on one scale
	Proposed                     // "proposed": a plan speaks of it and says no dose
)

var verdicts = field.NewVocabulary[Verdict]("verdict", "", "met", "short", "over", "not stated", "not recorded", "not comparable", "proposed")

// Verdicts yields every verdict.
func Verdicts() iter.Seq[Verdict] { return verdicts.All() }

// String returns the verdict's name, such as "not comparable".
func (v Verdict) String() string { return verdicts.Text(v) }

// MarshalText writes what String returns.
func (v Verdict) MarshalText() ([]byte, error) { return verdicts.Marshal(v) }

// UnmarshalText reads what MarshalText writes.
func (v *Verdict) UnmarshalText(text []byte) error { return verdicts.Unmarshal(text, v) }

// An AuditedWeek is what is held against a recommendation: the sets, performed or
// prescribed, and what else was done. What is nil or empty was not recorded.
type AuditedWeek struct {
	Totals  volume.Totals `json:"totals"`
	Minutes []float64     `json:"minutes,omitempty"` // of each session
	// Rest is from the shortest rest between two sets of an exercise to the
	// longest, in seconds, 0 to 3600. Without an upper end no rest is too long.
	Rest           units.Range[float64] `json:"rest,omitzero"`
	BalanceDays    *int                 `json:"balance_days,omitempty"`    // with balance training
	AerobicMinutes *int                 `json:"aerobic_minutes,omitempty"` // at moderate effort or above
	Impacts        *int                 `json:"impacts,omitempty"`         // moderate ones, in the session with the fewest
	// Proposed are what a plan speaks of without a dose: balance_days, aerobic_minutes or
	// impacts. They are never met, and a number that is given goes before.
	Proposed []Field `json:"proposed,omitempty"`
	// Assume is the convention that bounds of weekly sets are read in where
	// their source does not say; findings so read are marked. Not given, they are
	// not comparable.
	Assume volume.Convention `json:"assume,omitzero"`
}

// Ceilings against slips of the keyboard; they are no doses.
const (
	maxSessionMinutes = 24 * 60
	maxWeekMinutes    = 7 * maxSessionMinutes
	maxRest           = 3600
	maxImpacts        = 100_000
)

// Validate returns every bad field of w at once.
func (w AuditedWeek) Validate() error {
	var bad field.Errors
	bad.Add("/totals/week", w.Totals.Week.Check())
	bad.Add("/totals/kind", w.Totals.Kind.Check())
	for i, m := range w.Minutes {
		bad.Refuse(!(m >= 0 && m <= maxSessionMinutes), fmt.Sprintf("/minutes/%d", i), m, "0 to 1440 minutes", field.ErrOutOfRange)
	}
	bad.Add("/rest", checkRest(w.Rest))
	bad.Add("/balance_days", checkCount(w.BalanceDays, 7))
	bad.Add("/aerobic_minutes", checkCount(w.AerobicMinutes, maxWeekMinutes))
	bad.Add("/impacts", checkCount(w.Impacts, maxImpacts))
	for i, f := range w.Proposed {
		bad.Refuse(f != FieldBalanceDays && f != FieldAerobic && f != FieldImpacts, fmt.Sprintf("/proposed/%d", i), f, "balance_days, aerobic_minutes or impacts", field.ErrUnknown)
	}
	if w.Assume != 0 {
		bad.Add("/assume", w.Assume.Check())
	}
	return bad.Err()
}

// checkRest refuses rests without a shortest one, which none could fall short of.
func checkRest(r bound) error {
	least, has := r.Min()
	most, _ := r.Max()
	if r.IsZero() || has && min(least, most) >= 0 && max(least, most) <= maxRest {
		return nil
	}
	return field.Bad(r, "a shortest rest and none outside 0 to 3600 seconds", field.ErrOutOfRange)
}

func checkCount(n *int, most int) error {
	if n != nil && (*n < 0 || *n > most) {
		return field.Bad(*n, fmt.Sprintf("0 to %d", most), field.ErrOutOfRange)
	}
	return nil
}

// An AuditLine holds one thing that was found against one bound.
type AuditLine struct {
	Item    Field   `json:"item"`
	Of      string  `json:"of,omitzero"` // the exercise, muscle, movement or side; empty: the whole week
	Verdict Verdict `json:"verdict"`
	// Found is what the week holds, from the least to the most where it
	// varies; not stated if it was not recorded.
	Found units.Range[float64] `json:"found,omitzero"`
	Bound units.Range[float64] `json:"bound,omitzero"`
	Unit  string               `json:"unit"` // of both, unless Scale says otherwise
	// Scale is the scale of effort that the bound is on, as its source names it.
	Scale string `json:"scale,omitzero"`
	// Convention is that of Found and Bound in weekly sets; where they are not
	// comparable, Sets holds what was found in each convention instead. A
	// muscle has what both its sides did.
	Convention volume.Convention `json:"convention,omitzero"`
	Assumed    bool              `json:"assumed,omitzero"` // the convention is the caller's, not the source's
	Sets       []volume.Sets     `json:"sets,omitempty"`
	Population string            `json:"population"`     // whom the recommendation speaks of
	Basis      evidence.Basis    `json:"basis,omitzero"` // of the bound; none if there is none
	Fact       evidence.FactID   `json:"fact,omitzero"`  // behind the bound, or behind the item as such
}

// A Report holds one week against one recommendation.
type Report struct {
	Week           volume.ISOWeek   `json:"week"`
	Kind           volume.TallyKind `json:"kind"` // performed and prescribed weeks are audited apart
	Recommendation ID               `json:"recommendation"`
	SupersededBy   []ID             `json:"superseded_by,omitempty"`
	Findings       []AuditLine      `json:"findings"` // in order of items
	// Untrained are the muscles without a set that counts. It is for the
	// reader to say which of them matter.
	Untrained []body.Muscle `json:"untrained,omitempty"`
}

// Audit holds the week w against the recommendation r, item by item: what r
// states of a week, what it leaves unsaid, and what lifting alone does not
// give. Items that r bounds per exercise or muscle come once for each, and one
// that varies beyond both ends comes as short and as over. Whether r fits the person is for the caller to say. Errors are those
// of [AuditedWeek.Validate].
func Audit(w AuditedWeek, r Recommendation) (Report, error) {
	if err := w.Validate(); err != nil {
		return Report{}, err
	}
	room := len(lines) + 3*len(w.Totals.Exercises) // half of what may be bounded for each exercise
	a := auditor{week: w, of: r.clone(), found: make([]AuditLine, 0, room)}
	a.sessions()
	a.unlogged()
	a.perExercise()
	a.perMuscle()
	a.beside()
	a.opposed(FieldPushPull, push, pull)
	a.opposed(FieldSquatHinge, squat, hinge)
	a.sides()
	return Report{Week: w.Totals.Week, Kind: w.Totals.Kind, Recommendation: r.ID, SupersededBy: a.of.SupersededBy,
		Findings: a.inOrder(), Untrained: w.Totals.Untrained()}, nil
}
