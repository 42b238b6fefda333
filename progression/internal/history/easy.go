package history

import (
	"math"
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/units"
)

// Leaves is the count that leaves a reserve by what a set told. Ten told, where the scale
// ends, are ten or more: they bound no count.
func Leaves(reps int, told, reserve units.RIR) int {
	if told >= wholeScale {
		return 1 << 20 // more than any count, and room for some
	}
	return int(math.Floor(float64(reps) + float64(told-reserve)))
}

// ShowsItself reports whether sets with a weight show that it can be done at the bottom of
// the range in reserve, on the weaker side too.
func (h *History) ShowsItself(v *visit.Visit, bottom int, reserve units.RIR) bool {
	if v.Done() == 0 {
		return false
	}
	for _, s := range v.Sets {
		left, _ := v.With([]setlog.Set{s}).Reserve()
		enough := s.Reps >= bottom
		if h.Request.Exercise.Measure == exercise.Repetitions {
			enough = float64(s.Reps)+float64(left) >= float64(bottom)+float64(reserve)
		}
		if !enough {
			return false
		}
	}
	return true
}

// LongEasy reports whether the last so many visits were done in full with a weight, every set
// rated as leaving more than can be counted.
func (h *History) LongEasy(each units.Mass, visits int) bool {
	return len(h.Log) >= visits && !slices.ContainsFunc(h.Log[len(h.Log)-visits:], func(v visit.Visit) bool {
		return v.Plan.Load.Each() != each || v.Done() < v.Plan.Sets || slices.ContainsFunc(v.Sets, notEasy)
	})
}

// notEasy reports whether a set was not rated, or as leaving no more than can be counted.
func notEasy(s setlog.Set) bool {
	if s.Effort.Scale() == units.ScaleOMNI {
		return s.Effort.Number() >= wholeScale-rule.Countable
	}
	left, err := s.Effort.RIR()
	told, known := left.Min()
	return err != nil || !known || told <= rule.Countable
}

// LeftEasily reports whether nothing heavier than a weight was done, and every set with it left
// more than can be counted.
func LeftEasily(v *visit.Visit, each units.Mass) bool {
	left, known := v.With(v.SetsWith(func(m units.Mass) bool { return m == each })).Reserve()
	heavier := v.SetsWith(func(m units.Mass) bool { return m > each })
	return known && left > rule.Countable && len(heavier) == 0
}

// CameTo reports whether some set came to fewer repetitions than least; of what is counted
// those told in reserve are among them.
func CameTo(sets []setlog.Set, least int, counted bool) bool {
	return slices.ContainsFunc(sets, func(s setlog.Set) bool {
		able := float64(s.Reps)
		if left, err := s.Effort.RIR(); err == nil && counted {
			told, _ := left.Min() // what was not recorded may have been nothing
			able += float64(told)
		}
		return able < float64(least)
	})
}

// Hardest returns the rating of the hardest set, false where one has none on the scale omni.
func Hardest(sets []setlog.Set) (units.Effort, bool) {
	hardest := units.Must(units.OMNI(0))
	for _, s := range sets {
		if s.Effort.Scale() != units.ScaleOMNI {
			return hardest, false
		}
		if s.Effort.Number() > hardest.Number() {
			hardest = s.Effort
		}
	}
	return hardest, true
}
