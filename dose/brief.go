package dose

import (
	"math"

	"example.org/posology/dose/exercise"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Of a few minutes a day: how long an exercise and the rest after it take, in seconds, and
// on how many days of a week they are done.
const (
	briefSeconds = 30
	briefRest    = 30
	briefDays    = daysInWeek
)

// brief turns the guide into that of a few minutes a day: one set of what fits into
// its seconds, and no more of anything than without it, but days.
func (g *guide) brief(r *Request) {
	if !r.Brief {
		return
	}
	top := briefSeconds
	switch r.Exercise.Measure {
	case exercise.Repetitions:
		top = max(int(briefSeconds/tempo.Seconds()), r.Screening.Limits.LeastCount)
	case exercise.Metres:
		top = int(briefSeconds * walkingPace)
	}
	low, _ := g.count.Min()
	if high, some := g.count.Max(); some {
		top = min(top, high)
	}
	g.count = units.Must(units.Between(min(low, top), top))
	g.first = min(g.first, top)
	g.sets, g.buildTo = 1, 1
	g.rest, g.days = units.Exactly(briefRest), units.Exactly(briefDays)
	g.because(evidence.Because("dose.brief", factBrief, factBriefTrial).With(evidence.Seconds("seconds", briefSeconds), evidence.Seconds("rest", briefRest)))
}

// barsBrief reports whether the exercise has no place in a few minutes a day: what is
// lifted or pulled at needs the days between.
func (r *Request) barsBrief() bool { return r.Brief && r.Exercise.Hold != body.Unloaded }

// briefMinutes is the length of a few minutes' exercises, one after the other.
func briefMinutes(items []Prescription) float64 {
	seconds := 0.0
	for i, item := range items {
		if i > 0 {
			seconds += briefRest
		}
		seconds += item.Seconds()
	}
	return seconds / 60
}

// minutes is the length of a session, rounded up: with its warm-up, but where it is brief.
func (p *planner) minutes(items []Prescription) int {
	if p.r.Brief {
		return int(math.Ceil(briefMinutes(items)))
	}
	return wholeMinutes(items)
}

// warmUp is that of the session: a few minutes without a weight need none of their own.
func (p *planner) warmUp() int {
	if p.r.Brief {
		return 0
	}
	return warmUpMinutes
}

// spacing says how far apart the sessions are and how long they last.
func (p *planner) spacing(days []units.Day) []evidence.Reason {
	if p.r.Brief {
		list := []evidence.Reason{evidence.Because("dose.brief-days", factBrief, factBriefTrial, factBriefLiked).With(
			evidence.Count("n", len(p.items)), evidence.Minutes("minutes", p.minutes(p.items)), evidence.Days("days", len(days)))}
		if p.r.Screening.Setting <= screening.Alone {
			list = append(list, evidence.Because("dose.brief-alone", factBrief))
		}
		return list
	}
	list := []evidence.Reason{
		evidence.Because("dose.days-between", factGap).With(evidence.Days("days", len(days))),
		evidence.Because("dose.minutes", factChange, factPace, factWarmUp).With(evidence.Minutes("minutes", wholeMinutes(p.items)), evidence.Minutes("warm-up", warmUpMinutes)),
	}
	if p.r.ComesLittle {
		list = append(list, evidence.Because("dose.brief-offer", factBrief, factBriefTrial, factBriefLiked))
	}
	return list
}
