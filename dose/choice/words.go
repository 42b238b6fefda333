package choice

import (
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Codes of the reasons that this package gives. They are stable.
const (
	codeMade       evidence.ReasonCode = "choice.made"
	codeFew        evidence.ReasonCode = "choice.few"
	codeFewFrail   evidence.ReasonCode = "choice.few-frail"
	codeLeft       evidence.ReasonCode = "choice.left"
	codeForTask    evidence.ReasonCode = "choice.for-task"
	codeForConcern evidence.ReasonCode = "choice.for-concern"
	codeForGoal    evidence.ReasonCode = "choice.for-goal"
	codeWhole      evidence.ReasonCode = "choice.whole"
	codeStepLater  evidence.ReasonCode = "choice.step-later"
	codeGentler    evidence.ReasonCode = "choice.gentler"
	codeBrief      evidence.ReasonCode = "choice.brief"
	codeByBand     evidence.ReasonCode = "choice.by-band"
	codeNoAnchor   evidence.ReasonCode = "choice.band-unfixed"
	codeByName     evidence.ReasonCode = "choice.by-name"
	codeFloorAim   evidence.ReasonCode = "choice.floor-aim"
	codeFloorLater evidence.ReasonCode = "choice.floor-later"
	codeTestedLegs evidence.ReasonCode = "choice.tested-legs"
	codeTested     evidence.ReasonCode = "choice.tested"
	codeTest       evidence.ReasonCode = "choice.test"
	codeNoneHeld   evidence.ReasonCode = "choice.none-held"
	codeNorm       evidence.ReasonCode = "choice.norm"
	codeNoNorm     evidence.ReasonCode = "choice.no-norm"
	codeStairNorm  evidence.ReasonCode = "choice.stair-norm"
	codeChange     evidence.ReasonCode = "choice.change"
	codeNoChange   evidence.ReasonCode = "choice.no-change"

	codeUntested      evidence.ReasonCode = "choice.untested"
	codeOnce          evidence.ReasonCode = "choice.result"
	codeOnceOfFile    evidence.ReasonCode = "choice.result-for-file"
	codeResults       evidence.ReasonCode = "choice.results"
	codeResultsOfFile evidence.ReasonCode = "choice.results-for-file"
	codeNotAlike      evidence.ReasonCode = "choice.not-alike"
	codeAgainst       evidence.ReasonCode = "choice.against-norms"
	codeTrialChange   evidence.ReasonCode = "choice.trial-change"
	codeTrialOrder    evidence.ReasonCode = "choice.trial-order"
)

// ofFile are the codes of results that a client does not read: what is no number, and
// kilograms, which would be read as a weight to take.
var ofFile = map[evidence.ReasonCode]evidence.ReasonCode{codeOnce: codeOnceOfFile, codeResults: codeResultsOfFile}

// Words returns what this package's reasons say. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(words)) })

var words = evidence.Words{
	codeMade: {Clinician: "No exercises were asked for; {n} were chosen. Tasks: {tasks}. With regard to: {concerns}."},
	codeFew: {
		Client:    "We keep it to a few exercises, so that they fit into your week.",
		Clinician: "Comes little: {n} exercises, with one of the legs, a pull and a push among them.",
	},
	codeFewFrail: {
		Client:    "We keep it to a few exercises, so that there is strength left for the balance work and for your day.",
		Clinician: "In frailty {n} exercises: rise, pull, hinge, push, calf and side of the hip, then what is wanted most. Shin and cuff of the shoulder are left to the balance work and to the pull, and the trunk where a step or the back is wanted more. Published rows name 8 to 10 for older people; balance work of the same days comes on top here. More can be asked for by name once the sessions go well.",
	},
	codeLeft: {Clinician: "Not taken, since the list is long enough: {exercises}."},

	codeForTask: {
		Client:    "This one is for {for}.",
		Clinician: "{exercise}: chosen for {for}.",
	},
	codeForConcern: {Clinician: "{exercise}: chosen with regard to {for}."},
	codeForGoal:    {Clinician: "{exercise}: chosen for the goal of {for}."},
	codeWhole:      {Clinician: "{exercise}: chosen so that the whole body is trained."},
	codeGentler:    {Clinician: "{exercise} rather than {usual}, with regard to {for}."},
	codeStepLater:  {Client: "Steps come once you stand up from a chair without your hands.", Clinician: "No step-up yet: a test of standing up from a chair needed the arms, or could not be done. Test again, higher seats first."},
	codeBrief:      {Clinician: "A few minutes a day: {n} exercises without a weight, with one of the thighs, a pull and a push among them."},
	codeNoAnchor: {
		Client:    "Your bands can take the place of a weight for the row once there is something firm to fix them to. Please ask us where.",
		Clinician: "{exercise} would take the place of {usual}, since the kit has no weight for it, but for what is not there: {things}.",
	},
	codeByName: {Clinician: "The kit has {kinds} and no other weight. They are used only for exercises that are asked for by name: a bare bar is no first weight that any source names, and which machines a stack belongs to is not known."},

	codeByBand: {Clinician: "{exercise} rather than {usual}: the kit has no weight for it, and there are bands."},

	codeFloorAim: {
		Client:    "Our aim is that you get up from the floor by yourself. We practise it with you in small steps; please do not try it alone yet.",
		Clinician: "Aim: getting up from the floor by backward chaining, with somebody trained beside: each step ends upright again, and the next is added when all before are sure. By a chair; one knee to a raised pad; one knee to the floor; both knees; hands down; side sitting; lying.",
	},
	codeFloorLater: {
		Client:    "Our aim is that you get up from the floor by yourself. We begin with what makes you strong for it; the floor itself comes later, with one of us beside you.",
		Clinician: "Aim for later: getting up from the floor by backward chaining, with somebody trained beside. Not yet: limits, or the company, keep the plan off the floor.",
	},

	codeTestedLegs: {
		Client:    "To see how it goes, we test how you move, at the start and each time we look at the plan.",
		Clinician: "No task was named; tested at the start and at each review all the same.",
	},
	codeTested: {
		Client:    "At the start, and each time we look at the plan, we see how this goes: {for}.",
		Clinician: "Tested at the start and at each review: {for}.",
	},
	codeTest:      {Clinician: "For {for}: {test}."},
	codeNoneHeld:  {Clinician: "{test}: neither a norm nor a detectable change is held for this person; their own earlier result is what it is held against, and no change is called real."},
	codeNorm:      {Clinician: "{test}: {figures}."},
	codeNoNorm:    {Clinician: "{test}: no norm is held for this person; their own earlier result is what it is held against."},
	codeStairNorm: {Clinician: "Over 3 steps as fast as is safe, people of this sex and age took {up} s up and {down} s down on average; other stairs have no norm."},
	codeChange:    {Clinician: "{test}: what a change has to be above to be more than noise: {figures}."},

	codeUntested: {Clinician: "{test}: no result is kept yet. It belongs to the start and to each review."},
	codeOnce: {
		Client:    "{test}: {last} on {day}.",
		Clinician: "{test}: {last} on {day}; no earlier result that it is held against.",
	},
	codeOnceOfFile: {Clinician: "{test}: {last} on {day}; no earlier result that it is held against."},
	codeResults: {
		Client:    "{test}: {first} on {from}, {last} on {day}.",
		Clinician: "{test}: {first} on {from}, {last} on {day}.",
	},
	codeResultsOfFile: {Clinician: "{test}: {first} on {from}, {last} on {day}."},
	codeNotAlike:      {Clinician: "{test}: the earlier results were not made like that of {day} (hand, protocol, trials or count of tries), and are not compared with it."},
	codeAgainst:       {Clinician: "{test}, {last}, beside what was printed for this sex and age: {answers}."},
	codeTrialChange:   {Clinician: "{test}: a difference of {difference} ({direction}). No detectable change is held for it, and none is called real."},
	codeTrialOrder:    {Clinician: "{test}: {before} before, {after} now ({direction}). Without two numbers no difference is said; both are findings in themselves."},

	codeNoChange: {Clinician: "{test}: no detectable change is held for this person; none is called real."},
}
