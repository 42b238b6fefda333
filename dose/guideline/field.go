package guideline

import (
	"cmp"
	"fmt"
	"iter"
	"slices"
	"strconv"
	"strings"
	"sync"

	"example.org/posology/units"
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

// readers say what each field states.
var readers = [...]reader{
	FieldPopulation:     worded("for whom", func(r *Recommendation) string { return r.Population }),
	FieldAgeMin:         worded("age in years, at least", func(r *Recommendation) string { return number(int(r.AgeMin)) }),
	FieldDays:           ranged("days a week", func(r *Recommendation) units.Range[int] { return r.Days }),
	FieldSets:           ranged("sets per exercise", func(r *Recommendation) units.Range[int] { return r.Sets }),
	FieldSessionsPerDay: ranged("sessions a day", func(r *Recommendation) units.Range[int] { return r.SessionsPerDay }),
	FieldWeeklySets:     ranged("sets per muscle group in a week", func(r *Recommendation) units.Range[int] { return r.WeeklySets }),
	FieldReps:           ranged("repetitions per set", func(r *Recommendation) units.Range[int] { return r.Reps }),
	FieldRM:             ranged("load as a repetition maximum", func(r *Recommendation) units.Range[int] { return r.RM }),
	FieldRMEmphasis:     ranged("repetition maximum that is stressed", func(r *Recommendation) units.Range[int] { return r.RMEmphasis }),
	FieldLoad:           ranged("load in shares of 1RM", func(r *Recommendation) units.Range[units.Fraction] { return r.Load }),
	FieldLoadUpper:      ranged("load for the arms and trunk in shares of 1RM", func(r *Recommendation) units.Range[units.Fraction] { return r.LoadUpper }),
	FieldLoadLower:      ranged("load for the hips and legs in shares of 1RM", func(r *Recommendation) units.Range[units.Fraction] { return r.LoadLower }),
	FieldLoadStart:      ranged("first load in shares of 1RM", func(r *Recommendation) units.Range[units.Fraction] { return r.LoadStart }),
	FieldLoadStep:       ranged("rise in load", func(r *Recommendation) units.Range[units.Fraction] { return r.LoadStep }),
	FieldLoadRule:       worded("when load rises", func(r *Recommendation) string { return r.LoadRule }),
	FieldEffort:         worded("effort", func(r *Recommendation) string { return r.Effort.String() }),
	FieldReserve:        ranged("repetitions in reserve", func(r *Recommendation) units.Range[units.RIR] { return r.Reserve }),
	FieldRestBetween:    ranged("seconds of rest between exercises", func(r *Recommendation) units.Range[int] { return r.RestBetween }),
	FieldRest:           ranged("seconds of rest between sets", func(r *Recommendation) units.Range[int] { return r.Rest }),
	FieldRestAssisting:  ranged("seconds of rest in assistance exercises", func(r *Recommendation) units.Range[int] { return r.RestAssisting }),
	FieldRestInSet:      ranged("seconds of rest between repetitions", func(r *Recommendation) units.Range[float64] { return r.RestInSet }),
	FieldRepSeconds:     ranged("seconds per repetition", func(r *Recommendation) units.Range[float64] { return r.RepSeconds }),
	FieldLiftSeconds:    ranged("seconds of lifting", func(r *Recommendation) units.Range[int] { return r.LiftSeconds }),
	FieldLowerSeconds:   ranged("seconds of lowering", func(r *Recommendation) units.Range[int] { return r.LowerSeconds }),
	FieldHoursBetween:   worded("hours between sessions of the same muscles, at least", func(r *Recommendation) string { return number(r.HoursBetween) }),
	FieldBalanceDays:    ranged("days a week with balance training", func(r *Recommendation) units.Range[int] { return r.BalanceDays }),
	FieldExercises:      ranged("exercises per session", func(r *Recommendation) units.Range[int] { return r.Exercises }),
	FieldPerMuscle:      ranged("exercises per muscle group", func(r *Recommendation) units.Range[int] { return r.PerMuscle }),
	FieldMinutes:        ranged("minutes of a session", func(r *Recommendation) units.Range[int] { return r.Minutes }),
	FieldImpacts:        ranged("moderate impacts per session", func(r *Recommendation) units.Range[int] { return r.Impacts }),
	FieldWeeks:          ranged("weeks of the programme", func(r *Recommendation) units.Range[int] { return r.Weeks }),
	FieldEffects:        worded("effects of single variables", (*Recommendation).effects),
	FieldAerobic:        ranged("minutes a week of aerobic training at moderate effort", func(r *Recommendation) units.Range[int] { return r.Aerobic }),
	FieldPushPull:       worded("sets a week of pushing and of pulling", nothingStated),
	FieldSquatHinge:     worded("sets a week of squatting and of hinging", nothingStated),
	FieldSides:          worded("sets a week of the left and of the right side", nothingStated),
}

// A reader says what one field is about and what it states. Whether it states
// anything is asked more often than what, so that it is asked without printing.
type reader struct {
	about  string
	stated func(*Recommendation) bool
	value  func(*Recommendation) string // empty if nothing is stated
}

func ranged[T cmp.Ordered](about string, of func(*Recommendation) units.Range[T]) reader {
	return reader{about,
		func(r *Recommendation) bool { return !of(r).IsZero() },
		func(r *Recommendation) string { return printed(of(r)) }}
}

func worded(about string, of func(*Recommendation) string) reader {
	return reader{about, func(r *Recommendation) bool { return of(r) != "" }, of}
}

func nothingStated(*Recommendation) string { return "" }

// printed gives the range, nothing for one without ends.
func printed[T cmp.Ordered](r units.Range[T]) string {
	if r.IsZero() {
		return ""
	}
	return r.String()
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
