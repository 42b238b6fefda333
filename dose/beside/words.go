package beside

import (
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Words returns what this package's reasons say. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(moveWords, doseWords, barWords)) })

// moveWords say how each move is done.
var moveWords = evidence.Words{
	"beside.do-feet-together":       {Client: "Stand tall with your feet side by side, touching each other.", Clinician: "Feet together."},
	"beside.do-half-tandem":         {Client: "Stand tall with one foot half its length ahead of the other, the inner edges touching. Change feet after each try.", Clinician: "Half-tandem stance, feet changed after each try."},
	"beside.do-heel-to-toe":         {Client: "Stand tall with the heel of one foot right before the toes of the other. Change feet after each try.", Clinician: "Tandem stance, feet changed after each try."},
	"beside.do-heel-to-toe-looking": {Client: "Stand heel to toe and slowly look left and right while you hold it. Change feet after each try.", Clinician: "Tandem stance with slow turns of the head."},
	"beside.do-one-leg":             {Client: "Lift one foot a little off the floor and stand on the other leg. Do each leg.", Clinician: "One-leg stance, each leg."},
	"beside.do-one-leg-looking":     {Client: "Stand on one leg and slowly look left and right while you hold it. Do each leg.", Clinician: "One-leg stance with slow turns of the head, each leg."},
	"beside.do-shift-weight":        {Client: "Stand with your feet a little apart; shift your weight slowly from one foot to the other without lifting either.", Clinician: "Weight shift from side to side, feet apart."},
	"beside.do-reach-forward":       {Client: "Stand with your feet a little apart; reach forward at the height of your shoulder with a long back, and come back slowly. Change arms.", Clinician: "Forward reach at the height of the shoulder, trunk long."},
	"beside.do-reach-across":        {Client: "Stand with your feet a little apart; reach across to the other side, let your body turn a little, and come back slowly. Change arms.", Clinician: "Reach across with some turn of the trunk."},
	"beside.do-reach-low":           {Client: "Stand with your feet a little apart; reach towards your knee on the other side, and come up slowly. Change arms.", Clinician: "Low reach across, with some bend and turn of the trunk."},
	"beside.do-march":               {Client: "March on the spot, slowly; lift one foot after the other.", Clinician: "Marching on the spot."},
	"beside.do-side-steps":          {Client: "Take slow steps to the side, as far as there is something to hold, and back again.", Clinician: "Side steps along a support."},
	"beside.do-backward-steps":      {Client: "Take slow steps backwards, as far as there is something to hold; walk forward to begin again.", Clinician: "Steps backwards along a support."},
	"beside.do-heel-to-toe-walk":    {Client: "Walk along something firm on a line, each heel right before the toes of the other foot.", Clinician: "Tandem walk along a support."},
	"beside.do-turn":                {Client: "Turn round slowly on the spot in small steps, one way and then the other. Wait a moment between turns.", Clinician: "Turns on the spot, each way."},
	"beside.do-step-over":           {Client: "Step over something low and soft, such as a rolled towel, and back again. Change the foot that goes first.", Clinician: "Steps over a low soft obstacle."},
	"beside.do-stamps":              {Client: "Lift one foot and stamp it down flat, about half as hard as you could. Take turns, left and right.", Clinician: "Stamps with effort 5 of 10, left and right in turn."},
	"beside.do-low-jumps":           {Client: "Bend your knees a little, jump up just off the floor, and land softly on both feet.", Clinician: "Two-legged jumps, low, soft landings."},
	"beside.do-small-jumps":         {Client: "Bend your knees, make a small jump, and land softly on both feet.", Clinician: "Two-legged small jumps, soft landings."},
	"beside.do-heel-drops":          {Client: "Rise onto your toes and let both heels drop to the floor, knees nearly straight.", Clinician: "Heel drops, both feet."},
	"beside.do-hops":                {Client: "Hop on one leg, low, and land softly. Do each leg.", Clinician: "Hops on one leg, each leg."},
	"beside.do-fast-rise-high":      {Client: "Sit on a high firm seat, such as a chair with a firm cushion, its back against a wall. Stand up as fast as you can; take 2 to 3 seconds to sit down.", Clinician: "Fast rise from a high seat, 2 to 3 seconds down."},
	"beside.do-fast-rise":           {Client: "Sit on a firm chair with its back against a wall. Stand up as fast as you can; take 2 to 3 seconds to sit down.", Clinician: "Fast rise from a usual seat, 2 to 3 seconds down."},
	"beside.do-fast-lifts":          {Client: "Exercises with a weight: push or pull up as fast as you can with a clean movement, instead of the seconds up that stand there, and lower slowly.", Clinician: "The loaded lifts of the session, fast on the way up in place of their tempo, slow on the way down."},
	"beside.do-walk":                {Client: "Walk, or move in another way that you like and that goes on.", Clinician: "Walking or other continuous movement."},
	"beside.do-sit-and-move":        {Client: "Sit on a firm chair; march with your feet and swing your arms.", Clinician: "Seated movement: the feet are spared."},
}

// doseWords say how much, with which support, and when it changes.
var doseWords = evidence.Words{
	"beside.hold":            {Client: "Hold it for {seconds} seconds, {tries} times.", Clinician: "Tries: {tries}, of {seconds} seconds."},
	"beside.repeat":          {Client: "Do it {count} times, then rest a moment; {tries} times in all.", Clinician: "Tries: {tries}, of {count} movements."},
	"beside.days":            {Client: "Do this on {days} days a week.", Clinician: "Days a week: {days}, by the row {row}."},
	"beside.balance-minutes": {Client: "Each of these takes about {minutes} minutes.", Clinician: "About {minutes} minutes a day with the breaks; our own estimate."},
	"beside.both-hands":      {Client: "Keep both hands on a kitchen counter or something else that cannot move.", Clinician: "Both hands on a firm support."},
	"beside.one-hand":        {Client: "Keep one hand on a kitchen counter or something else that cannot move.", Clinician: "One hand on a firm support."},
	"beside.hands-free":      {Client: "Stay at a counter or in a corner: hands free, and near enough to hold on at once.", Clinician: "Hands free, a firm support within reach."},
	"beside.not-looked":      {Clinician: "Nobody looked at the balance: it begins with a hand on. The four-stage test would let it begin with the stance that is held."},
	"beside.company":         {Client: "Do this only while somebody stands within reach of you.", Clinician: "Only with somebody within reach."},
	"beside.falls-minutes":   {Clinician: "Where falls are the concern, programmes with balance in them that took {aim} minutes a week or more had the largest effect; lifting and these items count together, and they do not reach it by themselves."},
	"beside.harder-balance":  {Client: "When all of it goes well on {days} days, tell us: the next step is a little harder.", Clinician: "Harder once every try was done as asked on {days} days; easier when it was not, or with more support than asked."},
	"beside.stop-balance":    {Client: "If you are unsteady, take more support. If you are dizzy or you fall, stop and tell us.", Clinician: "Balance lost or dizziness: back to the first step; a fall: paused until somebody looked."},

	"beside.walk":           {Client: "{minutes} minutes, {bouts} times a day, on {days} days a week.", Clinician: "Bouts of {minutes} minutes: {bouts} a day, on {days} days a week."},
	"beside.brisk":          {Client: "Make {brisk} of the {bouts} brisk: you have breath left for a chat, and none for a song.", Clinician: "Of {bouts} bouts a day {brisk} at moderate effort by the talk test: talks, could not sing."},
	"beside.all-brisk":      {Client: "Make all of them brisk: you have breath left for a chat, and none for a song.", Clinician: "All {bouts} bouts at moderate effort by the talk test: talks, could not sing."},
	"beside.easy-pace":      {Client: "Go easy: at a pace at which you could still sing.", Clinician: "Below moderate effort by the talk test: could still sing."},
	"beside.cadence":        {Clinician: "About {steps} steps a minute is moderate for many of 61 to 85 years; it differs much from person to person, and is no target."},
	"beside.hold-on":        {Client: "Use your walking aid, or stay where you can hold on; or do it sitting: march with your feet and swing your arms.", Clinician: "Unsteady, or free standing is ruled out: with an aid or a hand on, or seated."},
	"beside.aerobic-aim":    {Clinician: "The row asks for {aim} minutes a week of moderate effort; dosed now at moderate effort: {brisk}. Easy minutes do not count towards it."},
	"beside.harder-minutes": {Client: "When all of it went well on {days} days, tell us: then it gets a little longer.", Clinician: "Harder after {days} days as asked: minutes before pace."},
	"beside.harder-pace":    {Client: "When all of it went well on {days} days, tell us: then one more of them becomes brisk.", Clinician: "Harder after {days} days as asked: one more bout at moderate effort. Nothing vigorous."},
	"beside.stop-aerobic":   {Client: "Slow down if you cannot speak a whole sentence. Stop and ask for help at chest pain, faintness or unusual breathlessness.", Clinician: "Easier when speech is not comfortable or on pain; back to easy movement when unsteady or dizzy."},
	"beside.impacts":        {Client: "Do {count}, rest {rest} seconds, and go on so: {sets} times in all, on {days} days a week.", Clinician: "Sets: {sets}, of {count} impacts, {rest} seconds of rest between them, on {days} days a week."},
	"beside.impacts-once":   {Client: "Do {count}, on {days} days a week.", Clinician: "One set of {count} impacts, on {days} days a week."},
	"beside.height":         {Client: "No higher than {height}.", Clinician: "Height at most {height}."},
	"beside.force":          {Clinician: "Measured: up to {force} body weights, in other people; it differs with effort and height."},
	"beside.impact-row":     {Clinician: "The row asks for {impacts} moderate impacts a session, on most days."},
	"beside.no-promise":     {Client: "Do this beside the lifting: for the bones the two belong together, and neither is known to replace the other.", Clinician: "Jumps alone did not raise bone density after menopause; supervised heavy lifting with impact did. Nothing is promised from impact alone."},
	"beside.harder-impact":  {Client: "When it went well on {days} days, tell us: then {more} more, up to {most}.", Clinician: "After {days} days as asked {more} more, up to {most} a session."},
	"beside.harder-kind":    {Client: "When it went well on {days} days, tell us: then we show you the next kind.", Clinician: "After {days} days as asked the next kind, built up from the beginning."},
	"beside.stop-impact":    {Client: "Stop and tell us if something hurts, if you leak or feel a heaviness below, or if you land unsteadily.", Clinician: "Paused at pain, leak or heaviness, unsteady landing, dizziness or a fall, until somebody looked."},
	"beside.rises":          {Client: "Do up to {count}, rest {rest} seconds, and go on so: {sets} times in all. Do this first, while you are fresh.", Clinician: "Sets: {sets}, of up to {count}, {rest} seconds of rest, at the start of the session."},
	"beside.power-load":     {Clinician: "Load: {band} of 1RM by the row, as far as the limits let it; other loads gave no more power. Sets and counts are those of each lift."},
	"beside.slower":         {Client: "End the set with the first one that is slower. Breathe out on the way up.", Clinician: "A set ends with the first repetition {slower} slower than the first. Neither the chance by which other counts are chosen nor a reserve ends this set: it ends by speed, far from the last repetition."},
	"beside.harder-power":   {Client: "When all of them were fast on {days} days, tell us: then it is a little more.", Clinician: "Harder once every set stayed fast on {days} days."},
	"beside.stop-power":     {Client: "Stop if you need your hands, hold your breath, or something hurts.", Clinician: "Ends at a hand used, breath held or pain; paused when balance is lost or on dizziness."},
	"beside.stop-lifts":     {Client: "Stop if the movement is no longer clean, if you hold your breath, or if something hurts.", Clinician: "Ends at a movement that is not clean, breath held or pain; paused when balance is lost or on dizziness."},
	"beside.filled":         {Clinician: "Track {track}, step {step} of {of}. The row gives the frame; what it leaves open is chosen here, not published."},
	"beside.harder":         {Client: "This went well, so it is a little harder now.", Clinician: "A step harder: all was done as asked on enough days ({days})."},
	"beside.same":           {Client: "This stays as it is for now.", Clinician: "The same step; days as asked: {met} of {days}."},
	"beside.easier":         {Client: "This is a little easier now, so that it goes well again.", Clinician: "Easier: what happened, or a limit, asks for it."},
	"beside.paused":         {Client: "Please leave this out until we have looked at what happened.", Clinician: "Paused after what happened; begun anew from the first steps once somebody looked."},
}

// barWords say what stands against a step, and what would free it.
var barWords = evidence.Words{
	"beside.not-now":        {Client: "Please leave this out until you have been seen.", Clinician: "Not now: route {route}, meanwhile {meanwhile}."},
	"beside.review-overdue": {Client: "It is time to go through the questions again before we go on.", Clinician: "The assessment was to be made anew by {review}."},
	"beside.demand":         {Clinician: "Goes no further: the limits rule out {demands}."},
	"beside.company-first":  {Clinician: "Alone and to have support: both hands stay on; nothing fast."},
	"beside.hand-stays":     {Clinician: "A hand stays on: support, company or an answer is asked for first."},
	"beside.look-first":     {Clinician: "Goes no further until {stands} stances of the four-stage balance test were held."},
	"beside.held":           {Clinician: "Not begun: somebody is to be asked first, or to be there."},
	"beside.low-impact":     {Clinician: "No impact item: screening keeps impact at brisk walking or below."},
	"beside.fracture":       {Clinician: "No impact item: a recent fracture, or one of the spine."},
	"beside.unsteady":       {Clinician: "No impact item: support is asked for, or half-tandem was not held."},
	"beside.light-only":     {Clinician: "Not begun: effort is limited to light."},
	"beside.low-pressure":   {Client: "Your blood pressure is on the low side: please stand up slowly.", Clinician: "No fast rises: resting pressure at the lower edge of its band."},
	"beside.spine-first":    {Client: "Before we add stamps or jumps for your bones, we want to know how your spine is.", Clinician: "No impact item: with osteoporosis nobody looked for a fracture of the spine, or one was found."},
	"beside.pelvic-floor":   {Client: "Before we add stamps or jumps, tell us whether you leak or feel a heaviness below.", Clinician: "No impact item: signs of the pelvic floor on landing, or not asked in a prolapse."},
	"beside.jump-company":   {Clinician: "Stamps only: jumps wait for somebody present."},
	"beside.no-hops":        {Clinician: "No hops: the centre of the trial advises against them in osteoporosis."},
	"beside.share":          {Clinician: "No fast lifts: screening limits the load to {most} of 1RM, below the row's band."},
	"beside.no-brisk":       {Clinician: "Easy pace only: nothing brisk for who may fall until heel to toe was held in a balance test."},
	"beside.brisk-limit":    {Clinician: "Brisk for no more than {minutes} minutes a day: impact is kept low."},

	"beside.free-seen":      {Clinician: "Would be freed by: the person being seen, and a new screening."},
	"beside.free-screening": {Clinician: "Would be freed by: a new assessment."},
	"beside.free-test":      {Clinician: "Would be freed by: the four-stage balance test, done by somebody qualified."},
	"beside.free-company":   {Clinician: "Would be freed by: somebody within reach."},
	"beside.free-spine":     {Clinician: "Would be freed by: a doctor's word that the spine was looked at and no fracture found."},
	"beside.free-pelvic":    {Clinician: "Would be freed by: the answer, or the advice of a pelvic-floor physiotherapist."},
	"beside.free-limit":     {Clinician: "Would be freed by: a screening without this limit."},
}
