package beside

import (
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// A move is what is done. How it is done is said by its words.
type move struct {
	id      MoveID
	name    string
	demands body.Demands
	force   float64 // body weights
	height  float64 // cm, at most
	effort  int     // of 10
	facts   []evidence.FactID
}

// A step is a move with its dose.
type step struct {
	*move
	hands                                Holding
	sets, count, seconds, minutes, brisk int
}

// A track is a row of steps, each harder than the one before. Days are how often the
// asked has to be met before the next one.
type track struct {
	id    TrackID
	kind  ItemKind
	days  int
	from  int // the least age at which it is begun
	steps []step
}

func trackOf(id TrackID) *track {
	for i := range tracks {
		if tracks[i].id == id {
			return &tracks[i]
		}
	}
	return nil
}

// Balance: first all stances with both hands, then with one, then without from the
// easiest on. So nobody who needs more support comes to a step with less.
var (
	feetTogether = move{id: "feet-together", name: "standing with the feet together"}
	halfTandem   = move{id: "half-tandem", name: "standing with one foot half ahead"}
	heelToToe    = move{id: "heel-to-toe", name: "standing heel to toe"}
	headTurns    = move{id: "heel-to-toe-looking", name: "standing heel to toe and looking round"}

	oneLeg        = move{id: "one-leg", name: "standing on one leg", demands: body.DemandSet(body.SingleLegStance)}
	oneLegLooking = move{id: "one-leg-looking", name: "standing on one leg and looking round", demands: body.DemandSet(body.SingleLegStance)}

	shiftWeight  = move{id: "shift-weight", name: "shifting the weight"}
	reachForward = move{id: "reach-forward", name: "reaching forward"}
	reachAcross  = move{id: "reach-across", name: "reaching across", demands: body.DemandSet(body.SpinalTwist)}
	reachLow     = move{id: "reach-low", name: "reaching low", demands: body.DemandSet(body.LoadedSpinalFlex)}

	march      = move{id: "march", name: "marching on the spot"}
	sideSteps  = move{id: "side-steps", name: "side steps"}
	backSteps  = move{id: "backward-steps", name: "steps backwards"}
	tandemWalk = move{id: "heel-to-toe-walk", name: "walking heel to toe"}
	turn       = move{id: "turn", name: "turning round"}
	stepOver   = move{id: "step-over", name: "stepping over", height: stepOverHeight}
)

// Impact, by the forces that were measured; heights above that of the trial are on no step.
var (
	rising = body.DemandSet(body.FastMovement, body.KneeResisted, body.HipResisted)

	stamps     = move{"stamps", "stamps", body.DemandSet(body.Impact), 3.1, 0, 5, []evidence.FactID{factStamp}}
	lowJumps   = move{"low-jumps", "low jumps", jumping, 4.0, lowJump, 5, []evidence.FactID{factJump, factLowJump}}
	smallJumps = move{"small-jumps", "small jumps", jumping, 4.0, smallJump, 5, []evidence.FactID{factJump}}
	heelDrops  = move{"heel-drops", "heel drops", body.DemandSet(body.Impact, body.FreeStanding, body.AnkleResisted), 4.9, smallJump, 5, []evidence.FactID{factHeelDrop}}
	hops       = move{"hops", "hops on one leg", jumping.Union(body.DemandSet(body.SingleLegStance)), 4.9, smallJump, 5, []evidence.FactID{factHop, factHopCentre}}

	jumping = body.DemandSet(body.Impact, body.FreeStanding, body.KneeResisted, body.AnkleResisted, body.FastMovement)
)

// Power and aerobic work.
var (
	riseHigh = move{id: "fast-rise-high", name: "fast rise from a high seat", demands: rising}
	rise     = move{id: "fast-rise", name: "fast rise from a chair", demands: rising.Union(body.DemandSet(body.DeepKneeBend))}
	lifts    = move{id: "fast-lifts", name: "the lifts, fast on the way up", demands: body.DemandSet(body.FastMovement), facts: []evidence.FactID{factPowerLoad}}
	walk     = move{id: "walk", name: "walking, or other movement that goes on"}
	sitting  = move{id: "sit-and-move", name: "moving in a chair"}
)

var tracks = [...]track{
	{"stance", Balance, balanceMet, older, balanceSteps(stanceTry, []*move{&feetTogether, &halfTandem, &heelToToe},
		[]*move{&feetTogether, &halfTandem, &heelToToe}, []*move{&feetTogether, &halfTandem, &heelToToe, &headTurns})},
	{"one-leg", Balance, balanceMet, older, balanceSteps(stanceTry, []*move{&oneLeg}, []*move{&oneLeg}, []*move{&oneLeg, &oneLegLooking})},
	{"reach", Balance, balanceMet, older, balanceSteps(reachTry, []*move{&shiftWeight},
		[]*move{&shiftWeight, &reachForward}, []*move{&shiftWeight, &reachForward, &reachAcross, &reachLow})},
	{"stepping", Balance, balanceMet, older, balanceSteps(stepTry, []*move{&march, &sideSteps},
		[]*move{&march, &sideSteps, &backSteps, &tandemWalk}, []*move{&sideSteps, &backSteps, &tandemWalk, &turn, &stepOver})},
	{"walking", Aerobic, aerobicDays, older, aerobicSteps()},
	{"impact", Impact, impactDays, 0, impactSteps(&stamps, &lowJumps, &smallJumps, &heelDrops, &hops)},
	{"chair-rise", Power, powerMet, 0, powerSteps(&riseHigh, &rise)},
	// The lifts have their dose in the session: here is how they are done, and when a set ends.
	{"lifts", Power, powerMet, 0, []step{{move: &lifts}}},
}

// A try is how a balance step is measured: seconds, or movements, in rising order.
type try struct{ seconds, count [3]int }

var (
	stanceTry = try{seconds: [3]int{firstHold, 20, lastHold}}
	reachTry  = try{count: [3]int{5, 8, 10}}
	stepTry   = try{count: [3]int{10, 15, 20}}
)

// balanceSteps lays out what is done with both hands, with one, and with none: with a
// hand on, the first amount; without, all three on each move before the next.
func balanceSteps(of try, both, one, none []*move) []step {
	var all []step
	at := func(m *move, h Holding, i int) {
		all = append(all, step{move: m, hands: h, sets: balanceTries, count: of.count[i], seconds: of.seconds[i], minutes: balanceMinutes})
	}
	for _, m := range both {
		at(m, BothHandsOn, 0)
	}
	for _, m := range one {
		at(m, OneHandOn, 0)
	}
	for _, m := range none {
		for i := range of.seconds {
			at(m, HandsNear, i)
		}
	}
	return all
}

// impactSteps lays out sets of ten, one to five, on each move before the next. Stamps
// have a hand on; landings are on both feet, with the hands free and something firm within reach.
func impactSteps(moves ...*move) []step {
	var all []step
	for i, m := range moves {
		h := HandsNear
		if i == 0 {
			h = OneHandOn
		}
		for sets := 1; sets*impactSet <= mostImpacts; sets++ {
			all = append(all, step{move: m, hands: h, sets: sets, count: impactSet})
		}
	}
	return all
}

func powerSteps(moves ...*move) []step {
	var all []step
	for _, m := range moves {
		for _, dose := range [...][2]int{{2, 4}, {2, 6}, {2, 8}, {3, 8}} {
			all = append(all, step{move: m, sets: dose[0], count: dose[1]})
		}
	}
	return all
}

// aerobicSteps lays out minutes before pace: bouts a day of easy movement, then
// one after another of them brisk.
func aerobicSteps() []step {
	var all []step
	for _, dose := range [...]struct{ minutes, bouts, brisk int }{{5, 2, 0}, {5, 3, 0}, {10, 2, 0}, {10, 3, 0}, {10, 3, 1}, {10, 3, 2}, {10, 3, 3}} {
		all = append(all, step{move: &walk, sets: dose.bouts, minutes: dose.minutes, brisk: dose.brisk})
	}
	return all
}
