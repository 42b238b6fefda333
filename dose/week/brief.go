package week

import (
	"math"

	"example.org/posology/dose"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// briefMinutes is the length of a few minutes' exercises, one after the other.
func briefMinutes(items []dose.Prescription) float64 {
	seconds := 0.0
	for i, item := range items {
		if i > 0 {
			rest, _ := item.Rest.Min()
			seconds += float64(rest)
		}
		seconds += item.Seconds()
	}
	return seconds / 60
}

// minutes is the length of a session, rounded up: with its warm-up, but where it is brief.
func (p *planner) minutes(items []dose.Prescription) int {
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
		list := []evidence.Reason{p.briefly(len(days))}
		if p.r.Screening.Setting <= screening.Alone {
			list = append(list, evidence.Because("dose.brief-alone", factBrief))
		}
		return list
	}
	list := []evidence.Reason{
		evidence.Because("dose.days-between", factGap).With(evidence.Days("days", len(days))),
		p.lasts(),
	}
	if free := len(p.inReview()) - len(days); free > 0 {
		list = append(list, evidence.Because("dose.days-free", factGap).With(evidence.Days("days", free)))
	}
	if p.r.ComesLittle {
		list = append(list, evidence.Because("dose.brief-offer", factBrief, factBriefTrial, factBriefLiked))
	}
	return list
}

// What is said of how long a session takes.
const (
	codeMinutes   evidence.ReasonCode = "dose.minutes"
	codeBriefDays evidence.ReasonCode = "dose.brief-days"
	codeTooFew    evidence.ReasonCode = "dose.minutes-too-few"
)

func (p *planner) lasts() evidence.Reason {
	return evidence.Because(codeMinutes, factChange, factPace, factWarmUp).With(evidence.Minutes("minutes", wholeMinutes(p.items)), evidence.Minutes("warm-up", warmUpMinutes))
}

func (p *planner) briefly(days int) evidence.Reason {
	return evidence.Because(codeBriefDays, factBrief, factBriefTrial, factBriefLiked).With(
		evidence.Count("n", len(p.items)), evidence.Minutes("minutes", p.minutes(p.items)), evidence.Days("days", days))
}
