package dose

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/internal/given"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Of a few minutes a day: how long an exercise and the rest after it take, in seconds, and
// on how many days of a week they are done.
const (
	briefSeconds = 30
	briefRest    = 30
	briefDays    = given.Week
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
	low, _ := g.Span.Min()
	if high, some := g.Span.Max(); some {
		top = min(top, high)
	}
	g.Span = units.Must(units.Between(min(low, top), top))
	g.Count = min(g.Count, top)
	g.Sets, g.BuildTo = 1, 1
	g.Rest, g.Days = units.Exactly(briefRest), units.Exactly(briefDays)
	g.because(evidence.Because("dose.brief", factBrief, factBriefTrial).With(evidence.Seconds("seconds", briefSeconds), evidence.Seconds("rest", briefRest)))
}

// barsBrief reports whether the exercise has no place in a few minutes a day: what is
// lifted or pulled at needs the days between.
func (r *Request) barsBrief() bool { return r.Brief && r.Exercise.Hold != body.Unloaded }
