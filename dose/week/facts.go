package week

import (
	"fmt"
	"iter"
	"slices"
	"strings"

	"example.org/posology/dose/internal/say"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Facts of this package's own, and of those below it.
const (
	factChange   evidence.FactID = "dose.change-between-exercises"
	factGap      evidence.FactID = "dose.days-between"
	factTwoWeeks evidence.FactID = "dose.familiarise-two-weeks"
	factRetest   evidence.FactID = "dose.retest"
	factExpiry   evidence.FactID = "dose.expiry"
	factWarmUp   evidence.FactID = "dose.warm-up"

	factSetsFirst evidence.FactID = "dose.sets-first"
	factOneSide   evidence.FactID = "dose.one-side"

	// Of packages below.
	factBrief      evidence.FactID = "dose.brief"
	factBriefTrial evidence.FactID = "choice.four-a-day"
	factPace       evidence.FactID = "dose.walking-pace"
	factReviewed   evidence.FactID = "dose.review-overdue"
	factThere      evidence.FactID = "dose.what-is-there"
	factBriefLiked evidence.FactID = "choice.short-liked"
)

// ChangeSeconds is the time from one exercise to the next, for the length of a
// session; from memory (dose.change-between-exercises).
const ChangeSeconds = 120

// DaysBetween is how many days there are from one session to the next, at least: 48 hours
// (dose.days-between).
const DaysBetween = 2

const (
	usualDays = 3 // a week at most, unless the row asks for fewer

	warmUpMinutes = 5
	reviewDays    = 14 // familiarisation: two weeks
	buildDays     = 42 // from one review to the next later on
	retestDays    = 21
	expiryDays    = 56 // no plan is followed longer without a review
)

// largeGroups are the muscles of which no plan that is short of minutes leaves a row without work,
// so far as what was wanted trains them: of each row one is enough.
var largeGroups = [...]struct {
	name    string
	muscles []body.Muscle
}{
	{"legs", []body.Muscle{body.Quadriceps, body.Hamstrings}},
	{"hips", []body.Muscle{body.GluteusMaximus, body.GluteusMedius}},
	{"back", []body.Muscle{body.LatissimusDorsi, body.Rhomboids, body.ErectorSpinae}},
	{"abdomen", []body.Muscle{body.RectusAbdominis, body.Obliques}},
	{"chest", []body.Muscle{body.PectoralisMajor}},
	{"shoulders", []body.Muscle{body.AnteriorDeltoid, body.LateralDeltoid}},
	{"arms", []body.Muscle{body.BicepsBrachii, body.BrachialisBrachioradialis, body.TricepsBrachii}},
}

func groupNames() string {
	names := make([]string, len(largeGroups))
	for i, g := range largeGroups {
		names[i] = g.name
	}
	return strings.Join(names, ", ")
}

var ownFacts = []evidence.Fact{
	{ID: factTwoWeeks, Value: fmt.Sprintf("%s of familiarisation come first; then a review, and one every %s", say.Weeks(reviewDays), say.Weeks(buildDays)), Basis: evidence.Design},
	{ID: factRetest, Value: "an estimate is made anew after " + say.Weeks(retestDays), Basis: evidence.Design, From: []evidence.FactID{"onerm.untrained.again"}},
	{ID: factExpiry, Value: fmt.Sprintf("a plan expires after %s, or when a clearance that it rests on lapses", say.Weeks(expiryDays)), Basis: evidence.Design},
	{ID: factWarmUp, Value: say.Spelt(warmUpMinutes) + " minutes of easy movement before a session", Basis: evidence.Design},
	{ID: factChange, Value: say.Minutes(ChangeSeconds) + " from one exercise to the next, for the length of a session",
		Source: "schoenfeld2019", Basis: evidence.FromMemory},
	{ID: factSetsFirst, Basis: evidence.Design, From: []evidence.FactID{"guideline.iversen2021-time-efficient.exercises", "guideline.nsca2019-older-start.sets"},
		Value: "where the row asks for two sets or more and nothing is learnt any more, exercises that together train " + groupNames() + " get those sets before any other exercise is added; while learning one set is enough, and with a row that names one set each exercise has one first"},
	{ID: factOneSide, Basis: evidence.Design,
		Value: "what one arm or leg is limited to, or kept from, leaves its work to the other side; where it is kept from it, only in exercises that let it rest: it holds nothing, bears no weight and is not lain on"},
	{ID: factGap, Value: fmt.Sprintf("at least %s days from one session to the next", say.Spelt(DaysBetween)),
		Basis: evidence.Computed, From: []evidence.FactID{"guideline.acsm2011-older-start.hours_between"}},
}

// Facts yields the facts behind this package's own choices.
func Facts() iter.Seq[evidence.Fact] { return slices.Values(ownFacts) }
