package guideline

import (
	"fmt"
	"maps"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A column of the file holds one field of a recommendation.
type column struct {
	field Field
	read  func(cell []byte, r *Recommendation) error
}

// columns are those that state a dose, as the collection names them.
var columns = map[string]column{
	"population":               {FieldPopulation, plain(func(r *Recommendation) any { return &r.Population })},
	"age_min":                  {FieldAgeMin, plain(func(r *Recommendation) any { return &r.AgeMin })},
	"frequency_per_week":       {FieldDays, plain(func(r *Recommendation) any { return &r.Days })},
	"sessions_per_day":         {FieldSessionsPerDay, plain(func(r *Recommendation) any { return &r.SessionsPerDay })},
	"sets":                     {FieldSets, plain(func(r *Recommendation) any { return &r.Sets })},
	"weekly_sets_per_muscle":   {FieldWeeklySets, plain(func(r *Recommendation) any { return &r.WeeklySets })},
	"reps":                     {FieldReps, plain(func(r *Recommendation) any { return &r.Reps })},
	"rm":                       {FieldRM, plain(func(r *Recommendation) any { return &r.RM })},
	"rm_emphasis":              {FieldRMEmphasis, plain(func(r *Recommendation) any { return &r.RMEmphasis })},
	"intensity_pct_1rm":        {FieldLoad, share(func(r *Recommendation) *units.Range[units.Fraction] { return &r.Load })},
	"intensity_pct_1rm_upper":  {FieldLoadUpper, share(func(r *Recommendation) *units.Range[units.Fraction] { return &r.LoadUpper })},
	"intensity_pct_1rm_lower":  {FieldLoadLower, share(func(r *Recommendation) *units.Range[units.Fraction] { return &r.LoadLower })},
	"intensity_start_pct_1rm":  {FieldLoadStart, share(func(r *Recommendation) *units.Range[units.Fraction] { return &r.LoadStart })},
	"load_increment_pct":       {FieldLoadStep, share(func(r *Recommendation) *units.Range[units.Fraction] { return &r.LoadStep })},
	"load_increment_rule":      {FieldLoadRule, plain(func(r *Recommendation) any { return &r.LoadRule })},
	"rpe":                      {FieldEffort, readEffort},
	"rir":                      {FieldReserve, plain(func(r *Recommendation) any { return &r.Reserve })},
	"rest_s":                   {FieldRest, plain(func(r *Recommendation) any { return &r.Rest })},
	"rest_between_exercises_s": {FieldRestBetween, plain(func(r *Recommendation) any { return &r.RestBetween })},
	"rest_s_assistance":        {FieldRestAssisting, plain(func(r *Recommendation) any { return &r.RestAssisting })},
	"rest_between_reps_s":      {FieldRestInSet, plain(func(r *Recommendation) any { return &r.RestInSet })},
	"rep_duration_s":           {FieldRepSeconds, plain(func(r *Recommendation) any { return &r.RepSeconds })},
	"concentric_s":             {FieldLiftSeconds, plain(func(r *Recommendation) any { return &r.LiftSeconds })},
	"eccentric_s":              {FieldLowerSeconds, plain(func(r *Recommendation) any { return &r.LowerSeconds })},
	"min_hours_between_sessions_same_muscles": {FieldHoursBetween, plain(func(r *Recommendation) any { return &r.HoursBetween })},
	"balance_days_per_week":                   {FieldBalanceDays, plain(func(r *Recommendation) any { return &r.BalanceDays })},
	"exercises":                               {FieldExercises, plain(func(r *Recommendation) any { return &r.Exercises })},
	"exercises_per_muscle_group":              {FieldPerMuscle, plain(func(r *Recommendation) any { return &r.PerMuscle })},
	"session_min":                             {FieldMinutes, plain(func(r *Recommendation) any { return &r.Minutes })},
	"impacts_per_session":                     {FieldImpacts, plain(func(r *Recommendation) any { return &r.Impacts })},
	"period_weeks":                            {FieldWeeks, plain(func(r *Recommendation) any { return &r.Weeks })},
	"effect":                                  {FieldEffects, readEffects},
	"aerobic_min_per_week":                    {FieldAerobic, plain(func(r *Recommendation) any { return &r.Aerobic })},
}

// plain reads a cell that has the form of our own field.
func plain(into func(*Recommendation) any) func([]byte, *Recommendation) error {
	return func(cell []byte, r *Recommendation) error { return field.Decode(cell, into(r), field.Strict) }
}

// share reads a range in percent.
func share(into func(*Recommendation) *units.Range[units.Fraction]) func([]byte, *Recommendation) error {
	return func(cell []byte, r *Recommendation) (err error) {
		var e ends
		if err = field.Decode(cell, &e, field.Strict); err == nil {
			*into(r), err = rangeOf[units.Fraction](e, 100)
		}
		return err
	}
}

// ends are those of a range, and its scale where it has one.
type ends struct {
	Min   *float64 `json:"min"`
	Max   *float64 `json:"max"`
	Scale string   `json:"scale"`
}

// rangeOf divides the ends by what a whole is.
func rangeOf[T ~int | ~float64](e ends, whole float64) (units.Range[T], error) {
	switch {
	case e.Min != nil && e.Max != nil:
		return units.Between(T(*e.Min/whole), T(*e.Max/whole))
	case e.Min != nil:
		return units.AtLeast(T(*e.Min / whole)), nil
	case e.Max != nil:
		return units.AtMost(T(*e.Max / whole)), nil
	}
	return units.Range[T]{}, field.Bad("", "a range with an end", field.ErrMissing)
}

const borg = "Borg 6-20"

func readEffort(cell []byte, r *Recommendation) (err error) {
	var e ends
	if err = field.Decode(cell, &e, field.Strict); err != nil {
		return err
	}
	r.Effort.Ends = e.Scale
	if e.Scale == borg {
		r.Effort.Scale = units.ScaleBorg
	}
	r.Effort.Range, err = rangeOf[int](e, 1)
	return err
}

// readEffects adds the values to the effects that stand in r in their order
// and with their units.
func readEffects(cell []byte, r *Recommendation) error {
	var values map[string]float64
	if err := field.Decode(cell, &values, field.Strict); err != nil {
		return err
	}
	for i, e := range r.Effects {
		value, ok := values[e.Of]
		if !ok {
			return field.Bad(e.Of, fmt.Sprint("an effect among ", slices.Sorted(maps.Keys(values))), field.ErrUnknown)
		}
		r.Effects[i].Value = value
	}
	if len(values) != len(r.Effects) {
		return field.Bad(fmt.Sprint(len(r.Effects), " units"), fmt.Sprint("one for each of ", len(values), " effects"), field.ErrMissing)
	}
	return nil
}
