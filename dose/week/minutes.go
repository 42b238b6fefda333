package week

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/units/evidence"
)

// MinutesOf returns the length of a session without its warm-up: the sets, the
// shortest rests between them, and two minutes from one exercise to the next.
// One-sided work counts each side.
func MinutesOf(items []dose.Prescription) float64 {
	seconds := 0.0
	for _, item := range items {
		seconds += item.Seconds()
	}
	if len(items) > 1 {
		seconds += float64(ChangeSeconds * (len(items) - 1))
	}
	return seconds / 60
}

// wholeMinutes is the length of a session with its warm-up, rounded up.
func wholeMinutes(items []dose.Prescription) int {
	return int(math.Ceil(float64(warmUpMinutes) + MinutesOf(items)))
}

// fitMinutes gives each exercise one set in the order of wish, as far as the
// minutes reach, then second sets, then third ones. Where they reach for none it
// keeps the most wanted. Of a list that was chosen, pushes get no more sets than pulls. Since each exercise and each set adds its own time, going in order
// finds the best choice by that order.
func (p *planner) fitMinutes() {
	if p.r.Minutes == 0 {
		return
	}
	all, whole := p.items, p.items[0].Sets // one row, so that all have as many sets
	p.items = nil
	some := slices.ContainsFunc(all, func(item dose.Prescription) bool {
		item.Sets = 1
		return p.minutes([]dose.Prescription{item}) <= p.r.Minutes
	})
	for i, item := range all {
		item.Sets = 1
		if with := append(p.items, item); (p.minutes(with) <= p.r.Minutes || i == 0 && !some) && !p.outruns(all, item) {
			p.items = with
			continue
		}
		p.dropped(item.Exercise)
	}
	p.addSets(whole)
}

// outruns reports whether one more set of a push would be more than the pulls have,
// where the list was chosen and has pulls: those that were asked for stand as asked, and
// a push alone is better than nothing.
func (p *planner) outruns(all []dose.Prescription, item dose.Prescription) bool {
	pattern := func(i dose.Prescription) exercise.Pattern { return p.r.Catalogue.Pattern(i.Exercise) }
	if len(p.chosen.Wanted) == 0 || len(p.items) == 0 || !pattern(item).Pushes() || !slices.ContainsFunc(all, func(i dose.Prescription) bool { return pattern(i).Pulls() }) {
		return false
	}
	more := 1
	for _, i := range p.items {
		switch {
		case pattern(i).Pushes():
			more += i.Sets
		case pattern(i).Pulls():
			more -= i.Sets
		}
	}
	return more > 0
}

// dropped lists an exercise that the minutes do not reach; one that stood in
// for another leaves that without a stand-in.
func (p *planner) dropped(id exercise.ID) {
	why := evidence.Because("dose.no-minutes", factChange, factPace, factWarmUp).With(evidence.Minutes("minutes", p.r.Minutes), evidence.ID("exercise", id))
	stoodIn := false
	for i, out := range p.leftOut {
		if out.Instead == id {
			p.leftOut[i].Instead, p.leftOut[i].Reasons, stoodIn = "", append(out.Reasons, why), true
		}
	}
	if !stoodIn {
		p.leftOut = append(p.leftOut, LeftOut{Exercise: id, Reasons: []evidence.Reason{why}})
	}
}

// addSets adds second sets in the order of wish, then third ones, up to whole.
func (p *planner) addSets(whole int) {
	for sets := 2; sets <= whole; sets++ {
		for i := range p.items {
			if p.items[i].Sets != sets-1 || p.outruns(p.items, p.items[i]) {
				continue
			}
			p.items[i].Sets = sets
			if p.minutes(p.items) > p.r.Minutes {
				p.items[i].Sets = sets - 1
			}
		}
	}
	for i, item := range p.items {
		if item.Sets < whole {
			why := evidence.Because("dose.fewer-sets", factChange, factPace, factWarmUp).With(evidence.Count("sets", item.Sets), evidence.Count("whole", whole), evidence.Minutes("minutes", p.r.Minutes))
			p.items[i].Reasons = append(item.Reasons, why)
		}
	}
}

// With returns the week with other doses in its sessions, such as those of a review, and
// what it says of their length made anew: the minutes they take, and where those are more
// than the minutes given, 0 being not limited, what to leave out first. That is what
// [Plan] gives last: the sets beyond the first, the highest first and of those the last
// exercise's; then whole exercises from the last on. No dose is changed by it, and a week
// without sessions stays as it is.
func (w Week) With(items []dose.Prescription, minutes int) Week {
	if len(w.Sessions) == 0 {
		return w
	}
	p := planner{r: Request{Brief: w.Sessions[0].WarmUp == 0, Minutes: minutes}, items: items}
	w.Sessions = slices.Clone(w.Sessions)
	for i := range w.Sessions {
		w.Sessions[i].Items, w.Sessions[i].Minutes = items, p.minutes(items)
	}
	var of []evidence.Reason
	for _, r := range w.Reasons {
		switch {
		case r.Code == codeMinutes:
			of = append(of, p.lasts())
		case r.Code == codeBriefDays:
			of = append(of, p.briefly(len(w.Sessions)))
		case r.Code != codeTooFew:
			of = append(of, r)
		}
	}
	if needed := p.minutes(items); minutes > 0 && needed > minutes {
		of = append(of, evidence.Because("dose.minutes-over", factChange, factPace, factWarmUp).With(
			evidence.Minutes("needed", needed), evidence.Minutes("minutes", minutes), evidence.Text("kept", p.trimmed())))
	}
	w.Reasons = of
	return w
}

// trimmed says what is left of each exercise that is cut for the minutes given.
func (p *planner) trimmed() string {
	left := slices.Clone(p.items)
	for p.minutes(left) > p.r.Minutes && len(left) > 1 {
		at := len(left) - 1
		for i := range slices.Backward(left) {
			if left[i].Sets > left[at].Sets {
				at = i
			}
		}
		if left[at].Sets > 1 {
			left[at].Sets--
		} else {
			left = left[:at]
		}
	}
	var said []string
	for i, item := range p.items {
		switch {
		case i >= len(left):
			said = append(said, "no "+item.Name)
		case left[i].Sets < item.Sets:
			said = append(said, fmt.Sprintf("%s, %d of %d sets", item.Name, left[i].Sets, item.Sets))
		}
	}
	return strings.Join(said, "; ")
}
