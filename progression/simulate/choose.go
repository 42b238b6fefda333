package simulate

import (
	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A Scene is what a policy sees of a trainee before a visit.
type Scene struct {
	// Course is what there is to be seen: request, day and the whole log, which is read
	// and not changed.
	Course progression.Course
	Table  *equipment.Table // the weights of the kit
	// Able returns how often a weight could truly be lifted on a day like most. It is
	// for [Informed] alone: nobody can see it.
	Able func(each units.Mass) float64
}

// A Chooser is a policy: it gives the dose of the next visit. A decision without a dose
// of the same exercise ends the run.
type Chooser func(Scene) (progression.Decision, error)

// Own is the module's own policy, [progression.Next].
func Own(s Scene) (progression.Decision, error) { return progression.Next(s.Course) }

// The plain policies do what a published rule says and nothing else: no gate, no look at
// the next weight, no limit. They are there to be compared, for nobody to follow. They
// learn as the module does, in the phase Familiarise, and go on with three sets of the
// heaviest weight lifted at its last visit. Three visits running below the bottom of the
// range bring the weight before (rule.Simplify).
const (
	plainSets   = 3
	plainBottom = 8
	plainTop    = 12
	plainGoal   = 10 // two more are the top
	plainLeft   = 3
	linearDays  = 14
	mostCount   = 20 // of Informed
)

// ByTwoForTwo raises load by [rule.TwoForTwo]: a goal of 10 repetitions, up to 12.
func ByTwoForTwo(s Scene) (progression.Decision, error) {
	return plainly(s, func(p *dose.Prescription, finals []int) (bool, error) {
		p.Count = plainTop
		a, err := rule.TwoForTwo(plainGoal, finals)
		return a.Advice == rule.Raise, err
	})
}

// ByRepsThenLoad raises repetitions from 8 past 12, then load, by [rule.RepsThenLoad].
func ByRepsThenLoad(s Scene) (progression.Decision, error) {
	return plainly(s, func(p *dose.Prescription, finals []int) (bool, error) {
		p.Count = plainBottom
		if len(finals) == 0 {
			return false, nil
		}
		done := finals[len(finals)-1]
		a, err := rule.RepsThenLoad(p.Load.Each(), units.Must(units.Between(plainBottom, plainTop)), done)
		if raise := a.Advice == rule.Raise; !raise {
			p.Count = min(max(done+1, plainBottom), plainTop+1)
			return false, err
		}
		return true, err
	})
}

// ByWeeks takes the next weight every two weeks, if the last set reached the bottom of
// the range. No rule that was read says so: it is common practice.
func ByWeeks(s Scene) (progression.Decision, error) {
	return plainly(s, func(p *dose.Prescription, finals []int) (bool, error) {
		p.Count = plainGoal
		if len(finals) == 0 || finals[len(finals)-1] < plainBottom {
			return false, nil
		}
		since := s.Course.Log[len(s.Course.Log)-len(finals)].Day // of the first visit with this weight
		return s.Course.Day-since >= linearDays, nil
	})
}

// plainly goes on by a rule, which sets the count and says whether load rises. finals
// are the repetitions of the final sets with the present weight, the oldest first.
func plainly(s Scene, rises func(p *dose.Prescription, finals []int) (bool, error)) (progression.Decision, error) {
	log := s.Course.Log
	if s.Course.Request.Phase == dose.Familiarise || len(log) == 0 {
		return Own(s)
	}
	last := &log[len(log)-1]
	p := plain(last.Plan, s.Course.Request.Phase)
	var finals []int
	if last.Plan.Phase == dose.Familiarise {
		p.Load = found(s.Table, last)
	} else {
		finals = finalsOf(log)
	}
	raise, err := rises(&p, finals)
	if err != nil {
		return progression.Decision{}, err
	}
	if raise {
		return steady(p, s.Table.Next)
	}
	below := 0
	for i := len(finals) - 1; i >= 0 && finals[i] < plainBottom; i-- {
		below++
	}
	if a, err := rule.Simplify(below); err != nil || a.Advice != rule.Ease {
		return progression.Decision{Action: progression.HoldDose, Next: &p}, err
	}
	lighter, err := s.Table.Nearest(p.Load.Each()-1, equipment.RoundingRule{})
	if err == nil {
		p.Load = lighter
	}
	return progression.Decision{Action: progression.EaseOff, Next: &p}, nil
}

// plain is a dose in the form that the plain policies use.
func plain(p dose.Prescription, phase dose.Phase) dose.Prescription {
	p.Phase, p.Mode, p.Finding, p.Flags, p.Cautions, p.Reasons = phase, dose.Continued, nil, nil, nil, nil
	p.Sets, p.Reserve, p.Span = plainSets, dose.Reserve{Least: plainLeft, Countable: true}, units.Must(units.Between(1, mostCount))
	return p
}

// found returns the heaviest weight that was lifted as often as the range begins with.
func found(t *equipment.Table, v *progression.Visit) equipment.Load {
	load := v.Plan.Load
	for _, set := range v.Sets {
		each, err := set.Each()
		if l, ok := t.Find(each); err == nil && ok && each > load.Each() && set.Reps >= plainBottom {
			load = l
		}
	}
	return load
}

// finalsOf returns the repetitions of the final sets since the load last changed.
func finalsOf(log []progression.Visit) []int {
	var finals []int
	last := &log[len(log)-1]
	for i := range log {
		v := &log[i]
		if v.Plan.Load.Each() != last.Plan.Load.Each() || v.Plan.Phase == dose.Familiarise {
			finals = nil
			continue
		}
		reps := 0
		if len(v.Sets) > 0 {
			reps = v.Sets[len(v.Sets)-1].Reps
		}
		finals = append(finals, reps)
	}
	return finals
}

// steady takes the next weight, if there is one.
func steady(p dose.Prescription, next func(units.Mass) (equipment.Gap, bool)) (progression.Decision, error) {
	gap, ok := next(p.Load.Each())
	if !ok {
		return progression.Decision{Action: progression.HoldDose, Next: &p}, nil
	}
	p.Load = gap.To
	return progression.Decision{Action: progression.Progress, Change: progression.MoreLoad, Next: &p}, nil
}

// Informed knows the truth, which nobody does: the heaviest weight of the kit that can be
// lifted eight times with three left on a day like most, as often as that leaves, up to 20
// times. It shows what a kit permits. A scene without the weights or the truth is a
// [field.ErrMissing] at /table or /able.
func Informed(s Scene) (progression.Decision, error) {
	if len(s.Course.Log) == 0 {
		return Own(s)
	}
	var bad field.Errors
	if s.Table == nil {
		bad.Add("/table", field.Bad(nil, "the weights of the kit", field.ErrMissing))
	}
	if s.Able == nil {
		bad.Add("/able", field.Bad(nil, "how often a weight could be lifted", field.ErrMissing))
	}
	if err := bad.Err(); err != nil {
		return progression.Decision{}, err
	}
	p := plain(s.Course.Log[len(s.Course.Log)-1].Plan, s.Course.Request.Phase)
	p.Load = s.Table.Lightest()
	for l := range s.Table.Loads() {
		if s.Able(l.Each()) >= fitReps+fitLeft {
			p.Load = l
		}
	}
	p.Count = max(1, min(mostCount, int(s.Able(p.Load.Each()))-plainLeft))
	return progression.Decision{Action: progression.HoldDose, Next: &p}, nil
}
