package screening

import (
	"fmt"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// FrailtyLevel returns the condition code of a level number, 1 to 9, of the
// Clinical Frailty Scale, version 2 (Rockwood 2020), and an out-of-range error
// for another number. The names of the levels belong to the scale's owners. It
// describes the usual state, not the state of the day; what follows from a level
// here is this module's own choice.
func FrailtyLevel(level int) (Code, error) {
	if err := within(level, 1, len(frailtyEffects), ""); err != nil {
		return "", err
	}
	return Code(fmt.Sprintf("cfs_level_%d", level)), nil
}

var (
	withSupport  = Limits{Support: true}
	slowAndSeen  = askLight.with(withSupport)
	restingMoves = askNoLoad.with(withSupport).avoiding(body.FloorTransfer)
)

// frailtyEffects are by level number, from 1. Each is as tight as the one before.
var frailtyEffects = [...]effect{
	nothingFound, nothingFound, nothingFound, tell, supported, supported, slowAndSeen, slowAndSeen, restingMoves,
}

// frailtyEntries are one entry for each level.
var frailtyEntries = makeFrailtyEntries()

func makeFrailtyEntries() []entry {
	list := make([]entry, len(frailtyEffects))
	for i := range list {
		level := i + 1
		code, _ := FrailtyLevel(level)
		list[i] = entry{
			code: code, kind: Condition, meaning: fmt.Sprintf("level %d of the Clinical Frailty Scale", level),
			from:   provenance{says: "a level of the usual state, not that of the day; the number alone is used", source: "rockwood2020", via: "reprints of the scale", basis: evidence.Secondary},
			effect: frailtyEffects[i], balance: level >= balanceLevel, released: agreed(frailtyEffects[i]),
		}
	}
	return list
}

// besideLight is what goes on of whom a doctor knows to be very weak or confused, and agrees:
// lightly, with somebody beside.
var besideLight = tell.with(Limits{LeastSetting: WithHelper, MaxIntensity: Light, MinReserve: lightReserve})

// agreed is besideLight, with what else the level limits, where the level asks a doctor.
func agreed(level effect) *effect {
	if level.route < AskFirst {
		return nil
	}
	after := besideLight.with(level.limits)
	return &after
}

// balanceLevel is from which level there is no lone standing work.
const balanceLevel = 5
