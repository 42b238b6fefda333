package progression

import (
	"fmt"
	"iter"
	"slices"
	"sync"

	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/internal/history"
	"example.org/posology/progression/internal/told"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

func because(code evidence.ReasonCode) evidence.Reason { return told.Because(code) }

// Words returns what this package's reasons say. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(told.Reasons().Words())) })

// Facts yields the facts behind [Next]. Those of rules, visits and programmes are in
// packages of their own.
func Facts() iter.Seq[evidence.Fact] { return slices.Values(nextFacts) }

// nextFacts are the choices that [Next] makes between what is published.
var nextFacts = []evidence.Fact{
	{ID: told.Refer, Value: "what ended a session, pain of a kind that the pain model is never used for, and any sign that sends to help now or today, is looked at by somebody qualified (at least by whom its way out names, a doctor of what sends to help now or today), and the person assessed anew, before the next dose", Basis: evidence.Design},
	{ID: told.Medical, Value: "an operation, a fracture, a hospital stay, a fall or a new diagnosis ends the plan; after an assessment it begins anew", Basis: evidence.CommonPractice},
	{ID: told.Variant, Value: fmt.Sprintf("a visit that speaks for less within %d after another, or nothing lighter left to take: an easier variant, learnt anew and lighter than the last dose, or the exercise is left out", recurring), Basis: evidence.Design},
	{ID: told.FindOn, Value: fmt.Sprintf("while every set leaves more than %d in reserve the load goes on being looked for, from the heaviest weight that was done so; where that had to wait, afterwards, and with the lightest weight again at the end of the range, after %d calm visits, at one in %d at most", given.Countable, calmVisits, feelEvery), Basis: evidence.Design, From: []evidence.FactID{told.Reserve}},
	{ID: told.SetsFirst, Value: "the sets that the plan builds up to come before more load, one at a visit", Basis: evidence.Design},
	{ID: told.Shown, Value: fmt.Sprintf("the next weight is taken when the chance that doses are kept to allows the lowest count of the range with it, %d where it is more than %v heavier: by all that visits and tests have shown", farFloor, farShare), Basis: evidence.Design, From: []evidence.FactID{"onerm.epley", told.Reserve, told.Between}},
	{ID: told.DoneBefore, Value: fmt.Sprintf("a weight whose own sets of the last %d days show that it can be done at the bottom of the range in the reserve asked for is taken after %d calm visits in a row with the present one", given.KnownDays, calmVisits), Basis: evidence.Design},
	{ID: told.RatedTwice, Value: fmt.Sprintf("of what counts no repetitions the next weight, up to %v heavier or %v of all that is moved, is taken at the bottom of the range after %d visits running at its top, every set rated below %v of 10 or, where reserve is told, with more left than that stands for; a larger step is tried, or taken, up to double, with somebody there after %d visits that left more than can be counted, none of them with a trial in vain or not taken up", bigHeld, bigMoved, calmVisits, given.OMNILimit, feelEvery), Basis: evidence.Design, From: []evidence.FactID{"progression.omni-below-8"}},
	{ID: told.TooMuch, Value: "what cannot be lifted once, or not as often as the range begins with even to failure, is too heavy: lighter at the next visit, and an easier variant where nothing is lighter", Basis: evidence.CommonPractice},
	{ID: told.Fit, Value: fmt.Sprintf("repetitions are kept to what the chance allows with the reserve that is asked for, and a weight that allows fewer than %d goes down; the lightest is kept for %d as long as every set came to one more, told in reserve or done, then an easier variant; of what was just done with that reserve told up to %d stay, and all that left more than can be counted, where ten told are ten or more; a count rises no further than every set's repetitions and what it told leave the reserve asked, and stays up to %d above that, up to one where nothing else tells of strength, and none where more is to be left than before, of what was not done by what was asked, or a set told nothing left, which takes no weight away; after %d calm visits in a row that were clearly easy one more may come; three visits that only ended nearer to failure than asked bring fewer, while a set is worth it, before a lighter weight, which does not come where more than can be counted was asked and every set left %d, as the fewest repetitions that screening allows then stay", leastCount, leastAtLightest, farFloor, toFall, calmVisits, calmLeft), Basis: evidence.Design, From: []evidence.FactID{told.Reserve}},
	{ID: told.Try, Value: fmt.Sprintf("where a load is looked for, and where the body moves too or no repetitions are counted, a weight is tried, up to %d steps at a visit and each only while it is clearly easy, when every set left more than %d in reserve and what is known of strength comes to %v of it, or when nothing but the lightest was tried; what was too much is not tried again within %d days; a trial that was not taken up is asked about once, and not offered again for %d visits", mostTries, given.Countable, nearlyAll, given.KnownDays, feelEvery), Basis: evidence.Design, From: []evidence.FactID{told.Reserve}},
	{ID: told.Feel, Value: fmt.Sprintf("a weight more than %v heavier is felt in one set, of one lift fewer than it has to allow and ended by its reserve, where what is known of strength makes %d lifts as likely as not, at one visit in %d at most, not within as many of a feel or trial that was not taken up, and after one in vain, which tells nothing, only once what is known of strength comes to %v more", feelShare, leastFelt, feelEvery, feelAgain), Basis: evidence.Design, From: []evidence.FactID{"dose.feel"}},
	{ID: told.Between, Value: "a weight of the kit is passed over only by a step of the published size in the hand, or, where the body moves too and the step is of that size of all that is moved, up to double in the hand and where the chance allows the whole range with the weight between", Basis: evidence.Design, From: []evidence.FactID{told.Guidance}},
	{ID: told.EasyStep, Value: fmt.Sprintf("repetitions go to what the chance allows, at most %d more at a visit, and %d while every set left more than can be counted; where nothing is known of strength one, but as many where a harder variant brings a weight; of seconds and metres %d more", repsStep, easyStep, easyStep), Basis: evidence.Design},
	{ID: told.Slower, Value: fmt.Sprintf("lowering in %v seconds: with two up, the six a repetition that did best in older adults; a set stays no longer than it was, save that repetitions do not fall below the range", slowLowering), Basis: evidence.Design, From: []evidence.FactID{"guideline.borde2015-strength.rep_seconds"}},
	{ID: told.Pause, Value: fmt.Sprintf("a pause of %v seconds before lifting: a repetition stays within the eight seconds up to which its length matters little for growth", longPause), Basis: evidence.Design, From: []evidence.FactID{"guideline.schoenfeld2015-tempo.rep_seconds"}},
	{ID: told.ExtraSet, Value: "a set more, up to the guideline's most, comes after slower lowering and a pause, and only where the next weight could be neither shown nor tried", Basis: evidence.Design},
	{ID: told.Least, Value: "after days away, where nothing is lighter, one set of the fewest repetitions that screening asks for stays, as long as nothing but the days says that fewer can be done", Basis: evidence.Design, From: []evidence.FactID{"progression.return-no-source"}},
	{ID: told.Limit, Value: "a limit is not worked round: below it repetitions go to the top of the guideline's range, no further", Basis: evidence.Design},
	{ID: told.KitEnds, Value: "where the kit, repetitions, pace, sets and variants are used up the dose is held, and a weight in between is what would help", Basis: evidence.Design},
	{ID: told.TwoRises, Value: fmt.Sprintf("at most %d loads rise at one visit, those first that did not for longest, then the smallest steps, and at most %d are looked for or felt", mostRises, mostFinds), Basis: evidence.Design},
	{ID: told.OneNew, Value: fmt.Sprintf("at most %d exercise is new at one visit, %d where a named person watches that day, those that must change first; a new one was seen by nobody, and begins with the lightest weight, without looking for more", newUnwatched, newWatched), Basis: evidence.Design},
	{ID: told.KeepUp, Value: "in maintenance the load is kept; sets and a load that were eased come back, and nothing else is made harder", Basis: evidence.Design, From: []evidence.FactID{"dose.maintain"}},
	{ID: told.Familiarising, Value: "while movements are learnt only sets that the phase begins with, repetitions within the range, and weights shown or clearly easy are added; the rest waits for the review", Basis: evidence.Design},
	{ID: told.AskFirst, Value: "while somebody is to be asked before training goes beyond light and supervised work, or practice without weights, nothing is made harder", Basis: evidence.Design},
	{ID: told.Beside, Value: fmt.Sprintf("only with somebody beside is a load looked for within a visit, and a step taken of more than %v of the weight held or, where it is known, more than %v of all that is moved, unless the log of %d days shows the weight itself; alone nothing heavier than was lifted before goes over head or face; repetitions and pace take its place, no sets", bigHeld, bigMoved, given.KnownDays), Basis: evidence.Design, From: []evidence.FactID{told.Guidance}},
	{ID: told.OfDay, Value: fmt.Sprintf("what the day's check alone asks for is that day's: the next decision goes on from the plan before it, in which nothing is made harder, where the day went as it was asked for; after %d such visits running a third one's change stays", history.MostOfDay), Basis: evidence.Design},
	{ID: told.Unlike, Value: fmt.Sprintf("told reserves are asked about, and no dose goes by it, where %d visits within %d days told one reserve of %d or fewer of what comes to more than %v apart, or the last visit comes to less than %v of what %d days before it did", history.SameVisits, history.SameDays, given.Countable, history.ToldApart, history.FarBelow, given.KnownDays), Basis: evidence.Design, From: []evidence.FactID{"onerm.epley"}},
	{ID: told.BridgeTop, Value: fmt.Sprintf("bridging by repetitions ends at %d, or at %d to a weight more than %v heavier where strength is known, no body is moved too and the present weight is not the lightest; at the end of the exercise's own range, where it has one, if that is lower; while movements are learnt, at the top of the range: the arithmetic is far off beyond", bridgeTop, bridgeFar, feelShare), Basis: evidence.Design, From: []evidence.FactID{told.Bridge}},
}
