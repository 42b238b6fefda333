package choice

import (
	"fmt"
	"iter"
	"slices"
	"strings"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Facts of this package's own.
const (
	factOrder          evidence.FactID = "choice.order"
	factWhole          evidence.FactID = "choice.whole-body"
	factMost           evidence.FactID = "choice.most"
	factFew            evidence.FactID = "choice.few"
	factNoOverhead     evidence.FactID = "choice.no-overhead-press"
	factFrail          evidence.FactID = "choice.few-frail"
	factShortLiked     evidence.FactID = "choice.short-liked"
	factFourADay       evidence.FactID = "choice.four-a-day"
	factBeginner       evidence.FactID = "choice.beginner"
	factAlone          evidence.FactID = "choice.alone"
	factByArms         evidence.FactID = "choice.by-arms"
	factGoalBone       evidence.FactID = "choice.goal-bone"
	factTests          evidence.FactID = "choice.tests"
	factOwnValue       evidence.FactID = "choice.own-value"
	factAlike          evidence.FactID = "function.change.alike" // of package function
	factStairTimes     evidence.FactID = "choice.stair-times"
	factHipWeaker      evidence.FactID = "choice.hip-weaker"
	factHipPress       evidence.FactID = "choice.hip-press-and-abduction"
	factJointExercise  evidence.FactID = "choice.joint-exercise"
	factJointTests     evidence.FactID = "choice.joint-tests"
	factChairUpward    evidence.FactID = "choice.chair-upward"
	factHeavierGlucose evidence.FactID = "choice.heavier-for-glucose"
	factFloorChain     evidence.FactID = "choice.floor-chaining"
	factFloorSteps     evidence.FactID = "choice.floor-steps"
	factNotOnFloor     evidence.FactID = "choice.not-on-the-floor"
	factBrief          evidence.FactID = "choice.brief"
	factByBand         evidence.FactID = "choice.by-band"
	factBandAlike      evidence.FactID = "choice.band-alike"
	factByName         evidence.FactID = "choice.by-name"

	// Facts of package guideline: how many exercises, and which where time is short.
	factManySource evidence.FactID = "guideline.acsm2009-older-physical-activity.exercises"
	factFewSource  evidence.FactID = "guideline.iversen2021-time-efficient.exercises"
)

var ownFacts = []evidence.Fact{
	{ID: factOrder, Basis: evidence.Design,
		Value: "tasks, concerns and the goal of bone take turns in naming movements, then come the rest of the body; a pull stands before the push, and there is one push at most, so that pulls get as many sets or more; both stand among the first five, so that arms have had a turn where minutes run short"},
	{ID: factWhole, Value: "movements for everybody, in this order: " + slotNames(everySlot()), Basis: evidence.Design},
	{ID: factMost, Basis: evidence.Design, From: []evidence.FactID{factManySource},
		Value: fmt.Sprintf("at most %d exercises; what others train too is cut first, but for an exercise of the thighs with a weight, and for the back extension where bone or spine asks for it: it is the only one that trains the extensors first. Main muscles: %s", most, muscleNames())},
	{ID: factFew, Basis: evidence.Design, From: []evidence.FactID{factFewSource},
		Value: fmt.Sprintf("%d exercises for who comes little, with one of the legs, a pull and a push among them", little)},
	{ID: factNoOverhead, Basis: evidence.Design,
		Value: "no overhead press in a list that was not asked for by name: no task of the list takes a weight above the shoulders, a second push would ask for a second pull, and the raise trains the muscles of the shoulder. Who wants to reach a shelf asks for it by name"},
	{ID: factFrail, Basis: evidence.Design, From: []evidence.FactID{factShortLiked, factFourADay},
		Value: fmt.Sprintf("%d exercises in frailty, rise, pull, hinge, push, calf and side of the hip among them, and no march: balance work of the same days comes on top, which has one, and which shin and trunk take part in. No source that was read names a number for frail people below that of older ones", frail)},
	{ID: factShortLiked, Source: "kurth2025", Locator: "abstract", Basis: evidence.Published,
		Value: "5 minutes a day were liked better than 45 minutes 3 times a week by 68 % of 611 people of 65 and more, and by 84 % of those who walked with difficulty"},
	{ID: factFourADay, Source: "fouraday", Locator: "abstract", Basis: evidence.Published,
		Value: "four exercises of 30 s with 30 s of rest, each day for 12 weeks, 97 people whose mobility was limited: 4.2 more chair stands, five of them 2.3 s faster, 3.6 s longer on one leg than without; done on 80 % of the days"},
	{ID: factBeginner, Basis: evidence.Design, Value: "a beginner steps up without a weight first" + capNames(beginner)},
	{ID: factAlone, Basis: evidence.Design, Value: "a beginner with nobody at hand pushes at a counter, where a set ends without help" + capNames(alone)},
	{ID: factByArms, Basis: evidence.Design, Value: "whoever needs the arms to stand up, or cannot, in the latest test of a kind of standing up from a chair stands up with hands first and takes no step yet, since a step asks more of one leg than a chair of both" + capNames(byArms)},
	{ID: factGoalBone, Basis: evidence.Design, Value: "with the goal of bone what loads hips and spine comes first: " + slotNames(forBone.first)},
	{ID: factTests, Basis: evidence.Design, Value: "each task is tried itself or by a test of function that lies near it, at the start and at each review: " + testNames()},
	{ID: factOwnValue, Basis: evidence.Design, Value: "where no norm or detectable change is held for a test and the person, their own earlier result under the same conditions is what a later one is held against, and no change is called real"},
	{ID: factStairTimes, Source: "stairtimes2011", Locator: "abstract", Basis: evidence.Published,
		Value: "mean times over 3 steps as fast as is safe, up and down, 513 people of 70 and more: " + stairTexts()},
	{ID: factHipWeaker, Source: "thastrength2015", Locator: "abstract", Basis: evidence.Published,
		Value: "3 months after a hip replacement the operated leg was 18 % weaker than the other in the leg press and 15 % in abduction, 60 people"},
	{ID: factHipPress, Source: "winther2018", Locator: "abstract", Basis: evidence.Published,
		Value: "after a hip replacement leg press and abduction, supervised, 3 times a week to 3 months: stronger at 3 and 6 months, equal at 12, 60 people"},
	{ID: factJointExercise, Source: "ng226", Via: "digests of the guideline", Basis: evidence.Secondary,
		Value: "exercise is offered to everybody with osteoarthritis; pain may rise at first"},
	{ID: factJointTests, Source: "dobson2013", Locator: "abstract as reprinted", Basis: evidence.Published,
		Value: "with osteoarthritis of hip or knee, or the joint replaced: 30-s chair stand, 40-m fast walk, stairs; then timed up and go and 6-min walk"},
	{ID: factChairUpward, Source: "cbedelphi2014", Locator: "abstract", Basis: evidence.Published,
		Value: "16 experts: work on a chair is a step on a way upward, with progress expected; the chair steadies sitting and standing work"},
	{ID: factHeavierGlucose, Source: "kanaley2022", Via: "a list of the consensus statements", Basis: evidence.Secondary,
		Value: "in type 2 diabetes strength work at higher loads helps glucose more"},
	{ID: factFloorChain, Source: "floorreview2020", Locator: "abstract", Basis: evidence.Published,
		Value: "getting up from the floor learnt by backward chaining: 7 studies, 446 people at risk of falls, mean age 82: better at rising, and mobility; fear perhaps"},
	{ID: factFloorSteps, Source: "reece1996", Via: "a teaching page for physiotherapists", Basis: evidence.Secondary,
		Value: "steps, each ending upright again before the next is added: by a chair; one knee to a raised pad; one knee to the floor; both knees; hands down; side sitting; lying"},
	{ID: factBrief, Basis: evidence.Design, From: []evidence.FactID{factFourADay},
		Value: fmt.Sprintf("of a few minutes a day %d exercises, all without a weight, one of the thighs, a pull and a push among them; which the trial had is not known%s", brief, capNames(briefly))},
	{ID: factByBand, Basis: evidence.Design, Value: "where the kit has no weight for it a row is done with the weakest band: " + string(byBand[pull])},
	{ID: factByName, Basis: evidence.Design, Value: "bars and stacks are used only for exercises that are asked for by name"},
	{ID: factBandAlike, Source: "lopes2019", Locator: "abstract", Basis: evidence.Published,
		Value: "strength after training with bands and with machines or dumbbells did not differ, of arms and of legs, 8 trials"},
	{ID: factNotOnFloor, Basis: evidence.Design,
		Value: "not practised on the floor: alone, with a vertebral fracture of less than 6 months, a hip under its time, a knee that cannot bend or bear, or a drop of pressure on standing"},
}

// taskFact names the fact that prints the row of a task.
func taskFact(t Task) evidence.FactID { return madeFact("choice.task.", t.String()) }

// concernFact names the fact that prints the row of a concern.
func concernFact(c Concern) evidence.FactID { return madeFact("choice.concern.", c.String()) }

func madeFact(prefix, text string) evidence.FactID {
	return evidence.FactID(prefix + strings.ReplaceAll(text, " ", "-"))
}

// Facts yields the facts behind the choice: its tables, and what publications say.
func Facts() iter.Seq[evidence.Fact] {
	return func(yield func(evidence.Fact) bool) {
		list := slices.Clone(ownFacts)
		for t := range Tasks() {
			list = append(list, evidence.Fact{ID: taskFact(t), Basis: evidence.Design, Value: "for " + t.String() + " first: " + slotNames(forTask[t].first) + capNames(forTask[t])})
		}
		for c := range Concerns() {
			row := forConcern[c]
			list = append(list, evidence.Fact{ID: concernFact(c), Basis: evidence.Design, From: row.facts,
				Value: "with regard to " + c.String() + " first: " + slotNames(row.first) + capNames(row)})
		}
		for _, f := range list {
			if !yield(f) {
				return
			}
		}
	}
}

func everySlot() []slot {
	var list []slot
	for s := range everybody {
		list = append(list, s)
	}
	return list
}

// slotNames lists the usual exercise of each slot.
func slotNames(list []slot) string {
	names := make([]string, len(list))
	for i, s := range list {
		names[i] = string(variants[s][len(variants[s])-1])
	}
	return strings.Join(names, ", ")
}

// capNames lists what is taken of capped slots, in the order of the slots.
func capNames(t template) string {
	var names []string
	for s := range numSlots {
		if id, some := t.caps[s]; some {
			names = append(names, string(id))
		}
	}
	if len(names) == 0 {
		return ""
	}
	return "; nothing harder than " + strings.Join(names, ", ")
}

func muscleNames() string {
	names := make([]string, len(mainMuscles))
	for i, group := range mainMuscles {
		names[i] = strings.Join(textsOf(group), " or ")
	}
	return strings.Join(names, ", ")
}

func testNames() string {
	var list []string
	add := func(of string, t template) {
		var names []string
		if t.trial != 0 {
			names = append(names, t.trial.String())
		}
		if len(t.tests) > 0 {
			names = append(names, textsOf(t.tests)...)
		}
		if len(names) > 0 {
			list = append(list, of+" by "+strings.Join(names, " and "))
		}
	}
	for t := range Tasks() {
		add(t.String(), forTask[t])
	}
	for c := range Concerns() {
		add(c.String(), forConcern[c])
	}
	return strings.Join(list, "; ")
}

func stairTexts() string {
	list := make([]string, len(stairNorms))
	for i, row := range stairNorms {
		ages := fmt.Sprintf("%d-%d", row.from, row.to)
		if row.to == 0 {
			ages = fmt.Sprintf("%d and over", row.from)
		}
		list[i] = fmt.Sprintf("%s, %s: %.2f and %.2f s", plural[row.sex], ages, row.up, row.down)
	}
	return strings.Join(list, "; ")
}

var plural = map[body.Sex]string{body.Male: "men", body.Female: "women"}
