package screening

import (
	"slices"

	"example.org/posology/units/body"
)

// Cautions returns the published cautions of the conditions that were answered
// with yes, each once. What is unsure is not counted here. The caution after a
// rotator cuff repair ends with the twelfth week, if the day is known.
func Cautions(p Profile) []Code { return p.cautions(p.found()) }

func (p *Profile) cautions(items []item) []Code {
	var list []Code
	for _, it := range items {
		if it.held != Yes {
			continue
		}
		for _, caution := range it.cautions {
			over := false
			if caution == noEarlyResisting {
				over, _ = p.since(it.entry)
			}
			if !over && !slices.Contains(list, caution) {
				list = append(list, caution)
			}
		}
	}
	return list
}

// alone are demands that somebody who may faint or fall does not meet without
// a person beside.
var alone = Limits{Support: true, Avoid: body.DemandSet(body.FreeStanding, body.Overhead, body.OverFace)}

// inSetting adds what a risk of fainting or falling rules out in a setting;
// a setting that is not given counts as alone.
func (e effect) inSetting(s Setting, balance bool) effect {
	if balance && s <= Alone {
		return e.with(alone)
	}
	return e
}

// around are the demands on a region besides resisted work of it (Design).
var around = map[body.Region]body.Demands{
	body.Neck:      body.DemandSet(body.Overhead, body.HeadDown, body.Impact),
	body.Shoulder:  body.DemandSet(body.Overhead, body.OverFace, body.FloorTransfer),
	body.Elbow:     body.DemandSet(body.FloorTransfer),
	body.WristHand: body.DemandSet(body.FirmGrip, body.FloorTransfer),
	body.UpperBack: body.DemandSet(body.LoadedSpinalFlex, body.SpinalTwist, body.PickUpFromFloor, body.Impact),
	body.LowerBack: body.DemandSet(body.LoadedSpinalFlex, body.SpinalTwist, body.PickUpFromFloor, body.Impact),
	body.Abdomen:   body.DemandSet(body.LoadedSpinalFlex, body.SpinalTwist),
	body.Hip:       body.DemandSet(body.DeepKneeBend, body.SingleLegStance, body.Impact, body.FloorTransfer),
	body.Knee:      body.DemandSet(body.DeepKneeBend, body.SingleLegStance, body.Impact, body.FloorTransfer),
	body.AnkleFoot: body.DemandSet(body.DeepKneeBend, body.SingleLegStance, body.Impact, body.FloorTransfer),
}

// sparing are the demands that keep load off a region.
func sparing(r body.Region) body.Demands {
	avoid := around[r]
	if d, ok := r.Resisted(); ok {
		avoid = avoid.Union(body.DemandSet(d))
	}
	return avoid
}

// fracture is what follows from a recent fracture: its regions are spared; if
// a region is not known no weight is lifted at all.
func (p *Profile) fracture(e *entry) (effect, bool) {
	places, known := p.fractured(p.Conditions.Of(e.code) != No)
	spared := e.effect
	if !known {
		spared = askNoLoad
	}
	for _, e := range places {
		spared = spared.with(Limits{Avoid: sparing(e.Region)}.onSide(e.Region, e.Side))
	}
	return spared, known
}
