package dose

import "example.org/posology/units/evidence"

// weekWords are for the tests that a week rests on, its minutes and its dates.
var weekWords = evidence.Words{
	"dose.test-later": {
		Client:    "One of your tests has a day that is still to come. We will look at the date together.",
		Clinician: "Not used: of {tested}, after {day}, the day decided on. Look at the date.",
	},
	"dose.test-before-event": {
		Client:    "Something has changed since your last test, so we test again.",
		Clinician: "Not used: of {tested}; an event ended what was tested before {from}.",
	},
	"dose.test-old": {
		Client:    "Your last test was a while ago, so we test again.",
		Clinician: "Not used: of {tested}, more than {most} days before {day}.",
	},
	"dose.test-not-in-kit": {
		Client:    "One of your tests names a weight that is not here. We will look at it together.",
		Clinician: "Not used: the kit does not make {load}, with which a set of that day was done. Ask which weight it was, per hand or in all.",
	},
	"dose.tests-disagree": {
		Client:    "Two tests of one day tell different stories. We will look at them together.",
		Clinician: "Not used: tests of that day give {least} to {most}, further apart than one day explains. Ask for a slip of per hand and total, or of kg and lb, and test again.",
	},
	"dose.tests-far-apart": {
		Client:    "Two of your tests tell different stories. We will look at them together.",
		Clinician: "Not used: tests of different days give {least} to {most}, about twice as much or more. Ask for a slip of per hand and total, or of kg and lb, and test again.",
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
