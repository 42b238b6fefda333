package guideline

import (
	"fmt"
	"iter"
	"slices"
	"strconv"
	"strings"
	"sync"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Field names a field of a [Recommendation] that has a basis of its own, or, the
// last four, what an audit asks beside and no recommendation here states.
type Field uint8

// Fields.
const (
	_                   Field = iota // not given
	FieldPopulation                  // "population"
	FieldAgeMin                      // "age_min"
	FieldDays                        // "days"
	FieldSessionsPerDay              // "sessions_per_day"
	FieldSets                        // "sets"
	FieldWeeklySets                  // "weekly_sets"
	FieldReps                        // "reps"
	FieldRM                          // "rm"
	FieldRMEmphasis                  // "rm_emphasis"
	FieldLoad                        // "load"
	FieldLoadUpper                   // "load_upper"
	FieldLoadLower                   // "load_lower"
	FieldLoadStart                   // "load_start"
	FieldLoadStep                    // "load_step"
	FieldLoadRule                    // "load_rule"
	FieldEffort                      // "effort"
	FieldReserve                     // "reserve"
	FieldRest                        // "rest"
	FieldRestBetween                 // "rest_between"
	FieldRestAssisting               // "rest_assisting"
	FieldRestInSet                   // "rest_in_set"
	FieldRepSeconds                  // "rep_seconds"
	FieldLiftSeconds                 // "lift_seconds"
	FieldLowerSeconds                // "lower_seconds"
	FieldHoursBetween                // "hours_between"
	FieldBalanceDays                 // "balance_days"
	FieldExercises                   // "exercises"
	FieldPerMuscle                   // "per_muscle"
	FieldMinutes                     // "session_minutes"
	FieldImpacts                     // "impacts"
	FieldWeeks                       // "weeks"
	FieldEffects                     // "effects"
	FieldAerobic                     // "aerobic_minutes"
	FieldPushPull                    // "push_and_pull"
	FieldSquatHinge                  // "squat_and_hinge"
	FieldSides                       // "left_and_right"
)

var fields = field.NewVocabulary[Field]("field", "", "population", "age_min", "days", "sessions_per_day", "sets", "weekly_sets", "reps", "rm", "rm_emphasis",
	"load", "load_upper", "load_lower", "load_start", "load_step", "load_rule", "effort", "reserve", "rest", "rest_between", "rest_assisting",
	"rest_in_set", "rep_seconds", "lift_seconds", "lower_seconds", "hours_between", "balance_days", "exercises",
	"per_muscle", "session_minutes", "impacts", "weeks", "effects", "aerobic_minutes", "push_and_pull", "squat_and_hinge", "left_and_right")

// Fields yields every field, in the order of [Recommendation], then what only an audit asks.
func Fields() iter.Seq[Field] { return fields.All() }

// String returns the field's name in JSON, such as "load_start".
func (f Field) String() string { return fields.Text(f) }

// MarshalText writes what String returns.
func (f Field) MarshalText() ([]byte, error) { return fields.Marshal(f) }

// UnmarshalText reads what MarshalText writes.
func (f *Field) UnmarshalText(text []byte) error { return fields.Unmarshal(text, f) }

// readers say of each field what it is about, which column of the file holds it and where
// it stands in a recommendation. What only an audit asks stands nowhere.
var readers = [...]reader{
	FieldPopulation:     {"for whom", "population", func(r *Recommendation) any { return &r.Population }},
	FieldAgeMin:         {"age in years, at least", "age_min", func(r *Recommendation) any { return &r.AgeMin }},
	FieldDays:           {"days a week", "frequency_per_week", func(r *Recommendation) any { return &r.Days }},
	FieldSets:           {"sets per exercise", "sets", func(r *Recommendation) any { return &r.Sets }},
	FieldSessionsPerDay: {"sessions a day", "sessions_per_day", func(r *Recommendation) any { return &r.SessionsPerDay }},
	FieldWeeklySets:     {"sets per muscle group in a week", "weekly_sets_per_muscle", func(r *Recommendation) any { return &r.WeeklySets }},
	FieldReps:           {"repetitions per set", "reps", func(r *Recommendation) any { return &r.Reps }},
	FieldRM:             {"load as a repetition maximum", "rm", func(r *Recommendation) any { return &r.RM }},
	FieldRMEmphasis:     {"repetition maximum that is stressed", "rm_emphasis", func(r *Recommendation) any { return &r.RMEmphasis }},
	FieldLoad:           {"load in shares of 1RM", "intensity_pct_1rm", func(r *Recommendation) any { return &r.Load }},
	FieldLoadUpper:      {"load for the arms and trunk in shares of 1RM", "intensity_pct_1rm_upper", func(r *Recommendation) any { return &r.LoadUpper }},
	FieldLoadLower:      {"load for the hips and legs in shares of 1RM", "intensity_pct_1rm_lower", func(r *Recommendation) any { return &r.LoadLower }},
	FieldLoadStart:      {"first load in shares of 1RM", "intensity_start_pct_1rm", func(r *Recommendation) any { return &r.LoadStart }},
	FieldLoadStep:       {"rise in load", "load_increment_pct", func(r *Recommendation) any { return &r.LoadStep }},
	FieldLoadRule:       {"when load rises", "load_increment_rule", func(r *Recommendation) any { return &r.LoadRule }},
	FieldEffort:         {"effort", "rpe", func(r *Recommendation) any { return &r.Effort }},
	FieldReserve:        {"repetitions in reserve", "rir", func(r *Recommendation) any { return &r.Reserve }},
	FieldRestBetween:    {"seconds of rest between exercises", "rest_between_exercises_s", func(r *Recommendation) any { return &r.RestBetween }},
	FieldRest:           {"seconds of rest between sets", "rest_s", func(r *Recommendation) any { return &r.Rest }},
	FieldRestAssisting:  {"seconds of rest in assistance exercises", "rest_s_assistance", func(r *Recommendation) any { return &r.RestAssisting }},
	FieldRestInSet:      {"seconds of rest between repetitions", "rest_between_reps_s", func(r *Recommendation) any { return &r.RestInSet }},
	FieldRepSeconds:     {"seconds per repetition", "rep_duration_s", func(r *Recommendation) any { return &r.RepSeconds }},
	FieldLiftSeconds:    {"seconds of lifting", "concentric_s", func(r *Recommendation) any { return &r.LiftSeconds }},
	FieldLowerSeconds:   {"seconds of lowering", "eccentric_s", func(r *Recommendation) any { return &r.LowerSeconds }},
	FieldHoursBetween:   {"hours between sessions of the same muscles, at least", "min_hours_between_sessions_same_muscles", func(r *Recommendation) any { return &r.HoursBetween }},
	FieldBalanceDays:    {"days a week with balance training", "balance_days_per_week", func(r *Recommendation) any { return &r.BalanceDays }},
	FieldExercises:      {"exercises per session", "exercises", func(r *Recommendation) any { return &r.Exercises }},
	FieldPerMuscle:      {"exercises per muscle group", "exercises_per_muscle_group", func(r *Recommendation) any { return &r.PerMuscle }},
	FieldMinutes:        {"minutes of a session", "session_min", func(r *Recommendation) any { return &r.Minutes }},
	FieldImpacts:        {"moderate impacts per session", "impacts_per_session", func(r *Recommendation) any { return &r.Impacts }},
	FieldWeeks:          {"weeks of the programme", "period_weeks", func(r *Recommendation) any { return &r.Weeks }},
	FieldEffects:        {"effects of single variables", "effect", func(r *Recommendation) any { return &r.Effects }},
	FieldAerobic:        {"minutes a week of aerobic training at moderate effort", "aerobic_min_per_week", func(r *Recommendation) any { return &r.Aerobic }},
	FieldPushPull:       {about: "sets a week of pushing and of pulling"},
	FieldSquatHinge:     {about: "sets a week of squatting and of hinging"},
	FieldSides:          {about: "sets a week of the left and of the right side"},
}

// A reader says what one field is about and where it stands.
type reader struct {
	about, column string
	at            func(*Recommendation) any // a pointer; nil for what only an audit asks
}

// stated reports whether r states the field. It is asked more often than what, so that
// no range is printed for it.
func (d reader) stated(r *Recommendation) bool {
	if d.at != nil {
		if v, ok := d.at(r).(ranged); ok {
			return !v.IsZero()
		}
	}
	return d.value(r) != ""
}

// A ranged field is a range of any type.
type ranged interface {
	IsZero() bool
	fmt.Stringer
}

// value is what r states, empty if that is nothing.
func (d reader) value(r *Recommendation) string {
	if d.at == nil {
		return ""
	}
	switch v := d.at(r).(type) {
	case *string:
		return *v
	case *int:
		return number(*v)
	case *body.Age:
		return number(int(*v))
	case *EffortRange:
		return v.String()
	case *[]Effect:
		return r.effects()
	case ranged:
		if !v.IsZero() {
			return v.String()
		}
	}
	return ""
}

func number(n int) string {
	if n == 0 {
		return ""
	}
	return strconv.Itoa(n)
}

// String prints the range and its scale, such as "12 to 13 on Borg 6-20", and
// nothing if no effort is stated.
func (e EffortRange) String() string {
	if e.Range.IsZero() {
		return ""
	}
	return e.Range.String() + " on " + e.Ends
}

func (r *Recommendation) effects() string {
	list := make([]string, len(r.Effects))
	for i, e := range r.Effects {
		list[i] = fmt.Sprintf("%s %v %s", e.Of, e.Value, e.Unit)
	}
	return strings.Join(list, ", ")
}

// Stated returns what r states in field f, in words and with units, and
// whether it states anything.
func (r Recommendation) Stated(f Field) (string, bool) {
	if !fields.Valid(f) {
		return "", false
	}
	reader := readers[f]
	value := reader.value(&r)
	return reader.about + ": " + value, value != ""
}

func (r *Recommendation) states(f Field) bool { return fields.Valid(f) && readers[f].stated(r) }

// factIDs are the IDs of the facts behind the fields of rows, at the same places.
var factIDs = sync.OnceValue(func() [][]evidence.FactID {
	table := make([][]evidence.FactID, len(rows()))
	for i, r := range rows() {
		table[i] = make([]evidence.FactID, len(readers))
		for f := range Fields() {
			table[i][f] = makeFactID(r.ID, f)
		}
	}
	return table
})

func (r *Recommendation) factID(f Field) evidence.FactID {
	if i, ok := placeOf()[r.ID]; ok {
		return factIDs()[i][f]
	}
	return makeFactID(r.ID, f)
}

func makeFactID(id ID, f Field) evidence.FactID {
	return evidence.FactID("guideline." + string(id) + "." + f.String())
}

// Fact names the fact behind field f of a row of this package, and reports
// whether the row states it.
func (r Recommendation) Fact(f Field) (evidence.FactID, bool) {
	if !r.states(f) {
		return "", false
	}
	return r.factID(f), true
}

// facts lists one fact for each field that r states.
func (r Recommendation) facts() []evidence.Fact {
	var list []evidence.Fact
	for f := range Fields() {
		value, stated := r.Stated(f)
		if !stated {
			continue
		}
		fact := evidence.Fact{ID: r.factID(f), Value: value, Source: r.Source, Basis: r.BasisOf(f)}
		if fact.Basis == evidence.Secondary {
			fact.Via = r.Via
		}
		list = append(list, fact)
	}
	return list
}

// Facts yields one fact for each field that a row states, named like
// "guideline.acsm2011-older-start.load".
func Facts() iter.Seq[evidence.Fact] {
	var list []evidence.Fact
	for _, r := range rows() {
		list = append(list, r.facts()...)
	}
	return slices.Values(list)
}
