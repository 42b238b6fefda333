package simulate

import (
	"math"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// train does the sets of a dose with the strength of the day, in kilograms, and
// records how it went.
func (r *run) train(l *Lived, plan dose.Prescription, oneRM float64) {
	v := &l.Done
	*v = progression.Visit{Day: l.Day, Plan: plan, Moment: &screening.Moment{}, RangeLost: screening.No, FormLost: screening.No}
	sides := []body.Side{plan.Side}
	if plan.OneSided && plan.Side == body.Both {
		sides = []body.Side{body.Left, body.Right}
	}
	for _, side := range sides {
		r.sets(l, side, oneRM)
	}
	if len(v.Sets) == 0 {
		v.Unable = screening.Yes
	}
	v.Pain = r.pain()
	if r.happens(ofSign, 0, r.t.Signs) {
		v.Moment.Signs = []screening.Code{endingSign}
	}
	if r.happens(ofForm, 0, r.t.FormLost) {
		v.FormLost = screening.Yes
	}
	if r.watched() {
		v.Observer = dose.Observation{Who: observer, Day: l.Day}
	}
}

const (
	observer                  = "a simulated colleague"
	endingSign screening.Code = "dizzy_or_swaying"
)

// pain records a quiet visit, or one that hurts.
func (r *run) pain() *screening.Pain {
	usual, during, after, next := 1.0, 1.0, 1.0, 1.0
	if r.happens(ofPain, 0, r.t.Pain) {
		during, after, next = 7, 6, 3
	}
	return &screening.Pain{Kind: screening.OrdinaryPain, Usual: &usual, During: &during, After: &after, NextMorning: &next, WeeklyTrend: screening.StablePain}
}

// sets does the sets of one side. Where the load is looked for, it goes up while
// a set ends with more in reserve than can be counted.
func (r *run) sets(l *Lived, side body.Side, oneRM float64) {
	plan, v := &l.Done.Plan, &l.Done
	load, steps, most := plan.Load.Each(), 0, plan.Sets
	if plan.Finding != nil {
		steps, most = plan.Finding.MaxSteps, max(most, plan.Finding.MaxSteps+1)
	}
	var tired fatigue
	for i := range most {
		asked := *plan
		if f := plan.Feel; f != nil && i == plan.Sets-1 {
			load, asked.Count = f.Load.Each(), f.Count
		}
		set, true := r.set(v, asked, side, load, i, oneRM, tired.share)
		l.Sets = append(l.Sets, true)
		if set.Reps < 1 {
			return // too heavy to lift today
		}
		v.Sets = append(v.Sets, set)
		if r.t.Tires {
			tired.set(true.Left, rested(plan.Rest))
		}
		next, higher := r.up(*plan, load)
		switch {
		case plan.Finding != nil && easy(set.Effort) && higher && steps > 0:
			load, steps = next, steps-1
		case plan.Finding != nil && i+1 >= plan.Sets:
			return
		}
	}
}

// usualRest stands for a rest that a dose does not tell, in seconds.
const usualRest = 120

// rested returns how long somebody rests, in the middle of what a dose asks for.
func rested(r units.Range[int]) float64 {
	least, some := r.Min()
	most, bounded := r.Max()
	switch {
	case !some:
		return usualRest
	case !bounded:
		return float64(least)
	}
	return float64(least+most) / 2
}

// easy reports whether a set was told as easier than can be counted, or hard.
func easy(e units.Effort) bool {
	if e.Scale() == units.ScaleOMNI {
		return e.Number() < hard
	}
	return e.Number() > countable
}

// up returns the next weight that looking for the load may take.
func (r *run) up(plan dose.Prescription, load units.Mass) (units.Mass, bool) {
	gap, ok := r.table.Next(load)
	if !ok || plan.Finding == nil || plan.Finding.Ceiling > 0 && gap.To.Each() > plan.Finding.Ceiling {
		return 0, false
	}
	return gap.To.Each(), true
}

// set does one set, the one of that number of its side, tired by so large a share.
func (r *run) set(v *progression.Visit, plan dose.Prescription, side body.Side, load units.Mass, number int, oneRM, tired float64) (setlog.Set, TrueSet) {
	at := int(side)<<8 | number
	lifted := r.lifted(plan.Hold, load)
	is := TrueSet{Side: side, Each: load, Search: load > plan.Load.Each(), Share: units.Fraction(lifted / oneRM)}
	set := setlog.Set{Day: v.Day, Exercise: plan.Exercise, Side: side, Hold: plan.Hold, Load: r.slip(load, at)}
	if plan.Hold.Implements() > 1 {
		set.Stated = body.PerHand
	}
	if plan.Measure != exercise.Repetitions { // rated as if a tenth of the maximum stood for a point
		rating := math.Round(10 * lifted / oneRM)
		is.Left, is.Failed = max(0, 10-rating), rating > 10
		if !is.Failed {
			set.Effort, _ = units.OMNI(rating)
			set.Reps = plan.Count
		}
		is.Reps = set.Reps
		return set, is
	}
	is.Able = r.t.toFailure(lifted, oneRM) * (1 - tired)
	tells := r.t.Reserve.teller(r.of(ofTelling, r.planned, at).NormFloat64())
	wanted := plan.Count
	if !r.t.Stubborn {
		felt := is.Able - tells.left(float64(plan.Reserve.Least)) // how many seem to leave what is to be left
		wanted = min(wanted, max(1, int(felt)-r.t.Early))
	}
	set.Reps = min(wanted, int(is.Able))
	is.Reps, is.Failed, is.Left = set.Reps, set.Reps < wanted, is.Able-float64(set.Reps)
	if is.Failed {
		is.Left = 0
	}
	left := math.Round(min(max(tells.told(is.Left), 0), 10))
	if is.Failed {
		left = 0 // which everybody sees
	}
	if r.s.Policy.Rule == rule.NameOMNIBelow8 {
		set.Effort, _ = units.OMNI(10 - left) // as if a point stood for a repetition
	} else {
		set.Effort, _ = units.InReserve(left)
	}
	return set, is
}

// effect returns what a visit does for growth: that of its sets, by side.
func (l *Lived) effect() float64 {
	sum, sides := 0.0, 0
	for side := range body.Sides() {
		var list []float64
		for _, s := range l.Sets {
			if s.Side == side && s.Reps > 0 {
				list = append(list, effect(float64(s.Share), s.Left))
			}
		}
		if len(list) > 0 {
			sum, sides = sum+together(list), sides+1
		}
	}
	return sum / float64(max(1, sides))
}

const (
	countable = given.Countable // in reserve
	hard      = 8               // of 10 on the scale omni, from which the load is kept
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
func (r *run) slip(load units.Mass, set int) units.Mass {
	if !r.happens(ofSlip, set, r.t.Slips) {
		return load
	}
	slips := [...]units.Fraction{2, 0.5, 2.2, 0.4536}
	logged, err := load.Scale(slips[r.of(ofWhichSlip, r.planned, set).IntN(len(slips))], units.Nearest)
	if err != nil {
		return load
	}
	return logged
}
