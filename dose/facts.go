package dose

import (
	"fmt"
	"iter"
	"strconv"
	"strings"

	"example.org/posology/dose/guideline"
	"example.org/posology/dose/internal/given"
	"example.org/posology/dose/internal/say"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// ownFacts print this package's own numbers from what the code uses. What a
// publication says stands as it was read.
var ownFacts = []evidence.Fact{
	{ID: factOlder, Value: fmt.Sprintf("from %d years on rows for older adults are followed, and balance and brisk movement belong beside the lifting; below that, rows for adults by training status", given.Older), Basis: evidence.Design},
	{ID: factStart, Value: fmt.Sprintf("from %d years on familiarisation follows %s, whatever the goal", given.Older, startRow),
		Basis: evidence.Design, From: []evidence.FactID{"guideline.acsm2011-older-start.population"}},
	{ID: factAims, Value: fmt.Sprintf("from %d years on a goal leads to the row that speaks of it or comes nearest: %s", given.Older, goalsLead()), Basis: evidence.Design},
	{ID: factYoung, Value: fmt.Sprintf("below %d years the row is that of strength, by training status: %s", given.Older, trainingLeads()), Basis: evidence.Design},
	{ID: factRest, Value: fmt.Sprintf("%v seconds between sets where a recommendation states none", usualRest),
		Basis: evidence.Computed, From: []evidence.FactID{"guideline.grgic2018-rest-untrained.rest"}},
	{ID: factDays, Value: fmt.Sprintf("%s days a week where a recommendation states none", span(usualDays)),
		Basis: evidence.Computed, From: []evidence.FactID{"guideline.acsm2011-older-start.days"}},
	{ID: factReserveBand, Value: "1 to 3 repetitions in reserve paired with ratings of 15 to 18 on the scale from 6 to 20",
		Source: "prediabetes2021", Locator: "Table 3", Basis: evidence.Published},
	{ID: factReserve, Value: fmt.Sprintf("at least %v in reserve for a novice, %v for an intermediate, %v for an advanced person",
		startReserve[body.Novice], startReserve[body.Intermediate], startReserve[body.Advanced]),
		Basis: evidence.Design, From: []evidence.FactID{factReserveBand}},
	{ID: factHackett, Value: "reserve is misjudged by about 1 repetition when 0 to 5 are left, by more than 2 when 7 to 10 are",
		Source: "hackett2017", Basis: evidence.Published},
	{ID: factUncountable, Value: fmt.Sprintf("a reserve above %v is not counted; the set ends while it is clearly easy", uncountable),
		Basis: evidence.Design, From: []evidence.FactID{factHackett}},
	{ID: factIntensity, Value: fmt.Sprintf("under a limit at moderate effort at least %v in reserve, at light effort more than %v: 1 to 3 in reserve are rated as vigorous",
		intensityReserve[screening.Moderate], intensityReserve[screening.Light]),
		Basis: evidence.Design, From: []evidence.FactID{factReserveBand}},
	{ID: factSteps, Value: fmt.Sprintf("at most %s steps up in weight in one visit while the load is looked for, %s where each is %v or less of the weight held", say.Spelt(findingSteps), say.Spelt(smallSteps), smallStep), Basis: evidence.Design},
	{ID: factLookedAt, Value: "within a visit the weight goes up only where somebody saw the technique of the exercise and somebody is at hand; alone by no step, small or large, overhead or not",
		Basis: evidence.Design},
	{ID: factMost, Value: "restrictions, a limit on the share of a maximum, a beginner's first weight until the technique was seen, and the bound of an exercise that is replaced all hold: the least of them is said with every dose", Basis: evidence.Design},
	{ID: factBest, Value: "the band of a row is taken on the best of what is known of strength: the heaviest weight in it with which the chance allows the row's lowest count; where none does, the lightest, above the band too, for as many as it allows", Basis: evidence.Design, From: []evidence.FactID{factReserveChance, factFinishChance}},
	{ID: factLimits, Value: "every limit of a screening binds each dose as it stands: share of a maximum, reserve, effort, a lighter session; what it comes from is said with the screening's findings", Basis: evidence.Design},
	{ID: factShareDone, Value: fmt.Sprintf("without an estimate a limit on the share of 1RM is one on what the sets that were done show at the least: by the equation that gives less, on at most %d repetitions to failure, the reserve less %v and none above %v",
		aboutTen, reserveError, uncountable-reserveError),
		Basis: evidence.Design, From: []evidence.FactID{"onerm.brzycki", factHackett}},
	{ID: factUnknownShare, Value: fmt.Sprintf("under a limit on the share of 1RM of which nothing is known only the lightest weight is taken, and only within the first weight of the exercise, %v where none is set, or the bound of one that it replaces", leastFirstMass),
		Basis: evidence.Design, From: []evidence.FactID{"exercise.first-mass-small-raise"}},
	{ID: factTempo, Value: fmt.Sprintf("%v seconds down and %v seconds up", tempo.Lowering, tempo.Lifting),
		Basis: evidence.Computed, From: []evidence.FactID{"guideline.gschwind2013-beginner.rep_seconds",
			"guideline.acsm2009-strength-intermediate.lift_seconds", "guideline.acsm2009-strength-intermediate.lower_seconds"}},
	{ID: factFast, Value: fmt.Sprintf("for power up as fast as can be controlled, reckoned as %v second, and %v seconds down; how likely the count is to be reached decides nothing there, since a set ends where it slows", fastTempo.Lifting, fastTempo.Lowering),
		Basis: evidence.Design, From: []evidence.FactID{factSlower, "guideline.gianoudis2012-trial.lower_seconds"}},
	{ID: factFewerLater, Value: "fewer repetitions in a later set are acceptable", Basis: evidence.CommonPractice},
	{ID: factPerformed, Value: "looking for the load begins from a set that was really done, never above it, and lighter where more repetitions or more reserve are asked for",
		Basis: evidence.Design, From: []evidence.FactID{"onerm.epley", "onerm.brzycki"}},
	{ID: factContinued, Value: "a dose that goes on from another is never above any limit of a first one, save that a beginner's first weight binds only until the technique was seen", Basis: evidence.Design},
	{ID: factMaintain, Value: fmt.Sprintf("older people keep strength with %s sessions a week and %s to %s sets", say.Spelt(maintainDays), say.Spelt(maintainSets), say.Spelt(maintainMostSets)),
		Source: "spiering2021", Basis: evidence.FromMemory},
	{ID: factReviewed, Value: "nobody is dosed on an assessment whose review is overdue", Basis: evidence.Design},
	{ID: factThere, Value: "no exercise is dosed that needs what is not there; where nobody asked what stands there, everything is taken as there, and the week says so", Basis: evidence.Design},
	{ID: factBrief, Value: fmt.Sprintf("for who will not come to sessions: on every day offered one set of each exercise, as many repetitions as about %d s hold, of each side where it is one-sided, %d s of rest, no weight, no warm-up of its own; weights and bands need the days between, and belong in sessions", briefSeconds, briefRest),
		Basis: evidence.Design, From: []evidence.FactID{factBriefTrial}},
	{ID: factBandUneven, Value: "of one make's bands, 80 pieces, two neighbouring colours pulled alike, the strongest 5.1 times as hard as the lightest at twice its length, and the steps were uneven",
		Source: "bandtension2009", Locator: "abstract", Basis: evidence.Published},
	{ID: factBandPrinted, Value: "the printed pull of one make's bands differed from what was measured in 5 of 8 colours, and was too high",
		Source: "bandtension2016", Locator: "abstract", Basis: evidence.Published},
	{ID: factBandReps, Value: "the dose of a band by repetitions: gripped so that 15 were all that could be done, and wider for a lighter dose, it was told apart by effort",
		Source: "colado2014", Locator: "abstract", Basis: evidence.Published},
	{ID: factBandStretch, Value: "what a band pulls follows how far it is stretched: with another anchor or another start the dose is another", Basis: evidence.Design},
	{ID: factBand, Value: "no mass is known of a band: it has no one-repetition maximum and no share of one, and it is not used under a limit on a mass or on a share of a maximum",
		Basis: evidence.Design, From: []evidence.FactID{factBandUneven, factBandPrinted, factBandStretch}},
	{ID: factBandOrder, Value: "a band is dosed by repetitions and reserve alone; more repetitions come first, then more sets, then the next band in the order of their user, from the low end of the repetitions",
		Basis: evidence.Design, From: []evidence.FactID{factBandReps}},
	{ID: factFirstSeen, Value: fmt.Sprintf("once somebody saw the technique a first weight no longer bounds; watched, the search begins at its upper end, and a kit may begin with up to %s times of it", say.Spelt(firstSeen)), Basis: evidence.Design, From: []evidence.FactID{"exercise.first-mass-small-raise"}},
	{ID: factSparing, Value: fmt.Sprintf("no count under %d and nothing above %v of the 1RM while the movement is learnt and unless its technique was seen within %s, save with the lightest weight; none without breath-holding, under a limit on effort or on a share below %v, on a lighter day, with a recent or undated vertebral fracture, frailty or a joint or tendon operated on, nor over head or face while alone", fewestSparing, mostSparing, say.Weeks(seenDays), mostSparing), Basis: evidence.Design},
	{ID: factFeel, Value: fmt.Sprintf("the next weight may be felt in one set where somebody saw the technique within %s and is there, nothing rules out counts under %d, and what is known of strength is %v of it or more; no hinge and no carry in osteoporosis", say.Weeks(seenDays), fewestSparing, nearlyAll), Basis: evidence.Design, From: []evidence.FactID{factSparing}},
	{ID: factWorks, Value: fmt.Sprintf("a weight works where it is no lighter than the goal's row asks for and the chance allows %d repetitions of it with the usual reserve; of a kit nothing is said where one will after a gain of about %v, as in six weeks of training", fewestSparing, units.Fraction(soonGained)), Basis: evidence.Design, From: []evidence.FactID{"guideline.sarcopenia2022-hurst.reps", factReserveChance, factFinishChance}},
	{ID: factSold, Value: "dumbbells are sold in " + soldSizes() + " kg", Basis: evidence.CommonPractice},
	{ID: factFarAlone, Value: fmt.Sprintf("alone no weight is tried that is more than %v heavier than the one before", farStep), Basis: evidence.Design},
	{ID: factBreath, Value: fmt.Sprintf("where breath must not be held at least %v stay in reserve, and beyond %d repetitions a count keeps %v: pressure rises towards the end of a set more than with its load", breathReserve, longSet, uncountable), Basis: evidence.Design, From: []evidence.FactID{factPressure}},
	{ID: factPressure, Value: "13 healthy men, knee extension to failure without breath-holding: 154/99 mmHg with the weight of 4 repetitions, 203/126 with that of 20, 154/91 at the fourth of those",
		Source: "gjovaag2016", Locator: "abstract", Basis: evidence.Published},
	{ID: factFew, Value: fmt.Sprintf("%d lifts of the lightest weight are asked for though the chance allows fewer, up to %v of the 1RM, where %d can be done, and end by the reserve: there is nothing lighter to go down to", leastAtLightest, mostForFew, leastAtLightest+1), Basis: evidence.Design, From: []evidence.FactID{"onerm.epley", factSparing}},
	{ID: factEnds, Value: fmt.Sprintf("no count goes beyond %d, %d where strength is known; a course goes beyond the first only where no heavier weight is near; where a limit asks for more, up to the second, as many are asked for", topOf(workable), mostBridged), Basis: evidence.Design},
	{ID: factHeld, Value: heldOrWalked.String() + " seconds or metres where an exercise states no range", Basis: evidence.Design},
	{ID: factPace, Value: fmt.Sprintf("%v metres a second when carrying, for the length of a session", walkingPace), Basis: evidence.Design},
	{ID: factMostMissed, Value: fmt.Sprintf("at most %d days away, or from the last visit or planned day to the day that is asked for: a ceiling against slips, and no dose", MostMissed), Basis: evidence.Design},
}

// Facts yields the facts behind this package's own choices.
func Facts() iter.Seq[evidence.Fact] {
	return func(yield func(evidence.Fact) bool) {
		for _, f := range ownFacts {
			if !yield(f) {
				return
			}
		}
	}
}

// goalsLead lists the row of each goal.
func goalsLead() string {
	var list []string
	for goal := guideline.Strength; goal <= guideline.Health; goal++ {
		list = append(list, fmt.Sprintf("%s to %s", goal, aims[goal]))
	}
	return strings.Join(list, ", ")
}

// trainingLeads lists the row of each training status.
func trainingLeads() string {
	var list []string
	for status := body.Novice; status <= body.Advanced; status++ {
		list = append(list, fmt.Sprintf("%s %s", status, youngRows[status]))
	}
	return strings.Join(list, ", ")
}

// soldSizes lists the sizes of dumbbells that are sold.
func soldSizes() string {
	list := make([]string, len(sold))
	for i, tenths := range sold {
		list[i] = strconv.FormatFloat(float64(tenths)/10, 'f', -1, 64)
	}
	return strings.Join(list, ", ")
}

func topOf(r units.Range[int]) int {
	high, _ := r.Max()
	return high
}

func span(r units.Range[int]) string {
	low, _ := r.Min()
	high, _ := r.Max()
	return say.Spelt(low) + " to " + say.Spelt(high)
}
