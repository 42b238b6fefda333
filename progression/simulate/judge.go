package simulate

import (
	"math"
	"slices"

	"example.org/posology/units"
)

// What counts as a visit that works: our own definition, for comparing policies. Growth
// itself knows no such edge, and is reported beside it.
const (
	workShare = 0.60
	workLeft  = 5
	workReps  = 25 // the most of any set
	workSets  = 2
	workFrom  = 3 // the week from which visits are counted
	lateFrom  = 9 // the week from which the dose is looked at
	runOf     = 4 // visits, of which so many work, are a beginning
	runWorks  = 3
	closeLeft = 2
	mostClose = 1
)

// Works reports whether a visit works: two sets or more, at least half of all of them at
// 60 % of the true 1RM or more or with five or fewer truly left, and none of more than
// 25 repetitions. Sets of a search count; what could not be lifted once is no set.
func (l Lived) Works() bool {
	sets, work := 0, 0
	for _, s := range l.Sets {
		if s.Reps > workReps {
			return false
		}
		if s.Reps > 0 {
			sets++
			if s.Share >= workShare || s.Left <= workLeft {
				work++
			}
		}
	}
	return sets >= workSets && 2*work >= sets
}

// A Fate is what became of one trainee; counts, so that those of many can be added.
// "Working sets" are those with the weight of the dose, not the heavier ones of a search.
type Fate struct {
	Visits, Working int // from week 3, while the heaviest weight is half of the usual 1RM or more
	First           int // the week of the first of three working visits in four; 0: never

	Gain         float64 // of the usual 1RM, in per cent, at the last planned day
	Sets         int     // working sets
	Near, Close  int     // of them: under two left; under one, or failed
	Failed       int     // of them: the count could not be finished
	Late         int     // visits from week 9 on
	LateSets     int     // working sets of these
	Share        float64 // sum of their shares of the true 1RM of the day
	Heavier      int     // of Late: a heavier weight could be lifted eight times with three left
	Vain         int     // weights that were tried and not lifted once
	Elsewhere    bool    // sent to another exercise or to somebody, or refused
	Undertreated bool    // fewer than half of the visits from week 9 on work
}

// Judge says what became of a trainee in a run, nil where the first dose was barred. The
// gain and the visits of somebody sent elsewhere stay as they were: every planned visit
// after it is one that does not work. A weight heavier by no more than slack counts as
// the same; where steps are coarse slack is 0.
func Judge(t Trainee, s Setup, run []Lived, slack units.Fraction) (Fate, error) {
	table, err := s.Request.Kit.CompileFor(s.Request.Exercise)
	if err != nil {
		return Fate{}, err
	}
	j := judge{slack: slack, heaviest: float64(max(1, s.Request.Exercise.Hold.Implements())) * table.Heaviest().Each().Kilograms()}
	usual, planned := t.OneRM, s.Weeks*len(s.Days)
	lateWorks := 0
	for i := range run {
		l := &run[i]
		usual = l.Usual
		if !l.Missed && l.Done.Plan.Sets > 0 {
			if j.visit(l) && l.Week >= lateFrom {
				lateWorks++
			}
		}
	}
	j.Gain = 100 * (float64(usual)/float64(t.OneRM) - 1)
	ended := len(run)
	if n := len(run); n == 0 || !run[n-1].Missed && run[n-1].Done.Plan.Sets == 0 {
		j.Elsewhere, ended = true, max(0, n-1)
	}
	late := j.Late
	for i := ended; i < planned; i++ { // what is not trained does not work
		if week := i/len(s.Days) + 1; week >= workFrom && j.within(usual) {
			j.Visits++
			if week >= lateFrom {
				late++
			}
		}
	}
	j.Undertreated = 2*lateWorks < late
	return j.Fate, nil
}

// A judge looks at one visit after the other.
type judge struct {
	Fate
	slack    units.Fraction
	heaviest float64
	works    []bool
	weeks    []int
}

// within reports whether the kit is half of the 1RM or more at its heaviest.
func (j *judge) within(usual units.Mass) bool { return 2*j.heaviest >= usual.Kilograms() }

