package history

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/internal/given"
	"example.org/posology/units"
)

// From when on what is told of reserve, as far as it can be counted, does not go with what is
// lifted: hardly any strength changes so within two weeks, nor halves within four.
const (
	SameVisits                = 5 // visits running that told one reserve
	SameDays                  = 2 * given.Week
	ToldApart  units.Fraction = 0.05 // of what they come to, from each other
	FarBelow   units.Fraction = 0.5  // of what was lifted within KnownDays
)

// SameTold reports whether every set of the last visits told one reserve, of loads and counts
// that do not come to the same.
func (h *History) SameTold() (told units.RIR, ok bool) {
	visits := 0
	var least, most float64
	for i := len(h.Log) - 1; i >= 0 && visits < SameVisits && int(h.Log[len(h.Log)-1].Day-h.Log[i].Day) <= SameDays; i-- {
		v := &h.Log[i]
		for j := range v.Sets {
			shown, left, known := h.comesTo(&v.Sets[j])
			if !known || left > given.Countable || most > 0 && left != told {
				return 0, false
			}
			if most == 0 {
				told, least = left, shown
			}
			least, most = min(least, shown), max(most, shown)
		}
		if len(v.Sets) > 0 {
			visits++
		}
	}
	return told, visits == SameVisits && most > least*float64(1+ToldApart)
}

// FarBelow reports whether the sets of the last visit come to less than half of what one of
// the last weeks came to.
func (h *History) FarBelow() bool {
	var now, best float64
	for i := len(h.Log) - 1; i >= 0 && int(h.Day-h.Log[i].Day) <= given.KnownDays; i-- {
		for j := range h.Log[i].Sets {
			shown, left, known := h.comesTo(&h.Log[i].Sets[j])
			switch last := i == len(h.Log)-1; {
			case last && (!known || left > given.Countable):
				return false
			case last:
				now = max(now, shown)
			case known:
				best = max(best, shown)
			}
		}
	}
	return now > 0 && now < best*float64(FarBelow)
}

// comesTo is what a set shows by Epley, all that is moved among it, and what it told.
func (h *History) comesTo(s *setlog.Set) (shown float64, told units.RIR, known bool) {
	told, known = given.Told(s.Effort)
	load := max(1, float64(h.WithBody(given.Each(*s)))) // of the body alone the repetitions tell
	counted := h.Request.Exercise.Measure == exercise.Repetitions
	return load * (1 + (float64(s.Reps)+float64(told))/EpleyReps), told, known && counted
}

// EpleyReps is the 30 of 1RM = load × (1 + repetitions/30).
const EpleyReps = 30
