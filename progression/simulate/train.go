package simulate

import (
	"math"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// train does the sets of a dose with the strength of the day, in kilograms, and
// records how it went.
func (r *run) train(day units.Day, plan dose.Prescription, oneRM float64) progression.Visit {
	v := progression.Visit{Day: day, Plan: plan, Moment: &screening.Moment{}, RangeLost: screening.No, FormLost: screening.No}
	sides := []body.Side{plan.Side}
	if plan.OneSided && plan.Side == body.Both {
		sides = []body.Side{body.Left, body.Right}
	}
	for _, side := range sides {
		r.sets(&v, plan, side, oneRM)
	}
	if len(v.Sets) == 0 {
		v.Unable = screening.Yes
	}
	v.Pain = r.pain()
	if r.happens(r.t.Signs) {
		v.Moment.Signs = []screening.Code{endingSign}
	}
	if r.happens(r.t.FormLost) {
		v.FormLost = screening.Yes
	}
	if !r.happens(r.t.Unseen) {
		v.Observer = dose.Observation{Who: observer, Day: day}
	}
	return v
}

const (
	observer                  = "a simulated colleague"
	endingSign screening.Code = "dizzy_or_swaying"
)

// pain records a quiet visit, or one that hurts.
func (r *run) pain() *screening.Pain {
	usual, during, after, next := 1.0, 1.0, 1.0, 1.0
	if r.happens(r.t.Pain) {
		during, after, next = 7, 6, 3
	}
	return &screening.Pain{Kind: screening.OrdinaryPain, Usual: &usual, During: &during, After: &after, NextMorning: &next, WeeklyTrend: screening.StablePain}
}

// sets does the sets of one side. Where the load is looked for, it goes up while
// a set ends with more in reserve than can be counted.
func (r *run) sets(v *progression.Visit, plan dose.Prescription, side body.Side, oneRM float64) {
	load, steps, most := plan.Load.Each(), 0, plan.Sets
	if plan.Finding != nil {
		steps, most = plan.Finding.MaxSteps, max(most, plan.Finding.MaxSteps+1)
	}
	for i := range most {
		set, easy := r.set(v.Day, plan, side, load, oneRM)
		if set.Reps < 1 {
			return // too heavy to lift today
		}
		v.Sets = append(v.Sets, set)
		next, higher := r.up(plan, load)
		switch {
		case plan.Finding != nil && easy && higher && steps > 0:
			load, steps = next, steps-1
		case plan.Finding != nil && i+1 >= plan.Sets:
			return
		}
	}
}

// up returns the next weight that looking for the load may take.
func (r *run) up(plan dose.Prescription, load units.Mass) (units.Mass, bool) {
	gap, ok := r.table.Next(load)
	if !ok || plan.Finding == nil || plan.Finding.Ceiling > 0 && gap.To.Each() > plan.Finding.Ceiling {
		return 0, false
	}
	return gap.To.Each(), true
}

// set does one set: as many repetitions as asked for, and none after the one
// that seems to leave what is to be left.
func (r *run) set(day units.Day, plan dose.Prescription, side body.Side, load units.Mass, oneRM float64) (setlog.Set, bool) {
	set := setlog.Set{Day: day, Exercise: plan.Exercise, Side: side, Hold: plan.Hold, Load: load, Reps: plan.Count}
	if plan.Hold.Implements() > 1 {
		set.Stated = body.PerHand
	}
	if plan.Measure != exercise.Repetitions { // rated as if a tenth of the maximum stood for a point
		rating := math.Round(10 * r.lifted(plan.Hold, load) / oneRM)
		if rating > 10 {
			return setlog.Set{}, false
		}
		set.Effort, _ = units.OMNI(rating)
		set.Load = r.slip(load)
		return set, rating < hard
	}
	able := r.t.toFailure(r.lifted(plan.Hold, load), oneRM)
	off := r.t.Reserve.Mean + float64(r.rng.NormFloat64()*r.t.Reserve.SD)
	seems := able + off // repetitions to failure, as it seems to the trainee
	set.Reps = min(plan.Count, int(able), max(1, int(seems-float64(plan.Reserve.Least))))
	left := math.Round(min(max(seems-float64(set.Reps), 0), 10))
	if r.s.Policy.Rule == rule.NameOMNIBelow8 {
		set.Effort, _ = units.OMNI(max(0, 10-left)) // as if a point stood for a repetition
	} else {
		set.Effort, _ = units.InReserve(left)
	}
	set.Load = r.slip(load)
	return set, left > countable
}

const (
	countable = 5 // in reserve
	hard      = 8 // of 10 on the scale omni, from which the load is kept
)

// lifted returns all that is lifted, in kilograms.
func (r *run) lifted(h body.Hold, load units.Mass) float64 {
	held := load.Kilograms() * float64(max(1, h.Implements()))
	if low, ok := r.s.Request.Exercise.MovedShare.Min(); ok {
		held += float64(r.s.BodyMass.Kilograms() * float64(low))
	}
	return held
}

// slip returns what is logged for a load: itself, or with a slip of its unit.
func (r *run) slip(load units.Mass) units.Mass {
	if !r.happens(r.t.Slips) {
		return load
	}
	slips := [...]units.Fraction{2, 0.5, 2.2, 0.4536}
	logged, err := load.Scale(slips[r.rng.IntN(len(slips))], units.Nearest)
	if err != nil {
		return load
	}
	return logged
}
