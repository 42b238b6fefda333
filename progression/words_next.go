package progression

import "example.org/posology/units/evidence"

// goneWords is what decisions say of what is asked about, sent on, replaced or
// left out.
func goneWords() evidence.Words {
	return evidence.Words{
		"progression.not-in-kit": {
			Client:    "Please tell us which weight you used.",
			Clinician: "Logged with {load}, which the kit does not make: ask; the set is not used.",
		},
		"progression.slip": {
			Client:    "Please tell us which weight you used.",
			Clinician: "Logged with {load} where {planned} was planned: per hand or total, kg or lb? Ask; the set is not used.",
		},
		"progression.plan-ended": {
			Client:    "Since something has happened we would like to look at everything again first.",
			Clinician: "Since the assessment: {event}. It ends the plan, estimates and clearances: assess anew.",
		},
		"progression.referred": {
			Client:    "Before you go on with the weights, somebody should have a look; we will tell you whom to ask. Call for help at once if it gets much worse, if you have chest pain or faint, if strength or feeling goes, or if you can no longer hold or pass water.",
			Clinician: "The visit of {day} ended with something for somebody else to look at; no assessment has followed. Nothing is prescribed.",
		},
		"progression.medical-absence": {
			Client:    "Welcome back. Since you were ill we ask a few questions first.",
			Clinician: "The days missed had a medical cause: assess anew; the ladder of missed time is not for this.",
		},
		"progression.return-assessed": {
			Client:    "Welcome back. We begin afresh, gently.",
			Clinician: "{days} days away with a medical cause, assessed since: familiarisation and a new baseline.",
		},
		"progression.settle-first": {
			Client:    "Please rest a little; then we measure again.",
			Clinician: "Settle what is open first (rest, measure again, ask); then decide.",
		},
		"progression.assess-anew": {
			Client:    "We do that together at the beginning of the next visit.",
			Clinician: "The review of the assessment is over: it is made anew, by whoever makes assessments here, and nothing is prescribed until then. Nobody else has to look for this alone.",
		},
		"progression.instead": {
			Client:    "We change to {exercise}.",
			Clinician: "In its place: {exercise}, from its own first dose.",
		},
		"progression.left-out": {
			Client:    "We leave {exercise} out for now.",
			Clinician: "{exercise} is left out: nothing that is no harder can be dosed.",
		},
		"progression.instead-waits": {
			Client:    "We leave this one out today. In its place comes {exercise}, at one of the next visits: one new exercise at a time.",
			Clinician: "Left out at this visit: {exercise} is to take its place, and waits, since enough exercises are new at this visit.",
		},
	}
}

// keptWords is what decisions say of a dose that stays or is made easier.
func keptWords() evidence.Words {
	return evidence.Words{
		"progression.easier-variant":      {Clinician: "An easier variant, learnt anew."},
		"progression.eased":               {Clinician: "The gates on the last visit ask for less: no more load, a set fewer if there is one to spare, two more in reserve."},
		"progression.above-limit":         {Clinician: "The last load, {load} each, lies above the most allowed now, {most}: the heaviest below it."},
		"progression.recurring":           {Client: "Since it has hurt more than once we change the exercise, and look at it together.", Clinician: "It spoke for less at one of the three visits before too: recurring, to be looked at."},
		"progression.too-much":            {Client: "This weight was too much for now.", Clinician: "The load could not be lifted as often as the range begins with: lighter, or an easier variant."},
		"progression.fewer-reps":          {Clinician: "{count} repetitions, so that the reserve asked for remains: {reserve}."},
		"progression.lighter-for-reserve": {Clinician: "{to} instead of {from}: with {from} the reserve asked for ({reserve}) would leave fewer repetitions than the range begins with."},
		"progression.reps-for-load":       {Clinician: "The next lighter weight is further than that cut of the load: {count} repetitions instead, which are as much easier."},
		"progression.lighter-day":         {Clinician: "The day's check asks for a lighter session: nothing is made harder."},
		"progression.below-three":         {Client: "We make it a little easier.", Clinician: "Three visits in a row below the dose: made easier."},
		"progression.nothing-done":        {Clinician: "No set to go by: the dose stays."},
		"progression.tried":               {Clinician: "A heavier weight was tried and was too much: the load stays, and repetitions come next."},
		"progression.resumed":             {Clinician: "After the trial the dose before it is taken up again."},
		"progression.hold":                {Clinician: "The dose stays. What keeps it: {gate}."},
		"progression.maintain":            {Clinician: "Maintenance: the dose is kept, and nothing is made harder than it was."},
		"progression.ask-first":           {Clinician: "Until somebody has been asked only light supervised work, or practice without weights, goes on: the dose stays."},
		"progression.familiarising":       {Clinician: "Still learning the movement: what the range and the kit allow is reached; the rest waits for the review."},
		"progression.no-rating":           {Clinician: "The rule goes by a rating on the scale omni, and there is none: the load is kept."},
	}
}

