package dose

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
	// What bars a dose, and what would free it.
	"dose.waived": {
		Client:    "This comes from an analysis in which nobody was screened. Please do not train by it.",
		Clinician: "Nobody was screened: {why}. This is an analysis, and for no person.",
	},
	"dose.no-dose": {
		Client:    "Please do not exercise until you have been seen.",
		Clinician: "No dose: route {route}, meanwhile {meanwhile}; gravest finding {finding}.",
	},
	"dose.no-dose-yet": {
		Client:    "Please wait with the exercises until this is settled.",
		Clinician: "No dose yet: route {route}, meanwhile {meanwhile}; gravest finding {finding}.",
	},
	"dose.review-overdue": {
		Client:    "It is time to go through the questions again before we go on.",
		Clinician: "No dose: the assessment was to be made anew by {review}; the day decided on is {day}.",
	},
	"dose.unloaded-only": {
		Client:    "For now we practise the movements without weights, until we have an answer.",
		Clinician: "{exercise}: only unloaded practice may go on; route {route}, gravest finding {finding}.",
	},
	"dose.setting": {
		Client:    "We keep the weights for when somebody qualified is beside you.",
		Clinician: "{exercise}: the setting is {setting}; screening asks for at least {least}.",
	},
	"dose.demand": {
		Client:    "This exercise asks for something that you should leave out for now.",
		Clinician: "{exercise} demands {demands}, which the limits rule out.",
	},
	"dose.too-heavy": {
		Client:    "The lightest weight here is still too heavy for this exercise, so we choose an easier one.",
		Clinician: "{exercise}: the lightest weight that can be held, {lightest}, lies above the most allowed now, {most}.",
	},
	"dose.too-few": {
		Client:    "This would be too few times for you, and nothing here is easier to lift, so we choose an easier exercise.",
		Clinician: "{exercise}: {count} repetitions now with the lightest that can be held, and screening asks for sets of at least {least}.",
	},
	"dose.nothing-to-hold": {
		Client:    "There is no weight here for this exercise.",
		Clinician: "{exercise}: the kit has nothing for the hold {hold}.",
	},
	"dose.brief-unloaded": {
		Client:    "A few minutes each day are done without weights; those belong in sessions with days between.",
		Clinician: "{exercise}: a few minutes each day hold nothing with a weight or a band.",
	},
	"dose.not-there": {
		Client:    "For this exercise we would need: {things}.",
		Clinician: "{exercise} needs what is not there: {things}.",
	},
	"dose.band-unweighed": {
		Client:    "Nobody can say how hard this band pulls, so we leave it out for now.",
		Clinician: "{exercise}: no mass is known of the band, and a limit holds: {limit}.",
	},
	"dose.free-by-being-seen": {Clinician: "Would be freed by: the person being seen, and a new screening with the answer recorded."},
	"dose.free-by-answer":     {Clinician: "Would be freed by: the missing answers, or a named clinician's clearance that covers the findings."},
	"dose.free-by-assessment": {Clinician: "Would be freed by: a new assessment."},
	"dose.free-by-setting":    {Clinician: "Would be freed by: a setting with at least this supervision: {least}."},
	"dose.free-by-variant":    {Clinician: "Would be freed by: a variant that does not ask for it."},
	"dose.free-by-lighter":    {Clinician: "Would be freed by: a weight of {most} or less."},
	"dose.free-by-set":        {Clinician: "Would be freed by: a test of this exercise, or a set of it that was done with its reserve noted."},
	"dose.free-by-sessions":   {Clinician: "Would be freed by: sessions with days between."},
	"dose.free-by-thing":      {Clinician: "Would be freed by: {things}."},
	"dose.free-by-mass":       {Clinician: "Would be freed by: a weight of known mass in place of the band."},
	"dose.free-by-kit":        {Clinician: "Would be freed by: equipment for the hold: {hold}."},

	// Why this dose.
	"dose.phase":                  {Clinician: "Phase: {phase}."},
	"dose.phase-assumed":          {Clinician: "Phase: {phase}, taken from the training status; none was asked for."},
	"dose.technique-not-seen":     {Clinician: "Phase: {phase}. Nobody has seen the technique yet: that permits repetitions, not load."},
	"dose.superseded":             {Clinician: "The row {row} has a later word of the same body: {by}. It speaks of healthy adults; the row for older adults is kept, and shown as superseded."},
	"dose.guideline":              {Clinician: "Follows the row {row}, made for {population}."},
	"dose.guideline-assumed":      {Clinician: "Follows the row {row}, made for {population}; chosen here by goal, training and age, none was asked for."},
	"dose.memory-permits-nothing": {Clinician: "The load of {row} is known from memory only and permits nothing; {instead} stands in."},
	"dose.band-from-start-row":    {Clinician: "The row states no load; the band is that of {row}."},
	"dose.load":                   {Clinician: "Load by the row: {load}."},
	"dose.count":                  {Clinician: "Repetitions: {count}."},
	"dose.count-of-exercise":      {Clinician: "The exercise counts {measure}: {count}."},
	"dose.sets":                   {Clinician: "Sets: {sets} now, to build to {build to}; fewer repetitions in a later set are acceptable."},
	"dose.rest":                   {Clinician: "Rest between sets: {seconds} seconds."},
	"dose.days":                   {Clinician: "Days a week: {days}."},
	"dose.reserve":                {Clinician: "Repetitions in reserve: {reserve}."},
	"dose.intensity-limit":        {Clinician: "Screening limits effort to {intensity}: at least {reserve} repetitions in reserve."},
	"dose.breath-reserve":         {Clinician: "Breath must not be held: at least {reserve} repetitions in reserve, since pressure rises towards the end of a set."},
	"dose.lighter-day": {
		Client:    "We keep it light this time.",
		Clinician: "Lighter: at most the last completed load, {fewer} set fewer, {more} more in reserve.",
	},
	"dose.count-limit":   {Clinician: "Screening asks for sets of at least {least} repetitions."},
	"dose.reserve-limit": {Clinician: "Screening asks for at least {reserve} repetitions in reserve."},
	"dose.tempo":         {Clinician: fmt.Sprintf("%s seconds down, %s seconds up.", say.Begin(say.Spelt(int(tempo.Lowering))), say.Spelt(int(tempo.Lifting)))},
	"dose.tempo-fast": {
		Client:    "Lift as fast as you can with the weight under control, and lower it slowly. Once it goes up clearly slower than the first time, the set is over, however many you have done.",
		Clinician: fmt.Sprintf("Up as fast as can be controlled, %s seconds down. How likely the count is to be reached does not decide here: a set ends with a rise a fifth slower than its first.", say.Spelt(int(fastTempo.Lowering))),
	},
	"dose.without-load":    {Clinician: "Without load: the body alone."},
	"dose.fraction-limit":  {Clinician: "Screening limits the load to {most} of 1RM."},
	"dose.bound":           {Clinician: "The exercise that this one replaces allows {most} per implement."},
	"dose.share-from-done": {Clinician: "Screening limits the load to {most} of 1RM and there is no estimate: sets that were done show at least {surely}, so {ceiling} per implement."},
	"dose.on-curve":        {Clinician: "Load, repetitions and reserve are tied by {equation}; the load is {share} of what is known."},
	"dose.continued":       {Clinician: "Goes on from what was done: {load} each, {count} a set; sets: {sets} now, to build to {build to}."},
	"dose.from-performed":  {Clinician: "A set of {reps} with {load} was done: looking for the load begins there or lower, never above."},
	"dose.from-band":       {Clinician: "Load from the band, {share} of what is known: beyond the equation's studied range."},
	easyStep: {
		Client:    "If a set ends clearly easy, you may take the next weight up for another set: {most} at most.",
		Clinician: "{exercise}, load-finding: one step up while sets end clearly easy, never to failure; steps in a visit: {steps}, to {most} at most.",
	},
	countedStep: {
		Client:    fmt.Sprintf("If you could have done more than %v more in a set, you may take the next weight up for another set: {most} at most.", uncountable),
		Clinician: fmt.Sprintf("{exercise}, load-finding: one step up while sets leave more than %v, never to failure; steps in a visit: {steps}, to {most} at most.", uncountable),
	},
	noStep: {
		Clinician: "Load-finding without a step up within the visit: limits, the band of the row or the kit end at {most}.",
	},
	unseenStep: {
		Client:    "Please stay with the weight named for now. Show us the movement first; then we look for the next one together.",
		Clinician: "Load-finding without a step up within the visit: nobody has seen the technique of this exercise; setting: {setting}.",
	},
	aloneStep: {
		Client:    "Please stay with the weight named while you are alone. Once somebody is with you, ask us about the next one.",
		Clinician: "Load-finding without a step up within the visit: nobody is there; setting: {setting}.",
	},
	"dose.by-band": {
		Client:    "Fix the band at the same place each time, and begin with it just taut.",
		Clinician: "{exercise}: no mass is known of a band; dosed by repetitions and reserve alone. The step after repetitions and sets is the next band in the order of their user.",
	},
	"dose.chance": {Clinician: "With {load} at most {most} repetitions: whoever does them all and does not stop by feel has fewer left than the reserve asked less one in at most {below} of sets, and none left in at most {without}."},
	"dose.few-do": {
		Client:    "This is the lightest weight here. Do as few as leave what we ask for, even one.",
		Clinician: "{count} of {load}, the lightest weight: more than the stated chance allows, and ended by the reserve; nothing lighter is there.",
	},
	"dose.feel": {
		Client:    "In your last set take {weight} instead and lift it {count} times, while we watch. Stop sooner if it is too much.",
		Clinician: "{exercise}: one of the sets feels the next weight, {weight}, for {count} lifts, watched.",
	},
	"dose.known": {Clinician: "Known of strength: a 1RM of about {best}, where one repetition more counts as left than was told; the load is {share} of it."},
	"dose.only-lightest": {
		Client:    "This is the lightest weight here, and heavy enough: a few at a time.",
		Clinician: "The lightest weight, {lightest}, lies above what the row begins with, {most}, or allows fewer than its lowest count: for as many as it allows.",
	},
	"dose.below-effective-learning": {
		Client:    "This weight is for learning the movement. Getting stronger needs more, step by step.",
		Clinician: "Delivered share {share} lies under {floor}, the floor of the source for the goal {goal}: right for learning, too light to build.",
	},
	"dose.below-effective": {
		Client:    "This weight is still light for what you want to reach. We go up step by step, as you can.",
		Clinician: "Delivered share {share} lies under {floor}, the floor of the source for the goal {goal}: too light to build.",
	},
	"dose.kit-too-light": {
		Client:    "The weights here are too light to make you much stronger in this exercise.",
		Clinician: "{exercise}: every weight of the kit is lighter than {least}, what the source of the goal {goal} asks for where about {best} can be lifted once.",
	},
	"dose.kit-too-coarse": {
		Client:    "The weights here lie far apart: for this exercise one is light for you, and the next is too heavy.",
		Clinician: fmt.Sprintf("{exercise}: no weight of the kit is both {least} or more, as the source of the goal {goal} asks for where about {best} can be lifted once, and light enough for %d repetitions in reserve.", fewestSparing),
	},
	"dose.kit-would-help": {
		Client:    "To get on here, {size} would change most.",
		Clinician: "{exercise}: of the sizes that are sold, {size} would change most.",
	},
	"dose.kit-far-alone": {
		Client:    "The next weight here is a big step up, and it is not for trying alone. With {size}, or with somebody beside you, you would get on sooner.",
		Clinician: "{exercise}: alone, from {from} to {to} is too far to be tried, so that only repetitions rise; {size}, or somebody there, would change most.",
	},
	"dose.first-mass":      {Clinician: "A beginner's first weight: {first} until the technique is sound."},
	"dose.first-mass-seen": {Clinician: "The technique was seen: the first weight binds no longer; while nothing else is known the kit may begin with {most} at most."},
	"dose.kept-lightest":   {Clinician: "Screening limits the load to {most} of 1RM, and nothing shows what that is: no more than the lightest weight, and none above {first}."},
	"dose.no-estimate":     {Clinician: "There is no estimate of strength for this exercise, side and hold."},
	"dose.moves-body":      {Clinician: "The body, or a long limb, is most of what is lifted: no 1RM of the held weight is used."},
	"dose.heaviest":        {Clinician: "Legs lift more than arms: this exercise begins with no less than the others of the session."},

	// What to heed in every set.
	"dose.no-breath-holding": {
		Client:    "Breathe out as you lift. Do not hold your breath.",
		Clinician: "No breath-holding; breathe out on the effort.",
	},
	"dose.effort-not-pulse": {
		Client:    "Go by how hard it feels, not by your pulse.",
		Clinician: "Guide by rated effort, not by pulse.",
	},
	"dose.technique-first": {
		Client:    "The weight goes up only when the movement looks right.",
		Clinician: "Load rises only while technique and posture hold, as somebody observed.",
	},
	"dose.support": {
		Client:    "Keep one hand on something firm.",
		Clinician: "Standing work with a hand on a firm support.",
	},
	"dose.support-near": {
		Client:    "Stay within reach of something firm, such as a wall or a rail.",
		Clinician: "Standing work with a firm support within reach: the hands have their place in the movement, or the person walks.",
	},
	"dose.support-seat": {
		Client:    "Here the chair right behind you takes the place of a hand on something firm. Sit down at once if you feel unsteady.",
		Clinician: "Standing work out of a chair, with both hands taken: the chair right behind is the support.",
	},
	"dose.support-beside": {
		Client:    "Only while somebody stands beside you.",
		Clinician: "Standing work that leaves no hand for a support: somebody stands beside the person.",
	},
	"dose.restriction": {
		Client:    "No more than {most} for the {place}, as {author} asked.",
		Clinician: "{exercise}: a restriction by {author}, {place}, no more than {most}.",
	},
	"dose.most": {
		Client:    "Take no more than {most}.",
		Clinician: "{exercise}: limits end at {limit} per implement; of this kit: {most}.",
	},
	"dose.brief": {Clinician: "A few minutes a day: one set of about {seconds} s, then {rest} s of rest."},
}
