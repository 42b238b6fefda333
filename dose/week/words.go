package week

import (
	"fmt"
	"sync"

	"example.org/posology/dose/internal/say"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Words returns what this package's reasons say. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(words)) })

var words = evidence.Words{
	"dose.days-between": {
		Client:    "Leave at least one day of rest between sessions.",
		Clinician: fmt.Sprintf("Sessions: {days}, at least %d hours apart for the same muscles, round the week.", 24*DaysBetween),
	},
	"dose.days-free": {
		Client:    "You rest from the weights on the other days that you named.",
		Clinician: fmt.Sprintf("Days offered and left free: {days}; there are no more sessions in a week, or they would lie less than %d hours apart.", 24*DaysBetween),
	},
	"dose.minutes": {Clinician: "{minutes} minutes are a warm-up of {warm-up}, the sets, the shortest rests and " + say.Minutes(ChangeSeconds) + " from one exercise to the next."},
	"dose.familiarise": {
		Client:    "The first " + say.Weeks(reviewDays) + " are for learning the movements.",
		Clinician: say.Begin(say.Weeks(reviewDays)) + " of familiarisation; load rises only once somebody has observed the technique.",
	},
	"dose.dates": {Clinician: fmt.Sprintf("Review after %s of familiarisation, later every %s; strength is tested again after %s; no plan is followed for more than %s, or beyond a clearance that it rests on.",
		say.Weeks(reviewDays), say.Weeks(buildDays), say.Weeks(retestDays), say.Weeks(expiryDays))},
	"dose.stop-and-ask": {
		Client:    "Effort in the muscles is wanted; pain is not. Stop and ask for help at chest pain, faintness, unusual breathlessness or sharp pain.",
		Clinician: "Stop at chest symptoms, faintness, unusual breathlessness or pain other than muscular effort. Local rules and a licensed clinician decide.",
	},
	"dose.week-below-goal-learning": {
		Client:    "These weights are for learning. Getting stronger needs more, step by step, as soon as that is possible.",
		Clinician: "Exercises without a weight, or lighter than the source of the goal {goal} asks for: {light} of {all}; right for learning, too light to build.",
	},
	"dose.week-below-goal": {
		Client:    "Some of these weights are still light for what you want to reach. We go up step by step, as you can.",
		Clinician: "Exercises without a weight, or lighter than the source of the goal {goal} asks for: {light} of {all}; too light to build.",
	},
	"dose.brief-days": {
		Client:    "A few minutes on each day: one exercise after the other, with about as long a rest between. Some days are better than none.",
		Clinician: "A few minutes a day in place of sessions, on {days} days of the week: exercises {n}, minutes {minutes}.",
	},
	"dose.brief-offer": {
		Client:    "If the sessions do not fit your days: a few minutes on each day, without a weight, can take their place. Tell us if you would like that.",
		Clinician: "Half of the sessions or fewer were come to: a few minutes a day in their place are proposed, and begun only once both of you choose them.",
	},
	"dose.brief-alone":    {Clinician: "Done alone: nobody sees the technique, and nothing gets harder but what the person is shown at a visit."},
	"dose.taken-as-there": {Clinician: "Nobody asked what stands there; taken as there: {things}."},
	"dose.too-few-days": {
		Clinician: "Sessions that fit the days given: {days}; the row asks for at least {least}.",
	},
	"dose.not-wanted":    {Clinician: "{exercise} is not wanted by the client."},
	"dose.no-minutes":    {Clinician: "{exercise} is left out to keep to the minutes given, {minutes}; with {from} it is in."},
	"dose.fewer-sets":    {Clinician: "Sets: {sets} instead of {whole}, to keep to the minutes given, {minutes}."},
	"dose.minutes-whole": {Clinician: "A session with every exercise and every set that was wanted takes {whole} minutes; {minutes} were given."},
	"dose.sets-first":    {Clinician: "The row asks for {least} sets or more of an exercise: those that train the large muscles get them before others are added."},
	"dose.one-side-only": {
		Client:    "Only with your {side} side, for now.",
		Clinician: "What was found, or a limit that was set, rules the other side out: dosed for the {side} side alone.",
	},

	"dose.minutes-over": {
		Client:    "A session takes about {needed} minutes by now, and you have {minutes}. When time is short, this is enough: {kept}. The rest as it stands above.",
		Clinician: "A session takes {needed} minutes by now, more than the {minutes} given. What goes first, as a plan would trim it: {kept}.",
	},
	"dose.minutes-too-few": {
		Client:    "The time you gave is too short, even for one exercise. With the warm-up it takes {needed} minutes.",
		Clinician: "The minutes given, {minutes}, are too few for one set of one exercise with its warm-up; the session takes {needed}.",
	},

	"dose.overdue-review": {
		Client:    "It is time that we look at your plan together.",
		Clinician: "The plan was to be looked at by {by}; the day is {day}.",
	},
	"dose.overdue-retest": {
		Client:    "It is time to see again how strong you are.",
		Clinician: "Strength was to be tested again by {by}; the day is {day}.",
	},
	"dose.overdue-plan": {
		Client:    "This plan has had its time. Please wait until you have a new one.",
		Clinician: "The plan was to be followed no longer than {by}; the day is {day}. Nobody goes on by it: plan anew.",
	},
	"dose.days-past-review": {
		Client:    "Before the later days we go through the questions again.",
		Clinician: "No session after {review}, by which the assessment is to be made anew. Days offered and left out: {days}.",
	},
}