// harderWords is what decisions say of what is made harder, or cannot be.
func harderWords() evidence.Words {
	return evidence.Words{
		"progression.jump":           {Clinician: "The next weight after {from} is {to}, a step of {share}; published guidance is 2 to 10 %."},
		"progression.one-more-set":   {Client: "One set more than before.", Clinician: "One set more, towards those that the plan builds up to; load and repetitions stay."},
		"progression.more-reps":      {Client: "A little more of the same.", Clinician: "{aim} with the same load, to work up to {top} before more load."},
		"progression.find-on":        {Client: "That still looks easy: you may try the next weight.", Clinician: "Every set left more than can be counted: go on looking for the load."},
		"progression.found":          {Clinician: "The load was found: {load} each."},
		"progression.shown":          {Client: "Well done: time for the next weight.", Clinician: "{reps} repetitions with surely {surely} in reserve show {next} each for {count} in the reserve asked for."},
		"progression.done-before":    {Client: "Now the weight that you have used before.", Clinician: "Sets with {next} each within four weeks show that it can be done; two calm visits in a row: taken."},
		"progression.large-step":     {Client: "The next weight is a big step. If the first lift is not easy, put it down and take the lighter one again.", Clinician: "The step is {share} of the weight held, {moved} of all that is moved; published guidance is 2 to 10 %, its lower end for small muscles."},
		"progression.step-beside":    {Client: "The next weight is a big step. Please take it when somebody is with you.", Clinician: "Alone: {next} each, {share} more in the hand and {moved} of all that is moved, is a big step. It waits for somebody at hand; until then repetitions and pace."},
		"progression.above-beside":   {Client: "A heavier weight over you: please take it when somebody is with you.", Clinician: "Alone: {next} each is more over head or face than was lifted before. It waits for somebody at hand; until then repetitions and pace."},
		"progression.look-beside":    {Client: "We look for a heavier weight when somebody is with you.", Clinician: "Alone: every set left more than can be counted, and {next} each may be tried with somebody at hand; until then repetitions and pace."},
		"progression.step-in-hand":   {Clinician: "The step is {share} of the weight held and {moved} of all that is moved; published guidance is 2 to 10 %, its lower end for small muscles."},
		"progression.above-range":    {Clinician: "{count} repetitions lie above the guideline's {range} for the goal {goal}: a bridge to the next weight. One above {from} and up to {up to} would make it needless."},
		"progression.note-effort":    {Client: "Please note after each set how many more you could have done.", Clinician: "Effort was not recorded for every set: at most repetitions go up, within the guideline's range."},
		"progression.note-pain":      {Client: "Please note whether anything hurt, then and the next morning.", Clinician: "Pain was not recorded in full (during, after, next morning, trend): the dose is kept."},
		"progression.note-range":     {Client: "Please note whether it moves as far as before.", Clinician: "Range of movement was not recorded: the dose is kept."},
		"progression.note-signs":     {Client: "Please note whether anything else showed during the sets.", Clinician: "What showed during the sets was not recorded: the dose is kept."},
		"progression.show-technique": {Client: "Please show us the movement next time; then we can go further.", Clinician: "Nobody has seen the technique within four weeks: at most repetitions go up."},
		"progression.more-reserve":   {Clinician: "{reps} repetitions are reached; more left in reserve would show {next}."},
		"progression.limit":          {Client: "This is the most weight for you for now.", Clinician: "The next weight, {next} each, lies above the most allowed, {most}: repetitions within the range, nothing further."},
		"progression.variant-waits":  {Client: "Something new comes at one of the next visits: one new exercise at a time.", Clinician: "A harder variant, {exercise}, waits: enough exercises are new at this visit. The dose stays."},
		"progression.no-variant":     {Clinician: "A harder variant, {exercise}, cannot be dosed."},
		"progression.two-rise":       {Clinician: "Two other loads rise at this visit: this one waits."},
		"progression.slower":         {Client: "Now lower the weight more slowly: count to four.", Clinician: "The next weight is too far for repetitions: slower lowering, four seconds; fewer repetitions, so that a set stays about as long."},
		"progression.pause":          {Client: "Now pause for two seconds before you lift.", Clinician: "A pause of two seconds before lifting; fewer repetitions, so that a set stays about as long."},
		"progression.extra-set":      {Client: "Now one more set.", Clinician: "One set more, up to the guideline's most; repetitions from the bottom of the range."},
		"progression.kit-ends":       {Client: "There is no heavier weight for you here.", Clinician: "The kit has nothing heavier, and pace, sets and variants are used up: held. A heavier weight would let it go on."},
		"progression.too-far":        {Client: "The next weight is still too far. A weight in between would help.", Clinician: "The next weight, {next}, is {share} more: nothing that was done shows it, and pace, sets and variants are used up. Held; a weight in between would let it go on."},
	}
}