// visit counts one that was trained, and reports whether it works.
func (j *judge) visit(l *Lived) bool {
	works := l.Works()
	j.works, j.weeks = append(j.works, works), append(j.weeks, l.Week)
	if n := len(j.works); j.First == 0 && n >= runOf && j.works[n-runOf] {
		if lately := j.works[n-runOf:]; count(lately) >= runWorks {
			j.First = j.weeks[n-runOf]
		}
	}
	if l.Week >= workFrom && j.within(l.Usual) {
		j.Visits++
		if works {
			j.Working++
		}
	}
	late := l.Week >= lateFrom
	if late {
		j.Late++
		if float64(l.Fits) > float64(l.Done.Plan.Load.Each())*(1+float64(j.slack)) {
			j.Heavier++
		}
	}
	for _, s := range l.Sets {
		j.set(s, late)
	}
	return works
}

func count(list []bool) (n int) {
	for _, is := range list {
		if is {
			n++
		}
	}
	return n
}

// set counts one.
func (j *judge) set(s TrueSet, late bool) {
	if s.Reps == 0 {
		j.Vain++
	}
	if s.Search {
		return
	}
	j.Sets++
	if s.Left < closeLeft {
		j.Near++
	}
	if s.Left < mostClose {
		j.Close++
	}
	if s.Failed {
		j.Failed++
	}
	if late {
		j.LateSets++
		j.Share += float64(s.Share)
	}
}

// A Toll is what became of many: shares in per cent.
type Toll struct {
	People       int
	Working      float64 // of the visits from week 3
	Gain         float64 // mean
	Median, P90  int     // week of the first of three working visits in four; 0: not within the run
	Share        float64 // mean of the true 1RM, from week 9
	Near, Close  float64 // of the working sets: under two left; under one, or failed
	Failed       float64 // of the working sets: not finished
	Heavier      float64 // of the visits from week 9
	Vain         float64 // per 100 people
	Elsewhere    float64 // of the people
	Undertreated float64 // of the people
}

// Sum adds up what became of many. It is the same in every order. Where a gain or a share
// is no number, which [Judge] never gives, it is the zero Toll.
func Sum(fates []Fate) Toll {
	var all Fate
	elsewhere, under, gain, n := 0, 0, 0.0, len(fates)
	if n == 0 {
		return Toll{}
	}
	var weeks []int
	gains, shares := make([]float64, 0, n), make([]float64, 0, n)
	for _, f := range fates {
		all.Visits, all.Working, all.Sets, all.Near = all.Visits+f.Visits, all.Working+f.Working, all.Sets+f.Sets, all.Near+f.Near
		all.Close, all.Failed, all.Late, all.LateSets = all.Close+f.Close, all.Failed+f.Failed, all.Late+f.Late, all.LateSets+f.LateSets
		all.Heavier, all.Vain = all.Heavier+f.Heavier, all.Vain+f.Vain
		gains, shares = append(gains, f.Gain), append(shares, f.Share)
		if f.Elsewhere {
			elsewhere++
		}
		if f.Undertreated {
			under++
		}
		if f.First == 0 {
			f.First = math.MaxInt
		}
		weeks = append(weeks, f.First)
	}
	slices.Sort(gains) // so that no sum depends on an order
	slices.Sort(shares)
	for i := range n {
		gain, all.Share = gain+gains[i], all.Share+shares[i]
	}
	if !(math.Abs(gain)+math.Abs(all.Share) <= math.MaxFloat64) {
		return Toll{}
	}
	slices.Sort(weeks)
	return Toll{
		People: n, Working: percent(all.Working, all.Visits), Gain: gain / float64(n), Median: weekBy(weeks, 0.5), P90: weekBy(weeks, 0.9),
		Share: 100 * all.Share / float64(max(1, all.LateSets)), Near: percent(all.Near, all.Sets), Close: percent(all.Close, all.Sets),
		Failed: percent(all.Failed, all.Sets), Heavier: percent(all.Heavier, all.Late), Vain: percent(all.Vain, n),
		Elsewhere: percent(elsewhere, n), Undertreated: percent(under, n),
	}
}

func percent(n, of int) float64 { return 100 * float64(n) / float64(max(1, of)) }

// weekBy returns the weekBy by which such a share of the people has one.
func weekBy(sorted []int, share float64) int {
	i := int(math.Ceil(share*float64(len(sorted)))) - 1
	if w := sorted[max(0, i)]; w != math.MaxInt {
		return w
	}
	return 0
}
