package guideline

import (
	"cmp"
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// An auditor gathers the findings.
type auditor struct {
	week  AuditedWeek
	of    Recommendation
	found []AuditLine
}

type bound = units.Range[float64]

// Facts of package volume.
const (
	factEvenSides    evidence.FactID = "volume.even-sides"
	factOpposed      evidence.FactID = "volume.opposed"
	factLiftingAlone evidence.FactID = "volume.lifting-alone"
)

// lines tell, in the order of the findings, in which unit a field is held against
// a week, and what bounds it.
var lines = [...]struct {
	field Field
	unit  string
	bound func(*Recommendation) bound
}{
	{FieldDays, "days a week", func(r *Recommendation) bound { return real(r.Days) }},
	{FieldSessionsPerDay, "sessions a day", func(r *Recommendation) bound { return real(r.SessionsPerDay) }},
	{FieldExercises, "exercises a session", func(r *Recommendation) bound { return real(r.Exercises) }},
	{FieldSets, "sets of an exercise in a session", func(r *Recommendation) bound { return real(r.Sets) }},
	{FieldWeeklySets, "sets of a muscle a week", func(r *Recommendation) bound { return real(r.WeeklySets) }},
	{FieldPerMuscle, "exercises", func(r *Recommendation) bound { return real(r.PerMuscle) }},
	{FieldReps, "repetitions a set", func(r *Recommendation) bound { return real(r.Reps) }},
	{FieldLoad, "of 1RM", func(r *Recommendation) bound { return real(r.Load) }},
	{FieldRM, "repetition maximum", func(r *Recommendation) bound { return real(r.RM) }},
	{FieldReserve, "repetitions in reserve", func(r *Recommendation) bound { return real(r.Reserve) }},
	{FieldEffort, "points", func(r *Recommendation) bound { return real(r.Effort.Range) }},
	{FieldRepSeconds, "seconds a repetition", func(r *Recommendation) bound { return r.RepSeconds }},
	{FieldLiftSeconds, "seconds", func(r *Recommendation) bound { return real(r.LiftSeconds) }},
	{FieldLowerSeconds, "seconds", func(r *Recommendation) bound { return real(r.LowerSeconds) }},
	{FieldRest, "seconds between sets", func(r *Recommendation) bound { return real(r.Rest) }},
	{FieldRestBetween, "seconds between exercises", func(r *Recommendation) bound { return real(r.RestBetween) }},
	{FieldRestInSet, "seconds between repetitions", func(r *Recommendation) bound { return r.RestInSet }},
	{FieldHoursBetween, "hours from one day to the next", hoursBound},
	{FieldMinutes, "minutes a session", func(r *Recommendation) bound { return real(r.Minutes) }},
	{FieldBalanceDays, "days a week", func(r *Recommendation) bound { return real(r.BalanceDays) }},
	{FieldAerobic, "minutes a week", func(r *Recommendation) bound { return real(r.Aerobic) }},
	{FieldImpacts, "impacts a session", func(r *Recommendation) bound { return real(r.Impacts) }},
	{FieldPushPull, "sets a week", unbounded},
	{FieldSquatHinge, "sets a week", unbounded},
	{FieldSides, "sets a week", unbounded},
}

func unbounded(*Recommendation) bound { return bound{} }

// inReport are the places of fields in lines.
var inReport = func() (at [len(readers)]int) {
	for i := range lines {
		at[lines[i].field] = i
	}
	return at
}()

// place returns where a field stands in lines.
func place(f Field) int { return inReport[f] }

func hoursBound(r *Recommendation) bound {
	if r.HoursBetween == 0 {
		return bound{}
	}
	return units.AtLeast(float64(r.HoursBetween))
}

// line makes the finding of an item without verdict: what was found, and what
// the recommendation has to say of it.
func (a *auditor) line(i Field, of string, found bound) AuditLine {
	return a.lineOf(i, i, of, found, lines[place(i)].bound(&a.of))
}

// lineOf is line for an item that field f bounds.
func (a *auditor) lineOf(i, f Field, of string, found, wanted bound) AuditLine {
	l := AuditLine{Item: i, Of: of, Found: found, Bound: wanted, Unit: lines[place(i)].unit, Population: a.of.Population}
	if a.of.states(f) {
		l.Basis, l.Fact = a.of.basisOf(f), a.of.factID(f)
	}
	return l
}

// judge adds the finding, twice if it varies beyond both ends of its bound.
func (a *auditor) judge(l AuditLine) {
	low, recorded := l.Found.Min()
	high, _ := l.Found.Max()
	least, hasLeast := l.Bound.Min()
	most, hasMost := l.Bound.Max()
	short, over := hasLeast && low < least, hasMost && high > most
	switch {
	case l.Bound.IsZero():
		a.add(l, NotStated)
	case !recorded:
		a.add(l, NotRecorded)
	case !short && !over:
		a.add(l, Met)
	}
	if recorded && short {
		a.add(l, Short)
	}
	if recorded && over {
		a.add(l, Over)
	}
}

func (a *auditor) add(l AuditLine, v Verdict) {
	l.Verdict = v
	a.found = append(a.found, l)
}

// inOrder returns the findings in order of items, as they came within an item.
func (a *auditor) inOrder() []AuditLine {
	slices.SortStableFunc(a.found, func(x, y AuditLine) int { return cmp.Compare(place(x.Item), place(y.Item)) })
	return a.found
}

// real turns a bound into numbers that what was found can be held against.
func real[T int | float64 | units.Fraction | units.RIR](r units.Range[T]) bound {
	var b bound
	if low, ok := r.Min(); ok {
		b = units.AtLeast(float64(low))
	}
	if high, ok := r.Max(); ok {
		b, _ = b.Intersect(units.AtMost(float64(high)))
	}
	return b
}

// span returns the range from low to high, which is not below low.
func span(low, high float64) bound { return units.Must(units.Between(low, high)) }

// spanOf returns the range that holds every number, zero for none.
func spanOf(numbers []float64) bound {
	if len(numbers) == 0 {
		return bound{}
	}
	return span(slices.Min(numbers), slices.Max(numbers))
}

// given returns the number that a caller gave, zero if none.
func given(n *int) bound {
	if n == nil {
		return bound{}
	}
	return units.Exactly(float64(*n))
}

// sessions adds the lines about days and whole sessions.
func (a *auditor) sessions() {
	days := float64(len(a.week.Totals.Days))
	a.judge(a.line(FieldDays, "", units.Exactly(days)))
	var perDay []float64
	for _, day := range a.week.Totals.Days {
		n := 0.0
		for _, e := range a.week.Totals.Exercises {
			if slices.ContainsFunc(e.Daily, func(d volume.DaySets) bool { return d.Day == day }) {
				n++
			}
		}
		perDay = append(perDay, n)
	}
	a.judge(a.line(FieldExercises, "", spanOf(perDay)))
	a.judge(a.line(FieldMinutes, "", spanOf(a.week.Minutes)))
	a.judge(a.line(FieldRest, "", a.week.Rest))
}

// unlogged adds what a log of sets does not tell.
func (a *auditor) unlogged() {
	for _, i := range []Field{FieldSessionsPerDay, FieldRM, FieldLiftSeconds, FieldLowerSeconds, FieldRestBetween, FieldRestInSet} {
		a.judge(a.line(i, "", bound{}))
	}
}

// perExercise adds a finding for each exercise where the recommendation has a
// bound, and else one for the week.
func (a *auditor) perExercise() {
	for _, i := range []Field{FieldSets, FieldReps, FieldLoad, FieldReserve, FieldEffort, FieldRepSeconds} {
		before := len(a.found)
		bounds := a.bounds(i)
		for j := range a.week.Totals.Exercises {
			if bounds {
				a.exercise(i, &a.week.Totals.Exercises[j])
			}
		}
		switch {
		case !bounds:
			a.add(a.line(i, "", bound{}), NotStated)
		case len(a.found) == before: // no exercise that it is for
			a.nothing(i)
		}
	}
}

// nothing adds the finding of an item that the recommendation bounds and no
// exercise of the week falls under.
func (a *auditor) nothing(i Field) {
	if i != FieldLoad || !a.of.Load.IsZero() {
		a.judge(a.line(i, "", bound{}))
		return
	}
	a.judge(a.lineOf(i, FieldLoadUpper, "", bound{}, real(a.of.LoadUpper)))
	a.judge(a.lineOf(i, FieldLoadLower, "", bound{}, real(a.of.LoadLower)))
}

// bounds reports whether the recommendation bounds an item in any field.
func (a *auditor) bounds(i Field) bool {
	parts := i == FieldLoad && !(a.of.LoadUpper.IsZero() && a.of.LoadLower.IsZero())
	return parts || !lines[place(i)].bound(&a.of).IsZero()
}

func (a *auditor) exercise(i Field, e *volume.ExerciseWeek) {
	of := string(e.Exercise)
	switch i {
	case FieldSets:
		a.judge(a.line(i, of, daySets(e)))
	case FieldReps:
		if e.Measure == exercise.Repetitions {
			a.judge(a.line(i, of, real(e.Span)))
		}
	case FieldLoad:
		if e.Measure == exercise.Repetitions {
			a.load(e)
		}
	case FieldReserve:
		a.judge(a.line(i, of, real(e.Reserve)))
	case FieldEffort:
		l := a.line(i, of, bound{})
		l.Scale = a.of.Effort.Ends
		a.add(l, NotComparable) // a tally keeps reserves, and scales do not convert
	case FieldRepSeconds:
		if e.Measure == exercise.Repetitions {
			a.judge(a.line(i, of, meanSeconds(e)))
		}
	}
}

// daySets returns the sets of an exercise by day. One-sided work was done once
// on each side; what the lesser side did counts.
func daySets(e *volume.ExerciseWeek) bound {
	var perDay []float64
	for _, d := range e.Daily {
		perDay = append(perDay, float64(min(d.Left, d.Right)))
	}
	return spanOf(perDay)
}

func meanSeconds(e *volume.ExerciseWeek) bound {
	if e.TimedReps == 0 {
		return bound{}
	}
	return units.Exactly(e.Tension / float64(e.TimedReps))
}

// load takes the bound for the part of the body where there is one.
func (a *auditor) load(e *volume.ExerciseWeek) {
	field, wanted := FieldLoad, a.of.Load
	switch {
	case e.Pattern.Legs() && !a.of.LoadLower.IsZero():
		field, wanted = FieldLoadLower, a.of.LoadLower
	case !e.Pattern.Legs() && !a.of.LoadUpper.IsZero():
		field, wanted = FieldLoadUpper, a.of.LoadUpper
	}
	var found bound
	if e.ShareReps > 0 {
		found = units.Exactly(float64(e.Share))
	}
	a.judge(a.lineOf(FieldLoad, field, string(e.Exercise), found, real(wanted)))
}

// beside adds what lifting alone does not give.
func (a *auditor) beside() {
	for _, f := range [...]struct {
		field Field
		found *int
	}{{FieldBalanceDays, a.week.BalanceDays}, {FieldAerobic, a.week.AerobicMinutes}, {FieldImpacts, a.week.Impacts}} {
		l := a.line(f.field, "", given(f.found))
		if l.Bound.IsZero() && f.field == FieldAerobic {
			l.Fact = factLiftingAlone
		}
		if f.found == nil && !l.Bound.IsZero() && slices.Contains(a.week.Proposed, f.field) {
			a.add(l, Proposed)
			continue
		}
		a.judge(l)
	}
}

// A movement is one of two that are opposed, and the patterns that make it.
type movement struct {
	name string
	of   func(exercise.Pattern) bool
}

var (
	push  = movement{"push", exercise.Pattern.Pushes}
	pull  = movement{"pull", exercise.Pattern.Pulls}
	squat = movement{"squat", func(p exercise.Pattern) bool { return p == exercise.Squat || p == exercise.Lunge }}
	hinge = movement{"hinge", func(p exercise.Pattern) bool { return p == exercise.Hinge }}
)

// opposed adds the sets of two movements. No source has a ratio, so only one
// without the other falls short.
func (a *auditor) opposed(i Field, one, other movement) {
	first, second := a.week.Totals.PatternSets(one.of), a.week.Totals.PatternSets(other.of)
	a.movement(i, one.name, first, second)
	a.movement(i, other.name, second, first)
}

func (a *auditor) movement(i Field, of string, mine, theirs int) {
	l := AuditLine{Item: i, Of: of, Found: given(&mine), Unit: "sets a week", Population: a.of.Population, Fact: factOpposed}
	if mine > 0 || theirs == 0 {
		a.add(l, NotStated)
		return
	}
	l.Bound, l.Basis = units.AtLeast(1.0), evidence.Design
	a.add(l, Short)
}

// sides adds a finding for each exercise whose sides did not do as many sets, or
// one that all did.
func (a *auditor) sides() {
	uneven := false
	for _, e := range a.week.Totals.Exercises {
		if e.Left == e.Right {
			continue
		}
		uneven = true
		lesser, of := e.Left, "left, "
		if e.Right < e.Left {
			lesser, of = e.Right, "right, "
		}
		l := a.evenness(of+string(e.Exercise), float64(lesser))
		l.Bound = units.Exactly(float64(max(e.Left, e.Right)))
		a.add(l, Short)
	}
	if !uneven && len(a.week.Totals.Exercises) > 0 {
		l := a.evenness("", 0)
		l.Bound = units.Exactly(0.0)
		l.Unit = "exercises with uneven sides"
		a.add(l, Met)
	}
}

func (a *auditor) evenness(of string, found float64) AuditLine {
	return AuditLine{Item: FieldSides, Of: of, Found: units.Exactly(found), Unit: "sets a week", Population: a.of.Population,
		Basis: evidence.CommonPractice, Fact: factEvenSides}
}
