package history

import (
	"math"
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
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

// Recall looks in the log for sets with a weight; the latest tell. Within four weeks
// they show it again, at the bottom of the range in reserve, once visits are calm: as after
// an easier spell or a trial that asked for more reserve; or, within so many visits however
// long ago, it was tried in vain. Pain says nothing of strength, and the calm visits are
// for it; lost form does.
func (h *History) Recall(each units.Mass, visits, bottom int, reserve units.RIR) (again, vain bool) {
	age := 0
	for i := len(h.Log) - 1; i >= 0; i-- {
		v, lately := &h.Log[i], len(h.Log)-i <= visits
		age += h.GapAfter(i)
		switch {
		case !lately && age > given.KnownDays:
			return false, false
		case given.Yes(v.Unable) && v.Plan.Load.Each() == each: // a failed lift leaves no set to find
			return false, lately
		case Lifts(v, each):
			sets := v.SetsWith(func(m units.Mass) bool { return m == each })
			shows := v.FormLost == screening.No && h.ShowsItself(v.With(sets), bottom, reserve)
			return shows && age <= given.KnownDays, !shows && lately
		}
	}
	return false, false
}

// EasedBefore reports whether one of so many visits before the last one spoke for less.
func (h *History) EasedBefore(visits int) (bool, error) {
	log := h.Log[:len(h.Log)-1]
	for _, v := range log[max(0, len(log)-visits):] {
		if g, err := visit.Gates(v); err != nil || g.Advice >= rule.Ease {
			return true, err
		}
	}
	return false, nil
}

// LongEasy reports whether the last so many visits were done in full with a weight, every set
// rated as leaving more than can be counted.
func (h *History) LongEasy(each units.Mass, visits int) bool {
	return len(h.Log) >= visits && !slices.ContainsFunc(h.Log[len(h.Log)-visits:], func(v visit.Visit) bool {
		return v.Plan.Load.Each() != each || v.Done() < v.Plan.Sets || slices.ContainsFunc(v.Sets, notEasy)
	})
}

// Calm reports whether the last so many visits were done with a weight and without trouble.
func (h *History) Calm(each units.Mass, visits int) bool {
	for i := max(0, len(h.Log)-visits); i < len(h.Log); i++ {
		v := &h.Log[i]
		_, other := v.OtherLoad()
		if v.Plan.Load.Each() != each || other || v.Done() == 0 || v.Below() || !v.MayFind() {
			return false
		}
	}
	return len(h.Log) >= visits
}

// RatedEasy reports whether the last so many visits went through the range with a weight,
// every set rated as less than hard.
func (h *History) RatedEasy(each units.Mass, visits int) bool {
	for i := max(0, len(h.Log)-visits); i < len(h.Log); i++ {
		v := &h.Log[i]
		if v.Plan.Load.Each() != each || v.Repetitions().Advice != rule.Raise || slices.ContainsFunc(v.Sets, notBelowHard) {
			return false
		}
	}
	return true
}

// LeftEasily reports whether at a visit nothing heavier than a weight was done, and every
// set with it left more than can be counted.
func LeftEasily(v *visit.Visit, weight units.Mass) bool {
	some := false
	for i := range v.Sets {
		s := &v.Sets[i]
		each, _ := s.Hold.Each(s.Load, s.Stated)
		told, _ := given.Told(s.Effort)
		if each > weight || each == weight && told <= given.Countable {
			return false
		}
		some = some || each == weight
	}
	return some
}

// CameTo reports whether some set of a visit came to fewer repetitions than least, those
// told in reserve among them where repetitions are counted.
func (h *History) CameTo(v *visit.Visit, least int) bool {
	for i := range v.Sets {
		able := float64(v.Sets[i].Reps)
		if h.Request.Exercise.Measure == exercise.Repetitions {
			told, _ := given.Told(v.Sets[i].Effort) // what was not recorded may have been nothing
			able += float64(told)
		}
		if able < float64(least) {
			return true
		}
	}
	return false
}

// notEasy reports whether a set was not rated, or as leaving no more than can be counted.
func notEasy(s setlog.Set) bool {
	if s.Effort.Scale() == units.ScaleOMNI {
		return s.Effort.Number() >= wholeScale-given.Countable
	}
	told, known := given.Told(s.Effort)
	return !known || told <= given.Countable
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
