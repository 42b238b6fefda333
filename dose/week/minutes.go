package week

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
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

// fitMinutes keeps as many of the steps in order as the minutes reach, and says what else was
// wanted and from how many minutes on it is in.
func (p *planner) fitMinutes() {
	if p.r.Minutes == 0 {
		return
	}
	all := p.items
	kept, from := p.reached(all)
	p.items = kept
	p.short = p.cutShort(all)
	for i, item := range all {
		at := slices.IndexFunc(kept, func(k dose.Prescription) bool { return k.Exercise == item.Exercise })
		switch {
		case at < 0:
			p.dropped(item.Exercise, from[i])
		case kept[at].Sets < item.Sets:
			why := evidence.Because("dose.fewer-sets", factChange, factPace, factWarmUp).With(evidence.Count("sets", kept[at].Sets), evidence.Count("whole", item.Sets), evidence.Minutes("minutes", p.r.Minutes))
			kept[at].Reasons = append(item.Reasons, why)
		}
	}
}

// cutShort says how long a session with all that was wanted would be, and where sets came before
// exercises.
func (p *planner) cutShort(all []dose.Prescription) []evidence.Reason {
	whole := p.minutes(all)
	if whole <= p.minutes(p.items) {
		return nil
	}
	list := []evidence.Reason{evidence.Because("dose.minutes-whole", factChange, factPace, factWarmUp).With(evidence.Minutes("whole", whole), evidence.Minutes("minutes", p.r.Minutes))}
	if least := p.leastSets(all); least > 1 && len(p.items) < len(all) {
		list = append(list, evidence.Because("dose.sets-first", append(factsSaid(all[0].Reasons, "dose.sets"), factSetsFirst)...).With(evidence.Count("least", least)))
	}
	return list
}

// reached returns the items that the minutes reach, with their sets, and from how many minutes
// on each of all is in. No step is passed over for a later one that is shorter, so that fewer
// minutes never bring more sets. Where the first is too long it keeps the
// most wanted exercise that fits with one set, else the most wanted.
func (p *planner) reached(all []dose.Prescription) (kept []dose.Prescription, from []int) {
	from, trial := make([]int, len(all)), slices.Clone(all)
	for i := range trial {
		trial[i].Sets = 0
	}
	reach := true
	for _, i := range p.steps(all) {
		if trial[i].Sets++; !reach && trial[i].Sets > 1 {
			continue
		}
		some := slices.DeleteFunc(slices.Clone(trial), func(item dose.Prescription) bool { return item.Sets == 0 })
		needed := p.minutes(some)
		if trial[i].Sets == 1 {
			from[i] = needed
		}
		if reach = reach && needed <= p.r.Minutes; reach {
			kept = some
		}
	}
	if len(kept) == 0 {
		kept = []dose.Prescription{all[max(0, slices.IndexFunc(all, p.fits))]}
		kept[0].Sets = 1
	}
	return kept, from
}

// fits reports whether one set of an exercise alone keeps to the minutes.
func (p *planner) fits(item dose.Prescription) bool {
	item.Sets = 1
	return p.minutes([]dose.Prescription{item}) <= p.r.Minutes
}

// steps are the places of the items whose next set comes next: one set of each in order, then
// second sets, then third ones. Where the row asks for more than one, those that train the
// large muscle groups get as many before any other is added.
func (p *planner) steps(all []dose.Prescription) (order []int) {
	var every, first, rest []int
	least := p.leastSets(all)
	for i, adds := range p.addsGroup(all) {
		if every = append(every, i); adds || least < 2 {
			first = append(first, i)
		} else {
			rest = append(rest, i)
		}
	}
	add := func(places []int, from, to int) {
		for set := from; set <= to; set++ {
			for _, i := range places {
				if set <= all[i].Sets {
					order = append(order, i)
				}
			}
		}
	}
	add(first, 1, least)
	for _, i := range rest {
		add([]int{i}, 1, least)
	}
	add(every, least+1, mostSets(all))
	return order
}

// leastSets are the fewest sets of an exercise that the row asks for, 1 while any of the
// movements is learnt: one is enough at the start.
func (p *planner) leastSets(all []dose.Prescription) int {
	row, err := guideline.Get(all[0].Guideline)
	least, _ := row.Sets.Min()
	if err != nil || slices.ContainsFunc(all, func(item dose.Prescription) bool { return item.Phase == dose.Familiarise }) {
		return 1
	}
	return max(1, min(least, mostSets(all)))
}

func mostSets(all []dose.Prescription) (most int) {
	for _, item := range all {
		most = max(most, item.Sets)
	}
	return most
}

// addsGroup reports of each item whether it trains a large group that none before it does, or is
// a pull, which stands before its push. What is not in the catalogue counts as such.
func (p *planner) addsGroup(all []dose.Prescription) []bool {
	adds, trained := make([]bool, len(all)), make([]bool, len(largeGroups))
	for i, item := range all {
		ex, known := p.r.Catalogue.Get(item.Exercise)
		adds[i] = !known || ex.Pattern.Pulls()
		for _, w := range ex.Muscles {
			for g, group := range largeGroups {
				if w.Role != exercise.Stabiliser && !trained[g] && slices.Contains(group.muscles, w.Muscle) {
					adds[i], trained[g] = true, true
				}
			}
		}
	}
	return adds
}

// dropped lists an exercise that the minutes do not reach; one that stood in
// for another leaves that without a stand-in.
func (p *planner) dropped(id exercise.ID, from int) {
	why := evidence.Because("dose.no-minutes", factChange, factPace, factWarmUp).With(evidence.Minutes("minutes", p.r.Minutes), evidence.ID("exercise", id), evidence.Minutes("from", from))
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

// With returns the week with other doses in its sessions, such as those of a review, and
// what it says of their length made anew: the minutes they take, and where those are more
// than the minutes given, 0 being not limited, what to leave out first. That is what
// [Plan] gives last, with the session's order in place of that of wish. No dose is changed by it, and a week
// without sessions stays as it is.
func (w Week) With(items []dose.Prescription, minutes int) Week {
	if len(w.Sessions) == 0 {
		return w
	}
	p := planner{r: Request{Brief: w.Sessions[0].WarmUp == 0, Minutes: minutes, Catalogue: exercise.Standard()}, items: items}
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
	kept, _ := p.reached(p.items)
	var said []string
	for _, item := range p.items {
		at := slices.IndexFunc(kept, func(k dose.Prescription) bool { return k.Exercise == item.Exercise })
		switch {
		case at < 0:
			said = append(said, "no "+item.Name)
		case kept[at].Sets < item.Sets:
			said = append(said, fmt.Sprintf("%s, %d of %d sets", item.Name, kept[at].Sets, item.Sets))
		}
	}
	return strings.Join(said, "; ")
}
